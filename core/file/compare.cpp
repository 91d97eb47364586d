#include "core/file/compare.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <map>

#include "core/base/length_text.h"
#include "core/file/report_rules.h"
#include "core/file/report_words.h"
#include "core/plan/catalogue.h"
#include "core/rules/text_quantity.h"
#include "core/rules/text_rules.h"

namespace elbowroom {
namespace {

struct Seen {
  Layout layout;
  Report report;
};

bool isThere(const Option& option, const ElementId& id) {
  return findFixture(option, id) || findOpening(option, id) || findWall(option, id) || findWallItem(option, id) ||
         findCeilingItem(option, id);
}

std::vector<ElementId> thereOf(const Option& option, const std::vector<ElementId>& ids) {
  std::vector<ElementId> there;
  for (const ElementId& id : ids)
    if (isThere(option, id)) there.push_back(id);
  return there;
}

CompareCell count(int n) { return {std::to_string(n), {}, {}}; }

CompareCell floorOf(const Seen& seen, Unit unit) {
  return {areaText(seen.report.figures.free_floor, unit), {}, {}};
}

CompareCell waysOf(const Seen& seen, Unit unit) {
  const std::vector<RouteFigure> routes = routeFigures(seen.layout);
  const auto narrower = [](const RouteFigure& a, const RouteFigure& b) {
    return a.route.reachable != b.route.reachable ? !a.route.reachable : a.route.width < b.route.width;
  };
  const auto least = std::min_element(routes.begin(), routes.end(), narrower);
  if (least == routes.end()) return {"none", {}, {}};
  const std::string to = subjectName(seen.layout.option, least->to);
  if (!least->route.reachable) return {fmt::format("no way to {}", to), {}, {least->to}};
  return {fmt::format("{}, to {}", words::flooredText(least->route.width, unit), to), {}, {least->to}};
}

CompareCell doorOf(const Seen& seen, const ElementId& id, Unit unit) {
  for (const DoorFigures& door : seen.report.figures.doors) {
    if (door.id != id) continue;
    std::string text = fmt::format("{}, clear {}", labelOf(door.action), words::flooredText(door.clear_opening, unit));
    text += door.floor_taken > Area{} ? fmt::format(", takes {}", areaText(door.floor_taken, unit)) : ", takes no floor";
    return {text, {}, {id}};
  }
  return {"not there", {}, {}};
}

template <typename Of>
CompareLine lineOf(const std::string& label, const std::vector<Seen>& all, Of of) {
  CompareLine line{label, {}, {}, {}, {}, false};
  for (const Seen& seen : all) line.cells.push_back(of(seen));
  line.differs = std::any_of(line.cells.begin(), line.cells.end(),
                             [&](const CompareCell& cell) { return cell.text != line.cells.front().text; });
  return line;
}

std::vector<CompareLine> figuresOf(const std::vector<Seen>& all, Unit unit) {
  std::vector<CompareLine> lines;
  const auto counted = [&](const char* label, auto of) {
    lines.push_back(lineOf(label, all, [&](const Seen& seen) { return count(of(tallyOf(seen.report))); }));
  };
  counted("Short, required", [](const Tally& t) { return t.shortOf(Level::required); });
  counted("Short, advised", [](const Tally& t) { return t.shortOf(Level::advised); });
  counted("Short, craft", [](const Tally& t) { return t.shortOf(Level::craft); });
  counted("Accepted", [](const Tally& t) { return t.accepted; });
  counted("Not stated", [](const Tally& t) { return t.questions; });
  counted("Close", [](const Tally& t) { return t.close; });
  counted("Clear", [](const Tally& t) { return t.clear; });
  lines.push_back(lineOf("Free floor", all, [&](const Seen& seen) { return floorOf(seen, unit); }));
  lines.push_back(lineOf("Turning circle", all, [&](const Seen& seen) {
    return CompareCell{turningText(seen.report.figures.turning, unit), {}, {}};
  }));
  lines.push_back(lineOf("T-shaped turning space", all, [](const Seen& seen) {
    return CompareCell{turningTFigure(seen.layout) ? "fits" : "no place found", {}, {}};
  }));
  lines.push_back(lineOf("Narrowest way", all, [&](const Seen& seen) { return waysOf(seen, unit); }));
  std::vector<ElementId> doors;
  std::vector<std::string> names;
  for (const Seen& seen : all)
    for (const DoorFigures& door : seen.report.figures.doors)
      if (std::find(doors.begin(), doors.end(), door.id) == doors.end()) {
        doors.push_back(door.id);
        names.push_back(subjectName(seen.layout.option, door.id));
      }
  for (std::size_t i = 0; i < doors.size(); ++i)
    lines.push_back(lineOf(names[i], all, [&](const Seen& seen) { return doorOf(seen, doors[i], unit); }));
  lines.push_back(lineOf("Wish list", all, [](const Seen& seen) {
    return CompareCell{wishesInBrief(seen.report), {}, {}};
  }));
  return lines;
}

bool sameMatter(const Finding& a, const Finding& b) {
  return a.rule == b.rule && a.book == b.book && a.subjects == b.subjects;
}

// The finding of this option to the same rule and things; else the worst to the same rule and first thing, since what a
// thing is measured against may be another one there.
const Finding* counterpart(const Report& report, const Finding& of) {
  const Finding* near = nullptr;
  for (const Finding& f : report.findings) {
    if (f.outcome == Outcome::notApplicable) continue;
    if (sameMatter(f, of)) return &f;
    const bool same_first = f.rule == of.rule && f.book == of.book && !f.subjects.empty() && !of.subjects.empty() &&
                            f.subjects.front() == of.subjects.front();
    if (same_first && near == nullptr) near = &f;  // findings are in the order of what is worst
  }
  return near;
}

CompareCell verdictOf(const Seen& seen, const Finding& of, Unit unit) {
  const Option& option = seen.layout.option;
  const Finding* f = counterpart(seen.report, of);
  if (f == nullptr) {
    const bool gone = !of.subjects.empty() && !isThere(option, of.subjects.front());
    return {gone ? "not there" : "says nothing", {}, thereOf(option, of.subjects)};
  }
  const FindingText words = textOf(*f, option, unit);
  std::string text = words.outcome;
  if (f->outcome == Outcome::shortfall && !words.by.empty()) text = words.by;
  const bool has_figure = f->measured && !std::holds_alternative<bool>(*f->measured);
  if (!has_figure) text = words.outcome;
  text.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(text.front())));
  if (has_figure) text = fmt::format("{}: {}", words.measured, text);
  if (!words.accepted.empty()) text += " (accepted)";
  return {text, f->outcome, thereOf(option, f->subjects)};
}

struct Matter {
  const Finding* finding;
  const Option* option;  // in which it was first short
  FindingText words;
};

// What a thing is measured against may differ from option to option; it is named only where `whole` asks for it.
std::string labelOf(const Matter& matter, bool whole) {
  const Finding& f = *matter.finding;
  std::string names;
  for (const ElementId& id : f.subjects)
    if (isThere(*matter.option, id) && (whole || names.empty()))
      names += (names.empty() ? "" : ", ") + subjectName(*matter.option, id);
  if (names.empty()) names = "Room";
  const Rule* rule = findRule(f.book, f.rule);
  const std::string title(rule ? rule->title : f.rule);
  const std::string& needed = matter.words.needed;
  const bool plain = needed.empty() || f.compare == Compare::isTrue;
  return plain ? fmt::format("{}: {}", names, title) : fmt::format("{}: {}, {}", names, title, needed);
}

std::vector<CompareLine> shortfallsOf(const std::vector<Seen>& all, Unit unit) {
  std::vector<Matter> matters;
  for (const Seen& seen : all)
    for (const Finding& f : seen.report.findings) {
      if (f.outcome != Outcome::shortfall || onlyWished(f)) continue;
      const bool listed = std::any_of(matters.begin(), matters.end(), [&](const Matter& m) {
        return sameMatter(*m.finding, f) || counterpart(seen.report, *m.finding) == &f;
      });
      if (!listed) matters.push_back({&f, &seen.layout.option, textOf(f, seen.layout.option, unit)});
    }
  std::stable_sort(matters.begin(), matters.end(),
                   [](const Matter& a, const Matter& b) { return a.finding->level < b.finding->level; });
  std::map<std::pair<std::string, std::string>, int> alike;  // book and short label
  for (const Matter& matter : matters) ++alike[{matter.finding->book, labelOf(matter, false)}];
  std::vector<CompareLine> lines;
  for (const Matter& matter : matters) {
    const Finding& f = *matter.finding;
    std::string label = labelOf(matter, false);
    if (alike[{f.book, label}] > 1) label = labelOf(matter, true);
    CompareLine line = lineOf(label, all, [&](const Seen& seen) { return verdictOf(seen, f, unit); });
    const FindingText& words = matter.words;
    line.why = fmt::format("{} {}; {} ({}).", words.why, words.source, words.grade, f.book);
    line.level = f.level;
    line.book = f.book;
    lines.push_back(std::move(line));
  }
  return lines;
}

}  // namespace

Comparison compareOptions(const Plan& plan, const BookChoice& choice) {
  std::vector<Seen> all;
  Comparison comparison;
  for (std::size_t i = 0; i < plan.options.size(); ++i) {
    Layout layout = deriveLayout(plan, i);
    Report report = check(layout, choice);
    comparison.options.push_back(layout.option.name);
    all.push_back({std::move(layout), std::move(report)});
  }
  comparison.figures = figuresOf(all, plan.unit);
  comparison.shortfalls = shortfallsOf(all, plan.unit);
  return comparison;
}

}  // namespace elbowroom

#include <fmt/format.h>

#include <algorithm>

#include "core/base/length_text.h"
#include "core/file/compare.h"
#include "core/file/report_json.h"
#include "core/file/report_rules.h"
#include "core/file/report_words.h"
#include "core/plan/catalogue.h"
#include "core/rules/added_book.h"
#include "core/rules/text_rules.h"
#include "core/rules/text_quantity.h"

namespace elbowroom {

namespace {

std::string cautions() {
  std::string text = "\n";
  for (const std::string& line : cautionLines()) text += line + "\n";
  return text;
}

std::string headOf(const std::string& title, const std::string& option) {
  return fmt::format("{}, option \"{}\"\n", title.empty() ? "Plan without a title" : title, option);
}

std::string countText(int n, std::string_view one, std::string_view several) {
  return fmt::format("{} {}", n, n == 1 ? one : several);
}

std::string findingText(const Finding& f, const Option& option, Unit unit) {
  const FindingText text = textOf(f, option, unit);
  std::string lines = fmt::format("  {}", text.headline);
  if (!text.by.empty()) lines += fmt::format(" ({})", text.by);
  lines += '\n';
  if (!text.detail.empty()) lines += fmt::format("    {}\n", text.detail);
  if (f.outcome == Outcome::shortfall) lines += fmt::format("    {}\n", text.why);
  if (!text.accepted.empty()) lines += fmt::format("    {}\n", text.accepted);
  const bool says_needed = f.outcome == Outcome::shortfall || text.needed.empty();
  lines += fmt::format("    {}{}{}; {} ({}).\n", says_needed ? "" : fmt::format("Needs {}. ", text.needed),
                       text.source, text.edition.empty() ? "" : fmt::format(" ({})", text.edition), text.grade, f.book);
  return lines;
}

// Each question once, with the rules that ask it.
std::string questionsText(const Report& report, const Option& option, Unit unit) {
  std::vector<const Finding*> asking;
  for (const Finding& f : report.findings)
    if (f.outcome == Outcome::unknown && !onlyWished(f)) asking.push_back(&f);
  std::string lines;
  for (const auto& question : questionsOf(asking)) {
    lines += fmt::format("  {}\n", textOf(*question.front(), option, unit).headline);
    for (const Finding* f : question) {
      const FindingText text = textOf(*f, option, unit);
      const Rule* rule = findRule(f->book, f->rule);
      lines += fmt::format("    For {}{}{}; {} ({}).\n", rule ? rule->title : f->rule,
                           text.needed.empty() ? ". " : fmt::format(", {}. ", text.needed), text.source, text.grade,
                           f->book);
      if (!text.detail.empty()) lines += fmt::format("    {}\n", text.detail);
      if (!text.accepted.empty()) lines += fmt::format("    {}\n", text.accepted);
    }
  }
  return lines;
}

struct Group {
  std::string title;
  Outcome outcome;
  std::optional<Level> level;
};

const std::vector<Group>& groups() {
  static const std::vector<Group> all{
      {"Short, required by a code or standard", Outcome::shortfall, Level::required},
      {"Short, advised by published guidance", Outcome::shortfall, Level::advised},
      {"Short, common practice of the trades", Outcome::shortfall, Level::craft},
      {"Not stated in the plan", Outcome::unknown, {}},
      {"Close: met with little to spare", Outcome::close, {}},
      {"Clear", Outcome::clear, {}},
  };
  return all;
}

std::string doorText(const DoorFigures& door, const Option& option, Unit unit) {
  std::string text = fmt::format("  {} ({}): clear opening {}", subjectName(option, door.id),
                                 labelOf(door.action), lengthText(door.clear_opening, unit));
  if (door.sweep > Area{}) {
    text += fmt::format(", opens {:.0f} degrees", std::floor(door.opens.degrees() + 1e-9));
    if (door.hits) text += fmt::format(" until it meets {}", subjectName(option, *door.hits));
  }
  text +=
      fmt::format("\n    sweeps {}, takes {} of this floor; keep-clear square {}\n",
                  areaText(door.sweep, unit), areaText(door.floor_taken, unit), areaText(door.square, unit));
  for (const Trouble& trouble : door.troubles)
    text += fmt::format("    {}\n", troubleText(trouble, option, unit));
  return text;
}

// Columns as wide as their widest cell; the last one ragged. Cells count code points, not bytes.
std::string tableOf(const std::vector<std::vector<std::string>>& rows) {
  const auto widthOf = [](const std::string& s) {
    return static_cast<std::size_t>(
        std::count_if(s.begin(), s.end(), [](char c) { return (c & 0xC0) != 0x80; }));
  };
  std::vector<std::size_t> widths;
  for (const auto& row : rows) {
    widths.resize(std::max(widths.size(), row.size()));
    for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], widthOf(row[i]));
  }
  std::string text;
  for (const auto& row : rows) {
    for (std::size_t i = 0; i < row.size(); ++i) {
      text += row[i];
      if (i + 1 < row.size()) text += std::string(widths[i] + 2 - widthOf(row[i]), ' ');
    }
    text += '\n';
  }
  return text;
}

// One line per stand, the reasons of what is left out with it.
std::string wishesText(const Layout& layout, const Report& report) {
  if (!tellsWishes(report)) return {};
  constexpr std::pair<WishStand, std::string_view> kLines[] = {{WishStand::inPlan, "In the plan"},
                                                               {WishStand::wanted, "Wanted, not in the plan"},
                                                               {WishStand::leftOut, "Left out"},
                                                               {WishStand::undecided, "Undecided"}};
  const std::vector<WishState> states = wishStates(layout, report.figures);
  std::string text = "\nWish list\n";
  for (const auto& [stand, title] : kLines) {
    std::string points;
    for (const WishState& s : states) {
      if (s.stand != stand) continue;
      points += fmt::format("{}{}{}", points.empty() ? "" : "; ", s.point->title,
                            stand == WishStand::leftOut ? fmt::format(" ({})", s.reason) : "");
    }
    if (!points.empty()) text += fmt::format("  {}: {}.\n", title, points);
  }
  return text;
}

}  // namespace

std::string checkText(const Layout& layout, const Report& report, const std::string& plan_name) {
  const Unit unit = layout.settings.unit;
  std::string text = headOf(layout.settings.title, layout.option.name) + plan_name + "\n";
  if (layout.room.empty()) text += "\nNo room is drawn in this option yet.\n";
  for (const Group& group : groups()) {
    std::string lines;
    if (group.outcome == Outcome::unknown) lines = questionsText(report, layout.option, unit);
    for (const Finding& f : report.findings)
      if (f.outcome == group.outcome && f.outcome != Outcome::unknown && (!group.level || f.level == *group.level) &&
          !onlyWished(f))
        lines += findingText(f, layout.option, unit);
    if (!lines.empty()) text += fmt::format("\n{}\n{}", group.title, lines);
  }
  text += wishesText(layout, report);
  std::string changes;
  for (const std::string& line : changeLines(layout.settings)) changes += fmt::format("  {}\n", line);
  if (!changes.empty()) text += "\nRules changed by you\n" + changes;
  const Tally tally = tallyOf(report);
  text += fmt::format("\n{} short ({} required, {} advised, {} craft), {}{} not stated, {} close, {} clear.\n", tally.allShort(),
                      tally.shortOf(Level::required), tally.shortOf(Level::advised), tally.shortOf(Level::craft),
                      tally.accepted > 0 ? fmt::format("{} accepted, ", tally.accepted) : "", tally.questions, tally.close,
                      tally.clear);
  return text + cautions();
}

std::string measureText(const Layout& layout, const Figures& figures, const std::vector<RouteFigure>& routes,
                        const std::optional<Placed>& t) {
  const Unit unit = layout.settings.unit;
  std::string text = headOf(layout.settings.title, layout.option.name);
  if (layout.room.empty()) return text + "\nNo room is drawn in this option yet.\n" + cautions();
  text += fmt::format("\nRoom {}, free floor {}\n", areaText(figures.room_area, unit),
                      areaText(figures.free_floor, unit));
  text += fmt::format("Largest turning circle: {}\n", turningText(figures.turning, unit));
  text += t ? "T-shaped turning space: fits\n" : "T-shaped turning space: no place found\n";
  text += "\nDoors\n";
  for (const DoorFigures& door : figures.doors) text += doorText(door, layout.option, unit);
  if (figures.doors.empty()) text += "  none\n";
  text += "\nWidest way from the first door\n";
  for (const RouteFigure& r : routes) {
    const std::string to = subjectName(layout.option, r.to);
    text += r.route.reachable
                ? fmt::format("  to {}: {} at its narrowest\n", to, lengthText(r.route.width, unit))
                : fmt::format("  to {}: no way\n", to);
  }
  if (routes.empty()) text += "  none\n";
  return text + cautions();
}

std::string compareText(const Plan& plan, const BookChoice& choice) {
  const Comparison all = compareOptions(plan, choice);
  std::vector<std::vector<std::string>> rows{{""}};
  for (const std::string& option : all.options) rows.front().push_back(option);
  for (const CompareLine& line : all.figures) {
    rows.push_back({line.label});
    for (const CompareCell& cell : line.cells) rows.back().push_back(cell.text);
  }
  std::string text = fmt::format("{}, {}\n\n", plan.title.empty() ? "Plan without a title" : plan.title,
                                 countText(static_cast<int>(plan.options.size()), "option", "options")) +
                     tableOf(rows) + "\nShort in at least one option\n";
  for (const CompareLine& line : all.shortfalls) {
    text += fmt::format("  {} ({}, {})\n", line.label, keyOf(*line.level), line.book);
    for (std::size_t i = 0; i < line.cells.size(); ++i)
      text += fmt::format("    {}: {}\n", all.options[i], line.cells[i].text);
  }
  if (all.shortfalls.empty()) text += "  nothing\n";
  return text + cautions();
}

std::string booksText(const std::vector<std::string>& only) {
  std::string text;
  for (const Book& book : allBooks()) {
    if (!only.empty() && std::find(only.begin(), only.end(), book.id) == only.end()) continue;
    text += fmt::format("{}{}: {}{}\n  {}. {}\n", text.empty() ? "" : "\n", book.id, book.title,
                        isAdded(book.id) ? " (added)" : "", book.authority, book.note);
    for (const Setting& setting : book.settings) {
      std::string values;
      for (const SettingValue& value : setting.values)
        values += fmt::format("{}{} ({})", values.empty() ? "" : ", ", value.value, value.title);
      text += fmt::format("  Setting {}: {}. Values: {}; the first is the default.\n", setting.key, setting.title, values);
    }
    for (const Rule& rule : allRules()) {
      if (rule.book != book.id) continue;
      text += fmt::format("  {} ({}): {}, {}\n    {}; {}.\n    {}\n", rule.id, keyOf(rule.level), rule.title,
                          limitWords(rule, Unit::inches), textOfRule(rule, Unit::inches).source,
                          wordsOf(rule.grade), rule.why);
      for (const Variant& variant : rule.variants)
        text += fmt::format("    {} {}: {}\n", variant.setting, variant.value, variantWords(rule, variant, Unit::inches));
    }
  }
  return text + cautions();
}

}  // namespace elbowroom

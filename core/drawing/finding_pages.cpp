#include <algorithm>

#include "core/drawing/marks.h"
#include "core/drawing/table.h"
#include "core/rules/rule.h"
#include "core/rules/tally.h"
#include "core/rules/text.h"
#include "core/rules/wishes.h"

namespace elbowroom {
namespace {

std::string levelText(Level level) {
  switch (level) {
    case Level::required:
      return "Required";
    case Level::advised:
      return "Advised";
    case Level::craft:
      return "Common practice";
  }
  return {};
}

std::string joined(std::initializer_list<std::string> parts) {
  std::string text;
  for (const std::string& part : parts) {
    if (!part.empty()) text += (text.empty() ? "" : " ") + part;
  }
  return text;
}

std::string sentence(const std::string& text) {
  return text.empty() || text.back() == '.' ? text : text + ".";
}

}  // namespace

std::vector<PageContent> findingPages(const Layout& layout, const Report& report, Paper paper) {
  TablePages pages("Findings list", bodyOf(paper));
  const Unit unit = layout.settings.unit;
  const auto of = [&](auto holds) { return std::count_if(report.findings.begin(), report.findings.end(), holds); };
  const auto clear = of([](const Finding& f) { return f.outcome == Outcome::clear && !onlyWished(f); });
  const auto others =
      of([](const Finding& f) { return isMarked(f) || (f.outcome == Outcome::unknown && !onlyWished(f)); });
  pages.heading("Findings");
  pages.paragraph("Numbers are those of the findings plan. " + std::to_string(clear) + " of " +
                  std::to_string(clear + others) + " measures are clear; the others follow.");
  DrawStyle style;
  style.mm = Length::fromMillimetres(1);
  struct Row {
    int number;  // 0: none, and no mark on the plan
    const Finding* finding;
    FindingText text;
    std::string source;
  };
  std::vector<Row> seen, unstated;
  int number = 0;
  for (const Finding& finding : report.findings) {
    const bool marked = isMarked(finding);
    if (!marked && (finding.outcome != Outcome::unknown || onlyWished(finding))) continue;
    FindingText text = textOf(finding, layout.option, unit);
    const std::string edition = text.edition.empty() ? "" : " (" + text.edition + ")";
    const std::string source = levelText(finding.level) + ": " + text.source + edition;
    if (marked)
      seen.push_back({++number, &finding, text, source});
    else
      unstated.push_back({0, &finding, text, source});
  }
  const auto row = [&](const Row& r, std::vector<TableCell> figures) {
    std::vector<TableCell> cells{
        {r.number > 0 ? std::to_string(r.number) : "", "", true},
        {r.text.headline, joined({r.text.why, r.text.detail, sentence(r.text.accepted)}), true}};
    cells.insert(cells.end(), figures.begin(), figures.end());
    cells.push_back({r.source, r.text.grade});
    pages.row(cells, [&, finding = r.finding](double x, double y) {
      return drawMark(finding->outcome, pointFromMillimetres(x + 1.9, y), style, {},
                      !finding->acknowledged.empty());
    });
  };
  if (!seen.empty()) {
    pages.begin({{"No.", 1.35},
                 {"Finding and why it matters", 8.4},
                 {"Measured", 2},
                 {"Needed", 2.6},
                 {"Result", 2.6},
                 {"Source, level and how the value was checked", 8.7}});
    for (Row& r : seen) {
      FindingText& text = r.text;
      // The sentence says it; "no" and "yes" beside it would puzzle.
      if (r.finding->measured && std::holds_alternative<bool>(*r.finding->measured)) {
        text.measured = text.needed = "";
        if (r.finding->outcome == Outcome::shortfall) text.outcome = "not met";
      }
      const std::string result = text.by.empty() ? text.outcome : text.by;
      row(r, {{text.measured, ""},
              {text.needed, ""},
              {result, r.finding->acknowledged.empty() ? "" : "accepted by you"}});
    }
    pages.end();
  }
  if (!unstated.empty()) {
    pages.heading("Not stated in the plan");
    pages.begin({{"", 1.35},
                 {"What is not stated and why it matters", 11.4},
                 {"Needed", 3},
                 {"Source, level and how the value was checked", 9.9}});
    std::vector<const Finding*> asking;
    for (const Row& r : unstated) asking.push_back(r.finding);
    const auto rowOf = [&](const Finding* f) -> const Row& {
      return *std::find_if(unstated.begin(), unstated.end(), [&](const Row& r) { return r.finding == f; });
    };
    for (const auto& question : questionsOf(asking)) {
      Row r = rowOf(question.front());
      for (std::size_t i = 1; i < question.size(); ++i) {
        const Row& other = rowOf(question[i]);
        if (!other.text.needed.empty() && r.text.needed.find(other.text.needed) == std::string::npos)
          r.text.needed += (r.text.needed.empty() ? "" : "; ") + other.text.needed;
        r.source += "; " + other.source;
      }
      row(r, {{r.text.needed, ""}});
    }
    pages.end();
  }
  const std::vector<std::string> changes = changeLines(layout.settings);
  if (!changes.empty()) {
    pages.heading("Rules changed by you");
    for (const std::string& line : changes) pages.paragraph(sentence(line));
  }
  return pages.take();
}

}  // namespace elbowroom

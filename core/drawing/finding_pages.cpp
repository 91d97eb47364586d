#include <algorithm>

#include "core/drawing/marks.h"
#include "core/drawing/table.h"
#include "core/rules/rule.h"
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
  const auto marked = std::count_if(report.findings.begin(), report.findings.end(), isMarked);
  const auto clear = std::count_if(report.findings.begin(), report.findings.end(), [](const Finding& f) {
    return f.outcome == Outcome::clear && !onlyWished(f);
  });
  pages.heading("Findings");
  pages.paragraph("Numbers are those of the findings plan. " + std::to_string(clear) + " of " +
                  std::to_string(clear + marked) + " measures are clear; the others follow.");
  DrawStyle style;
  style.mm = Length::fromMillimetres(1);
  if (marked > 0) {
    pages.begin({{"No.", 1.35},
                 {"Finding and why it matters", 9},
                 {"Measured", 2.5},
                 {"Needed", 2.8},
                 {"Result", 2.8},
                 {"Source, level and how the value was checked", 7.2}});
    int number = 0;
    for (const Finding& finding : report.findings) {
      if (!isMarked(finding)) continue;
      FindingText text = textOf(finding, layout.option, unit);
      // The sentence says it; "no" and "yes" beside it would puzzle.
      if (finding.measured && std::holds_alternative<bool>(*finding.measured)) {
        text.measured = text.needed = "";
        if (finding.outcome == Outcome::shortfall) text.outcome = "not met";
      }
      if (finding.outcome == Outcome::unknown) text.measured = "";
      const std::string edition = text.edition.empty() ? "" : " (" + text.edition + ")";
      const std::string source = levelText(finding.level) + ": " + text.source + edition;
      pages.row({{std::to_string(++number), "", true},
                 {text.headline, joined({text.why, text.detail, sentence(text.accepted)}), true},
                 {text.measured, ""},
                 {text.needed, ""},
                 {text.by.empty() ? text.outcome : text.by, ""},
                 {source, text.grade}},
                [&](double x, double y) {
                  return drawMark(finding.outcome, pointFromMillimetres(x + 1.9, y), style, {});
                });
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

#include "core/drawing/wish_page.h"

#include "core/drawing/table.h"
#include "core/rules/text.h"
#include "core/rules/wishes.h"

namespace elbowroom {
namespace {

struct Part {
  std::string_view heading, third;  // of the column that tells most
  bool (*belongs)(const WishState&);
};

constexpr Part kParts[] = {
    {"In", "State",
     [](const WishState& s) { return s.stand == WishStand::inPlan || s.stand == WishStand::wanted; }},
    {"Out", "Reason", [](const WishState& s) { return s.stand == WishStand::leftOut; }},
    {"Undecided", "State", [](const WishState& s) { return s.stand == WishStand::undecided; }},
};

std::string sourceOf(const WishPoint& point) {
  std::string text(point.source.document);
  for (const std::string_view part : {point.source.edition, point.source.section})
    if (!part.empty()) text += ", " + std::string(part);
  return text;
}

void writePart(TablePages& pages, const Part& part, const std::vector<WishState>& states,
               const Option& option) {
  bool any = false;
  for (const WishState& s : states) {
    if (!part.belongs(s)) continue;
    if (!any) {
      pages.heading(std::string(part.heading));
      pages.begin(
          {{"Point and why it is worth considering", 6}, {std::string(part.third), 4}, {"Source", 5.5}});
      any = true;
    }
    const bool out = s.stand == WishStand::leftOut;
    pages.row({{std::string(s.point->title), std::string(s.point->why), true},
               {out ? s.reason : wishText(s, option), out && s.shown ? "Yet the plan shows it." : ""},
               {sourceOf(*s.point), std::string(wordsOf(s.point->grade))}});
  }
  if (any) pages.end();
}

}  // namespace

std::vector<PageContent> wishPages(const Layout& layout, const Report& report, Paper paper) {
  if (layout.option.wishes.empty()) return {};
  TablePages pages("Wish list", bodyOf(paper));
  const std::vector<WishState> states = wishStates(layout, report.figures);
  pages.heading("Wish list");
  pages.paragraph(
      "What the owner has considered for this option. What is in and not in the plan yet, and what is "
      "undecided, is to "
      "be settled before the walls close: boxes, pipes, backing and glass depend on it.");
  for (const Part& part : kParts) writePart(pages, part, states, layout.option);
  return pages.take();
}

}  // namespace elbowroom

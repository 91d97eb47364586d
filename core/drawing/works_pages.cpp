// What has to be in the walls, and when, as tables.
#include "core/drawing/elevation_works.h"
#include "core/drawing/sheet_text.h"
#include "core/drawing/table.h"
#include "core/rules/text.h"
#include "core/rules/text_rules.h"
#include "core/works/order.h"

namespace elbowroom {
namespace {

std::string range(Length from, Length to, Unit unit) {
  return sheetText(from, unit) + " to " + sheetText(to, unit);
}

std::string names(const Option& option, const std::vector<ElementId>& ids) {
  std::string all;
  for (const ElementId& id : ids) all += (all.empty() ? "" : ", ") + subjectName(option, id);
  return all;
}

}  // namespace

std::vector<PageContent> backingPages(const Layout& layout, Paper paper) {
  const std::vector<BackingZone> zones = backingZones(layout);
  if (zones.empty()) return {};
  const Unit unit = layout.settings.unit;
  TablePages pages("Backing", bodyOf(paper));
  pages.heading("Backing in the walls");
  pages.paragraph(
      "In place before the walls close. Numbers are those on the elevations; along the wall from its "
      "left corner as seen from inside, heights above the finished floor.");
  pages.begin({{"No.", 0.8},
               {"Wall", 1.3},
               {"For", 2.4},
               {"Along the wall", 2.4},
               {"Height", 2.2},
               {"Material", 4.2},
               {"Load, source and how it was checked", 5}});
  for (std::size_t i = 0; i < zones.size(); ++i) {
    const BackingZone& z = zones[i];
    std::string use(wordsOf(z.use));
    use[0] = static_cast<char>(use[0] - 'a' + 'A');
    const std::string items = names(layout.option, z.items);
    std::string material(z.material), caution(z.caution);
    if (z.answered) material += " (the plan states that the wall is backed so)";
    pages.row({{"B" + std::to_string(i + 1), "", true},
               {z.wall.text, ""},
               {use + (z.later ? ", for later" : ""), z.later ? "At " + items : items},
               {range(z.from, z.to, unit), ""},
               {range(z.bottom, z.top, unit), ""},
               {material, caution},
               {z.load, std::string(z.source) + "; " + std::string(wordsOf(z.grade))}});
  }
  pages.end();
  return pages.take();
}

std::vector<PageContent> wiringPages(const Layout& layout, Paper paper) {
  const std::vector<ElectricalZone> zones = electricalZones(layout, choiceOf(layout.settings));
  if (zones.empty()) return {};
  const Unit unit = layout.settings.unit;
  TablePages pages("Wiring zones", bodyOf(paper));
  pages.heading("Zones of wiring on the walls");
  pages.paragraph(
      "For the licensed electrician, who decides with the permit office. Along the wall from its left "
      "corner as seen from inside, heights above the finished floor; limits of the editions chosen.");
  pages.begin(
      {{"Wall", 1.3}, {"What", 3.2}, {"Of", 2.4}, {"Along the wall", 2.4}, {"Height", 2.2}, {"Source", 6}});
  for (const ElectricalZone& z : zones) {
    pages.row({{z.wall.text, "", true},
               {std::string(wordsOf(z.kind)), ""},
               {names(layout.option, z.of), ""},
               {range(z.from, z.to, unit), ""},
               {range(z.bottom, z.top, unit), ""},
               {sourceWords(z.source), std::string(wordsOf(z.grade))}});
  }
  pages.end();
  return pages.take();
}

std::vector<PageContent> orderPages(const Layout& layout, Paper paper) {
  const std::vector<WorkStep> steps = orderOfWorks(layout);
  if (steps.empty()) return {};
  TablePages pages("Order of works", bodyOf(paper));
  pages.heading("Order of works");
  pages.paragraph("Each step after those named. Only what this plan gives a reason for.");
  pages.begin({{"No.", 0.8}, {"Step", 5.5}, {"After", 1.4}, {"Why it comes here", 7}, {"Concerns", 4}});
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const WorkStep& step = steps[i];
    std::string after;
    for (const std::string_view id : step.after)
      for (std::size_t k = 0; k < i; ++k)
        if (steps[k].id == id) after += (after.empty() ? "" : ", ") + std::to_string(k + 1);
    pages.row({{std::to_string(i + 1), "", true},
               {std::string(step.title), std::string(wordsOf(step.grade))},
               {after.empty() ? "-" : after, ""},
               {std::string(step.why), ""},
               {step.elements.empty() ? "the room" : names(layout.option, step.elements), ""}});
  }
  pages.end();
  return pages.take();
}

}  // namespace elbowroom

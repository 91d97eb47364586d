#include "core/drawing/page.h"
#include "core/drawing/wish_page.h"

namespace elbowroom {

std::vector<Sheet> makeSheets(const Layout& layout, const Report& report, const SheetInfo& info) {
  std::vector<PageContent> pages;
  const auto add = [&](bool chosen, auto make) {
    if (!chosen) return;
    int run = 1;  // pages of one name in a row: "Findings list", "Findings list 2", ...
    std::string before;
    for (PageContent& page : make()) {
      run = page.name == before ? run + 1 : 1;
      before = page.name;
      if (run > 1) page.name += " " + std::to_string(run);
      pages.push_back(std::move(page));
    }
  };
  using Pages = std::vector<PageContent>;
  const SheetChoice& choice = info.choice;
  add(choice.plan, [&] { return Pages{planPage(layout, report, info.paper)}; });
  add(choice.elevations, [&] { return elevationPages(layout, report, info.paper, info.layers); });
  add(choice.mirrors, [&] { return mirrorPages(layout, info.paper); });
  add(choice.works, [&] { return backingPages(layout, info.paper); });
  add(choice.works, [&] { return wiringPages(layout, info.paper); });
  add(choice.works, [&] { return orderPages(layout, info.paper); });
  add(choice.schedules, [&] { return schedulePages(layout, info.paper); });
  add(choice.findings, [&] { return wishPages(layout, report, info.paper); });
  add(choice.findings, [&] { return Pages{findingsPlanPage(layout, report, info.paper)}; });
  add(choice.findings, [&] { return findingPages(layout, report, info.paper); });
  if (pages.empty()) pages.push_back(planPage(layout, report, info.paper));

  std::vector<Sheet> sheets;
  TitleFacts facts;
  facts.title = layout.settings.title.empty() ? "Bathroom plan" : layout.settings.title;
  facts.option = layout.option.name;
  facts.date = info.date;
  facts.units = layout.settings.unit == Unit::inches ? "Feet and inches" : "Millimetres";
  for (std::size_t i = 0; i < pages.size(); ++i) {
    PageContent& page = pages[i];
    facts.sheet = "P" + std::to_string(i + 1) + " " + page.name;
    facts.number = std::to_string(i + 1) + " of " + std::to_string(pages.size());
    facts.scale = page.scale ? page.scale->name : "";
    Sheet sheet{facts.sheet, sizeOf(info.paper), page.scale, furnish(info.paper, facts)};
    append(sheet.content, std::move(page.content));
    sheets.push_back(std::move(sheet));
  }
  return sheets;
}

}  // namespace elbowroom

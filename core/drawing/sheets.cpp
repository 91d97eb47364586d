#include "core/drawing/page.h"
#include "core/drawing/wish_page.h"

namespace elbowroom {

std::vector<Sheet> makeSheets(const Layout& layout, const Report& report, const SheetInfo& info) {
  std::vector<PageContent> schedules = schedulePages(layout, info.paper);
  std::vector<PageContent> wishes = wishPages(layout, report, info.paper);
  std::vector<PageContent> findings = findingPages(layout, report, info.paper);
  findings.insert(findings.begin(), findingsPlanPage(layout, report, info.paper));
  std::vector<PageContent> pages;
  pages.push_back(planPage(layout, report, info.paper));
  for (auto* part : {&schedules, &wishes, &findings}) {
    int run = 1;  // pages of one name in a row: "Findings list", "Findings list 2", ...
    for (std::size_t i = 0; i < part->size(); ++i) {
      run = i > 0 && (*part)[i].name == (*part)[i - 1].name ? run + 1 : 1;
      pages.push_back((*part)[i]);
      if (run > 1) pages.back().name += " " + std::to_string(run);
    }
  }

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

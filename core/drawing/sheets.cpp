#include "core/drawing/page.h"

namespace elbowroom {

std::vector<Sheet> makeSheets(const Layout& layout, const Report& report, const SheetInfo& info) {
  std::vector<PageContent> schedules = schedulePages(layout, info.paper);
  std::vector<PageContent> findings = findingPages(layout, report, info.paper);
  findings.insert(findings.begin(), findingsPlanPage(layout, report, info.paper));
  std::vector<PageContent> pages;
  pages.push_back(planPage(layout, report, info.paper));
  std::string continued;
  for (auto* part : {&schedules, &findings}) {
    for (std::size_t i = 0; i < part->size(); ++i) {
      if (i > 0 && (*part)[i].name == (*part)[i - 1].name) continued = " (continued)";
      else continued.clear();
      pages.push_back((*part)[i]);
      pages.back().name += continued;
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

#include "core/drawing/page.h"

namespace elbowroom {
namespace {

struct Named {
  const char* name;
  int divisor;
};
// Largest first after the preferred one: architects' scales by the foot; for metric plans what scale rules
// carry.
constexpr Named kFeet[] = {{"1/2\" = 1'-0\"", 24},  {"3/8\" = 1'-0\"", 32}, {"1/4\" = 1'-0\"", 48},
                           {"3/16\" = 1'-0\"", 64}, {"1/8\" = 1'-0\"", 96}, {"1/16\" = 1'-0\"", 192}};
constexpr Named kMetric[] = {{"1:20", 20}, {"1:25", 25}, {"1:30", 30},   {"1:40", 40},
                             {"1:50", 50}, {"1:75", 75}, {"1:100", 100}, {"1:200", 200}};

}  // namespace

std::optional<Scale> chooseScale(const Layout& layout, Paper paper) {
  const Field field = planFields(paper).drawing;
  const auto fits = [&](const Named& named) {
    DrawStyle style;
    style.mm = Length::fromMillimetres(named.divisor);
    style.unit = layout.settings.unit;
    DisplayList list = drawPlan(layout, style);
    append(list, drawDimensions(layout, style));
    const Box box = boundsOf(list);
    return (box.high.x - box.low.x).millimetres() <= field.width() * named.divisor &&
           (box.high.y - box.low.y).millimetres() <= field.height() * named.divisor;
  };
  const auto first = [&](const auto& list) -> std::optional<Scale> {
    for (const Named& named : list) {
      if (fits(named)) return Scale{named.name, 1.0 / named.divisor};
    }
    return std::nullopt;
  };
  return layout.settings.unit == Unit::inches ? first(kFeet) : first(kMetric);
}

}  // namespace elbowroom

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

constexpr Named kFeetDetail[] = {
    {"3\" = 1'-0\"", 4}, {"1 1/2\" = 1'-0\"", 8}, {"1\" = 1'-0\"", 12}, {"3/4\" = 1'-0\"", 16}};
constexpr Named kMetricDetail[] = {{"1:5", 5}, {"1:10", 10}};

}  // namespace

std::optional<Scale> firstScale(Unit unit, const std::function<bool(const Scale&)>& fits, bool detail) {
  const auto first = [&](const auto& list) -> std::optional<Scale> {
    for (const Named& named : list) {
      const Scale scale{named.name, 1.0 / named.divisor};
      if (fits(scale)) return scale;
    }
    return std::nullopt;
  };
  if (detail) {
    if (const auto large = unit == Unit::inches ? first(kFeetDetail) : first(kMetricDetail)) return large;
  }
  return unit == Unit::inches ? first(kFeet) : first(kMetric);
}

std::optional<Scale> chooseScale(const Layout& layout, Paper paper) {
  const Field field = planFields(paper).drawing;
  return firstScale(layout.settings.unit, [&](const Scale& scale) {
    DrawStyle style;
    style.mm = Length::fromMillimetres(1 / scale.ratio);
    style.unit = layout.settings.unit;
    DisplayList list = drawPlan(layout, style);
    append(list, drawDimensions(layout, style));
    const Box box = boundsOf(list);
    return (box.high.x - box.low.x).scaled(scale.ratio).millimetres() <= field.width() &&
           (box.high.y - box.low.y).scaled(scale.ratio).millimetres() <= field.height();
  });
}

}  // namespace elbowroom

#include <algorithm>
#include <cmath>

#include "core/rules/check.h"

namespace elbowroom {

namespace {

// Spare, rounding slack and site slack of one figure, in the unit of its kind.
struct Margin {
  double spare, rounding, site;
};

Outcome verdict(Margin m) {
  if (m.spare <= -m.rounding) return Outcome::shortfall;
  return m.spare < m.site ? Outcome::close : Outcome::clear;
}

double valueOf(Length v) { return static_cast<double>(v.nm()); }
double valueOf(Area v) { return static_cast<double>(v.squareMicrometres()); }
double valueOf(Angle v) { return static_cast<double>(v.microdegrees()); }
double valueOf(Count v) { return v.value; }
double valueOf(Amount v) { return v.value(); }

double roundingOf(Length) { return valueOf(kMetTolerance); }
double siteOf(Length, Length site) { return valueOf(site); }
// An area is a product of two sides: each may miss by as much as a length may.
double sides(Area limit, Length each) {
  return 2 * std::sqrt(limit.squareInches()) * each.inches() * 645'160'000.0;
}
double roundingOf(Area limit) { return sides(limit, kMetTolerance); }
double siteOf(Area limit, Length site) { return sides(limit, site); }
// 0.02 in at the end of a 24 in leaf is 0.05 degrees. A leaf that opens all the way has nothing to spare by nature,
// so a met angle is clear, unless only rounding met it.
double roundingOf(Angle) { return valueOf(Angle::fromDegrees(0.05)); }
double siteOf(Angle, Length) { return 0; }
double roundingOf(Count) { return 0.5; }
double siteOf(Count, Length) { return 0; }
double roundingOf(Amount) { return 0.0005; }
double siteOf(Amount, Length) { return 0; }

template <typename T>
Outcome judgeAs(T measured, Compare compare, T limit, std::optional<T> high, Length site) {
  const double above = valueOf(measured) - valueOf(limit);
  double spare = compare == Compare::atMost ? -above : above;
  if (compare == Compare::between && high) spare = std::min(spare, valueOf(*high) - valueOf(measured));
  return verdict({spare, roundingOf(limit), siteOf(limit, site)});
}

}  // namespace

Outcome judge(const Quantity& measured, Compare compare, const Quantity& limit,
              const std::optional<Quantity>& high, Length site_tolerance) {
  if (const bool* yes = std::get_if<bool>(&measured)) {
    const bool* wanted = std::get_if<bool>(&limit);
    if (wanted == nullptr) return Outcome::failed;
    return *yes == *wanted ? Outcome::clear : Outcome::shortfall;
  }
  if (measured.index() != limit.index() || (high && high->index() != limit.index())) return Outcome::failed;
  return std::visit(
      [&](const auto& value) {
        using T = std::decay_t<decltype(value)>;
        if constexpr (std::is_same_v<T, bool>) {
          return Outcome::failed;
        } else {
          std::optional<T> top;
          if (high) top = std::get<T>(*high);
          return judgeAs<T>(value, compare, std::get<T>(limit), top, site_tolerance);
        }
      },
      measured);
}

}  // namespace elbowroom

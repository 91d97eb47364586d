#include "core/rules/text_quantity.h"

#include "core/base/length_text.h"

#include <fmt/format.h>

namespace elbowroom {

namespace words {

namespace {

double toStep(double value, double step, Toward toward) {
  const double steps = value / step;
  switch (toward) {
    case Toward::nearest:
      return std::round(steps) * step;
    case Toward::lower:
      return std::floor(steps + 1e-9) * step;
    case Toward::higher:
      return std::ceil(steps - 1e-9) * step;
  }
  return value;
}

constexpr double kSixteenth = 1'587'500;  // nanometres
constexpr double kMillimetre = 1'000'000;
constexpr double kSquareInch = 645'160'000;  // square micrometres
constexpr double kThousandthOfSquareMetre = 1e9;
constexpr double kDegree = 1'000'000;

}  // namespace

constexpr double kSearchSlack = 50'800;  // 0.002 in, in nanometres

Quantity rounded(const Quantity& q, Unit unit, Toward toward) {
  const bool inches = unit == Unit::inches;
  if (const auto* l = std::get_if<Length>(&q)) {
    // A figure within the searches' own tolerance of a mark stands on the mark: 38 63/64 reads 38 15/16, but a
    // circle found as 38.9996 reads 39.
    const double slack = toward == Toward::lower ? kSearchSlack : toward == Toward::higher ? -kSearchSlack : 0;
    return Length::nanometres(std::llround(
        toStep(static_cast<double>(l->nm()) + slack, inches ? kSixteenth : kMillimetre, toward)));
  }
  if (const auto* a = std::get_if<Area>(&q))
    return Area::squareMicrometres(
        std::llround(toStep(static_cast<double>(a->squareMicrometres()),
                            inches ? kSquareInch : kThousandthOfSquareMetre, toward)));
  if (const auto* a = std::get_if<Angle>(&q))
    return Angle::microdegrees(std::llround(toStep(static_cast<double>(a->microdegrees()), kDegree, toward)));
  return q;
}

std::string flooredText(Length measured, Unit unit) {
  return lengthText(std::get<Length>(rounded(measured, unit, Toward::lower)), unit);
}

Quantity difference(const Quantity& larger, const Quantity& smaller) {
  if (const auto* l = std::get_if<Length>(&larger)) return *l - std::get<Length>(smaller);
  if (const auto* a = std::get_if<Area>(&larger)) return *a - std::get<Area>(smaller);
  if (const auto* a = std::get_if<Angle>(&larger)) return *a - std::get<Angle>(smaller);
  if (const auto* c = std::get_if<Count>(&larger)) return Count{c->value - std::get<Count>(smaller).value};
  if (const auto* a = std::get_if<Amount>(&larger)) return *a - std::get<Amount>(smaller);
  return false;
}

}  // namespace words

std::string quantityText(const Quantity& q, Unit unit) {
  if (const auto* l = std::get_if<Length>(&q))
    return unit == Unit::inches ? inchesText(*l) : millimetresText(*l);
  // Showers are discussed in square inches; a square foot with one decimal hides a miss of 4.
  if (const auto* a = std::get_if<Area>(&q))
    return unit == Unit::inches ? fmt::format("{:.0f} sq in", a->squareInches())
                                : fmt::format("{:.3f} m\u00b2", a->squareMetres());
  if (const auto* a = std::get_if<Angle>(&q)) return fmt::format("{:.0f}\u00b0", a->degrees());
  if (const auto* c = std::get_if<Count>(&q)) return fmt::format("{}", c->value);
  if (const auto* a = std::get_if<Amount>(&q)) return fmt::format("{:.4g}", a->value());
  return std::get<bool>(q) ? "yes" : "no";
}

}  // namespace elbowroom

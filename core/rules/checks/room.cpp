#include "core/rules/checks/room.h"

#include <algorithm>

#include "core/rules/check.h"
#include "core/rules/checks/common.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

constexpr Length kTurningT = 60_in;  // the square that holds the T, 2010 ADA Standards 304.3.2

// The search for the T costs more than the rest of a check; a floor smaller than the T (60 x 36 and 24 x 36
// in), or without room for the largest disc within it (45 in where base and bar meet), need not be searched.
bool couldHoldT(const Figures& figures) {
  constexpr double kAreaOfT = 60 * 36 + 24 * 36, kForgiven = 10;  // contact all round
  return figures.free_floor.squareInches() > kAreaOfT - kForgiven &&
         figures.turning.largest.radius * 2 > 45_in - kContact * 4;
}

}  // namespace

std::vector<Measurement> turningSpace(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  const TurningFigures& turning = in.figures.turning;
  const Length diameter = turning.with_knees.radius * 2;
  Measurement m{.subjects = {},
                .measured = diameter,
                .places = across(turning.with_knees),
                .detail = turning.knee_space_used ? "knee-space-used" : ""};
  if (diameter <= limitOf(in) - kMetTolerance && couldHoldT(in.figures)) {
    const auto& t = in.memo.once("turning T", {}, [&] { return turningTFigure(in.layout); });
    if (t) {
      m.measured = kTurningT;
      m.detail = "turning-by-t";
      m.places = {pointAt(t->center)};
    }
  }
  return {m};
}

std::vector<Measurement> turningSpaceForChair(const CheckInput& in) {
  const auto& people = in.layout.settings.people;
  const bool anyone =
      std::any_of(people.begin(), people.end(), [](const Person& p) { return p.chair.has_value(); });
  return anyone ? turningSpace(in) : std::vector<Measurement>{};
}

std::vector<Measurement> bareCircle(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  const Circle& circle = in.figures.turning.largest;
  return {{.subjects = {}, .measured = circle.radius * 2, .places = across(circle)}};
}

std::vector<Measurement> dressingSpace(const CheckInput& in) {
  if (yesNo(in.layout.option.room.facts, "compartment") == true) return {};
  return bareCircle(in);
}

std::vector<Measurement> ceilingHeight(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  Measurement m{.subjects = {}, .measured = std::nullopt, .places = {pointAt(centroidOf(in.layout.room))}};
  if (const auto& height = in.layout.option.room.ceiling.height)
    m.measured = *height;
  else
    m.detail = "ceiling-not-stated", m.fact = "ceiling.height";
  return {m};
}

}  // namespace elbowroom::checks

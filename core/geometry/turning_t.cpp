#include <algorithm>
#include <array>
#include <numbers>

#include "core/geometry/box_pattern.h"
#include "core/geometry/rigid_search.h"

namespace elbowroom {

using namespace floor_kernel;

namespace {

// The T in its own frame: +x from the base to the bar, the origin in the middle of its rectangle.
struct TBoxes {
  double half_along, half_across, half_base, inner;  // inner: x of the bar's inner side
  double chamfer;

  explicit TBoxes(const TurningShape& s)
      : half_along(s.along.inches() / 2),
        half_across(s.across.inches() / 2),
        half_base(s.base_width.inches() / 2),
        inner(half_along - s.bar_width.inches()),
        chamfer(s.chamfer.inches()) {}

  // Where the largest disc about a point of the middle line lies within bar and base.
  double roomiest() const {
    const double w = half_along - inner;
    return inner + std::max(w / 4, (w * w - half_base * half_base) / (2 * w));
  }
  double inscribed() const {
    const double x = roomiest() - inner;
    return std::min(
        {half_along - roomiest(), std::hypot(x, half_base), half_across, roomiest() + half_along});
  }
};

// All pieces about the roomiest point; what `under_knees` names may lie over layer 1.
RigidPattern patternOf(const TurningShape& shape, TurningEnd under_knees) {
  const TBoxes t(shape);
  const Vec ref{t.roomiest(), 0};
  RigidPattern pattern;
  pattern.inscribed = t.inscribed();
  pattern.reach = 0;
  pattern.period = 2 * std::numbers::pi;
  const auto add = [&](Vec low, Vec high, LayerMask layers) {
    pattern.pieces.push_back({low - ref, high - ref, false, layers});
  };
  constexpr LayerMask kFloor = 1, kStrict = 2, kBoth = 3;
  const Vec bar_low{t.inner, -t.half_across}, bar_high{t.half_along, t.half_across};
  const bool arm = under_knees == TurningEnd::leftArm || under_knees == TurningEnd::rightArm;
  add(bar_low, bar_high, arm ? kFloor : kBoth);
  if (under_knees == TurningEnd::leftArm) add(bar_low, {t.half_along, t.half_base}, kStrict);
  if (under_knees == TurningEnd::rightArm) add({t.inner, -t.half_base}, bar_high, kStrict);
  add({-t.half_along, -t.half_base}, {t.half_along, t.half_base},
      under_knees == TurningEnd::base ? kFloor : kBoth);
  if (t.chamfer > 0) {
    // A box at 45 degrees whose one side is the chamfer; the rest of it lies in bar and base.
    const double r = std::sqrt(0.5);
    for (const double side : {1.0, -1.0}) {
      const Vec corner = Vec{t.inner, side * t.half_base} - ref;
      // Axes of the diagonal frame: (r, r) and (-r, r). The left corner's chamfer faces +second, the right's
      // -first.
      const double first = r * (corner.x + corner.y), second = r * (corner.y - corner.x), c = r * t.chamfer;
      const bool free = under_knees == TurningEnd::base ||
                        under_knees == (side > 0 ? TurningEnd::leftArm : TurningEnd::rightArm);
      const LayerMask layers = free ? kFloor : kBoth;
      const double deep = std::min(t.chamfer, t.half_base);
      if (side > 0)
        pattern.pieces.push_back({{first - c, second - deep}, {first + c, second + c}, true, layers});
      else
        pattern.pieces.push_back({{first - c, second - c}, {first + deep, second + c}, true, layers});
    }
  }
  for (const Vec corner : {bar_high, Vec{t.inner, t.half_across}, Vec{-t.half_along, t.half_base}})
    pattern.reach = std::max(pattern.reach, norm(corner - ref));
  return pattern;
}

std::optional<Placed> placed(const std::optional<Pose>& pose, const TurningShape& shape) {
  if (!pose) return std::nullopt;
  const Axes axes(pose->turn);
  return Placed{toPoint(pose->at - TBoxes(shape).roomiest() * axes.u),
                Angle::fromRadians(pose->turn).normalised()};
}

}  // namespace

Outline turningOutline(const TurningShape& shape, Placed place) {
  const TBoxes t(shape);
  const Frame frame = Frame::turnedBy(place.turn);
  const Vec center = toInches(place.center);
  std::vector<Vec> ring{{-t.half_along, -t.half_base}};
  const auto corner = [&](double side) {
    const Vec along{t.inner - t.chamfer, side * t.half_base},
        across{t.inner, side * (t.half_base + t.chamfer)};
    if (side < 0) ring.push_back(along);
    if (t.chamfer > 0 || side > 0) ring.push_back(across);
    if (side > 0 && t.chamfer > 0) ring.push_back(along);
  };
  corner(-1);
  for (const Vec p : {Vec{t.inner, -t.half_across}, Vec{t.half_along, -t.half_across},
                      Vec{t.half_along, t.half_across}, Vec{t.inner, t.half_across}})
    ring.push_back(p);
  corner(1);
  ring.push_back({-t.half_along, t.half_base});
  Outline outline;
  for (const Vec p : ring) outline.push_back(toPoint(center + frame.outOf(p)));
  return outline;
}

Outline turningTOutline(Placed place) { return turningOutline(kTurningT2010, place); }
Length discWithin(const TurningShape& shape) { return Length::fromInches(2 * TBoxes(shape).inscribed()); }
Area areaOf(const TurningShape& s) {
  return s.across * s.bar_width + s.base_width * (s.along - s.bar_width) + s.chamfer * s.chamfer;
}

std::optional<Placed> FreeFloor::turningT() const { return turningT(kTurningT2010); }

std::optional<Placed> FreeFloor::turningT(const TurningShape& shape) const {
  const Surroundings around(*kernel_);
  return placed(anywhereRigid(around, patternOf(shape, TurningEnd::none)), shape);
}

std::optional<PlacedTurning> FreeFloor::turningT(const TurningShape& shape,
                                                 const FreeFloor& with_knees) const {
  if (const auto bare = turningT(shape)) return PlacedTurning{*bare, TurningEnd::none};
  if (with_knees.kernel_ == kernel_) return std::nullopt;
  // Over knee space with all three ends it would have to fit as well.
  if (!with_knees.turningT(shape)) return std::nullopt;
  Surroundings around(*with_knees.kernel_);
  around.addStrict(*kernel_);
  for (const TurningEnd end : {TurningEnd::base, TurningEnd::leftArm, TurningEnd::rightArm})
    if (const auto found = placed(anywhereRigid(around, patternOf(shape, end)), shape))
      return PlacedTurning{*found, end};
  return std::nullopt;
}

}  // namespace elbowroom

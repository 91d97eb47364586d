#include <algorithm>
#include <limits>
#include <numbers>

#include "core/geometry/beyond_sweep.h"
#include "core/geometry/box_pattern.h"
#include "core/geometry/rigid_search.h"

namespace elbowroom {

namespace floor_kernel {

Reach deepest(const Chord& chord, Vec at, BoxHalf half) {
  const Vec a = chord.a - at, d = chord.d;
  Reach best{-std::numeric_limits<double>::infinity(), {}};
  const auto offer = [&](double t) {
    const Vec p = a + std::clamp(t, 0.0, 1.0) * d;
    const double depth = std::min(half.x - std::fabs(p.x), half.y - std::fabs(p.y));
    if (depth > best.depth) best = {depth, p + at};
  };
  // The depth along the chord is concave and made of straight pieces, so its top lies at an end, where a
  // coordinate changes sign, or where two sides are equally near.
  offer(0);
  offer(1);
  if (d.x != 0) offer(-a.x / d.x);
  if (d.y != 0) offer(-a.y / d.y);
  const double excess = half.x - half.y;
  for (const double sign : {1.0, -1.0}) {
    const double rate = d.x - sign * d.y, start = a.x - sign * a.y;
    if (rate == 0) continue;
    offer((excess - start) / rate);
    offer((-excess - start) / rate);
  }
  return best;
}

}  // namespace floor_kernel

using namespace floor_kernel;

Fit FreeFloor::rectangleFit(Length along, Length across, Placed place) const {
  const Frame frame = Frame::turnedBy(place.turn);
  const BoxHalf half{along.inches() / 2, across.inches() / 2};
  const Vec center = toInches(place.center), at = frame.into(center);
  Fit fit;
  double worst = -std::numeric_limits<double>::infinity();
  const auto offer = [&](double depth, Vec where, int obstacle) {
    if (depth <= worst) return;
    worst = depth;
    fit.at = toPoint(where);
    fit.obstacle = obstacle;
  };
  // A thing that covers the middle reaches as deep as anything can.
  const double full = std::min(half.x, half.y);
  if (!kernel_->has_floor || !kernel_->inside(kernel_->rings[0], center)) offer(full, center, -1);
  for (std::size_t r = 1; r < kernel_->rings.size(); ++r)
    if (kernel_->inside(kernel_->rings[r], center)) offer(full, center, static_cast<int>(r) - 1);
  for (const Edge& e : kernel_->edges) {
    const Reach reach = deepest({frame.into(e.a), frame.into(e.d)}, at, half);
    offer(reach.depth, frame.outOf(reach.at), e.ring - 1);
  }
  const Length depth = Length::fromInches(std::max(0.0, worst));
  fit.fits = depth <= kContact;
  if (!fit.fits) fit.misses_by = depth;
  return fit;
}

Outline rectangleOutline(Length along, Length across, Placed place) {
  const Frame frame = Frame::turnedBy(place.turn);
  const Vec center = toInches(place.center);
  const double x = along.inches() / 2, y = across.inches() / 2;
  Outline outline;
  for (const Vec corner : {Vec{-x, -y}, Vec{x, -y}, Vec{x, y}, Vec{-x, y}})
    outline.push_back(toPoint(center + frame.outOf(corner)));
  return outline;
}

namespace {

RigidPattern rectanglePattern(Length along, Length across) {
  const Vec half{along.inches() / 2, across.inches() / 2};
  const double period = along == across ? std::numbers::pi / 2 : std::numbers::pi;
  return {{{-1.0 * half, half}}, std::min(half.x, half.y), norm(half), period};
}

}  // namespace

std::optional<Placed> FreeFloor::nearestRectangle(Length along, Length across, Placed near) const {
  if (rectangleFit(along, across, near).fits) return near;
  const Surroundings around(*kernel_);
  return placedAs(nearestRigid(around, rectanglePattern(along, across),
                               {toInches(near.center), near.turn.radians()}, false),
                  near.turn);
}

std::optional<Placed> FreeFloor::nearestRectangleAnyTurn(Length along, Length across, Placed near) const {
  if (rectangleFit(along, across, near).fits) return near;
  const Surroundings around(*kernel_);
  return placedAs(nearestRigid(around, rectanglePattern(along, across),
                               {toInches(near.center), near.turn.radians()}, true));
}

std::optional<Placed> FreeFloor::rectangleSomewhere(Length along, Length across) const {
  const Surroundings around(*kernel_);
  return placedAs(anywhereRigid(around, rectanglePattern(along, across)));
}

std::optional<Placed> beyondSweep(const FreeFloor& floor, const std::vector<Leaf>& leaves, Length along,
                                  Length across, Placed near) {
  Surroundings around(*floor.kernel_);
  for (const Leaf& leaf : leaves) around.addSector(leaf);
  const RigidPattern pattern = rectanglePattern(along, across);
  const Pose wanted{toInches(near.center), near.turn.radians()};
  if (liesClear(around, pattern, wanted, kContact.inches())) return near;
  return placedAs(anywhereRigid(around, pattern));
}

}  // namespace elbowroom

#include "core/geometry/turn_range.h"

namespace elbowroom::floor_kernel {
namespace {

// A side at `off` from the reference point, seen over all turns of a range with this cosine: a place that is
// within it, moved in by the cosine, at both ends is within it at all turns between.
double turnedIn(double off, double cosine) { return off >= 0 ? off * cosine : off; }

}  // namespace

int TurnRanges::add(double turn, double spread) {
  ranges_.push_back({turn, spread, 2 * std::sin(spread / 2), Axes(turn), -1});
  const Axes first(turn - spread), last(turn + spread);
  const double cosine = std::cos(spread);
  for (const Piece& piece : pattern_.pieces) {
    OfPiece& of = slabs_.emplace_back();
    for (int k = 0; k < 4; ++k) {
      const Axes& axes = k < 2 ? first : last;
      const Vec axis = k & 1 ? axes.second(piece.diagonal) : axes.first(piece.diagonal);
      const double low = k & 1 ? piece.low.y : piece.low.x, high = k & 1 ? piece.high.y : piece.high.x;
      of.all[k] = {
          axis, {std::fabs(axis.x), std::fabs(axis.y)}, -turnedIn(-low, cosine), turnedIn(high, cosine)};
    }
  }
  return static_cast<int>(ranges_.size()) - 1;
}

int TurnRanges::split(int range, int count) {
  const auto index = static_cast<std::size_t>(range);
  if (ranges_[index].parts >= 0) return ranges_[index].parts;
  const double turn = ranges_[index].turn, spread = ranges_[index].spread, part = spread / count;
  ranges_[index].parts = static_cast<int>(ranges_.size());
  for (int i = 0; i < count; ++i) add(turn - spread + (2 * i + 1) * part, part);
  return ranges_[index].parts;
}

}  // namespace elbowroom::floor_kernel

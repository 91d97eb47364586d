#include "core/geometry/necks.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "core/geometry/convex_parts.h"
#include "core/geometry/kernel.h"

namespace elbowroom::floor_kernel {
namespace {

constexpr double kBand =
    24;  // inches; necks are looked for in bands, as most questions end at the narrow ones

std::size_t edgesOf(const Outline& part) { return part.size() == 2 ? 1 : part.size(); }

}  // namespace

Necks::Necks(const Kernel& kernel) {
  const Outline& room = kernel.room;
  for (std::size_t i = 0; i < room.size(); ++i)
    if (const Point next = room[(i + 1) % room.size()]; room[i] != next) add({room[i], next});
  for (const Outline& o : kernel.obstacles)
    for (Outline& part : kernel::convexParts(o)) add(std::move(part));
  std::sort(parts_.begin(), parts_.end(),
            [](const Part& a, const Part& b) { return a.range.low.x < b.range.low.x; });
}

void Necks::add(Outline outline) {
  Part part;
  part.points = kernel::toInches(outline);
  part.range = kernel::rangeOf(part.points);
  part.outline = std::move(outline);
  parts_.push_back(std::move(part));
}

Neck Necks::between(int i, int j) const {
  const Part &a = parts_[static_cast<std::size_t>(i)], &b = parts_[static_cast<std::size_t>(j)];
  Neck neck{0, {i, j}, {}};
  const auto together = [&](Point p) {
    neck.side[0] = neck.side[1] = toInches(p);
    return neck;
  };
  if (squareBetween(a.range, b.range) == 0) {
    for (std::size_t k = 0; k < edgesOf(a.outline); ++k)
      for (std::size_t l = 0; l < edgesOf(b.outline); ++l) {
        const Point p = a.outline[k], q = a.outline[(k + 1) % a.outline.size()];
        const Point r = b.outline[l], s = b.outline[(l + 1) % b.outline.size()];
        if (kernel::segmentsTouch(p, q, r, s)) return together(kernel::sharedPoint(p, q, r, s));
      }
  }
  double least = std::numeric_limits<double>::infinity();
  const auto offer = [&](const Part& of, const Part& to, int side) {
    for (const Vec p : of.points) {
      if (squareTo(p, to.range) >= least) continue;
      for (std::size_t k = 0; k < edgesOf(to.outline); ++k) {
        const Vec q = kernel::nearestOnSegment(p, to.points[k], to.points[(k + 1) % to.points.size()]);
        const double square = dot(q - p, q - p);
        if (square >= least) continue;
        least = square;
        neck.side[side] = p;
        neck.side[1 - side] = q;
      }
    }
  };
  offer(a, b, 0);
  offer(b, a, 1);
  neck.width = std::sqrt(least);
  return neck;
}

const Neck* Necks::at(std::size_t i, double width) {
  while (i >= found_.size() && reached_ < width) findMore();
  return i < found_.size() && found_[i].width < width ? &found_[i] : nullptr;
}

void Necks::findMore() {
  const double from = reached_, to = from < 0 ? kBand : 2 * from;
  const std::size_t count = parts_.size();
  std::vector<Neck> now = std::exchange(wider_, {});
  for (std::size_t i = 0; i < count; ++i)
    for (std::size_t j = i + 1; j < count && parts_[j].range.low.x - parts_[i].range.high.x < to; ++j) {
      const Part &a = parts_[i], &b = parts_[j];
      const double square = squareBetween(a.range, b.range);
      if (square < to * to && (from < 0 || square >= from * from))
        now.push_back(between(static_cast<int>(i), static_cast<int>(j)));
    }
  const auto done = std::partition(now.begin(), now.end(), [&](const Neck& n) { return n.width < to; });
  wider_.assign(done, now.end());
  std::sort(now.begin(), done, [](const Neck& a, const Neck& b) { return a.width < b.width; });
  found_.insert(found_.end(), now.begin(), done);
  reached_ = to;
}

Neck Necks::centred(Neck neck) const {
  if (!(neck.width > 0)) return neck;
  const Vec across = (1 / neck.width) * (neck.side[1] - neck.side[0]), along{-across.y, across.x};
  double low = -std::numeric_limits<double>::infinity(), high = -low;
  for (int k = 0; k < 2; ++k) {
    double least = 0, most = 0;
    for (const Vec p : parts_[static_cast<std::size_t>(neck.part[k])].points) {
      const Vec off = p - neck.side[k];
      if (std::fabs(dot(off, across)) > 1e-6) continue;
      least = std::min(least, dot(off, along));
      most = std::max(most, dot(off, along));
    }
    low = std::max(low, least);
    high = std::min(high, most);
  }
  for (Vec& side : neck.side) side = side + (low + high) / 2 * along;
  return neck;
}

}  // namespace elbowroom::floor_kernel

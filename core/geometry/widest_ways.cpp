#include "core/geometry/widest_ways.h"

#include <algorithm>
#include <cstdint>
#include <deque>
#include <mutex>
#include <utility>

#include "core/geometry/free_floor_kernel.h"
#include "core/geometry/held_discs.h"
#include "core/geometry/necks.h"

namespace elbowroom {

using namespace floor_kernel;

namespace {

constexpr double kOnFloor = 0.005, kMovedOff = 0.01;  // inches
constexpr double kAlike = 4e-6;  // a neck no narrower than this less than the disc is none

// An end of ways, on free floor, and discs that hold it (held_discs.h).
struct End {
  Vec at;
  std::vector<Disc> discs;
};

End endOn(const floor_kernel::Kernel& kernel, Point point) {
  Vec p = floor_kernel::toInches(point);
  if (kernel.valueAt(p).f < kOnFloor) {
    const std::optional<Circle> moved = searchNearestCircle(kernel, kMovedOff, p);
    if (!moved) return {};
    p = floor_kernel::toInches(moved->center);
  }
  const double f = kernel.valueAt(p).f;
  if (!(f > 0)) return {};
  End end{p, discsHolding(kernel, p)};
  end.discs.push_back({p, f});
  return end;
}

// With those of the other end that hold this one as well: the search for a disc that holds both ends finds
// them too, but not to the last digit, and ways of one width would differ by a thousandth.
std::vector<Disc> discsOf(const End& end, const End& other) {
  std::vector<Disc> discs = end.discs;
  for (const Disc& d : other.discs)
    if (norm(d.at - end.at) <= d.radius) discs.push_back(d);
  return discs;
}

// One bit for each disc.
using Discs = std::uint64_t;
constexpr std::size_t kAtOnce = 32;

// Which of the discs' middles have the line from a to b on their right an odd number of times: as rings are
// closed, a middle within a ring has an odd number of its lines there.
Discs crossed(const std::vector<Disc>& discs, Vec a, Vec b) {
  Discs bits = 0;
  for (std::size_t i = 0; i < discs.size(); ++i) {
    const Vec p = discs[i].at;
    const bool above = a.y > p.y, end_above = b.y > p.y;
    if (above != end_above && (cross(b - a, p - a) > 0) == end_above) bits |= Discs{1} << i;
  }
  return bits;
}

// The parts of the boundary that necks have joined so far, and which discs the joins go round.
class Joined {
 public:
  explicit Joined(int parts) : to_(static_cast<std::size_t>(parts)), round_(to_.size()) {
    for (std::size_t i = 0; i < to_.size(); ++i) to_[i] = static_cast<int>(i);
  }
  // The discs within the ring that this neck closes; none where it closes no ring.
  Discs join(int a, int b, Discs crossed) {
    const auto [end_a, way_a] = endOf(a);
    const auto [end_b, way_b] = endOf(b);
    const Discs all = way_a ^ way_b ^ crossed;
    if (end_a == end_b) return all;
    to_[static_cast<std::size_t>(end_a)] = end_b;
    round_[static_cast<std::size_t>(end_a)] = all;
    return 0;
  }

 private:
  std::pair<int, Discs> endOf(int part) {
    Discs way = 0;
    while (to_[static_cast<std::size_t>(part)] != part) {
      const auto i = static_cast<std::size_t>(part);
      way ^= round_[i];
      part = to_[i];
    }
    return {part, way};
  }
  std::vector<int> to_;
  std::vector<Discs> round_;
};

// The narrowest place of a way: a neck, or where a disc at one end is all that there is room for.
struct Narrowest {
  double radius = 0;
  Disc disc;
  std::optional<Neck> neck;
};

// The widest way from any of the discs to any of the others, at most kAtOnce each, if it is wider than
// `so_far`.
void widen(Necks& necks, const std::vector<Disc>& from, const std::vector<Disc>& to, Narrowest& so_far) {
  std::vector<Disc> discs = from;
  discs.insert(discs.end(), to.begin(), to.end());
  struct Pair {
    std::size_t a, b;
    Disc smaller;
  };
  std::vector<Pair> open;  // not yet parted by a ring
  for (std::size_t a = 0; a < from.size(); ++a)
    for (std::size_t b = 0; b < to.size(); ++b)
      open.push_back({a, from.size() + b, from[a].radius < to[b].radius ? from[a] : to[b]});
  const auto roomiest = [&] {
    const auto top = std::max_element(open.begin(), open.end(), [](const Pair& p, const Pair& q) {
      return p.smaller.radius < q.smaller.radius;
    });
    return top == open.end() ? Disc{} : top->smaller;
  };
  Disc most = roomiest();
  Joined joined(necks.parts());
  for (std::size_t i = 0; most.radius > so_far.radius; ++i) {
    const Neck* next = necks.at(i, 2 * most.radius - kAlike);
    if (!next) break;
    const Neck& neck = *next;
    const Discs within = joined.join(neck.part[0], neck.part[1],
                                     crossed(discs, necks.anchor(neck.part[0]), neck.side[0]) ^
                                         crossed(discs, neck.side[0], neck.side[1]) ^
                                         crossed(discs, neck.side[1], necks.anchor(neck.part[1])));
    if (within == 0) continue;
    const bool wider = neck.width > 2 * so_far.radius;
    const std::size_t was = open.size();
    std::erase_if(open, [&](const Pair& p) {
      const bool parted = ((within >> p.a ^ within >> p.b) & 1) != 0;
      if (parted && wider && 2 * p.smaller.radius > neck.width + kAlike) so_far = {neck.width / 2, {}, neck};
      return parted;
    });
    if (open.size() < was) most = roomiest();
  }
  if (most.radius > so_far.radius) so_far = {most.radius, most, std::nullopt};
}

Route routeOf(Vec one, Vec other, Vec narrowest, double width) {
  Route route;
  route.width = Length::fromInches(width);
  route.reachable = route.width > Length{};
  route.narrowest = toPoint(narrowest);
  route.sides = {toPoint(one), toPoint(other)};
  return route;
}

// The two boundary points that pinch a disc which is as large as can be: the nearest one, and the nearest of
// those on the other side.
Route routeThrough(const floor_kernel::Kernel& kernel, const Disc& disc) {
  const Vec one = kernel.edges[static_cast<std::size_t>(kernel.valueAt(disc.at).edge)].nearest(disc.at);
  const Vec away = (1 / norm(disc.at - one)) * (disc.at - one);
  Vec other = disc.at + disc.at - one;
  double facing = 0;
  for (const Edge& e : kernel.edges) {
    const Vec q = e.nearest(disc.at);
    const double d = norm(q - disc.at), turned = d > 0 ? dot(q - disc.at, away) / d : -1;
    if (d < disc.radius + 0.01 && turned > facing) facing = turned, other = q;
  }
  return routeOf(one, other, disc.at, 2 * disc.radius);
}

}  // namespace

struct WidestWays::Floor {
  std::shared_ptr<const floor_kernel::Kernel> shared;
  const floor_kernel::Kernel& kernel = *shared;
  std::mutex mutex;
  Necks necks;
  std::deque<std::pair<Point, End>> ends;

  explicit Floor(std::shared_ptr<const floor_kernel::Kernel> of) : shared(std::move(of)), necks(kernel) {}

  const End& endAt(Point point) {
    const auto known =
        std::find_if(ends.begin(), ends.end(), [&](const auto& e) { return e.first == point; });
    if (known != ends.end()) return known->second;
    return ends.emplace_back(point, endOn(kernel, point)).second;
  }

  // The widest way, if it is wider than twice `radius`.
  Narrowest widest(const End& from, const End& to, double radius) {
    Narrowest widest;
    widest.radius = radius;
    if (from.discs.empty() || to.discs.empty()) return widest;
    const std::vector<Disc> starts = discsOf(from, to), ends = discsOf(to, from);
    const auto some = [](const std::vector<Disc>& all, std::size_t first) {
      const auto begin = all.begin() + static_cast<std::ptrdiff_t>(first);
      return std::vector<Disc>(begin,
                               begin + static_cast<std::ptrdiff_t>(std::min(kAtOnce, all.size() - first)));
    };
    for (std::size_t a = 0; a < starts.size(); a += kAtOnce)
      for (std::size_t b = 0; b < ends.size(); b += kAtOnce)
        widen(necks, some(starts, a), some(ends, b), widest);
    // What is left are discs that hold both ends wherever they can go without becoming smaller.
    const Circle both = searchLargestCircleHolding(kernel, from.at, to.at, widest.radius);
    if (const double radius = both.radius.inches(); radius > widest.radius)
      widest = {radius, {floor_kernel::toInches(both.center), radius}, std::nullopt};
    return widest;
  }
};

WidestWays::WidestWays(const FreeFloor& floor) : floor_(std::make_shared<Floor>(floor.kernel_)) {}

std::vector<Route> WidestWays::from(Point start, const std::vector<Point>& targets, Length than) const {
  std::vector<Route> routes(targets.size());
  const floor_kernel::Kernel& kernel = floor_->kernel;
  if (!kernel.has_floor || targets.empty()) return routes;
  const std::lock_guard lock(floor_->mutex);
  const End& from = floor_->endAt(start);
  const double least = than.inches() / 2;
  for (std::size_t i = 0; i < targets.size(); ++i) {
    const Narrowest narrowest = floor_->widest(from, floor_->endAt(targets[i]), least);
    if (!(narrowest.radius > least)) continue;
    if (narrowest.neck) {
      const Neck neck = floor_->necks.centred(*narrowest.neck);
      routes[i] = routeOf(neck.side[0], neck.side[1], 0.5 * (neck.side[0] + neck.side[1]), neck.width);
    } else {
      routes[i] = routeThrough(kernel, narrowest.disc);
    }
  }
  return routes;
}

}  // namespace elbowroom

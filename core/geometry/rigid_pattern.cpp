#include "core/geometry/rigid_pattern.h"

#include <algorithm>
#include <array>

namespace elbowroom::floor_kernel {
namespace {

constexpr double kHalfRoot2 = 0.70710678118654752;
constexpr double kChord = 2.2 * 3.14159265358979324 / 180;  // sagitta under 0.007 in on a 36 in leaf

void addEdges(std::vector<Blocker>& out, const Kernel& kernel, const Ring& ring, LayerMask layer) {
  for (int i = ring.first; i < ring.last; ++i) {
    const Edge& e = kernel.edges[static_cast<std::size_t>(i)];
    out.emplace_back(e, layer);
  }
}

// The piece shrunk by `depth`, cut by a wedge, against the disc that makes it a sector.
bool meetsSector(const kernel::Sector& sector, const Piece& piece, const Axes& axes, Vec at, double depth) {
  const Vec u = axes.first(piece.diagonal), v = axes.second(piece.diagonal);
  const Vec low = piece.low + Vec{depth, depth}, high = piece.high - Vec{depth, depth};
  if (low.x >= high.x || low.y >= high.y) return false;
  const Vec hinge = sector.world({});
  std::array<Vec, 8> ring;
  std::size_t count = 0;
  for (const Vec c : {low, Vec{high.x, low.y}, high, Vec{low.x, high.y}})
    ring[count++] = at + c.x * u + c.y * v - hinge;
  const Vec closed_in = sector.world({0, 1}) - hinge;
  const Vec open_in = sector.world(sector.openInward()) - hinge;
  for (const Vec inward : {closed_in, open_in}) {
    std::array<Vec, 8> kept;
    std::size_t n = 0;
    for (std::size_t i = 0; i < count; ++i) {
      const Vec p = ring[i], q = ring[(i + 1) % count];
      const double in_p = dot(p, inward), in_q = dot(q, inward);
      if (in_p > 0 && n < kept.size()) kept[n++] = p;
      if ((in_p > 0) != (in_q > 0) && n < kept.size()) kept[n++] = p + (in_p / (in_p - in_q)) * (q - p);
    }
    ring = kept;
    count = n;
    if (count < 3) return false;
  }
  bool around = true;
  for (std::size_t i = 0; i < count; ++i) {
    const Vec p = ring[i], d = ring[(i + 1) % count] - p;
    around = around && cross(d, -1.0 * p) > 0;
    const double n = dot(d, d), t = n > 0 ? std::clamp(-dot(p, d) / n, 0.0, 1.0) : 0;
    if (norm(p + t * d) < sector.reach()) return true;
  }
  return around;
}

}  // namespace

Surroundings::Surroundings(const Kernel& on) : floor(&on) {
  blockers.reserve(on.edges.size() + 64);
  for (const Ring& ring : on.rings) addEdges(blockers, on, ring, 1);
}

void Surroundings::addStrict(const Kernel& other) {
  strict = &other;
  for (std::size_t i = 0; i < other.obstacles.size(); ++i)
    if (i >= floor->obstacles.size() || other.obstacles[i] != floor->obstacles[i])
      addEdges(blockers, other, other.rings[i + 1], 2);
}

void Surroundings::addSector(const Leaf& leaf) {
  const kernel::Sector sector(leaf, leaf.width);
  if (sector.reach() <= 0 || sector.opening() <= 0) return;
  const int chords = std::max(1, static_cast<int>(std::ceil(sector.opening() / kChord)));
  Vec from = sector.world({});
  const auto to = [&](Vec p) {
    const Vec d = p - from;
    blockers.emplace_back(Span{from, d, 1 / dot(d, d)}, LayerMask{3});
    from = p;
  };
  for (int i = 0; i <= chords; ++i) {
    const double a = sector.opening() * i / chords;
    to(sector.world({sector.reach() * std::cos(a), sector.reach() * std::sin(a)}));
  }
  to(sector.world({}));
  sectors.push_back(sector);
}

bool Surroundings::isFree(Vec p) const { return floor->isFree(p) && (!strict || strict->isFree(p)); }

bool Surroundings::mayBeFree(Vec p, double radius) const {
  if (strict && strict->valueAt(p).f + radius < 0) return false;
  for (const kernel::Sector& sector : sectors)
    if (sector.contains(sector.local(toPoint(p)), radius + kContact.inches())) return false;
  return true;
}

Axes::Axes(double turn) : u{std::cos(turn), std::sin(turn)} {
  // Square to the plan to the last digit, so that exact fits stay exact.
  for (double* part : {&u.x, &u.y}) {
    if (std::fabs(*part) < 1e-12) *part = 0;
    if (std::fabs(std::fabs(*part) - 1) < 1e-12) *part = *part > 0 ? 1 : -1;
  }
  v = {-u.y, u.x};
  du = kHalfRoot2 * (u + v);
  dv = kHalfRoot2 * (v - u);
}

int contactsOf(const Blocker& edge, const Piece& piece, const Axes& axes, Vec at, Contact out[2]) {
  const Vec u = axes.first(piece.diagonal), v = axes.second(piece.diagonal);
  const Vec ra = edge.a - at, rb = ra + edge.d;
  const Vec a{dot(ra, u), dot(ra, v)}, b{dot(rb, u), dot(rb, v)};
  double best = std::min(a.x, b.x) - piece.high.x;
  int which = 0;
  const auto offer = [&](double gap, int id) {
    if (gap > best) best = gap, which = id;
  };
  offer(piece.low.x - std::max(a.x, b.x), 1);
  offer(std::min(a.y, b.y) - piece.high.y, 2);
  offer(piece.low.y - std::max(a.y, b.y), 3);
  const Vec d = b - a;
  const double length = norm(d);
  Vec normal;
  if (length > 0) {
    normal = {-d.y / length, d.x / length};
    if (dot(normal, a - 0.5 * (piece.low + piece.high)) > 0) normal = -1.0 * normal;
    // `normal` points from the edge to the piece.
    const Vec deep{normal.x > 0 ? piece.low.x : piece.high.x, normal.y > 0 ? piece.low.y : piece.high.y};
    offer(dot(normal, deep - a), 4);
  }
  const auto world = [&](Vec p) { return p.x * u + p.y * v; };
  if (which == 4) {
    const Vec away = world(normal);
    const Vec deep{normal.x > 0 ? piece.low.x : piece.high.x, normal.y > 0 ? piece.low.y : piece.high.y};
    const auto lever = [&](Vec p) { return dot(away, world({-p.y, p.x})); };
    out[0] = {best, away, lever(deep)};
    // The other corner of the side that faces the edge, or as much of that side as the edge runs along.
    const bool along_x = std::fabs(normal.y) > std::fabs(normal.x);
    Vec other = along_x ? Vec{normal.x > 0 ? piece.high.x : piece.low.x, deep.y}
                        : Vec{deep.x, normal.y > 0 ? piece.high.y : piece.low.y};
    const Vec tangent = (1 / length) * d;
    const double low = std::min(dot(a, tangent), dot(b, tangent)),
                 high = std::max(dot(a, tangent), dot(b, tangent));
    const double from = dot(deep, tangent), to = dot(other, tangent);
    if (std::fabs(to - from) < 1e-9) return 1;
    const double t = std::clamp((std::clamp(to, low, high) - from) / (to - from), 0.0, 1.0);
    other = deep + t * (other - deep);
    out[1] = {dot(normal, other - a), away, lever(other)};
    return 2;
  }
  const Vec outward = which == 0 ? Vec{1, 0} : which == 1 ? Vec{-1, 0} : which == 2 ? Vec{0, 1} : Vec{0, -1};
  const double side = which == 0   ? piece.high.x
                      : which == 1 ? -piece.low.x
                      : which == 2 ? piece.high.y
                                   : -piece.low.y;
  const Vec wo = world(outward);
  // The part of the edge that faces the side.
  const bool x_side = which < 2;
  const double pa = x_side ? a.y : a.x, pb = x_side ? b.y : b.x;
  const double low = x_side ? piece.low.y : piece.low.x, high = x_side ? piece.high.y : piece.high.x;
  double ta = 0, tb = 1;
  if (std::fabs(pb - pa) > 1e-9) {
    const double t0 = std::clamp((low - pa) / (pb - pa), 0.0, 1.0);
    const double t1 = std::clamp((high - pa) / (pb - pa), 0.0, 1.0);
    ta = std::min(t0, t1), tb = std::max(t0, t1);
  }
  int count = 0;
  for (const double t : {ta, tb}) {
    if (count == 1 && tb - ta < 1e-9) break;
    const Vec q = a + t * d;
    out[count++] = {dot(outward, q) - side, -1.0 * wo, dot(world({-outward.y, outward.x}), world(q))};
  }
  if (count == 2 && out[1].gap < out[0].gap) std::swap(out[0], out[1]);
  return count;
}

namespace {

// Separation on the best axis only.
double gapOf(const Blocker& edge, const Piece& piece, const Axes& axes, Vec at) {
  const Vec u = axes.first(piece.diagonal), v = axes.second(piece.diagonal);
  const Vec ra = edge.a - at;
  const Vec a{dot(ra, u), dot(ra, v)}, d{dot(edge.d, u), dot(edge.d, v)}, b = a + d;
  double gap = std::max(std::min(a.x, b.x) - piece.high.x, piece.low.x - std::max(a.x, b.x));
  gap = std::max(gap, std::max(std::min(a.y, b.y) - piece.high.y, piece.low.y - std::max(a.y, b.y)));
  const Vec half = 0.5 * (piece.high - piece.low), mid = 0.5 * (piece.high + piece.low);
  const double n = std::sqrt(dot(d, d));
  if (n > 0)
    gap =
        std::max(gap, (std::fabs(cross(d, mid - a)) - half.x * std::fabs(d.y) - half.y * std::fabs(d.x)) / n);
  return gap;
}

template <class Use>
void nearBlockers(const Surroundings& around, const RigidPattern& pattern, Vec at, Use use) {
  const double squared = pattern.reach * pattern.reach;
  for (const Blocker& edge : around.blockers)
    if (edge.distanceSquared(at) <= squared) use(edge);
}

}  // namespace

double overlapAt(const Surroundings& around, const RigidPattern& pattern, const Pose& pose) {
  const Axes axes(pose.turn);
  double least = HUGE_VAL;
  nearBlockers(around, pattern, pose.at, [&](const Blocker& edge) {
    for (const Piece& piece : pattern.pieces)
      if (piece.layers & edge.layer) least = std::min(least, gapOf(edge, piece, axes, pose.at));
  });
  return -least;
}

bool liesClear(const Surroundings& around, const RigidPattern& pattern, const Pose& pose, double forgiven) {
  if (overlapAt(around, pattern, pose) > forgiven || !around.isFree(pose.at)) return false;
  const Axes axes(pose.turn);
  for (const kernel::Sector& sector : around.sectors)
    for (const Piece& piece : pattern.pieces)
      if (meetsSector(sector, piece, axes, pose.at, forgiven)) return false;
  return true;
}

}  // namespace elbowroom::floor_kernel

// How the cost grows with the number of things: floors of bathrooms side by side, one thing of the middle one
// dragged.
//
// A bathroom is 96 x 120 in with nine fixtures and walls of its own round it (an opening of 36 in), so N
// things are N / 10 bathrooms. A step: the things within 60 in of the moved one are looked up, the floor
// about it rebuilt, its largest circle and the nearest 60 in circle searched and the gaps to all within 36 in
// measured. Beside it the largest circle of the whole floor from scratch: ours, GEOS's MaximumInscribedCircle
// to 0.01 in and Boost.Polygon's segment Voronoi diagram with the radius at every vertex. Both peers get the
// floor's outline ready-made by polyclipping, which is not counted.
#define USE_UNSTABLE_GEOS_CPP_API
#include <benchmark/benchmark.h>
#include <geos/algorithm/construct/MaximumInscribedCircle.h>

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/point.hpp>
#include <boost/geometry/index/rtree.hpp>
#include <boost/polygon/segment_data.hpp>
#include <boost/polygon/voronoi.hpp>
#include <map>

#include "core/geometry/measure.h"
#include "core/geometry/near_things.h"
#include "tests/bench/drag_scene.h"
#include "tests/oracle/geos_shapes.h"

namespace elbowroom::bench {
namespace {

const Length kNear = Length::fromInches(36), kWindow = Length::fromInches(60);

struct Storey {
  Outline room;
  std::vector<Outline> still;   // all but the moved thing
  std::vector<Box> boxes;       // of these
  std::vector<Outline> places;  // of the moved thing
};

Storey storeyOf(int things) {
  const int baths = std::max(1, things / 10), columns = std::max(1, static_cast<int>(std::sqrt(baths)));
  const int rows = (baths + columns - 1) / columns;
  constexpr double kAcross = 120, kUp = 150;
  Storey storey;
  storey.room = box(-24, -24, kAcross * columns + 24, kUp * rows + 24);
  const int middle = (rows / 2) * columns + columns / 2;
  for (int i = 0; i < baths; ++i) {
    const double x = kAcross * (i % columns), y = kUp * (i / columns);
    const auto add = [&](const Outline& o) { storey.still.push_back(o); };
    add({at(x, y), at(x + 96, y), at(x + 96, y + 120), at(x + 60, y + 120), at(x + 60, y + 116),
         at(x + 92, y + 116), at(x + 92, y + 4), at(x + 4, y + 4), at(x + 4, y + 116), at(x + 24, y + 116),
         at(x + 24, y + 120), at(x, y + 120)});
    add(ring(x + 34, y + 19, 30, 15, 48));
    add(ring(x + 84, y + 24, 8, 10, 20));
    add(box(x + 68, y + 4, 20, 8));
    add(box(x + 4, y + 70, 21, 32));
    add(ring(x + 14, y + 62, 7, 7, 16));
    add(box(x + 84, y + 44, 8, 18));
    add(box(x + 4, y + 36, 12, 18));
    add(box(x + 78, y + 66, 14, 12));
    const Outline last = box(x + 80, y + 96, 12, 12, 12);
    if (i != std::min(middle, baths - 1)) {
      add(last);
      continue;
    }
    for (int k = 0; k < kSteps; ++k) {
      const double a = 2 * std::numbers::pi * k / kSteps;
      storey.places.push_back(box(x + 42 + 12 * std::cos(a), y + 62 + 18 * std::sin(a), 14, 11, 7 * k % 90));
    }
  }
  for (const Outline& o : storey.still) storey.boxes.push_back(boundsOf(o));
  return storey;
}

const Storey& storey(const benchmark::State& state) {
  static std::map<std::int64_t, Storey> made;
  const auto n = state.range(0);
  if (!made.count(n)) made[n] = storeyOf(static_cast<int>(n));
  return made[n];
}

Outline outlineOf(const Box& b) { return {b.low, {b.high.x, b.low.y}, b.high, {b.low.x, b.high.y}}; }

void step(benchmark::State& state) {
  const Storey& s = storey(state);
  const NearThings things(s.boxes);
  std::vector<int> near;
  int at_step = 0;
  for (auto _ : state) {
    const Outline& moved = s.places[static_cast<std::size_t>(at_step)];
    at_step = (at_step + 1) % kSteps;
    const Box bounds = boundsOf(moved);
    things.within(bounds, kWindow, near);
    std::vector<Outline> about;
    for (const int i : near) about.push_back(s.still[static_cast<std::size_t>(i)]);
    about.push_back(moved);
    const FreeFloor floor(outlineOf(grown(bounds, kWindow)), about);
    benchmark::DoNotOptimize(floor.largestCircle());
    benchmark::DoNotOptimize(floor.nearestCircle(Length::fromInches(60), midpoint(bounds.low, bounds.high)));
    things.within(bounds, kNear, near);
    for (const int i : near)
      benchmark::DoNotOptimize(gapBetween(moved, s.still[static_cast<std::size_t>(i)]));
  }
}

void nearGrid(benchmark::State& state) {
  const Storey& s = storey(state);
  const NearThings things(s.boxes);
  std::vector<int> near;
  int at_step = 0;
  for (auto _ : state) {
    things.within(boundsOf(s.places[static_cast<std::size_t>(at_step)]), kNear, near);
    at_step = (at_step + 1) % kSteps;
    benchmark::DoNotOptimize(near.data());
  }
}

namespace bg = boost::geometry;
using TreePoint = bg::model::point<double, 2, bg::cs::cartesian>;
using TreeBox = bg::model::box<TreePoint>;

TreeBox treeBox(const Box& b) {
  return {{b.low.x.inches(), b.low.y.inches()}, {b.high.x.inches(), b.high.y.inches()}};
}

void nearBoostTree(benchmark::State& state) {
  const Storey& s = storey(state);
  std::vector<std::pair<TreeBox, int>> items;
  for (const Box& b : s.boxes) items.emplace_back(treeBox(b), static_cast<int>(items.size()));
  const bg::index::rtree<std::pair<TreeBox, int>, bg::index::rstar<16>> tree(items);
  std::vector<std::pair<TreeBox, int>> near;
  int at_step = 0;
  for (auto _ : state) {
    near.clear();
    const Box bounds = boundsOf(s.places[static_cast<std::size_t>(at_step)]);
    at_step = (at_step + 1) % kSteps;
    tree.query(bg::index::intersects(treeBox(grown(bounds, kNear))), std::back_inserter(near));
    benchmark::DoNotOptimize(near.data());
  }
}

std::vector<Outline> all(const Storey& s) {
  std::vector<Outline> things = s.still;
  things.push_back(s.places.front());
  return things;
}

void largest(benchmark::State& state) {
  const Storey& s = storey(state);
  const std::vector<Outline> things = all(s);
  for (auto _ : state) benchmark::DoNotOptimize(FreeFloor(s.room, things).largestCircle());
}

const std::vector<Outline>& regions(const benchmark::State& state) {
  static std::map<std::int64_t, std::vector<Outline>> made;
  const auto n = state.range(0);
  if (!made.count(n)) made[n] = freeRegions(storey(state).room, all(storey(state)));
  return made[n];
}

std::unique_ptr<geos::geom::LinearRing> geosRing(const Outline& ring) {
  std::vector<geos::geom::Coordinate> points;
  for (const Point& p : ring) points.emplace_back(p.x.inches(), p.y.inches());
  points.push_back(points.front());
  return oracle::factory().createLinearRing(
      std::make_unique<geos::geom::CoordinateArraySequence>(std::move(points)));
}

// The outer outline with all holes: the floor outside the bathrooms connects them, nothing else is enclosed.
void largestGeos(benchmark::State& state) {
  std::unique_ptr<geos::geom::LinearRing> outer;
  std::vector<std::unique_ptr<geos::geom::LinearRing>> holes;
  Area widest;
  for (const Outline& ring : regions(state)) widest = std::max(widest, areaOf(ring));
  for (const Outline& ring : regions(state)) {
    if (areaOf(ring) == widest)
      outer = geosRing(ring);
    else if (signedAreaOf(ring) < Area{})
      holes.push_back(geosRing(ring));
  }
  const auto floor = oracle::factory().createPolygon(std::move(outer), std::move(holes));
  for (auto _ : state) {
    geos::algorithm::construct::MaximumInscribedCircle mic(floor.get(), 0.01);
    benchmark::DoNotOptimize(mic.getRadiusLine()->getLength());
  }
}

using GridPoint = boost::polygon::point_data<int>;
using GridSegment = boost::polygon::segment_data<int>;

void largestVoronoi(benchmark::State& state) {
  constexpr double kGrid = 256;
  std::vector<GridSegment> segments;
  const auto gridded = [](Point p) {
    return GridPoint(static_cast<int>(std::lround(p.x.inches() * kGrid)),
                     static_cast<int>(std::lround(p.y.inches() * kGrid)));
  };
  for (const Outline& ring : regions(state))
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      const GridPoint a = gridded(ring[j]), b = gridded(ring[i]);
      if (!(a == b)) segments.emplace_back(a, b);
    }
  for (auto _ : state) {
    boost::polygon::voronoi_diagram<double> diagram;
    boost::polygon::construct_voronoi(segments.begin(), segments.end(), &diagram);
    double widest = 0;
    for (const auto& v : diagram.vertices()) {
      const GridSegment& s = segments[v.incident_edge()->cell()->source_index()];
      const boost::polygon::point_data<double> at(v.x(), v.y());
      const boost::polygon::segment_data<double> as({double(s.low().x()), double(s.low().y())},
                                                    {double(s.high().x()), double(s.high().y())});
      widest = std::max(widest, boost::polygon::euclidean_distance(as, at));
    }
    benchmark::DoNotOptimize(widest);
  }
}

// Once is enough where it takes long.
void few(benchmark::internal::Benchmark* b) {
  b->RangeMultiplier(10)->Range(10, 1000)->Unit(benchmark::kMicrosecond);
}
void many(benchmark::internal::Benchmark* b) { b->Arg(10000)->Iterations(1)->Unit(benchmark::kMicrosecond); }
void every(benchmark::internal::Benchmark* b) {
  b->RangeMultiplier(10)->Range(10, 10000)->Unit(benchmark::kMicrosecond);
}

BENCHMARK(step)->Apply(every);
BENCHMARK(nearGrid)->Apply(every);
BENCHMARK(nearBoostTree)->Apply(every);
BENCHMARK(largest)->Apply(few);
BENCHMARK(largest)->Apply(many);
BENCHMARK(largestGeos)->Apply(few);
BENCHMARK(largestGeos)->Apply(many);
BENCHMARK(largestVoronoi)->Apply(few);
BENCHMARK(largestVoronoi)->Apply(many);

}  // namespace
}  // namespace elbowroom::bench

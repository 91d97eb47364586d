// One mouse move's geometry, ours against GEOS and polyclipping doing the same in the same run.
//
// Per step: the floor rebuilt, largest circle, nearest 60 in circle, all clearances within 36 in, the door's
// first touch. The peers get their shapes ready-made outside the timed part. Unequal in their favour:
// GEOS circles are good to 0.01 in, its buffer to 8 chords a quadrant, the swing to 20 halvings.
#define USE_UNSTABLE_GEOS_CPP_API
#include <benchmark/benchmark.h>
#include <geos/algorithm/construct/MaximumInscribedCircle.h>
#include <geos/geom/prep/PreparedGeometry.h>
#include <geos/geom/prep/PreparedGeometryFactory.h>

#include <polyclipping/clipper.hpp>
#include <string>

#include "core/rules/recheck.h"
#include "tests/bench/budgets.h"
#include "tests/bench/drag_scene.h"
#include "tests/core/rules/test_room.h"
#include "tests/oracle/geos_shapes.h"

namespace elbowroom::bench {
namespace {

namespace cl = ClipperLib;
constexpr double kGrid = 65536;
const Length kNear = Length::fromInches(36);

const Drag& drag(int shape) {
  static const Drag drags[] = {dragIn(Shape::rectangle), dragIn(Shape::ell), dragIn(Shape::angled)};
  return drags[shape];
}

void ours(benchmark::State& state) {
  const Drag& d = drag(static_cast<int>(state.range(0)));
  int step = 0;
  for (auto _ : state) {
    const std::vector<Outline>& things = d.steps[step];
    step = (step + 1) % kSteps;
    const FreeFloor floor(d.room, things);
    benchmark::DoNotOptimize(floor.largestCircle());
    benchmark::DoNotOptimize(floor.nearestCircle(Length::fromInches(60), d.near));
    std::vector<Box> boxes;
    for (const Outline& o : things) boxes.push_back(boundsOf(o));
    for (std::size_t i = 0; i < things.size(); ++i) {
      benchmark::DoNotOptimize(gapToBoundary(things[i], d.room));
      for (std::size_t j = i + 1; j < things.size(); ++j)
        if (touch(grown(boxes[i], kNear), boxes[j]))
          benchmark::DoNotOptimize(gapBetween(things[i], things[j]));
    }
    benchmark::DoNotOptimize(firstTouch(d.leaf, d.leaf.width, things));
  }
}

// The same when one thing has moved: what the others keep from each other and from the walls is known.
void oursMoved(benchmark::State& state) {
  const Drag& d = drag(static_cast<int>(state.range(0)));
  int step = 0;
  for (auto _ : state) {
    const std::vector<Outline>& things = d.steps[step];
    step = (step + 1) % kSteps;
    const FreeFloor floor(d.room, things);
    benchmark::DoNotOptimize(floor.largestCircle());
    benchmark::DoNotOptimize(floor.nearestCircle(Length::fromInches(60), d.near));
    const Outline& moved = things.back();
    const Box box = boundsOf(moved);
    benchmark::DoNotOptimize(gapToBoundary(moved, d.room));
    for (std::size_t i = 0; i + 1 < things.size(); ++i)
      if (touch(grown(boundsOf(things[i]), kNear), box))
        benchmark::DoNotOptimize(gapBetween(things[i], moved));
    benchmark::DoNotOptimize(firstTouch(d.leaf, d.leaf.width, things));
  }
}

// The part that the drawing of the turning circle alone needs.
void oursFloorAndLargest(benchmark::State& state) {
  const Drag& d = drag(static_cast<int>(state.range(0)));
  int step = 0;
  for (auto _ : state) {
    const FreeFloor floor(d.room, d.steps[step]);
    step = (step + 1) % kSteps;
    benchmark::DoNotOptimize(floor.largestCircle());
  }
}

// A T of 304.3.2 at any angle, or the proof that there is none; and the same of 30 x 48.
void turningT(benchmark::State& state) {
  const Drag& d = drag(static_cast<int>(state.range(0)));
  int step = 0;
  for (auto _ : state) {
    const FreeFloor floor(d.room, d.steps[step]);
    step = (step + 1) % kSteps;
    benchmark::DoNotOptimize(floor.turningT());
  }
}
void clearFloorSpace(benchmark::State& state) {
  const Drag& d = drag(static_cast<int>(state.range(0)));
  int step = 0;
  for (auto _ : state) {
    const FreeFloor floor(d.room, d.steps[step]);
    step = (step + 1) % kSteps;
    benchmark::DoNotOptimize(
        floor.nearestRectangleAnyTurn(Length::fromInches(48), Length::fromInches(30), {d.near, {}}));
  }
}

struct PeerStep {
  cl::Path room;
  cl::Paths things;
  std::vector<oracle::Shape> shapes;
};

cl::Path pathOf(const Outline& ring) {
  cl::Path path;
  for (const Point& p : ring)
    path.emplace_back(std::llround(p.x.inches() * kGrid), std::llround(p.y.inches() * kGrid));
  if (!cl::Orientation(path)) cl::ReversePath(path);
  return path;
}

std::unique_ptr<geos::geom::LinearRing> ringOf(const cl::Path& path) {
  std::vector<geos::geom::Coordinate> points;
  for (const cl::IntPoint& p : path) points.emplace_back(p.X / kGrid, p.Y / kGrid);
  points.push_back(points.front());
  return oracle::factory().createLinearRing(
      std::make_unique<geos::geom::CoordinateArraySequence>(std::move(points)));
}

std::vector<oracle::Shape> freeFloor(const PeerStep& step) {
  cl::Clipper clipper;
  clipper.AddPath(step.room, cl::ptSubject, true);
  clipper.AddPaths(step.things, cl::ptClip, true);
  cl::PolyTree tree;
  clipper.Execute(cl::ctDifference, tree, cl::pftNonZero, cl::pftNonZero);
  std::vector<oracle::Shape> pieces;
  for (const cl::PolyNode* node = tree.GetFirst(); node; node = node->GetNext()) {
    if (node->IsHole()) continue;
    std::vector<std::unique_ptr<geos::geom::LinearRing>> holes;
    for (const cl::PolyNode* hole : node->Childs) holes.push_back(ringOf(hole->Contour));
    pieces.push_back(oracle::factory().createPolygon(ringOf(node->Contour), std::move(holes)));
  }
  return pieces;
}

void peers(benchmark::State& state) {
  const Drag& d = drag(static_cast<int>(state.range(0)));
  std::vector<PeerStep> steps;
  for (const std::vector<Outline>& things : d.steps) {
    PeerStep step;
    step.room = pathOf(d.room);
    for (const Outline& o : things) {
      step.things.push_back(pathOf(o));
      step.shapes.push_back(oracle::solid(o));
    }
    steps.push_back(std::move(step));
  }
  const oracle::Shape wall = oracle::boundary(d.room), near = oracle::dot(d.near);
  int at_step = 0;
  for (auto _ : state) {
    const PeerStep& step = steps[at_step];
    at_step = (at_step + 1) % kSteps;
    const std::vector<oracle::Shape> pieces = freeFloor(step);
    double largest = 0, nearest = 1e300;
    for (const oracle::Shape& piece : pieces) {
      geos::algorithm::construct::MaximumInscribedCircle mic(piece.get(), 0.01);
      largest = std::max(largest, mic.getRadiusLine()->getLength());
      const oracle::Shape eroded = piece->buffer(-30);
      if (!eroded->isEmpty()) nearest = std::min(nearest, eroded->distance(near.get()));
    }
    benchmark::DoNotOptimize(largest);
    benchmark::DoNotOptimize(nearest);
    for (std::size_t i = 0; i < step.shapes.size(); ++i) {
      benchmark::DoNotOptimize(step.shapes[i]->distance(wall.get()));
      for (std::size_t j = i + 1; j < step.shapes.size(); ++j)
        if (step.shapes[i]->getEnvelopeInternal()->distance(*step.shapes[j]->getEnvelopeInternal()) <= 36)
          benchmark::DoNotOptimize(step.shapes[i]->distance(step.shapes[j].get()));
    }
    double first = 90;
    for (const oracle::Shape& shape : step.shapes) {
      const auto prepared = geos::geom::prep::PreparedGeometryFactory::prepare(shape.get());
      const auto touches = [&](double degrees) {
        Leaf part = d.leaf;
        part.sweep = Angle::fromDegrees(degrees);
        return prepared->intersects(oracle::solid(sectorOutline(part, 16)).get());
      };
      if (!touches(first)) continue;
      double low = 0, high = first;
      for (int k = 0; k < 20; ++k) (touches((low + high) / 2) ? high : low) = (low + high) / 2;
      first = high;
    }
    benchmark::DoNotOptimize(first);
  }
}

// A step in the program: places derived, figures and every rule of the default books or of all. 12 fixtures.
class Bathroom {
 public:
  explicit Bathroom(bool all_books) {
    const FixtureKind kinds[] = {FixtureKind::bath,    FixtureKind::vanity,  FixtureKind::cabinet,
                                 FixtureKind::cabinet, FixtureKind::cabinet, FixtureKind::cabinet,
                                 FixtureKind::cabinet, FixtureKind::cabinet, FixtureKind::cabinet,
                                 FixtureKind::cabinet};
    room_.toilet(20);
    const char* walls[] = {"e", "s", "w", "n"};
    for (std::size_t i = 0; i < std::size(kinds); ++i)
      room_.add("f" + std::to_string(i), kinds[i], walls[i % 4],
                i == 0 ? 60 : 14 + 9.0 * static_cast<double>(i), i == 0 ? 60 : 12, i == 0 ? 30 : 10);
    room_.add("moved", FixtureKind::cabinet, "n", 48, 14, 11);
    room_.door("w", 60, 30, Hand::left);
    choice.books = emptyPlan(Unit::inches).books;
    if (!all_books) return;
    choice.books.clear();
    for (const Book& book : allBooks()) choice.books.push_back(std::string(book.id));
  }
  Layout next() {
    const double a = 2 * std::numbers::pi * step_ / kSteps;
    step_ = (step_ + 1) % kSteps;
    room_.option().fixtures.back().placement = Standing{at(48 + 18 * std::cos(a), 60 + 24 * std::sin(a)), {}};
    return deriveLayout(room_.plan(), 0);
  }
  BookChoice choice;

 private:
  testing_room::TestRoom room_{96, 120};
  int step_ = 0;
};

void wholeCheck(benchmark::State& state) {
  Bathroom bathroom(state.range(0) != 0);
  for (auto _ : state) benchmark::DoNotOptimize(check(bathroom.next(), bathroom.choice));
}

// As the window does it while something is dragged.
void afterMove(benchmark::State& state) {
  Bathroom bathroom(state.range(0) != 0);
  Layout was = bathroom.next();
  Checked checked = checkAnew(was, bathroom.choice);
  for (auto _ : state) {
    Layout now = bathroom.next();
    checked = recheck(std::move(checked), was, now, bathroom.choice);
    was = std::move(now);
  }
}

BENCHMARK(ours)->DenseRange(0, 2)->Unit(benchmark::kMicrosecond);
BENCHMARK(oursMoved)->DenseRange(0, 2)->Unit(benchmark::kMicrosecond);
BENCHMARK(oursFloorAndLargest)->DenseRange(0, 2)->Unit(benchmark::kMicrosecond);
BENCHMARK(turningT)->DenseRange(0, 2)->Unit(benchmark::kMicrosecond);
BENCHMARK(clearFloorSpace)->DenseRange(0, 2)->Unit(benchmark::kMicrosecond);
BENCHMARK(peers)->DenseRange(0, 2)->Unit(benchmark::kMicrosecond);
BENCHMARK(wholeCheck)->Arg(0)->Arg(1)->Unit(benchmark::kMicrosecond);
BENCHMARK(afterMove)->Arg(0)->Arg(1)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace elbowroom::bench

int main(int argc, char** argv) {
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
  elbowroom::bench::Remembered times;
  benchmark::RunSpecifiedBenchmarks(&times);
  return elbowroom::bench::keepsBudgets(times) ? 0 : 1;
}

// A drag on the wall strip beside the same drag on the plan: all books, 12 fixtures, 8 things on the walls,
// along a closed path of 256 places. A step ends when plan, layout and report are new; a frame when it is
// painted as well. Budgets: all books at most 1 ms over the geometry, from mouse event to painted frame at
// most 8 ms.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QMouseEvent>
#include <cmath>
#include <numbers>

#include "core/plan/catalogue.h"
#include "core/plan/wall_catalogue.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/session/session.h"
#include "ui/walls/wall_strip.h"

namespace elbowroom::bench {
namespace {

using namespace literals;
using namespace ui;

constexpr int kPlaces = 256;

Plan plan() {
  Plan plan = emptyPlan(Unit::inches);
  plan.books.clear();
  for (const Book& book : allBooks()) plan.books.push_back(std::string(book.id));
  plan.people = {Person{"Tall adult", 74_in, false, {}, {}}, Person{"Small adult", 62_in, false, {}, {}}};
  Option& o = plan.options.front();
  const std::pair<const char*, Point> corners[] = {
      {"n", {0_in, 120_in}}, {"e", {96_in, 120_in}}, {"s", {96_in, 0_in}}, {"w", {0_in, 0_in}}};
  for (const auto& [id, from] : corners) {
    Wall wall;
    wall.id = {id};
    wall.from = from;
    wall.thickness = 4.5_in;
    wall.studs = Studs{8_in, 16_in, {}};
    o.room.walls.push_back(wall);
  }
  o.room.ceiling.height = 96_in;
  Opening door = typicalDoor(DoorAction::hinged, o);
  door.wall = {"w"};
  door.along = 60_in;
  o.openings.push_back(door);
  const auto fixture = [&](FixtureKind kind, const char* wall, Length along, Length width, Length depth) {
    Fixture f = typicalFixture(kind, o);
    f.placement = OnWall{{wall}, along, {}};
    f.width = width;
    f.depth = depth;
    o.fixtures.push_back(f);
  };
  fixture(FixtureKind::bath, "e", 60_in, 60_in, 30_in);
  fixture(FixtureKind::toilet, "s", 16_in, 20_in, 28_in);
  fixture(FixtureKind::vanity, "s", 48_in, 36_in, 21_in);
  const char* walls[] = {"n", "w"};
  for (int i = 0; i < 8; ++i) fixture(FixtureKind::cabinet, walls[i % 2], 12_in + 10_in * i, 9_in, 9_in);
  Fixture moved = typicalFixture(FixtureKind::cabinet, o);
  moved.id = {"moved"};
  moved.placement = Standing{{48_in, 60_in}, {}};
  o.fixtures.push_back(moved);
  const char* kinds[] = {"mirror",    "side-light", "side-light", "receptacle",
                         "towel-bar", "niche",      "grab-bar",   "hook"};
  const Length along[] = {48_in, 28_in, 68_in, 74_in, 30_in, 20_in, 50_in, 90_in};
  const char* on[] = {"s", "s", "s", "s", "n", "e", "e", "w"};
  for (int i = 0; i < 8; ++i) {
    WallItem item = typicalWallItem(kinds[i], o);
    item.wall = {on[i]};
    item.along = along[i];
    o.on_walls.push_back(item);
  }
  return plan;
}

Point placeAt(int step, Point centre, Length across, Length up) {
  const double a = 2 * std::numbers::pi * step / kPlaces;
  return centre + Vector{across.scaled(std::cos(a)), up.scaled(std::sin(a))};
}

void move(QWidget* widget, QPointF at, QEvent::Type type, Qt::MouseButton button, Qt::MouseButtons held) {
  QMouseEvent event(type, at, widget->mapToGlobal(at), button, held, Qt::NoModifier);
  QApplication::sendEvent(widget, &event);
}

// Holds the mouse down on a thing and carries it along the path, painted or not.
template <typename At>
void carry(benchmark::State& state, Session& session, QWidget* widget, At at, bool paint) {
  move(widget, at(0), QEvent::MouseButtonPress, Qt::LeftButton, Qt::LeftButton);
  int step = kPlaces / 4;  // far enough to be a drag
  move(widget, at(step), QEvent::MouseMove, Qt::NoButton, Qt::LeftButton);
  for (auto _ : state) {
    step = (step + 1) % kPlaces;
    move(widget, at(step), QEvent::MouseMove, Qt::NoButton, Qt::LeftButton);
    if (paint) widget->repaint();
  }
  if (!session.dragging()) state.SkipWithError("nothing was dragged");
  move(widget, at(step), QEvent::MouseButtonRelease, Qt::LeftButton, Qt::NoButton);
}

void onStrip(benchmark::State& state) {
  Session session(plan());
  WallStrip strip(session);
  strip.resize(1300, 220);
  strip.show();
  QApplication::processEvents();
  const ElementId mirror = session.option().on_walls.front().id;
  const QPointF centre = strip.placeOf(mirror).center();
  const Point from = strip.map().toPlan(centre);
  carry(state, session, strip.viewport(),
        [&](int step) {
          return strip.map().toPx(step == 0 ? from : placeAt(step, from + Vector{-18_in, 2_in}, 18_in, 8_in));
        },
        state.range(0) != 0);
}

void onPlan(benchmark::State& state) {
  Session session(plan());
  PlanCanvas canvas(session);
  canvas.resize(760, 520);
  canvas.show();
  QApplication::processEvents();
  canvas.zoomToFit();
  const Point from{48_in, 60_in};
  carry(state, session, &canvas,
        [&](int step) { return canvas.map().toPx(step == 0 ? from : placeAt(step, from, 18_in, 24_in)); },
        state.range(0) != 0);
}

BENCHMARK(onStrip)->ArgName("painted")->Arg(0)->Arg(1)->Unit(benchmark::kMicrosecond);
BENCHMARK(onPlan)->ArgName("painted")->Arg(0)->Arg(1)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace elbowroom::bench

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication app(argc, argv);
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}

// Rooms for the tests of the window; invented examples.
#pragma once

#include "core/plan/catalogue.h"

namespace elbowroom {

// A hall bath of 96 x 60 in with a door, a window, a bath, a toilet and a vanity that stand in each other's
// way.
inline Plan hallBath() {
  using namespace literals;
  Plan plan = emptyPlan(Unit::inches);
  plan.title = "Hall bath (invented example)";
  plan.people = {Person{"Tall adult", 74_in, false, {}, {}},
                 Person{"Visitor", 66_in, false, Chair{26_in, 48_in}, {}}};
  Option& o = plan.options.front();
  const auto wall = [&](const char* id, Point from, Length thickness) {
    Wall w;
    w.id = {id};
    w.from = from;
    w.thickness = thickness;
    o.room.walls.push_back(w);
  };
  wall("n", {0_in, 60_in}, 6.5_in);
  wall("e", {96_in, 60_in}, 4.5_in);
  wall("s", {96_in, 0_in}, 4.5_in);
  wall("w", {0_in, 0_in}, 4.5_in);
  o.room.walls[0].exterior = true;
  o.room.walls[2].plumbing = true;
  o.room.ceiling.height = 96_in;
  Opening door = typicalDoor(DoorAction::hinged, o);
  door.id = {"d1"};
  door.wall = {"w"};
  door.along = 40_in;
  o.openings.push_back(door);
  Opening window = typicalWindow(o);
  window.id = {"win"};
  window.wall = {"n"};
  window.along = 48_in;
  o.openings.push_back(window);
  const auto fixture = [&](FixtureKind kind, const char* id, const char* on, Length along) {
    Fixture f = typicalFixture(kind, o);
    f.id = {id};
    f.placement = OnWall{{on}, along, 0_in};
    o.fixtures.push_back(f);
  };
  fixture(FixtureKind::bath, "b", "e", 30_in);
  fixture(FixtureKind::toilet, "wc", "s", 45_in);
  fixture(FixtureKind::vanity, "v", "s", 75_in);
  WallItem mirror;
  mirror.id = {"m"};
  mirror.kind = "mirror";
  mirror.wall = {"s"};
  mirror.along = 75_in;
  mirror.bottom = 40_in;
  mirror.width = 24_in;
  mirror.height = 30_in;
  o.on_walls.push_back(mirror);
  return plan;
}

}  // namespace elbowroom

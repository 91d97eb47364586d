// The hall bath of the plan file's description (invented example): 96 x 60 in, walls n, e, s, w clockwise.
#pragma once

#include "core/plan/catalogue.h"
#include "core/plan/plan.h"

namespace elbowroom::testing {

inline Wall wall(const char* id, Point from, Length thickness) {
  Wall w;
  w.id = {id};
  w.from = from;
  w.thickness = thickness;
  return w;
}

inline Fixture onWall(Fixture f, const char* id, const char* wall_id, Length along) {
  f.id = {id};
  f.placement = OnWall{{wall_id}, along, {}};
  return f;
}

inline Plan hallBath() {
  using namespace literals;
  Plan plan = emptyPlan(Unit::inches);
  plan.title = "Hall bath (invented example)";
  plan.people = {Person{"Tall adult", 74_in, false, {}, {}}, Person{"Child", 40_in, true, {}, {}},
                 Person{"Visitor", 66_in, false, Chair{26_in, 48_in}, {}}};
  Option& o = plan.options[0];
  o.room.ceiling.height = 96_in;
  o.room.walls = {wall("n", {0_in, 60_in}, 6.5_in), wall("e", {96_in, 60_in}, 4.5_in),
                  wall("s", {96_in, 0_in}, 4.5_in), wall("w", {0_in, 0_in}, 4.5_in)};
  o.room.walls[2].plumbing = true;
  o.room.walls[2].studs = Studs{8_in, 16_in};

  Opening door = typicalDoor(DoorAction::hinged, o);
  door.id = {"d1"};
  door.wall = {"w"};
  door.along = 40_in;
  Opening window = typicalWindow(o);
  window.id = {"win"};
  window.wall = {"n"};
  window.along = 48_in;
  o.openings = {door, window};

  Fixture hamper = typicalFixture(FixtureKind::cabinet, o);
  hamper.id = {"hamper"};
  hamper.placement = Standing{{50_in, 53_in}, {}};
  o.fixtures = {onWall(typicalFixture(FixtureKind::bath, o), "b", "e", 30_in),
                onWall(typicalFixture(FixtureKind::toilet, o), "wc", "s", 45_in),
                onWall(typicalFixture(FixtureKind::vanity, o), "v", "s", 75_in), hamper};

  WallItem mirror;
  mirror.id = {"m"};
  mirror.kind = "mirror";
  mirror.wall = {"s"};
  mirror.along = 75_in;
  mirror.bottom = 36_in;
  mirror.width = 30_in;
  mirror.height = 60_in;
  o.on_walls = {mirror};
  CeilingItem fan;
  fan.id = {"f"};
  fan.kind = "fan";
  fan.at = {48_in, 30_in};
  o.on_ceiling = {fan};
  return plan;
}

}  // namespace elbowroom::testing

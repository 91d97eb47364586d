// Rooms built in code for tests: figures in inches, y down as the published drawings print them, turned up here.
#pragma once

#include "core/plan/catalogue.h"
#include "core/plan/layout.h"

namespace elbowroom::test {

inline Length in(double v) { return Length::fromInches(v); }

struct RoomMaker {
  Plan plan;
  double height;

  // A rectangle; walls n, e, s, w, each 4 1/2 in thick.
  RoomMaker(double width, double high) : RoomMaker({{0, 0}, {width, 0}, {width, high}, {0, high}}, high) {}
  // Corners clockwise as drawn (y down), the first two being the north wall.
  RoomMaker(std::vector<std::pair<double, double>> corners, double high) : height(high) {
    plan.options.emplace_back();
    option().name = "As found";
    const char* names[] = {"n", "e", "s", "w", "x", "y", "z"};
    for (std::size_t i = 0; i < corners.size(); ++i) {
      Wall wall;
      wall.id = {names[i]};
      wall.from = at(corners[i].first, corners[i].second);
      wall.thickness = in(4.5);
      option().room.walls.push_back(wall);
    }
  }
  Option& option() { return plan.options[0]; }
  Point at(double x, double y_down) const { return {in(x), in(height - y_down)}; }

  Fixture& fixture(const char* id, FixtureKind kind, const char* wall, double along, double width, double depth) {
    Fixture f;
    f.id = {id};
    f.kind = kind;
    f.placement = OnWall{{wall}, in(along), {}};
    f.width = in(width);
    f.depth = in(depth);
    option().fixtures.push_back(f);
    return option().fixtures.back();
  }
  Fixture& standing(const char* id, FixtureKind kind, double x, double y_down, double width, double depth) {
    Fixture& f = fixture(id, kind, "n", 0, width, depth);
    f.placement = Standing{at(x, y_down), {}};
    return f;
  }
  Opening& door(const char* id, const char* wall, double along, double width, Hand hinge, Swing swing) {
    Opening o;
    o.id = {id};
    o.wall = {wall};
    o.along = in(along);
    o.width = in(width);
    o.height = in(80);
    o.hinge = hinge;
    o.swing = swing;
    option().openings.push_back(o);
    return option().openings.back();
  }
  Layout layout() const { return deriveLayout(plan, 0); }
};

}  // namespace elbowroom::test

// Small rectangular rooms for tests: width along x, depth along y; walls n, e, s, w clockwise from the north.
#pragma once

#include <string>
#include <vector>

#include "core/rules/check.h"

namespace elbowroom::testing_room {

using namespace literals;

inline Length in(double inches) { return Length::fromInches(inches); }

class TestRoom {
 public:
  TestRoom(double width, double depth) : width_(in(width)), depth_(in(depth)) {
    plan_.options.resize(1);
    Option& o = plan_.options[0];
    o.name = "As found";
    addWall("n", {Length{}, depth_});
    addWall("e", {width_, depth_});
    addWall("s", {width_, Length{}});
    addWall("w", {});
    o.room.ceiling.height = 96_in;
  }

  // Back on the wall, its centreline `along` from the wall's left end.
  Fixture& add(const std::string& id, FixtureKind kind, const char* wall, double along, double width,
               double depth) {
    Fixture f;
    f.id = {id};
    f.kind = kind;
    f.placement = OnWall{{wall}, in(along), {}};
    f.width = in(width);
    f.depth = in(depth);
    plan_.options[0].fixtures.push_back(f);
    return plan_.options[0].fixtures.back();
  }
  Fixture& toilet(double along, double depth = 28) {
    return add("wc", FixtureKind::toilet, "n", along, 20, depth);
  }
  Opening& door(const char* wall, double along, double width, Hand hinge, Swing swing = Swing::in) {
    Opening o;
    o.id = {"d"};
    o.wall = {wall};
    o.along = in(along);
    o.width = in(width);
    o.height = 80_in;
    o.hinge = hinge;
    o.swing = swing;
    plan_.options[0].openings.push_back(o);
    return plan_.options[0].openings.back();
  }
  Plan& plan() { return plan_; }
  Option& option() { return plan_.options[0]; }

  Report report(std::vector<std::string> books) const {
    BookChoice choice;
    choice.books = std::move(books);
    return check(deriveLayout(plan_, 0), choice);
  }
  // All findings of one rule.
  std::vector<Finding> findings(const std::string& book, const std::string& rule) const {
    std::vector<Finding> found;
    for (const Finding& f : report({book}).findings)
      if (f.rule == rule) found.push_back(f);
    return found;
  }
  // Outcome of the only finding of a rule; notApplicable when there is none, failed when there are several.
  Outcome outcome(const std::string& book, const std::string& rule) const {
    const auto found = findings(book, rule);
    return found.empty() ? Outcome::notApplicable : found.size() > 1 ? Outcome::failed : found[0].outcome;
  }
  // Measured figure of the only finding, in inches; NaN without one.
  double measured(const std::string& book, const std::string& rule) const {
    const auto found = findings(book, rule);
    if (found.size() != 1 || !found[0].measured) return std::nan("");
    if (const auto* a = std::get_if<Area>(&*found[0].measured)) return a->squareInches();
    if (const auto* a = std::get_if<Angle>(&*found[0].measured)) return a->degrees();
    return std::get<Length>(*found[0].measured).inches();
  }
  double shortBy(const std::string& book, const std::string& rule) const {
    const auto found = findings(book, rule);
    if (found.size() != 1 || !found[0].short_by) return 0;
    if (const auto* a = std::get_if<Area>(&*found[0].short_by)) return a->squareInches();
    if (const auto* a = std::get_if<Angle>(&*found[0].short_by)) return a->degrees();
    return std::get<Length>(*found[0].short_by).inches();
  }

 private:
  void addWall(const char* id, Point from) {
    Wall wall;
    wall.id = {id};
    wall.from = from;
    wall.thickness = 4.5_in;
    plan_.options[0].room.walls.push_back(wall);
  }
  Plan plan_;
  Length width_, depth_;
};

// A thing on a wall: its centreline `along` from the wall's left end, its lower edge above the floor.
inline WallItem& item(TestRoom& room, const char* id, const char* kind, const char* wall, double along,
                      double bottom, double width, double height) {
  WallItem i;
  i.id = {id};
  i.kind = kind;
  i.wall = {wall};
  i.along = in(along);
  i.bottom = in(bottom);
  i.width = in(width);
  i.height = in(height);
  room.option().on_walls.push_back(i);
  return room.option().on_walls.back();
}

// 90 in deep, its north wall cut by a wing 4 in thick from x = 60 to 64: walls n1, a, b, c, n2, e, s, w; a bath
// 30 in deep lies left of the wing.
inline TestRoom besideWing(double width, double wing_depth) {
  TestRoom room(width, 90);
  std::vector<Wall>& walls = room.option().room.walls;
  walls.clear();
  const double end = 90 - wing_depth;
  const auto wall = [&](const char* id, double x, double y) {
    Wall w;
    w.id = {id};
    w.from = {in(x), in(y)};
    w.thickness = 4.5_in;
    walls.push_back(w);
  };
  wall("n1", 0, 90), wall("a", 60, 90), wall("b", 60, end), wall("c", 64, end), wall("n2", 64, 90),
      wall("e", width, 90), wall("s", width, 0), wall("w", 0, 0);
  room.add("bath", FixtureKind::bath, "n1", 30, 60, 30).height = 20_in;
  return room;
}

inline bool met(Outcome o) { return o == Outcome::clear || o == Outcome::close; }

}  // namespace elbowroom::testing_room

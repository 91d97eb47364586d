#include "core/plan/integrity.h"

#include <gtest/gtest.h>

#include <functional>

#include "tests/core/plan/hall_bath.h"

namespace elbowroom {
namespace {

using namespace literals;
using testing::hallBath;
using testing::wall;

struct Breaks {
  const char* code;  // after "integrity/"
  const char* place;
  std::function<void(Plan&)> how;
};

Option& o(Plan& p) { return p.options[0]; }
const Length k101m = 101'000_mm;

const Breaks kBreaks[] = {
    {"no-option", "/options", [](Plan& p) { p.options.clear(); }},
    {"option-name", "/options/0/name", [](Plan& p) { o(p).name.clear(); }},
    {"option-name", "/options/1/name", [](Plan& p) { p.options.push_back(p.options[0]); }},
    {"empty-id", "/options/0/room/walls/1", [](Plan& p) { o(p).room.walls[1].id = {}; }},
    {"empty-id", "/options/0/on_ceiling/0", [](Plan& p) { o(p).on_ceiling[0].id = {}; }},
    {"duplicate-id", "/options/0/fixtures/2", [](Plan& p) { o(p).fixtures[2].id = {"wc"}; }},
    {"duplicate-id", "/options/0/fixtures/1", [](Plan& p) { o(p).fixtures[1].id = {"n"}; }},
    {"duplicate-id", "/options/0/on_walls/0", [](Plan& p) { o(p).on_walls[0].id = {"d1"}; }},
    {"duplicate-id", "/options/0/on_ceiling/0", [](Plan& p) { o(p).on_ceiling[0].id = {"m"}; }},
    {"few-walls", "/options/0/room/walls",
     [](Plan& p) {
       o(p) = Option{};
       o(p).name = "A";
       o(p).room.walls = {wall("a", {0_in, 0_in}, 4_in), wall("b", {50_in, 0_in}, 4_in)};
     }},
    {"walls-cross", "/options/0/room/walls",
     [](Plan& p) { std::swap(o(p).room.walls[0].from, o(p).room.walls[1].from); }},
    {"walls-cross", "/options/0/room/walls",
     [](Plan& p) {
       o(p).room.walls[0].from = {96_in, 30_in};
     }},
    {"wall-turns-wrong", "/options/0/room/walls",
     [](Plan& p) { std::swap(o(p).room.walls[0].from, o(p).room.walls[2].from); }},
    {"wall-too-short", "/options/0/room/walls/0",
     [](Plan& p) {
       o(p).room.walls.insert(o(p).room.walls.begin() + 1, wall("x", {0.9_in, 60_in}, 4_in));
     }},
    {"no-such-wall", "/options/0/openings/1", [](Plan& p) { o(p).openings[1].wall = {"zz"}; }},
    {"no-such-wall", "/options/0/fixtures/1",
     [](Plan& p) {
       o(p).fixtures[1].placement = OnWall{{"zz"}, 1_in, {}};
     }},
    {"no-such-wall", "/options/0/on_walls/0", [](Plan& p) { o(p).on_walls[0].wall = {"d1"}; }},
    {"opening-too-long", "/options/0/openings/0", [](Plan& p) { o(p).openings[0].width = 60.01_in; }},
    {"opening-off-wall", "/options/0/openings/0", [](Plan& p) { o(p).openings[0].along = 14.99_in; }},
    {"opening-off-wall", "/options/0/openings/0", [](Plan& p) { o(p).openings[0].along = 45.01_in; }},
    {"openings-overlap", "/options/0/openings/2",
     [](Plan& p) {
       Opening second = o(p).openings[1];
       second.id = {"win2"};
       second.along += 23.9_in;
       o(p).openings.push_back(second);
     }},
    {"openings-overlap", "/options/0/openings/1",
     [](Plan& p) {
       o(p).openings[1].wall = {"w"};
       o(p).openings[1].along = 30_in;
     }},
    {"size", "/options/0/fixtures/1", [](Plan& p) { o(p).fixtures[1].width = 0_in; }},
    {"size", "/options/0/fixtures/1", [](Plan& p) { o(p).fixtures[1].depth = -(1_in); }},
    {"size", "/options/0/fixtures/1", [](Plan& p) { o(p).fixtures[1].height = 0_in; }},
    {"size", "/options/0/fixtures/1", [](Plan& p) { o(p).fixtures[1].bowl_width = 21_in; }},
    {"size", "/options/0/fixtures/1", [](Plan& p) { o(p).fixtures[1].tank_depth = 28_in; }},
    {"size", "/options/0/fixtures/2",
     [](Plan& p) {
       o(p).fixtures[2].knee_space = KneeSpace{0_in, 11_in, {}};
     }},
    {"size", "/options/0/fixtures/2", [](Plan& p) { o(p).fixtures[2].curb = -(1_in); }},
    {"size", "/options/0/openings/0", [](Plan& p) { o(p).openings[0].width = 0_in; }},
    {"size", "/options/0/openings/0", [](Plan& p) { o(p).openings[0].height = 0_in; }},
    {"size", "/options/0/openings/1", [](Plan& p) { o(p).openings[1].sill = -(1_in); }},
    {"size", "/options/0/openings/0", [](Plan& p) { o(p).openings[0].leaf_thickness = 0_in; }},
    {"size", "/options/0/on_walls/0", [](Plan& p) { o(p).on_walls[0].height = -(1_in); }},
    {"size", "/options/0/room/walls/3", [](Plan& p) { o(p).room.walls[3].thickness = 0_in; }},
    {"size", "/options/0/room/walls/2", [](Plan& p) { o(p).room.walls[2].studs->spacing = 0_in; }},
    {"size", "/options/0/room/ceiling", [](Plan& p) { o(p).room.ceiling.height = 0_in; }},
    {"size", "/people/2", [](Plan& p) { p.people[2].chair->width = 0_in; }},
    {"size", "/site_tolerance", [](Plan& p) { p.site_tolerance = -(1_in); }},
    {"too-far", "/options/0/room/walls/1", [](Plan& p) { o(p).room.walls[1].from.x = k101m; }},
    {"too-far", "/options/0/fixtures/3",
     [](Plan& p) {
       o(p).fixtures[3].placement = Standing{{0_in, -k101m}, {}};
     }},
    {"too-far", "/options/0/fixtures/1",
     [](Plan& p) {
       o(p).fixtures[1].placement = OnWall{{"s"}, k101m, {}};
     }},
    {"too-far", "/options/0/fixtures/1", [](Plan& p) { o(p).fixtures[1].width = k101m; }},
    {"too-far", "/options/0/on_ceiling/0", [](Plan& p) { o(p).on_ceiling[0].at.x = k101m; }},
    {"too-far", "/options/0/on_walls/0", [](Plan& p) { o(p).on_walls[0].bottom = -k101m; }},
    {"too-far", "/options/0/openings/0",
     [](Plan& p) { o(p).openings[0].along = Length::nanometres(INT64_MAX / 2); }},
    {"stature", "/people/0", [](Plan& p) { p.people[0].stature = 0_in; }},
    {"stature", "/people/0", [](Plan& p) { p.people[0].stature = 3001_mm; }},
    {"basins", "/options/0/fixtures/2", [](Plan& p) { o(p).fixtures[2].basins = 0; }},
    {"basins", "/options/0/fixtures/2", [](Plan& p) { o(p).fixtures[2].basins = 9; }},
};

TEST(Integrity, TheHallBathIsWhole) { EXPECT_EQ(integrity(hallBath()), std::nullopt); }

TEST(Integrity, EveryBreachIsNamedWithItsPlaceInASentence) {
  for (const Breaks& b : kBreaks) {
    Plan plan = hallBath();
    b.how(plan);
    const std::optional<Error> error = integrity(plan);
    ASSERT_TRUE(error) << b.code << " " << b.place;
    EXPECT_EQ(error->code, std::string("integrity/") + b.code) << b.place << ": " << error->message;
    EXPECT_EQ(error->place, b.place) << b.code << ": " << error->message;
    EXPECT_GT(error->message.size(), 20u);
    EXPECT_EQ(error->message.back(), '.');
  }
}

TEST(Integrity, BreachesInALaterOptionAreFoundThere) {
  Plan plan = hallBath();
  plan.options.push_back(plan.options[0]);
  plan.options[1].name = "Pocket door";
  EXPECT_EQ(integrity(plan), std::nullopt);  // ids are unique within an option only
  plan.options[1].fixtures[0].width = {};
  EXPECT_EQ(integrity(plan)->place, "/options/1/fixtures/0");
}

TEST(Integrity, WhatIsAtTheLimitIsWhole) {
  const std::function<void(Plan&)> allowed[] = {
      [](Plan& p) {
        o(p).room.walls.clear();
        o(p).openings.clear();
        o(p).fixtures.clear();
        o(p).on_walls.clear();
      },
      [](Plan& p) { o(p).openings[0].along = 15_in; },
      [](Plan& p) { o(p).openings[0].along = 45_in; },
      [](Plan& p) {
        o(p).openings[0].width = 60_in;
        o(p).openings[0].along = 30_in;
      },
      [](Plan& p) {
        o(p).room.walls.insert(o(p).room.walls.begin() + 1, wall("x", {95_in, 60_in}, 4_in));
      },
      [](Plan& p) { o(p).room.ceiling.height.reset(); },
      [](Plan& p) { o(p).fixtures[2].basins = 2; },
      [](Plan& p) { o(p).on_walls[0].width = o(p).on_walls[0].height = {}; },
      // fixtures may overlap and leave their wall: that is a finding, not a broken plan
      [](Plan& p) {
        o(p).fixtures[1].placement = OnWall{{"s"}, 500_in, {}};
      },
      [](Plan& p) {
        o(p).fixtures[3].placement = Standing{{48_in, 30_in}, 45_deg};
      },
      // a second window flush beside the first, and a light above the door
      [](Plan& p) {
        Opening second = o(p).openings[1];
        second.id = {"win2"};
        second.along += 24_in;
        o(p).openings.push_back(second);
      },
      [](Plan& p) {
        o(p).openings[1].wall = {"w"};
        o(p).openings[1].along = 40_in;
        o(p).openings[1].sill = 80_in;
        o(p).openings[1].height = 12_in;
      },
  };
  for (const auto& how : allowed) {
    Plan plan = hallBath();
    how(plan);
    const std::optional<Error> error = integrity(plan);
    EXPECT_FALSE(error) << &how - allowed << ": " << error->message;
  }
}

TEST(Integrity, AnOpeningMayFillASlantedWallWhoseLengthIsRounded) {
  Plan plan = emptyPlan(Unit::inches);
  o(plan).room.walls = {wall("a", {0_in, 0_in}, 4_in), wall("b", {35_in, 37_in}, 4_in),
                        wall("c", {90_in, -(10_in)}, 4_in)};
  Opening cased = typicalDoor(DoorAction::cased, o(plan));
  cased.wall = {"a"};
  cased.width = distance({0_in, 0_in}, {35_in, 37_in});
  cased.along = cased.width / 2;
  o(plan).openings = {cased};
  EXPECT_EQ(integrity(plan), std::nullopt);
}

}  // namespace
}  // namespace elbowroom

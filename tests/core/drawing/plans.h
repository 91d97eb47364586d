// Plans for the drawing tests: those in samples/ and some that are hard to draw. All invented.
#pragma once

#include <gtest/gtest.h>

#include <filesystem>
#include <string>
#include <vector>

#include "core/file/plan_file.h"
#include "core/plan/layout.h"
#include "core/rules/check.h"

namespace elbowroom::testing {

inline constexpr const char* kHallBath = R"json({
 "format": "elbowroom-plan", "version": 1, "unit": "in", "title": "Hall bath (invented example)", "north": 20,
 "books": ["us-residential", "us-electrical", "us-access", "comfort", "craft"],
 "people": [ {"name": "Tall adult", "stature": 74} ],
 "options": [ {"name": "As found",
   "room": {"ceiling": {"height": 96},
     "walls": [ {"id": "n", "from": [0,60], "thickness": 6.5, "exterior": true},
                {"id": "e", "from": [96,60], "thickness": 4.5},
                {"id": "s", "from": [96,0], "thickness": 4.5, "plumbing": true},
                {"id": "w", "from": [0,0], "thickness": 4.5} ]},
   "openings": [ {"id": "d1", "kind": "door", "wall": "w", "along": 40, "width": 30, "height": 80,
                  "action": "hinged", "hinge": "right", "swing": "in"},
                 {"id": "win", "kind": "window", "wall": "n", "along": 48, "width": 24, "height": 36,
       "sill": 44} ],
   "fixtures": [ {"id": "b", "kind": "bath", "wall": "e", "along": 30, "width": 60, "depth": 30,
       "height": 15, "status": "keep"},
                 {"id": "wc", "kind": "toilet", "wall": "s", "along": 45, "width": 20, "depth": 28,
       "status": "keep"},
                 {"id": "v", "kind": "vanity", "wall": "s", "along": 75, "width": 30, "depth": 21,
       "height": 34, "basins": 1},
                 {"id": "hamper", "kind": "cabinet", "name": "Laundry hamper", "at": [50,53], "turn": 0,
       "width": 18, "depth": 14, "height": 24} ]
 } ] })json";

// 4 ft by 2 ft 8 in, outward door: nearly nothing has room for a label.
inline constexpr const char* kPowderRoom = R"json({
 "format": "elbowroom-plan", "version": 1, "unit": "in",
  "title": "Powder room under the stairs (invented example)",
 "books": ["us-residential", "comfort", "craft"],
 "options": [ {"name": "As found",
   "room": {"walls": [ {"id": "n", "from": [0,56], "thickness": 4.5}, {"id": "e", "from": [32,56],
       "thickness": 4.5, "plumbing": true},
                       {"id": "s", "from": [32,0], "thickness": 4.5}, {"id": "w", "from": [0,0],
       "thickness": 4.5} ]},
   "openings": [ {"id": "d", "kind": "door", "wall": "s", "along": 16, "width": 24, "height": 80,
       "action": "hinged", "hinge": "left", "swing": "out"} ],
   "fixtures": [ {"id": "wc", "kind": "toilet", "wall": "n", "along": 16, "width": 18, "depth": 27,
       "status": "keep"},
                 {"id": "l", "kind": "basin", "name": "Corner hand basin, very small", "wall": "e",
       "along": 42, "width": 14, "depth": 10} ]
 } ] })json";

// Five openings in one wall, one of each action elsewhere, hardly any wall between.
inline constexpr const char* kManyOpenings = R"json({
 "format": "elbowroom-plan", "version": 1, "unit": "in", "title": "Many openings (invented example)",
 "books": ["us-residential", "us-access", "comfort", "craft"], "north": -90,
 "options": [ {"name": "A crowded wall & <odd> \"names\"",
   "room": {"ceiling": {"height": 92.25},
     "walls": [ {"id": "n", "from": [0,100], "thickness": 6.5, "exterior": true}, {"id": "e",
       "from": [150,100], "thickness": 4.5},
                       {"id": "s", "from": [150,0], "thickness": 4.5}, {"id": "w", "from": [0,0],
       "thickness": 4.5, "plumbing": true} ]},
   "openings": [ {"id": "w1", "kind": "window", "wall": "n", "along": 10, "width": 16, "height": 36,
       "sill": 44},
                 {"id": "w2", "kind": "window", "wall": "n", "along": 28.5, "width": 16, "height": 36,
       "sill": 44},
                 {"id": "w3", "kind": "window", "wall": "n", "along": 50, "width": 20, "height": 36},
                 {"id": "w4", "kind": "window", "wall": "n", "along": 120, "width": 4, "height": 36,
       "sill": 44},
                 {"id": "d1", "kind": "door", "wall": "e", "along": 28, "width": 24, "height": 80,
       "action": "pocket", "pocket_toward": "right"},
                 {"id": "d2", "kind": "door", "wall": "s", "along": 24, "width": 15, "height": 80,
       "action": "double", "swing": "in"},
                 {"id": "d3", "kind": "door", "wall": "s", "along": 70, "width": 30, "height": 80,
       "action": "surface-sliding", "slides_toward": "right"},
                 {"id": "d4", "kind": "door", "wall": "s", "along": 136, "width": 24, "height": 80,
       "action": "bifold", "hinge": "left", "swing": "in"},
                 {"id": "d5", "kind": "door", "wall": "w", "along": 20, "width": 32, "height": 80,
       "action": "cased"},
                 {"id": "d6", "kind": "door", "wall": "w", "along": 80, "width": 28, "height": 80,
       "action": "hinged", "hinge": "right", "swing": "out"} ],
   "fixtures": [ {"id": "wc", "kind": "toilet", "wall": "w", "along": 50, "width": 20, "depth": 28},
                 {"id": "bd", "kind": "bidet", "wall": "n", "along": 75, "width": 15, "depth": 22},
                 {"id": "sh", "kind": "shower", "wall": "n", "along": 130, "width": 40, "depth": 36,
       "curb": 4},
                 {"id": "old", "kind": "washer", "wall": "s", "along": 108, "width": 27, "depth": 27,
       "status": "remove"},
                 {"id": "fb", "kind": "freestanding-bath", "at": [95,52], "turn": 20, "width": 60,
       "depth": 30},
                 {"id": "ht", "kind": "heater", "wall": "n", "along": 95, "width": 24, "depth": 4} ]
 } ] })json";

inline constexpr const char* kLShape = R"json({
 "format": "elbowroom-plan", "version": 1, "unit": "mm", "title": "L-shaped ensuite (invented example)",
       "north": 0,
 "books": ["us-residential", "comfort", "craft"],
 "options": [ {"name": "Proposed",
   "room": {"ceiling": {"height": 2400},
     "walls": [ {"id": "a", "from": [0,3000], "thickness": 150, "exterior": true}, {"id": "b",
       "from": [1500,3000], "thickness": 115},
                {"id": "c", "from": [1500,1800], "thickness": 115}, {"id": "d", "from": [3200,1800],
       "thickness": 115},
                {"id": "e", "from": [3200,0], "thickness": 115, "plumbing": true}, {"id": "f",
       "from": [0,0], "thickness": 150, "exterior": true} ]},
   "openings": [ {"id": "d1", "kind": "door", "wall": "d", "along": 1300, "width": 762, "height": 2032,
       "action": "hinged", "hinge": "right", "swing": "in"},
                 {"id": "w1", "kind": "window", "wall": "a", "along": 750, "width": 600, "height": 900,
       "sill": 1100} ],
   "fixtures": [ {"id": "sh", "kind": "shower", "wall": "b", "along": 450, "width": 900, "depth": 900,
       "curb": 0, "drain": {"type": "linear"}},
                 {"id": "v", "kind": "vanity", "wall": "e", "along": 1800, "width": 1500, "depth": 530,
       "basins": 2, "height": 860},
                 {"id": "wc", "kind": "toilet", "wall": "f", "along": 900, "width": 500, "depth": 700},
                 {"id": "ln", "kind": "linen-closet", "wall": "c", "along": 900, "width": 500, "depth": 350} ]
 } ] })json";

inline constexpr const char* kAttic = R"json({
 "format": "elbowroom-plan", "version": 1, "unit": "in",
  "title": "Attic bath with an angled wall (invented example)",
 "books": ["us-residential", "comfort"], "north": 135,
 "options": [ {"name": "As found",
   "room": {"ceiling": {"height": 84},
     "walls": [ {"id": "n", "from": [0,84], "thickness": 6.5, "exterior": true}, {"id": "x",
       "from": [70,84], "thickness": 6.5, "exterior": true},
                {"id": "e", "from": [120,48], "thickness": 4.5}, {"id": "s", "from": [120,0],
       "thickness": 4.5, "plumbing": true},
                {"id": "w", "from": [0,0], "thickness": 4.5} ]},
   "openings": [ {"id": "d1", "kind": "door", "wall": "w", "along": 60, "width": 28, "height": 78,
       "action": "pocket", "pocket_toward": "left"},
                 {"id": "sky", "kind": "window", "wall": "x", "along": 30, "width": 24, "height": 30,
       "sill": 40} ],
   "fixtures": [ {"id": "v", "kind": "vanity", "wall": "n", "along": 36, "width": 36, "depth": 20,
       "basins": 1},
                 {"id": "bench", "kind": "bench", "wall": "x", "along": 30, "width": 40, "depth": 15},
                 {"id": "wc", "kind": "toilet", "wall": "s", "along": 30, "width": 19, "depth": 28},
                 {"id": "b", "kind": "bath", "wall": "s", "along": 90, "width": 60, "depth": 30} ]
 } ] })json";

// Large enough that no paper takes it at the preferred scale.
inline constexpr const char* kLargeRoom = R"json({
 "format": "elbowroom-plan", "version": 1, "unit": "in",
  "title": "A very long title that no title block can be expected to hold on one line, whatever the paper",
 "books": ["us-residential"],
 "options": [ {
   "name": "An option whose name is also very much longer than it has any right to be in a title block",
   "room": {"walls": [ {"id": "n", "from": [0,300], "thickness": 6.5}, {"id": "e", "from": [420,300],
       "thickness": 6.5},
                       {"id": "s", "from": [420,0], "thickness": 6.5}, {"id": "w", "from": [0,0],
       "thickness": 6.5} ]},
   "openings": [], "fixtures": [ {"id": "wc", "kind": "toilet", "wall": "s", "along": 45, "width": 20,
       "depth": 28} ]
 } ] })json";

inline constexpr const char* kEmptyRoom = R"json({
 "format": "elbowroom-plan", "version": 1, "unit": "mm", "title": "Nothing drawn (invented example)",
 "books": [], "options": [ {"name": "As found", "room": {"walls": []}, "openings": [],
       "fixtures": []} ] })json";

struct NamedPlan {
  std::string name;
  Plan plan;
};

inline Plan planOf(const char* json) {
  Result<Plan> plan = readPlan(json);
  if (!plan) ADD_FAILURE() << plan.error().message << " at " << plan.error().place;
  return plan ? *plan : emptyPlan(Unit::inches);
}

inline std::vector<NamedPlan> allPlans() {
  std::vector<NamedPlan> plans{{"hall", planOf(kHallBath)},   {"powder", planOf(kPowderRoom)},
                               {"many", planOf(kManyOpenings)}, {"l-shape", planOf(kLShape)},
                               {"attic", planOf(kAttic)},     {"large", planOf(kLargeRoom)},
                               {"empty", planOf(kEmptyRoom)}};
  const std::filesystem::path samples = std::filesystem::path(SOURCE_DIR) / "samples";
  if (std::filesystem::is_directory(samples)) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(samples)) {
      if (entry.path().extension() == ".elbowroom") files.push_back(entry.path());
    }
    std::sort(files.begin(), files.end());
    for (const auto& file : files) {
      Result<Plan> plan = loadPlan(file.string());
      if (plan) plans.push_back({file.stem().string(), *plan});
      else ADD_FAILURE() << plan.error().message;
    }
  }
  return plans;
}

}  // namespace elbowroom::testing

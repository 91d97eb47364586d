// A small plan file that uses every list (invented example), and ways to break it.
#pragma once

#include <stdexcept>
#include <string>

namespace elbowroom::testing {

inline const std::string kExamplePlan = R"plan({
 "format": "elbowroom-plan", "version": 1, "unit": "in", "title": "Hall bath (invented example)",
 "books": ["us-residential", "us-electrical", "comfort", "craft"],
 "people": [ {"name": "Tall adult", "stature": 74},
             {"name": "Child", "stature": 40, "child": true},
             {"name": "Visitor", "stature": 66, "chair": {"width": 26, "length": 48}} ],
 "options": [
  {"name": "As found",
   "room": {"ceiling": {"height": 96},
     "walls": [ {"id": "n", "from": [0,60], "thickness": 6.5, "exterior": true},
                {"id": "e", "from": [96,60], "thickness": 4.5},
                {"id": "s", "from": [96,0], "thickness": 4.5, "plumbing": true, "studs": {"first": 8, "spacing": 16}},
                {"id": "w", "from": [0,0], "thickness": 4.5} ]},
   "openings": [ {"id": "d1", "kind": "door", "wall": "w", "along": 40, "width": 30, "height": 80, "action": "hinged", "hinge": "right", "swing": "in"},
                 {"id": "win", "kind": "window", "wall": "n", "along": 48, "width": 24, "height": 36, "sill": 44} ],
   "fixtures": [ {"id": "b", "kind": "bath", "wall": "e", "along": 30, "width": 60, "depth": 30, "height": 15, "status": "keep"},
                 {"id": "wc", "kind": "toilet", "wall": "s", "along": 45, "width": 20, "depth": 28, "status": "keep"},
                 {"id": "v", "kind": "vanity", "wall": "s", "along": 75, "width": 30, "depth": 21, "height": 34, "basins": 1},
                 {"id": "hamper", "kind": "cabinet", "at": [50,53], "turn": 0, "width": 18, "depth": 14, "height": 24} ],
   "on_walls": [ {"id": "m", "kind": "mirror", "wall": "s", "along": 75, "bottom": 36, "width": 30, "height": 60} ],
   "on_ceiling": [ {"id": "f", "kind": "fan", "at": [48,30], "flow_cfm": 80} ]} ]
}
)plan";

// The text with its first `was` replaced; throws when there is none, so a test cannot pass by not breaking anything.
inline std::string changed(std::string text, const std::string& was, const std::string& now) {
  const std::size_t at = text.find(was);
  if (at == std::string::npos) throw std::logic_error("the example has no " + was);
  return text.replace(at, was.size(), now);
}
inline std::string exampleWith(const std::string& was, const std::string& now) {
  return changed(kExamplePlan, was, now);
}

}  // namespace elbowroom::testing

// What the open door shows from outside: a figure of the option that holds without any book.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/sight.h"
#include "core/plan/layout.h"

namespace elbowroom {

// Opaque on the way from an eye outside through this door: walls with the door's own hole through their
// thickness, the leaves where they stand when opened by `opens`, and things at least as high as `eye_height`
// (a linen closet whose height is not stated counts as high). Glass and other doors' holes do not count: glass
// shows what is behind it, the other doors are shut.
std::vector<Segment> opaqueThrough(const Layout&, const PlacedOpening&, Angle opens, Length eye_height);

// An eye on the centreline of the doorway, `out` from the wall's outer face.
Point eyeOutside(const Layout&, const PlacedOpening&, Length out);
// The doorway at the wall's outer face, what the eye looks through.
Segment doorwayOutside(const Layout&, const PlacedOpening&);

struct SightFigure {
  ElementId door;
  Point eye;
  Outline seen;  // the floor that shows, from the doorway onward; for drawing
  struct Thing {
    ElementId id;
    Seen seen;
  };
  std::vector<Thing> toilets;
};
// nullopt for windows and where no room is drawn. The eye is as high as the tallest person named, else as a tall
// man's (95 of 100 are smaller), who sees over most.
std::optional<SightFigure> sightFigure(const Layout&, const PlacedOpening&, Angle opens, Length out);

}  // namespace elbowroom

// Where hinged glass of a shower or bath hangs on a wall.
#pragma once

#include <vector>

#include "core/plan/layout.h"

namespace elbowroom {

struct GlassHinge {
  ElementId fixture;
  int wall = -1;              // index into the layout's walls
  Length along;               // from the wall's left end
  std::optional<Length> top;  // of the pane, when it is stated
  Point at;
};
// Doors whose hinge side stands within 1 in of a wall that runs across them; what hangs on other glass, and what is to
// be removed, is left out. In the order of fixtures and their sides.
std::vector<GlassHinge> glassHinges(const Layout&);

}  // namespace elbowroom

// Private to core/rules: what goes along when a fixture is moved along or to a wall.
#pragma once

#include "core/plan/edit.h"
#include "core/plan/layout.h"

namespace elbowroom::remedies {

// The same change with the things on walls that belong to the fixtures it moves: what names a shower or bath
// (head, control, spray, spout, niche), and the mirror and the light centred over a basin. What would leave
// its wall, or hangs on a wall that the move does not follow, stays. Unchanged when nothing goes along.
Change withBelongings(const Layout& layout, Change change);

}  // namespace elbowroom::remedies

// What the strip answers about a thing while it is carried: whether what goes into a wall fits between its
// studs, at which heights a mirror or a light serves everybody, and what the books publish for its height.
#pragma once

#include <optional>

#include "core/people/body.h"
#include "core/plan/bays.h"
#include "core/rules/published.h"
#include "ui/walls/strip_context.h"

namespace elbowroom::ui {

struct StripAnswer {
  bool good = false;
  QString words;   // "fits between its studs, 14 1/2" clear"
  WallBox box;     // the thing
  // Of a recess: the bay to stand in, the studs in the way.
  std::optional<WallSpan> bay;
  std::vector<Stud> cut;
  // Of a mirror (its lower edge) or a light (its middle): where it serves everybody.
  std::optional<HeightBand> band;
  // What the chosen books publish for its height, beside that.
  std::vector<PublishedBand> published;
};
// The report is that of the layout. nullopt: no such question about this thing, and no text publishes a height for it.
std::optional<StripAnswer> stripAnswer(const Layout&, const Report&, const ElementId&);
void paintAnswer(QPainter&, StripContext&, const StripAnswer&);

}  // namespace elbowroom::ui

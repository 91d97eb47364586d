// One drag with the mouse on the strip: moves things along and up their walls, or one edge of a thing. Each
// step restarts from the plan at the beginning of the drag, as on the plan.
#pragma once

#include <memory>

#include "ui/walls/strip_answers.h"

namespace elbowroom::ui {

class StripDrag {
 public:
  virtual ~StripDrag() = default;
  virtual void to(const Pointer&) = 0;
  virtual void paint(QPainter&) {}
  virtual QString words() const { return {}; }
};

// Which edges a handle moves: -1 the left or lower, 1 the right or upper, 0 none.
struct Handle {
  int across = 0, up = 0;
  Point at;  // strip figures
  bool operator==(const Handle&) const = default;
};
// Handles of the one selected thing; none for what has a fixed size, or for several things.
std::vector<Handle> handlesOf(StripContext&);

// Both take the plan as it is now for the beginning: the session's drag must have begun. Null when the thing
// cannot be moved on the strip (a fixture that stands free or shows its side).
std::unique_ptr<StripDrag> dragThing(StripContext&, const ElementId&, const Pointer& pressed);
std::unique_ptr<StripDrag> dragHandle(StripContext&, const ElementId&, const Handle&, const Pointer& pressed);

// Guides of a snapped place, and its reasons in words.
void paintGuides(QPainter&, StripContext&, const WallSnapped&);
QString snapWords(const WallSnapped&);
// The answer comes first: it is what one carries the thing about for.
QString withAnswer(const std::optional<StripAnswer>&, const QString& why);

}  // namespace elbowroom::ui

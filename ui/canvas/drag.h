// One drag with the mouse: each kind turns pointer positions into one edit that restarts from the plan at the
// beginning, so the result depends on where the pointer is and not on the way it took.
#pragma once

#include <memory>

#include "ui/canvas/hit.h"
#include "ui/canvas/tool.h"

namespace elbowroom::ui {

class Drag {
 public:
  virtual ~Drag() = default;
  virtual void to(const Pointer&) = 0;
  virtual void paint(QPainter&) {}
  virtual QString words() const { return {}; }  // what snapping did, for the foot of the canvas
};

// The drag that a press on this hit starts; null when there is nothing to drag. The session must be in a drag
// (Session::beginDrag) from before the first `to` until after the last.
std::unique_ptr<Drag> startDrag(CanvasContext&, const Hit&, const Pointer& pressed);

}  // namespace elbowroom::ui

// What a tool of the wall strip may ask of it. Pointers are in strip figures (strip_scene.h).
#pragma once

#include "ui/canvas/tool.h"
#include "ui/walls/strip_scene.h"

namespace elbowroom::ui {

class StripContext : public CanvasContext {
 public:
  virtual const StripScene& scene() const = 0;
  // Eye levels of the people of this plan, for snapping.
  virtual std::vector<HeightLine> eyes() const = 0;
};

}  // namespace elbowroom::ui

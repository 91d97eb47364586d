// Places one thing from the Tray: it follows the pointer as part of the plan, checked live, until a click
// sets it down or Escape takes it away.
#pragma once

#include "core/plan/catalogue.h"
#include "core/plan/wall_defaults.h"
#include "ui/canvas/tool_parts.h"

namespace elbowroom::ui {

class PlaceTool : public CarryTool {
 public:
  // payload: "fixture:toilet", "door:hinged", "window", "wall:mirror", "ceiling:fan". A payload it does not
  // know places nothing.
  PlaceTool(CanvasContext&, const QString& payload);
  void move(const Pointer&, bool down) override;
  bool key(QKeyEvent*) override;
  QString hint() const override;
  void paint(QPainter&) override;

 private:
  void begin();
  void moveWallItem(const Pointer&);
  void moveCeilingItem(const Pointer&);
  ElementId typicalId() const;
  CanvasContext& context_;
  std::optional<Fixture> fixture_;
  std::optional<Opening> opening_;
  std::optional<WallItem> wall_item_;
  std::optional<CeilingItem> ceiling_item_;
  SnappedCeiling ceiling_snap_;
  QString label_;
  Snapped snapped_;
};

}  // namespace elbowroom::ui

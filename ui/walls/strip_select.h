// The tool one has in hand on the wall strip: select, drag, resize, nudge, delete, type dimensions.
#pragma once

#include <memory>

#include "ui/walls/strip_answers.h"
#include "ui/walls/strip_dimensions.h"
#include "ui/walls/strip_drag.h"

namespace elbowroom::ui {

class StripSelect : public Tool {
 public:
  explicit StripSelect(StripContext& context) : context_(context) {}
  void press(const Pointer&) override;
  void move(const Pointer&, bool down) override;
  void release(const Pointer&) override;
  bool key(QKeyEvent*) override;
  bool undo() override;
  void cancel() override;
  void paint(QPainter&) override;
  // Something is to be said of the selected thing where it hangs (strip_answers.h); the hint begins with it.
  bool answers() const;
  QString hint() const override;
  Qt::CursorShape cursor() const override { return cursor_; }

  const ElementId& hovered() const { return hover_; }
  void leave();  // the pointer has left
  bool busy() const { return drag_ != nullptr || banding_; }

 private:
  std::optional<StripAnswer> answer() const;
  std::optional<Handle> handleAt(const Pointer&) const;
  Qt::CursorShape cursorAt(const Pointer&) const;
  bool nudgeBy(QKeyEvent*);
  void openDimension(int index, const QString& initial);

  StripContext& context_;
  std::unique_ptr<StripDrag> drag_;
  std::optional<Pointer> pressed_at_;
  ElementId pressed_on_;
  std::optional<Handle> pressed_handle_;
  bool banding_ = false;
  QPointF band_from_, band_to_;
  ElementId hover_;
  int active_dimension_ = 0;
  Qt::CursorShape cursor_ = Qt::ArrowCursor;
};

}  // namespace elbowroom::ui

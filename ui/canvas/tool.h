// What a canvas tool is and what it may ask of the canvas. A tool holds no truth: it turns pointer and key
// events into edits on the session and paints its own overlay.
#pragma once

#include <QKeyEvent>
#include <QPainter>
#include <QString>
#include <functional>

#include "core/plan/snap.h"
#include "ui/render/paint.h"
#include "ui/session/session.h"

namespace elbowroom::ui {

struct Pointer {
  Point plan;
  QPointF px;
  Qt::KeyboardModifiers keys;
  // Shift held switches snapping off.
  bool snaps() const { return !keys.testFlag(Qt::ShiftModifier); }
};

class CanvasContext {
 public:
  virtual ~CanvasContext() = default;
  virtual Session& session() = 0;
  virtual const ViewMap& map() const = 0;
  // Reach of about 8 px at the present zoom, step of 1/2 in or 10 mm.
  virtual SnapRules snapRules(const Pointer&) const = 0;
  virtual Unit unit() const = 0;
  virtual void repaint() = 0;
  // One line at the foot of the canvas: what is happening and which keys help.
  virtual void say(const QString& text) = 0;
  // Opens a small entry field with its middle at `px`. `take` gets the parsed length and says whether it was
  // accepted (an empty string) or why not; the field stays open on a refusal.
  virtual void askLength(QPointF px, const QString& initial, std::function<QString(Length)> take,
                         const QString& purpose) = 0;
  virtual void toolDone() = 0;  // back to the selecting tool
  // Paints a display list in plan coordinates.
  virtual void draw(QPainter&, const DisplayList&) = 0;
  virtual DrawStyle style() const = 0;
};

class Tool {
 public:
  virtual ~Tool() = default;
  virtual void press(const Pointer&) {}
  virtual void move(const Pointer&, bool /*down*/) {}
  virtual void release(const Pointer&) {}
  virtual void doublePress(const Pointer&) {}
  virtual bool key(QKeyEvent*) { return false; }  // true: taken
  virtual bool undo() { return false; }           // true: took back a step of its own
  virtual void cancel() {}                        // Escape or another tool chosen
  virtual void paint(QPainter&) {}
  virtual QString hint() const { return {}; }
  virtual Qt::CursorShape cursor() const { return Qt::ArrowCursor; }
};

}  // namespace elbowroom::ui

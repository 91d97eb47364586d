// The wall strip of the hall bath driven by mouse events.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QContextMenuEvent>
#include <QLineEdit>
#include <QMenu>
#include <QTimer>
#include <QtTest>

#include "tests/ui/rooms.h"
#include "ui/session/session.h"
#include "ui/walls/wall_strip.h"

namespace elbowroom::ui {

// The hall bath of rooms.h: walls n, e, s, w of 96, 60, 96, 60 in, so the south wall begins at 156 on the
// strip. The mirror is 24 x 30 in, centre 75 in along the south wall, lower edge 40 in up, over the vanity
// (34 in).
class StripDriver : public ::testing::Test {
 protected:
  StripDriver() : session(hallBath()), strip(session) {
    strip.resize(1300, 442);  // the row of switches takes 22 of it
    strip.show();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(&strip);
    strip.setFocus();
  }
  const WallItem& mirror() const { return *findWallItem(session.option(), {"m"}); }
  QPointF px(double x, double y) const {
    return strip.map().toPx({Length::fromInches(x), Length::fromInches(y)});
  }
  void moveTo(QPointF at, Qt::MouseButtons held, Qt::KeyboardModifiers keys = {}) {
    QMouseEvent event(QEvent::MouseMove, at, strip.viewport()->mapToGlobal(at), Qt::NoButton, held, keys);
    QApplication::sendEvent(strip.viewport(), &event);
  }
  void press(QPointF at, Qt::KeyboardModifiers keys = {}) {
    QTest::mousePress(strip.viewport(), Qt::LeftButton, keys, at.toPoint());
  }
  void release(QPointF at, Qt::KeyboardModifiers keys = {}) {
    QTest::mouseRelease(strip.viewport(), Qt::LeftButton, keys, at.toPoint());
  }
  void drag(QPointF a, QPointF b, Qt::KeyboardModifiers keys = {}) {
    press(a);
    for (int i = 1; i <= 8; ++i) moveTo(a + (b - a) * (i / 8.0), Qt::LeftButton, keys);
    release(b, keys);
  }
  // Opens the menu with the right button and clicks the line that begins with `text`. False: there is none,
  // or it cannot act.
  bool choose(QPointF at, const QString& text) {
    bool clicked = false;
    QTimer::singleShot(0, &strip, [&] {
      auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
      if (!menu) return;
      for (QAction* each : menu->actions())
        if (each->text().startsWith(text) && each->isEnabled()) {
          clicked = true;
          QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(each).center());
          return;
        }
      menu->close();
    });
    QTest::mousePress(strip.viewport(), Qt::RightButton, {}, at.toPoint());
    QContextMenuEvent event(QContextMenuEvent::Mouse, at.toPoint(),
                            strip.viewport()->mapToGlobal(at.toPoint()));
    QApplication::sendEvent(strip.viewport(), &event);
    QTest::mouseRelease(strip.viewport(), Qt::RightButton, {}, at.toPoint());
    return clicked;
  }
  QLineEdit* entry() { return strip.viewport()->findChild<QLineEdit*>(); }

  Session session;
  WallStrip strip;
};

}  // namespace elbowroom::ui

#include "ui/widgets/side_window.h"

#include <QShortcut>

namespace elbowroom::ui {
namespace {

constexpr int kPause = 250;  // ms: long enough that typing and nudging do not check all options at each key

}  // namespace

void undoByKeys(QWidget& window, Session& session) {
  const auto bind = [&](const QKeySequence& keys, void (Session::*step)()) {
    QObject::connect(new QShortcut(keys, &window), &QShortcut::activated, &session, step);
  };
  bind(QKeySequence::Undo, &Session::undo);
  for (const char* keys : {"Ctrl+Shift+Z", "Ctrl+Y"}) bind(QKeySequence(keys), &Session::redo);
}

QTimer* pauseBefore(QWidget& window, Session& session, std::function<void()> refresh) {
  auto* timer = new QTimer(&window);
  timer->setSingleShot(true);
  timer->setInterval(kPause);
  QObject::connect(timer, &QTimer::timeout, &window, [timer, &session, refresh = std::move(refresh)] {
    session.dragging() ? timer->start() : refresh();
  });
  return timer;
}

void bringForward(QWidget& window) {
  window.show();
  window.raise();
  window.activateWindow();
}

}  // namespace elbowroom::ui

#include "ui/widgets/field_manners.h"

#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QScrollBar>

namespace elbowroom::ui {
namespace {

bool turnsWithTheWheel(const QObject* object) {
  return qobject_cast<const QComboBox*>(object) || qobject_cast<const QAbstractSpinBox*>(object) ||
         (qobject_cast<const QAbstractSlider*>(object) && !qobject_cast<const QScrollBar*>(object));
}

bool isUndoOrRedo(const QKeyEvent& key) {
  return key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo) ||
         (key.key() == Qt::Key_Y && key.modifiers() == Qt::ControlModifier);
}

class Manners : public QObject {
 public:
  using QObject::QObject;

  bool eventFilter(QObject* watched, QEvent* event) override {
    switch (event->type()) {
      case QEvent::Polish:
        if (turnsWithTheWheel(watched)) {
          auto* field = static_cast<QWidget*>(watched);
          if (field->focusPolicy() == Qt::WheelFocus) field->setFocusPolicy(Qt::StrongFocus);
        }
        return false;
      case QEvent::Wheel:
        if (!turnsWithTheWheel(watched) || static_cast<QWidget*>(watched)->hasFocus()) return false;
        // Ignored, it goes on to the parent.
        event->ignore();
        return true;
      case QEvent::ShortcutOverride: {
        const auto* line = qobject_cast<const QLineEdit*>(watched);
        if (!line || line->isModified() || !isUndoOrRedo(*static_cast<QKeyEvent*>(event))) return false;
        event->ignore();
        return true;
      }
      default:
        return false;
    }
  }
};

}  // namespace

void teachFields() {
  static const QString name = QStringLiteral("field-manners");
  if (qApp->findChild<Manners*>(name, Qt::FindDirectChildrenOnly)) return;
  auto* manners = new Manners(qApp);
  manners->setObjectName(name);
  qApp->installEventFilter(manners);
}

}  // namespace elbowroom::ui

// A field for one length: shown in the person's unit, read as generously as core/base/length_text.h reads.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "core/base/length_text.h"

class QLabel;
class QLineEdit;
class QMenu;
class QToolButton;

namespace elbowroom::ui {

// Enter (or leaving the field) commits what was typed, Escape restores, Up and Down step by 1/2 in or 10 mm,
// with Shift by 1/16 in or 1 mm. A text that is no length, or out of range, stays in the field with an
// outline and a sentence below it. A text that was not touched is never committed, so rounding on screen
// costs nothing.
class LengthEdit : public QWidget {
  Q_OBJECT
 public:
  explicit LengthEdit(const QString& name, QWidget* parent = nullptr);

  // What to show; text being typed stays unless the length or the unit differs.
  void setLength(std::optional<Length> length, Unit unit);
  std::optional<Length> length() const { return length_; }
  // Both ends included. Default: at least 0, at most 100 m.
  void setRange(Length least, Length most);
  // An empty field then means "not stated" and emits cleared(); `placeholder` is shown in it.
  void setMayBeEmpty(const QString& placeholder);
  // Adds a drop-down of usual lengths.
  void setUsual(std::vector<Length> usual);
  // A sentence from outside (the plan refuses the length); empty takes it away.
  void setProblem(const QString& why);
  // The plan refused what was just committed: what was typed stays, with the reason; Escape restores the
  // plan's.
  void keepRefused(std::optional<Length> refused, const QString& why);
  // Drops a text being typed: the field is about to show something else.
  void forgetTyping() { restore(); }
  QString problem() const { return problem_; }
  // Whether the latest committed() came from stepping (so that steps can merge into one undo).
  bool stepped() const { return stepped_; }
  QLineEdit* line() const { return line_; }

 signals:
  void committed(Length length);
  void cleared();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void commitText();
  void commit(Length length, bool stepped);
  void step(int direction, bool fine);
  void restore();
  void fillUsual();
  QString textOf(Length length) const;

  QString name_;
  QLineEdit* line_;
  QLabel* message_;
  QToolButton* usual_button_ = nullptr;
  QMenu* usual_menu_ = nullptr;
  std::vector<Length> usual_;
  std::optional<Length> length_, before_;  // shown; before the latest commit
  Unit unit_ = Unit::inches;
  Length least_, most_;
  bool may_be_empty_ = false;
  bool stepped_ = false;
  QString problem_;
};

}  // namespace elbowroom::ui

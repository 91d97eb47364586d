#include "ui/widgets/length_edit.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/look/look.h"

namespace elbowroom::ui {
namespace {

// A line edit that keeps Fusion's frame and adds an outline when its text cannot be used.
class OutlinedLine : public QLineEdit {
 public:
  using QLineEdit::QLineEdit;
  void setOutlined(bool on) {
    if (outlined_ == on) return;
    outlined_ = on;
    update();
  }

 protected:
  void paintEvent(QPaintEvent* event) override {
    QLineEdit::paintEvent(event);
    if (!outlined_) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(lookOf(*this).warning, 2));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 2, 2);
  }

 private:
  bool outlined_ = false;
};

}  // namespace

LengthEdit::LengthEdit(const QString& name, QWidget* parent)
    : QWidget(parent),
      name_(name),
      line_(new OutlinedLine(this)),
      message_(new QLabel(this)),
      most_(Length::fromMillimetres(100'000)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  auto* row = new QHBoxLayout;
  row->setSpacing(2);
  row->addWidget(line_, 1);
  column->addLayout(row);
  column->addWidget(message_);
  message_->setWordWrap(true);
  message_->setFont(smallFont(*this));
  message_->setTextFormat(Qt::PlainText);
  message_->hide();
  line_->setAccessibleName(name);
  line_->setMinimumWidth(70);
  line_->installEventFilter(this);
  setFocusProxy(line_);
  connect(line_, &QLineEdit::textEdited, this, [this] { setProblem({}); });
}

QString LengthEdit::textOf(Length length) const { return QString::fromStdString(lengthText(length, unit_)); }

void LengthEdit::setLength(std::optional<Length> length, Unit unit) {
  const bool same = length == length_ && unit == unit_;
  if (same && (line_->isModified() || !problem_.isEmpty())) return;
  const bool new_unit = unit != unit_;
  length_ = length;
  unit_ = unit;
  if (new_unit) fillUsual();
  restore();
}

void LengthEdit::restore() {
  const QString text = length_ ? textOf(*length_) : QString();
  if (line_->text() != text) line_->setText(text);
  line_->setModified(false);
  setProblem({});
}

void LengthEdit::setRange(Length least, Length most) {
  least_ = least;
  most_ = most;
}

void LengthEdit::setMayBeEmpty(const QString& placeholder) {
  may_be_empty_ = true;
  line_->setPlaceholderText(placeholder);
}

void LengthEdit::setUsual(std::vector<Length> usual) {
  usual_ = std::move(usual);
  if (!usual_button_) {
    usual_button_ = new QToolButton(this);
    usual_button_->setArrowType(Qt::DownArrow);
    usual_button_->setAutoRaise(true);
    usual_button_->setAccessibleName(tr("Usual: %1").arg(name_));
    usual_button_->setToolTip(tr("Stock sizes"));
    usual_menu_ = new QMenu(usual_button_);
    connect(usual_button_, &QToolButton::clicked, this,
            [this] { usual_menu_->popup(line_->mapToGlobal(QPoint(0, line_->height()))); });
    static_cast<QBoxLayout*>(layout()->itemAt(0)->layout())->addWidget(usual_button_);
  }
  fillUsual();
}

void LengthEdit::fillUsual() {
  if (!usual_button_) return;
  usual_menu_->clear();
  for (Length each : usual_)
    connect(usual_menu_->addAction(textOf(each)), &QAction::triggered, this,
            [this, each] { commit(each, false); });
}

void LengthEdit::setProblem(const QString& why) {
  if (why == problem_) return;
  problem_ = why;
  static_cast<OutlinedLine*>(line_)->setOutlined(!why.isEmpty());
  message_->setText(why);
  message_->setVisible(!why.isEmpty());
  line_->setAccessibleDescription(why);
  line_->setToolTip(why);
}

void LengthEdit::keepRefused(std::optional<Length> refused, const QString& why) {
  length_ = before_;
  line_->setText(refused ? textOf(*refused) : QString());
  line_->setModified(true);
  setProblem(why);
}

void LengthEdit::commitText() {
  if (!line_->isModified()) return;
  const QString text = line_->text().trimmed();
  if (text.isEmpty() && may_be_empty_) {
    line_->setModified(false);
    setProblem({});
    if (length_) {
      before_ = length_;
      length_.reset();
      stepped_ = false;
      emit cleared();
    }
    return;
  }
  const Result<Length> read = parseLength(text.toStdString(), unit_);
  if (!read) {
    setProblem(QString::fromStdString(read.error().message));
    return;
  }
  commit(*read, false);
}

void LengthEdit::commit(Length length, bool stepped) {
  if (length < least_ || length > most_) {
    setProblem(length < least_ ? tr("At least %1.").arg(textOf(least_))
                               : tr("At most %1.").arg(textOf(most_)));
    return;
  }
  const bool changes = length != length_;
  before_ = length_;
  length_ = length;
  stepped_ = stepped;
  restore();
  if (changes) emit committed(length);
}

void LengthEdit::step(int direction, bool fine) {
  if (line_->isReadOnly()) return;
  Length from = length_.value_or(least_);
  if (line_->isModified()) {
    const Result<Length> read = parseLength(line_->text().toStdString(), unit_);
    if (!read) return commitText();
    from = *read;
  }
  const Length by = unit_ == Unit::inches ? Length::fromInches(fine ? 0.0625 : 0.5)
                                          : Length::fromMillimetres(fine ? 1 : 10);
  commit(std::clamp(from + by * direction, least_, most_), true);
  line_->selectAll();
}

bool LengthEdit::eventFilter(QObject* watched, QEvent* event) {
  if (watched != line_) return QWidget::eventFilter(watched, event);
  if (event->type() == QEvent::FocusOut) {
    const auto reason = static_cast<QFocusEvent*>(event)->reason();
    if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason) commitText();
  }
  if (event->type() == QEvent::ShortcutOverride) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    // Escape in a touched field is the field's, not the window's.
    if (key == Qt::Key_Escape && (line_->isModified() || !problem_.isEmpty())) event->accept();
    if (key == Qt::Key_Up || key == Qt::Key_Down) event->accept();
  }
  if (event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool fine = key->modifiers() & Qt::ShiftModifier;
    switch (key->key()) {
      case Qt::Key_Return:
      case Qt::Key_Enter:
        commitText();
        if (problem_.isEmpty()) line_->selectAll();
        return true;
      case Qt::Key_Escape:
        if (!line_->isModified() && problem_.isEmpty()) return false;
        restore();
        line_->selectAll();
        return true;
      case Qt::Key_Up:
        step(1, fine);
        return true;
      case Qt::Key_Down:
        step(-1, fine);
        return true;
      default:
        break;
    }
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace elbowroom::ui

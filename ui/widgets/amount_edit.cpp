#include "ui/widgets/amount_edit.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <cmath>

#include "ui/look/look.h"

namespace elbowroom::ui {

QString amountWords(Amount amount) {
  QString text = QString::number(amount.value(), 'f', 3);
  while (text.endsWith(u'0')) text.chop(1);
  if (text.endsWith(u'.')) text.chop(1);
  return text;
}

AmountEdit::AmountEdit(const QString& name, const QString& unit, QWidget* parent)
    : QWidget(parent), line_(new QLineEdit(this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kTightGap);
  row->addWidget(line_, 1);
  row->addWidget(new QLabel(unit, this));
  line_->setAccessibleName(unit.isEmpty() ? name : QStringLiteral("%1, %2").arg(name, unit));
  line_->setPlaceholderText(tr("not stated"));
  line_->setMinimumWidth(60);
  line_->installEventFilter(this);
  setFocusProxy(line_);
  connect(line_, &QLineEdit::textEdited, this, [this] { setProblem({}); });
}

void AmountEdit::setAmount(std::optional<Amount> amount) {
  if (amount == amount_ && (line_->isModified() || !problem_.isEmpty())) return;
  amount_ = amount;
  restore();
}

void AmountEdit::restore() {
  line_->setText(amount_ ? amountWords(*amount_) : QString());
  line_->setModified(false);
  setProblem({});
}

void AmountEdit::setProblem(const QString& why) {
  if (why == problem_) return;
  problem_ = why;
  line_->setToolTip(why);
  line_->setAccessibleDescription(why);
  QPalette colours = palette();
  if (!why.isEmpty()) colours.setColor(QPalette::Text, lookOf(*this).warning);
  line_->setPalette(colours);
}

void AmountEdit::commit() {
  if (!line_->isModified()) return;
  static const QRegularExpression figure(QStringLiteral("^\\d{1,7}([.,]\\d{1,3})?$"));
  QString text = line_->text().trimmed();
  std::optional<Amount> wanted;
  if (!text.isEmpty()) {
    if (!figure.match(text).hasMatch()) return setProblem(tr("A figure such as 110 or 0.25."));
    wanted = Amount{std::llround(text.replace(u',', u'.').toDouble() * 1000)};
  }
  const bool changes = wanted != amount_;
  amount_ = wanted;
  restore();
  if (changes) emit committed(wanted);
}

bool AmountEdit::eventFilter(QObject* watched, QEvent* event) {
  if (watched == line_ && event->type() == QEvent::FocusOut) {
    const auto reason = static_cast<QFocusEvent*>(event)->reason();
    if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason) commit();
  }
  if (watched == line_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
      commit();
      return true;
    }
    if (key == Qt::Key_Escape && (line_->isModified() || !problem_.isEmpty())) {
      restore();
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace elbowroom::ui

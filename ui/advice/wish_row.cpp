#include "ui/advice/wish_row.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/rules/text_rules.h"
#include "ui/look/look.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

QLabel* wrapped(const QString& text, const QFont& font, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setFont(font);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

// Setting the same text again would lay out the whole column anew at every step of a drag.
void put(QLabel* label, const QString& text) {
  if (label->text() != text) label->setText(text);
}

}  // namespace

WishRow::WishRow(const WishPoint& point, QWidget* parent)
    : QWidget(parent),
      point_(point),
      title_(wrapped(words(point.title), boldFont(*this), this)),
      state_(wrapped({}, font(), this)),
      why_(wrapped(words(point.why), smallFont(*this), this)),
      reason_row_(new QWidget(this)),
      reason_(new QLineEdit(reason_row_)),
      leave_out_(new QPushButton(tr("Leave out"), reason_row_)) {
  const QString title = words(point.title);
  setAccessibleName(title);
  const QString about = tr("%1\nCounts as there: %2\nSource: %3 (%4)")
                            .arg(words(point.why), words(point.seen_as), words(sourceWords(point.source)),
                                 words(wordsOf(point.grade)));
  setToolTip(about);
  setAccessibleDescription(about);
  why_->setForegroundRole(QPalette::PlaceholderText);
  state_->setAccessibleName(tr("%1: state").arg(title));

  const std::array<QString, 4> texts{tr("In"), tr("Out"), tr("Undecided"), tr("Show")};
  const std::array<QString, 4> names{tr("%1: in").arg(title), tr("%1: out, with a reason").arg(title),
                                     tr("%1: undecided").arg(title), tr("Show on the plan: %1").arg(title)};
  auto* answers = new QHBoxLayout;
  answers->setSpacing(kTightGap);
  for (std::size_t i = 0; i < buttons_.size(); ++i) {
    auto* button = buttons_[i] = new QPushButton(texts[i], this);
    button->setAccessibleName(names[i]);
    button->setToolTip(names[i]);
    button->setCheckable(i != show);
    button->setAutoDefault(false);
    button->setMinimumWidth(i == in || i == out ? 40 : 0);
    button->installEventFilter(this);
    if (i == show) answers->addStretch(1);
    answers->addWidget(button);
  }
  connect(buttons_[in], &QPushButton::clicked, this, [this] {
    press();
    askReason(false);
    if (answer_ != true) emit answered(true, {});
  });
  connect(buttons_[out], &QPushButton::clicked, this, [this] {
    press();
    askReason(!askingReason());
  });
  connect(buttons_[undecided], &QPushButton::clicked, this, [this] {
    press();
    askReason(false);
    if (answer_) emit takenBack();
  });
  connect(buttons_[show], &QPushButton::clicked, this, &WishRow::showWanted);

  reason_->setPlaceholderText(tr("Why not here?"));
  reason_->setAccessibleName(tr("%1: reason to leave it out").arg(title));
  reason_->setMaxLength(400);
  reason_->installEventFilter(this);
  leave_out_->setAutoDefault(false);
  leave_out_->setEnabled(false);
  auto* reason = new QHBoxLayout(reason_row_);
  reason->setContentsMargins(0, 0, 0, 0);
  reason->setSpacing(kTightGap);
  reason->addWidget(reason_, 1);
  reason->addWidget(leave_out_);
  reason_row_->hide();
  connect(reason_, &QLineEdit::textChanged, this,
          [this](const QString& text) { leave_out_->setEnabled(!text.trimmed().isEmpty()); });
  connect(reason_, &QLineEdit::returnPressed, this, &WishRow::leaveOut);
  connect(leave_out_, &QPushButton::clicked, this, &WishRow::leaveOut);

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kMargin, kTightGap, kMargin, kGap);
  column->setSpacing(2);
  for (QLabel* label : {title_, state_, why_}) column->addWidget(label);
  column->addSpacing(1);
  column->addLayout(answers);
  column->addWidget(reason_row_);
}

QString WishRow::stateText() const { return state_->text(); }
bool WishRow::askingReason() const { return !reason_row_->isHidden(); }

void WishRow::setState(const WishState& state, const Wish* answer, const Option& option) {
  stand_ = state.stand;
  answer_ = answer == nullptr ? std::nullopt : std::optional(answer->in);
  old_reason_ = words(state.reason);
  put(state_, words(wishText(state, option)));
  const bool aside = state.stand == WishStand::notApplicable;
  state_->setForegroundRole(aside ? QPalette::PlaceholderText : QPalette::WindowText);
  buttons_[show]->setVisible(state.shown && !state.elements.empty());
  // What the plan shows is decided by being there, so there is nothing to take back.
  buttons_[undecided]->setEnabled(answer_ || state.stand == WishStand::undecided);
  press();
}

void WishRow::press() {
  buttons_[in]->setChecked(answer_ == true);
  buttons_[out]->setChecked(answer_ == false);
  buttons_[undecided]->setChecked(!answer_ && stand_ == WishStand::undecided);
  for (QPushButton* button : buttons_) colour(button);
}

// The style's own pressed look is hardly told from the other one on a dark ground.
void WishRow::colour(QPushButton* button) {
  QPalette colours;
  if (button->isChecked()) {
    colours.setColor(QPalette::Button, palette().color(QPalette::Highlight));
    colours.setColor(QPalette::ButtonText, palette().color(QPalette::HighlightedText));
  }
  const bool same =
      button->isChecked() == button->testAttribute(Qt::WA_SetPalette) &&
      (!button->isChecked() || button->palette().color(QPalette::Button) == colours.color(QPalette::Button));
  if (!same) button->setPalette(button->isChecked() ? colours : QPalette());
}

void WishRow::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange && buttons_[show] != nullptr) press();
  QWidget::changeEvent(event);
}

void WishRow::askReason(bool open) {
  if (open == askingReason()) return;
  reason_row_->setVisible(open);
  if (open) {
    reason_->setText(old_reason_);
    reason_->selectAll();
    reason_->setFocus();
    emit grown();
  } else {
    reason_->clear();
  }
}

void WishRow::leaveOut() {
  const QString reason = reason_->text().trimmed();
  if (reason.isEmpty()) return;
  buttons_[out]->setFocus();
  askReason(false);
  if (answer_ != false || reason != old_reason_) emit answered(false, reason);
}

bool WishRow::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride)
    return QWidget::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  if (watched == reason_) {
    if (key != Qt::Key_Escape) return false;
    event->accept();
    if (event->type() == QEvent::KeyPress) {
      buttons_[out]->setFocus();
      askReason(false);
    }
    return true;
  }
  if (event->type() == QEvent::KeyPress && (key == Qt::Key_Up || key == Qt::Key_Down)) {
    for (std::size_t i = 0; i < buttons_.size(); ++i)
      if (watched == buttons_[i]) emit moveWanted(key == Qt::Key_Up ? -1 : 1, static_cast<int>(i));
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace elbowroom::ui

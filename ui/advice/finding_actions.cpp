#include "ui/advice/finding_actions.h"

#include <QCursor>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "core/rules/wishes.h"
#include "ui/advice/answer_field.h"
#include "ui/advice/remedy_button.h"
#include "ui/look/look.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

constexpr int kRestMs = 120;

// What is wanted and not there is put in by the person, unless a change of what is there would do.
bool mendable(const Finding& f) {
  if (f.outcome != Outcome::shortfall) return false;
  const Rule* rule = wishOf(f) == nullptr ? nullptr : findRule(f.book, f.rule);
  return rule == nullptr || rule->mends != std::vector<Mend>{Mend::state};
}

QLabel* textLabel(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setFont(smallFont(*parent));
  return label;
}

}  // namespace

FindingActions::FindingActions(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      rest_(new QTimer(this)),
      column_(new QVBoxLayout(this)),
      remedy_column_(new QVBoxLayout),
      heading_(textLabel(this)),
      none_(textLabel(this)),
      accept_(new QPushButton(tr("Accept with a reason"), this)),
      take_back_(new QPushButton(tr("Take back"), this)),
      confirm_(new QPushButton(tr("Accept"), this)),
      reason_row_(new QWidget(this)),
      reason_(new QLineEdit(this)) {
  column_->setContentsMargins(0, 0, 0, kGap);
  column_->setSpacing(kTightGap + 1);
  remedy_column_->setSpacing(kTightGap);
  heading_->setText(tr("Remedies"));
  heading_->setForegroundRole(QPalette::PlaceholderText);
  none_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  column_->addWidget(heading_);
  column_->addLayout(remedy_column_);
  column_->addWidget(none_);
  accept_->setAccessibleDescription(tr("The finding stays listed and prints with your reason."));
  accept_->setToolTip(tr("The finding stays listed and prints with your reason."));
  take_back_->setToolTip(tr("The finding counts again."));
  for (QPushButton* button : {accept_, take_back_}) column_->addWidget(button, 0, Qt::AlignLeft);
  reason_->setPlaceholderText(tr("Why is it acceptable here?"));
  reason_->setAccessibleName(tr("Reason"));
  reason_->setMaxLength(400);
  reason_->installEventFilter(this);
  auto* row = new QVBoxLayout(reason_row_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kTightGap);
  row->addWidget(reason_);
  row->addWidget(confirm_, 0, Qt::AlignLeft);
  column_->addWidget(reason_row_);
  reason_row_->hide();
  confirm_->setEnabled(false);
  connect(accept_, &QPushButton::clicked, this, [this] { openReason(true); });
  connect(take_back_, &QPushButton::clicked, this, &FindingActions::takeBack);
  connect(confirm_, &QPushButton::clicked, this, &FindingActions::acceptFinding);
  connect(reason_, &QLineEdit::returnPressed, this, &FindingActions::acceptFinding);
  connect(reason_, &QLineEdit::textChanged, this,
          [this](const QString& text) { confirm_->setEnabled(!text.trimmed().isEmpty()); });
  rest_->setSingleShot(true);
  rest_->setInterval(kRestMs);
  connect(rest_, &QTimer::timeout, this, &FindingActions::searchNow);
}

const Finding* FindingActions::finding() const {
  const auto& findings = session_.report().findings;
  return finding_ >= 0 && finding_ < static_cast<int>(findings.size()) ? &findings[static_cast<std::size_t>(finding_)]
                                                                       : nullptr;
}

void FindingActions::setFinding(int index) {
  finding_ = index;
  const Finding* f = finding();
  rest_->stop();
  searched_ = false;
  clearRemedies();
  const bool searches = f != nullptr && mendable(*f);
  heading_->setVisible(searches);
  none_->setVisible(searches);
  if (f == nullptr) return;
  if (searches) {
    none_->setText(tr("Looking for a way out"));
    rest_->start();
  }
  showAnswer(*f);
  showAcceptance(*f);
  emit heightChanged();
}

void FindingActions::clearRemedies() {
  for (RemedyButton* button : buttons_) {
    remedy_column_->removeWidget(button);
    button->hide();
    button->deleteLater();
  }
  buttons_.clear();
  found_ = {};
}

void FindingActions::searchNow() {
  rest_->stop();
  const Finding* f = finding();
  if (f == nullptr || !mendable(*f) || session_.dragging()) return;
  clearRemedies();
  found_ = remediesFor(session_.plan(), session_.optionIndex(), *f, choiceOf(session_.plan()));
  searched_ = true;
  showRemedies();
  emit heightChanged();
}

void FindingActions::showRemedies() {
  const Option& option = session_.option();
  const Unit unit = session_.plan().unit;
  QWidget* before = this;
  for (std::size_t i = 0; i < found_.offered.size(); ++i) {
    auto* button = new RemedyButton(textOf(found_.offered[i], option, unit), this);
    connect(button, &QAbstractButton::clicked, this, [this, i] { use(i); });
    connect(button, &RemedyButton::looked, this, [this, i, button](bool at) {
      shown_ = at ? button : nullptr;
      if (!at || i >= found_.offered.size()) return session_.clearPreview();
      session_.setPreview(found_.offered[i].change, found_.offered[i].then);
    });
    remedy_column_->addWidget(button);
    if (before != this) setTabOrder(before, button);
    before = button;
    buttons_.push_back(button);
    button->show();
  }
  if (before != this) setTabOrder(before, accept_);
  none_->setVisible(found_.offered.empty());
  if (!found_.offered.empty()) return;
  QStringList lines;
  for (const Conflict& conflict : found_.conflicts) lines << unbroken(words(textOf(conflict, option, unit)));
  none_->setText(lines.empty()
                     ? tr("No remedy found: nothing here can be moved, turned, swapped or changed enough.")
                     : tr("No remedy found: %1.").arg(lines.join(QStringLiteral(". "))));
}

QString FindingActions::noneText() const { return none_->isHidden() ? QString() : none_->text(); }

void FindingActions::showAnswer(const Finding& f) {
  const std::optional<Asking> asking = askingOf(session_.plan(), session_.option(), f);
  QString wanted;
  if (asking) {
    QStringList key{words(f.fact), words(asking->question), QString::number(static_cast<int>(session_.plan().unit))};
    for (const ElementId& id : f.subjects) key << words(id.text);
    wanted = key.join(u'|');
  }
  // A field that is being typed into stays while something else of the plan changes.
  if (wanted == fact_ && (answer_ != nullptr) == asking.has_value()) return;
  fact_ = wanted;
  if (answer_ != nullptr) {
    column_->removeWidget(answer_);
    answer_->hide();
    answer_->deleteLater();
    answer_ = nullptr;
  }
  if (!asking) return;
  answer_ = new AnswerField(*asking, session_.plan().unit, this);
  column_->insertWidget(0, answer_);
  connect(answer_, &AnswerField::answered, this, &FindingActions::state);
  answer_->show();
  const auto fields = answer_->findChildren<QWidget*>(Qt::FindChildrenRecursively);
  QWidget* before = nullptr;
  for (QWidget* field : fields) {
    if (!(field->focusPolicy() & Qt::TabFocus)) continue;
    if (before != nullptr) setTabOrder(before, field);
    before = field;
  }
  if (before != nullptr) setTabOrder(before, accept_);
}

void FindingActions::showAcceptance(const Finding& f) {
  const bool counts = f.outcome == Outcome::shortfall || f.outcome == Outcome::unknown;
  const bool accepted = !f.acknowledged.empty();
  accept_->setVisible(counts && !accepted && reason_row_->isHidden());
  take_back_->setVisible(accepted);
  if (accepted || !counts) reason_row_->hide();
}

void FindingActions::openReason(bool open) {
  reason_row_->setVisible(open);
  accept_->setVisible(!open);
  if (open)
    reason_->setFocus();
  else
    reason_->clear(), accept_->setFocus();
  emit heightChanged();
}

int FindingActions::heightFor(int width) const {
  if (layout()->isEmpty()) return 0;
  return layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(width) : layout()->totalSizeHint().height();
}

bool FindingActions::focusFirst() {
  if (!searched_ && rest_->isActive()) searchNow();
  for (QWidget* each : findChildren<QWidget*>())
    if (answer_ != nullptr && answer_->isAncestorOf(each) && (each->focusPolicy() & Qt::TabFocus) &&
        each->isVisibleTo(this)) {
      each->setFocus(Qt::TabFocusReason);
      return true;
    }
  if (!buttons_.empty()) {
    buttons_.front()->setFocus(Qt::TabFocusReason);
    return true;
  }
  for (QPushButton* button : {accept_, take_back_})
    if (button->isVisibleTo(this)) {
      button->setFocus(Qt::TabFocusReason);
      return true;
    }
  return false;
}

void FindingActions::keepPreviewOfLooked() {
  if (shown_ && !shown_->hasFocus() &&
      !shown_->visibleRegion().contains(shown_->mapFromGlobal(QCursor::pos())))
    session_.clearPreview();
}

// The finding leaves its row with what is done about it, and this widget goes with the row.
void FindingActions::leaveToList() {
  session_.clearPreview();
  session_.endMerge();
  emit backWanted();
}

void FindingActions::use(std::size_t index) {
  if (index >= found_.offered.size()) return;
  const Remedy remedy = found_.offered[index];
  const QString label = words(textOf(remedy, session_.option(), session_.plan().unit).label);
  leaveToList();
  session_.perform(remedy.change, label);
  session_.endMerge();
}

void FindingActions::state(const FactValue& value) {
  if (answer_ == nullptr) return;
  const Change change = answer_->asking().state(value);
  const QString label = tr("State: %1").arg(words(answer_->asking().label).toLower());
  leaveToList();
  session_.perform(change, label);
  session_.endMerge();
}

void FindingActions::acceptFinding() {
  const Finding* f = finding();
  const QString reason = reason_->text().trimmed();
  if (f == nullptr || reason.isEmpty()) return;
  const Acknowledge change{{f->book, f->rule, f->subjects, reason.toStdString(), {}}};
  leaveToList();
  session_.perform(change, tr("Accept finding"));
  session_.endMerge();
}

void FindingActions::takeBack() {
  const Finding* f = finding();
  if (f == nullptr) return;
  const Acknowledge change{{f->book, f->rule, f->subjects, {}, {}}};
  leaveToList();
  session_.perform(change, tr("Take back acceptance"));
  session_.endMerge();
}

bool FindingActions::eventFilter(QObject* watched, QEvent* event) {
  if (watched == reason_ && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    openReason(false);
    return true;
  }
  if (watched == reason_ && event->type() == QEvent::ShortcutOverride &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape)
    event->accept();
  return QWidget::eventFilter(watched, event);
}

void FindingActions::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape || event->key() == Qt::Key_Left) return emit backWanted();
  QWidget::keyPressEvent(event);
}

}  // namespace elbowroom::ui

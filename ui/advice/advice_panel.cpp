#include "ui/advice/advice_panel.h"

#include <QApplication>
#include <QLabel>
#include <QScrollBar>
#include <QVBoxLayout>

#include "ui/advice/advice_delegate.h"
#include "ui/advice/advice_list.h"
#include "ui/advice/advice_model.h"
#include "ui/advice/finding_actions.h"
#include "ui/look/look.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

// One line that never asks its column to be wider or laid out again.
QLabel* lineLabel(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setTextFormat(Qt::PlainText);
  label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  label->setContentsMargins(kMargin, 0, kMargin, 0);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QString cautionText() {
  QStringList lines;
  for (const std::string& line : cautionLines()) lines << QString::fromStdString(line);
  return lines.join(u' ');
}

}  // namespace

AdvicePanel::AdvicePanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      summary_(lineLabel(this)),
      turning_(lineLabel(this)),
      empty_(new QLabel(this)),
      caution_(new QLabel(this)),
      model_(new AdviceModel(session, this)),
      list_(new AdviceList(this)),
      delegate_(new AdviceDelegate(*model_, list_)) {
  setAccessibleName(tr("Advice"));
  setMinimumWidth(220);
  summary_->setFont(boldFont(*this));
  summary_->setWordWrap(true);
  summary_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
  summary_->setAccessibleName(tr("Findings"));
  turning_->setAccessibleName(tr("Turning circle"));
  list_->setAccessibleName(tr("Findings of this option"));
  list_->setModel(model_);
  list_->setItemDelegate(delegate_);
  empty_->setWordWrap(true);
  empty_->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
  empty_->setMargin(kMargin * 2);
  empty_->setAutoFillBackground(true);
  empty_->setBackgroundRole(QPalette::Base);
  caution_->setText(cautionText());
  caution_->setAccessibleName(tr("Caution"));
  caution_->setTextFormat(Qt::PlainText);
  caution_->setWordWrap(true);
  caution_->setFont(smallFont(*this));
  caution_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  caution_->setContentsMargins(kMargin, kGap, kMargin, kGap);

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, kGap, 0, 0);
  column->setSpacing(2);
  column->addWidget(summary_);
  column->addWidget(turning_);
  column->addSpacing(kTightGap);
  column->addWidget(list_, 1);
  column->addWidget(empty_, 1);
  column->addWidget(caution_);

  delegate_->setBelow([this](int width) { return actions_ && acted_.isValid() ? actions_->heightFor(width) : 0; });
  connect(&session_, &Session::changed, this, &AdvicePanel::refresh);
  connect(&session_, &Session::optionChanged, this, &AdvicePanel::refresh);
  connect(&session_, &Session::litChanged, this, &AdvicePanel::showLit);
  connect(list_->verticalScrollBar(), &QScrollBar::valueChanged, this, [this] {
    if (actions_) actions_->keepPreviewOfLooked();
  });
  connect(list_, &AdviceList::chosen, this, &AdvicePanel::chooseRow);
  connect(list_, &AdviceList::wanted, this, &AdvicePanel::go);
  connect(list_, &AdviceList::hovered, this, [this](int row) {
    light(row >= 0 ? row : list_->currentIndex().isValid() ? list_->currentIndex().row() : -1);
  });
  connect(list_, &AdviceList::foldWanted, this, [this](int row, bool open) {
    if (!model_->isGroup(row) && open) {
      placeActions();
      if (actions_) actions_->focusFirst();
      return;
    }
    const AdviceGroup group = model_->groupOf(row);
    while (!model_->isGroup(row)) --row;
    list_->setCurrentIndex(model_->index(row));
    model_->setOpen(group, open);
    refresh();
  });
  refresh();
}

QString AdvicePanel::summary() const { return summary_->text(); }
QString AdvicePanel::turning() const { return turning_->text(); }
FindingActions* AdvicePanel::actions() const { return actions_; }

void AdvicePanel::refresh() {
  const QPersistentModelIndex chosen(list_->currentIndex());
  const int row = chosen.row(), place = list_->verticalScrollBar()->value();
  model_->refresh();
  if (row >= 0 && !chosen.isValid()) {
    // Its finding is accepted, mended or asked no more. The next one is where it was, and the list stays where it is.
    const bool next = !session_.dragging() && row < model_->rowCount() && !model_->isGroup(row);
    list_->setCurrentIndex(next ? model_->index(row) : QModelIndex());
    list_->verticalScrollBar()->setValue(place);
  }
  const bool has_room = !session_.layout().room.empty();
  const bool any = model_->rowCount() > 0;
  QStringList counts;
  const auto count = [&](AdviceGroup group, const QString& words, bool always) {
    if (always || model_->countOf(group) > 0) counts << words.arg(model_->countOf(group));
  };
  count(AdviceGroup::shortfall, tr("%1 short"), true);
  count(AdviceGroup::unknown, tr("%1 not stated"), false);
  count(AdviceGroup::close, tr("%1 close"), false);
  count(AdviceGroup::accepted, tr("%1 accepted"), false);
  count(AdviceGroup::clear, tr("%1 clear"), true);
  if (model_->failedCount() > 0) counts << tr("%1 could not be checked").arg(model_->failedCount());
  summary_->setText(any ? counts.join(u", ") : tr("Advice"));
  summary_->setToolTip(any ? counts.join(u", ") : QString());

  const TurningFigures& turning = session_.report().figures.turning;
  const Unit unit = session_.plan().unit;
  QString line;
  if (has_room) {
    line = tr("Largest turning circle %1").arg(roundedDown(turning.largest.radius * 2, unit));
    if (turning.knee_space_used)
      line += tr(" (%1 with knee space)").arg(roundedDown(turning.with_knees.radius * 2, unit));
  }
  turning_->setText(line);
  turning_->setToolTip(line);
  turning_->setVisible(has_room);

  empty_->setText(
      !has_room ? tr("No room is drawn yet. Draw its walls on the plan, and what is short, close or clear "
                     "is listed here while you draw.")
                : tr("Nothing to check yet. Put a door or a fixture from the Tray into the room."));
  empty_->setVisible(!any);
  list_->setVisible(any);

  delegate_->setOpenRow(list_->currentIndex().isValid() ? list_->currentIndex().row() : -1);
  // The report may list the lit finding elsewhere now; that moves nobody's eyes.
  lighting_ = true;
  showLit();
  lighting_ = false;
  if (actions_ && acted_.isValid() && acted_ == list_->currentIndex())
    actions_->setFinding(model_->findingAt(acted_.row()));
  else
    placeActionsSoon();
}

void AdvicePanel::showLit() {
  const int row = model_->rowStandingFor(session_.litFinding());
  lit_ = row >= 0 ? QPersistentModelIndex(model_->index(row)) : QPersistentModelIndex();
  if (delegate_->litRow() == row) return;
  delegate_->setLitRow(row);
  list_->viewport()->update();
  if (row >= 0 && !lighting_) list_->scrollTo(model_->index(row));
}

void AdvicePanel::chooseRow(int row) {
  const int before = delegate_->openRow();
  delegate_->setOpenRow(row);
  for (int each : {before, row})
    if (each >= 0 && each < model_->rowCount()) delegate_->relayout(model_->index(each));
  light(row);
  placeActionsSoon();
}

// The current row changes while rows come and go; the view takes a widget only when it is at rest.
void AdvicePanel::placeActionsSoon() {
  if (placing_) return;
  placing_ = true;
  QMetaObject::invokeMethod(this, &AdvicePanel::placeActions, Qt::QueuedConnection);
}

void AdvicePanel::placeActions() {
  placing_ = false;
  const QModelIndex current = list_->currentIndex();
  const bool wanted = current.isValid() && !model_->isGroup(current.row());
  if (actions_ && acted_.isValid() && wanted && acted_ == current) return;
  if (actions_) {
    session_.clearPreview();
    const bool had_focus = actions_->isAncestorOf(QApplication::focusWidget());
    if (acted_.isValid()) list_->setIndexWidget(acted_, nullptr);
    if (had_focus) list_->setFocus();
  }
  actions_ = nullptr;
  acted_ = QPersistentModelIndex();
  if (!wanted) return;
  acted_ = current;
  actions_ = new FindingActions(session_);
  FindingActions* actions = actions_;
  connect(actions, &FindingActions::heightChanged, this, [this, actions] {
    if (actions != actions_ || !acted_.isValid()) return;
    delegate_->relayout(acted_);
    if (acted_ == list_->currentIndex()) list_->keepInView(acted_);
  });
  connect(actions, &FindingActions::backWanted, list_, [this] { list_->setFocus(); });
  list_->setIndexWidget(acted_, actions);
  setTabOrder(list_, actions);
  actions->setFinding(model_->findingAt(current.row()));
}

void AdvicePanel::light(int row) {
  lighting_ = true;
  session_.lightFinding(row >= 0 && row < model_->rowCount() ? model_->findingAt(row) : -1);
  lighting_ = false;
}

void AdvicePanel::go(int row) {
  if (row < 0 || row >= model_->rowCount()) return;
  if (model_->isGroup(row)) {
    model_->setOpen(model_->groupOf(row), !model_->isOpen(model_->groupOf(row)));
    refresh();
    return;
  }
  emit session_.showFinding(model_->findingAt(row));
}

}  // namespace elbowroom::ui

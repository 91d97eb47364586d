#include "ui/advice/wish_panel.h"

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/advice/wish_row.h"
#include "ui/look/look.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

QLabel* noteLabel(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setContentsMargins(kMargin, 0, kMargin, 0);
  return label;
}

QFrame* divider(QWidget* parent) {
  auto* line = new QFrame(parent);
  line->setFrameShape(QFrame::HLine);
  line->setFrameShadow(QFrame::Plain);
  line->setForegroundRole(QPalette::Mid);
  return line;
}

}  // namespace

WishPanel::WishPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      summary_(noteLabel({}, this)),
      empty_(noteLabel(
          tr("No room is drawn yet. Answer what you know already; what the plan shows is found while you "
             "draw."),
          this)),
      scroll_(new QScrollArea(this)) {
  setAccessibleName(tr("Wish list"));
  setMinimumWidth(220);
  summary_->setFont(boldFont(*this));
  summary_->setAccessibleName(tr("Wish list in short"));
  auto* note = noteLabel(
      tr("Worth considering, nothing of it is required. What you have answered prints on the sheets."), this);
  note->setFont(smallFont(*this));
  note->setForegroundRole(QPalette::PlaceholderText);
  note->setContentsMargins(kMargin, kGap, kMargin, kGap);

  auto* list = new QWidget;
  list->setBackgroundRole(QPalette::Base);
  list->setAutoFillBackground(true);
  auto* points = new QVBoxLayout(list);
  points->setContentsMargins(0, 0, 0, kGap);
  points->setSpacing(0);
  std::string_view topic;
  for (const WishPoint& point : wishPoints()) {
    if (point.topic != topic) {
      topic = point.topic;
      auto* heading = noteLabel(words(topic), list);
      heading->setContentsMargins(kMargin, kMargin, kMargin, kTightGap);
      heading->setForegroundRole(QPalette::PlaceholderText);
      points->addWidget(heading);
    }
    points->addWidget(divider(list));
    auto* row = new WishRow(point, list);
    points->addWidget(row);
    rows_.push_back(row);
    connectRow(rows_.size() - 1);
  }
  points->addStretch(1);
  scroll_->setWidget(list);
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setAccessibleName(tr("Points of the Wish list"));

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, kGap, 0, 0);
  column->setSpacing(kTightGap);
  column->addWidget(summary_);
  column->addWidget(empty_);
  column->addWidget(scroll_, 1);
  column->addWidget(note);

  connect(&session_, &Session::changed, this, &WishPanel::refresh);
  connect(&session_, &Session::optionChanged, this, &WishPanel::refresh);
  refresh();
}

QString WishPanel::summary() const { return summary_->text(); }

WishRow* WishPanel::row(std::string_view key) const {
  for (WishRow* row : rows_)
    if (row->point().key == key) return row;
  return nullptr;
}

void WishPanel::connectRow(std::size_t index) {
  WishRow* row = rows_[index];
  const QString title = words(row->point().title);
  connect(row, &WishRow::answered, this, [this, index, title](bool is_in, const QString& reason) {
    answer(index, Wish{is_in, reason.toStdString(), {}},
           is_in ? tr("Wish list: %1, in").arg(title) : tr("Wish list: %1, out").arg(title));
  });
  connect(row, &WishRow::takenBack, this,
          [this, index, title] { answer(index, std::nullopt, tr("Wish list: %1, undecided").arg(title)); });
  connect(row, &WishRow::showWanted, this, [this, index] {
    const WishState& state = states_[index];
    if (!state.places.empty()) emit showWanted(state.elements, state.places.front());
  });
  connect(row, &WishRow::grown, this, [this, row] {
    QMetaObject::invokeMethod(
        this, [this, row] { scroll_->ensureWidgetVisible(row, 0, kGap); }, Qt::QueuedConnection);
  });
  connect(row, &WishRow::moveWanted, this, [this, index](int rows, int button) {
    const auto to = static_cast<std::size_t>(static_cast<int>(index) + rows);
    if (to >= rows_.size()) return;
    const auto which = static_cast<WishRow::Button>(button);
    QPushButton* there = rows_[to]->button(which);
    if (!there->isVisibleTo(rows_[to]) || !there->isEnabled()) there = rows_[to]->button(WishRow::in);
    there->setFocus(rows < 0 ? Qt::BacktabFocusReason : Qt::TabFocusReason);
    scroll_->ensureWidgetVisible(rows_[to], 0, kGap);
  });
}

void WishPanel::answer(std::size_t row, std::optional<Wish> answer, const QString& label) {
  const std::string key(rows_[row]->point().key);
  const auto before = session_.option().wishes.find(key);
  if (answer && before != session_.option().wishes.end()) answer->extra = before->second.extra;
  session_.endMerge();
  session_.perform(AnswerWish{key, std::move(answer)}, label);
  session_.endMerge();
}

void WishPanel::refresh() {
  states_ = wishStates(session_.layout(), session_.report().figures, session_.memo());
  if (isVisible()) refreshRows();
  const int before = counts_.undecided;
  counts_ = countsOf(states_);
  QStringList parts{tr("%1 undecided").arg(counts_.undecided)};
  if (counts_.wanted > 0) parts << tr("%1 wanted").arg(counts_.wanted);
  parts << tr("%1 in the plan").arg(counts_.in_plan);
  if (counts_.left_out > 0) parts << tr("%1 out").arg(counts_.left_out);
  const QString text = parts.join(u", ");
  if (summary_->text() != text) summary_->setText(text);
  empty_->setVisible(session_.layout().room.empty());
  if (counts_.undecided != before) emit undecidedChanged(counts_.undecided);
}

void WishPanel::refreshRows() {
  const Option& option = session_.option();
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const auto at = option.wishes.find(std::string(rows_[i]->point().key));
    rows_[i]->setState(states_[i], at == option.wishes.end() ? nullptr : &at->second, option);
  }
}

// Rows behind another tab are not kept up while somebody drags.
void WishPanel::showEvent(QShowEvent* event) {
  refreshRows();
  QWidget::showEvent(event);
}

}  // namespace elbowroom::ui

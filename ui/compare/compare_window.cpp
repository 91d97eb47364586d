#include "ui/compare/compare_window.h"

#include <QApplication>
#include <QBoxLayout>
#include <QCheckBox>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QTreeWidget>

#include "core/file/report_json.h"
#include "ui/look/look.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/side_window.h"

namespace elbowroom::ui {
namespace {

constexpr int kSubjects = Qt::UserRole;  // of a cell: ids of the things that stand in that option
constexpr int kMark = 0, kLabel = 1, kOptions = 2;

QStringList idsOf(const CompareCell& cell) {
  QStringList ids;
  for (const ElementId& id : cell.subjects) ids << QString::fromStdString(id.text);
  return ids;
}

}  // namespace

CompareWindow::CompareWindow(Session& session, QWidget* parent) : QDialog(parent), session_(session) {
  setObjectName("compare-window");
  setWindowTitle(tr("Options side by side"));
  resize(1120, 660);
  about_ = new QLabel(this);
  about_->setWordWrap(true);
  only_different_ = new QCheckBox(tr("Only what &differs"), this);
  only_different_->setToolTip(tr("Leaves out the lines to which all options say the same"));
  lines_ = new QTreeWidget(this);
  lines_->setAccessibleName(tr("What each option says"));
  lines_->setRootIsDecorated(false);
  lines_->setItemsExpandable(false);
  lines_->setIndentation(0);
  lines_->setAllColumnsShowFocus(true);
  lines_->setAlternatingRowColors(false);
  lines_->header()->setStretchLastSection(false);
  lines_->header()->setSectionsMovable(false);
  copy_ = new QPushButton(tr("&Copy as text"), this);
  copy_->setToolTip(tr("Copies the whole comparison for a letter or a note"));
  auto* close = new QPushButton(tr("Close"), this);
  for (QPushButton* button : {copy_, close}) button->setAutoDefault(false);
  auto* foot = new QHBoxLayout;
  foot->addWidget(only_different_);
  foot->addStretch(1);
  foot->addWidget(copy_);
  foot->addWidget(close);
  auto* column = new QVBoxLayout(this);
  column->addWidget(about_);
  column->addWidget(lines_, 1);
  column->addLayout(foot);

  timer_ = pauseBefore(*this, session_, [this] { refresh(); });
  connect(only_different_, &QCheckBox::toggled, this, &CompareWindow::fill);
  connect(lines_, &QTreeWidget::itemClicked, this, &CompareWindow::goTo);
  connect(copy_, &QPushButton::clicked, this, &CompareWindow::copyAsText);
  connect(close, &QPushButton::clicked, this, &QWidget::close);
  for (auto signal : {&Session::changed, &Session::optionChanged})
    connect(&session_, signal, this, [this] {
      if (isVisible()) timer_->start();
    });
  undoByKeys(*this, session_);
}

void CompareWindow::showEvent(QShowEvent* event) {
  QDialog::showEvent(event);
  refresh();
}

void CompareWindow::keyPressEvent(QKeyEvent* event) {
  if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && lines_->currentItem())
    return goTo(lines_->currentItem(), kOptions + static_cast<int>(session_.optionIndex()));
  QDialog::keyPressEvent(event);
}

void CompareWindow::refresh() {
  comparison_ = compareOptions(session_.plan(), choiceOf(session_.plan()));
  fill();
}

void CompareWindow::fill() {
  const int before = lines_->currentItem() ? lines_->indexOfTopLevelItem(lines_->currentItem()) : -1;
  const bool alone = comparison_.options.size() < 2;
  about_->setText(alone ? tr("This plan has one option. The + over the plan copies it to a new one; then both stand here "
                             "side by side.")
                        : tr("\u2260 marks what differs. Click a figure to go to that option with its things selected; "
                             "Enter does it in the option that is shown."));
  only_different_->setEnabled(!alone);
  lines_->clear();
  QStringList heads{QString(), tr("Figure")};
  for (const std::string& option : comparison_.options) heads << QString::fromStdString(option);
  lines_->setColumnCount(heads.size());
  lines_->setHeaderLabels(heads);
  lines_->headerItem()->setToolTip(kMark, tr("\u2260: the options differ"));
  addLines(tr("Figures"), comparison_.figures);
  const std::pair<Level, QString> levels[] = {{Level::required, tr("Short in an option: required by a code or standard")},
                                              {Level::advised, tr("Short in an option: advised by published guidance")},
                                              {Level::craft, tr("Short in an option: common practice of the trades")}};
  for (const auto& [level, title] : levels) {
    std::vector<CompareLine> of_level;
    for (const CompareLine& line : comparison_.shortfalls)
      if (line.level == level) of_level.push_back(line);
    addLines(title, of_level);
  }
  if (lines_->topLevelItemCount() == 0) {
    auto* item = new QTreeWidgetItem(lines_);
    item->setText(kLabel, tr("The options say the same to everything."));
    item->setFirstColumnSpanned(false);
    item->setFlags(Qt::ItemIsEnabled);
  }
  lines_->header()->setSectionResizeMode(kMark, QHeaderView::ResizeToContents);
  lines_->header()->setSectionResizeMode(kLabel, QHeaderView::Stretch);
  for (int i = kOptions; i < heads.size(); ++i) {
    lines_->header()->setSectionResizeMode(i, QHeaderView::Interactive);
    lines_->resizeColumnToContents(i);
    lines_->setColumnWidth(i, std::clamp(lines_->columnWidth(i) + kGap, 120, 260));
  }
  if (before >= 0 && before < lines_->topLevelItemCount()) lines_->setCurrentItem(lines_->topLevelItem(before));
}

void CompareWindow::addLines(const QString& title, const std::vector<CompareLine>& lines) {
  bool headed = false;
  for (const CompareLine& line : lines) {
    if (only_different_->isChecked() && only_different_->isEnabled() && !line.differs) continue;
    if (!headed) {
      auto* heading = new QTreeWidgetItem(lines_);
      heading->setFirstColumnSpanned(true);
      heading->setText(kMark, title);
      heading->setFont(kMark, boldFont(*this));
      heading->setSizeHint(kMark, QSize(0, fontMetrics().height() + 2 * kGap));
      heading->setFlags(Qt::ItemIsEnabled);
      headed = true;
    }
    auto* item = new QTreeWidgetItem(lines_);
    item->setSizeHint(kMark, QSize(0, fontMetrics().height() + kGap));
    if (line.differs) {
      item->setText(kMark, QStringLiteral("\u2260"));
      item->setData(kMark, Qt::AccessibleTextRole, tr("differs"));
    }
    const QString label = QString::fromStdString(line.label);
    item->setText(kLabel, label);
    item->setToolTip(kLabel, line.why.empty() ? label : label + u'\n' + QString::fromStdString(line.why));
    for (std::size_t i = 0; i < line.cells.size(); ++i) {
      const int column = kOptions + static_cast<int>(i);
      const CompareCell& cell = line.cells[i];
      item->setText(column, QString::fromStdString(cell.text));
      item->setToolTip(column, tr("%1: %2").arg(QString::fromStdString(comparison_.options[i]), item->text(column)));
      item->setData(column, kSubjects, idsOf(cell));
      if (cell.outcome == Outcome::shortfall) item->setFont(column, boldFont(*this));
      if (!cell.outcome && line.level) item->setForeground(column, lookOf(*this).soft);
    }
  }
}

void CompareWindow::goTo(QTreeWidgetItem* item, int column) {
  const int option = column - kOptions;
  if (item == nullptr || option < 0 || option >= static_cast<int>(session_.plan().options.size())) return;
  session_.setOption(static_cast<std::size_t>(option));
  std::set<ElementId> ids;
  for (const QString& id : item->data(column, kSubjects).toStringList()) ids.insert(ElementId{id.toStdString()});
  session_.select(std::move(ids));
}

void CompareWindow::copyAsText() {
  QApplication::clipboard()->setText(QString::fromStdString(compareText(session_.plan(), choiceOf(session_.plan()))));
}

}  // namespace elbowroom::ui

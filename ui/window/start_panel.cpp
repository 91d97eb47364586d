#include "ui/window/start_panel.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "core/base/length_text.h"
#include "ui/canvas/room_tool.h"

namespace elbowroom::ui {

using namespace literals;

StartPanel::StartPanel(Session& session, QWidget* parent) : QFrame(parent), session_(session) {
  setFrameShape(QFrame::StyledPanel);
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::Window);
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(20, 18, 20, 18);
  grid->setHorizontalSpacing(10);
  grid->setVerticalSpacing(8);
  auto* title = new QLabel(tr("<b>Start with the room as found</b>"), this);
  auto* note = new QLabel(tr("Measure between finished wall faces. Anything can be moved later."), this);
  note->setWordWrap(true);
  across_ = new QLineEdit(this);
  deep_ = new QLineEdit(this);
  for (QLineEdit* edit : {across_, deep_}) edit->setMinimumWidth(90);
  across_->setAccessibleName(tr("Room, left to right"));
  deep_->setAccessibleName(tr("Room, top to bottom"));
  auto* make = new QPushButton(tr("Make a rectangular room"), this);
  make->setDefault(true);
  auto* draw = new QPushButton(tr("Draw it wall by wall"), this);
  auto* example = new QPushButton(tr("Look at an example"), this);
  why_ = new QLabel(this);
  why_->setWordWrap(true);
  why_->hide();
  grid->addWidget(title, 0, 0, 1, 4);
  grid->addWidget(note, 1, 0, 1, 4);
  grid->addWidget(new QLabel(tr("Left to right"), this), 2, 0);
  grid->addWidget(across_, 2, 1);
  grid->addWidget(new QLabel(tr("Top to bottom"), this), 2, 2);
  grid->addWidget(deep_, 2, 3);
  grid->addWidget(why_, 3, 0, 1, 4);
  grid->addWidget(make, 4, 0, 1, 4);
  grid->addWidget(draw, 5, 0, 1, 2);
  grid->addWidget(example, 5, 2, 1, 2);
  connect(make, &QPushButton::clicked, this, &StartPanel::makeRoom);
  connect(across_, &QLineEdit::returnPressed, this, &StartPanel::makeRoom);
  connect(deep_, &QLineEdit::returnPressed, this, &StartPanel::makeRoom);
  connect(draw, &QPushButton::clicked, this, &StartPanel::drawWanted);
  connect(example, &QPushButton::clicked, this, &StartPanel::exampleWanted);
  connect(&session_, &Session::changed, this, &StartPanel::refresh);
  refresh();
}

void StartPanel::refresh() {
  const bool inches = session_.plan().unit == Unit::inches;
  if (across_->text().isEmpty() || !across_->isModified()) across_->setText(inches ? "8' 0\"" : "2400");
  if (deep_->text().isEmpty() || !deep_->isModified()) deep_->setText(inches ? "5' 0\"" : "1600");
}

void StartPanel::makeRoom() {
  const Unit unit = session_.plan().unit;
  const auto across = parseLength(across_->text().toStdString(), unit);
  const auto deep = parseLength(deep_->text().toStdString(), unit);
  QString why;
  if (!across) why = QString::fromStdString(across.error().message);
  else if (!deep) why = QString::fromStdString(deep.error().message);
  else if (*across < 12_in || *deep < 12_in) why = tr("A room is at least 12 in each way.");
  else if (*across > 1200_in || *deep > 1200_in) why = tr("That is larger than 100 ft; please check the figure.");
  why_->setText(why);
  why_->setVisible(!why.isEmpty());
  adjustSize();
  if (!why.isEmpty()) return;
  const std::vector<Point> corners{{{}, *deep}, {*across, *deep}, {*across, {}}, {{}, {}}};
  session_.perform(SetRoom{roomOf(corners, usualWallThickness(unit), session_.option().room)}, tr("Make room"));
}

}  // namespace elbowroom::ui

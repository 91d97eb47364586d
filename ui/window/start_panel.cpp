#include "ui/window/start_panel.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "core/base/length_text.h"
#include "ui/canvas/room_tool.h"
#include "ui/look/look.h"
#include "ui/widgets/figures.h"

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
  why_->setTextFormat(Qt::PlainText);
  why_->setAccessibleName(tr("Why there is no room yet"));
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
  for (QLineEdit* edit : {across_, deep_}) connect(edit, &QLineEdit::textEdited, this, [this] { say({}); });
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

std::optional<Length> StartPanel::sideIn(QLineEdit* edit) {
  const Unit unit = session_.plan().unit, other = unit == Unit::inches ? Unit::millimetres : Unit::inches;
  const Length least = unit == Unit::inches ? 12_in : 300_mm, most = unit == Unit::inches ? 1200_in : 30'000_mm;
  const std::string text = edit->text().toStdString();
  const auto side = parseLength(text, unit);
  const auto plain = [&] { return parseLength(text, other).value() != *side; };  // a number without its unit
  QString why;
  if (!side) {
    why = QString::fromStdString(side.error().message);
  } else if (*side < least) {
    why = tr("A room is at least %1 each way; this is %2.").arg(lengthWords(least, unit), lengthWords(*side, unit));
    if (unit == Unit::millimetres && plain()) why += tr(" A plain number is millimetres here; write 8' for feet.");
  } else if (*side > most) {
    why = tr("A room is at most %1 each way; this is %2.").arg(lengthWords(most, unit), lengthWords(*side, unit));
    if (unit == Unit::inches && plain()) why += tr(" A plain number is inches here; write 2400 mm for millimetres.");
  }
  edit->setAccessibleDescription(why);
  if (why.isEmpty()) return *side;
  say(tr("%1: %2").arg(edit == across_ ? tr("Left to right") : tr("Top to bottom"), why));
  edit->setFocus();
  edit->selectAll();
  return std::nullopt;
}

void StartPanel::say(const QString& why) {
  QPalette colours = palette();
  colours.setColor(QPalette::WindowText, lookOf(*this).warning);
  why_->setPalette(colours);
  why_->setText(why);
  why_->setVisible(!why.isEmpty());
  adjustSize();
}

void StartPanel::makeRoom() {
  say({});
  const Unit unit = session_.plan().unit;
  const auto across = sideIn(across_);
  const auto deep = across ? sideIn(deep_) : std::nullopt;
  if (!across || !deep) return;
  const std::vector<Point> corners{{{}, *deep}, {*across, *deep}, {*across, {}}, {{}, {}}};
  session_.perform(SetRoom{roomOf(corners, usualWallThickness(unit), session_.option().room)}, tr("Make room"));
}

}  // namespace elbowroom::ui

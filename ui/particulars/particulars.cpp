#include "ui/particulars/particulars.h"

#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "ui/look/look.h"
#include "ui/particulars/door_tryout.h"
#include "ui/particulars/facts_form.h"
#include "ui/particulars/pages.h"
#include "ui/session/session.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {

Particulars::Particulars(Session& session, QWidget* parent) : QScrollArea(parent), session_(session) {
  setAccessibleName(tr("Particulars"));
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  setMinimumWidth(200);
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, kGap, 0, kGap);
  column->setSpacing(kGap);
  title_ = new QLabel(inside);
  title_->setFont(boldFont(*this));
  title_->setContentsMargins(kMargin, 0, kMargin, 0);
  title_->setTextFormat(Qt::PlainText);
  column->addWidget(title_);
  room_ = new RoomPage(session_, inside);
  wall_ = new WallPage(session_, inside);
  opening_ = new OpeningPage(session_, inside);
  fixture_ = new FixturePage(session_, inside);
  item_ = new WallItemPage(session_, inside);
  ceiling_item_ = new CeilingItemPage(session_, inside);
  several_ = new SeveralPage(session_, inside);
  for (Page* page : {room_, wall_, opening_, fixture_, item_, ceiling_item_, several_}) {
    column->addWidget(page);
    page->hide();
  }
  facts_ = new FactsForm(session_, inside);
  column->addWidget(facts_);
  tryout_ = new DoorTryout(session_, inside);
  column->addWidget(tryout_);
  column->addStretch(1);
  setWidget(inside);
  connect(&session_, &Session::changed, this, &Particulars::refresh);
  connect(&session_, &Session::selectionChanged, this, [this] {
    // What is being typed belongs to what was selected.
    for (LengthEdit* edit : findChildren<LengthEdit*>()) edit->forgetTyping();
    for (QLineEdit* line : findChildren<QLineEdit*>()) line->setModified(false);
    refresh();
  });
  refresh();
}

QString Particulars::title() const { return title_->text(); }

Page* Particulars::wanted() const {
  const auto& selection = session_.selection();
  if (selection.empty()) return room_;
  if (selection.size() > 1) return several_;
  const Option& option = session_.option();
  const ElementId& id = *selection.begin();
  if (findWall(option, id)) return wall_;
  if (findOpening(option, id)) return opening_;
  if (findFixture(option, id)) return fixture_;
  if (findWallItem(option, id)) return item_;
  if (findCeilingItem(option, id)) return ceiling_item_;
  return room_;
}

void Particulars::refresh() {
  Page* next = wanted();
  next->refresh();
  if (next != page_) {
    if (page_) page_->hide();
    page_ = next;
    page_->show();
    ensureVisible(0, 0);
  }
  title_->setText(page_->title());
  if (page_ == several_) facts_->hide();
  else facts_->setThing(selectedOne(session_));
  const Opening* door = page_ == opening_ ? findOpening(session_.option(), selectedOne(session_)) : nullptr;
  tryout_->setDoor(door && door->kind == OpeningKind::door ? door->id : ElementId{});
}

}  // namespace elbowroom::ui

#include "ui/people/people_dialog.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <algorithm>

#include "core/people/body.h"
#include "core/people/growth.h"
#include "ui/look/look.h"
#include "ui/particulars/form.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {

using namespace literals;

namespace {

QString whoWords(const Person& person, bool height_known, Unit unit) {
  QStringList parts;
  if (person.chair) parts << PeopleDialog::tr("wheelchair");
  if (person.child) parts << PeopleDialog::tr("child");
  parts << (height_known ? lengthWords(person.stature, unit) : PeopleDialog::tr("height missing"));
  const QString name = QString::fromStdString(person.name);
  return PeopleDialog::tr("%1: %2").arg(name.isEmpty() ? PeopleDialog::tr("(no name yet)") : name, parts.join(", "));
}

QString bandWords(HeightBand band, Unit unit) {
  if (band.low == band.high) return lengthWords(band.high, unit);
  return PeopleDialog::tr("%1 to %2").arg(lengthWords(band.low, unit), lengthWords(band.high, unit));
}

}  // namespace

PeopleDialog::PeopleDialog(Session& session, QWidget* parent) : QDialog(parent), session_(session) {
  setObjectName("people-dialog");
  setWindowTitle(tr("People"));
  resize(660, 440);
  for (const Person& person : session_.plan().people) drafts_.push_back({person, person.name, true});
  auto* intro = new QLabel(
      tr("Who uses the room. Mirrors, lights, counters, shelves and the room to move are measured against them."), this);
  intro->setWordWrap(true);
  problem_ = new QLabel(this);
  problem_->setWordWrap(true);
  problem_->setAccessibleName(tr("What is missing"));
  problem_->hide();
  pages_ = new QStackedWidget(this);
  auto* nobody = new QLabel(
      tr("<p><b>Nobody is named yet.</b></p>"
         "<p>A mirror at the right height for one person cuts off the head of another. With the people named, Advice says "
         "whom a mirror, a light, a counter or a shelf does not suit and by how much, a mirror can be set to somebody's "
         "eyes, and the Wall strip shows the heights that serve everybody.</p>"
         "<p>Until then, an average woman (%1) and a tall man (%2) stand in, and nothing is measured for children or for "
         "a wheelchair of your own.</p>")
          .arg(lengthWords(medianWoman().stature, session_.plan().unit),
               lengthWords(tallMan().stature, session_.plan().unit)),
      pages_);
  nobody->setObjectName("nobody");
  nobody->setWordWrap(true);
  nobody->setAlignment(Qt::AlignTop);
  pages_->addWidget(nobody);
  pages_->addWidget(buildForm());
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
  connect(buttons, &QDialogButtonBox::accepted, this, &PeopleDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &PeopleDialog::reject);
  auto* row = new QHBoxLayout;
  row->setSpacing(kMargin);
  row->addWidget(buildList(), 2);
  row->addWidget(pages_, 3);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kMargin, kMargin, kMargin, kMargin);
  column->setSpacing(kGap);
  column->addWidget(intro);
  column->addLayout(row, 1);
  column->addWidget(problem_);
  column->addWidget(buttons);
  relist();
  list_->setCurrentRow(drafts_.empty() ? -1 : 0);
  showPerson(list_->currentRow());
}

QWidget* PeopleDialog::buildList() {
  auto* side = new QWidget(this);
  list_ = new QListWidget(side);
  list_->setAccessibleName(tr("People who use the room"));
  auto* add = new QPushButton(tr("&Add a person"), side);
  remove_ = new QPushButton(tr("&Remove"), side);
  add->setObjectName("add");
  remove_->setObjectName("remove");
  for (QPushButton* button : {add, remove_}) button->setAutoDefault(false);
  auto* row = new QHBoxLayout;
  row->addWidget(add);
  row->addWidget(remove_);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(list_, 1);
  column->addLayout(row);
  connect(list_, &QListWidget::currentRowChanged, this, &PeopleDialog::showPerson);
  connect(add, &QPushButton::clicked, this, &PeopleDialog::add);
  connect(remove_, &QPushButton::clicked, this, &PeopleDialog::removeChosen);
  return side;
}

QWidget* PeopleDialog::buildForm() {
  const Unit unit = session_.plan().unit;
  auto* page = new QWidget(pages_);
  form_ = new Form(page);
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(form_);
  column->addStretch(1);
  name_ = new QLineEdit(form_);
  name_->setMaxLength(60);
  name_->setPlaceholderText(tr("First name, or \"Guest\""));
  form_->addField(tr("Name"), name_);
  height_ = form_->addLength(tr("Height, standing"));
  height_->setRange(12_in, 3000_mm);
  height_->line()->setPlaceholderText(unit == Unit::inches ? tr("for instance 5' 6\"") : tr("for instance 1680"));
  child_ = form_->addMark(tr("A child"));
  age_ = new QComboBox(form_);
  age_->addItem(tr("not by age"), 0);
  QStringList between;
  for (int years = kYoungestListed; years <= kOldestListed; ++years) {
    age_->addItem(tr("%1 years: %2").arg(years).arg(lengthWords(*statureAtAge(years), unit)), years);
    if (!listedAge(years)) between << QString::number(years);
    age_->setItemData(age_->count() - 1,
                      listedAge(years) ? tr("The median of boys and girls in the CDC growth charts of 2000")
                                       : tr("Halfway between the medians of the years before and after"),
                      Qt::ToolTipRole);
  }
  age_->setToolTip(tr("The median of boys and girls in the CDC growth charts of 2000 (halfway between their neighbours at "
                      "%1 years). Half of all children are taller: measure when you can.")
                       .arg(between.join(tr(", "))));
  form_->addField(tr("Height by age"), age_);
  chair_ = form_->addMark(tr("Uses a wheelchair"));
  chair_width_ = form_->addLength(tr("Chair, width"));
  chair_length_ = form_->addLength(tr("Chair, length"));
  for (LengthEdit* edit : {chair_width_, chair_length_}) edit->setRange(12_in, 72_in);
  chair_width_->line()->setToolTip(tr("Across the hand rims; usually 26 in (660 mm)"));
  chair_length_->line()->setToolTip(tr("From the back of the wheels to the toes; usually 48 in (1219 mm)"));
  form_->addHeading(tr("What the program takes from it"));
  eyes_ = form_->addFact(tr("Eyes"));
  elbows_ = form_->addFact(tr("Elbows"));
  reach_ = form_->addFact(tr("Reaches up to"));
  counter_ = form_->addFact(tr("Counter with ease"));
  eyes_->setToolTip(tr("Ratios of body height from a survey of 6,068 adults; children and wheelchair users by their own rules"));
  connect(name_, &QLineEdit::textEdited, this, [this](const QString& text) {
    if (Draft* draft = chosen()) draft->person.name = text.trimmed().toStdString();
    relist();
  });
  connect(height_, &LengthEdit::committed, this, &PeopleDialog::takeHeight);
  connect(child_, &QCheckBox::toggled, this, [this](bool on) {
    if (Draft* draft = filling_ ? nullptr : chosen()) draft->person.child = on;
    relist();
  });
  connect(age_, &QComboBox::activated, this, &PeopleDialog::takeAge);
  connect(chair_, &QCheckBox::toggled, this, &PeopleDialog::takeChair);
  connect(chair_width_, &LengthEdit::committed, this, [this](Length width) {
    if (Draft* draft = chosen(); draft && draft->person.chair) draft->person.chair->width = width;
  });
  connect(chair_length_, &LengthEdit::committed, this, [this](Length length) {
    if (Draft* draft = chosen(); draft && draft->person.chair) draft->person.chair->length = length;
  });
  return page;
}

PeopleDialog::Draft* PeopleDialog::chosen() {
  const int row = list_->currentRow();
  return row >= 0 && row < static_cast<int>(drafts_.size()) ? &drafts_[static_cast<std::size_t>(row)] : nullptr;
}

void PeopleDialog::add() {
  drafts_.push_back({Person{}, std::nullopt, false});
  relist();
  list_->setCurrentRow(static_cast<int>(drafts_.size()) - 1);
  name_->setFocus(Qt::OtherFocusReason);
}

void PeopleDialog::removeChosen() {
  const int row = list_->currentRow();
  if (chosen() == nullptr) return;
  drafts_.erase(drafts_.begin() + row);
  problem_->hide();
  relist();
  list_->setCurrentRow(std::min(row, static_cast<int>(drafts_.size()) - 1));
  showPerson(list_->currentRow());
}

void PeopleDialog::showPerson(int row) {
  remove_->setEnabled(row >= 0);
  pages_->setCurrentIndex(row >= 0 ? 1 : 0);
  const Draft* draft = chosen();
  if (draft == nullptr) return;
  filling_ = true;
  const Unit unit = session_.plan().unit;
  for (LengthEdit* edit : {height_, chair_width_, chair_length_}) edit->forgetTyping();
  const QString name = QString::fromStdString(draft->person.name);
  if (name_->text().trimmed() != name) name_->setText(name);
  height_->setLength(draft->height_known ? std::optional(draft->person.stature) : std::nullopt, unit);
  child_->setChecked(draft->person.child);
  chair_->setChecked(draft->person.chair.has_value());
  const Chair chair = draft->person.chair.value_or(usualChair());
  chair_width_->setLength(chair.width, unit);
  chair_length_->setLength(chair.length, unit);
  filling_ = false;
  showFigures();
}

void PeopleDialog::showFigures() {
  const Draft* draft = chosen();
  if (draft == nullptr) return;
  const Person& person = draft->person;
  const Unit unit = session_.plan().unit;
  form_->setShown(age_, person.child);
  form_->setShown(chair_width_, person.chair.has_value());
  form_->setShown(chair_length_, person.chair.has_value());
  int age = 0;
  for (int at = 1; at < age_->count(); ++at)
    if (draft->height_known && statureAtAge(age_->itemData(at).toInt()) == person.stature) age = at;
  age_->setCurrentIndex(age);
  const QString unknown = draft->height_known ? QString() : tr("give the height first");
  const auto put = [&](QLabel* label, const QString& text) { label->setText(unknown.isEmpty() ? text : unknown); };
  put(eyes_, bandWords(eyesOf(person), unit));
  put(elbows_, lengthWords(elbowHeight(person), unit));
  put(reach_, lengthWords(reachUp(person), unit));
  const HeightBand ease = workingHeight(person);
  put(counter_, person.chair ? tr("up to %1").arg(lengthWords(ease.high, unit)) : bandWords(ease, unit));
}

void PeopleDialog::takeHeight(Length height) {
  Draft* draft = chosen();
  if (draft == nullptr) return;
  draft->person.stature = height;
  draft->height_known = true;
  relist();
}

void PeopleDialog::takeAge(int at) {
  const auto height = statureAtAge(age_->itemData(at).toInt());
  if (!height) return;
  takeHeight(*height);
  height_->forgetTyping();
  height_->setLength(*height, session_.plan().unit);
}

void PeopleDialog::takeChair(bool on) {
  Draft* draft = filling_ ? nullptr : chosen();
  if (draft == nullptr) return;
  const Chair usual = usualChair();
  if (on) {
    draft->person.chair = Chair{chair_width_->length().value_or(usual.width),
                                chair_length_->length().value_or(usual.length)};
  } else {
    draft->person.chair.reset();
  }
  relist();
}

void PeopleDialog::relist() {
  if (filling_) return;
  problem_->hide();
  const QSignalBlocker quiet(list_);
  const int count = static_cast<int>(drafts_.size());
  while (list_->count() > count) delete list_->takeItem(list_->count() - 1);
  while (list_->count() < count) list_->addItem(QString());
  for (int row = 0; row < count; ++row) {
    const Draft& draft = drafts_[static_cast<std::size_t>(row)];
    list_->item(row)->setText(whoWords(draft.person, draft.height_known, session_.plan().unit));
  }
  showFigures();
}

void PeopleDialog::refuse(std::size_t row, QWidget* field, const QString& why) {
  list_->setCurrentRow(static_cast<int>(row));
  problem_->setText(why);
  problem_->show();
  field->setFocus(Qt::OtherFocusReason);
}

void PeopleDialog::accept() {
  // What is being typed counts, however OK was reached.
  setFocus(Qt::OtherFocusReason);
  for (LengthEdit* edit : {height_, chair_width_, chair_length_})
    if (chosen() && edit->isVisible() && !edit->problem().isEmpty()) {
      edit->setFocus(Qt::OtherFocusReason);
      return;
    }
  for (std::size_t row = 0; row < drafts_.size(); ++row) {
    const Draft& draft = drafts_[row];
    const QString name = QString::fromStdString(draft.person.name);
    if (name.isEmpty()) return refuse(row, name_, tr("Person %1 needs a name.").arg(row + 1));
    for (std::size_t before = 0; before < row; ++before)
      if (drafts_[before].person.name == draft.person.name)
        return refuse(row, name_,
                      tr("There are two people named %1. Heights are set by name, so each needs its own.")
                          .arg(name));
    if (!draft.height_known)
      return refuse(row, height_,
                    tr("How tall is %1? Eyes, elbows and reach follow from the height.").arg(name));
  }
  SetPeople edit;
  for (const Draft& draft : drafts_) {
    edit.people.push_back(draft.person);
    if (draft.was && *draft.was != draft.person.name) edit.renamed[*draft.was] = draft.person.name;
  }
  if (!session_.perform(std::move(edit), tr("Name the people"))) {
    problem_->setText(session_.lastError());
    problem_->show();
    return;
  }
  QDialog::accept();
}

}  // namespace elbowroom::ui

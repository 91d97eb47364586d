#include "ui/particulars/form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>

#include "ui/look/look.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {

Form::Form(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(kMargin, 0, kMargin, kGap);
  grid_->setHorizontalSpacing(kGap);
  grid_->setVerticalSpacing(kTightGap + 1);
  grid_->setColumnStretch(1, 1);
}

void Form::addField(const QString& label, QWidget* field) {
  auto* caption = new QLabel(label, this);
  caption->setBuddy(field);
  caption->setMinimumHeight(field->sizeHint().height());
  caption->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  if (wraps_) {
    // Its height follows its width, and the field keeps at least half of the row.
    caption->setWordWrap(true);
    caption->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
    field->setMinimumWidth(40);
  }
  grid_->addWidget(caption, row_, 0, Qt::AlignTop);
  grid_->addWidget(field, row_, 1);
  labels_.insert(field, caption);
  if (field->accessibleName().isEmpty()) field->setAccessibleName(label);
  ++row_;
}

LengthEdit* Form::addLength(const QString& label) {
  auto* edit = new LengthEdit(label, this);
  addField(label, edit);
  return edit;
}

QComboBox* Form::addChoice(const QString& label, const QStringList& choices) {
  auto* box = new QComboBox(this);
  box->addItems(choices);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(6);
  addField(label, box);
  return box;
}

QCheckBox* Form::addMark(const QString& label) {
  auto* box = new QCheckBox(label, this);
  grid_->addWidget(box, row_++, 0, 1, 2);  // its words need more than a field's width
  return box;
}

QLabel* Form::addFact(const QString& label) {
  auto* fact = new QLabel(this);
  fact->setTextInteractionFlags(Qt::TextSelectableByMouse);
  fact->setWordWrap(true);
  addField(label, fact);
  return fact;
}

void Form::wrapLabels() {
  wraps_ = true;
  grid_->setColumnStretch(0, 6);
  grid_->setColumnStretch(1, 5);
}

void Form::addHeading(const QString& text) {
  auto* heading = new QLabel(text, this);
  heading->setFont(boldFont(*this));
  heading->setContentsMargins(0, kGap, 0, 0);
  grid_->addWidget(heading, row_++, 0, 1, 2);
}

void Form::addWide(QWidget* widget) { grid_->addWidget(widget, row_++, 0, 1, 2); }

void Form::setShown(QWidget* field, bool shown) {
  field->setVisible(shown);
  if (QLabel* label = labels_.value(field)) label->setVisible(shown);
}

}  // namespace elbowroom::ui

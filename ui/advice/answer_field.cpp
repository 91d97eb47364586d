#include "ui/advice/answer_field.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <cmath>

#include "ui/look/look.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {
namespace {

constexpr std::size_t kMostButtons = 3;

}  // namespace

AnswerField::AnswerField(Asking asking, Unit unit, QWidget* parent) : QWidget(parent), asking_(std::move(asking)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kTightGap);
  auto* question = new QLabel(words(asking_.question), this);
  question->setWordWrap(true);
  question->setTextFormat(Qt::PlainText);
  column->addWidget(question);
  auto* row = new QHBoxLayout;
  row->setSpacing(kTightGap);
  column->addLayout(row);
  switch (asking_.type) {
    case FactType::yesNo:
      addYesNo(row);
      break;
    case FactType::length:
      addLength(row, unit);
      break;
    case FactType::amount:
      addAmount(row);
      break;
    case FactType::word:
      addWords(row);
      break;
  }
}

void AnswerField::addYesNo(QBoxLayout* row) {
  for (const bool yes : {true, false}) {
    auto* button = new QPushButton(yes ? tr("Yes") : tr("No"), this);
    button->setAccessibleDescription(words(asking_.question));
    connect(button, &QPushButton::clicked, this, [this, yes] { emit answered(FactValue(yes)); });
    row->addWidget(button);
  }
  row->addStretch(1);
}

void AnswerField::addLength(QBoxLayout* row, Unit unit) {
  auto* edit = new LengthEdit(words(asking_.label), this);
  edit->setLength(std::nullopt, unit);
  edit->line()->setPlaceholderText(tr("Measure and enter"));
  edit->line()->setAccessibleDescription(words(asking_.question));
  connect(edit, &LengthEdit::committed, this, [this](Length length) { emit answered(FactValue(length)); });
  row->addWidget(edit, 1);
}

void AnswerField::addAmount(QBoxLayout* row) {
  auto* edit = new QLineEdit(this);
  edit->setAccessibleName(words(asking_.label));
  edit->setAccessibleDescription(words(asking_.question));
  edit->setPlaceholderText(tr("Enter a number"));
  auto* problem = new QLabel(this);
  problem->setFont(smallFont(*this));
  problem->setWordWrap(true);
  problem->hide();
  static_cast<QBoxLayout*>(layout())->addWidget(problem);
  connect(edit, &QLineEdit::returnPressed, this, [this, edit, problem] {
    bool read = false;
    const double value = QLocale::c().toDouble(edit->text().trimmed().replace(u',', u'.'), &read);
    const bool fits = read && value >= 0 && value < 1e9;
    problem->setText(fits ? QString() : tr("This is no number of zero or more."));
    problem->setVisible(!fits);
    if (fits) emit answered(FactValue(Amount{std::llround(value * 1000)}));
  });
  row->addWidget(edit, 1);
  if (!asking_.unit.empty()) row->addWidget(new QLabel(words(asking_.unit), this));
}

void AnswerField::addWords(QBoxLayout* row) {
  if (asking_.words.size() <= kMostButtons) {
    for (const auto& [value, said] : asking_.words) {
      auto* button = new QPushButton(words(said), this);
      button->setMinimumWidth(36);
      button->setAccessibleDescription(words(asking_.question));
      connect(button, &QPushButton::clicked, this, [this, value = value] { emit answered(FactValue(value)); });
      row->addWidget(button);
    }
    row->addStretch(1);
    return;
  }
  auto* box = new QComboBox(this);
  box->setAccessibleName(words(asking_.label));
  box->setPlaceholderText(tr("Choose"));
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  for (const auto& [value, said] : asking_.words) box->addItem(words(said), words(value));
  box->setCurrentIndex(-1);
  connect(box, &QComboBox::activated, this,
          [this, box](int index) { emit answered(FactValue(box->itemData(index).toString().toStdString())); });
  row->addWidget(box, 1);
}

}  // namespace elbowroom::ui

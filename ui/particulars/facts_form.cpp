#include "ui/particulars/facts_form.h"

#include <QComboBox>
#include <QVBoxLayout>

#include "core/plan/catalogue.h"
#include "core/rules/text.h"
#include "ui/particulars/pages.h"
#include "ui/session/session.h"
#include "ui/widgets/amount_edit.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {
namespace {

QStringList wordsOfFact(const FactInfo& info) { return words(info.words).split(u' ', Qt::SkipEmptyParts); }

QString spoken(QString key) {
  key.replace(u'-', u' ');
  if (!key.isEmpty()) key[0] = key[0].toUpper();
  return key;
}

}  // namespace

FactsForm::FactsForm(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), column_(new QVBoxLayout(this)) {
  column_->setContentsMargins(0, 0, 0, 0);
  setAccessibleName(tr("Facts"));
}

void FactsForm::setThing(const ElementId& id) {
  const Option& option = session_.option();
  FactOn on = FactOn::room;
  std::string kind;
  const Facts* facts = &option.room.facts;
  if (const Wall* w = findWall(option, id)) {
    on = FactOn::wall, facts = &w->facts;
  } else if (const Opening* o = findOpening(option, id)) {
    on = FactOn::opening, facts = &o->facts, kind = o->kind == OpeningKind::door ? "door" : "window";
  } else if (const Fixture* f = findFixture(option, id)) {
    on = FactOn::fixture, facts = &f->facts, kind = infoOf(f->kind).key;
  } else if (const WallItem* i = findWallItem(option, id)) {
    on = FactOn::wallItem, facts = &i->facts, kind = i->kind;
  } else if (const CeilingItem* c = findCeilingItem(option, id)) {
    on = FactOn::ceilingItem, facts = &c->facts, kind = c->kind;
  } else if (!id.empty()) {
    return hide();
  }
  const bool other = !built_ || on != on_ || kind != kind_;
  id_ = id;
  on_ = on;
  kind_ = kind;
  if (other) build();
  refresh(*facts);
  setVisible(!rows_.empty());
}

void FactsForm::build() {
  built_ = true;
  rows_.clear();
  if (form_) {
    // One of its own fields may be what brought us here.
    form_->hide();
    form_->setParent(nullptr);
    form_->deleteLater();
  }
  form_ = new Form(this);
  column_->addWidget(form_);
  form_->wrapLabels();
  form_->addHeading(tr("Facts"));
  for (const FactInfo& info : allFacts()) {
    if (info.on != on_ || !concerns(info, kind_)) continue;
    QWidget* field = fieldFor(info, *form_);
    field->setToolTip(words(info.question));
    rows_.push_back({&info, field});
  }
  form_->show();
}

QWidget* FactsForm::fieldFor(const FactInfo& info, Form& form) {
  const QString label = words(info.label);
  switch (info.type) {
    case FactType::yesNo: {
      QComboBox* box = form.addChoice(label, {tr("not stated"), tr("Yes"), tr("No")});
      box->setMinimumContentsLength(3);
      connect(box, &QComboBox::activated, this, [this, &info](int i) {
        state(info, i == 0 ? std::nullopt : std::optional<FactValue>(i == 1));
      });
      return box;
    }
    case FactType::word: {
      QStringList choices{tr("not stated")};
      for (const QString& key : wordsOfFact(info)) choices << spoken(key);
      QComboBox* box = form.addChoice(label, choices);
      connect(box, &QComboBox::activated, this, [this, &info](int i) {
        state(info, i == 0 ? std::nullopt : std::optional<FactValue>(wordsOfFact(info)[i - 1].toStdString()));
      });
      return box;
    }
    case FactType::length: {
      LengthEdit* edit = form.addLength(label);
      edit->setMayBeEmpty(tr("not stated"));
      connect(edit, &LengthEdit::committed, this, [this, &info, edit](Length l) { state(info, FactValue(l), edit); });
      connect(edit, &LengthEdit::cleared, this, [this, &info, edit] { state(info, std::nullopt, edit); });
      return edit;
    }
    case FactType::amount:
      break;
  }
  auto* edit = new AmountEdit(label, words(info.unit), &form);
  form.addField(label, edit);
  connect(edit, &AmountEdit::committed, this, [this, &info](std::optional<Amount> amount) {
    state(info, amount ? std::optional<FactValue>(*amount) : std::nullopt);
  });
  return edit;
}

void FactsForm::state(const FactInfo& info, std::optional<FactValue> value, LengthEdit* from) {
  performAt(session_, StateFact{id_, std::string(info.key), std::move(value)},
            tr("State \u201c%1\u201d").arg(words(info.label)), id_, from);
}

void FactsForm::refresh(const Facts& facts) {
  const Unit unit = session_.plan().unit;
  for (const Row& row : rows_) {
    const std::string key(row.info->key);
    switch (row.info->type) {
      case FactType::yesNo: {
        const auto yes = yesNo(facts, key);
        static_cast<QComboBox*>(row.field)->setCurrentIndex(!yes ? 0 : *yes ? 1 : 2);
        break;
      }
      case FactType::word: {
        const auto word = wordOf(facts, key);
        static_cast<QComboBox*>(row.field)->setCurrentIndex(
            word ? static_cast<int>(wordsOfFact(*row.info).indexOf(QString::fromStdString(*word))) + 1 : 0);
        break;
      }
      case FactType::length:
        static_cast<LengthEdit*>(row.field)->setLength(lengthOf(facts, key), unit);
        break;
      case FactType::amount:
        static_cast<AmountEdit*>(row.field)->setAmount(amountOf(facts, key));
        break;
    }
  }
}

bool FactsForm::ask(const std::string& key) {
  for (const Row& row : rows_)
    if (row.info->key == key) {
      row.field->setFocus(Qt::OtherFocusReason);
      return true;
    }
  return false;
}

}  // namespace elbowroom::ui

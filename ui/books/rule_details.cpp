#include "ui/books/rule_details.h"

#include <QBoxLayout>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "core/rules/in_force.h"
#include "core/rules/text_rules.h"
#include "ui/books/limit_entry.h"
#include "ui/look/look.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

QLabel* textLabel(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QString line(const QString& label, const QString& text) {
  if (text.isEmpty()) return {};
  return QString("<tr><td style=\"padding-right:10px\">%1</td><td>%2</td></tr>")
      .arg(label.toHtmlEscaped().replace(' ', QStringLiteral("&nbsp;")), unbroken(text).toHtmlEscaped());
}

QString levelWords(Level level) {
  switch (level) {
    case Level::required:
      return RuleDetails::tr("required");
    case Level::advised:
      return RuleDetails::tr("advised");
    case Level::craft:
      return RuleDetails::tr("common practice");
  }
  return {};
}

}  // namespace

RuleDetails::RuleDetails(Session& session, const RuleOutcomes& outcomes, QWidget* parent)
    : QScrollArea(parent), session_(session), outcomes_(outcomes) {
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setAccessibleName(tr("Rule"));
  auto* inner = new QWidget;
  auto* column = new QVBoxLayout(inner);
  column->setContentsMargins(kMargin, kGap, kMargin, kGap);
  title_ = textLabel(inner);
  title_->setFont(boldFont(*this));
  facts_ = textLabel(inner);
  options_ = textLabel(inner);
  changed_ = textLabel(inner);
  changes_ = new QWidget(inner);
  auto* grid = new QGridLayout(changes_);
  grid->setContentsMargins(0, 0, 0, 0);
  limit_ = new QLineEdit(changes_);
  limit_->setObjectName("limit");
  limit_->setAccessibleName(tr("Limit of your own"));
  limit_->setFixedWidth(limit_->fontMetrics().horizontalAdvance("00'-00 00/00\"") + 16);
  unit_ = new QLabel(changes_);
  reason_ = new QLineEdit(changes_);
  reason_->setObjectName("reason");
  reason_->setAccessibleName(tr("Reason for the change"));
  reason_->setPlaceholderText(tr("Why: it prints with the findings"));
  change_ = new QPushButton(tr("Change limit"), changes_);
  off_ = new QPushButton(tr("Switch off"), changes_);
  back_ = new QPushButton(tr("Put it back"), changes_);
  for (QPushButton* button : {change_, off_, back_}) button->setAutoDefault(false);
  change_->setToolTip(tr("Checks against this limit instead of the book's; needs a reason"));
  off_->setToolTip(tr("This rule is no longer checked in this plan; needs a reason"));
  back_->setToolTip(tr("The book's own rule and limit again"));
  limit_label_ = new QLabel(tr("Limit"), changes_);
  limit_label_->setBuddy(limit_);
  auto* row = new QHBoxLayout;
  row->addWidget(limit_);
  row->addWidget(unit_);
  row->addStretch(1);
  grid->addWidget(limit_label_, 0, 0);
  grid->addLayout(row, 0, 1);
  grid->addWidget(new QLabel(tr("Reason"), changes_), 1, 0);
  grid->addWidget(reason_, 1, 1);
  auto* buttons = new QHBoxLayout;
  for (QPushButton* button : {change_, off_, back_}) buttons->addWidget(button);
  buttons->addStretch(1);
  grid->addLayout(buttons, 2, 1);
  problem_ = textLabel(changes_);
  problem_->setAccessibleName(tr("Why the change was not made"));
  grid->addWidget(problem_, 3, 1);
  for (QWidget* each : {static_cast<QWidget*>(title_), static_cast<QWidget*>(changed_), static_cast<QWidget*>(facts_),
                        static_cast<QWidget*>(options_), changes_})
    column->addWidget(each);
  column->addStretch(1);
  setWidget(inner);
  connect(reason_, &QLineEdit::textChanged, this, &RuleDetails::enable);
  connect(limit_, &QLineEdit::textChanged, this, &RuleDetails::enable);
  connect(change_, &QPushButton::clicked, this, [this] { perform(false); });
  connect(off_, &QPushButton::clicked, this, [this] { perform(true); });
  connect(back_, &QPushButton::clicked, this, &RuleDetails::putBack);
  for (QLineEdit* edit : {limit_, reason_})
    connect(edit, &QLineEdit::returnPressed, this, [this] {
      if (change_->isVisibleTo(changes_) && change_->isEnabled()) change_->click();
      else if (reason_->text().trimmed().isEmpty()) reason_->setFocus();
    });
  fill();
}

void RuleDetails::show(const std::string& book, const std::string& rule) {
  if (book == book_ && rule == rule_) return;
  book_ = book;
  rule_ = rule;
  fill();
  ensureVisible(0, 0);
}

void RuleDetails::fill() {
  problem_->clear();
  reason_->clear();
  const Rule* r = rule();
  if (r != nullptr) {
    const BookChoice choice = choiceOf(session_.plan());
    const Unit unit = session_.plan().unit;
    Quantity limit = r->limit;
    if (const int in = variantInForce(choice, *r); in >= 0)
      limit = r->variants[static_cast<std::size_t>(in)].limit.value_or(limit);
    const RuleChange* change = changeOf(choice, *r);
    if (change != nullptr) reason_->setText(QString::fromStdString(change->reason));
    if (change != nullptr && change->limit)
      limit = std::visit([](const auto& v) -> Quantity { return v; }, *change->limit);
    limit_->setText(limitFigure(limit, unit));
    limit_->setModified(false);
    limit_label_->setText(r->limit_high ? tr("Lower limit") : tr("Limit"));
    unit_->setText(limitUnit(*r, unit));
  }
  refresh();
}

void RuleDetails::refresh() {
  const Rule* r = rule();
  for (QWidget* each : {static_cast<QWidget*>(facts_), static_cast<QWidget*>(options_), changes_})
    each->setVisible(r != nullptr);
  if (r == nullptr) {
    title_->setText(tr("Choose a rule to see its source, why it matters and what it says of each option."));
    changed_->hide();
    return;
  }
  const Plan& plan = session_.plan();
  const Unit unit = plan.unit;
  const BookChoice choice = choiceOf(plan);
  const FindingText text = textOfRule(*r, unit);
  QString title = words(r->title);
  if (!title.isEmpty()) title[0] = title[0].toUpper();
  title_->setText(title);
  const int in = variantInForce(choice, *r);
  const bool yes_or_no = std::holds_alternative<bool>(r->limit);
  QString table = line(yes_or_no ? tr("Yes or no") : tr("Limit"), QString::fromStdString(limitWords(*r, unit)));
  for (const Variant& variant : r->variants) {
    const bool now = in >= 0 && &variant == &r->variants[static_cast<std::size_t>(in)];
    table += line(words(variant.setting) + ' ' + words(variant.value),
                  QString::fromStdString(variantWords(*r, variant, unit)) + (now ? tr("  (chosen)") : QString()));
  }
  table += line(tr("Level"), levelWords(r->level)) + line(tr("Source"), QString::fromStdString(text.source)) +
           line(tr("Read at"), words(r->source.read_at)) + line(tr("Checked"), QString::fromStdString(text.grade)) +
           line(tr("Why"), words(r->why)) + line(tr("Id"), words(r->book) + " / " + words(r->id));
  facts_->setText("<table>" + table + "</table>");
  const bool chosen = std::find(plan.books.begin(), plan.books.end(), book_) != plan.books.end();
  QString said;
  for (std::size_t i = 0; i < plan.options.size(); ++i) {
    const RuleOutcome* out = outcomes_.of(i, book_, rule_);
    QString words = out == nullptr ? tr("says nothing about it") : outcomeWord(out->outcome) + ". " + out->said;
    if (out != nullptr && out->findings > 1) words += tr(" (and %1 more)").arg(out->findings - 1);
    said += line(QString::fromStdString(plan.options[i].name), words);
  }
  const RuleChange* change = changeOf(choice, *r);
  const bool is_off = change != nullptr && change->off;
  options_->setText(!chosen  ? tr("This book is not checked in this plan.")
                    : is_off ? tr("Switched off: it says nothing about any option.")
                             : "<table>" + said + "</table>");
  changed_->setVisible(change != nullptr);
  if (change != nullptr)
    changed_->setText(
        is_off ? tr("Switched off by you: %1").arg(QString::fromStdString(change->reason))
               : tr("Limit changed by you: %1 instead of the book\u2019s %2. %3")
                     .arg(ownLimitWords(choice, *r, unit), bookLimitWords(choice, *r, unit),
                          QString::fromStdString(change->reason)));
  const bool figure = hasLimitToChange(*r);
  limit_->setVisible(figure);
  limit_label_->setVisible(figure);
  unit_->setVisible(figure);
  change_->setVisible(figure);
  enable();
}

void RuleDetails::enable() {
  const Rule* r = rule();
  const bool why = !reason_->text().trimmed().isEmpty();
  change_->setEnabled(why && !limit_->text().trimmed().isEmpty());
  off_->setEnabled(why);
  back_->setEnabled(r != nullptr && changeOf(choiceOf(session_.plan()), *r) != nullptr);
}

void RuleDetails::perform(bool off) {
  const Rule* r = rule();
  if (r == nullptr) return;
  problem_->clear();
  RuleChange change{book_, rule_, off, {}, reason_->text().trimmed().toStdString(), {}};
  if (!off) {
    const Result<Quantity> limit = readLimit(limit_->text(), *r, session_.plan().unit);
    if (!limit) {
      problem_->setText(QString::fromStdString(limit.error().message));
      limit_->setFocus();
      return;
    }
    std::visit(
        [&](const auto& v) {
          if constexpr (!std::is_same_v<std::decay_t<decltype(v)>, bool>) change.limit = v;
        },
        *limit);
  }
  const QString what = words(r->title);
  const QString label = off ? tr("Switch off rule: %1").arg(what) : tr("Change limit: %1").arg(what);
  if (!session_.perform(ChangeRule{change}, label)) problem_->setText(session_.lastError());
  else fill();
}

void RuleDetails::putBack() {
  const Rule* r = rule();
  if (r == nullptr) return;
  session_.perform(ChangeRule{{book_, rule_, false, {}, {}, {}}}, tr("Put rule back: %1").arg(words(r->title)));
  fill();
}

}  // namespace elbowroom::ui

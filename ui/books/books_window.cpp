#include "ui/books/books_window.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSplitter>
#include <QTimer>
#include <QTreeWidget>

#include "core/rules/added_book.h"
#include "core/rules/in_force.h"
#include "core/rules/text_rules.h"
#include "ui/books/book_shelf.h"
#include "ui/books/limit_entry.h"
#include "ui/books/rule_details.h"
#include "ui/look/look.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/side_window.h"

namespace elbowroom::ui {

using namespace literals;

namespace {

constexpr int kId = Qt::UserRole, kRule = Qt::UserRole + 1;

QString levelWord(Level level) {
  return level == Level::required  ? BooksWindow::tr("required")
         : level == Level::advised ? BooksWindow::tr("advised")
                                   : BooksWindow::tr("craft");
}

// Every word that is typed stands somewhere in the rule.
bool matches(const Rule& rule, const QStringList& typed) {
  if (typed.isEmpty()) return true;
  const Book* book = findBook(rule.book);
  const QString text = QStringList{words(rule.id), words(rule.title), words(rule.why), words(rule.source.document),
                                   words(rule.source.edition), words(rule.source.section),
                                   book != nullptr ? words(book->title) : QString()}
                           .join(' ');
  return std::all_of(typed.begin(), typed.end(),
                     [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

}  // namespace

BooksWindow::BooksWindow(Session& session, BookShelf& shelf, QWidget* parent)
    : QDialog(parent), session_(session), shelf_(shelf) {
  setObjectName("books-window");
  setWindowTitle(tr("Books"));
  resize(1120, 700);
  books_ = new QListWidget(this);
  books_->setAccessibleName(tr("Books checked against"));
  books_->setToolTip(tr("The marked books are checked; the chosen one is shown"));
  about_ = new QLabel(this);
  about_->setWordWrap(true);
  settings_ = new QWidget(this);
  form_ = new QFormLayout(settings_);
  form_->setContentsMargins(0, 0, 0, 0);
  form_->setRowWrapPolicy(QFormLayout::WrapAllRows);
  message_ = new QLabel(this);
  message_->setWordWrap(true);
  message_->setAccessibleName(tr("Notice"));
  message_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* add = new QPushButton(tr("Add a book…"), this);
  add->setToolTip(tr("Adds rules of your own from a JSON file"));
  remove_ = new QPushButton(tr("Remove"), this);
  remove_->setToolTip(tr("Takes the chosen book of your own away"));
  for (QPushButton* button : {add, remove_}) button->setAutoDefault(false);
  tolerance_ = new LengthEdit(tr("Site tolerance"), this);
  tolerance_->setRange(Length{}, 6_in);
  tolerance_->setToolTip(tr("What is met with less than this to spare is called close"));
  auto* left = new QWidget(this);
  auto* column = new QVBoxLayout(left);
  column->setContentsMargins(0, 0, 0, 0);
  auto* heading = new QLabel(tr("Books checked against"), left);
  heading->setFont(boldFont(*this));
  column->addWidget(heading);
  column->addWidget(books_, 1);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(add);
  buttons->addWidget(remove_);
  column->addLayout(buttons);
  column->addWidget(message_);
  column->addWidget(about_);
  column->addWidget(settings_);
  auto* tolerance_row = new QFormLayout;
  tolerance_row->addRow(tr("Site tolerance"), tolerance_);
  column->addLayout(tolerance_row);

  search_ = new QLineEdit(this);
  search_->setPlaceholderText(tr("Search all rules: name, why, source"));
  search_->setAccessibleName(tr("Search all rules"));
  search_->setClearButtonEnabled(true);
  found_ = new QLabel(this);
  rules_ = new QTreeWidget(this);
  rules_->setAccessibleName(tr("Rules"));
  rules_->setRootIsDecorated(false);
  rules_->setUniformRowHeights(true);
  rules_->setAllColumnsShowFocus(true);
  rules_->header()->setStretchLastSection(false);
  details_ = new RuleDetails(session_, outcomes_, this);
  auto* down = new QSplitter(Qt::Vertical, this);
  down->addWidget(rules_);
  down->addWidget(details_);
  down->setSizes({330, 330});
  down->setChildrenCollapsible(false);
  auto* right = new QWidget(this);
  auto* right_column = new QVBoxLayout(right);
  right_column->setContentsMargins(0, 0, 0, 0);
  auto* top = new QHBoxLayout;
  top->addWidget(search_, 1);
  top->addWidget(found_);
  right_column->addLayout(top);
  right_column->addWidget(down, 1);
  auto* row = new QHBoxLayout;
  left->setFixedWidth(300);
  row->addWidget(left);
  row->addWidget(right, 1);
  auto* close = new QDialogButtonBox(QDialogButtonBox::Close, this);
  close->button(QDialogButtonBox::Close)->setAutoDefault(false);
  connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* all = new QVBoxLayout(this);
  all->addLayout(row, 1);
  all->addWidget(close);

  timer_ = pauseBefore(*this, session_, [this] {
    if (outcomes_.refresh(session_.plan())) fillRules();
    details_->refresh();
  });
  connect(books_, &QListWidget::currentItemChanged, this, [this] {
    if (filling_) return;
    fillSettings();
    search_->clear();
    fillRules();
  });
  connect(books_, &QListWidget::itemChanged, this, &BooksWindow::choose);
  connect(add, &QPushButton::clicked, this, &BooksWindow::askForBook);
  connect(remove_, &QPushButton::clicked, this, &BooksWindow::removeChosen);
  connect(search_, &QLineEdit::textChanged, this, &BooksWindow::fillRules);
  connect(rules_, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
    if (filling_) return;
    details_->show(item ? item->data(0, kId).toString().toStdString() : "",
                   item ? item->data(0, kRule).toString().toStdString() : "");
  });
  connect(tolerance_, &LengthEdit::committed, this, [this](Length l) {
    session_.perform(SetTolerance{l}, tr("Change site tolerance"), tolerance_->stepped() ? "tolerance" : "");
  });
  connect(&session_, &Session::changed, this, [this] {
    if (isVisible()) refresh();
  });
  connect(&session_, &Session::optionChanged, this, [this] {
    if (isVisible()) refresh();
  });
  connect(&shelf_, &BookShelf::changed, this, [this] {
    outcomes_.forget();
    fillBooks();
    refresh();
  });
  undoByKeys(*this, session_);
  fillBooks();
}

void BooksWindow::showEvent(QShowEvent* event) {
  QDialog::showEvent(event);
  outcomes_.refresh(session_.plan());
  refresh();
}

std::string BooksWindow::chosenBook() const {
  const QListWidgetItem* item = books_->currentItem();
  return item ? item->data(kId).toString().toStdString() : std::string();
}

// The books there are, and those the plan names although nobody has them.
void BooksWindow::fillBooks() {
  filling_ = true;
  const std::string before = chosenBook();
  const auto& chosen = session_.plan().books;
  books_->clear();
  const auto put = [&](const QString& id, const QString& title, const QString& tip) {
    auto* item = new QListWidgetItem(title, books_);
    item->setData(kId, id);
    item->setToolTip(tip);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    const bool on = std::find(chosen.begin(), chosen.end(), id.toStdString()) != chosen.end();
    item->setCheckState(on ? Qt::Checked : Qt::Unchecked);
    if (id.toStdString() == before) books_->setCurrentItem(item);
  };
  for (const Book& book : allBooks())
    put(words(book.id), isAdded(book.id) ? tr("%1 (yours)").arg(words(book.title)) : words(book.title), words(book.note));
  for (const QString& id : BookShelf::missing(chosen))
    put(id, tr("%1 (not here)").arg(id), tr("The plan names this book, but nobody has added it: nothing is checked from it"));
  if (books_->currentRow() < 0) books_->setCurrentRow(0);
  filling_ = false;
  fillSettings();
}

void BooksWindow::fillSettings() {
  const std::string id = chosenBook();
  const Book* book = findBook(id);
  remove_->setEnabled(isAdded(id));
  while (form_->rowCount() > 0) form_->removeRow(0);
  if (book == nullptr) {
    about_->setText(tr("The plan names this book, but nobody has added it. Nothing is checked from it."));
    settings_->hide();
    return;
  }
  about_->setText(words(book->authority) + QStringLiteral(". ") + words(book->note));
  const BookChoice choice = choiceOf(session_.plan());
  for (const Setting& setting : book->settings) {
    auto* box = new QComboBox(settings_);
    box->setAccessibleName(words(setting.title));
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    const std::string_view now = settingOf(choice, *book, setting.key);
    for (const SettingValue& value : setting.values) {
      box->addItem(words(value.title), words(value.value));
      if (value.value == now) box->setCurrentIndex(box->count() - 1);
    }
    const std::string key(setting.key);
    const QString title = words(setting.title);
    connect(box, &QComboBox::activated, this, [this, box, id, key, title] {
      const bool is_default = box->currentIndex() == 0;
      const std::string value = is_default ? std::string() : box->currentData().toString().toStdString();
      // The box is made anew by the change; it must outlive its own signal.
      QTimer::singleShot(0, this, [this, id, key, value, title] {
        session_.perform(SetBookSetting{id, key, value}, tr("Choose %1").arg(title.toLower()));
      });
    });
    form_->addRow(words(setting.title), box);
  }
  settings_->setVisible(!book->settings.empty());
}

void BooksWindow::fillRules() {
  filling_ = true;
  const QStringList typed = search_->text().split(' ', Qt::SkipEmptyParts);
  const std::string shown = chosenBook();
  const QTreeWidgetItem* old = rules_->currentItem();
  const QString old_book = old ? old->data(0, kId).toString() : QString(), old_rule = old ? old->data(0, kRule).toString() : QString();
  const Plan& plan = session_.plan();
  const BookChoice choice = choiceOf(plan);
  QStringList heads{tr("Rule"), tr("Limit"), tr("Level")};
  for (const Option& option : plan.options) heads << QString::fromStdString(option.name);
  rules_->clear();
  rules_->setColumnCount(heads.size());
  rules_->setHeaderLabels(heads);
  QTreeWidgetItem* current = nullptr;
  for (const Rule& rule : allRules()) {
    if (typed.isEmpty() ? rule.book != shown : !matches(rule, typed)) continue;
    auto* item = new QTreeWidgetItem(rules_);
    const RuleChange* change = changeOf(choice, rule);
    QString limit = bookLimitWords(choice, rule, plan.unit);
    if (change != nullptr && change->off) limit = tr("switched off by you");
    else if (const QString own = ownLimitWords(choice, rule, plan.unit); !own.isEmpty())
      limit = tr("%1 (changed by you; the book: %2)").arg(own, limit);
    QString title = words(rule.id).replace('-', ' ');
    if (!title.isEmpty()) title[0] = title[0].toUpper();
    const Book* book = findBook(rule.book);
    if (!typed.isEmpty() && book != nullptr) title += QStringLiteral(" · ") + words(book->title);
    item->setText(0, title);
    item->setToolTip(0, words(rule.title) + QStringLiteral(". ") + words(rule.why));
    item->setText(1, limit);
    item->setToolTip(1, limit);
    item->setText(2, levelWord(rule.level));
    for (std::size_t i = 0; i < plan.options.size(); ++i) {
      const RuleOutcome* out = outcomes_.of(i, rule.book, rule.id);
      const int at = 3 + static_cast<int>(i);
      item->setText(at, out == nullptr ? QStringLiteral("–") : outcomeWord(out->outcome));
      item->setToolTip(at, out == nullptr ? tr("Says nothing about this option") : out->said);
      if (out != nullptr && out->outcome == Outcome::shortfall) item->setFont(at, boldFont(*rules_));
    }
    item->setData(0, kId, words(rule.book));
    item->setData(0, kRule, words(rule.id));
    if (words(rule.book) == old_book && words(rule.id) == old_rule) current = item;
  }
  const int count = rules_->topLevelItemCount();
  found_->setText(count == 1 ? tr("1 rule") : tr("%1 rules").arg(count));
  rules_->header()->setSectionResizeMode(0, QHeaderView::Stretch);
  for (int i = 1; i < heads.size(); ++i) rules_->header()->setSectionResizeMode(i, QHeaderView::Interactive);
  rules_->setColumnWidth(1, 200);
  rules_->setColumnWidth(2, 74);
  for (int i = 3; i < heads.size(); ++i) rules_->setColumnWidth(i, 84);
  if (current != nullptr) rules_->setCurrentItem(current);
  filling_ = false;
  if (current == nullptr) details_->show({}, {});
}

void BooksWindow::refresh() {
  if (session_.dragging()) return timer_->start();
  tolerance_->setLength(choiceOf(session_.plan()).site_tolerance, session_.plan().unit);
  fillBooks();
  fillRules();
  details_->refresh();
  timer_->start();
}

void BooksWindow::choose(QListWidgetItem* item) {
  if (filling_) return;
  const std::string id = item->data(kId).toString().toStdString();
  auto chosen = session_.plan().books;
  const bool was = std::erase(chosen, id) > 0;
  const bool wanted = item->checkState() == Qt::Checked;
  if (was == wanted) return;
  if (wanted) chosen.push_back(id);
  // The list is made anew by the change; the item must outlive its own signal.
  QTimer::singleShot(0, this, [this, chosen] { session_.perform(SetBooks{chosen}, tr("Choose books")); });
}

bool BooksWindow::addBook(const QString& path) {
  QString id;
  const QString why = shelf_.add(path, &id);
  message_->setText(why);
  if (!why.isEmpty()) return false;
  session_.recheck();
  auto chosen = session_.plan().books;
  if (std::find(chosen.begin(), chosen.end(), id.toStdString()) == chosen.end()) {
    chosen.push_back(id.toStdString());
    session_.perform(SetBooks{chosen}, tr("Choose books"));
  }
  for (int i = 0; i < books_->count(); ++i)
    if (books_->item(i)->data(kId).toString() == id) books_->setCurrentRow(i);
  message_->setText(tr("Added and checked from now on."));
  return true;
}

void BooksWindow::askForBook() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Add a book"), QString(), tr("Books (*.json)"));
  if (!path.isEmpty()) addBook(path);
}

void BooksWindow::removeChosen() {
  const std::string id = chosenBook();
  const QString why = shelf_.remove(QString::fromStdString(id));
  message_->setText(why);
  if (!why.isEmpty()) return;
  auto chosen = session_.plan().books;
  if (std::erase(chosen, id) > 0) session_.perform(SetBooks{chosen}, tr("Choose books"));
  session_.recheck();
  message_->setText(tr("Removed."));
}

}  // namespace elbowroom::ui

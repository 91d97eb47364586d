#include "ui/options/option_bar.h"

#include <QHBoxLayout>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QTabBar>
#include <QToolButton>
#include <QToolTip>
#include <algorithm>

#include "core/rules/tally.h"
#include "core/rules/wishes.h"
#include "ui/look/look.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {

OptionBar::OptionBar(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      tabs_(new QTabBar(this)),
      add_(new QToolButton(this)),
      editor_(new QLineEdit(this)) {
  setAccessibleName(tr("Options"));
  tabs_->setAccessibleName(tr("Options of this plan"));
  tabs_->setDocumentMode(true);
  tabs_->setDrawBase(false);
  tabs_->setExpanding(false);
  tabs_->setElideMode(Qt::ElideRight);
  tabs_->setUsesScrollButtons(true);
  tabs_->setFocusPolicy(Qt::StrongFocus);
  tabs_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
  tabs_->installEventFilter(this);
  add_->setText(QStringLiteral("+"));
  add_->setFont(boldFont(*this));
  add_->setAutoRaise(true);
  add_->setAccessibleName(tr("Duplicate this option"));
  add_->setToolTip(tr("Duplicate this option to try another layout"));
  editor_->hide();
  editor_->setAccessibleName(tr("Name of the option"));
  editor_->setMaxLength(60);
  editor_->installEventFilter(this);

  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(kTightGap, 2, kTightGap, 0);
  row->setSpacing(2);
  row->addWidget(tabs_);
  row->addWidget(add_);
  row->addStretch(1);

  connect(tabs_, &QTabBar::currentChanged, this, [this](int index) {
    if (refreshing_ || index < 0) return;
    endNaming();
    session_.setOption(static_cast<std::size_t>(index));
  });
  connect(tabs_, &QTabBar::tabBarDoubleClicked, this, [this](int index) {
    if (index >= 0) rename(index);
  });
  connect(add_, &QToolButton::clicked, this, &OptionBar::duplicate);
  connect(&session_, &Session::optionChanged, this, &OptionBar::refresh);
  refresh();
}

void OptionBar::refresh() {
  refreshing_ = true;
  const auto& options = session_.plan().options;
  const int count = static_cast<int>(options.size());
  while (tabs_->count() > count) tabs_->removeTab(tabs_->count() - 1);
  while (tabs_->count() < count) tabs_->addTab(QString());
  for (int i = 0; i < count; ++i) {
    // An ampersand in a name is a letter, not a shortcut.
    const QString name = QString::fromStdString(options[static_cast<std::size_t>(i)].name);
    tabs_->setTabText(i, QString(name).replace(u'&', QStringLiteral("&&")));
    tabs_->setAccessibleTabName(i, name);
    QWidget* cross = tabs_->tabButton(i, QTabBar::RightSide);
    if (!cross) tabs_->setTabButton(i, QTabBar::RightSide, cross = newCross());
    cross->setAccessibleName(tr("Remove %1").arg(name));
    cross->setVisible(count > 1);
  }
  tabs_->setCurrentIndex(static_cast<int>(session_.optionIndex()));
  refreshing_ = false;
  if (naming_ >= count) endNaming();
}

QWidget* OptionBar::newCross() {
  auto* cross = new QToolButton(tabs_);
  cross->setText(QStringLiteral("×"));
  cross->setAutoRaise(true);
  cross->setFocusPolicy(Qt::NoFocus);
  cross->setFixedSize(18, 18);
  cross->setToolTip(tr("Remove this option (undo brings it back)"));
  connect(cross, &QToolButton::clicked, this, [this, cross] {
    for (int i = 0; i < tabs_->count(); ++i)
      if (tabs_->tabButton(i, QTabBar::RightSide) == cross) return remove(i);
  });
  return cross;
}

QString OptionBar::figures(int index) const {
  if (index < 0 || index >= static_cast<int>(session_.plan().options.size())) return {};
  const auto at = static_cast<std::size_t>(index);
  const bool shown = at == session_.optionIndex();
  const Layout layout = shown ? session_.layout() : deriveLayout(session_.plan(), at);
  if (layout.room.empty()) return tr("No room drawn yet");
  const Report report = shown ? session_.report() : check(layout, choiceOf(session_.plan()));
  const WishCounts wishes = countsOf(wishStates(layout, report.figures));
  return tr("%1 short\nLargest turning circle %2\nWish list: %3 in the plan, %4 wanted, %5 out, %6 undecided")
      .arg(tallyOf(report).allShort())
      .arg(roundedDown(report.figures.turning.largest.radius * 2, session_.plan().unit))
      .arg(wishes.in_plan)
      .arg(wishes.wanted)
      .arg(wishes.left_out)
      .arg(wishes.undecided);
}

void OptionBar::duplicate() {
  commitName();  // "+" does not take the focus, so a name being typed is still open
  endNaming();
  const auto& options = session_.plan().options;
  const auto taken = [&](const QString& name) {
    return std::any_of(options.begin(), options.end(),
                       [&](const Option& o) { return o.name == name.toStdString(); });
  };
  // The second option is "Option 2": the first is the room as found.
  int number = static_cast<int>(options.size()) + 1;
  while (taken(tr("Option %1").arg(number))) ++number;
  const QString name = tr("Option %1").arg(number);
  const auto from = static_cast<int>(session_.optionIndex());
  if (!session_.perform(AddOption{name.toStdString(), from}, tr("Duplicate option"))) return;
  refresh();
  rename(static_cast<int>(session_.optionIndex()));
}

void OptionBar::rename(int index) {
  if (index < 0 || index >= tabs_->count()) return;
  if (index != tabs_->currentIndex()) tabs_->setCurrentIndex(index);
  naming_ = index;
  editor_->setText(QString::fromStdString(session_.plan().options[static_cast<std::size_t>(index)].name));
  editor_->setAccessibleDescription({});
  placeEditor();
  editor_->show();
  editor_->raise();
  editor_->selectAll();
  editor_->setFocus(Qt::OtherFocusReason);
}

void OptionBar::placeEditor() {
  if (naming_ < 0) return;
  layout()->activate();  // the tabs may have grown a moment ago
  QRect box = tabs_->tabRect(naming_).adjusted(2, 2, -2, -1).translated(tabs_->pos());
  box.setWidth(std::max(box.width(), 110));
  if (box.right() >= width()) box.moveRight(width() - 1);
  editor_->setGeometry(box);
}

void OptionBar::endNaming() {
  naming_ = -1;
  editor_->hide();
}

void OptionBar::commitName() {
  if (naming_ < 0) return;
  const std::string name = editor_->text().trimmed().toStdString();
  const std::string before = session_.plan().options[session_.optionIndex()].name;
  if (!name.empty() && name != before && !session_.perform(RenameOption{name}, tr("Rename option"))) {
    editor_->setAccessibleDescription(session_.lastError());
    QToolTip::showText(editor_->mapToGlobal(QPoint(0, editor_->height())), session_.lastError(), editor_);
    editor_->selectAll();
    return;
  }
  endNaming();
}

void OptionBar::remove(int index) {
  if (tabs_->count() < 2 || index < 0 || index >= tabs_->count()) return;
  endNaming();
  const auto gone = static_cast<std::size_t>(index);
  const QString name = QString::fromStdString(session_.plan().options[gone].name);
  if (!session_.performOn(gone, RemoveOption{}, tr("Remove option"))) return;
  refresh();
  emit said(tr("Removed the option %1 · %2 brings it back")
                .arg(name, QKeySequence(QKeySequence::Undo).toString(QKeySequence::NativeText)));
}

void OptionBar::move(int index, int to) {
  if (index < 1 || to < 1 || index >= tabs_->count() || to >= tabs_->count() || index == to) return;
  commitName();
  endNaming();
  session_.performOn(static_cast<std::size_t>(index), MoveOption{static_cast<std::size_t>(to)}, tr("Move option"));
}

void OptionBar::openMenu(int index, const QPoint& at) {
  if (index < 0 || index >= tabs_->count()) return;
  commitName();
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  const auto add = [&](const QString& text, const QString& key, bool can, auto run) {
    QAction* action = menu->addAction(key.isEmpty() ? text : text + u'\t' + key);
    action->setEnabled(can);
    connect(action, &QAction::triggered, this, run);
    return action;
  };
  const int count = tabs_->count();
  add(tr("&Rename"), tr("F2"), true, [this, index] { rename(index); });
  add(tr("&Duplicate"), {}, true, [this, index] {
    tabs_->setCurrentIndex(index);
    duplicate();
  });
  menu->addSeparator();
  const QString first = index == 0 ? tr("The first option is the room as found; it stays first") : QString();
  add(tr("Move &left"), tr("Alt+Left"), index > 1, [this, index] { move(index, index - 1); })->setToolTip(first);
  add(tr("Move ri&ght"), tr("Alt+Right"), index > 0 && index + 1 < count, [this, index] { move(index, index + 1); })
      ->setToolTip(first);
  menu->setToolTipsVisible(!first.isEmpty());
  menu->addSeparator();
  add(tr("R&emove"), tr("Del"), count > 1, [this, index] { remove(index); });
  menu->popup(at);
}

bool OptionBar::eventFilter(QObject* watched, QEvent* event) {
  if (watched == tabs_ && event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const int index = tabs_->tabAt(help->pos());
    if (index >= 0) QToolTip::showText(help->globalPos(), figures(index), tabs_, tabs_->tabRect(index));
    return index >= 0;
  }
  if (watched == tabs_ && event->type() == QEvent::KeyPress) {
    const auto* pressed = static_cast<QKeyEvent*>(event);
    const int key = pressed->key(), shown = tabs_->currentIndex();
    if (pressed->modifiers() == Qt::AltModifier && key == Qt::Key_Left) return move(shown, shown - 1), true;
    if (pressed->modifiers() == Qt::AltModifier && key == Qt::Key_Right) return move(shown, shown + 1), true;
    if (key == Qt::Key_F2) return rename(tabs_->currentIndex()), true;
    if (key == Qt::Key_Delete) return remove(tabs_->currentIndex()), true;
  }
  if (watched == tabs_ && event->type() == QEvent::ContextMenu) {
    const auto* asked = static_cast<QContextMenuEvent*>(event);
    const bool keys = asked->reason() == QContextMenuEvent::Keyboard;
    const int index = keys ? tabs_->currentIndex() : tabs_->tabAt(asked->pos());
    openMenu(index, keys ? tabs_->mapToGlobal(tabs_->tabRect(index).bottomLeft()) : asked->globalPos());
    return true;
  }
  if (watched == tabs_ && event->type() == QEvent::Resize && naming_ >= 0)
    QMetaObject::invokeMethod(this, &OptionBar::placeEditor, Qt::QueuedConnection);
  if (watched == editor_ &&
      (event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride)) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool ours = key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape;
    if (event->type() == QEvent::ShortcutOverride) {
      if (ours) event->accept();
    } else if (ours) {
      if (key == Qt::Key_Escape)
        endNaming();
      else
        commitName();
      if (naming_ < 0) tabs_->setFocus(Qt::OtherFocusReason);
      return true;
    }
  }
  if (watched == editor_ && event->type() == QEvent::FocusOut &&
      static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason) {
    commitName();
    endNaming();
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace elbowroom::ui

#include "ui/window/main_window.h"

#include <QBoxLayout>
#include <QCloseEvent>
#include <QFileInfo>
#include <QLabel>
#include <QMimeData>
#include <QSettings>
#include <QSplitter>
#include <QTabWidget>
#include <QTimer>

#include "ui/advice/advice_panel.h"
#include "ui/advice/wish_panel.h"
#include "ui/books/book_shelf.h"
#include "ui/books/books_window.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/compare/compare_window.h"
#include "ui/options/option_bar.h"
#include "ui/particulars/particulars.h"
#include "ui/people/people_dialog.h"
#include "ui/sheets/sheets_dialog.h"
#include "ui/tray/tray.h"
#include "ui/walls/wall_strip.h"
#include "ui/widgets/field_manners.h"
#include "ui/widgets/side_window.h"
#include "ui/window/actions.h"
#include "ui/window/file_flow.h"
#include "ui/window/hint_line.h"
#include "ui/window/stand_in_bar.h"
#include "ui/window/start_panel.h"

namespace elbowroom::ui {
namespace {
constexpr int kReadQuickly = 8000, kReadSlowly = 15000;  // ms
constexpr int kNoticeTop = 10;
}  // namespace

MainWindow::MainWindow(Plan plan) : session_(std::move(plan)) {
  setObjectName("main-window");
  setAcceptDrops(true);
  teachFields();
  build();
  shelf_ = new BookShelf(this);
  files_ = new FileFlow(session_, this);
  actions_ = new Actions(*this, session_, *canvas_, *files_);
  connectAll();
  loadBooks();
  retitle();
  restore();
  hint_->say(canvas_->selectTool().hint());
}

MainWindow::~MainWindow() = default;

void MainWindow::build() {
  canvas_ = new PlanCanvas(session_);
  canvas_->setObjectName("plan");
  options_ = new OptionBar(session_);
  stand_in_bar_ = new StandInBar(*canvas_, nullptr);
  strip_ = new WallStrip(session_);
  tray_ = new Tray(session_);
  particulars_ = new Particulars(session_);
  right_ = new QTabWidget;
  right_->setDocumentMode(true);
  right_->setAccessibleName(tr("Advice and Wish list"));
  right_->addTab(new AdvicePanel(session_), tr("Advice"));
  wishes_ = new WishPanel(session_);
  right_->addTab(wishes_, {});
  countWishes(wishes_->undecided());
  hint_ = new HintLine;

  middle_ = new QSplitter(Qt::Vertical);
  middle_->addWidget(canvas_);
  middle_->addWidget(strip_);
  middle_->setStretchFactor(0, 5);
  middle_->setStretchFactor(1, 1);
  middle_->setCollapsible(0, false);
  auto* centre = new QWidget;
  auto* column = new QVBoxLayout(centre);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(options_);
  column->addWidget(stand_in_bar_);
  column->addWidget(middle_, 1);
  column->addWidget(hint_);

  left_ = new QSplitter(Qt::Vertical);
  left_->addWidget(tray_);
  left_->addWidget(particulars_);
  left_->setStretchFactor(0, 1);
  left_->setStretchFactor(1, 1);
  left_->setSizes({330, 400});
  middle_->setSizes({430, 150});
  across_ = new QSplitter(Qt::Horizontal);
  across_->addWidget(left_);
  across_->addWidget(centre);
  across_->addWidget(right_);
  across_->setStretchFactor(1, 1);
  across_->setCollapsible(1, false);
  across_->setSizes({270, 680, 330});
  setCentralWidget(across_);

  start_ = new StartPanel(session_, canvas_);
  notice_ = new QLabel(canvas_);
  notice_->setWordWrap(true);
  notice_->setFrameShape(QFrame::StyledPanel);
  notice_->setAutoFillBackground(true);
  notice_->setBackgroundRole(QPalette::ToolTipBase);
  notice_->setForegroundRole(QPalette::ToolTipText);
  notice_->setContentsMargins(10, 6, 10, 6);
  notice_->setAccessibleName(tr("Notice"));
  notice_->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
  notice_->hide();
  notice_timer_ = new QTimer(this);
  notice_timer_->setSingleShot(true);
  canvas_->installEventFilter(this);
}

void MainWindow::connectAll() {
  auto* tray = static_cast<Tray*>(tray_);
  auto* strip = static_cast<WallStrip*>(strip_);
  // What belongs on a wall follows the pointer over the plan and over the strip; whichever is clicked takes it.
  connect(tray, &Tray::picked, this, [this, strip](const QString& payload) {
    canvas_->startPlacing(payload);
    strip->startPlacing(payload);
    if (!strip->choosing() && strip->isVisible()) strip->setFocus();
  });
  connect(canvas_, &PlanCanvas::toolChanged, this, [this, strip] {
    if (canvas_->choosing()) strip->stopPlacing();
  });
  actions_->setUndoFirst([strip] { return strip->undoOwnStep(); });
  connect(strip, &WallStrip::placingEnded, canvas_, &PlanCanvas::stopPlacing);
  connect(canvas_, &PlanCanvas::said, hint_, &HintLine::say);
  connect(static_cast<OptionBar*>(options_), &OptionBar::said, hint_, &HintLine::say);
  connect(strip, &WallStrip::said, hint_, &HintLine::say);
  connect(strip, &WallStrip::peopleWanted, this, &MainWindow::openPeople);
  connect(&session_, &Session::refused, this, [this](const QString& why) { notice(why); });
  connect(files_, &FileFlow::problem, this, [this](const QString& why) { notice(why, true); });
  connect(files_, &FileFlow::done, this, [this](const QString& what) {
    hint_->say(what);
    notice(what);
  });
  connect(files_, &FileFlow::pathChanged, this, [this] {
    notice_->hide();
    retitle();
    actions_->refresh();
    canvas_->zoomToFit();
    warnOfMissingBooks();
  });
  connect(&session_, &Session::changed, this, [this] {
    // What it said was about the plan as it was.
    if (!noticeAsks()) dismissNotice();
    retitle();
    placeOverlays();
  });
  connect(&session_, &Session::savedChanged, this, &MainWindow::retitle);
  connect(&session_, &Session::optionChanged, this, &MainWindow::placeOverlays);
  connect(&session_, &Session::showFinding, this, [this](int index) {
    if (index < 0 || index >= static_cast<int>(session_.report().findings.size())) return;
    const Finding finding = session_.report().findings[static_cast<std::size_t>(index)];
    if (!finding.places.empty()) canvas_->zoomToPlace(finding.places.front());
    if (!finding.subjects.empty()) session_.select({finding.subjects.front()});
    session_.lightFinding(index);
  });
  connect(wishes_, &WishPanel::undecidedChanged, this, &MainWindow::countWishes);
  connect(wishes_, &WishPanel::showWanted, this, [this](const std::vector<ElementId>& elements, const Place& place) {
    canvas_->zoomToPlace(place);
    session_.select({elements.begin(), elements.end()});
  });
  connect(canvas_, &PlanCanvas::toolChanged, this, &MainWindow::placeOverlays);
  connect(start_, &StartPanel::drawWanted, canvas_, &PlanCanvas::startRoom);
  connect(start_, &StartPanel::exampleWanted, this, [this] { files_->openExample(":/samples/hall-bath.elbowroom"); });
  connect(notice_timer_, &QTimer::timeout, this, &MainWindow::dismissNotice);
  connect(notice_, &QLabel::linkActivated, this, [this](const QString& link) {
    dismissNotice();
    if (link == "books") openBooks();
    if (link == "restore") files_->restoreRecovery();
    if (link == "drop") files_->dropRecovery();
  });
  connect(actions_->wallStrip(), &QAction::toggled, strip_, &QWidget::setVisible);
}

void MainWindow::countWishes(int undecided) {
  const int at = right_->indexOf(wishes_);
  right_->setTabText(at, undecided > 0 ? tr("Wish list (%1)").arg(undecided) : tr("Wish list"));
  right_->setTabToolTip(at, undecided > 0 ? tr("Worth considering: %1 undecided").arg(undecided)
                                          : tr("Worth considering: every point is decided"));
}

void MainWindow::ask(const QString& html) { tell(html, true, true); }

void MainWindow::notice(const QString& text, bool lasting) { tell(text, lasting, false); }

void MainWindow::tell(const QString& text, bool lasting, bool asks) {
  if (text.isEmpty()) return;
  // Only what asks has marks in it; what a file says of itself is text, whatever it looks like.
  notice_->setTextFormat(asks ? Qt::RichText : Qt::PlainText);
  notice_->setText(text);
  notice_->show();
  notice_->raise();
  placeOverlays();
  // What asks for an answer waits for it; what only tells goes by itself.
  if (noticeAsks()) notice_timer_->stop();
  else notice_timer_->start(lasting ? kReadSlowly : kReadQuickly);
}

bool MainWindow::noticeAsks() const { return notice_->textFormat() == Qt::RichText; }

void MainWindow::dismissNotice() {
  if (notice_->isHidden()) return;
  notice_->hide();
  notice_timer_->stop();
  placeOverlays();
}

void MainWindow::placeOverlays() {
  start_->setVisible(session_.layout().room.empty() && canvas_->choosing());
  if (!notice_->isHidden()) {
    const int width = std::min(520, canvas_->width() - 40);
    const int wanted = std::min(width, notice_->fontMetrics().horizontalAdvance(notice_->text()) + 30);
    notice_->setFixedWidth(std::max(wanted, 160));
    notice_->adjustSize();
    notice_->move((canvas_->width() - notice_->width()) / 2, kNoticeTop);
  }
  if (!start_->isHidden()) {
    start_->adjustSize();
    int top = (canvas_->height() - start_->height()) / 2;
    if (!notice_->isHidden()) top = std::max(top, notice_->geometry().bottom() + kNoticeTop);
    start_->move((canvas_->width() - start_->width()) / 2, top);
  }
}

bool MainWindow::eventFilter(QObject* object, QEvent* event) {
  if (object == canvas_ && event->type() == QEvent::Resize) placeOverlays();
  if (object == canvas_ && event->type() == QEvent::MouseButtonPress && !noticeAsks())
    dismissNotice();
  if (object == canvas_ && event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape)
    dismissNotice();
  return QMainWindow::eventFilter(object, event);
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) dismissNotice();
  QMainWindow::keyPressEvent(event);
}

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  placeOverlays();
}

void MainWindow::showEvent(QShowEvent* event) {
  QMainWindow::showEvent(event);
  QTimer::singleShot(0, this, [this] {
    canvas_->zoomToFit();
    placeOverlays();
  });
}

void MainWindow::retitle() {
  setWindowTitle(tr("%1[*] – Elbowroom").arg(files_->displayName()));
  setWindowModified(session_.dirty());
}

void MainWindow::openSheets() {
  if (!sheets_) {
    sheets_ = new SheetsDialog(session_, this);
    connect(sheets_, &SheetsDialog::written, this, [this](const QString& path) {
      notice(tr("Written: %1").arg(QFileInfo(path).fileName()));
    });
  }
  sheets_->show();
  sheets_->raise();
  sheets_->activateWindow();
}

void MainWindow::openComparison() {
  if (!comparison_) comparison_ = new CompareWindow(session_, this);
  bringForward(*comparison_);
}

void MainWindow::openBooks() {
  if (!books_) books_ = new BooksWindow(session_, *shelf_, this);
  bringForward(*books_);
}

void MainWindow::openPeople() {
  auto* dialog = new PeopleDialog(session_, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->open();
  dialog->activateWindow();
}

void MainWindow::loadBooks() {
  const QStringList refused = shelf_->load();
  session_.recheck();
  if (!refused.isEmpty())
    notice(tr("A book of yours cannot be used: %1").arg(refused.join(' ')), true);
}

void MainWindow::warnOfMissingBooks() {
  const QStringList missing = BookShelf::missing(session_.plan().books);
  if (missing.isEmpty()) return;
  ask(tr("This plan is to be checked against a book that is not here: %1. Nothing is checked from it. "
         "<a href=\"books\">Add it</a>")
          .arg(missing.join(", ").toHtmlEscaped()));
}

void MainWindow::offerRecovery() {
  if (!QFileInfo::exists(files_->recoveryFile())) return;
  ask(tr("The last session ended before its changes were saved. <a href=\"restore\">Bring them back</a> or "
         "<a href=\"drop\">leave them</a>."));
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!files_->mayLeave()) {
    event->ignore();
    return;
  }
  QSettings settings;
  settings.setValue("window", saveGeometry());
  settings.setValue("across", across_->saveState());
  settings.setValue("left", left_->saveState());
  settings.setValue("middle", middle_->saveState());
  settings.setValue("strip", strip_->isVisible());
  files_->dropRecovery();
  event->accept();
}

void MainWindow::restore() {
  const QSettings settings;
  if (!restoreGeometry(settings.value("window").toByteArray())) resize(1280, 800);
  across_->restoreState(settings.value("across").toByteArray());
  left_->restoreState(settings.value("left").toByteArray());
  middle_->restoreState(settings.value("middle").toByteArray());
  const bool strip = settings.value("strip", true).toBool();
  actions_->wallStrip()->setChecked(strip);
  strip_->setVisible(strip);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QList<QUrl> urls = event->mimeData()->urls();
  if (urls.isEmpty() || !urls.front().isLocalFile()) return;
  files_->openAsking(urls.front().toLocalFile());
}

}  // namespace elbowroom::ui

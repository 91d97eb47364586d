#include "ui/sheets/sheets_dialog.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QSettings>

#include "ui/render/paint.h"
#include "ui/sheets/sheet_view.h"

namespace elbowroom::ui {

SheetsDialog::SheetsDialog(Session& session, QWidget* parent) : QDialog(parent), session_(session) {
  setWindowTitle(tr("Sheets"));
  resize(1040, 700);
  paper_ = new QComboBox(this);
  for (const auto& [label, paper] : {std::pair{tr("Letter, 11 x 8 1/2 in"), Paper::letter},
                                     {tr("Tabloid, 17 x 11 in"), Paper::tabloid},
                                     {tr("A4, 297 x 210 mm"), Paper::a4},
                                     {tr("A3, 420 x 297 mm"), Paper::a3}})
    paper_->addItem(label, static_cast<int>(paper));
  const QString kept = QSettings().value("paper").toString();
  const bool inches = session_.plan().unit == Unit::inches;
  paper_->setCurrentIndex(kept.isEmpty() ? (inches ? 0 : 2) : std::max(0, paper_->findText(kept)));
  paper_->setAccessibleName(tr("Paper"));
  scale_ = new QLabel(this);
  scale_->setWordWrap(true);
  message_ = new QLabel(this);
  message_->setWordWrap(true);
  message_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* pdf = new QPushButton(tr("Write PDF…"), this);
  auto* svg = new QPushButton(tr("Write SVG…"), this);
  auto* printer = new QPushButton(tr("Print…"), this);
  auto* close = new QPushButton(tr("Close"), this);
  pdf->setDefault(true);
  view_ = new SheetView;
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setWidget(view_);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* side = new QVBoxLayout;
  side->addWidget(new QLabel(tr("Paper"), this));
  side->addWidget(paper_);
  side->addSpacing(8);
  side->addWidget(scale_);
  side->addSpacing(8);
  side->addWidget(new QLabel(tr("Pages"), this));
  SheetChoice* pages = &info_.choice;
  addChoice(side, pages, &SheetChoice::plan, "plan", tr("Plan"), tr("The dimensioned plan"));
  addChoice(side, pages, &SheetChoice::elevations, "elevations", tr("Wall elevations"),
            tr("Every wall seen from inside, with heights, distances and a list of what is on it"));
  addChoice(side, pages, &SheetChoice::mirrors, "mirrors", tr("Mirror orders"),
            tr("A cut sheet for each mirror: edges and holes"));
  addChoice(side, pages, &SheetChoice::works, "works", tr("Backing, wiring, order"),
            tr("Backing in the walls, zones of wiring and the order of works"));
  addChoice(side, pages, &SheetChoice::schedules, "schedules", tr("Schedules"),
            tr("Doors, windows and fixtures as tables"));
  addChoice(side, pages, &SheetChoice::findings, "findings", tr("Findings"),
            tr("The plan with its findings, and all of them with figure and source"));
  side->addSpacing(4);
  side->addWidget(new QLabel(tr("Elevations show"), this));
  StripLayers* layers = &info_.layers;
  addChoice(side, layers, &StripLayers::studs, "studs", tr("Studs"),
            tr("Studs and the clear bays between them"));
  addChoice(side, layers, &StripLayers::backing, "backing", tr("Backing"),
            tr("Where blocking or plywood is wanted, numbered as on its page"));
  addChoice(side, layers, &StripLayers::people, "people", tr("People"),
            tr("Eyes, elbows and reach of the people who use the room"));
  addChoice(side, layers, &StripLayers::electrical, "electrical", tr("Zones of wiring"),
            tr("Where receptacles, switches and lights may be or may not be"));
  side->addSpacing(8);
  for (QPushButton* button : {pdf, svg, printer}) side->addWidget(button);
  side->addSpacing(8);
  side->addWidget(message_);
  side->addStretch(1);
  side->addWidget(close);
  auto* row = new QHBoxLayout(this);
  row->addWidget(scroll, 1);
  auto* side_box = new QWidget(this);
  side_box->setFixedWidth(230);
  side->setContentsMargins(0, 0, 0, 0);
  side_box->setLayout(side);
  row->addWidget(side_box);
  connect(paper_, &QComboBox::currentIndexChanged, this, [this] {
    QSettings().setValue("paper", paper_->currentText());
    refresh();
  });
  connect(pdf, &QPushButton::clicked, this, [this] { ask(true); });
  connect(svg, &QPushButton::clicked, this, [this] { ask(false); });
  connect(printer, &QPushButton::clicked, this, &SheetsDialog::print);
  connect(close, &QPushButton::clicked, this, &QDialog::accept);
  connect(&session_, &Session::changed, this, [this] {
    message_->clear();
    stale_ = true;
    if (isVisible()) refresh();
  });
  refresh();
}

template <typename Choice>
void SheetsDialog::addChoice(QBoxLayout* column, Choice* choice, bool Choice::*which, const QString& key,
                             const QString& label, const QString& tip) {
  auto* box = new QCheckBox(label, this);
  box->setObjectName(key);
  box->setToolTip(tip);
  box->setAccessibleDescription(tip);
  const QString setting = QStringLiteral("sheets/") + key;
  choice->*which = QSettings().value(setting, choice->*which).toBool();
  box->setChecked(choice->*which);
  connect(box, &QCheckBox::toggled, this, [this, choice, which, setting](bool on) {
    choice->*which = on;
    QSettings().setValue(setting, on);
    refresh();
  });
  column->addWidget(box);
}

void SheetsDialog::showEvent(QShowEvent* event) {
  QDialog::showEvent(event);
  if (stale_) refresh();
}

void SheetsDialog::refresh() {
  stale_ = false;
  info_.paper = static_cast<Paper>(paper_->currentData().toInt());
  info_.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
  sheets_ = makeSheets(session_.layout(), session_.report(), info_);
  view_->setSheets(&sheets_);
  QString words = sheets_.size() == 1 ? tr("1 sheet") : tr("%1 sheets").arg(sheets_.size());
  if (!sheets_.empty() && sheets_.front().scale)
    words = tr("%1 at %2, %3")
                .arg(info_.choice.plan ? tr("Plan") : tr("First sheet"))
                .arg(QString::fromStdString(sheets_.front().scale->name), words);
  else if (!session_.layout().room.empty() && info_.choice.plan)
    words = tr("The room does not fit this paper at any usual scale. Choose a larger paper.");
  scale_->setText(words);
}

QString SheetsDialog::suggestedName(const QString& suffix) const {
  QString name =
      QString::fromStdString(session_.plan().title + " " + session_.option().name).simplified().toLower();
  name.remove(QRegularExpression("[^a-z0-9 -]"));
  return name.simplified().replace(' ', '-') + suffix;
}

QString SheetsDialog::writePdfTo(const QString& path) {
  if (stale_) refresh();
  const auto written = writePdf(sheets_, path.toStdString(), session_.plan().title);
  return written ? QString() : QString::fromStdString(written.error().message);
}

QString SheetsDialog::writeSvgTo(const QString& path) {
  if (stale_) refresh();
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly)) return tr("%1 cannot be written: %2").arg(path, file.errorString());
  const std::string text = toSvg(sheets_);
  if (file.write(text.data(), static_cast<qint64>(text.size())) != static_cast<qint64>(text.size()))
    return tr("%1 could not be written whole: %2").arg(path, file.errorString());
  return {};
}

void SheetsDialog::ask(bool pdf) {
  const QString suffix = pdf ? ".pdf" : ".svg";
  QString path =
      QFileDialog::getSaveFileName(this, pdf ? tr("Write PDF") : tr("Write SVG"), suggestedName(suffix),
                                   pdf ? tr("PDF (*.pdf)") : tr("SVG (*.svg)"));
  if (path.isEmpty()) return;
  if (!path.endsWith(suffix)) path += suffix;
  const QString why = pdf ? writePdfTo(path) : writeSvgTo(path);
  message_->setText(why.isEmpty() ? tr("Written: %1").arg(path) : why);
  if (why.isEmpty()) emit written(path);
}

void SheetsDialog::print() {
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageOrientation(QPageLayout::Landscape);
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  QPainter painter;
  if (!painter.begin(&printer)) {
    message_->setText(tr("The printer did not start."));
    return;
  }
  for (std::size_t i = 0; i < sheets_.size(); ++i) {
    if (i > 0) printer.newPage();
    // Printed at true size, measured from the page's corner, so that the named scale holds on paper.
    ViewMap map;
    map.px_per_inch = printer.resolution();
    const QRectF page = printer.pageLayout().paintRectPixels(printer.resolution());
    const QRectF full = printer.pageLayout().fullRectPixels(printer.resolution());
    map.origin = QPointF(full.left() - page.left(),
                         full.top() - page.top() + sheets_[i].paper.height.inches() * map.px_per_inch);
    PaintOptions options;
    options.px_per_mm = map.px_per_inch / 25.4;
    paint(painter, sheets_[i].content, map, options);
  }
}

}  // namespace elbowroom::ui

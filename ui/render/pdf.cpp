#include <QFile>
#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>

#include "ui/render/paint.h"

namespace elbowroom::ui {
namespace {

constexpr int kDotsPerInch = 1200;

QPageLayout layoutOf(const PaperSize& paper) {
  // Portrait size turned: QPageSize then recognises the standard sizes by name.
  const QPageSize size(QSizeF(paper.height.millimetres(), paper.width.millimetres()), QPageSize::Millimeter,
                       QString(), QPageSize::FuzzyMatch);
  QPageLayout layout(size, QPageLayout::Landscape, QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter);
  layout.setMode(QPageLayout::FullPageMode);
  return layout;
}

}  // namespace

Result<bool> writePdf(const std::vector<Sheet>& sheets, const std::string& path, const std::string& title) {
  const QString name = QString::fromStdString(path);
  if (sheets.empty()) return Error{"pdf/empty", path + ": there is no sheet to write.", ""};
  QSaveFile file(name);  // a failure leaves an older file whole
  if (!file.open(QIODevice::WriteOnly)) {
    return Error{"pdf/open", path + ": cannot be written: " + file.errorString().toStdString() + ".", ""};
  }
  {
    QPdfWriter writer(&file);
    writer.setTitle(QString::fromStdString(title));
    writer.setCreator(QStringLiteral("Elbowroom"));
    writer.setResolution(kDotsPerInch);
    writer.setPageLayout(layoutOf(sheets.front().paper));
    QPainter painter;
    if (!painter.begin(&writer)) return Error{"pdf/paint", path + ": the drawing could not be started.", ""};
    bool first = true;
    for (const Sheet& sheet : sheets) {
      if (!first) {
        writer.setPageLayout(layoutOf(sheet.paper));
        writer.newPage();
      }
      first = false;
      ViewMap map;
      map.px_per_inch = kDotsPerInch;
      map.origin = {0, sheet.paper.height.inches() * kDotsPerInch};
      PaintOptions options;
      options.px_per_mm = kDotsPerInch / 25.4;
      options.white_paper = true;
      paint(painter, sheet.content, map, options);
    }
    painter.end();
  }
  if (!file.commit()) {
    return Error{"pdf/write", path + ": cannot be written: " + file.errorString().toStdString() + ".", ""};
  }
  return true;
}

}  // namespace elbowroom::ui

#include "ui/widgets/figures.h"

#include <QRegularExpression>

#include "core/rules/text_quantity.h"

namespace elbowroom::ui {

QString words(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString unbroken(QString text) {
  static const QRegularExpression fraction(QStringLiteral("(\\d) (\\d+/\\d)"));
  static const QRegularExpression unit(QStringLiteral("(\\d) (mm|m²|m2|sq)\\b"));
  text.replace(fraction, QStringLiteral("\\1\u00a0\\2"));
  text.replace(unit, QStringLiteral("\\1\u00a0\\2"));
  return text.replace(QStringLiteral("sq ft"), QStringLiteral("sq\u00a0ft"));
}

QString lengthWords(Length length, Unit unit) { return QString::fromStdString(lengthText(length, unit)); }

QString areaWords(Area area, Unit unit) { return QString::fromStdString(areaText(area, unit)); }

QString roundedDown(Length measured, Unit unit) {
  return QString::fromStdString(elbowroom::words::flooredText(measured, unit));
}

}  // namespace elbowroom::ui

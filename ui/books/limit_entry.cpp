#include "ui/books/limit_entry.h"

#include <QCoreApplication>
#include <QLocale>

#include "core/rules/checks/named.h"
#include "core/rules/text.h"
#include "core/rules/text_rules.h"

namespace elbowroom::ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("LimitEntry", text); }

std::optional<double> numberIn(QString text, const QString& unit) {
  text = text.trimmed();
  if (!unit.isEmpty() && text.endsWith(unit)) text.chop(unit.size());
  bool fine = false;
  const double value = QLocale::c().toDouble(text.trimmed().replace(',', '.'), &fine);
  if (!fine || value < 0 || value > 1e6) return std::nullopt;
  return value;
}

}  // namespace

bool hasLimitToChange(const Rule& rule) { return !std::holds_alternative<bool>(rule.limit) && hasOwnLimit(rule); }

QString limitFigure(const Quantity& limit, Unit unit) {
  if (const auto* area = std::get_if<Area>(&limit))
    return QString::number(unit == Unit::inches ? area->squareInches() : area->squareMetres(), 'g', 6);
  if (const auto* angle = std::get_if<Angle>(&limit)) return QString::number(angle->degrees(), 'g', 6);
  return QString::fromStdString(quantityText(limit, unit));
}

QString limitUnit(const Rule& rule, Unit unit) {
  switch (checks::kindOf(rule.limit)) {
    case checks::Gives::area:
      return unit == Unit::inches ? QStringLiteral("sq in") : QStringLiteral("m\u00b2");
    case checks::Gives::angle:
      return QStringLiteral("\u00b0");
    case checks::Gives::amount:
      return QString::fromUtf8(rule.unit.data(), static_cast<qsizetype>(rule.unit.size()));
    default:
      return {};
  }
}

Result<Quantity> readLimit(const QString& text, const Rule& rule, Unit unit) {
  if (std::holds_alternative<Length>(rule.limit)) {
    const auto length = parseLength(text.toStdString(), unit);
    if (!length) return length.error();
    if (*length <= Length{}) return Error{"limit", tr("A limit is more than nothing.").toStdString(), ""};
    return Quantity(*length);
  }
  const QString suffix = limitUnit(rule, unit);
  const auto number = numberIn(text, suffix);
  if (!number) return Error{"limit", tr("This is no number.").toStdString(), ""};
  switch (checks::kindOf(rule.limit)) {
    case checks::Gives::area:
      return Quantity(unit == Unit::inches ? Area::fromSquareInches(*number)
                                           : Area::squareMicrometres(std::llround(*number * 1e12)));
    case checks::Gives::angle:
      return Quantity(Angle::fromDegrees(*number));
    case checks::Gives::count:
      if (*number != std::floor(*number)) return Error{"limit", tr("This must be a whole number.").toStdString(), ""};
      return Quantity(Count{static_cast<int>(*number)});
    case checks::Gives::amount:
      return Quantity(Amount{std::llround(*number * 1000)});
    default:
      return Error{"limit", tr("This rule has no figure to change.").toStdString(), ""};
  }
}

QString bookLimitWords(const BookChoice& choice, const Rule& rule, Unit unit) {
  const int in = variantInForce(choice, rule);
  return QString::fromStdString(in < 0 ? limitWords(rule, unit)
                                       : variantWords(rule, rule.variants[static_cast<std::size_t>(in)], unit));
}

QString ownLimitWords(const BookChoice& choice, const Rule& rule, Unit unit) {
  const RuleChange* change = changeOf(choice, rule);
  if (change == nullptr || change->off || !change->limit) return {};
  const Quantity own = std::visit([](const auto& v) -> Quantity { return v; }, *change->limit);
  return QString::fromStdString(limitWords(rule, own, unit));
}

}  // namespace elbowroom::ui

#include "ui/walls/strip_answers.h"

#include <algorithm>

#include "core/people/sight.h"
#include "core/plan/wall_catalogue.h"
#include "ui/look/look.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

using namespace literals;
using People = std::vector<const Person*>;

QString namesWords(const People& people) { return QString::fromStdString(namesOf(people)); }

QString stretch(const HeightBand& band, Unit unit) {
  if (band.low == band.high) return lengthWords(band.low, unit);
  return QObject::tr("%1 to %2").arg(lengthWords(band.low, unit), lengthWords(band.high, unit));
}

void answerBay(StripAnswer& answer, const Layout& layout, const PlacedWallItem& item) {
  const Unit unit = layout.settings.unit;
  const Wall& wall = layout.option.room.walls[static_cast<std::size_t>(item.wall)];
  const auto fit = bayFit(layout, item);
  if (!fit) {
    answer.words = QObject::tr("Where are the studs of this wall? State the first one and their spacing.");
    return;
  }
  answer.cut = fit->cut;
  if (fit->move) {
    const Length at = item.item.along + *fit->move;
    const auto bays = baysOf(layout, item.wall);
    for (const WallSpan& bay : *bays)
      if (at >= bay.from && at <= bay.to) answer.bay = bay;
  }
  const bool stated = yesNo(item.item.facts, "header").value_or(false);
  if (fit->fits) {
    answer.good = true;
    answer.words = QObject::tr("fits between the studs, %1 clear").arg(roundedDown(fit->bay, unit));
  } else if (fit->move) {
    const QString way = *fit->move > Length{} ? QObject::tr("right") : QObject::tr("left");
    answer.words =
        QObject::tr("must move %1 to the %2 to fit between studs; here a stud is cut and needs a header")
            .arg(lengthWords(abs(*fit->move), unit), way);
  } else {
    answer.words = QObject::tr("wider than any stud bay of this wall: needs a cut stud and a header");
  }
  if (!fit->fits && yesNo(wall.facts, "load_bearing").value_or(false))
    answer.words += QObject::tr(" in a wall that bears load");
  if (!fit->fits && stated) answer.words += QObject::tr(" (planned)");
  const Length deep = studDepth(wall);
  if (item.depth > deep) {
    answer.good = false;
    answer.words +=
        QObject::tr(" · %1 deep, the studs %2").arg(lengthWords(item.depth, unit), lengthWords(deep, unit));
  }
}

void answerMirror(StripAnswer& answer, const People& people, const WallItem& item, Unit unit) {
  answer.band = mirrorBottomsFor(people, item.height);
  if (!answer.band) {
    const auto edges = mirrorEdgesFor(people);
    answer.words = QObject::tr("no height of a mirror this high serves all of %1: it takes one from %2 to %3")
                       .arg(namesWords(people), lengthWords(edges->bottom_at_most, unit),
                            lengthWords(edges->top_at_least, unit));
    return;
  }
  answer.good = item.bottom >= answer.band->low && item.bottom <= answer.band->high;
  answer.words = (answer.good ? QObject::tr("shows all of %1; lower edge from %2")
                              : QObject::tr("shows all of %1 with its lower edge at %2"))
                     .arg(namesWords(people), stretch(*answer.band, unit));
}

void answerEyes(StripAnswer& answer, const People& people, const WallItem& item, Unit unit) {
  answer.band = eyesWithin(people, item.height);
  if (!answer.band) {
    QStringList eyes;
    for (const Person* p : people)
      eyes << QObject::tr("%1 %2").arg(QString::fromStdString(p->name), stretch(eyesOf(*p), unit));
    answer.words = QObject::tr("no height serves all: eyes of %1").arg(eyes.join(QStringLiteral(", ")));
    return;
  }
  const Length middle = item.bottom + item.height / 2;
  answer.good = middle >= answer.band->low && middle <= answer.band->high;
  answer.words = (answer.good ? QObject::tr("at the eyes of %1; middle from %2")
                              : QObject::tr("at the eyes of %1 with its middle at %2"))
                     .arg(namesWords(people), stretch(*answer.band, unit));
}

StripAnswer withPublished(StripAnswer answer, const Report& report, const ElementId& id, Unit unit) {
  answer.published = publishedBands(report, id);
  QStringList bands;
  for (const PublishedBand& band : answer.published) bands << QString::fromStdString(wordsOf(band, unit));
  if (bands.isEmpty()) return answer;
  if (!answer.words.isEmpty()) answer.words += QStringLiteral(" · ");
  answer.words += QObject::tr("published: %1").arg(bands.join(QStringLiteral("; ")));
  return answer;
}

}  // namespace

std::optional<StripAnswer> stripAnswer(const Layout& layout, const Report& report, const ElementId& id) {
  const auto placed = std::find_if(layout.on_walls.begin(), layout.on_walls.end(),
                                   [&](const PlacedWallItem& i) { return i.item.id == id; });
  const auto box = wallBoxOf(layout, id);
  if (placed == layout.on_walls.end() || placed->wall < 0 || !box) return std::nullopt;
  const WallItem& item = placed->item;
  const Unit unit = layout.settings.unit;
  StripAnswer answer;
  answer.box = *box;
  const WallKindInfo* info = findWallKind(item.kind);
  if (info && info->in_bay && placed->recessed) {
    answerBay(answer, layout, *placed);
    return withPublished(std::move(answer), report, id, unit);
  }
  People people;
  for (const Person& p : layout.settings.people) people.push_back(&p);
  if (const auto named =
          std::find_if(people.begin(), people.end(), [&](const Person* p) { return p->name == item.person; });
      named != people.end())
    people = {*named};
  const bool beside = is(item, WallUse::lamp) && item.height > item.width;
  if (!people.empty() && (item.kind == "makeup-mirror" || beside))
    answerEyes(answer, people, item, unit);
  else if (!people.empty() && is(item, WallUse::mirror))
    answerMirror(answer, people, item, unit);
  answer = withPublished(std::move(answer), report, id, unit);
  return answer.words.isEmpty() ? std::nullopt : std::optional(std::move(answer));
}

void paintAnswer(QPainter& painter, StripContext& context, const StripAnswer& answer) {
  const StripScene& scene = context.scene();
  const auto left = scene.leftOf(answer.box.wall);
  if (!left) return;
  const Look& l = look(isDark(QGuiApplication::palette()));
  const ViewMap& map = context.map();
  const auto rectangle = [&](Length from, Length to, Length low, Length high) {
    return QRectF(map.toPx({*left + from, high}), map.toPx({*left + to, low})).normalized();
  };
  QColor wash = l.accent;
  wash.setAlphaF(0.14F);
  const Length ceiling = scene.drawing().ceiling;
  if (answer.bay) {
    painter.fillRect(rectangle(answer.bay->from, answer.bay->to, Length{}, ceiling), wash);
    for (const Length edge : {answer.bay->from, answer.bay->to})
      context.draw(painter, {{LinePrim{{*left + edge, {}}, {*left + edge, ceiling}}, Role::guide, {}}});
  }
  for (const Stud& stud : answer.cut) {
    const Length from = *left + stud.at - studWidth() / 2, to = from + studWidth();
    const Outline body{{from, {}}, {to, {}}, {to, ceiling}, {from, ceiling}};
    context.draw(painter, {{HatchPrim{body, context.style().mm}, Role::hatchShort, {}},
                           {PolyPrim{body, true, false}, Role::hidden, {}}});
  }
  // Published heights are dashed at the left, those for the people washed over the whole.
  for (const PublishedBand& band : answer.published) {
    const Length from = *left + answer.box.left - map.fromPx(26), to = *left + answer.box.left - map.fromPx(4);
    for (const auto& edge : {band.low, band.high})
      if (edge) context.draw(painter, {{LinePrim{{from, *edge}, {to, *edge}}, Role::guide, {}}});
    if (band.low && band.high) {
      const Length middle = (from + to) / 2;
      context.draw(painter, {{LinePrim{{middle, *band.low}, {middle, *band.high}}, Role::hidden, {}}});
    }
  }
  if (answer.band) {
    const Length from = answer.box.left - context.map().fromPx(14),
                 to = answer.box.right + context.map().fromPx(14);
    // A single height is a line; it still has to be seen.
    const Length thin = std::max(Length{}, map.fromPx(3) - (answer.band->high - answer.band->low)) / 2;
    painter.fillRect(rectangle(from, to, answer.band->low - thin, answer.band->high + thin), wash);
    for (const Length edge : {answer.band->low, answer.band->high})
      context.draw(painter, {{LinePrim{{*left + from, edge}, {*left + to, edge}}, Role::guide, {}}});
  }
}

}  // namespace elbowroom::ui

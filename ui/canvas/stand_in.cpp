#include "ui/canvas/stand_in.h"

#include "core/base/length_text.h"
#include "core/rules/text.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {

Outline StandIn::outline() const {
  using namespace literals;
  if (kind == Kind::circle) return arcPoints(center, diameter / 2, {1, 0}, 360_deg, 72);
  if (kind == Kind::rectangle) return rectangleOutline(along, across, {center, turn});
  return {};
}

bool StandIn::grabs(Point p) const {
  if (kind == Kind::none) return false;
  // The rim, or a hub in the middle: the floor between must stay free to select what stands there.
  const Length hub = Length::fromInches(4), rim = Length::fromInches(1.5);
  if (distance(p, center) <= hub) return true;
  if (kind == Kind::circle) return abs(distance(p, center) - diameter / 2) <= rim;
  const Outline ring = outline();
  for (std::size_t i = 0; i < ring.size(); ++i)
    if (gapBetween(Segment{p, p}, Segment{ring[i], ring[(i + 1) % ring.size()]}).distance <= rim) return true;
  return false;
}

Fit StandIn::fit(const Layout& layout) const {
  if (kind == Kind::circle) return layout.floor_with_knees.circleFit({center, diameter / 2});
  return layout.floor_with_knees.rectangleFit(along, across, {center, turn});
}

QString StandIn::verdict(const Session& session, Unit unit) const {
  if (!shown()) return {};
  const QString name = kind == Kind::circle
                           ? QObject::tr("Turning circle %1").arg(lengthWords(diameter, unit))
                           : QObject::tr("Clear floor space %1 x %2")
                                 .arg(lengthWords(across, unit),
                                      lengthWords(along, unit));
  if (session.layout().room.empty()) return QObject::tr("%1: no room drawn yet").arg(name);
  const Fit result = fit(session.layout());
  if (result.fits) return QObject::tr("%1: fits here").arg(name);
  QString at = QObject::tr("a wall");
  if (result.obstacle >= 0) {
    const auto& layout = session.layout();
    const auto index = static_cast<std::size_t>(layout.solid[static_cast<std::size_t>(result.obstacle)]);
    at = QString::fromStdString(subjectName(layout.option, layout.fixtures[index].fixture.id));
  }
  return QObject::tr("%1: misses by %2 at %3")
      .arg(name, lengthWords(result.misses_by, unit), at.toLower());
}

bool StandIn::jump(const Layout& layout) {
  if (kind == Kind::circle) {
    const auto found = layout.floor_with_knees.nearestCircle(diameter, center);
    if (found) center = found->center;
    return found.has_value();
  }
  auto found = layout.floor_with_knees.nearestRectangle(along, across, {center, turn});
  if (!found) found = layout.floor_with_knees.nearestRectangleAnyTurn(along, across, {center, turn});
  if (found) {
    center = found->center;
    turn = found->turn.normalised();
  }
  return found.has_value();
}

}  // namespace elbowroom::ui

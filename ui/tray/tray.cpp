#include "ui/tray/tray.h"

#include <QDrag>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMimeData>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "core/plan/catalogue.h"
#include "core/plan/wall_catalogue.h"
#include "ui/look/look.h"
#include "ui/session/session.h"
#include "ui/tray/tray_tile.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

QString doorLabel(DoorAction action) {
  switch (action) {
    case DoorAction::hinged:
      return Tray::tr("Hinged door");
    case DoorAction::doubleLeaf:
      return Tray::tr("Double door");
    case DoorAction::pocket:
      return Tray::tr("Pocket door");
    case DoorAction::surfaceSliding:
      return Tray::tr("Surface sliding");
    case DoorAction::bifold:
      return Tray::tr("Bifold door");
    case DoorAction::cased:
      return Tray::tr("Cased opening");
  }
  return {};
}

constexpr std::array kActions{DoorAction::hinged,         DoorAction::doubleLeaf, DoorAction::pocket,
                              DoorAction::surfaceSliding, DoorAction::bifold,     DoorAction::cased};

}  // namespace

Tray::Tray(Session& session, QWidget* parent)
    : QScrollArea(parent),
      run_drag([](QDrag* drag) { drag->exec(Qt::CopyAction); }),
      session_(session),
      inside_(new QWidget) {
  setAccessibleName(tr("Tray"));
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  setMinimumWidth(120);
  auto* column = new QVBoxLayout(inside_);
  column->setContentsMargins(kGap, kGap, kGap, kGap);
  column->setSpacing(kTightGap);
  std::vector<std::pair<QString, QString>> fixtures, openings;
  for (const KindInfo& info : fixtureKinds())
    fixtures.emplace_back(QStringLiteral("fixture:") + words(info.key), words(info.label));
  for (DoorAction action : kActions)
    openings.emplace_back(QStringLiteral("door:") + words(keyOf(action)), doorLabel(action));
  openings.emplace_back(QStringLiteral("window"), tr("Window"));
  addSection(tr("Fixtures"), fixtures);
  column->addSpacing(kGap);
  addSection(tr("Doors and windows"), openings);
  std::vector<std::pair<QString, QString>> on_walls, on_ceiling;
  for (const WallKindInfo& info : wallKinds())
    on_walls.emplace_back(QStringLiteral("wall:") + words(info.key), words(info.label));
  for (const CeilingKindInfo& info : ceilingKinds())
    on_ceiling.emplace_back(QStringLiteral("ceiling:") + words(info.key), words(info.label));
  column->addSpacing(kGap);
  addSection(tr("On walls"), on_walls);
  column->addSpacing(kGap);
  addSection(tr("On the ceiling"), on_ceiling);
  column->addStretch(1);
  setWidget(inside_);
  // One stop for Tab; arrows move within.
  for (std::size_t i = 1; i < tiles_.size(); ++i) tiles_[i]->setFocusPolicy(Qt::ClickFocus);
  connect(&session_, &Session::changed, this, &Tray::describe);
  describe();
}

void Tray::addSection(const QString& title, std::vector<std::pair<QString, QString>> items) {
  Section section{new QLabel(title, inside_), new QGridLayout, {}};
  section.heading->setFont(boldFont(*this));
  section.grid->setSpacing(kTightGap);
  auto* column = static_cast<QVBoxLayout*>(inside_->layout());
  column->addWidget(section.heading);
  column->addLayout(section.grid);
  for (auto& [payload, label] : items) {
    auto* tile = new TrayTile(payload, label, inside_);
    tile->installEventFilter(this);
    connect(tile, &QAbstractButton::clicked, this, [this, tile] { emit picked(tile->payload()); });
    connect(tile, &TrayTile::dragWanted, this, [this, tile] {
      auto* data = new QMimeData;
      data->setData(kKindMime, tile->payload().toUtf8());
      auto* drag = new QDrag(tile);
      drag->setMimeData(data);
      drag->setPixmap(tile->picture());
      drag->setHotSpot(QPoint(tile->picture().width(), tile->picture().height()) /
                       (2 * tile->devicePixelRatioF()));
      run_drag(drag);
    });
    section.tiles.push_back(tile);
    tiles_.push_back(tile);
  }
  sections_.push_back(std::move(section));
}

TrayTile* Tray::tile(const QString& payload) const {
  for (TrayTile* each : tiles_)
    if (each->payload() == payload) return each;
  return nullptr;
}

void Tray::describe() {
  const Unit unit = session_.plan().unit;
  if (unit_described_ == static_cast<int>(unit)) return;
  unit_described_ = static_cast<int>(unit);
  const Option none;
  const auto say = [](TrayTile* tile, const QString& size) {
    tile->setToolTip(QStringLiteral("%1: %2").arg(tile->text(), size));
    tile->setAccessibleDescription(size);
  };
  for (const KindInfo& info : fixtureKinds()) {
    const Fixture f = typicalFixture(info.kind, none);
    QString size = tr("%1 wide, %2 deep").arg(lengthWords(f.width, unit), lengthWords(f.depth, unit));
    if (f.height) size += tr(", %1 high").arg(lengthWords(*f.height, unit));
    say(tile(QStringLiteral("fixture:") + words(info.key)), size);
  }
  for (DoorAction action : kActions) {
    const Opening o = typicalDoor(action, none);
    const QString text =
        action == DoorAction::cased ? tr("opening %1 wide, %2 high") : tr("leaf %1 wide, %2 high");
    say(tile(QStringLiteral("door:") + words(keyOf(action))),
        text.arg(lengthWords(o.width, unit), lengthWords(o.height, unit)));
  }
  for (const WallKindInfo& info : wallKinds())
    say(tile(QStringLiteral("wall:") + words(info.key)),
        tr("%1 wide, %2 high, lower edge at %3")
            .arg(lengthWords(info.width, unit), lengthWords(info.height, unit), lengthWords(info.bottom, unit)));
  for (const CeilingKindInfo& info : ceilingKinds())
    say(tile(QStringLiteral("ceiling:") + words(info.key)),
        tr("%1 by %2").arg(lengthWords(info.width, unit), lengthWords(info.depth, unit)));
  const Opening w = typicalWindow(none);
  say(tile("window"), tr("%1 wide, %2 high, sill at %3")
                          .arg(lengthWords(w.width, unit), lengthWords(w.height, unit),
                               lengthWords(w.sill.value_or(Length{}), unit)));
}

int Tray::columns() const {
  const int room = viewport()->width() - 2 * kGap + kTightGap;
  return std::clamp(room / (tiles_.front()->sizeHint().width() + kTightGap), 1, 4);
}

void Tray::arrange() {
  const int columns = this->columns();
  if (columns == arranged_columns_) return;
  arranged_columns_ = columns;
  for (Section& section : sections_) {
    for (TrayTile* tile : section.tiles) section.grid->removeWidget(tile);
    for (std::size_t i = 0; i < section.tiles.size(); ++i)
      section.grid->addWidget(section.tiles[i], static_cast<int>(i) / columns, static_cast<int>(i) % columns);
    for (int c = 0; c < 4; ++c) section.grid->setColumnStretch(c, c < columns ? 1 : 0);
  }
}

void Tray::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  arrange();
}

void Tray::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange)
    for (TrayTile* tile : tiles_) tile->forgetPicture();
  QScrollArea::changeEvent(event);
}

void Tray::focusTile(std::size_t index) {
  if (index >= tiles_.size()) return;
  for (TrayTile* tile : tiles_) tile->setFocusPolicy(Qt::ClickFocus);
  tiles_[index]->setFocusPolicy(Qt::StrongFocus);
  tiles_[index]->setFocus(Qt::OtherFocusReason);
  ensureWidgetVisible(tiles_[index], 4, 4);
}

bool Tray::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn) {
    for (TrayTile* tile : tiles_) tile->setFocusPolicy(tile == watched ? Qt::StrongFocus : Qt::ClickFocus);
    return false;
  }
  if (event->type() != QEvent::KeyPress) return QScrollArea::eventFilter(watched, event);
  const auto at = static_cast<std::size_t>(std::find(tiles_.begin(), tiles_.end(), watched) - tiles_.begin());
  if (at >= tiles_.size()) return false;
  // Down from the last row of a section goes to the next one, up from the first to the one before.
  const auto row_step = [&](int direction) {
    const auto columns = static_cast<std::size_t>(std::max(1, arranged_columns_));
    std::size_t start = 0, section = 0;
    while (at >= start + sections_[section].tiles.size()) start += sections_[section++].tiles.size();
    const std::size_t end = start + sections_[section].tiles.size();
    if (direction > 0) return at + columns < end ? at + columns : end < tiles_.size() ? end : at;
    return at >= start + columns ? at - columns : start > 0 ? start - 1 : at;
  };
  switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Right:
      focusTile(at + 1);
      return true;
    case Qt::Key_Left:
      if (at > 0) focusTile(at - 1);
      return true;
    case Qt::Key_Down:
      focusTile(row_step(1));
      return true;
    case Qt::Key_Up:
      focusTile(row_step(-1));
      return true;
    case Qt::Key_Home:
      focusTile(0);
      return true;
    case Qt::Key_End:
      focusTile(tiles_.size() - 1);
      return true;
    default:
      return false;
  }
}

}  // namespace elbowroom::ui

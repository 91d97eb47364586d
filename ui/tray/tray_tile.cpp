#include "ui/tray/tray_tile.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include "ui/look/look.h"
#include "ui/tray/pictures.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

constexpr QSize kPicture(58, 44);
constexpr int kPad = 5;

}  // namespace

TrayTile::TrayTile(QString payload, const QString& label, QWidget* parent)
    : QAbstractButton(parent), payload_(std::move(payload)) {
  setText(label);
  setAccessibleName(label);
  setFocusPolicy(Qt::StrongFocus);
  setAttribute(Qt::WA_Hover);
  setCursor(Qt::OpenHandCursor);
  setFont(smallFont(*this));
}

QSize TrayTile::sizeHint() const {
  return {kPicture.width() + 2 * kPad + 2, kPad + kPicture.height() + 3 + 2 * fontMetrics().height() + kPad};
}

const QPixmap& TrayTile::picture() const {
  if (!picture_.isNull() && picture_.devicePixelRatioF() == devicePixelRatioF()) return picture_;
  const Option none;
  if (payload_ == "window") picture_ = openingPicture(typicalWindow(none), kPicture, *this);
  for (DoorAction action : {DoorAction::hinged, DoorAction::doubleLeaf, DoorAction::pocket,
                            DoorAction::surfaceSliding, DoorAction::bifold, DoorAction::cased})
    if (payload_ == QStringLiteral("door:") + words(keyOf(action)))
      picture_ = openingPicture(typicalDoor(action, none), kPicture, *this);
  if (payload_.startsWith("wall:")) picture_ = wallItemPicture(payload_.mid(5).toStdString(), kPicture, *this);
  if (payload_.startsWith("ceiling:"))
    picture_ = ceilingItemPicture(payload_.mid(8).toStdString(), kPicture, *this);
  for (const KindInfo& info : fixtureKinds())
    if (payload_ == QStringLiteral("fixture:") + words(info.key))
      picture_ = fixturePicture(info.kind, kPicture, *this);
  return picture_;
}

void TrayTile::paintEvent(QPaintEvent*) {
  const Look& l = lookOf(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF box = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
  painter.setPen(QPen(underMouse() || isDown() ? l.soft : l.hairline, 1));
  painter.setBrush(isDown() ? l.chosen : underMouse() ? l.lit : l.sheet);
  painter.drawRoundedRect(box, 3, 3);
  const QPixmap& image = picture();
  painter.drawPixmap(QPoint((width() - kPicture.width()) / 2, kPad), image);
  painter.setPen(l.ink);
  painter.setFont(font());
  const QRect label(2, kPad + kPicture.height() + 2, width() - 4, height() - kPad - kPicture.height() - 4);
  painter.drawText(label, Qt::AlignHCenter | Qt::AlignVCenter | Qt::TextWordWrap, text());
  if (hasFocus()) {
    painter.setPen(QPen(l.accent, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
  }
}

void TrayTile::mousePressEvent(QMouseEvent* event) {
  pressed_at_ = event->position().toPoint();
  QAbstractButton::mousePressEvent(event);
}

void TrayTile::mouseMoveEvent(QMouseEvent* event) {
  const QPoint moved = event->position().toPoint() - pressed_at_;
  if ((event->buttons() & Qt::LeftButton) && isDown() &&
      moved.manhattanLength() >= QApplication::startDragDistance()) {
    setDown(false);
    emit dragWanted();
    return;
  }
  QAbstractButton::mouseMoveEvent(event);
}

void TrayTile::mouseReleaseEvent(QMouseEvent* event) {
  QAbstractButton::mouseReleaseEvent(event);
  event->accept();
}

void TrayTile::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  // Arrows are the Tray's: QAbstractButton would take them to move within a group.
  if (event->key() == Qt::Key_Space) return QAbstractButton::keyPressEvent(event);
  event->ignore();
}

}  // namespace elbowroom::ui

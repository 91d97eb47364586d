// Small pictures of things to place, drawn as the plan draws them.
#pragma once

#include <QPixmap>
#include <QSize>

#include "core/plan/catalogue.h"

class QWidget;

namespace elbowroom::ui {

// `opening`'s wall and place are ignored: it stands in a wall of its own. Sharp at the widget's pixel ratio.
QPixmap fixturePicture(FixtureKind kind, QSize size, const QWidget& on);
QPixmap wallItemPicture(std::string_view kind, QSize size, const QWidget& on);     // as seen facing its wall
QPixmap ceilingItemPicture(std::string_view kind, QSize size, const QWidget& on);
QPixmap openingPicture(const Opening& opening, QSize size, const QWidget& on);

}  // namespace elbowroom::ui

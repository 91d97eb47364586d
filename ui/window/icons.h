// Small line pictures for the tool bar, drawn in the palette's ink so that they follow light and dark.
#pragma once

#include <QIcon>

namespace elbowroom::ui {

enum class Glyph { open, save, undo, redo, walls, circle, floorSpace, fit, sheets };
QIcon glyphIcon(Glyph);

}  // namespace elbowroom::ui

// The commands on what is selected on the wall strip, as its context menu. Each is one undo step.
#pragma once

#include <QMenu>

#include "ui/walls/strip_context.h"

namespace elbowroom::ui {

// Fills the menu for the present selection; what cannot act is not enabled. `spot`: the place under the
// pointer.
void fillStripMenu(QMenu&, StripContext&, const StripScene::Spot& spot);

}  // namespace elbowroom::ui

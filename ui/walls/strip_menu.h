// The commands on what is selected on the wall strip, as its context menu. Each is one undo step.
#pragma once

#include <QMenu>

#include "ui/walls/strip_context.h"

namespace elbowroom::ui {

// Fills the menu for the present selection; what cannot act is not enabled. `wall`: the wall under the pointer.
void fillStripMenu(QMenu&, StripContext&, const ElementId& wall);

}  // namespace elbowroom::ui

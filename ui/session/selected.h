// What Edit does with what is selected, for the plan and the wall strip alike. Each is one undo step.
#pragma once

#include "ui/session/session.h"

namespace elbowroom::ui {

// Fixtures, openings and things on walls and the ceiling; with none of these selected it says so and keeps what was copied.
void copySelected(Session&);
// The same, and takes them out of the option; walls stay.
void cutSelected(Session&);
// Into the present option, on `wall` when it is given, else on the selected wall, else where it came from.
void pasteCopied(Session&, const ElementId& wall = {});
void duplicateSelected(Session&);
// Fixtures, openings, things on walls and on the ceiling.
void selectAll(Session&);
// Takes what is selected out of the option; a single wall is joined to the one before it.
void removeSelected(Session&);
// The next or previous one of `order`, after the selected one.
void selectNext(Session&, const std::vector<ElementId>& order, bool forward);

}  // namespace elbowroom::ui

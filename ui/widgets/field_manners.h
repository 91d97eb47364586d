// What all fields of the program do alike, whatever window they stand in.
#pragma once

namespace elbowroom::ui {

// For every field there is and will be:
// - The wheel over a drop-down list, a spin box or a slider that has not the focus goes to the panel around it: reading
//   down a column of fields must not change the plan. The wheel never gives the focus either.
// - Undo and redo go to the plan while nothing is being typed: a line whose text was taken over has nothing of its own
//   left to take back.
// Needs the QApplication; again is harmless.
void teachFields();

}  // namespace elbowroom::ui

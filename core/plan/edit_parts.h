// The parts of apply(), one function per change of one option. Inside core/plan only: they do not check
// integrity, apply() does.
#pragma once

#include <map>

#include "core/plan/edit.h"

namespace elbowroom::edit {

using Refusal = std::optional<Error>;
inline Error refused(const std::string& code, std::string message) {
  return {"edit/" + code, std::move(message), ""};
}

Refusal change(Option&, const PutFixtures&);
Refusal change(Option&, const PutOpenings&);
Refusal change(Option&, const PutWallItems&);
Refusal change(Option&, const PutCeilingItems&);
Refusal change(Option&, const PutThings&);
Refusal change(Option&, const StateFact&);
Refusal change(Option&, const Acknowledge&);
Refusal change(Option&, const AnswerWish&);
Refusal change(Option&, const RemoveElements&);

Refusal change(Option&, const SetRoom&);
Refusal change(Option&, const PutWall&);
Refusal change(Option&, const MoveCorner&);
Refusal change(Option&, const MoveWall&);
Refusal change(Option&, const SplitWall&);
Refusal change(Option&, const RemoveCorner&);
Refusal change(Option&, const SetCeiling&);

// Puts what stands on the walls of `before` at the same place in the room on the walls of `after`, as far as
// each wall allows. `joined` says which wall took over from one that is gone.
Refusal keepInPlace(const Option& before, Option& after, const std::map<ElementId, ElementId>& joined = {});

Refusal change(Plan&, std::size_t option, const AddOption&);
Refusal change(Plan&, std::size_t option, const RemoveOption&);
Refusal change(Plan&, std::size_t option, const RenameOption&);
Refusal change(Plan&, std::size_t option, const MoveOption&);
// What concerns the whole plan ignores the option.
Refusal change(Plan&, std::size_t, const SetTitle&);
Refusal change(Plan&, std::size_t, const SetUnit&);
Refusal change(Plan&, std::size_t, const SetBooks&);
Refusal change(Plan&, std::size_t, const SetBookSetting&);
Refusal change(Plan&, std::size_t, const ChangeRule&);
Refusal change(Plan&, std::size_t, const SetTolerance&);
Refusal change(Plan&, std::size_t, const SetPeople&);
Refusal change(Plan&, std::size_t, const SetNorth&);

}  // namespace elbowroom::edit

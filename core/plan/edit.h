// An edit is a value: what to change, how the history names it, and with which earlier edit it merges.
#pragma once

#include <map>
#include <string>
#include <variant>
#include <vector>

#include "core/base/result.h"
#include "core/plan/plan.h"

namespace elbowroom {

// Within one option (by index) unless it says otherwise. Put* replaces the element with the same id or adds it.
struct PutFixtures { std::vector<Fixture> fixtures; };
struct PutOpenings { std::vector<Opening> openings; };
struct PutWallItems { std::vector<WallItem> items; };
struct PutCeilingItems { std::vector<CeilingItem> items; };
// Things of several kinds in one edit.
struct PutThings {
  std::vector<Fixture> fixtures;
  std::vector<Opening> openings;
  std::vector<WallItem> on_walls;
  std::vector<CeilingItem> on_ceiling;
  std::size_t size() const { return fixtures.size() + openings.size() + on_walls.size() + on_ceiling.size(); }
  bool empty() const { return size() == 0; }
};
// States a fact of the thing with this id (empty: of the room); nullopt: no longer stated. The key must be in the
// catalogue for that kind of element.
struct StateFact { ElementId id; std::string key; std::optional<FactValue> value; };
// Adds or replaces the acknowledgement of one finding; an empty reason takes it back.
struct Acknowledge { Acknowledged finding; };
struct AnswerWish { std::string key; std::optional<Wish> answer; };  // nullopt: undecided again
struct RemoveElements { std::vector<ElementId> ids; };  // unknown ids are an error
struct SetRoom { Room room; };           // replaces all walls; elements on vanished walls must not exist
struct PutWall { Wall wall; };           // thickness, marks, studs; not its corner
// Moves the wall's left corner; elements on the two walls that change keep their place in the room as far as
// their wall allows (their `along` is recomputed by projection).
struct MoveCorner { ElementId wall; Point to; };
// Moves the wall parallel to itself, positive = into the room; its two corners slide along the neighbours. Where
// a neighbour runs on in the same line (after a split) it stays, and a return wall with a fresh id closes the step.
struct MoveWall { ElementId wall; Length inward; };
struct SplitWall { ElementId wall; Length along; ElementId new_wall; };  // a new corner on the wall
struct RemoveCorner { ElementId wall; };  // joins this wall to the one before it; its elements move over
struct SetCeiling { Ceiling ceiling; };
struct AddOption { std::string name; int copy_of = -1; };  // -1: empty room
struct RemoveOption {};
struct RenameOption { std::string name; };
// To this place among the options. The first option is the room as found: it stays first, and nothing goes before it.
struct MoveOption { std::size_t to = 0; };
struct SetTitle { std::string title; };          // whole plan
struct SetUnit { Unit unit; };                   // whole plan
struct SetBooks { std::vector<std::string> books; };  // whole plan
struct SetBookSetting { std::string book, key, value; };  // whole plan; empty value: back to the default
// Whole plan; adds or replaces the change of that rule. With neither `off` nor a limit it is taken back.
struct ChangeRule { RuleChange change; };
struct SetTolerance { std::optional<Length> site_tolerance; };  // whole plan
// Whole plan. `renamed`: old name -> new; what is set to somebody's height, in all options, follows (empty: is set
// to nobody's any more). What was set to somebody who goes is set to nobody's, also where somebody else takes the name.
struct SetPeople {
  std::vector<Person> people;
  std::map<std::string, std::string> renamed = {};
};
struct SetNorth { std::optional<Angle> north; };      // whole plan

using Change = std::variant<PutFixtures, PutOpenings, PutWallItems, RemoveElements, SetRoom, PutWall, MoveCorner,
                            MoveWall, SplitWall, RemoveCorner, SetCeiling, AddOption, RemoveOption, RenameOption,
                            SetTitle, SetUnit, SetBooks, SetPeople, SetNorth, PutCeilingItems, StateFact,
                            Acknowledge, AnswerWish, SetBookSetting, ChangeRule, SetTolerance, PutThings,
                            MoveOption>;

struct Edit {
  std::size_t option = 0;
  Change change;
  std::string label;      // "Move toilet"; shown by undo and redo
  std::string merge_key;  // consecutive edits with the same non-empty key are one step of the history
};

// The changed plan, or why not; the given plan is untouched either way. Integrity holds in the result.
Result<Plan> apply(const Plan& plan, const Edit& edit);

}  // namespace elbowroom

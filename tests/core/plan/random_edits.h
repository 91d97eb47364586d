// Random edits of every kind for property tests: plausible ones, and a share that must be refused.
#pragma once

#include <algorithm>
#include <random>

#include "core/plan/catalogue.h"
#include "core/plan/edit.h"
#include "core/plan/wall_catalogue.h"
#include "tests/core/plan/hall_bath.h"

namespace elbowroom::testing {

class RandomEdits {
 public:
  explicit RandomEdits(unsigned seed) : random_(seed) {}
  Edit next(const Plan& plan);

 private:
  int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(random_); }
  bool oneIn(int n) { return upTo(n - 1) == 0; }
  // Whole sixteenths mostly, so that elements often touch exactly; sometimes any nanometre.
  Length between(int low_in, int high_in);
  template <typename T>
  const T& anyOf(const std::vector<T>& all) {
    return all[static_cast<std::size_t>(upTo(static_cast<int>(all.size()) - 1))];
  }
  ElementId anyWall(const Option& option);
  ElementId anyElement(const Option& option);
  Placement anyPlacement(const Option& option);
  Fixture anyFixture(const Option& option);
  Opening anyOpening(const Option& option);
  WallItem anyItem(const Option& option);
  Room anyRoom(const Option& option);
  Change anyChange(const Plan& plan, const Option& option);
  Change anyRoomChange(const Option& option);
  Change anyPlanChange(const Plan& plan);
  Change anySaying(const Option& option);

  std::mt19937 random_;
};

inline Length RandomEdits::between(int low_in, int high_in) {
  const int sixteenths = std::uniform_int_distribution<int>(low_in * 16, high_in * 16)(random_);
  const Length v = Length::nanometres(sixteenths * 1'587'500LL);
  return oneIn(4) ? v + Length::nanometres(upTo(1'000'000)) : v;
}

inline ElementId RandomEdits::anyWall(const Option& option) {
  return option.room.walls.empty() || oneIn(30) ? ElementId{"no wall"} : anyOf(option.room.walls).id;
}

inline ElementId RandomEdits::anyElement(const Option& option) {
  std::vector<ElementId> ids;
  for (const Opening& o : option.openings) ids.push_back(o.id);
  for (const Fixture& f : option.fixtures) ids.push_back(f.id);
  for (const WallItem& i : option.on_walls) ids.push_back(i.id);
  for (const CeilingItem& i : option.on_ceiling) ids.push_back(i.id);
  return ids.empty() || oneIn(20) ? ElementId{"nothing"} : anyOf(ids);
}

inline Placement RandomEdits::anyPlacement(const Option& option) {
  if (oneIn(3)) return Standing{{between(0, 96), between(0, 60)}, Angle::microdegrees(upTo(359'999'999))};
  return OnWall{anyWall(option), between(0, 96), oneIn(4) ? between(0, 4) : Length{}};
}

inline Fixture RandomEdits::anyFixture(const Option& option) {
  using namespace literals;
  const auto kinds = fixtureKinds();
  Fixture f =
      option.fixtures.empty() || oneIn(2)
          ? typicalFixture(kinds[static_cast<std::size_t>(upTo(static_cast<int>(kinds.size()) - 1))].kind,
                           option)
          : anyOf(option.fixtures);
  f.placement = anyPlacement(option);
  if (oneIn(5)) f.width = between(0, 72);
  if (oneIn(8)) f.status = static_cast<Status>(upTo(3));
  if (oneIn(12)) f.name = "Named " + std::to_string(upTo(99));
  if (oneIn(12))
    f.knee_space = KneeSpace{27_in, between(1, 19), oneIn(2) ? std::optional(between(0, 25)) : std::nullopt};
  return f;
}

inline Opening RandomEdits::anyOpening(const Option& option) {
  Opening o = !option.openings.empty() && oneIn(2) ? anyOf(option.openings)
              : oneIn(3)                           ? typicalWindow(option)
                                                   : typicalDoor(static_cast<DoorAction>(upTo(5)), option);
  if (o.wall.empty() || oneIn(3)) o.wall = anyWall(option);
  o.along = between(0, 96);
  if (oneIn(3)) o.width = anyOf(std::vector<Length>(stockLeafWidths().begin(), stockLeafWidths().end()));
  if (oneIn(4)) o.hinge = o.hinge == Hand::left ? Hand::right : Hand::left;
  if (oneIn(4)) o.swing = o.swing == Swing::in ? Swing::out : Swing::in;
  return o;
}

inline WallItem RandomEdits::anyItem(const Option& option) {
  WallItem item;
  item.id = option.on_walls.empty() || oneIn(2) ? freshId(option, "item") : anyOf(option.on_walls).id;
  const auto kinds = wallKinds();
  item.kind = oneIn(8) ? "ladder" : kinds[static_cast<std::size_t>(upTo(static_cast<int>(kinds.size()) - 1))].key;
  item.wall = anyWall(option);
  item.along = between(0, 96);
  item.bottom = between(0, 80);
  item.width = between(0, 36);
  item.height = between(0, 40);
  if (oneIn(3)) item.depth = between(0, 12);
  return item;
}

inline Room RandomEdits::anyRoom(const Option& option) {
  using namespace literals;
  Room room = option.room;
  if (room.walls.empty()) {
    const Length wide = between(40, 150), deep = between(40, 120);
    room.walls = {wall("n", {{}, deep}, 4_in), wall("e", {wide, deep}, 4_in), wall("s", {wide, {}}, 4_in),
                  wall("w", {{}, {}}, 4_in)};
  }
  for (Wall& w : room.walls) w.from = w.from + Vector{between(-3, 3), between(-3, 3)};
  if (oneIn(6)) std::reverse(room.walls.begin(), room.walls.end());
  if (oneIn(6)) room.walls.pop_back();
  return room;
}

inline Change RandomEdits::anyRoomChange(const Option& option) {
  using namespace literals;
  const ElementId id = anyWall(option);
  const Wall* given = findWall(option, id);
  const Wall w = given ? *given : wall("no wall", {}, 4_in);
  switch (upTo(6)) {
    case 0:
      return SetRoom{anyRoom(option)};
    case 1: {
      Wall changed = w;
      changed.thickness = between(0, 9);
      changed.plumbing = !changed.plumbing;
      changed.studs = oneIn(2) ? std::optional(Studs{between(0, 16), 16_in}) : std::nullopt;
      return PutWall{changed};
    }
    case 2:
      if (oneIn(5)) return MoveCorner{id, {between(-40, 140), between(-40, 100)}};
      return MoveCorner{id, w.from + Vector{between(-12, 12), between(-12, 12)}};
    case 3:
      return MoveWall{id, oneIn(6) ? between(-150, 150) : between(-12, 12)};
    case 4:
      return SplitWall{id, between(0, 96), freshId(option, "part")};
    case 5:
      return RemoveCorner{id};
    default: {
      Ceiling ceiling{oneIn(4) ? std::nullopt : std::optional(between(0, 110)), {}, {}};
      if (oneIn(3)) ceiling.slopes.push_back({id, between(-2, 60), between(0, 60), {}});
      return SetCeiling{ceiling};
    }
  }
}

inline Change RandomEdits::anyPlanChange(const Plan& plan) {
  switch (upTo(8)) {
    case 0:
      return AddOption{"Option " + std::to_string(upTo(6)),
                       upTo(static_cast<int>(plan.options.size()) + 1) - 1};
    case 1:
      return RemoveOption{};
    case 2:
      return RenameOption{oneIn(5) ? "" : "Option " + std::to_string(upTo(6))};
    case 3:
      return SetTitle{"Title " + std::to_string(upTo(3))};
    case 4:
      return SetUnit{oneIn(2) ? Unit::inches : Unit::millimetres};
    case 5: {
      std::vector<std::string> books{"us-residential", "comfort", "craft"};
      books.resize(static_cast<std::size_t>(upTo(3)));
      return SetBooks{books};
    }
    case 6: {
      std::vector<Person> people = plan.people;
      if (people.empty() || oneIn(3)) people.push_back({"Guest", between(30, 80), oneIn(3), {}, {}});
      if (oneIn(4)) people.pop_back();
      if (oneIn(8) && !people.empty()) people[0].stature = {};
      return SetPeople{people};
    }
    case 7:
      return MoveOption{static_cast<std::size_t>(upTo(static_cast<int>(plan.options.size())))};
    default:
      return SetNorth{oneIn(4) ? std::nullopt : std::optional(Angle::microdegrees(upTo(359'999'999)))};
  }
}

// What a person says about things and rules.
inline Change RandomEdits::anySaying(const Option& option) {
  const bool empty = oneIn(4);
  switch (upTo(6)) {
    case 0: {
      CeilingItem fan;
      fan.id = option.on_ceiling.empty() || oneIn(2) ? freshId(option, "fan") : anyOf(option.on_ceiling).id;
      fan.kind = "fan";
      fan.at = {between(0, 96), between(0, 60)};
      return PutCeilingItems{{fan}};
    }
    case 1: {
      const FactInfo fact = anyOf(std::vector<FactInfo>(allFacts().begin(), allFacts().end()));
      const ElementId id = oneIn(3) ? ElementId{} : oneIn(2) ? anyWall(option) : anyElement(option);
      const FactValue value = fact.type == FactType::yesNo    ? FactValue(oneIn(2))
                              : fact.type == FactType::length ? FactValue(between(-1, 60))
                                                              : FactValue(Amount::of(upTo(100)));
      return StateFact{id, std::string(fact.key), empty ? std::nullopt : std::optional(value)};
    }
    case 2:
      return Acknowledge{{"comfort", "toilet-clear-front", {anyElement(option)}, empty ? "" : "Seen", {}}};
    case 3:
      return AnswerWish{"niche", empty ? std::nullopt : std::optional(Wish{oneIn(2), oneIn(2) ? "" : "No", {}})};
    case 4:
      return SetBookSetting{"us-electrical", "edition", empty ? "" : oneIn(2) ? "2017" : "2020"};
    case 5:
      return ChangeRule{{"comfort", "toilet-clear-front", oneIn(3),
                         empty ? std::nullopt : std::optional<decltype(RuleChange::limit)::value_type>(between(1, 40)),
                         oneIn(6) ? "" : "Told so", {}}};
    default:
      return SetTolerance{empty ? std::nullopt : std::optional(between(-1, 2))};
  }
}

inline Change RandomEdits::anyChange(const Plan& plan, const Option& option) {
  const int dice = upTo(99);
  if (dice < 22) {
    std::vector<Fixture> fixtures{anyFixture(option)};
    if (oneIn(4)) fixtures.push_back(anyFixture(option));
    return PutFixtures{fixtures};
  }
  if (dice < 36) return PutOpenings{{anyOpening(option)}};
  if (dice < 40) return PutWallItems{{anyItem(option)}};
  if (dice < 42) return PutThings{{anyFixture(option)}, {anyOpening(option)}, {anyItem(option)}, {}};
  if (dice < 47) return RemoveElements{{anyElement(option)}};
  if (dice < 78) return anyRoomChange(option);
  if (dice < 88) return anySaying(option);
  return anyPlanChange(plan);
}

inline Edit RandomEdits::next(const Plan& plan) {
  Edit edit;
  edit.option = static_cast<std::size_t>(upTo(static_cast<int>(plan.options.size()) - 1));
  const Option& option = plan.options[edit.option];
  if (oneIn(40)) edit.option = plan.options.size();
  edit.change = anyChange(plan, option);
  edit.label = "Random";
  if (oneIn(3)) edit.merge_key = oneIn(2) ? "drag" : "turn";
  return edit;
}

}  // namespace elbowroom::testing

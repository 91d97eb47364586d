#include "ui/advice/asking.h"

#include <algorithm>

#include "core/plan/asked.h"
#include "core/plan/catalogue.h"
#include "core/rules/text.h"

namespace elbowroom::ui {
namespace {

Asking ask(FactType type, FactOn on, std::string_view key) {
  Asking a;
  a.type = type;
  if (const std::optional<Asked> asked = askedOf(on, key)) a.label = asked->label, a.question = asked->question;
  return a;
}

std::vector<std::pair<std::string, std::string>> wordsIn(std::string_view words) {
  std::vector<std::pair<std::string, std::string>> found;
  while (!words.empty()) {
    const std::size_t end = words.find(' ');
    const std::string word(words.substr(0, end));
    std::string said = word;
    std::replace(said.begin(), said.end(), '-', ' ');
    if (!word.empty()) found.emplace_back(word, said);
    words.remove_prefix(end == std::string_view::npos ? words.size() : end + 1);
  }
  return found;
}

std::optional<Asking> askFact(FactOn on, const std::string& kind, const ElementId& id, const std::string& key) {
  const FactInfo* info = findFact(on, key);
  if (info == nullptr || !concerns(*info, kind)) return std::nullopt;
  Asking a = ask(info->type, on, key);
  a.unit = info->unit;
  a.words = wordsIn(info->words);
  a.state = [id, key](const FactValue& value) -> Change { return StateFact{id, key, value}; };
  return a;
}

template <typename Element, typename Put, typename Field>
Asking askLength(FactOn on, std::string_view key, Element element, Put put, Field field) {
  Asking a = ask(FactType::length, on, key);
  a.state = [element = std::move(element), put, field](const FactValue& value) mutable -> Change {
    field(element) = std::get<Length>(value);
    return put(element);
  };
  return a;
}

std::optional<Asking> askRoom(const Option& option, const std::string& key) {
  if (key != "ceiling.height") return askFact(FactOn::room, "", {}, key);
  return askLength(FactOn::room, key, option.room.ceiling,
                   [](const Ceiling& c) -> Change { return SetCeiling{c}; },
                   [](Ceiling& c) -> std::optional<Length>& { return c.height; });
}

std::optional<Asking> askFixture(const Fixture& f, const std::string& key) {
  const auto put = [](const Fixture& x) -> Change { return PutFixtures{{x}}; };
  if (key == "basins") {
    Asking a = ask(FactType::word, FactOn::fixture, key);
    for (const char* count : {"1", "2", "3"}) a.words.emplace_back(count, count);
    a.state = [f = f, put](const FactValue& value) mutable -> Change {
      f.basins = std::stoi(std::get<std::string>(value));
      return put(f);
    };
    return a;
  }
  if (key == "glass.height") {
    Asking a = ask(FactType::length, FactOn::fixture, key);
    a.state = [f = f, put](const FactValue& value) mutable -> Change {
      for (Pane& pane : f.glass)
        if (!pane.height) pane.height = std::get<Length>(value);
      return put(f);
    };
    return a;
  }
  if (key == "glass.door_swing") {
    Asking a = ask(FactType::word, FactOn::fixture, key);
    a.words = {{"out", "swings out"}, {"in", "swings in"}};
    a.state = [f = f, put](const FactValue& value) mutable -> Change {
      for (Pane& pane : f.glass)
        if (pane.door && !pane.door_swing)
          pane.door_swing = std::get<std::string>(value) == "in" ? Swing::in : Swing::out;
      return put(f);
    };
    return a;
  }
  using Member = std::optional<Length> Fixture::*;
  struct Field {
    const char* key;
    Member member;
  };
  static constexpr Field kFields[] = {{"height", &Fixture::height},
                                      {"curb", &Fixture::curb},
                                      {"bowl_width", &Fixture::bowl_width},
                                      {"tank_width", &Fixture::tank_width},
                                      {"tank_depth", &Fixture::tank_depth}};
  for (const Field& field : kFields)
    if (key == field.key)
      return askLength(FactOn::fixture, key, f, put,
                       [member = field.member](Fixture& x) -> std::optional<Length>& { return x.*member; });
  return askFact(FactOn::fixture, std::string(infoOf(f.kind).key), f.id, key);
}

std::optional<Asking> askOpening(const Opening& o, const std::string& key) {
  const auto put = [](const Opening& x) -> Change { return PutOpenings{{x}}; };
  if (key == "sill")
    return askLength(FactOn::opening, key, o, put,
                     [](Opening& x) -> std::optional<Length>& { return x.sill; });
  if (key == "thickness" || key == "leaf_thickness")
    return askLength(FactOn::opening, key, o, put,
                     [](Opening& x) -> std::optional<Length>& { return x.leaf_thickness; });
  if (key == "closer" || key == "latch") {
    const bool closer = key == "closer";
    Asking a = ask(FactType::yesNo, FactOn::opening, key);
    a.state = [o = o, closer, put](const FactValue& value) mutable -> Change {
      (closer ? o.closer : o.latch) = std::get<bool>(value);
      return put(o);
    };
    return a;
  }
  return askFact(FactOn::opening, o.kind == OpeningKind::door ? "door" : "window", o.id, key);
}

std::optional<Asking> askWallItem(const Plan& plan, const Option& option, const WallItem& item,
                                  const std::string& key) {
  const auto put = [](const WallItem& x) -> Change { return PutWallItems{{x}}; };
  if (key == "depth")
    return askLength(FactOn::wallItem, key, item, put,
                     [](WallItem& x) -> std::optional<Length>& { return x.depth; });
  if (key == "shower") {
    Asking a = ask(FactType::word, FactOn::wallItem, key);
    for (const Fixture& f : option.fixtures)
      if (f.kind == FixtureKind::shower || f.kind == FixtureKind::bath || f.kind == FixtureKind::freestandingBath)
        a.words.emplace_back(f.id.text, subjectName(option, f.id));
    a.state = [item = item, put](const FactValue& value) mutable -> Change {
      item.shower = {std::get<std::string>(value)};
      return put(item);
    };
    return a.words.empty() ? std::nullopt : std::optional(a);
  }
  if (key == "for" || key == "person") {
    Asking a = ask(FactType::word, FactOn::wallItem, key);
    for (const Person& p : plan.people) a.words.emplace_back(p.name, p.name);
    a.state = [item = item, put](const FactValue& value) mutable -> Change {
      item.person = std::get<std::string>(value);
      return put(item);
    };
    return a.words.empty() ? std::nullopt : std::optional(a);
  }
  return askFact(FactOn::wallItem, item.kind, item.id, key);
}

std::optional<Asking> askWall(const Wall& wall, const std::string& key) {
  if (key != "exterior" && key != "plumbing") return askFact(FactOn::wall, "", wall.id, key);
  const bool exterior = key == "exterior";
  Asking a = ask(FactType::yesNo, FactOn::wall, key);
  a.state = [wall = wall, exterior](const FactValue& value) mutable -> Change {
    (exterior ? wall.exterior : wall.plumbing) = std::get<bool>(value);
    return PutWall{wall};
  };
  return a;
}

}  // namespace

std::optional<Asking> askingOf(const Plan& plan, const Option& option, const Finding& finding) {
  if (finding.outcome != Outcome::unknown || finding.fact.empty()) return std::nullopt;
  const std::string& key = finding.fact;
  if (finding.subjects.empty() || key == "ceiling.height") return askRoom(option, key);
  const ElementId& id = finding.subjects.front();
  if (const Fixture* f = findFixture(option, id)) return askFixture(*f, key);
  if (const Opening* o = findOpening(option, id)) return askOpening(*o, key);
  if (const WallItem* i = findWallItem(option, id)) return askWallItem(plan, option, *i, key);
  if (const Wall* w = findWall(option, id)) return askWall(*w, key);
  if (const CeilingItem* i = findCeilingItem(option, id)) return askFact(FactOn::ceilingItem, i->kind, id, key);
  return std::nullopt;
}

}  // namespace elbowroom::ui

#include "ui/advice/asking.h"

#include <algorithm>

#include "core/plan/catalogue.h"
#include "core/rules/text.h"

namespace elbowroom::ui {
namespace {

Asking ask(FactType type, std::string label, std::string question) {
  Asking a;
  a.type = type;
  a.label = std::move(label);
  a.question = std::move(question);
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
  Asking a = ask(info->type, std::string(info->label), std::string(info->question));
  a.unit = info->unit;
  a.words = wordsIn(info->words);
  a.state = [id, key](const FactValue& value) -> Change { return StateFact{id, key, value}; };
  return a;
}

template <typename Element, typename Put, typename Field>
Asking askLength(std::string label, std::string question, Element element, Put put, Field field) {
  Asking a = ask(FactType::length, std::move(label), std::move(question));
  a.state = [element = std::move(element), put, field](const FactValue& value) mutable -> Change {
    field(element) = std::get<Length>(value);
    return put(element);
  };
  return a;
}

std::optional<Asking> askRoom(const Option& option, const std::string& key) {
  if (key != "ceiling.height") return askFact(FactOn::room, "", {}, key);
  return askLength("Ceiling height", "How high is the ceiling above the finished floor?", option.room.ceiling,
                   [](const Ceiling& c) -> Change { return SetCeiling{c}; },
                   [](Ceiling& c) -> std::optional<Length>& { return c.height; });
}

std::optional<Asking> askFixture(const Fixture& f, const std::string& key) {
  const auto put = [](const Fixture& x) -> Change { return PutFixtures{{x}}; };
  if (key == "basins") {
    Asking a = ask(FactType::word, "Basins", "How many basins does it have?");
    for (const char* count : {"1", "2", "3"}) a.words.emplace_back(count, count);
    a.state = [f = f, put](const FactValue& value) mutable -> Change {
      f.basins = std::stoi(std::get<std::string>(value));
      return put(f);
    };
    return a;
  }
  if (key == "glass.height") {
    Asking a = ask(FactType::length, "Height of the glass", "How high above the floor does its glass go?");
    a.state = [f = f, put](const FactValue& value) mutable -> Change {
      for (Pane& pane : f.glass)
        if (!pane.height) pane.height = std::get<Length>(value);
      return put(f);
    };
    return a;
  }
  using Member = std::optional<Length> Fixture::*;
  struct Field {
    const char *key, *label, *question;
    Member member;
  };
  static constexpr Field kFields[] = {
      {"height", "Height", "How high does it stand above the floor?", &Fixture::height},
      {"curb", "Curb", "How high is its curb? 0 when there is none.", &Fixture::curb},
      {"bowl_width", "Bowl width", "How wide is its bowl?", &Fixture::bowl_width},
      {"tank_width", "Tank width", "How wide is its tank?", &Fixture::tank_width},
      {"tank_depth", "Tank depth", "How deep is its tank?", &Fixture::tank_depth},
  };
  for (const Field& field : kFields)
    if (key == field.key)
      return askLength(field.label, field.question, f, put,
                       [member = field.member](Fixture& x) -> std::optional<Length>& { return x.*member; });
  return askFact(FactOn::fixture, std::string(infoOf(f.kind).key), f.id, key);
}

std::optional<Asking> askOpening(const Opening& o, const std::string& key) {
  const auto put = [](const Opening& x) -> Change { return PutOpenings{{x}}; };
  if (key == "sill")
    return askLength("Sill", "How high is the sill above the finished floor?", o, put,
                     [](Opening& x) -> std::optional<Length>& { return x.sill; });
  if (key == "thickness" || key == "leaf_thickness")
    return askLength("Leaf thickness", "How thick is the leaf?", o, put,
                     [](Opening& x) -> std::optional<Length>& { return x.leaf_thickness; });
  if (key == "closer" || key == "latch") {
    const bool closer = key == "closer";
    Asking a = ask(FactType::yesNo, closer ? "Closer" : "Latch",
                   closer ? "Does a closer shut this door?" : "Does this door have a latch?");
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
    return askLength("Depth", "How deep is it?", item, put,
                     [](WallItem& x) -> std::optional<Length>& { return x.depth; });
  if (key == "shower") {
    Asking a = ask(FactType::word, "Belongs to", "Which shower or bath does it belong to?");
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
    Asking a = ask(FactType::word, "For", "Whom is its height set to?");
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
  Asking a = ask(FactType::yesNo, exterior ? "Exterior wall" : "Pipes in the wall",
                 exterior ? "Is this an exterior wall?" : "Do pipes run in this wall?");
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
  if (finding.subjects.empty()) return askRoom(option, key);
  const ElementId& id = finding.subjects.front();
  if (const Fixture* f = findFixture(option, id)) return askFixture(*f, key);
  if (const Opening* o = findOpening(option, id)) return askOpening(*o, key);
  if (const WallItem* i = findWallItem(option, id)) return askWallItem(plan, option, *i, key);
  if (const Wall* w = findWall(option, id)) return askWall(*w, key);
  if (const CeilingItem* i = findCeilingItem(option, id)) return askFact(FactOn::ceilingItem, i->kind, id, key);
  return std::nullopt;
}

}  // namespace elbowroom::ui

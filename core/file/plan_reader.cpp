#include "core/file/json_object.h"
#include "core/file/plan_file.h"
#include "core/file/words.h"
#include "core/plan/catalogue.h"
#include "core/plan/integrity.h"

namespace elbowroom {
namespace {

template <typename Enum>
Enum wordAt(const JsonValue& value, const WordList<Enum>& words) {
  const std::string word = value.text();
  if (const auto found = words.find(word)) return *found;
  failAt("value", value.place(), quotedJson(word) + " is not one of " + words.known() + ".");
}

// The readers of one level share the file's unit.
class PlanReader {
 public:
  Plan read(const JsonNode& root) {
    JsonObject top(JsonValue(root, ""));
    readHead(top);
    Plan plan;
    plan.unit = unit_ = wordAt(top.need("unit"), kUnits);
    if (const auto title = top.find("title")) plan.title = title->text();
    if (const auto north = top.find("north")) plan.north = north->angle();
    plan.site_tolerance = optionalLength(top, "site_tolerance");
    if (const auto books = top.find("books")) {
      for (const JsonValue& book : books->items()) plan.books.push_back(book.text());
    }
    if (const auto settings = top.find("book_settings")) {
      for (auto& [book, values] : settings->members()) {
        for (auto& [key, value] : values.members()) plan.book_settings[book][key] = value.text();
      }
    }
    each(top, "rule_changes", plan.rule_changes, &PlanReader::ruleChange);
    each(top, "people", plan.people, &PlanReader::person);
    for (const JsonValue& value : top.need("options").items()) plan.options.push_back(option(value));
    plan.extra = top.rest();
    return plan;
  }

 private:
  // Before anything else, so that another program's file or a newer one gets no misleading complaint.
  static void readHead(JsonObject& top) {
    const JsonValue format = top.need("format");
    if (format.text() != kFormatName) {
      failAt("format", format.place(),
             "this is no plan of this program: the format is " + quotedJson(format.text()) + ", not \"" +
                 std::string(kFormatName) + "\".");
    }
    const JsonValue version = top.need("version");
    const std::int64_t number = version.whole();
    if (number > kFormatVersion) {
      failAt("version", version.place(),
             "this plan was written by a newer program (file version " + std::to_string(number) +
                 "; this program reads version " + std::to_string(kFormatVersion) + ").");
    }
    if (number < 1) failAt("version", version.place(), "there is no file version " + std::to_string(number) + ".");
  }

  template <typename T>
  void each(JsonObject& from, const std::string& key, std::vector<T>& into, T (PlanReader::*one)(const JsonValue&)) {
    if (const auto list = from.find(key)) {
      for (const JsonValue& value : list->items()) into.push_back((this->*one)(value));
    }
  }

  Length neededLength(JsonObject& from, const std::string& key) { return from.need(key).length(unit_); }
  std::optional<Length> optionalLength(JsonObject& from, const std::string& key) {
    const auto value = from.find(key);
    return value ? std::optional(value->length(unit_)) : std::nullopt;
  }
  static bool flag(JsonObject& from, const std::string& key) {
    const auto value = from.find(key);
    return value && value->truth();
  }
  static std::optional<bool> optionalFlag(JsonObject& from, const std::string& key) {
    const auto value = from.find(key);
    return value ? std::optional(value->truth()) : std::nullopt;
  }
  static ElementId neededId(JsonObject& from, const std::string& key) { return {from.need(key).text()}; }

  // The facts of the catalogue; what only looks like one (on a thing it does not concern) stays in the rest.
  Facts facts(JsonObject& from, FactOn on, std::string_view kind) {
    Facts out;
    for (const FactInfo& info : allFacts()) {
      if (info.on != on || !concerns(info, kind)) continue;
      const std::string key(info.key);
      const auto value = from.find(key);
      if (!value) continue;
      out[key] = fact(info, *value);
      if (!fits(info, out[key])) failAt("value", value->place(), "this value does not fit the key \"" + key + "\".");
    }
    return out;
  }

  FactValue fact(const FactInfo& info, const JsonValue& value) {
    switch (info.type) {
      case FactType::yesNo:
        return value.truth();
      case FactType::length:
        return value.length(unit_);
      case FactType::amount:
        return value.amount();
      case FactType::word:
        return value.text();
    }
    return false;
  }

  RuleChange ruleChange(const JsonValue& value) {
    JsonObject from(value);
    RuleChange out;
    out.book = from.need("book").text();
    out.rule = from.need("rule").text();
    out.off = flag(from, "off");
    if (const auto limit = from.find("limit")) out.limit = limit->length(unit_);
    if (const auto limit = from.find("limit_sq_in"))
      out.limit = Area::squareMicrometres(limit->amount().thousandths * 645'160);
    if (const auto limit = from.find("limit_degrees")) out.limit = limit->angle();
    if (const auto limit = from.find("limit_count")) out.limit = Count{static_cast<int>(limit->whole())};
    if (const auto limit = from.find("limit_amount")) out.limit = limit->amount();
    out.reason = from.need("reason").text();
    out.extra = from.rest();
    return out;
  }

  Acknowledged acknowledged(const JsonValue& value) {
    JsonObject from(value);
    Acknowledged out;
    out.book = from.need("book").text();
    out.rule = from.need("rule").text();
    if (const auto subjects = from.find("subjects")) {
      for (const JsonValue& id : subjects->items()) out.subjects.push_back({id.text()});
    }
    out.reason = from.need("reason").text();
    out.extra = from.rest();
    return out;
  }

  Wish wish(const JsonValue& value) {
    JsonObject from(value);
    Wish out;
    out.in = from.need("in").truth();
    if (const auto reason = from.find("reason")) out.reason = reason->text();
    out.extra = from.rest();
    return out;
  }

  Person person(const JsonValue& value) {
    JsonObject from(value);
    Person out;
    out.name = from.need("name").text();
    out.stature = neededLength(from, "stature");
    out.child = flag(from, "child");
    if (const auto chair = from.find("chair")) {
      JsonObject seat(*chair);
      out.chair = Chair{neededLength(seat, "width"), neededLength(seat, "length"), {}};
      out.chair->extra = seat.rest();
    }
    out.extra = from.rest();
    return out;
  }

  Option option(const JsonValue& value) {
    JsonObject from(value);
    Option out;
    out.name = from.need("name").text();
    out.room = room(from.need("room"));
    each(from, "openings", out.openings, &PlanReader::opening);
    each(from, "fixtures", out.fixtures, &PlanReader::fixture);
    each(from, "on_walls", out.on_walls, &PlanReader::wallItem);
    each(from, "on_ceiling", out.on_ceiling, &PlanReader::ceilingItem);
    each(from, "acknowledged", out.acknowledged, &PlanReader::acknowledged);
    if (const auto wishes = from.find("wishes")) {
      for (auto& [key, answer] : wishes->members()) out.wishes[key] = wish(answer);
    }
    out.extra = from.rest();
    return out;
  }

  Room room(const JsonValue& value) {
    JsonObject from(value);
    Room out;
    if (const auto ceiling = from.find("ceiling")) {
      JsonObject above(*ceiling);
      out.ceiling.height = optionalLength(above, "height");
      each(above, "slopes", out.ceiling.slopes, &PlanReader::slope);
      out.ceiling.extra = above.rest();
    }
    for (const JsonValue& one : from.need("walls").items()) out.walls.push_back(wall(one));
    out.facts = facts(from, FactOn::room, "");
    out.extra = from.rest();
    return out;
  }

  CeilingSlope slope(const JsonValue& value) {
    JsonObject from(value);
    CeilingSlope out{neededId(from, "wall"), neededLength(from, "low"), neededLength(from, "run"), {}};
    out.extra = from.rest();
    return out;
  }

  Wall wall(const JsonValue& value) {
    JsonObject from(value);
    Wall out;
    out.id = neededId(from, "id");
    out.from = from.need("from").point(unit_);
    out.thickness = neededLength(from, "thickness");
    out.exterior = flag(from, "exterior");
    out.plumbing = flag(from, "plumbing");
    if (const auto studs = from.find("studs")) {
      JsonObject inside(*studs);
      out.studs = Studs{neededLength(inside, "first"), neededLength(inside, "spacing"), {}};
      out.studs->extra = inside.rest();
    }
    out.facts = facts(from, FactOn::wall, "");
    out.extra = from.rest();
    return out;
  }

  Opening opening(const JsonValue& value) {
    JsonObject from(value);
    Opening out;
    out.id = neededId(from, "id");
    out.kind = wordAt(from.need("kind"), kOpeningKinds);
    out.wall = neededId(from, "wall");
    out.along = neededLength(from, "along");
    out.width = neededLength(from, "width");
    out.height = neededLength(from, "height");
    out.sill = optionalLength(from, "sill");
    readLeaf(from, out);
    out.facts = facts(from, FactOn::opening, keyOf(out.kind));
    out.extra = from.rest();
    return out;
  }

  void readLeaf(JsonObject& from, Opening& out) {
    const bool door = out.kind == OpeningKind::door;
    if (door || from.has("action")) out.action = wordAt(from.need("action"), kDoorActions);
    const bool hinged = door && out.action == DoorAction::hinged;
    if (hinged || from.has("hinge")) out.hinge = wordAt(from.need("hinge"), kHands);
    if (hinged || from.has("swing")) out.swing = wordAt(from.need("swing"), kSwings);
    const auto pocket = from.find("pocket_toward"), slide = from.find("slides_toward");
    if (pocket && slide) {
      failAt("value", slide->place(), "a door has either \"pocket_toward\" or \"slides_toward\", not both.");
    }
    if (pocket || slide) out.toward = wordAt(pocket ? *pocket : *slide, kHands);
    out.leaf_thickness = optionalLength(from, "thickness");
    out.stop = optionalLength(from, "stop");
    out.closer = optionalFlag(from, "closer");
    out.latch = optionalFlag(from, "latch");
  }

  Placement placement(JsonObject& from) {
    if (from.has("at")) {
      for (const std::string key : {"wall", "along", "gap"}) {
        if (from.has(key)) {
          failAt("value", pointerTo(from.place(), key),
                 "an element that stands free (\"at\") cannot also have \"" + key + "\".");
        }
      }
      Standing standing{from.need("at").point(unit_), {}};
      if (const auto turn = from.find("turn")) standing.turn = turn->angle();
      return standing;
    }
    if (!from.has("wall")) from.need("at");
    if (from.has("turn")) {
      failAt("value", pointerTo(from.place(), "turn"), "an element on a wall cannot have \"turn\".");
    }
    OnWall on{neededId(from, "wall"), neededLength(from, "along"), {}};
    if (const auto gap = from.find("gap")) on.gap = gap->length(unit_);
    return on;
  }

  Fixture fixture(const JsonValue& value) {
    JsonObject from(value);
    Fixture out;
    out.id = neededId(from, "id");
    out.kind = wordAt(from.need("kind"), kFixtureKinds);
    if (const auto name = from.find("name")) out.name = name->text();
    out.placement = placement(from);
    out.width = neededLength(from, "width");
    out.depth = neededLength(from, "depth");
    out.height = optionalLength(from, "height");
    if (const auto status = from.find("status")) out.status = wordAt(*status, kStatuses);
    if (const auto basins = from.find("basins")) out.basins = static_cast<int>(basins->whole());
    if (const auto knees = from.find("knee_space")) {
      JsonObject under(*knees);
      out.knee_space = KneeSpace{neededLength(under, "height"), neededLength(under, "depth"),
                                 optionalLength(under, "toe"), {}};
      out.knee_space->extra = under.rest();
    }
    out.bowl_width = optionalLength(from, "bowl_width");
    out.tank_width = optionalLength(from, "tank_width");
    out.tank_depth = optionalLength(from, "tank_depth");
    out.curb = optionalLength(from, "curb");
    each(from, "glass", out.glass, &PlanReader::pane);
    out.facts = facts(from, FactOn::fixture, infoOf(out.kind).key);
    out.extra = from.rest();
    return out;
  }

  Pane pane(const JsonValue& value) {
    JsonObject from(value);
    Pane out;
    out.side = wordAt(from.need("side"), kSides);
    out.height = optionalLength(from, "height");
    out.door = optionalLength(from, "door");
    if (const auto swing = from.find("swing")) out.door_swing = wordAt(*swing, kSwings);
    if (const auto hinge = from.find("hinge")) out.hinge = wordAt(*hinge, kHands);
    out.extra = from.rest();
    return out;
  }

  WallItem wallItem(const JsonValue& value) {
    JsonObject from(value);
    WallItem out;
    out.id = neededId(from, "id");
    out.kind = from.need("kind").text();
    out.wall = neededId(from, "wall");
    out.along = neededLength(from, "along");
    out.bottom = neededLength(from, "bottom");
    out.width = neededLength(from, "width");
    out.height = neededLength(from, "height");
    if (const auto name = from.find("name")) out.name = name->text();
    out.depth = optionalLength(from, "depth");
    if (const auto shower = from.find("shower")) out.shower = {shower->text()};
    if (const auto person = from.find("for")) out.person = person->text();
    if (const auto status = from.find("status")) out.status = wordAt(*status, kStatuses);
    out.facts = facts(from, FactOn::wallItem, out.kind);
    out.extra = from.rest();
    return out;
  }

  CeilingItem ceilingItem(const JsonValue& value) {
    JsonObject from(value);
    CeilingItem out;
    out.id = neededId(from, "id");
    out.kind = from.need("kind").text();
    out.at = from.need("at").point(unit_);
    if (const auto name = from.find("name")) out.name = name->text();
    out.width = optionalLength(from, "width");
    out.depth = optionalLength(from, "depth");
    out.facts = facts(from, FactOn::ceilingItem, out.kind);
    out.extra = from.rest();
    return out;
  }

  Unit unit_ = Unit::inches;
};

}  // namespace

Result<Plan> readPlan(std::string_view text) {
  const Result<JsonNode> tree = parseJson(text);
  if (!tree) return tree.error();
  try {
    Plan plan = PlanReader().read(*tree);
    if (auto broken = integrity(plan)) {
      broken->message = "at " + (broken->place.empty() ? "the file" : broken->place) + ": " + broken->message;
      return *broken;
    }
    return plan;
  } catch (const ReadFailure& failure) {
    return failure.error;
  }
}

}  // namespace elbowroom

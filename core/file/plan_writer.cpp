#include "core/file/decimal.h"
#include "core/file/json_tree.h"
#include "core/file/plan_file.h"
#include "core/file/words.h"
#include "core/plan/catalogue.h"

namespace elbowroom {
namespace {

// One JSON object on one line: {"a": 1, "b": [2,3]}.
class Line {
 public:
  explicit Line(Unit unit) : unit_(unit) {}

  Line& raw(std::string_view key, const std::string& json) {
    if (!body_.empty()) body_ += ", ";
    body_ += quotedJson(key) + ": " + json;
    return *this;
  }
  Line& word(std::string_view key, std::string_view text) { return raw(key, quotedJson(text)); }
  Line& flag(std::string_view key, bool value) { return raw(key, value ? "true" : "false"); }
  Line& size(std::string_view key, Length value) { return raw(key, number(value)); }
  Line& size(std::string_view key, const std::optional<Length>& value) {
    return value ? size(key, *value) : *this;
  }
  Line& angle(std::string_view key, Angle value) {
    return raw(key, decimalText(value.microdegrees(), kDegreeInMicrodegrees));
  }
  Line& point(std::string_view key, Point p) { return raw(key, "[" + number(p.x) + "," + number(p.y) + "]"); }
  Line& optionalWord(std::string_view key, const std::string& text) { return text.empty() ? *this : word(key, text); }
  Line& amount(std::string_view key, Amount value) { return raw(key, decimalText(value.thousandths, kThousandths)); }
  // In the catalogue's order.
  Line& facts(FactOn on, const Facts& stated) {
    for (const FactInfo& info : allFacts()) {
      if (info.on != on) continue;
      const auto it = stated.find(std::string(info.key));
      if (it == stated.end()) continue;
      if (const bool* yes = std::get_if<bool>(&it->second)) flag(info.key, *yes);
      if (const auto* length = std::get_if<Length>(&it->second)) size(info.key, *length);
      if (const auto* figure = std::get_if<Amount>(&it->second)) amount(info.key, *figure);
      if (const auto* text = std::get_if<std::string>(&it->second)) word(info.key, *text);
    }
    return *this;
  }
  Line& extra(const Extra& rest) {
    for (const auto& [key, json] : rest) raw(key, json);
    return *this;
  }
  std::string object() const { return "{" + body_ + "}"; }
  const std::string& members() const { return body_; }

 private:
  std::string number(Length value) const {
    return decimalText(value.nm(), unit_ == Unit::inches ? kInchInNanometres : kMillimetreInNanometres);
  }

  Unit unit_;
  std::string body_;
};

std::string wallLine(const Wall& wall, Unit unit) {
  Line line(unit);
  line.word("id", wall.id.text).point("from", wall.from).size("thickness", wall.thickness);
  if (wall.exterior) line.flag("exterior", true);
  if (wall.plumbing) line.flag("plumbing", true);
  if (wall.studs) {
    Line studs(unit);
    studs.size("first", wall.studs->first).size("spacing", wall.studs->spacing).extra(wall.studs->extra);
    line.raw("studs", studs.object());
  }
  return line.facts(FactOn::wall, wall.facts).extra(wall.extra).object();
}

// What a door remembers from another action is written too: trying a pocket door must not lose the hinge side.
void addLeaf(Line& line, const Opening& opening) {
  const bool door = opening.kind == OpeningKind::door;
  const DoorAction action = opening.action;
  if (door || action != DoorAction::hinged) line.word("action", keyOf(action));
  const bool folds = door && action == DoorAction::bifold, swings = door && action == DoorAction::hinged;
  if (swings || folds || opening.hinge != Hand::right) line.word("hinge", keyOf(opening.hinge));
  const bool has_swing = swings || folds || (door && action == DoorAction::doubleLeaf);
  if (has_swing || opening.swing != Swing::in) line.word("swing", keyOf(opening.swing));
  if (opening.toward) {
    line.word(action == DoorAction::surfaceSliding ? "slides_toward" : "pocket_toward", keyOf(*opening.toward));
  }
  line.size("thickness", opening.leaf_thickness).size("stop", opening.stop);
  if (opening.closer) line.flag("closer", *opening.closer);
  if (opening.latch) line.flag("latch", *opening.latch);
}

std::string openingLine(const Opening& opening, Unit unit) {
  Line line(unit);
  line.word("id", opening.id.text).word("kind", keyOf(opening.kind)).word("wall", opening.wall.text);
  line.size("along", opening.along).size("width", opening.width).size("height", opening.height);
  line.size("sill", opening.sill);
  addLeaf(line, opening);
  return line.facts(FactOn::opening, opening.facts).extra(opening.extra).object();
}

std::string paneLine(const Pane& pane, Unit unit) {
  Line line(unit);
  line.word("side", keyOf(pane.side)).size("height", pane.height).size("door", pane.door);
  if (pane.door_swing) line.word("swing", keyOf(*pane.door_swing));
  if (pane.hinge) line.word("hinge", keyOf(*pane.hinge));
  return line.extra(pane.extra).object();
}

std::string fixtureLine(const Fixture& fixture, Unit unit) {
  Line line(unit);
  line.word("id", fixture.id.text).word("kind", infoOf(fixture.kind).key);
  if (!fixture.name.empty()) line.word("name", fixture.name);
  if (const auto* on = std::get_if<OnWall>(&fixture.placement)) {
    line.word("wall", on->wall.text).size("along", on->along);
    if (on->gap != Length{}) line.size("gap", on->gap);
  } else {
    const auto& standing = std::get<Standing>(fixture.placement);
    line.point("at", standing.at).angle("turn", standing.turn);
  }
  line.size("width", fixture.width).size("depth", fixture.depth).size("height", fixture.height);
  if (fixture.status != Status::fresh) line.word("status", keyOf(fixture.status));
  if (fixture.basins) line.raw("basins", std::to_string(*fixture.basins));
  if (fixture.knee_space) {
    Line knees(unit);
    knees.size("height", fixture.knee_space->height).size("depth", fixture.knee_space->depth);
    line.raw("knee_space", knees.size("toe", fixture.knee_space->toe).extra(fixture.knee_space->extra).object());
  }
  line.size("bowl_width", fixture.bowl_width).size("tank_width", fixture.tank_width);
  line.size("tank_depth", fixture.tank_depth).size("curb", fixture.curb);
  if (!fixture.glass.empty()) {
    std::string panes;
    for (const Pane& pane : fixture.glass) panes += (panes.empty() ? "" : ", ") + paneLine(pane, unit);
    line.raw("glass", "[" + panes + "]");
  }
  return line.facts(FactOn::fixture, fixture.facts).extra(fixture.extra).object();
}

std::string wallItemLine(const WallItem& item, Unit unit) {
  Line line(unit);
  line.word("id", item.id.text).word("kind", item.kind).word("wall", item.wall.text);
  line.size("along", item.along).size("bottom", item.bottom);
  line.size("width", item.width).size("height", item.height).size("depth", item.depth);
  line.optionalWord("name", item.name).optionalWord("shower", item.shower.text).optionalWord("for", item.person);
  if (item.status != Status::fresh) line.word("status", keyOf(item.status));
  return line.facts(FactOn::wallItem, item.facts).extra(item.extra).object();
}

std::string ceilingItemLine(const CeilingItem& item, Unit unit) {
  Line line(unit);
  line.word("id", item.id.text).word("kind", item.kind).point("at", item.at).optionalWord("name", item.name);
  line.size("width", item.width).size("depth", item.depth);
  return line.facts(FactOn::ceilingItem, item.facts).extra(item.extra).object();
}

std::string acknowledgedLine(const Acknowledged& finding, Unit unit) {
  std::string subjects;
  for (const ElementId& id : finding.subjects) subjects += (subjects.empty() ? "" : ", ") + quotedJson(id.text);
  Line line(unit);
  line.word("book", finding.book).word("rule", finding.rule).raw("subjects", "[" + subjects + "]");
  return line.word("reason", finding.reason).extra(finding.extra).object();
}

std::string ruleChangeLine(const RuleChange& change, Unit unit) {
  Line line(unit);
  line.word("book", change.book).word("rule", change.rule);
  if (change.off) line.flag("off", true);
  if (change.limit) {
    if (const auto* length = std::get_if<Length>(&*change.limit)) line.size("limit", *length);
    if (const auto* area = std::get_if<Area>(&*change.limit))
      line.amount("limit_sq_in", {area->squareMicrometres() / 645'160});
    if (const auto* angle = std::get_if<Angle>(&*change.limit)) line.angle("limit_degrees", *angle);
    if (const auto* count = std::get_if<Count>(&*change.limit)) line.raw("limit_count", std::to_string(count->value));
    if (const auto* amount = std::get_if<Amount>(&*change.limit)) line.amount("limit_amount", *amount);
  }
  return line.word("reason", change.reason).extra(change.extra).object();
}

std::string wishesObject(const std::map<std::string, Wish>& wishes, Unit unit) {
  Line all(unit);
  for (const auto& [key, wish] : wishes) {
    Line one(unit);
    one.flag("in", wish.in).optionalWord("reason", wish.reason);
    all.raw(key, one.extra(wish.extra).object());
  }
  return all.object();
}

std::string personLine(const Person& person, Unit unit) {
  Line line(unit);
  line.word("name", person.name).size("stature", person.stature);
  if (person.child) line.flag("child", true);
  if (person.chair) {
    Line chair(unit);
    chair.size("width", person.chair->width).size("length", person.chair->length);
    line.raw("chair", chair.extra(person.chair->extra).object());
  }
  return line.extra(person.extra).object();
}

// "key": [ one,
//          another ]   with the elements under one another.
template <typename T>
std::string block(const std::string& lead, const std::vector<T>& elements, Unit unit,
                  std::string (*line)(const T&, Unit)) {
  if (elements.empty()) return lead + "[]";
  std::string out = lead + "[ ";
  const std::string indent(lead.size() + 2, ' ');
  for (std::size_t i = 0; i < elements.size(); ++i) {
    if (i > 0) out += ",\n" + indent;
    out += line(elements[i], unit);
  }
  return out + " ]";
}

std::string extraLines(const Extra& rest, const std::string& indent) {
  std::string out;
  for (const auto& [key, json] : rest) out += ",\n" + indent + quotedJson(key) + ": " + json;
  return out;
}

std::string optionBlock(const Option& option, Unit unit) {
  const Room& room = option.room;
  std::string out = "  {\"name\": " + quotedJson(option.name) + ",\n   \"room\": {";
  if (room.ceiling != Ceiling{}) {
    Line ceiling(unit);
    ceiling.size("height", room.ceiling.height);
    std::string slopes;
    for (const CeilingSlope& slope : room.ceiling.slopes) {
      Line line(unit);
      line.word("wall", slope.wall.text).size("low", slope.low).size("run", slope.run).extra(slope.extra);
      slopes += (slopes.empty() ? "" : ", ") + line.object();
    }
    if (!slopes.empty()) ceiling.raw("slopes", "[" + slopes + "]");
    ceiling.extra(room.ceiling.extra);
    out += "\"ceiling\": " + ceiling.object() + ",\n     ";
  }
  // The list's lead counts from the line's start so that the walls stand under one another.
  const std::string walls = block("     \"walls\": ", room.walls, unit, wallLine);
  out += walls.substr(5);
  const std::string stated = Line(unit).facts(FactOn::room, room.facts).members();
  if (!stated.empty()) out += ",\n     " + stated;
  out += extraLines(room.extra, "     ") + "}";
  out += ",\n" + block("   \"openings\": ", option.openings, unit, openingLine);
  out += ",\n" + block("   \"fixtures\": ", option.fixtures, unit, fixtureLine);
  if (!option.on_walls.empty()) out += ",\n" + block("   \"on_walls\": ", option.on_walls, unit, wallItemLine);
  if (!option.on_ceiling.empty()) {
    out += ",\n" + block("   \"on_ceiling\": ", option.on_ceiling, unit, ceilingItemLine);
  }
  if (!option.acknowledged.empty()) {
    out += ",\n" + block("   \"acknowledged\": ", option.acknowledged, unit, acknowledgedLine);
  }
  if (!option.wishes.empty()) out += ",\n   \"wishes\": " + wishesObject(option.wishes, unit);
  return out + extraLines(option.extra, "   ") + "}";
}

}  // namespace

std::string writePlan(const Plan& plan) {
  const Unit unit = plan.unit;
  Line head(unit);
  head.word("format", kFormatName).raw("version", std::to_string(kFormatVersion)).word("unit", keyOf(unit));
  head.word("title", plan.title);
  std::string out = "{\n " + head.members();
  Line site(unit);
  if (plan.north) site.angle("north", *plan.north);
  site.size("site_tolerance", plan.site_tolerance);
  if (!site.members().empty()) out += ",\n " + site.members();
  std::string books;
  for (const std::string& book : plan.books) books += (books.empty() ? "" : ", ") + quotedJson(book);
  out += ",\n \"books\": [" + books + "]";
  if (!plan.book_settings.empty()) {
    Line settings(unit);
    for (const auto& [book, values] : plan.book_settings) {
      Line of_book(unit);
      for (const auto& [key, value] : values) of_book.word(key, value);
      settings.raw(book, of_book.object());
    }
    out += ",\n \"book_settings\": " + settings.object();
  }
  if (!plan.rule_changes.empty()) out += ",\n" + block(" \"rule_changes\": ", plan.rule_changes, unit, ruleChangeLine);
  out += ",\n" + block(" \"people\": ", plan.people, unit, personLine);
  out += ",\n \"options\": [";
  for (std::size_t i = 0; i < plan.options.size(); ++i) {
    out += (i > 0 ? ",\n" : "\n") + optionBlock(plan.options[i], unit);
  }
  return out + " ]" + extraLines(plan.extra, " ") + "\n}\n";
}

}  // namespace elbowroom

#include "core/file/report_json.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/file/report_rules.h"
#include "core/plan/catalogue.h"
#include "core/rules/added_book.h"
#include "core/rules/checks/named.h"
#include "core/rules/text_rules.h"

namespace elbowroom {

namespace {

using Json = nlohmann::ordered_json;

// Six decimals of an inch are finer than anything measured, and 0.1 mm no longer prints as 17 digits.
double decimals(double value) {
  const double rounded = std::round(value * 1e6) / 1e6;
  return rounded == 0 ? 0.0 : rounded;
}

Json inches(Length l) { return decimals(l.inches()); }
Json squareFeet(Area a) { return decimals(a.squareFeet()); }
Json degrees(Angle a) { return decimals(a.degrees()); }
Json pointOf(Point p) { return Json::array({inches(p.x), inches(p.y)}); }
Json idOf(const std::optional<ElementId>& id) { return id ? Json(id->text) : Json(); }

// "<stem>_in" is always there, null when the figure is none or no length; other figures have their own key.
void putQuantity(Json& into, const std::string& stem, const std::optional<Quantity>& q) {
  into[stem + "_in"] = nullptr;
  if (!q) return;
  if (const auto* l = std::get_if<Length>(&*q)) into[stem + "_in"] = inches(*l);
  if (const auto* a = std::get_if<Area>(&*q)) into[stem + "_sqin"] = decimals(a->squareInches());
  if (const auto* a = std::get_if<Angle>(&*q)) into[stem + "_deg"] = degrees(*a);
  if (const auto* n = std::get_if<Count>(&*q)) into[stem + "_count"] = n->value;
  if (const auto* a = std::get_if<Amount>(&*q)) into[stem + "_amount"] = a->value();
  if (const auto* yes = std::get_if<bool>(&*q)) into[stem + "_ok"] = *yes;
}

std::string_view keyOf(Place::Kind kind) {
  switch (kind) {
    case Place::Kind::point:
      return "point";
    case Place::Kind::line:
      return "line";
    case Place::Kind::zone:
      return "zone";
  }
  return {};
}

Json findingOf(const Finding& f, const Option& option, Unit unit) {
  const FindingText text = textOf(f, option, unit);
  Json j;
  j["rule"] = f.rule;
  j["book"] = f.book;
  j["level"] = elbowroom::keyOf(f.level);
  j["outcome"] = elbowroom::keyOf(f.outcome);
  j["subjects"] = Json::array();
  for (const ElementId& id : f.subjects) j["subjects"].push_back(id.text);
  putQuantity(j, "measured", f.measured);
  putQuantity(j, "limit", f.limit);
  if (f.limit_high) putQuantity(j, "limit_high", f.limit_high);
  j["compare"] = elbowroom::keyOf(f.compare);
  putQuantity(j, "short_by", f.short_by);
  j["places"] = Json::array();
  j["shapes"] = Json::array();
  for (const Place& place : f.places) {
    Json points = Json::array();
    for (const Point& p : place.points) points.push_back(pointOf(p));
    for (const Json& p : points) j["places"].push_back(p);
    j["shapes"].push_back({{"kind", keyOf(place.kind)}, {"points", points}});
  }
  j["text"] = text.headline;
  j["detail"] = text.detail;
  j["why"] = text.why;
  j["source"] = text.source;
  j["grade"] = gradeOf(f);
  j["variant"] = text.edition.empty() ? Json() : Json(text.edition);
  j["changed"] = f.changed ? Json(f.changed_reason) : Json();
  j["acknowledged"] = f.acknowledged.empty() ? Json() : Json(f.acknowledged);
  return j;
}

Json doorOf(const DoorFigures& door) {
  Json j;
  j["id"] = door.id.text;
  j["action"] = elbowroom::keyOf(door.action);
  j["clear_opening_in"] = inches(door.clear_opening);
  j["opens_deg"] = door.sweep > Area{} ? degrees(door.opens) : Json();  // only leaves turn
  j["hits"] = idOf(door.hits);
  j["hits_at"] = door.hits_at ? pointOf(*door.hits_at) : Json();
  j["sweep_sqft"] = squareFeet(door.sweep);
  j["square_sqft"] = squareFeet(door.square);
  j["floor_taken_sqft"] = squareFeet(door.floor_taken);
  j["wall_needed_in"] = inches(door.wall_needed);
  return j;
}

Json doorsOf(const Figures& figures, const Option& option, Unit unit) {
  Json doors = Json::array();
  for (const DoorFigures& door : figures.doors) {
    Json j = doorOf(door);
    j["troubles"] = Json::array();
    for (const Trouble& trouble : door.troubles) {
      j["troubles"].push_back({{"with", trouble.other.text},
                               {"short_by_in", inches(trouble.short_by)},
                               {"at", pointOf(trouble.at)},
                               {"text", troubleText(trouble, option, unit)}});
    }
    doors.push_back(j);
  }
  return doors;
}

Json turningOf(const TurningFigures& turning) {
  Json j;
  j["diameter_in"] = inches(2 * turning.with_knees.radius);
  j["center"] = pointOf(turning.with_knees.center);
  j["knee_space_used"] = turning.knee_space_used;
  j["bare_floor_diameter_in"] = inches(2 * turning.largest.radius);
  j["bare_floor_center"] = pointOf(turning.largest.center);
  return j;
}

Json countsOf(const Report& report) {
  const Tally tally = tallyOf(report);
  Json j;
  for (const Level level : {Level::required, Level::advised, Level::craft})
    j["short"][std::string(elbowroom::keyOf(level))] = tally.shortOf(level);
  j["unknown"] = tally.unknown;
  j["questions"] = tally.questions;
  j["accepted"] = tally.accepted;
  j["close"] = tally.close;
  j["clear"] = tally.clear;
  const WishCounts wishes = wishCounts(report);
  j["wishes"] = {{"in_plan", wishes.in_plan},
                 {"wanted", wishes.wanted},
                 {"left_out", wishes.left_out},
                 {"undecided", wishes.undecided}};
  return j;
}

Json settingOf(const Setting& setting) {
  Json j{{"key", setting.key}, {"title", setting.title}};
  j["values"] = Json::array();
  for (const SettingValue& value : setting.values)
    j["values"].push_back({{"value", value.value}, {"title", value.title}});
  return j;
}

Json variantOf(const Rule& rule, const Variant& variant) {
  Json j{{"setting", variant.setting}, {"value", variant.value}, {"off", variant.off}};
  j["limit"] = variantWords(rule, variant, Unit::inches);
  if (variant.limit) putQuantity(j, "limit", variant.limit);
  if (variant.limit_high) putQuantity(j, "limit_high", variant.limit_high);
  if (variant.source) {
    j["source"] = sourceWords(*variant.source);
    j["read_at"] = variant.source->read_at;
  }
  if (variant.grade) j["grade"] = elbowroom::keyOf(*variant.grade);
  return j;
}

Json ruleOf(const Rule& rule) {
  const FindingText text = textOfRule(rule, Unit::inches);
  Json r;
  r["id"] = rule.id;
  r["book"] = rule.book;
  r["title"] = rule.title;
  r["level"] = elbowroom::keyOf(rule.level);
  if (const checks::NamedMeasure* named = checks::nameOf(rule.measure)) r["measure"] = named->name;
  r["compare"] = elbowroom::keyOf(rule.compare);
  r["limit"] = limitWords(rule, Unit::inches);
  putQuantity(r, "limit", hasOwnLimit(rule) ? std::optional(rule.limit) : std::nullopt);
  if (rule.limit_high) putQuantity(r, "limit_high", rule.limit_high);
  r["limit_words"] = rule.limit_words;
  r["unit"] = rule.unit;
  r["sizes_in"] = Json::array();
  for (const Length size : rule.sizes) r["sizes_in"].push_back(inches(size));
  r["source"] = text.source;
  r["read_at"] = rule.source.read_at;
  r["grade"] = elbowroom::keyOf(rule.grade);
  r["grade_words"] = wordsOf(rule.grade);
  r["why"] = rule.why;
  r["variants"] = Json::array();
  for (const Variant& variant : rule.variants) r["variants"].push_back(variantOf(rule, variant));
  return r;
}

// Names come from files and may be no UTF-8.
std::string printed(const Json& j) {
  return j.dump(1, ' ', false, nlohmann::json::error_handler_t::replace) + "\n";
}

}  // namespace

std::string checkJson(const Layout& layout, const Report& report, const std::string& plan_name) {
  Json j;
  j["plan"] = plan_name;
  j["title"] = layout.settings.title;
  j["option"] = layout.option.name;
  j["counts"] = countsOf(report);
  j["findings"] = Json::array();
  for (const Finding& f : report.findings)
    j["findings"].push_back(findingOf(f, layout.option, layout.settings.unit));
  j["rule_changes"] = changeLines(layout.settings);
  j["caution"] = cautionLines();
  return printed(j);
}

std::string measureJson(const Layout& layout, const Figures& figures, const std::vector<RouteFigure>& routes,
                        const std::optional<Placed>& t) {
  Json j;
  j["title"] = layout.settings.title;
  j["option"] = layout.option.name;
  j["room_area_sqft"] = squareFeet(figures.room_area);
  j["free_floor_sqft"] = squareFeet(figures.free_floor);
  j["turning_circle"] = turningOf(figures.turning);
  j["t_turn"]["fits"] = t.has_value();
  j["t_turn"]["center"] = t ? pointOf(t->center) : Json();
  j["t_turn"]["turn_deg"] = t ? degrees(t->turn) : Json();
  j["doors"] = doorsOf(figures, layout.option, layout.settings.unit);
  j["routes"] = Json::array();
  for (const RouteFigure& r : routes) {
    Json route;
    route["to"] = r.to.text;
    route["reachable"] = r.route.reachable;
    route["width_in"] = r.route.reachable ? inches(r.route.width) : Json();
    route["narrowest_at"] = r.route.reachable ? pointOf(r.route.narrowest) : Json();
    j["routes"].push_back(route);
  }
  j["caution"] = cautionLines();
  return printed(j);
}

std::string compareJson(const Plan& plan, const BookChoice& choice) {
  Json j;
  j["title"] = plan.title;
  j["books"] = choice.books;
  j["options"] = Json::array();
  for (std::size_t i = 0; i < plan.options.size(); ++i) {
    const Layout layout = deriveLayout(plan, i);
    const Report report = check(layout, choice);
    Json o;
    o["option"] = layout.option.name;
    o["counts"] = countsOf(report);
    o["room_area_sqft"] = squareFeet(report.figures.room_area);
    o["free_floor_sqft"] = squareFeet(report.figures.free_floor);
    o["turning_circle"] = turningOf(report.figures.turning);
    o["doors"] = doorsOf(report.figures, layout.option, plan.unit);
    o["findings"] = Json::array();
    for (const Finding& f : report.findings) o["findings"].push_back(findingOf(f, layout.option, plan.unit));
    j["options"].push_back(o);
  }
  j["caution"] = cautionLines();
  return printed(j);
}

std::string booksJson(const std::vector<std::string>& only) {
  const auto wanted = [&](std::string_view id) {
    return only.empty() || std::find(only.begin(), only.end(), id) != only.end();
  };
  Json j;
  j["books"] = Json::array();
  for (const Book& book : allBooks()) {
    if (!wanted(book.id)) continue;
    Json b{{"id", book.id}, {"title", book.title}, {"authority", book.authority}, {"note", book.note}};
    b["added"] = isAdded(book.id);
    b["settings"] = Json::array();
    for (const Setting& setting : book.settings) b["settings"].push_back(settingOf(setting));
    j["books"].push_back(b);
  }
  j["rules"] = Json::array();
  for (const Rule& rule : allRules())
    if (wanted(rule.book)) j["rules"].push_back(ruleOf(rule));
  j["measures"] = Json::array();
  for (const checks::NamedMeasure& named : checks::namedMeasures()) {
    j["measures"].push_back({{"name", named.name},
                             {"gives", wordsOf(named.gives)},
                             {"unit", named.unit},
                             {"sizes", named.sizes}});
  }
  j["caution"] = cautionLines();
  return printed(j);
}

}  // namespace elbowroom

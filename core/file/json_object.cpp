#include "core/file/json_object.h"

#include <algorithm>

namespace elbowroom {
namespace {

constexpr std::int64_t kFarthest = 100'000'000'000;           // 100 m in nanometres
constexpr std::int64_t kMostTurned = 360'000LL * 1'000'000;  // in millionths of a degree

const JsonNode* memberOf(const JsonNode& object, std::string_view key) {
  const auto it = std::find_if(object.members.begin(), object.members.end(),
                               [&](const auto& member) { return member.first == key; });
  return it == object.members.end() ? nullptr : &it->second;
}

}  // namespace

void failAt(std::string code, const std::string& place, const std::string& reason) {
  const std::string where = place.empty() ? "the file" : place;
  throw ReadFailure{{std::move(code), "at " + where + ": " + reason, place}};
}

void JsonValue::expect(JsonNode::Kind kind) const {
  if (node_->kind == kind) return;
  failAt("type", place_,
         "this must be " + std::string(wordsOf(kind)) + ", not " + std::string(wordsOf(node_->kind)) + ".");
}

std::string JsonValue::text() const {
  expect(JsonNode::Kind::text);
  return node_->text;
}

bool JsonValue::truth() const {
  expect(JsonNode::Kind::boolean);
  return node_->truth;
}

std::int64_t JsonValue::whole() const {
  expect(JsonNode::Kind::number);
  if (!isWhole(node_->text)) failAt("type", place_, "this must be a whole number, not " + node_->text + ".");
  const auto value = fineUnitsOf(node_->text, kPlain);
  if (!value || *value > 1'000'000'000 || *value < -1'000'000'000) {
    failAt("number", place_, "the number " + node_->text + " is too large.");
  }
  return *value;
}

std::vector<JsonValue> JsonValue::items() const {
  expect(JsonNode::Kind::list);
  std::vector<JsonValue> out;
  out.reserve(node_->items.size());
  for (std::size_t i = 0; i < node_->items.size(); ++i) out.emplace_back(node_->items[i], pointerTo(place_, i));
  return out;
}

std::vector<std::pair<std::string, JsonValue>> JsonValue::members() const {
  expect(JsonNode::Kind::object);
  std::vector<std::pair<std::string, JsonValue>> out;
  for (const auto& [key, value] : node_->members) out.emplace_back(key, JsonValue(value, pointerTo(place_, key)));
  return out;
}

Amount JsonValue::amount() const {
  expect(JsonNode::Kind::number);
  const auto thousandths = fineUnitsOf(node_->text, kThousandths);
  if (!thousandths || *thousandths > 1'000'000'000 || *thousandths < -1'000'000'000) {
    failAt("number", place_, "the number " + node_->text + " is too large.");
  }
  return {*thousandths};
}

Length JsonValue::length(Unit unit) const {
  expect(JsonNode::Kind::number);
  const auto nm = fineUnitsOf(node_->text, unit == Unit::inches ? kInchInNanometres : kMillimetreInNanometres);
  if (!nm || *nm > kFarthest || *nm < -kFarthest) {
    failAt("number", place_, "the length " + node_->text + " lies beyond 100 metres.");
  }
  return Length::nanometres(*nm);
}

Angle JsonValue::angle() const {
  expect(JsonNode::Kind::number);
  const auto udeg = fineUnitsOf(node_->text, kDegreeInMicrodegrees);
  if (!udeg || *udeg > kMostTurned || *udeg < -kMostTurned) {
    failAt("number", place_, "the angle " + node_->text + " is too large.");
  }
  return Angle::microdegrees(*udeg);
}

Point JsonValue::point(Unit unit) const {
  const std::vector<JsonValue> xy = items();
  if (xy.size() != 2) {
    failAt("type", place_, "a place is two numbers [x, y], but here stand " + std::to_string(xy.size()) + ".");
  }
  return {xy[0].length(unit), xy[1].length(unit)};
}

JsonObject::JsonObject(const JsonValue& value) : node_(&value.node()), place_(value.place()) {
  if (node_->kind != JsonNode::Kind::object) {
    failAt("type", place_, "this must be an object, not " + std::string(wordsOf(node_->kind)) + ".");
  }
}

bool JsonObject::has(std::string_view key) const { return memberOf(*node_, key) != nullptr; }

std::optional<JsonValue> JsonObject::find(const std::string& key) {
  asked_.insert(key);
  const JsonNode* member = memberOf(*node_, key);
  if (!member) return std::nullopt;
  return JsonValue(*member, pointerTo(place_, key));
}

JsonValue JsonObject::need(const std::string& key) {
  if (auto value = find(key)) return *value;
  const JsonNode* id = memberOf(*node_, "id");
  const bool named = id && id->kind == JsonNode::Kind::text;
  failAt("missing-key", place_,
         "the key \"" + key + "\" is missing" + (named ? " (id " + quotedJson(id->text) + ")." : "."));
}

Extra JsonObject::rest() const {
  Extra out;
  for (const auto& [key, value] : node_->members) {
    if (!asked_.count(key)) out.emplace(key, compactJson(value));
  }
  return out;
}

}  // namespace elbowroom

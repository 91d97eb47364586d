// Reads the keys of one JSON object, says where a wrong one stands, and gives back those nobody asked for.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/file/decimal.h"
#include "core/file/json_tree.h"
#include "core/plan/plan.h"

namespace elbowroom {

// Thrown by the readers below and caught in readPlan, so that half-read plans cannot escape.
struct ReadFailure {
  Error error;
};
[[noreturn]] void failAt(std::string code, const std::string& place, const std::string& reason);

// A value with its place in the file.
class JsonValue {
 public:
  JsonValue(const JsonNode& node, std::string place) : node_(&node), place_(std::move(place)) {}
  const std::string& place() const { return place_; }
  const JsonNode& node() const { return *node_; }
  // The value as such a type; anything else fails with code "type".
  std::string text() const;
  bool truth() const;
  std::int64_t whole() const;
  std::vector<JsonValue> items() const;
  // The members of an object whose keys are the person's, in the order of the file.
  std::vector<std::pair<std::string, JsonValue>> members() const;
  Amount amount() const;
  // Fails with code "number" outside +-100 m, or +-360,000 degrees.
  Length length(Unit unit) const;
  Angle angle() const;
  Point point(Unit unit) const;

 private:
  void expect(JsonNode::Kind kind) const;
  const JsonNode* node_;
  std::string place_;
};

class JsonObject {
 public:
  explicit JsonObject(const JsonValue& value);  // fails with code "type" when it is no object
  const std::string& place() const { return place_; }
  bool has(std::string_view key) const;
  std::optional<JsonValue> find(const std::string& key);
  JsonValue need(const std::string& key);  // fails with code "missing-key"
  // Every key that neither find nor need has asked for.
  Extra rest() const;

 private:
  const JsonNode* node_;
  std::string place_;
  std::set<std::string> asked_;
};

}  // namespace elbowroom

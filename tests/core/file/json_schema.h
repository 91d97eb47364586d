// As much of JSON Schema 2020-12 as resources/plan.schema.json uses. A keyword it does not know is an error,
// so that nothing in the schema is silently ignored.
#pragma once

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <stdexcept>
#include <string>
#include <vector>

namespace elbowroom::testing {

using Json = nlohmann::ordered_json;

class JsonSchema {
 public:
  // strict: a key without a description in the schema is an error although the schema allows it.
  JsonSchema(const Json& root, bool strict) : root_(root), strict_(strict) {}

  // "place: reason" of each violation; empty when the document is valid.
  std::vector<std::string> errorsOf(const Json& document) const {
    std::vector<std::string> errors;
    check(root_, document, "", errors);
    return errors;
  }

 private:
  using Errors = std::vector<std::string>;

  bool holds(const Json& schema, const Json& value) const {
    Errors errors;
    // A branch sees only part of an object's keys, so strictness is a matter of the whole.
    JsonSchema(root_, false).check(schema, value, "", errors);
    return errors.empty();
  }

  void check(const Json& schema, const Json& value, const std::string& place, Errors& errors) const {
    const auto fail = [&](const std::string& reason) { errors.push_back(place + ": " + reason); };
    for (const auto& [word, rule] : schema.items()) {
      if (word == "$schema" || word == "title" || word == "description" || word == "$defs") continue;
      if (word == "$ref") {
        check(root_.at(Json::json_pointer(rule.get<std::string>().substr(1))), value, place, errors);
      } else if (word == "type") {
        if (!isOfType(value, rule.get<std::string>())) fail("is no " + rule.get<std::string>());
      } else if (word == "enum") {
        if (std::find(rule.begin(), rule.end(), value) == rule.end()) fail("is not one of " + rule.dump());
      } else if (word == "anyOf" || word == "oneOf") {
        const auto met =
            std::count_if(rule.begin(), rule.end(), [&](const Json& s) { return holds(s, value); });
        if (met == 0 || (word == "oneOf" && met > 1))
          fail(std::to_string(met) + " branches of " + word + " hold");
      } else if (word == "not") {
        if (holds(rule, value)) fail("holds what it must not: " + rule.dump());
      } else if (!checkNumberOrText(word, rule, value, fail) &&
                 !checkList(word, rule, value, place, errors) &&
                 !checkObject(word, rule, schema, value, place, errors)) {
        throw std::logic_error("the validator does not know " + word);
      }
    }
  }

  static bool isOfType(const Json& value, const std::string& type) {
    if (type == "object") return value.is_object();
    if (type == "array") return value.is_array();
    if (type == "string") return value.is_string();
    if (type == "boolean") return value.is_boolean();
    if (type == "number") return value.is_number();
    if (type == "integer") return value.is_number() && std::floor(value.get<double>()) == value.get<double>();
    throw std::logic_error("the validator does not know the type " + type);
  }

  // The keywords below say nothing about values of another type; they return whether they know the word.
  template <typename Fail>
  static bool checkNumberOrText(const std::string& word, const Json& rule, const Json& value, Fail fail) {
    const bool number = value.is_number(), text = value.is_string();
    if (word == "minimum") {
      if (number && value.get<double>() < rule.get<double>()) fail("is below " + rule.dump());
    } else if (word == "maximum") {
      if (number && value.get<double>() > rule.get<double>()) fail("is above " + rule.dump());
    } else if (word == "exclusiveMinimum") {
      if (number && value.get<double>() <= rule.get<double>()) fail("is not above " + rule.dump());
    } else if (word == "minLength") {
      if (text && value.get<std::string>().size() < rule.get<std::size_t>()) fail("is too short");
    } else if (word == "pattern") {
      if (text && !std::regex_search(value.get<std::string>(), std::regex(rule.get<std::string>())))
        fail("does not match " + rule.dump());
    } else {
      return false;
    }
    return true;
  }

  bool checkList(const std::string& word, const Json& rule, const Json& value, const std::string& place,
                 Errors& errors) const {
    if (word == "items") {
      for (std::size_t i = 0; value.is_array() && i < value.size(); ++i)
        check(rule, value[i], place + "/" + std::to_string(i), errors);
    } else if (word == "minItems") {
      if (value.is_array() && value.size() < rule.get<std::size_t>())
        errors.push_back(place + ": has too few");
    } else if (word == "maxItems") {
      if (value.is_array() && value.size() > rule.get<std::size_t>())
        errors.push_back(place + ": has too many");
    } else {
      return false;
    }
    return true;
  }

  bool checkObject(const std::string& word, const Json& rule, const Json& schema, const Json& value,
                   const std::string& place, Errors& errors) const {
    if (word == "required") {
      for (const Json& key : rule)
        if (value.is_object() && !value.contains(key.get<std::string>()))
          errors.push_back(place + ": has no " + key.dump());
    } else if (word == "properties") {
      for (const auto& [key, below] : rule.items())
        if (value.is_object() && value.contains(key)) check(below, value.at(key), place + "/" + key, errors);
    } else if (word == "additionalProperties" && rule.is_object()) {
      if (!value.is_object()) return true;
      for (const auto& [key, below] : value.items())
        if (!schema.contains("properties") || !schema.at("properties").contains(key))
          check(rule, below, place + "/" + key, errors);
    } else if (word == "additionalProperties") {
      if (!value.is_object()) return true;
      if (rule.is_object()) {
        for (const auto& [key, one] : value.items())
          if (!schema.contains("properties") || !schema.at("properties").contains(key))
            check(rule, one, place + "/" + key, errors);
        return true;
      }
      if (rule.get<bool>() && !strict_) return true;
      for (const auto& [key, unused] : value.items())
        if (!schema.at("properties").contains(key))
          errors.push_back(place + "/" + key + ": is not described");
    } else {
      return false;
    }
    return true;
  }

  const Json& root_;
  bool strict_;
};

}  // namespace elbowroom::testing

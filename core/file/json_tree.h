// A JSON text as a tree that keeps what a plan file needs kept: the order of keys and the text of numbers.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/result.h"

namespace elbowroom {

struct JsonNode {
  enum class Kind { null, boolean, number, text, list, object };
  Kind kind = Kind::null;
  bool truth = false;
  std::string text;              // text: its characters; number: as written in the file
  std::vector<JsonNode> items;   // list
  std::vector<std::pair<std::string, JsonNode>> members;  // object, in file order
};

// Errors: "json" (place line:column; message says what was found), "number" (too large for any use, or NaN and
// the like; line:column), "duplicate-key" (place: JSON pointer). At most 100 levels deep.
Result<JsonNode> parseJson(std::string_view text);
// Without spaces or line breaks.
std::string compactJson(const JsonNode&);
// A string with its quotes and escapes; broken UTF-8 is replaced by U+FFFD.
std::string quotedJson(std::string_view text);
// One step further down a JSON pointer (RFC 6901 escapes).
std::string pointerTo(const std::string& parent, std::string_view key);
std::string pointerTo(const std::string& parent, std::size_t index);
// "a number", "a text", ...
std::string_view wordsOf(JsonNode::Kind);

}  // namespace elbowroom

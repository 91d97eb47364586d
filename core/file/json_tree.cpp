#include "core/file/json_tree.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace elbowroom {
namespace {

using nlohmann::json;

constexpr std::size_t kDeepest = 100;
constexpr int kNumberOverflow = 406;  // nlohmann-json's exception id

struct Position {
  std::size_t line = 1, column = 1;
};

// Columns count characters, not bytes, as editors show them.
Position positionOf(std::string_view text, std::size_t byte) {
  Position at;
  for (std::size_t i = 0; i < std::min(byte, text.size()); ++i) {
    if (text[i] == '\n') {
      ++at.line;
      at.column = 1;
    } else if ((static_cast<unsigned char>(text[i]) & 0xC0) != 0x80) {
      ++at.column;
    }
  }
  return at;
}

class TreeBuilder : public nlohmann::json_sax<json> {
 public:
  explicit TreeBuilder(std::string_view text) : text_(text) {}

  bool null() override { return put({}); }
  bool boolean(bool value) override {
    JsonNode node;
    node.kind = JsonNode::Kind::boolean;
    node.truth = value;
    return put(std::move(node));
  }
  bool number_integer(number_integer_t value) override { return putNumber(std::to_string(value)); }
  bool number_unsigned(number_unsigned_t value) override { return putNumber(std::to_string(value)); }
  bool number_float(number_float_t, const string_t& text) override { return putNumber(text); }
  bool string(string_t& value) override {
    JsonNode node;
    node.kind = JsonNode::Kind::text;
    node.text = std::move(value);
    return put(std::move(node));
  }
  bool binary(binary_t&) override { return false; }
  bool start_object(std::size_t) override { return open(JsonNode::Kind::object); }
  bool start_array(std::size_t) override { return open(JsonNode::Kind::list); }
  bool end_object() override { return close(); }
  bool end_array() override { return close(); }

  bool key(string_t& name) override {
    const auto& members = open_.back()->members;
    if (std::any_of(members.begin(), members.end(), [&](const auto& m) { return m.first == name; })) {
      const std::string place = pointerTo(pointer(), name);
      error = {"duplicate-key", "at " + place + ": the key " + quotedJson(name) + " is given twice.", place};
      return false;
    }
    open_.back()->members.emplace_back(name, JsonNode{});
    return true;
  }

  bool parse_error(std::size_t position, const std::string& token, const json::exception& cause) override {
    const std::string word = wordBefore(position);
    std::size_t start = startOf(token, position);
    if (isNotANumber(word)) start = text_.rfind(word, position);
    const Position at = positionOf(text_, start);
    const std::string place = std::to_string(at.line) + ":" + std::to_string(at.column);
    const std::string where = "line " + std::to_string(at.line) + ", column " + std::to_string(at.column) + ": ";
    if (cause.id == kNumberOverflow) {
      error = {"number", where + "the number " + token + " is too large.", place};
    } else if (isNotANumber(word)) {
      error = {"number", where + "\"" + word + "\" is not a number that a plan can hold.", place};
    } else {
      error = {"json", where + "this is not JSON " + reasonOf(cause.what()) + ".", place};
    }
    return false;
  }

  JsonNode root;
  Error error;

 private:
  // nlohmann's text is "[json.exception...] parse error at line 1, column 2: syntax error while parsing value
  // - unexpected end of input; expected ..."; only the part after " - " means something to a person.
  std::string reasonOf(const std::string& what) const {
    const std::size_t first = text_.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) return "(the file is empty)";
    if (text_[first] != '{' && text_[first] != '[') return "but some other kind of file";
    const auto says = [&](std::string_view words) { return what.find(words) != std::string::npos; };
    if (says("unexpected end of input") || says("missing closing quote"))
      return "(the file ends too early, as if it had been cut off)";
    const std::size_t dash = what.find(" - ");
    std::string reason = dash == std::string::npos ? what : what.substr(dash + 3);
    if (const std::size_t last = reason.find("; last read: "); last != std::string::npos) {
      const std::size_t expected = reason.find("; expected ", last);
      reason = reason.substr(0, last) + (expected == std::string::npos ? "" : reason.substr(expected));
    }
    return "(" + reason + ")";
  }

  // Where the token begins that ends before `position`. The parser has replaced control characters in it, and
  // then the token's last byte must do.
  std::size_t startOf(const std::string& token, std::size_t position) const {
    const std::size_t end = std::min(position, text_.size()), start = end - std::min(end, token.size());
    if (!token.empty() && text_.substr(start, end - start) == token) return start;
    return position > 0 ? position - 1 : 0;
  }

  std::string wordBefore(std::size_t byte) const {
    const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
    std::size_t from = std::min(byte, text_.size()), to = from;
    while (from > 0 && letter(text_[from - 1])) --from;
    while (to < text_.size() && letter(text_[to])) ++to;
    return std::string(text_.substr(from, to - from));
  }
  static bool isNotANumber(std::string word) {
    std::transform(word.begin(), word.end(), word.begin(), [](char c) { return static_cast<char>(c | 0x20); });
    return word == "nan" || word == "infinity" || word == "inf";
  }

  bool putNumber(std::string text) {
    JsonNode node;
    node.kind = JsonNode::Kind::number;
    node.text = std::move(text);
    return put(std::move(node));
  }

  JsonNode& place(JsonNode&& node) {
    if (open_.empty()) return root = std::move(node);
    JsonNode& parent = *open_.back();
    if (parent.kind == JsonNode::Kind::list) return parent.items.emplace_back(std::move(node));
    return parent.members.back().second = std::move(node);
  }
  bool put(JsonNode&& node) {
    place(std::move(node));
    return true;
  }
  bool open(JsonNode::Kind kind) {
    if (open_.size() >= kDeepest) {
      error = {"json", "at " + pointer() + ": the file is nested more than 100 levels deep.", pointer()};
      return false;
    }
    JsonNode node;
    node.kind = kind;
    open_.push_back(&place(std::move(node)));
    return true;
  }
  bool close() {
    open_.pop_back();
    return true;
  }

  std::string pointer() const {
    std::string path;
    for (std::size_t i = 0; i + 1 < open_.size(); ++i) path = step(path, *open_[i]);
    return path;
  }
  static std::string step(const std::string& path, const JsonNode& parent) {
    return parent.kind == JsonNode::Kind::list ? pointerTo(path, parent.items.size() - 1)
                                               : pointerTo(path, parent.members.back().first);
  }

  std::string_view text_;
  // The chain of unfinished lists and objects. A parent's vector only grows while its last element is finished,
  // so these pointers stay good.
  std::vector<JsonNode*> open_;
};

}  // namespace

Result<JsonNode> parseJson(std::string_view text) {
  TreeBuilder builder(text);
  if (!json::sax_parse(text.begin(), text.end(), &builder)) return builder.error;
  return std::move(builder.root);
}

std::string compactJson(const JsonNode& node) {
  std::string out;
  switch (node.kind) {
    case JsonNode::Kind::null: return "null";
    case JsonNode::Kind::boolean: return node.truth ? "true" : "false";
    case JsonNode::Kind::number: return node.text;
    case JsonNode::Kind::text: return quotedJson(node.text);
    case JsonNode::Kind::list:
      for (const JsonNode& item : node.items) out += (out.empty() ? "" : ",") + compactJson(item);
      return "[" + out + "]";
    case JsonNode::Kind::object:
      for (const auto& [key, value] : node.members) {
        out += (out.empty() ? "" : ",") + quotedJson(key) + ":" + compactJson(value);
      }
      return "{" + out + "}";
  }
  return out;
}

std::string quotedJson(std::string_view text) {
  return json(text).dump(-1, ' ', false, json::error_handler_t::replace);
}

std::string pointerTo(const std::string& parent, std::string_view key) {
  std::string out = parent + "/";
  for (const char c : key) {
    if (c == '~') out += "~0";
    else if (c == '/') out += "~1";
    else out += c;
  }
  return out;
}

std::string pointerTo(const std::string& parent, std::size_t index) { return parent + "/" + std::to_string(index); }

std::string_view wordsOf(JsonNode::Kind kind) {
  switch (kind) {
    case JsonNode::Kind::null: return "null";
    case JsonNode::Kind::boolean: return "true or false";
    case JsonNode::Kind::number: return "a number";
    case JsonNode::Kind::text: return "a text";
    case JsonNode::Kind::list: return "a list";
    case JsonNode::Kind::object: return "an object";
  }
  return "";
}

}  // namespace elbowroom

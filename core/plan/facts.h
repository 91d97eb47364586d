// Facts: what a plan may state about a room or a thing in it beyond place and size ("this glass is safety
// glass", "the valve is limited to 120 F"). A fact that is not stated is not known; rules then say so and the
// window offers to state it in place. In files a fact is a plain key of its element.
//
// The catalogue is the only list: reader, writer, window and rules go by it; resources/plan.schema.json
// describes every key (a test compares the two).
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>

#include "core/base/amount.h"
#include "core/base/length.h"

namespace elbowroom {

using FactValue = std::variant<bool, Length, Amount, std::string>;
using Facts = std::map<std::string, FactValue>;

enum class FactOn { room, wall, opening, fixture, wallItem, ceilingItem };
enum class FactType { yesNo, length, amount, word };

struct FactInfo {
  std::string_view key;       // "safety_glass"
  FactOn on;
  std::string_view kinds;     // file keys of the kinds it concerns, separated by spaces; empty: all of them
  FactType type;
  std::string_view label;     // in forms: "Safety glass"
  std::string_view question;  // "Is this glass safety glass?"
  std::string_view unit = {};   // of an amount: "cfm"
  std::string_view words = {};  // of a word: the file keys to choose from, separated by spaces
};

std::span<const FactInfo> allFacts();
const FactInfo* findFact(FactOn on, std::string_view key);
// Whether the fact concerns things of this kind (file key; empty for rooms and walls).
bool concerns(const FactInfo& fact, std::string_view kind);

// nullopt when not stated or of another type.
std::optional<bool> yesNo(const Facts& facts, std::string_view key);
std::optional<Length> lengthOf(const Facts& facts, std::string_view key);
std::optional<Amount> amountOf(const Facts& facts, std::string_view key);
std::optional<std::string> wordOf(const Facts& facts, std::string_view key);
// Whether the value is of the fact's type, and a word one of its words; an amount or length is not negative.
bool fits(const FactInfo& fact, const FactValue& value);

}  // namespace elbowroom

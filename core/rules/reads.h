// Whose places a measure reads: when only other things move, what it has found still holds.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "core/plan/layout.h"
#include "core/rules/rule.h"

namespace elbowroom {

using Reads = std::uint8_t;                // a set of:
inline constexpr Reads kReadsToilets = 1;  // toilets and bidets
inline constexpr Reads kReadsBasins = 2;   // basins and vanities
inline constexpr Reads kReadsWet = 4;      // baths and showers
inline constexpr Reads kReadsOthers = 8;   // all other fixtures
inline constexpr Reads kReadsItems = 16;   // things on walls
inline constexpr Reads kReadsFixtures = kReadsToilets | kReadsBasins | kReadsWet | kReadsOthers;
inline constexpr Reads kReadsAll = kReadsFixtures | kReadsItems;

// Everything for a measure that no line of the table names.
Reads readsOf(Measure);

// What has moved between two layouts; nullopt when they differ in more than places of fixtures and of things
// on walls, in number or in order.
std::optional<Reads> movedBetween(const Layout& was, const Layout& now);

// The table: measures by name (core/rules/checks/named.h), several to a line.
struct ReadsLine {
  Reads reads;
  std::string_view measures;  // parted by spaces
};
std::span<const ReadsLine> readsTable();

}  // namespace elbowroom

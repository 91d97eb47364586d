// How the plan file spells the words of an enumeration; one table each, read and written through.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/plan/plan.h"

namespace elbowroom {

inline constexpr std::string_view kFormatName = "elbowroom-plan";
inline constexpr int kFormatVersion = 1;

std::string_view keyOf(Unit);
std::string_view keyOf(OpeningKind);
std::string_view keyOf(Hand);
std::string_view keyOf(Swing);
std::string_view keyOf(Side);

// nullopt: no such word. `known` lists the words there are, for the error message.
template <typename Enum>
struct WordList {
  std::optional<Enum> (*find)(std::string_view);
  std::string (*known)();
};
extern const WordList<Unit> kUnits;
extern const WordList<OpeningKind> kOpeningKinds;
extern const WordList<DoorAction> kDoorActions;
extern const WordList<Hand> kHands;
extern const WordList<Swing> kSwings;
extern const WordList<Side> kSides;
extern const WordList<FixtureKind> kFixtureKinds;
extern const WordList<Status> kStatuses;

}  // namespace elbowroom

#include "core/file/words.h"

#include <array>

#include "core/plan/catalogue.h"

namespace elbowroom {
namespace {

constexpr std::array kAllUnits{Unit::inches, Unit::millimetres};
constexpr std::array kAllOpeningKinds{OpeningKind::door, OpeningKind::window};
constexpr std::array kAllDoorActions{DoorAction::hinged,         DoorAction::doubleLeaf, DoorAction::pocket,
                                     DoorAction::surfaceSliding, DoorAction::bifold,     DoorAction::cased};
constexpr std::array kAllHands{Hand::left, Hand::right};
constexpr std::array kAllSwings{Swing::in, Swing::out};
constexpr std::array kAllSides{Side::back, Side::front, Side::left, Side::right};
constexpr std::array kAllFixtureKinds{
    FixtureKind::toilet,           FixtureKind::bidet,  FixtureKind::basin,   FixtureKind::vanity,
    FixtureKind::bath,             FixtureKind::freestandingBath,             FixtureKind::shower,
    FixtureKind::cabinet,          FixtureKind::linenCloset,                  FixtureKind::bench,
    FixtureKind::washer,           FixtureKind::heater};
constexpr std::array kAllStatuses{Status::keep, Status::move, Status::fresh, Status::remove};

std::string_view spelling(Unit v) { return keyOf(v); }
std::string_view spelling(OpeningKind v) { return keyOf(v); }
std::string_view spelling(DoorAction v) { return keyOf(v); }
std::string_view spelling(Hand v) { return keyOf(v); }
std::string_view spelling(Swing v) { return keyOf(v); }
std::string_view spelling(Side v) { return keyOf(v); }
std::string_view spelling(FixtureKind v) { return infoOf(v).key; }
std::string_view spelling(Status v) { return keyOf(v); }

template <const auto& all>
auto findIn(std::string_view word) -> std::optional<std::decay_t<decltype(all[0])>> {
  for (const auto value : all) {
    if (spelling(value) == word) return value;
  }
  return std::nullopt;
}

template <const auto& all>
std::string knownIn() {
  std::string out;
  for (const auto value : all) out += (out.empty() ? "" : ", ") + std::string(spelling(value));
  return out;
}

}  // namespace

std::string_view keyOf(Unit unit) { return unit == Unit::inches ? "in" : "mm"; }
std::string_view keyOf(OpeningKind kind) { return kind == OpeningKind::door ? "door" : "window"; }
std::string_view keyOf(Hand hand) { return hand == Hand::left ? "left" : "right"; }
std::string_view keyOf(Swing swing) { return swing == Swing::in ? "in" : "out"; }
std::string_view keyOf(Side side) {
  constexpr std::array<std::string_view, 4> kKeys{"back", "front", "left", "right"};
  return kKeys.at(static_cast<std::size_t>(side));
}

const WordList<Unit> kUnits{findIn<kAllUnits>, knownIn<kAllUnits>};
const WordList<OpeningKind> kOpeningKinds{findIn<kAllOpeningKinds>, knownIn<kAllOpeningKinds>};
const WordList<DoorAction> kDoorActions{findIn<kAllDoorActions>, knownIn<kAllDoorActions>};
const WordList<Hand> kHands{findIn<kAllHands>, knownIn<kAllHands>};
const WordList<Swing> kSwings{findIn<kAllSwings>, knownIn<kAllSwings>};
const WordList<Side> kSides{findIn<kAllSides>, knownIn<kAllSides>};
const WordList<FixtureKind> kFixtureKinds{findIn<kAllFixtureKinds>, knownIn<kAllFixtureKinds>};
const WordList<Status> kStatuses{findIn<kAllStatuses>, knownIn<kAllStatuses>};

}  // namespace elbowroom

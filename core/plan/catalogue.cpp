#include "core/plan/catalogue.h"

#include <array>

namespace elbowroom {
namespace {

using namespace literals;

constexpr std::array<KindInfo, 12> kKinds{{
    {FixtureKind::toilet, "toilet", "Toilet", "WC", "wc", true},
    {FixtureKind::bidet, "bidet", "Bidet", "Bidet", "bidet", true},
    {FixtureKind::basin, "basin", "Basin", "Basin", "basin", true},
    {FixtureKind::vanity, "vanity", "Vanity", "Vanity", "vanity", true},
    {FixtureKind::bath, "bath", "Bath", "Bath", "bath", true},
    {FixtureKind::freestandingBath, "freestanding-bath", "Freestanding bath", "Bath", "bath", false},
    {FixtureKind::shower, "shower", "Shower", "Shower", "shower", true},
    {FixtureKind::cabinet, "cabinet", "Cabinet", "Cab.", "cabinet", true},
    {FixtureKind::linenCloset, "linen-closet", "Linen closet", "Linen", "linen", true},
    {FixtureKind::bench, "bench", "Bench", "Bench", "bench", true},
    {FixtureKind::washer, "washer", "Washing machine", "Washer", "washer", true},
    {FixtureKind::heater, "heater", "Heater", "Heater", "heater", true},
}};

void setSize(Fixture& f, Length width, Length depth, std::optional<Length> height) {
  f.width = width;
  f.depth = depth;
  f.height = height;
}

}  // namespace

std::span<const KindInfo> fixtureKinds() { return kKinds; }

const KindInfo& infoOf(FixtureKind kind) { return kKinds[static_cast<std::size_t>(kind)]; }

bool holdsWater(FixtureKind kind) {
  return kind == FixtureKind::shower || kind == FixtureKind::bath || kind == FixtureKind::freestandingBath;
}

bool hasDrain(FixtureKind kind) {
  return kind != FixtureKind::cabinet && kind != FixtureKind::linenCloset && kind != FixtureKind::bench &&
         kind != FixtureKind::heater;
}

std::span<const Status> allStatuses() {
  static constexpr std::array kStatuses{Status::keep, Status::move, Status::fresh, Status::remove};
  return kStatuses;
}

// Graded sources: toilet, alcove bath, freestanding bath and vanity as engineerfix.com's size articles print
// them (the toilet's tank, the bowl and the shower's pan from memory); the basin within the rectangular range
// of looacademy.com. The rest are usual sizes of the trade without a published source.
Fixture typicalFixture(FixtureKind kind, const Option& forIds) {
  Fixture f;
  f.id = freshId(forIds, std::string(infoOf(kind).id_stem));
  f.kind = kind;
  f.placement = Standing{};
  switch (kind) {
    case FixtureKind::toilet:
      setSize(f, 20_in, 28_in, 30_in);
      f.bowl_width = 14_in;
      f.tank_width = 19_in;
      f.tank_depth = 8_in;
      break;
    case FixtureKind::bidet:
      setSize(f, 15_in, 23_in, 15_in);
      break;
    case FixtureKind::basin:
      setSize(f, 20_in, 18_in, 34_in);
      f.basins = 1;
      break;
    case FixtureKind::vanity:
      setSize(f, 30_in, 21_in, 34_in);
      f.basins = 1;
      break;
    case FixtureKind::bath:
      setSize(f, 60_in, 30_in, 15_in);
      break;
    case FixtureKind::freestandingBath:
      setSize(f, 60_in, 30_in, 23_in);
      break;
    case FixtureKind::shower:
      setSize(f, 36_in, 36_in, std::nullopt);
      f.curb = 2_in;
      break;
    case FixtureKind::cabinet:
      setSize(f, 18_in, 14_in, 30_in);
      break;
    case FixtureKind::linenCloset:
      setSize(f, 24_in, 18_in, 84_in);
      break;
    case FixtureKind::bench:
      setSize(f, 36_in, 15_in, 18_in);
      break;
    case FixtureKind::washer:
      setSize(f, 27_in, 30_in, 38_in);
      break;
    case FixtureKind::heater:
      setSize(f, 24_in, 4_in, 30_in);
      break;
  }
  return f;
}

Opening typicalDoor(DoorAction action, const Option& forIds) {
  Opening o;
  o.id = freshId(forIds, "door");
  o.kind = OpeningKind::door;
  o.action = action;
  o.width = 30_in;
  if (action == DoorAction::doubleLeaf) o.width = 48_in;
  if (action == DoorAction::surfaceSliding) o.width = 36_in;  // for an opening of 32
  o.height = 80_in;
  if (action == DoorAction::pocket || action == DoorAction::surfaceSliding) o.toward = Hand::right;
  return o;
}

Opening typicalWindow(const Option& forIds) {
  Opening o;
  o.id = freshId(forIds, "window");
  o.kind = OpeningKind::window;
  o.width = 24_in;
  o.height = 36_in;
  o.sill = 44_in;
  return o;
}

Length heightOf(const Fixture& fixture) {
  if (fixture.height) return *fixture.height;
  // What closes a shower; a head hangs about there.
  if (fixture.kind == FixtureKind::shower) return 78_in;
  return typicalFixture(fixture.kind, Option{}).height.value_or(34_in);
}

std::span<const Length> stockLeafWidths() {
  static constexpr std::array<Length, 7> kWidths{18_in, 20_in, 24_in, 28_in, 30_in, 32_in, 36_in};
  return kWidths;
}

std::string_view labelOf(DoorAction action) {
  switch (action) {
    case DoorAction::hinged:
      return "Hinged";
    case DoorAction::doubleLeaf:
      return "Double";
    case DoorAction::pocket:
      return "Pocket";
    case DoorAction::surfaceSliding:
      return "Surface sliding";
    case DoorAction::bifold:
      return "Bifold";
    case DoorAction::cased:
      return "Cased opening";
  }
  return {};
}

std::string_view keyOf(DoorAction action) {
  switch (action) {
    case DoorAction::hinged:
      return "hinged";
    case DoorAction::doubleLeaf:
      return "double";
    case DoorAction::pocket:
      return "pocket";
    case DoorAction::surfaceSliding:
      return "surface-sliding";
    case DoorAction::bifold:
      return "bifold";
    case DoorAction::cased:
      return "cased";
  }
  return {};
}

std::string_view keyOf(Status status) {
  switch (status) {
    case Status::keep:
      return "keep";
    case Status::move:
      return "move";
    case Status::fresh:
      return "new";
    case Status::remove:
      return "remove";
  }
  return {};
}

std::string_view labelOf(Status status) {
  switch (status) {
    case Status::keep:
      return "Keep";
    case Status::move:
      return "Move";
    case Status::fresh:
      return "New";
    case Status::remove:
      return "Remove";
  }
  return {};
}

}  // namespace elbowroom

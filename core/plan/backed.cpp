#include "core/plan/backed.h"

#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {

constexpr Length kBarPlywood = Length::nanometres(19'050'000);  // 3/4 in

}  // namespace

Pull pullOf(const WallItem& item) {
  if (!is(item, WallUse::grabBar)) return Pull::light;
  return item.kind == "grab-bar-fold" ? Pull::heavy : Pull::bar;
}

Held heldBy(const Wall& wall, const Facts& thing, Pull pull) {
  const auto blocking = yesNo(thing, "blocking");
  if (blocking == true) return {true};
  if (pull == Pull::heavy) return blocking ? Held{false} : Held{std::nullopt, "blocking", false};
  const auto backed = yesNo(wall.facts, "backed");
  if (!backed) return {std::nullopt, "backed"};
  if (!*backed || pull == Pull::light) return {*backed};
  const auto plywood = lengthOf(wall.facts, "backing_plywood");
  if (!plywood) return {std::nullopt, "backing_plywood"};
  return {*plywood >= kBarPlywood};
}

}  // namespace elbowroom

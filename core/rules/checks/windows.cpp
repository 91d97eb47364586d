#include "core/rules/checks/windows.h"

#include <algorithm>

#include "core/rules/checks/common.h"
#include "core/rules/checks/fans.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

constexpr Length kBefore = 6_in;  // what stands nearer than this before a window is in its way

bool isWindow(const PlacedOpening& o) { return o.opening.kind == OpeningKind::window; }

struct Glass {
  Area most;
  bool stated;
};
Glass glassOf(const Opening& o) {
  const auto width = lengthOf(o.facts, "glass_width"), height = lengthOf(o.facts, "glass_height");
  if (width && height) return {*width * *height, true};
  return {width.value_or(o.width) * height.value_or(o.height), false};
}

// Sum over the windows; `part` gives a window's share of its glass, nullopt where it is not stated.
template <typename Part>
std::vector<Measurement> sumOfWindows(const CheckInput& in, Part part, const char* part_fact) {
  if (in.layout.room.empty() || !fansOf(in.layout).empty()) return {};
  Measurement m;
  Area known, most;
  ElementId open;
  for (const PlacedOpening& o : in.layout.openings) {
    if (!isWindow(o)) continue;
    const Glass glass = glassOf(o.opening);
    const std::optional<double> share = part(o.opening);
    most = most + glass.most.scaled(share.value_or(1));
    m.subjects.push_back(o.opening.id);
    m.places.push_back(lineFrom(o.left, o.right));
    if (glass.stated && share) {
      known = known + glass.most.scaled(*share);
    } else if (m.fact.empty()) {
      open = o.opening.id;
      m.fact = share ? "glass_width" : part_fact;
    }
  }
  if (m.places.empty()) {
    m.places = {pointAt(centroidOf(in.layout.room))};
    m.detail = "no-window-no-fan";
    return {m};
  }
  const auto* limit = in.rule == nullptr ? nullptr : std::get_if<Area>(&in.rule->limit);
  if (m.fact.empty() || (limit != nullptr && known >= *limit)) {
    m.measured = known;
  } else if (limit != nullptr && most < *limit) {
    m.measured = most;
    m.detail = "no-more-glass-than-opening";
  } else {
    m.subjects = {open};
  }
  if (m.measured) m.fact.clear();
  return {m};
}

template <typename Concerns>
std::vector<Measurement> safetyGlass(const CheckInput& in, Concerns concerns) {
  std::vector<Measurement> found;
  if (in.rule == nullptr || in.rule->sizes.size() < 2) return found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (!isWindow(o) || o.wall < 0 || (o.opening.sill && *o.opening.sill >= in.rule->sizes[0])) continue;
    const PlacedFixture* nearest = nullptr;
    Gap least;
    for (const PlacedFixture& f : in.layout.fixtures) {
      if (!counts(f) || !(isBath(f) || isShower(f)) || !concerns(o, f)) continue;
      const Gap gap = gapBetween(f.footprint, Outline{o.left, o.right});
      if (gap.distance > in.rule->sizes[1] || (nearest != nullptr && gap.distance >= least.distance))
        continue;
      nearest = &f;
      least = gap;
    }
    if (nearest == nullptr) continue;
    Measurement m{.subjects = {o.opening.id, nearest->fixture.id},
                  .measured = std::nullopt,
                  .places = {lineFrom(o.left, o.right), lineFrom(least.from, least.to)}};
    if (const auto safe = yesNo(o.opening.facts, "safety_glass"))
      m.measured = *safe;
    else
      m.fact = "safety_glass";
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace

std::vector<Measurement> windowGlass(const CheckInput& in) {
  return sumOfWindows(
      in, [](const Opening&) { return std::optional(1.0); }, "glass_width");
}

std::vector<Measurement> windowOpens(const CheckInput& in) {
  return sumOfWindows(
      in,
      [](const Opening& o) {
        const auto share = amountOf(o.facts, "openable_share");
        return share ? std::optional(share->value() / 100) : std::nullopt;
      },
      "openable_share");
}

std::vector<Measurement> glassNearWater(const CheckInput& in) {
  return safetyGlass(in, [](const PlacedOpening&, const PlacedFixture&) { return true; });
}

std::vector<Measurement> glassFacingWater(const CheckInput& in) {
  return safetyGlass(in, [&](const PlacedOpening& o, const PlacedFixture& f) {
    const WallFrame& wall = in.layout.walls[static_cast<std::size_t>(o.wall)];
    const bool encloses = gapBetween(f.footprint, Outline{o.left, o.right}).distance <= 1_in;
    return encloses || wall.inward.x * f.facing.x + wall.inward.y * f.facing.y < -0.7;
  });
}

std::vector<Measurement> windowsFree(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (!isWindow(o) || o.wall < 0 || !o.opening.sill) continue;
    const WallFrame& wall = in.layout.walls[static_cast<std::size_t>(o.wall)];
    Measurement m{.subjects = {o.opening.id}, .measured = true, .places = {lineFrom(o.left, o.right)}};
    for (const PlacedFixture& f : in.layout.fixtures) {
      const bool tall = f.fixture.height && *f.fixture.height > *o.opening.sill + kContact;
      if (!counts(f) || isBath(f) || isShower(f) || !tall) continue;
      const Outline before{o.left, o.right, o.right + kBefore * wall.inward, o.left + kBefore * wall.inward};
      if (!gapBetween(f.footprint, before).overlap) continue;
      m.subjects = {f.fixture.id, o.opening.id};
      m.measured = false;
    }
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks

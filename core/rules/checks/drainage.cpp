#include "core/rules/checks/drainage.h"

#include <algorithm>
#include <array>

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

std::optional<Length> factOf(const PlacedFixture& f, std::string_view key) {
  return lengthOf(f.fixture.facts, key);
}

Measurement of(const PlacedFixture& f) {
  return {.subjects = {f.fixture.id}, .places = {pointAt(f.center), {Place::Kind::zone, f.footprint}}};
}

bool hasTrapArm(const PlacedFixture& f) {
  return counts(f) && (f.fixture.kind == FixtureKind::bidet || isBasin(f) || isBath(f) || isShower(f));
}

// A drain of this size, within what differs between nominal and measured.
constexpr Length kSizeSlack = Length::nanometres(25'400'000 / 32);

std::optional<Length> longestArm(const std::vector<Length>& sizes, Length drain) {
  std::optional<Length> longest;
  for (std::size_t i = 0; i + 1 < sizes.size(); i += 2)
    if (sizes[i] <= drain + kSizeSlack) longest = sizes[i + 1];
  return longest;
}

std::vector<Measurement> statedOnly(const CheckInput& in, std::string_view key) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const auto figure = factOf(f, key);
    if (!hasTrapArm(f) || !figure) continue;
    found.push_back(of(f));
    found.back().measured = *figure;
  }
  return found;
}

// Index into drainSizes' parameters; nullopt for what has no drain of its own there.
std::optional<std::size_t> drainKind(const PlacedFixture& f) {
  if (f.fixture.kind == FixtureKind::toilet) return 0;
  if (isBasin(f)) return 1;
  if (isBath(f)) return 2;
  if (f.fixture.kind == FixtureKind::washer) return 3;
  if (isShower(f)) return 4;
  return std::nullopt;
}

template <typename Limit>
std::vector<Measurement> joistCuts(const CheckInput& in, std::string_view key, Limit limit) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const auto cut = factOf(f, key), joist = factOf(f, "joist_depth");
    if (!counts(f) || !cut || !joist || wordOf(f.fixture.facts, "joist_kind") == "made") continue;
    found.push_back(of(f));
    found.back().measured = *cut;
    found.back().limit = limit(*joist);
  }
  return found;
}

std::vector<Measurement> studCuts(const CheckInput& in, std::string_view key, double bearing, double other) {
  std::vector<Measurement> found;
  for (const WallFrame& frame : in.layout.walls) {
    const Wall* wall = findWall(in.layout.option, frame.id);
    const auto cut = lengthOf(wall->facts, key), stud = lengthOf(wall->facts, "stud_depth");
    if (!cut || !stud) continue;
    Measurement m{.subjects = {frame.id}, .places = {lineFrom(frame.from, frame.to)}};
    const auto bears = wall->exterior ? std::optional(true) : yesNo(wall->facts, "load_bearing");
    const Length strict = stud->scaled(bearing), lax = stud->scaled(other);
    m.limit = bears == false || (!bears && *cut > lax) ? lax : strict;
    if (!bears && *cut > strict && *cut <= lax)
      m.fact = "load_bearing";
    else
      m.measured = *cut;
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace

std::vector<Measurement> joistNotchPlaces(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || factOf(f, "joist_notch").value_or(Length{}) <= Length{}) continue;
    if (wordOf(f.fixture.facts, "joist_kind") == "made") continue;
    found.push_back(of(f));
    if (const auto middle = yesNo(f.fixture.facts, "joist_notch_middle"))
      found.back().measured = !*middle;
    else
      found.back().fact = "joist_notch_middle";
  }
  return found;
}

std::vector<Measurement> studHoleEdges(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const WallFrame& frame : in.layout.walls) {
    const Wall* wall = findWall(in.layout.option, frame.id);
    if (lengthOf(wall->facts, "stud_hole").value_or(Length{}) <= Length{}) continue;
    Measurement m{.subjects = {frame.id}, .places = {lineFrom(frame.from, frame.to)}};
    if (const auto edge = lengthOf(wall->facts, "stud_hole_edge"))
      m.measured = *edge;
    else
      m.fact = "stud_hole_edge";
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> cutJoistsSolid(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const auto cut = [&](const char* key) { return factOf(f, key).value_or(Length{}) > Length{}; };
    if (!counts(f) || !(cut("joist_notch") || cut("joist_end_notch") || cut("joist_hole"))) continue;
    found.push_back(of(f));
    if (const auto kind = wordOf(f.fixture.facts, "joist_kind"))
      found.back().measured = *kind == "solid";
    else
      found.back().fact = "joist_kind";
  }
  return found;
}

std::vector<Measurement> trapArms(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.rule == nullptr || in.rule->sizes.size() < 2) return found;
  const std::vector<Length>& sizes = in.rule->sizes;
  const Length least = sizes[1], most = sizes[sizes.size() / 2 * 2 - 1];
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!hasTrapArm(f)) continue;
    const auto arm = factOf(f, "trap_arm"), drain = factOf(f, "drain_size");
    Measurement m = of(f);
    const auto longest = drain ? longestArm(sizes, *drain) : std::nullopt;
    if (!arm)
      m.fact = "trap_arm";
    else if (longest || *arm <= least || *arm > most)
      m.measured = *arm;
    else
      m.fact = "drain_size";
    m.limit = longest ? *longest : arm && *arm > most ? most : least;
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> trapArmsLeast(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const auto arm = factOf(f, "trap_arm"), drain = factOf(f, "drain_size");
    if (!hasTrapArm(f) || !arm || !drain) continue;
    found.push_back(of(f));
    found.back().measured = *arm;
    found.back().limit = *drain * 2;
  }
  return found;
}

std::vector<Measurement> trapDrops(const CheckInput& in) { return statedOnly(in, "trap_drop"); }
std::vector<Measurement> trapOffsets(const CheckInput& in) { return statedOnly(in, "trap_offset"); }

std::vector<Measurement> drainSizes(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.rule == nullptr) return found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const auto kind = drainKind(f);
    if (!counts(f) || !kind || *kind >= in.rule->sizes.size() || in.rule->sizes[*kind] == Length{}) continue;
    Measurement m = of(f);
    m.limit = in.rule->sizes[*kind];
    if (const auto size = factOf(f, "drain_size"))
      m.measured = *size;
    else
      m.fact = "drain_size";
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> pipesInExteriorWalls(const CheckInput& in) {
  constexpr std::array kWithPipes{"shower-head", "control", "hand-spray", "spout"};
  std::vector<Measurement> found;
  for (const WallFrame& frame : in.layout.walls) {
    if (!frame.exterior) continue;
    const auto& items = in.layout.option.on_walls;
    const bool carries = std::any_of(items.begin(), items.end(), [&](const WallItem& item) {
      return item.wall == frame.id && item.status != Status::remove &&
             std::find(kWithPipes.begin(), kWithPipes.end(), item.kind) != kWithPipes.end();
    });
    if (!frame.plumbing && !carries) continue;
    Measurement m{.subjects = {frame.id}, .places = {lineFrom(frame.from, frame.to)}};
    if (const auto safe = yesNo(findWall(in.layout.option, frame.id)->facts, "frost_protected"))
      m.measured = *safe;
    else
      m.fact = "frost_protected";
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> joistNotches(const CheckInput& in) {
  return joistCuts(in, "joist_notch", [](Length joist) { return joist / 6; });
}
std::vector<Measurement> joistEndNotches(const CheckInput& in) {
  return joistCuts(in, "joist_end_notch", [](Length joist) { return joist / 4; });
}
std::vector<Measurement> joistNotchLengths(const CheckInput& in) {
  return joistCuts(in, "joist_notch_length", [](Length joist) { return joist / 3; });
}
std::vector<Measurement> joistHoles(const CheckInput& in) {
  return joistCuts(in, "joist_hole",
                   [](Length joist) { return std::max(Length{}, std::min(joist / 3, joist - 4_in)); });
}

std::vector<Measurement> studNotches(const CheckInput& in) { return studCuts(in, "stud_notch", 0.25, 0.4); }
std::vector<Measurement> studHoles(const CheckInput& in) { return studCuts(in, "stud_hole", 0.4, 0.6); }

}  // namespace elbowroom::checks

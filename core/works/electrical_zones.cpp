#include "core/works/electrical_zones.h"

#include <algorithm>

#include "core/plan/catalogue.h"
#include "core/plan/ceiling.h"
#include "core/rules/checks/electrical_places.h"
#include "core/rules/in_force.h"

namespace elbowroom {
namespace {

using namespace literals;
using enum ElectricalZoneKind;

constexpr Length kNoCeiling = 96_in;  // as the Wall strip draws a wall without a stated ceiling
constexpr Length kLeastZone = 1_in / 2;
constexpr Length kStep = 1_in / 2, kFine = Length::nanometres(396'875);

Length limitOf(const Rule& rule) {
  const auto* limit = std::get_if<Length>(&rule.limit);
  return limit == nullptr ? Length{} : *limit;
}

Length usualRim(const PlacedFixture& f) {
  if (const auto rim = checks::rimOf(f)) return *rim;
  return checks::isShower(f) ? Length{} : typicalFixture(f.fixture.kind, Option{}).height.value_or(Length{});
}

// Where `in` holds along a stretch; ends by bisection.
template <typename In>
std::vector<Stretch> refined(Stretch whole, In in) {
  const auto end = [&](Length a, Length b, bool holds_at_a) {
    while (b - a > kFine) {
      const Length middle = (a + b) / 2;
      (in(middle) == holds_at_a ? a : b) = middle;
    }
    return holds_at_a ? a : b;
  };
  std::vector<Stretch> found;
  Length at = whole.from;
  bool was = in(at);
  Length begun = at;
  while (at < whole.to) {
    const Length next = std::min(at + kStep, whole.to);
    const bool is = in(next);
    if (is != was) {
      const Length cut = end(at, next, was);
      if (was) found.push_back({begun, cut});
      begun = cut;
    }
    at = next;
    was = is;
  }
  if (was) found.push_back({begun, whole.to});
  return found;
}

// The part of a wall that a thing stands at, within checks::kBeforeWall of it.
std::vector<Stretch> stretchAt(const WallFrame& wall, const Outline& thing) {
  Length low = wall.length, high;
  const auto take = [&](Point p) {
    const Length along = dot(p - wall.from, wall.along);
    low = std::min(low, along), high = std::max(high, along);
  };
  for (std::size_t i = 0, j = thing.size() - 1; i < thing.size(); j = i++) {
    const Length a = dot(thing[j] - wall.from, wall.inward), b = dot(thing[i] - wall.from, wall.inward);
    if (b < checks::kBeforeWall) take(thing[i]);
    if ((a < checks::kBeforeWall) != (b < checks::kBeforeWall))
      take(thing[j] + Vector{(thing[i] - thing[j]).dx.scaled((checks::kBeforeWall - a) / (b - a)),
                             (thing[i] - thing[j]).dy.scaled((checks::kBeforeWall - a) / (b - a))});
  }
  low = std::max(low, Length{}), high = std::min(high, wall.length);
  // A thing at the neighbour wall touches this one in a corner only.
  if (high - low <= kContact) return {};
  return {{low, high}};
}

class Zones {
 public:
  Zones(const Layout& layout, const BookChoice& choice) : layout_(layout), rules_(choice) {}

  std::vector<ElectricalZone> all() {
    for (const PlacedFixture& f : layout_.fixtures) {
      if (!checks::counts(f) || f.footprint.empty()) continue;
      if (checks::takesWater(f)) water(f);
      if (checks::isBasin(f)) basin(f);
      if (f.fixture.kind == FixtureKind::toilet) toilet(f);
    }
    return std::move(found_);
  }

 private:
  const Rule* rule(std::string_view book, std::string_view id) const {
    for (const RuleInForce& in : rules_.rules())
      if (in.rule->book == book && in.rule->id == id) return in.rule;
    return nullptr;
  }
  const Rule* canadian(std::string_view id) const { return rule("ca-electrical", id); }
  const Rule* electrical(std::string_view id) const { return rule("us-electrical", id); }

  Length ceilingOver(const WallFrame& wall, Stretch s) const {
    const auto line = ceilingAlong(layout_, {wall.at(s.from), wall.at(s.to)});
    if (!line) return kNoCeiling;
    Length top;
    for (const CeilingPoint& p : *line) top = std::max(top, p.height);
    return top;
  }

  void add(const Rule& rule, ElectricalZoneKind kind, const PlacedFixture& of, const WallFrame& wall,
           Stretch s, Length bottom, std::optional<Length> top) {
    const bool stated = layout_.option.room.ceiling.height.has_value();
    const Length ceiling = ceilingOver(wall, s);
    const Length most = !top ? ceiling : stated ? std::min(*top, ceiling) : *top;
    if (most - bottom < kLeastZone || s.to - s.from < kLeastZone) return;
    found_.push_back({wall.id,
                      s.from,
                      s.to,
                      bottom,
                      most,
                      {of.fixture.id},
                      kind,
                      rule.book,
                      rule.id,
                      rule.source,
                      rule.grade});
  }

  // `seen`: only what no wall or fixed glass cuts off.
  void around(const Rule& rule, Length far, ElectricalZoneKind kind, const PlacedFixture& f, Length bottom,
              Length top, bool seen) {
    for (const WallFrame& wall : layout_.walls)
      for (const Stretch& reach : stretchesWithin({wall.from, wall.to}, f.footprint, far)) {
        if (seen)
          addSeen(rule, kind, f, wall, reach, bottom, top);
        else
          add(rule, kind, f, wall, reach, bottom, top);
      }
  }

  void addSeen(const Rule& rule, ElectricalZoneKind kind, const PlacedFixture& f, const WallFrame& wall,
               Stretch reach, Length bottom, Length top) {
    std::vector<Length> levels{bottom, top};  // glass screens what is not higher than it
    for (const Pane& pane : f.fixture.glass)
      if (pane.height && *pane.height > bottom && *pane.height < top) levels.push_back(*pane.height);
    std::sort(levels.begin(), levels.end());
    for (std::size_t i = 0; i + 1 < levels.size(); ++i) {
      const checks::OpenEdges open = checks::openEdgesOf(layout_, f, (levels[i] + levels[i + 1]) / 2);
      const auto in = [&](Length along) {
        const auto gap = gapInSight(wall.at(along), open.edges, layout_.room, open.glass);
        return gap && gap->distance <= limitOf(rule);
      };
      const bool plain = open.glass.empty() && isConvex();
      for (const Stretch& s : plain ? std::vector{reach} : refined(reach, in))
        add(rule, kind, f, wall, s, levels[i], levels[i + 1]);
    }
  }

  bool isConvex() const {
    for (std::size_t i = 0; i < layout_.walls.size(); ++i) {
      const WallFrame& next = layout_.walls[(i + 1) % layout_.walls.size()];
      if (dot(next.to - layout_.walls[i].from, layout_.walls[i].inward) < -kContact) return false;
    }
    return true;
  }

  void at(const Rule* rule, ElectricalZoneKind kind, const PlacedFixture& f, std::optional<Length> top) {
    if (rule == nullptr) return;
    for (const WallFrame& wall : layout_.walls)
      for (const Stretch& s : stretchAt(wall, f.footprint)) add(*rule, kind, f, wall, s, {}, top);
  }

  void water(const PlacedFixture& f) {
    const Length rim = usualRim(f);
    const auto up = [&](const Rule& r) { return rim + (r.sizes.empty() ? Length{} : r.sizes[0]); };
    if (const Rule* r = electrical("receptacle-off-water"))
      around(*r, limitOf(*r), noReceptacle, f, {}, up(*r), true);
    // The Canadian text sets no height.
    const Length ceiling = layout_.option.room.ceiling.height.value_or(kNoCeiling);
    if (const Rule* r = canadian("receptacle-off-water")) {
      around(*r, std::min(r->sizes.at(0), limitOf(*r)), noReceptacle, f, {}, ceiling, true);
      around(*r, limitOf(*r), lastReceptacle, f, {}, ceiling, true);
    }
    if (const Rule* r = canadian("switch-off-water")) around(*r, limitOf(*r), noSwitch, f, {}, ceiling, false);
    if (const Rule* r = electrical("receptacle-off-water-2020"))
      around(*r, limitOf(*r), noReceptacle, f, rim, up(*r), false);
    if (const Rule* r = electrical("receptacle-below-rim"))
      around(*r, limitOf(*r), noReceptacle, f, {}, rim, false);
    at(electrical("receptacle-not-over-water"), noReceptacle, f, std::nullopt);
    if (const Rule* r = electrical("light-off-water"))
      around(*r, limitOf(*r), noHangingLight, f, rim, up(*r), false);
    at(electrical("switch-not-in-water"), noSwitch, f, std::nullopt);
    if (const Rule* r = electrical("light-listed")) at(r, listedLight, f, up(*r));
    if (const Rule* r = electrical("light-listed-zone"))
      around(*r, r->sizes.size() > 1 ? r->sizes[1] : Length{}, listedLight, f, {}, up(*r), false);
  }

  void basin(const PlacedFixture& f) {
    if (const Rule* near = canadian("basin-receptacle-distance"))
      for (const checks::Bowl& bowl : checks::bowlsOf(f))
        for (const WallFrame& wall : layout_.walls)
          for (const Stretch& s : stretchesWithin({wall.from, wall.to}, bowl.least, limitOf(*near)))
            add(*near, basinReceptacle, f, wall, s, {}, std::nullopt);
    const Rule* reach = electrical("basin-receptacle-distance");
    if (reach == nullptr) return;
    const Rule *drop = electrical("basin-receptacle-drop"), *rise = electrical("basin-receptacle-rise");
    const Length counter =
        f.fixture.height.value_or(typicalFixture(f.fixture.kind, Option{}).height.value_or(Length{}));
    const Length bottom = drop == nullptr ? Length{} : std::max(Length{}, counter - limitOf(*drop));
    std::optional<Length> top;
    if (rise != nullptr) top = counter + limitOf(*rise);
    for (const checks::Bowl& bowl : checks::bowlsOf(f))
      for (std::size_t i = 0; i < layout_.walls.size(); ++i) {
        const WallFrame& wall = layout_.walls[i];
        if (!checks::isBesideBasin(layout_, f, static_cast<int>(i))) continue;
        for (const Stretch& s : stretchesWithin({wall.from, wall.to}, bowl.least, limitOf(*reach)))
          add(*reach, basinReceptacle, f, wall, s, bottom, top);
      }
  }

  // As high as the cord is long: the sources give no height.
  void toilet(const PlacedFixture& f) {
    const Rule* cord = rule("craft", "toilet-seat-reach");
    if (cord == nullptr || yesNo(f.fixture.facts, "electric_seat") == false) return;
    around(*cord, limitOf(*cord), seatReceptacle, f, {}, limitOf(*cord), true);
  }

  const Layout& layout_;
  RulesInForce rules_;
  std::vector<ElectricalZone> found_;
};

}  // namespace

std::vector<ElectricalZone> electricalZones(const Layout& layout, const BookChoice& choice) {
  if (layout.room.empty()) return {};
  return Zones(layout, choice).all();
}

std::string_view wordsOf(ElectricalZoneKind kind) {
  switch (kind) {
    case noReceptacle:
      return "No receptacle here";
    case lastReceptacle:
      return "Receptacle only where none can be farther";
    case noHangingLight:
      return "No hanging light before this wall";
    case noSwitch:
      return "No switch here";
    case listedLight:
      return "Lights here are listed for damp places";
    case basinReceptacle:
      return "Receptacle of the basin";
    case seatReceptacle:
      return "Receptacle for a toilet seat";
  }
  return {};
}

}  // namespace elbowroom

#include "core/rules/checks/doors.h"

#include <algorithm>
#include <cmath>

#include "core/people/body.h"
#include "core/rules/checks/common.h"
#include "core/rules/checks/people.h"
#include "core/rules/checks/shower_doors.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

// The far edge of an open leaf swings wider than the leaf (building article on clashing doors, 5/8 to 1 1/4
// in).
constexpr Length kHingeStandOff = 1_in;

bool swingsIn(const PlacedOpening& o) {
  return o.opening.kind == OpeningKind::door && o.leaves_inside && !o.leaves.empty();
}

Place doorway(const PlacedOpening& o) { return lineFrom(o.left, o.right); }

// The floor that the leaf cannot reach: from the angle at which it is stopped to its full swing.
Place rest(const Leaf& leaf, Angle opened) {
  const Angle signed_opened = leaf.sweep < Angle{} ? -opened : opened;
  const Leaf beyond{leaf.hinge, leaf.width, leaf.closed.turned(signed_opened), leaf.sweep - signed_opened};
  return {Place::Kind::zone, sectorOutline(beyond, 12)};
}

// Where a person stands at a basin; along the whole front where the basins' places are not known.
Outline standingAt(const PlacedFixture& f) {
  const bool one = basinsOf(f) == 1;
  const Length half = one ? standingWidth() / 2 : f.fixture.width / 2;
  const Point left = f.front_center + half * leftOf(f), right = f.front_center + half * rightOf(f);
  return {left, right, right + standingDepth() * f.facing, left + standingDepth() * f.facing};
}

Outline strip(const PlacedFixture& f, Length deep) {
  return {f.front.a, f.front.b, f.front.b + deep * f.facing, f.front.a + deep * f.facing};
}

constexpr Length kFarAhead = 60_in;

// How far ahead of the fixture the leaf's sweep begins; nullopt beyond kFarAhead.
std::optional<Length> aheadToSector(const Leaf& leaf, const PlacedFixture& f) {
  if (!gapToSector(leaf, strip(f, kFarAhead)).overlap) return std::nullopt;
  Length free, blocked = kFarAhead;
  while (blocked - free > kContact) {
    const Length middle = (free + blocked) / 2;
    (gapToSector(leaf, strip(f, middle)).overlap ? blocked : free) = middle;
  }
  return free;
}

// Entry doors that swing in and glass doors that swing out of their shower.
struct Swinging {
  ElementId id;
  std::vector<Leaf> leaves;
  Place shut;
};
std::vector<Swinging> swingingDoors(const CheckInput& in) {
  std::vector<Swinging> doors;
  for (const PlacedOpening& o : in.layout.openings)
    if (swingsIn(o)) doors.push_back({o.opening.id, o.leaves, doorway(o)});
  for (const PlacedFixture& f : in.layout.fixtures)
    if (std::vector<Leaf> leaves = glassLeaves(f); !leaves.empty()) {
      const Leaf& first = leaves.front();
      const Place shut = lineFrom(first.hinge, first.hinge + first.width * first.closed);
      doors.push_back({f.fixture.id, std::move(leaves), shut});
    }
  return doors;
}

bool hasPulls(const PlacedFixture& f) {
  const FixtureKind kind = f.fixture.kind;
  return kind == FixtureKind::vanity || kind == FixtureKind::cabinet || kind == FixtureKind::linenCloset;
}

// The widest single door of a cabinet; a wider one has two.
constexpr Length kWidestCabinetDoor = 24_in;

// How far drawers and doors of the cabinet come out, against what is free. Where that is not stated, it is known
// to suffice only where neither a drawer as deep as the cabinet nor a door as wide as it could reach.
Measurement pullAgainst(const PlacedFixture& f, Length free, ElementId other) {
  const Length width = f.fixture.width;
  const Length most = std::max(f.fixture.depth, width > kWidestCabinetDoor ? width / 2 : width);
  Measurement m{.subjects = {f.fixture.id, other}, .measured = std::nullopt};
  m.places = {lineFrom(f.front_center, f.front_center + free * f.facing)};
  if (const auto stated = lengthOf(f.fixture.facts, "pull_out")) {
    m.measured = free;
    m.limit = *stated;
    if (free < *stated) m.places.push_back(stripBetween(f.front, f.facing, free, *stated));
  } else if (free >= most) {
    m.measured = free;
    m.limit = most;
    m.detail = "pull-at-most";
  } else {
    m.fact = "pull_out";
  }
  return m;
}

const DoorFigures* figuresFor(const CheckInput& in, const PlacedOpening& o) {
  const auto& doors = in.figures.doors;
  const auto at =
      std::find_if(doors.begin(), doors.end(), [&](const DoorFigures& d) { return d.id == o.opening.id; });
  return at == doors.end() ? nullptr : &*at;
}

template <typename Counts>
std::vector<Measurement> wallNeeds(const CheckInput& in, DoorAction action, Counts trouble_counts) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    const DoorFigures* door = figuresFor(in, o);
    if (door == nullptr || o.opening.action != action) continue;
    Measurement m{.subjects = {o.opening.id}, .measured = door->wall_there, .places = {doorway(o)}};
    m.limit = door->wall_needed;
    Length worst;
    for (const Trouble& trouble : door->troubles) {
      if (!trouble_counts(trouble.kind) || trouble.short_by <= worst) continue;
      worst = trouble.short_by;
      m.subjects = {o.opening.id, trouble.other};
      m.measured = std::max(Length{}, door->wall_needed - worst);
      m.places = {doorway(o), pointAt(trouble.at)};
    }
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace

std::vector<Measurement> doorClearOpenings(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings)
    if (const DoorFigures* door = figuresFor(in, o))
      found.push_back({.subjects = {o.opening.id}, .measured = door->clear_opening, .places = {doorway(o)}});
  return found;
}

std::vector<Measurement> doorSwings(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (!swingsIn(o)) continue;
    std::optional<Measurement> worst;
    for (const Leaf& leaf : o.leaves) {
      const Angle full = leaf.sweep < Angle{} ? -leaf.sweep : leaf.sweep;
      Measurement m{.subjects = {o.opening.id}, .measured = full, .places = {doorway(o)}};
      m.limit = full;
      if (const auto touch = firstTouch(leaf, leaf.width + kHingeStandOff, in.layout.solid_outlines)) {
        const int fixture = in.layout.solid[static_cast<std::size_t>(touch->obstacle)];
        m.measured = touch->opened;
        m.subjects.push_back(in.layout.fixtures[static_cast<std::size_t>(fixture)].fixture.id);
        m.places = {pointAt(touch->at), rest(leaf, touch->opened)};
      }
      if (!worst || std::get<Angle>(*m.measured) < std::get<Angle>(*worst->measured)) worst = std::move(m);
    }
    found.push_back(std::move(*worst));
  }
  return found;
}

std::vector<Measurement> doorPairs(const CheckInput& in) {
  const std::vector<Swinging> doors = swingingDoors(in);
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < doors.size(); ++i) {
    for (std::size_t j = i + 1; j < doors.size(); ++j) {
      Measurement m{
          .subjects = {doors[i].id, doors[j].id}, .measured = true, .places = {doors[i].shut, doors[j].shut}};
      for (const Leaf& a : doors[i].leaves)
        for (const Leaf& b : doors[j].leaves)
          if (const auto at = sectorsMeet(a, b)) {
            m.measured = false;
            m.places = {pointAt(*at)};
          }
      found.push_back(std::move(m));
    }
  }
  return found;
}

std::vector<Measurement> doorsAndPeople(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const Swinging& door : swingingDoors(in)) {
    for (const PlacedFixture& f : in.layout.fixtures) {
      if (!counts(f) || !isBasin(f)) continue;
      const Outline person = standingAt(f);
      Measurement m{.subjects = {door.id, f.fixture.id},
                    .measured = true,
                    .places = {lineFrom(person[0], person[1]), {Place::Kind::zone, person}}};
      for (const Leaf& leaf : door.leaves)
        if (gapToSector(leaf, person).overlap) m.measured = false;
      found.push_back(std::move(m));
    }
  }
  return found;
}

std::vector<Measurement> doorsAndSitters(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const Swinging& door : swingingDoors(in)) {
    for (const PlacedFixture& f : in.layout.fixtures) {
      if (!counts(f) || f.fixture.kind != FixtureKind::toilet) continue;
      const Person* tallest = nullptr;
      for (const Person& p : in.layout.settings.people)
        if (tallest == nullptr || p.stature > tallest->stature) tallest = &p;
      const Length knees = kneesAhead(f, tallest ? *tallest : tallMan());
      const Length half = standingWidth() / 2;
      const Point left = f.front_center + half * leftOf(f), right = f.front_center + half * rightOf(f);
      const Outline sitter{left, right, right + knees * f.facing, left + knees * f.facing};
      Measurement m{.subjects = {door.id, f.fixture.id},
                    .measured = true,
                    .places = {lineFrom(left, right), {Place::Kind::zone, sitter}},
                    .detail = tallest ? "fits:" + tallest->name : "for-tall-man"};
      for (const Leaf& leaf : door.leaves)
        if (gapToSector(leaf, sitter).overlap) m.measured = false;
      found.push_back(std::move(m));
    }
  }
  return found;
}

std::vector<Measurement> doorsAndPulls(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const Swinging& door : swingingDoors(in)) {
    for (const PlacedFixture& f : in.layout.fixtures) {
      if (!counts(f) || !hasPulls(f)) continue;
      std::optional<Length> nearest;
      for (const Leaf& leaf : door.leaves)
        if (const auto ahead = aheadToSector(leaf, f))
          nearest = nearest ? std::min(*nearest, *ahead) : *ahead;
      if (!nearest) continue;
      found.push_back(pullAgainst(f, *nearest, door.id));
    }
  }
  return found;
}

std::vector<Measurement> pullTravels(const CheckInput& in) {
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f) || !hasPulls(f) || in.layout.room.empty()) continue;
    const Ahead& ahead = in.around[i].front;
    found.push_back(pullAgainst(f, ahead.distance, idOf(in.layout, ahead)));
  }
  return found;
}

std::vector<Measurement> doorsBeforeFixtures(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (!swingsIn(o)) continue;
    for (const PlacedFixture& f : in.layout.fixtures) {
      if (!counts(f) || !(isToilet(f) || isBasin(f))) continue;
      std::optional<Length> nearest;
      for (const Leaf& leaf : o.leaves)
        if (const auto ahead = aheadToSector(leaf, f))
          nearest = nearest ? std::min(*nearest, *ahead) : *ahead;
      if (!nearest) continue;
      Measurement m{.subjects = {o.opening.id, f.fixture.id}, .measured = *nearest};
      m.places = {lineFrom(f.front_center, f.front_center + *nearest * f.facing)};
      if (*nearest < limitOf(in)) m.places.push_back(stripBetween(f.front, f.facing, *nearest, limitOf(in)));
      found.push_back(std::move(m));
    }
  }
  return found;
}

std::vector<Measurement> pocketWalls(const CheckInput& in) {
  return wallNeeds(in, DoorAction::pocket, [](DoorTrouble t) {
    return t == DoorTrouble::pocketMeetsCorner || t == DoorTrouble::pocketMeetsOpening;
  });
}

std::vector<Measurement> slideWalls(const CheckInput& in) {
  return wallNeeds(in, DoorAction::surfaceSliding, [](DoorTrouble t) {
    return t == DoorTrouble::noWallToSlideOn || t == DoorTrouble::slideMeetsOpening ||
           t == DoorTrouble::slideMeetsFixture;
  });
}

std::vector<Measurement> pocketPipes(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    const DoorFigures* door = figuresFor(in, o);
    if (door == nullptr || o.opening.action != DoorAction::pocket) continue;
    Measurement m{.subjects = {o.opening.id}, .measured = true, .places = {doorway(o)}};
    for (const Trouble& trouble : door->troubles) {
      if (trouble.kind != DoorTrouble::pocketMeetsPipes) continue;
      m.measured = false;
      m.subjects = {o.opening.id, trouble.other};
      m.places = {pointAt(trouble.at)};
    }
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks

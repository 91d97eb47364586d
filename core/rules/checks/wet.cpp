#include "core/rules/checks/wet.h"

#include <algorithm>

#include "core/rules/checks/shower_sides.h"
#include "core/rules/checks/showers.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

constexpr Length kNarrow = 25_in;

Measurement withFootprint(const PlacedFixture& f) {
  return {.subjects = {f.fixture.id}, .places = {pointAt(f.center), {Place::Kind::zone, f.footprint}}};
}

struct Seat {
  Length depth, shorter, longer;
};
// nullopt without a stated seat.
std::optional<Seat> seatOf(const PlacedFixture& f) {
  const auto depth = lengthOf(f.fixture.facts, "seat_depth");
  if (!counts(f) || !isShower(f) || !depth) return std::nullopt;
  const auto [shorter, longer] = std::minmax(f.fixture.width, f.fixture.depth);
  if (yesNo(f.fixture.facts, "fold_down_seat") == true) return Seat{Length{}, shorter, longer};
  return Seat{std::min(*depth, shorter), shorter, longer};
}

template <typename T>
void decide(Measurement& m, T across, T lengthwise, T limit) {
  if (lengthwise >= limit)
    m.measured = lengthwise;
  else if (across < limit)
    m.measured = across;
  else
    m.detail = "seat-side-not-stated";
}

std::vector<Measurement> finishes(const CheckInput& in, bool above_drain) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !takesShowers(in.layout, f) || (above_drain && !isShower(f))) continue;
    Measurement m = withFootprint(f);
    const auto height = lengthOf(f.fixture.facts, "wet_wall_height");
    const auto curb_above_drain = lengthOf(f.fixture.facts, "curb_above_drain");
    if (!height)
      m.fact = "wet_wall_height";
    else if (!above_drain)
      m.measured = *height;
    else if (f.fixture.curb && curb_above_drain)
      m.measured = *height - (*f.fixture.curb - *curb_above_drain);
    else
      m.fact = f.fixture.curb ? "curb_above_drain" : "curb";
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace

std::optional<HeadPlace> headOf(const Layout& layout, const PlacedFixture& f) {
  for (const WallItem& item : layout.option.on_walls) {
    if (item.kind != "shower-head" || item.shower != f.fixture.id) continue;
    if (const WallFrame* wall = findWallFrame(layout, item.wall))
      return HeadPlace{item.id, wall->at(item.along), wall->inward};
  }
  for (const CeilingItem& item : layout.option.on_ceiling)
    if ((item.kind == "shower-head" || item.kind == "head") && contains(f.footprint, item.at))
      return HeadPlace{item.id, item.at, std::nullopt};
  return std::nullopt;
}

bool takesShowers(const Layout& layout, const PlacedFixture& f) {
  return isShower(f) || (isBath(f) && headOf(layout, f));
}

std::vector<Entry> entriesOf(const Layout& layout, const PlacedFixture& f) {
  std::vector<Entry> entries;
  for (const ShowerSide& side : sidesOf(f)) {
    if (const Pane* pane = paneOf(f.fixture, side.side)) {
      if (pane->door) entries.push_back({side.line, side.out, *pane->door});
      continue;
    }
    const bool open = f.fixture.glass.empty() ? side.side == Side::front : !atWall(layout, side);
    if (open) entries.push_back({side.line, side.out, side.length});
  }
  return entries;
}

std::vector<Measurement> showerOpenings(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f)) continue;
    const std::vector<Entry> entries = entriesOf(in.layout, f);
    const auto widest = std::max_element(entries.begin(), entries.end(),
                                         [](const Entry& a, const Entry& b) { return a.width < b.width; });
    Measurement m{
        .subjects = {f.fixture.id}, .measured = Length{}, .places = {lineFrom(f.front.a, f.front.b)}};
    if (widest != entries.end()) {
      const Point middle = midpoint(widest->line.a, widest->line.b);
      const Direction along = Direction::between(widest->line.a, widest->line.b);
      m.measured = widest->width;
      m.places = {lineFrom(middle - (widest->width / 2) * along, middle + (widest->width / 2) * along)};
    }
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> seatLeavesArea(const CheckInput& in) {
  std::vector<Measurement> found;
  const auto* limit = in.rule == nullptr ? nullptr : std::get_if<Area>(&in.rule->limit);
  for (const PlacedFixture& f : in.layout.fixtures) {
    const std::optional<Seat> seat = seatOf(f);
    if (!seat || limit == nullptr) continue;
    Measurement m = withFootprint(f);
    decide(m, seat->shorter * (seat->longer - seat->depth), seat->longer * (seat->shorter - seat->depth),
           *limit);
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> seatLeavesSide(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const std::optional<Seat> seat = seatOf(f);
    if (!seat) continue;
    Measurement m = withFootprint(f);
    const Length left = seat->longer - seat->depth;
    decide(m, std::min(seat->shorter, left), std::min(seat->shorter - seat->depth, seat->longer),
           limitOf(in));
    const bool large = (seat->shorter * left).squareInches() >= kLargeSquareInches;
    if (m.measured && std::get<Length>(*m.measured) < limitOf(in) && large) {
      m.limit = kNarrow;
      m.detail = "large-shower";
    }
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> wallFinishes(const CheckInput& in) { return finishes(in, false); }
std::vector<Measurement> wallFinishesAboveDrain(const CheckInput& in) { return finishes(in, true); }

std::vector<Measurement> wallFinishesAboveHead(const CheckInput& in) {
  std::vector<Measurement> found = finishes(in, false);
  for (Measurement& m : found) {
    const PlacedWallItem* head = nullptr;
    for (const PlacedWallItem& i : in.layout.on_walls)
      if (i.item.kind == "shower-head" && i.item.shower == m.subjects.front()) head = &i;
    if (!m.measured) continue;
    if (head == nullptr) {
      m.measured.reset();
      m.detail = "head-not-placed";
      continue;
    }
    m.measured = std::get<Length>(*m.measured) - (head->bottom + head->top) / 2;
    m.subjects.push_back(head->item.id);
  }
  return found;
}

std::vector<Measurement> headsAwayFromEntry(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f)) continue;
    const auto head = headOf(in.layout, f);
    Measurement m{.subjects = {f.fixture.id}, .places = {pointAt(f.center)}};
    if (!head) {
      m.detail = "head-not-placed";
      found.push_back(std::move(m));
      continue;
    }
    m.subjects.push_back(head->id);
    m.places = {pointAt(head->at)};
    bool at_entry = false;
    for (const Entry& entry : entriesOf(in.layout, f)) {
      if (!head->facing || dot(entry.line.a - head->at, *head->facing) <= Length{}) continue;
      if (dot(1_in * *head->facing, entry.outward) < 0.7_in) continue;
      const Direction along = Direction::between(entry.line.a, entry.line.b);
      const Length across = dot(head->at - midpoint(entry.line.a, entry.line.b), along);
      // The door's place along its glass is not stated; the whole side counts.
      if (abs(across) > distance(entry.line.a, entry.line.b) / 2) continue;
      at_entry = true;
      m.places = {lineFrom(head->at, head->at + dot(entry.line.a - head->at, entry.outward) * entry.outward)};
    }
    m.measured = !at_entry;
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks

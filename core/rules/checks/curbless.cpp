#include "core/rules/checks/curbless.h"

#include <algorithm>

#include "core/base/length_text.h"
#include "core/rules/check.h"
#include "core/rules/checks/falls.h"
#include "core/rules/checks/shower_sides.h"
#include "core/rules/checks/wet.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

constexpr Length kDoorGaps = 1_in;  // at hinges and latch, together

bool isCurbless(const PlacedFixture& f) { return isShower(f) && f.fixture.curb == Length{}; }
bool anyChair(const CheckInput& in) {
  const auto& people = in.layout.settings.people;
  return std::any_of(people.begin(), people.end(), [](const Person& p) { return p.chair.has_value(); });
}

Measurement of(const PlacedFixture& f) {
  return {.subjects = {f.fixture.id},
          .measured = std::nullopt,
          .places = {pointAt(f.center), {Place::Kind::zone, f.footprint}}};
}

template <typename Wanted, typename Make>
std::vector<Measurement> each(const CheckInput& in, Wanted wanted, Make make) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !wanted(f)) continue;
    found.push_back(of(f));
    make(found.back(), f);
  }
  return found;
}

// From where one comes in to where the water leaves; nullopt: `missing` says what the plan does not state.
std::optional<Length> runToDrain(const PlacedFixture& f, std::string& missing) {
  const auto type = wordOf(f.fixture.facts, "drain_type"), side = wordOf(f.fixture.facts, "drain_side");
  if (!type)
    missing = "drain_type";
  else if (*type == "point")
    return centreFall(f.fixture.width, f.fixture.depth).corner;
  else if (!side)
    missing = "drain_side";
  else if (*side == "front")
    return Length{};
  else
    return *side == "back" ? f.fixture.depth : f.fixture.width;
  return std::nullopt;
}

std::string bothUnits(Length length) {
  return lengthText(length, Unit::inches) + " (" + lengthText(length, Unit::millimetres) + ")";
}

}  // namespace

std::vector<Measurement> curblessDrops(const CheckInput& in) {
  return each(in, isCurbless, [&](Measurement& m, const PlacedFixture& f) {
    const auto run = runToDrain(f, m.fact);
    if (!run) return;
    m.limit = dropOver(*run);
    const auto lowered = lengthOf(f.fixture.facts, "floor_recess");
    const Length raised = lengthOf(in.layout.option.room.facts, "floor_build_up").value_or(Length{});
    if (lowered)
      m.measured = *lowered + raised;
    else
      m.fact = "floor_recess";
  });
}

std::vector<Measurement> centreFalls(const CheckInput& in) {
  const auto wanted = [](const PlacedFixture& f) {
    return isShower(f) && wordOf(f.fixture.facts, "drain_type") == "point" && f.footprint.size() == 4;
  };
  return each(in, wanted, [](Measurement& m, const PlacedFixture& f) {
    m.measured = percentOf(centreFall(f.fixture.width, f.fixture.depth).steepest);
    m.detail = "drain-in-middle";
  });
}

std::vector<Measurement> linearDrains(const CheckInput& in) {
  if (!anyChair(in)) return {};
  return each(in, isCurbless, [](Measurement& m, const PlacedFixture& f) {
    if (const auto type = wordOf(f.fixture.facts, "drain_type"))
      m.measured = *type == "linear";
    else
      m.fact = "drain_type";
  });
}

std::vector<Measurement> fallsForChair(const CheckInput& in) {
  if (!anyChair(in)) return {};
  return each(in, isCurbless, [](Measurement& m, const PlacedFixture& f) {
    if (const auto fall = amountOf(f.fixture.facts, "floor_slope"))
      m.measured = *fall;
    else
      m.fact = "floor_slope";
  });
}

std::vector<Measurement> curblessLengths(const CheckInput& in) {
  if (!anyChair(in)) return {};
  return each(in, isCurbless, [](Measurement& m, const PlacedFixture& f) {
    m.measured = std::max(f.fixture.width, f.fixture.depth);
  });
}

std::vector<Measurement> headsFromOpenSide(const CheckInput& in) {
  const auto wanted = [](const PlacedFixture& f) {
    const auto& glass = f.fixture.glass;
    return isShower(f) && !glass.empty() &&
           std::none_of(glass.begin(), glass.end(), [](const Pane& p) { return p.door.has_value(); });
  };
  std::vector<Measurement> found = each(in, wanted, [&](Measurement& m, const PlacedFixture& f) {
    const std::vector<Entry> open = entriesOf(in.layout, f);
    if (open.empty()) {
      m.subjects.clear();
      return;
    }
    const auto head = headOf(in.layout, f);
    if (!head) {
      m.detail = "head-not-placed";
      return;
    }
    m.subjects.push_back(head->id);
    for (const Entry& entry : open) {
      const Gap gap = gapBetween(entry.line, Segment{head->at, head->at});
      if (m.measured && gap.distance >= std::get<Length>(*m.measured)) continue;
      m.measured = gap.distance;
      m.places = {lineFrom(head->at, gap.from)};
    }
  });
  found.erase(
      std::remove_if(found.begin(), found.end(), [](const Measurement& m) { return m.subjects.empty(); }),
      found.end());
  return found;
}

std::vector<Measurement> glassHeights(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f)) continue;
    std::optional<Length> lowest;
    bool silent = false;
    for (const Pane& pane : f.fixture.glass) {
      silent |= !pane.height;
      if (pane.height && (!lowest || *pane.height < *lowest)) lowest = pane.height;
    }
    if (!lowest && !silent) continue;
    found.push_back(of(f));
    // A pane that says nothing can only make it worse.
    if (lowest && (!silent || *lowest < limitOf(in)))
      found.back().measured = *lowest;
    else
      found.back().fact = "glass.height";
  }
  return found;
}

std::vector<Measurement> fixedGlassWidths(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f)) continue;
    std::optional<Measurement> narrowest;
    for (const Pane& pane : f.fixture.glass) {
      const ShowerSide side = sideOf(f, pane.side);
      const Length fixed = side.length - pane.door.value_or(Length{});
      if (pane.door && fixed < kDoorGaps) continue;  // the door is all of it
      if (narrowest && fixed >= std::get<Length>(*narrowest->measured)) continue;
      narrowest = {.subjects = {f.fixture.id}, .measured = fixed, .places = {lineFrom(side.line.a, side.line.b)}};
    }
    if (narrowest) found.push_back(std::move(*narrowest));
  }
  return found;
}

std::vector<Measurement> openWetFloors(const CheckInput& in) {
  const auto wanted = [&](const PlacedFixture& f) {
    const auto sides = sidesOf(f);
    return isCurbless(f) && f.fixture.glass.empty() && yesNo(f.fixture.facts, "curtain") != true &&
           std::count_if(sides.begin(), sides.end(), [&](const ShowerSide& s) { return !atWall(in.layout, s); }) >= 2;
  };
  return each(in, wanted, [&](Measurement& m, const PlacedFixture& f) {
    const Length side = std::min(f.fixture.width, f.fixture.depth);
    if (side >= limitOf(in) - kMetTolerance || yesNo(f.fixture.facts, "curtain"))
      m.measured = side;
    else
      m.fact = "curtain";
  });
}

std::vector<Measurement> doorSteps(const CheckInput& in) {
  const auto step = lengthOf(in.layout.option.room.facts, "floor_build_up");
  if (!step || *step == Length{}) return {};
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (o.opening.kind != OpeningKind::door) continue;
    Measurement m{.subjects = {o.opening.id}, .measured = *step, .places = {lineFrom(o.left, o.right)}};
    m.detail = *step <= limitOf(in) ? "step-bevel:" + bothUnits(bevelRun(*step))
                                    : "step-ramp:" + bothUnits(rampRun(*step));
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks

#include "core/works/order.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/plan/catalogue.h"
#include "core/plan/wall_catalogue.h"
#include "core/works/backing.h"

namespace elbowroom {
namespace {

using Reasons = std::map<std::string_view, std::vector<ElementId>>;

bool isNew(Status s) { return s == Status::fresh || s == Status::move; }
bool goes(Status s) { return s == Status::remove || s == Status::move; }

void note(Reasons& reasons, std::string_view step, const ElementId& id) {
  addOnce(reasons[step], id);
}

bool isWet(FixtureKind k) { return k == FixtureKind::shower || k == FixtureKind::bath; }

void fixtureReasons(const Layout& layout, Reasons& reasons) {
  for (const Fixture& f : layout.option.fixtures) {
    if (goes(f.status)) note(reasons, "demolish", f.id);
    if (!isNew(f.status)) continue;
    note(reasons, "fixtures", f.id);
    if (hasDrain(f.kind)) note(reasons, "rough-plumbing", f.id);
    if (isWet(f.kind)) {
      note(reasons, "waterproof", f.id);
      note(reasons, "tile", f.id);
    }
    if (f.kind == FixtureKind::shower) {
      note(reasons, "drain-set", f.id);
      if (lengthOf(f.facts, "floor_recess").value_or(Length{}) > Length{}) note(reasons, "subfloor-recess", f.id);
    }
    if (!f.glass.empty()) {
      note(reasons, "glass-measure", f.id);
      note(reasons, "glass-fit", f.id);
    }
    if (f.kind == FixtureKind::vanity) {
      note(reasons, "vanity", f.id);
      note(reasons, "counter", f.id);
    }
  }
}

void wallReasons(const Layout& layout, Reasons& reasons) {
  for (const PlacedWallItem& placed : layout.on_walls) {
    const WallItem& i = placed.item;
    const WallKindInfo* info = findWallKind(i.kind);
    if (goes(i.status)) note(reasons, "demolish", i.id);
    if (info == nullptr || !isNew(i.status)) continue;
    if (info->electrical) note(reasons, "boxes", i.id);
    if (info->use == WallUse::air) note(reasons, "fan-duct", i.id);
    if (placed.recessed && info->in_bay) note(reasons, "niche-frame", i.id);
    if (info->use == WallUse::water) note(reasons, "rough-plumbing", i.id);
    if (i.kind == "mirror") {
      note(reasons, "mirror-measure", i.id);
      note(reasons, "mirror-fit", i.id);
    } else if (info->use != WallUse::box) {
      note(reasons, "fixtures", i.id);
    }
  }
  for (const BackingZone& zone : backingZones(layout))
    for (const ElementId& id : zone.items) {
      const WallItem* item = findWallItem(layout.option, id);
      const Fixture* fixture = findFixture(layout.option, id);
      if ((item && isNew(item->status)) || (fixture && isNew(fixture->status))) note(reasons, "backing", id);
    }
}

Reasons reasonsOf(const Layout& layout) {
  Reasons reasons;
  fixtureReasons(layout, reasons);
  wallReasons(layout, reasons);
  for (const CeilingItem& c : layout.option.on_ceiling) {
    const CeilingKindInfo* info = findCeilingKind(c.kind);
    if (info == nullptr) continue;
    if (info->electrical) note(reasons, "boxes", c.id);
    if (c.kind == "fan") note(reasons, "fan-duct", c.id);
    if (info->of_shower) note(reasons, "rough-plumbing", c.id);
    note(reasons, "fixtures", c.id);
  }
  for (const Opening& o : layout.option.openings)
    if (o.kind == OpeningKind::door && o.action == DoorAction::pocket && !reasons.empty())
      note(reasons, "pocket-frame", o.id);
  const auto any = [&](std::initializer_list<std::string_view> steps) {
    return std::any_of(steps.begin(), steps.end(), [&](std::string_view s) { return reasons.contains(s); });
  };
  const bool in_walls = any({"rough-plumbing", "boxes", "fan-duct", "niche-frame", "pocket-frame", "backing"});
  if (in_walls) {
    reasons["demolish"];
    reasons["close-walls"];
  }
  if (any({"rough-plumbing", "boxes", "fan-duct", "drain-set"})) {
    reasons["permit"];
    reasons["inspection"];
    reasons["final-inspection"];
  }
  if (!reasons.empty()) reasons["choose"];
  if (any({"fixtures", "tile"})) reasons["long-lead"];
  return reasons;
}

}  // namespace

std::vector<WorkStep> orderOfWorks(const Layout& layout) {
  const Reasons reasons = reasonsOf(layout);
  std::map<std::string_view, std::set<std::string_view>> before;  // everything that a step comes after
  std::map<std::string_view, std::vector<std::string_view>> nearest;
  std::vector<WorkStep> order;
  for (const WorkStep& step : allWorkSteps()) {
    std::vector<std::string_view> direct;
    for (const std::string_view a : step.after) {
      before[step.id].insert(a);
      before[step.id].insert(before[a].begin(), before[a].end());
      if (reasons.contains(a))
        direct.push_back(a);
      else
        direct.insert(direct.end(), nearest[a].begin(), nearest[a].end());
    }
    std::vector<std::string_view> kept;
    for (const std::string_view a : direct) {
      const bool implied = std::any_of(direct.begin(), direct.end(),
                                       [&](std::string_view b) { return b != a && before[b].contains(a); });
      if (!implied && std::find(kept.begin(), kept.end(), a) == kept.end()) kept.push_back(a);
    }
    nearest[step.id] = kept;
    const auto reason = reasons.find(step.id);
    if (reason == reasons.end()) continue;
    order.push_back(step);
    order.back().after = kept;
    order.back().elements = reason->second;
  }
  return order;
}

}  // namespace elbowroom

// What has to be in the walls before they close: where blocking or plywood is needed, for what, of what, and how
// well that is known. Pure; from the plan alone.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/plan/layout.h"
#include "core/rules/rule.h"

namespace elbowroom {

// What is fixed there.
enum class BackingFor { bar, foldingBar, holder, heater, basin, bench, mirror, glassHinge };

// How it is built for each, with the text it is from. `caution`: what no source supports, or who has to say.
struct BackingBuild {
  std::string_view material;
  std::string_view load;  // "250 lbf (1112 N) at any point"; "no load read anywhere"
  std::string_view source;
  Grade grade;
  std::string_view caution;
};
BackingBuild buildFor(BackingFor);

struct BackingZone {
  ElementId wall;
  Length from, to;     // along the wall, from its left end
  Length bottom, top;  // above the finished floor
  std::vector<ElementId> items;  // what is fixed there; `later`: the toilet, bath or shower a bar may come to
  BackingFor use = BackingFor::bar;
  bool later = false;
  std::string_view material;
  std::string load;  // with the weight of a mirror, in pounds and kilograms
  std::string_view source;
  Grade grade = Grade::commonPractice;
  std::string_view caution;  // may be empty
  // The plan states backing that does for everything in it (core/plan/backed.h), as the rules have it.
  bool answered = false;
};

// One zone for every bar, holder, rail, hook, shelf, heater, mirror, wall-hung basin or bench and for the side on
// which a glass door hangs; and, without one there yet, for bars that may come to a toilet, bath or shower. What
// is to be removed asks for nothing. Heights: bars 30 to 38 in (Fair Housing Act Design Manual chapter 6, read second
// hand) widened to the bar itself; for what is thinner than those 8 in, and for bars elsewhere, 8 in about its middle
// (nobody publishes another height); everything else its own. Where the wall's studs are stated, a zone for blocking
// reaches from stud to stud. Zones of one use that overlap are one. Ordered by wall, then from the left. Zones for
// later leave openings out.
std::vector<BackingZone> backingZones(const Layout&);

// Weight of plain glass of this size, in pounds: 2500 kg per cubic metre (from memory), so that 3/8 in weighs
// 4.88 lb per square foot.
Amount glassWeight(Area, Length thickness);

}  // namespace elbowroom

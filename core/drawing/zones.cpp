#include <map>

#include "core/drawing/draw_plan.h"
#include "core/drawing/pen.h"
#include "core/rules/rule.h"

namespace elbowroom {

DisplayList drawClearZones(const Layout& layout, const Report& report, const DrawStyle& style) {
  DisplayList list;
  if (!style.clear_zones) return list;
  // The deepest zone of the strongest level; a drawing with every book's zone cannot be read.
  struct Zone {
    Level level;
    Length depth;
  };
  std::map<ElementId, Zone> zones;
  for (const Finding& finding : report.findings) {
    const auto* depth = finding.limit ? std::get_if<Length>(&*finding.limit) : nullptr;
    if (depth == nullptr || finding.subjects.empty() ||
        finding.rule.find("-clear-front") == std::string::npos)
      continue;
    const auto [it, fresh] = zones.try_emplace(finding.subjects.front(), Zone{finding.level, *depth});
    if (fresh) continue;
    const bool stronger = finding.level < it->second.level;
    const bool deeper = finding.level == it->second.level && *depth > it->second.depth;
    if (stronger || deeper) it->second = {finding.level, *depth};
  }
  for (const PlacedFixture& placed : layout.fixtures) {
    const auto it = zones.find(placed.fixture.id);
    if (it == zones.end() || placed.fixture.status == Status::remove) continue;
    const Vector ahead = it->second.depth * placed.facing;
    const Segment& front = placed.front;
    list.push_back({PolyPrim{{front.a, front.a + ahead, front.b + ahead, front.b}, false, false},
                    Role::clearZone, placed.fixture.id});
  }
  return list;
}

}  // namespace elbowroom

#include "core/drawing/dimension_rows.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/sweep.h"

namespace elbowroom {
namespace {

double along(const DimensionGroup& g, Point p) { return dot(p - Point{}, g.along).inches(); }
double outward(const DimensionGroup& g, Point p) { return dot(p - Point{}, g.outward).inches(); }

struct Station {
  double s;
  bool centreline = false;
};

// The wall's corners and what lies between them, less what repeats a station.
void addRow(DimensionGroup& group, const WallFrame& wall, std::vector<Station> between, int rank) {
  const double s0 = along(group, wall.from), s1 = along(group, wall.to);
  const double face = outward(group, wall.from) + wall.thickness.inches();
  std::sort(between.begin(), between.end(), [](const Station& a, const Station& b) { return a.s < b.s; });
  DimensionRow row;
  row.rank = rank;
  const auto push = [&](double s, bool centreline) {
    if (!row.stations.empty() && s - row.stations.back() < 1.0 / 16) return;
    row.stations.push_back(s), row.starts.push_back(face), row.centreline.push_back(centreline);
  };
  push(s0, false);
  for (const Station& station : between) {
    if (station.s > s0 && station.s < s1 - 1.0 / 16) push(station.s, station.centreline);
  }
  push(s1, false);
  if (row.stations.size() < 2 || (rank < 2 && row.stations.size() < 3)) return;
  for (const DimensionRow& other : group.rows) {
    const bool same = other.stations.size() == row.stations.size() &&
                      std::equal(row.stations.begin(), row.stations.end(), other.stations.begin(),
                                 [](double a, double b) { return std::abs(a - b) < 1.0 / 64; });
    if (same) return;
  }
  group.rows.push_back(std::move(row));
}

// The wall that a thing standing free is measured along: the longest one on this side that it stands before.
int wallBefore(const Layout& layout, const DimensionGroup& group, const std::vector<int>& walls, Point p) {
  int best = -1;
  for (const int w : walls) {
    const WallFrame& wall = layout.walls[static_cast<std::size_t>(w)];
    const double s = along(group, p);
    if (s <= along(group, wall.from) || s >= along(group, wall.to)) continue;
    if (best < 0 || wall.length > layout.walls[static_cast<std::size_t>(best)].length) best = w;
  }
  return best;
}

void extend(DimensionGroup& group, const Outline& outline, double from, double to) {
  for (const Point p : outline) {
    const double s = along(group, p);
    if (group.square || (s >= from && s <= to)) group.base = std::max(group.base, outward(group, p));
  }
}

void fillGroup(const Layout& layout, DimensionGroup& group, const std::vector<int>& walls) {
  double low = 1e9, high = -1e9;
  group.base = -1e9;
  for (const int w : walls) {
    const WallFrame& wall = layout.walls[static_cast<std::size_t>(w)];
    low = std::min(low, along(group, wall.from)), high = std::max(high, along(group, wall.to));
    group.base = std::max(group.base, outward(group, wall.from) + wall.thickness.inches());
  }
  for (const WallFrame& wall : layout.walls) extend(group, wall.body, low, high);
  for (const PlacedOpening& opening : layout.openings) {
    for (const Leaf& leaf : opening.leaves) extend(group, sectorOutline(leaf), low, high);
  }
  for (const int w : walls) {
    const WallFrame& wall = layout.walls[static_cast<std::size_t>(w)];
    for (const PlacedOpening& opening : layout.openings) {
      if (opening.wall != w) continue;
      addRow(group, wall, {{along(group, opening.left)}, {along(group, opening.right)}}, 0);
    }
    for (const PlacedFixture& placed : layout.fixtures) {
      if (placed.wall != w || placed.fixture.status == Status::remove) continue;
      addRow(group, wall, {{along(group, placed.center), true}}, 1);
    }
  }
  // Things standing free are located from below and from the left.
  if (group.square && (group.outward.y < -0.5 || group.outward.x < -0.5)) {
    for (const PlacedFixture& placed : layout.fixtures) {
      if (placed.wall >= 0 || placed.fixture.status == Status::remove) continue;
      const int w = wallBefore(layout, group, walls, placed.center);
      if (w < 0) continue;
      addRow(group, layout.walls[static_cast<std::size_t>(w)], {{along(group, placed.center), true}}, 1);
    }
  }
  for (const int w : walls) addRow(group, layout.walls[static_cast<std::size_t>(w)], {}, 2);
  if (walls.size() > 1) {
    DimensionRow whole;
    whole.rank = 3;
    for (const double s : {low, high}) {
      double start = -1e9;
      for (const int w : walls) {
        const WallFrame& wall = layout.walls[static_cast<std::size_t>(w)];
        if (std::abs(along(group, wall.from) - s) < 0.01 || std::abs(along(group, wall.to) - s) < 0.01) {
          start = std::max(start, outward(group, wall.from) + wall.thickness.inches());
        }
      }
      whole.stations.push_back(s), whole.starts.push_back(start), whole.centreline.push_back(false);
    }
    const bool said = std::any_of(group.rows.begin(), group.rows.end(), [&](const DimensionRow& r) {
      return r.rank == 2 && std::abs(r.stations.front() - low) < 0.01 &&
             std::abs(r.stations.back() - high) < 0.01;
    });
    if (!said) group.rows.push_back(whole);
  }
  std::stable_sort(group.rows.begin(), group.rows.end(),
                   [](const DimensionRow& a, const DimensionRow& b) { return a.rank < b.rank; });
}

}  // namespace

std::vector<DimensionGroup> dimensionGroups(const Layout& layout) {
  std::vector<DimensionGroup> groups;
  std::vector<std::vector<int>> members;
  for (std::size_t w = 0; w < layout.walls.size(); ++w) {
    const WallFrame& wall = layout.walls[w];
    std::size_t g = 0;
    while (g < groups.size() && groups[g].along.x * wall.along.x + groups[g].along.y * wall.along.y < 0.99996)
      ++g;
    if (g == groups.size()) {
      DimensionGroup group;
      group.along = wall.along, group.outward = wall.along.left();
      group.square = std::min(std::abs(wall.along.x), std::abs(wall.along.y)) < 0.01;
      groups.push_back(group), members.emplace_back();
    }
    members[g].push_back(static_cast<int>(w));
  }
  for (std::size_t g = 0; g < groups.size(); ++g) fillGroup(layout, groups[g], members[g]);
  // Square sides keep their places; slanting ones give way to them.
  std::stable_sort(groups.begin(), groups.end(),
                   [](const DimensionGroup& a, const DimensionGroup& b) { return a.square > b.square; });
  return groups;
}

}  // namespace elbowroom

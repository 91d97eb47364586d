// The free floor of a room by CGAL's exact polygon set operations on the raw outlines, rounded to nanometres
// only at the end: for oracles that must not rest on our own overlay.
#pragma once

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <CGAL/Polygon_set_2.h>
#include <CGAL/Polygon_with_holes_2.h>

#include <vector>

#include "tests/oracle/flush_scenes.h"

namespace elbowroom::oracle {

struct FloorPiece {
  Outline outer;
  std::vector<Outline> holes;
};

inline std::vector<FloorPiece> exactFloor(const Scene& scene) {
  using Exact = CGAL::Exact_predicates_exact_constructions_kernel;
  using Polygon = CGAL::Polygon_2<Exact>;
  const auto exact = [](const Outline& ring) {
    Polygon polygon;
    for (const Point& p : ring)
      polygon.push_back({static_cast<double>(p.x.nm()), static_cast<double>(p.y.nm())});
    if (polygon.is_clockwise_oriented()) polygon.reverse_orientation();
    return polygon;
  };
  std::vector<Polygon> things;
  for (const Outline& thing : scene.things) things.push_back(exact(thing));
  CGAL::Polygon_set_2<Exact> covered, free(exact(scene.room));
  covered.join(things.begin(), things.end());
  free.difference(covered);
  std::vector<CGAL::Polygon_with_holes_2<Exact>> found;
  free.polygons_with_holes(std::back_inserter(found));
  const auto rounded = [](const Polygon& polygon) {
    Outline ring;
    for (auto v = polygon.vertices_begin(); v != polygon.vertices_end(); ++v) {
      const Point p{Length::nanometres(std::llround(CGAL::to_double(v->x()))),
                    Length::nanometres(std::llround(CGAL::to_double(v->y())))};
      if (ring.empty() || ring.back() != p) ring.push_back(p);
    }
    if (ring.size() > 1 && ring.front() == ring.back()) ring.pop_back();
    return ring;
  };
  std::vector<FloorPiece> pieces;
  for (const auto& part : found) {
    FloorPiece piece{rounded(part.outer_boundary()), {}};
    // A turned plan is rounded to nanometres, so things that stand flush leave slivers that are no floor.
    if (piece.outer.size() < 3 || areaOf(piece.outer).squareInches() < 1e-3) continue;
    for (const Polygon& hole : part.holes()) {
      Outline ring = rounded(hole);
      if (ring.size() >= 3) piece.holes.push_back(std::move(ring));
    }
    pieces.push_back(std::move(piece));
  }
  return pieces;
}

inline std::vector<Outline> ringsOf(const std::vector<FloorPiece>& pieces) {
  std::vector<Outline> rings;
  for (const FloorPiece& piece : pieces) {
    rings.push_back(piece.outer);
    rings.insert(rings.end(), piece.holes.begin(), piece.holes.end());
  }
  return rings;
}

}  // namespace elbowroom::oracle

// Heights that serve everybody who uses a thing on a wall, where several people are named: the lower edge of
// a mirror, the middle of a light beside one or of a make-up mirror, the rim of a basin. In the elevation's
// figures.
#pragma once

#include "core/drawing/clutter.h"
#include "core/drawing/draw_elevation.h"
#include "core/people/sight.h"

namespace elbowroom {

struct ServingBand {
  ElementId item;
  Length from, to;                // of the thing, along its wall
  std::optional<HeightBand> all;  // nullopt: no height serves all of them
  HeightBand wanted;              // without one: from the lowest to the highest that somebody wants
  std::string what;               // "lower edge", "middle", "rim": what the heights are of
  std::vector<const Person*> people;
};
// Only where two people or more are concerned: a thing set to one person by name serves that one. Basins:
// those who stand and are grown; a child takes a step, a wheelchair is a matter of knees. Pointers into the
// layout.
std::vector<ServingBand> servingBands(const Layout&, std::size_t wall);

// Beside the thing a hatched bar from the lowest to the highest that serves all; where none serves all, an
// outline of what is wanted, crossed out.
DisplayList drawServingBands(const Layout&, std::size_t wall, double x, const DrawStyle&);
// "lower edge for all: 36\" to 38\"", "no height serves all"; where they find room clear of `taken`.
DisplayList labelServingBands(const Layout&, std::size_t wall, double x, Clutter& taken, const LabelRound&,
                              const DrawStyle&);

}  // namespace elbowroom

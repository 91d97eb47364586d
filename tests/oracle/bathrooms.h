// Invented bathrooms from a seed: rectangle, L or angled room with 6 to 12 things flush to walls, turned,
// overlapping or sticking out; and the free floor of one as GEOS polygons.
#pragma once

#include "tests/oracle/exact_floor.h"
#include "tests/oracle/flush_scenes.h"
#include "tests/oracle/geos_shapes.h"

namespace elbowroom::oracle {

inline Scene bathroom(Dice& dice) {
  Scene scene;
  const double w = dice.whole(60, 120), h = dice.whole(72, 144);
  switch (dice.whole(0, 2)) {
    case 0:
      scene.room = rect(0, 0, w, h);
      break;
    case 1:
      scene.room = {at(0, 0), at(w, 0), at(w, h * 0.6), at(w * 0.55, h * 0.6), at(w * 0.55, h), at(0, h)};
      break;
    default:
      scene.room = {at(0, 0), at(w, 0), at(w, h - 35), at(w - 40, h), at(0, h)};
  }
  const int things = dice.whole(6, 12);
  for (int i = 0; i < things; ++i) {
    const double a = dice.whole(24, 110) / 4.0, b = dice.whole(20, 80) / 4.0;
    const double x = dice.whole(0, static_cast<int>(4 * (w - a))) / 4.0,
                 y = dice.whole(0, static_cast<int>(4 * (h - b))) / 4.0;
    switch (dice.whole(0, 7)) {
      case 0:
        scene.things.push_back(rect(0, y, a, y + b));
        break;
      case 1:
        scene.things.push_back(rect(w - a, y, w, y + b));
        break;
      case 2:
        scene.things.push_back(rect(x, 0, x + a, b));
        break;
      case 3:
        scene.things.push_back(rect(x, h - b, x + a, h + 3));
        break;
      case 4:
        scene.things.push_back(oval(x + a / 2, b / 2, a / 2, b / 2, 24));
        break;
      case 5:
        scene.things.push_back(backedRect(at(w, h - 35), Direction::between(at(w, h - 35), at(w - 40, h)),
                                          Length::fromInches(a), Length::fromInches(b / 2)));
        break;
      case 6:
        scene.things.push_back(star(dice, x + a / 2, y + b / 2, 3, 9, dice.whole(4, 9)));
        break;
      default:
        scene.things.push_back(backedRect(at(x, y),
                                          Direction::fromAngle(Angle::fromDegrees(dice.between(0, 90))),
                                          Length::fromInches(a / 2), Length::fromInches(b / 2)));
    }
  }
  if (dice.chance(0.3)) {
    const Angle turn = Angle::fromDegrees(dice.between(0, 360));
    scene.room = turned(scene.room, turn);
    for (Outline& o : scene.things) o = turned(o, turn);
  }
  return scene;
}

// One polygon per connected piece, with its holes.
inline std::vector<Shape> freePolygons(const Scene& scene) {
  std::vector<Shape> pieces;
  for (const FloorPiece& piece : exactFloor(scene)) {
    std::vector<std::unique_ptr<geos::geom::LinearRing>> holes;
    for (const Outline& hole : piece.holes) holes.push_back(factory().createLinearRing(sequence(hole, true)));
    pieces.push_back(
        factory().createPolygon(factory().createLinearRing(sequence(piece.outer, true)), std::move(holes)));
  }
  return pieces;
}

}  // namespace elbowroom::oracle

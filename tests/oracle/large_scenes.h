// Invented floors of 1,000 to 5,000 edges, from a fixed seed: what a search meets where there is much. Five
// kinds, each in about a third of the cases turned as a whole.
#pragma once

#include "tests/oracle/flush_scenes.h"

namespace elbowroom::oracle {

enum class Large {
  scattered,  // things anywhere, many of them over each other
  rows,       // things side by side and back to back
  alike,      // the same room with the same things over and over: many largest circles alike
  corridor,   // thirty times as long as wide
  ragged,     // the wall itself has thousands of edges
};
inline constexpr Large kLarge[] = {Large::scattered, Large::rows, Large::alike, Large::corridor,
                                   Large::ragged};

inline std::size_t edgesOf(const Scene& scene) {
  std::size_t count = scene.room.size();
  for (const Outline& thing : scene.things) count += thing.size();
  return count;
}

inline void scatter(Dice& dice, Scene& scene, double w, double h, std::size_t edges) {
  while (edgesOf(scene) < edges) {
    const double x = dice.whole(0, static_cast<int>(4 * w)) / 4.0;
    const double y = dice.whole(0, static_cast<int>(4 * h)) / 4.0;
    const double a = dice.whole(24, 110) / 4.0, b = dice.whole(20, 80) / 4.0;
    switch (dice.whole(0, 4)) {
      case 0:
        scene.things.push_back(rect(x, y, x + a, y + b));
        scene.things.push_back(rect(x + a, y, x + a + b, y + b));  // flush to it
        break;
      case 1:
        scene.things.push_back(rect(x, 0, x + a, b));
        break;
      case 2:
        scene.things.push_back(oval(x, y, a / 2, b / 2, dice.whole(12, 48)));
        break;
      case 3:
        scene.things.push_back(star(dice, x, y, 3, 9, dice.whole(4, 9)));
        break;
      default:
        scene.things.push_back(backedRect(at(x, y),
                                          Direction::fromAngle(Angle::fromDegrees(dice.between(0, 90))),
                                          Length::fromInches(a), Length::fromInches(b)));
    }
  }
}

inline Scene inRows(Dice& dice, std::size_t edges) {
  const double w = 30.0 * std::ceil(std::sqrt(static_cast<double>(edges) / 5));
  Scene scene{rect(0, 0, w, w), {}};
  for (double y = 0; y < w - 60; y += 60 + dice.whole(0, 120) / 4.0) {
    for (double x = 0; x < w - 36;) {
      const double a = dice.whole(40, 140) / 4.0, b = dice.whole(40, 120) / 4.0;
      if (dice.chance(0.2)) {
        scene.things.push_back(oval(x + a / 2, y + b / 2, a / 2, b / 2, 24));
      } else {
        scene.things.push_back(rect(x, y, x + a, y + b));
        scene.things.push_back(rect(x, y - dice.whole(0, 80) / 4.0, x + a, y));
      }
      x += a + (dice.chance(0.3) ? dice.whole(0, 100) / 4.0 : 0);
    }
  }
  return scene;
}

inline Scene alike(Dice& dice, std::size_t edges) {
  Scene one;
  one.things = {{at(0, 0), at(96, 0), at(96, 120), at(60, 120), at(60, 116), at(92, 116), at(92, 4), at(4, 4),
                 at(4, 116), at(24, 116), at(24, 120), at(0, 120)},
                rect(68, 4, 88, 12),
                rect(4, 70, 25, 102),
                oval(14, 62, 7, 8, 16)};
  one.things.push_back(oval(dice.between(30, 60), 22, 14, 10, 32));
  one.things.push_back(backedRect(at(70, 60), Direction::fromAngle(Angle::fromDegrees(dice.between(0, 90))),
                                  Length::fromInches(12), Length::fromInches(9)));
  const int across = static_cast<int>(std::ceil(std::sqrt(static_cast<double>(edges / edgesOf(one)))));
  Scene scene{rect(-24, -20, 120.0 * across, 145.0 * across), {}};
  for (int i = 0; i < across * across; ++i)
    for (Outline thing : one.things) {
      for (Point& p : thing) {
        p.x += Length::fromInches(120.0 * (i % across));
        p.y += Length::fromInches(145.0 * (i / across));
      }
      scene.things.push_back(std::move(thing));
    }
  return scene;
}

inline Scene ragged(Dice& dice, std::size_t edges) {
  Scene scene;
  const double radius = static_cast<double>(edges) / 8;
  for (std::size_t i = 0; i < edges; ++i) {
    const double a = 2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(edges);
    const double r = radius * (1 + 0.2 * std::sin(5 * a)) - dice.between(0, 12);
    scene.room.push_back(at(r * std::cos(a), r * std::sin(a)));
  }
  for (int i = dice.whole(5, 40); i > 0; --i)
    scene.things.push_back(
        star(dice, dice.between(-radius, radius), dice.between(-radius, radius), 5, 60, dice.whole(4, 20)));
  return scene;
}

inline Scene largeScene(Large kind, Dice& dice) {
  const auto edges = static_cast<std::size_t>(dice.whole(1000, 4500));
  const double side = 6 * std::sqrt(static_cast<double>(edges)) * dice.between(1, 2);
  Scene scene;
  switch (kind) {
    case Large::scattered:
      scene.room = rect(0, 0, side, side);
      if (dice.chance(0.5))
        scene.room = {
            at(0, 0),   at(side, 0), at(side, side * 0.4), at(side * 0.7, side * 0.6), at(side * 0.7, side),
            at(0, side)};
      scatter(dice, scene, side, side, edges);
      break;
    case Large::corridor: {
      const double width = side / 5;
      scene.room = rect(0, 0, 30 * width, width);
      scatter(dice, scene, 30 * width, width, edges);
      break;
    }
    case Large::rows:
      scene = inRows(dice, edges);
      break;
    case Large::alike:
      scene = alike(dice, edges);
      break;
    case Large::ragged:
      scene = ragged(dice, edges);
      break;
  }
  if (dice.chance(0.35)) {
    const Angle turn = Angle::fromDegrees(dice.between(0, 360));
    scene.room = turned(scene.room, turn);
    for (Outline& o : scene.things) o = turned(o, turn);
  }
  return scene;
}

}  // namespace elbowroom::oracle

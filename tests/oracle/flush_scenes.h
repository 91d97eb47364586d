// Invented rooms with things standing flush in them, from a fixed seed: the normal case of a bathroom and the
// hard case of every overlay. Seven kinds, after the ways plans come to have coinciding edges.
#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>
#include <vector>

#include "core/geometry/measure.h"

namespace elbowroom::oracle {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}
  // The same on every standard library, unlike the std distributions.
  double between(double low, double high) {
    return low + (high - low) * static_cast<double>(engine_() >> 11) * 0x1p-53;
  }
  int whole(int low, int high) {
    return low + static_cast<int>(engine_() % static_cast<unsigned>(high - low + 1));
  }
  bool chance(double p) { return between(0, 1) < p; }

 private:
  std::mt19937_64 engine_;
};

inline Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }
inline Outline rect(double x0, double y0, double x1, double y1) {
  return {at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)};
}
inline Outline reversed(const Outline& ring) { return {ring.rbegin(), ring.rend()}; }
inline Outline turned(const Outline& ring, Angle angle) {
  const double c = std::cos(angle.radians()), s = std::sin(angle.radians());
  Outline out;
  for (const Point& p : ring) {
    out.push_back({p.x.scaled(c) - p.y.scaled(s), p.x.scaled(s) + p.y.scaled(c)});
  }
  return out;
}
// An oval, its first point at the right end.
inline Outline oval(double x, double y, double half_width, double half_depth, int corners = 48) {
  Outline out;
  for (int i = 0; i < corners; ++i) {
    const double a = 2 * std::numbers::pi * i / corners;
    out.push_back(at(x + half_width * std::cos(a), y + half_depth * std::sin(a)));
  }
  return out;
}
// A star of random radii: simple, seldom convex.
inline Outline star(Dice& dice, double x, double y, double low, double high, int corners) {
  Outline out;
  for (int i = 0; i < corners; ++i) {
    const double a = 2 * std::numbers::pi * (i + dice.between(0.1, 0.9)) / corners;
    const double r = dice.between(low, high);
    out.push_back(at(x + r * std::cos(a), y + r * std::sin(a)));
  }
  return out;
}
// A rectangle whose back runs from `from` along `along`, its depth to the left.
inline Outline backedRect(Point from, Direction along, Length width, Length depth) {
  const Vector w = width * along, d = depth * along.left();
  return {from, from + w, from + w + d, from + d};
}

struct Scene {
  Outline room;
  std::vector<Outline> things;
};

enum class Flush { quarter_grid, angled_wall, turned_plan, curves, tenth_mm, tiny_gaps, nested };
inline constexpr Flush kFlush[] = {Flush::quarter_grid, Flush::angled_wall, Flush::turned_plan, Flush::curves,
                                   Flush::tenth_mm,     Flush::tiny_gaps,   Flush::nested};

// Things side by side along the walls of a 96 x 120 room, on multiples of `grid`, some overlapping, some
// free.
inline Scene rowsAlongWalls(Dice& dice, double grid, const auto& gap) {
  const auto on = [&](double v) { return std::round(v / grid) * grid; };
  const double w = on(96), h = on(120);
  Scene scene{rect(0, 0, w, h), {}};
  if (dice.chance(0.4)) {
    const double x = on(dice.between(40, 60)), y = on(dice.between(50, 80));
    scene.room = {at(0, 0), at(w, 0), at(w, y), at(x, y), at(x, h), at(0, h)};
  }
  double x = 0;
  while (x < 90) {
    const double width = on(dice.between(12, 36)), depth = on(dice.between(10, 30));
    scene.things.push_back(rect(x + gap(), 0 + gap(), x + width, depth));
    x = x + width + (dice.chance(0.3) ? on(dice.between(0, 10)) : 0);
  }
  double y = on(dice.between(0, 30));
  while (y < 100) {
    const double width = on(dice.between(12, 36)), depth = on(dice.between(10, 30));
    scene.things.push_back(rect(0 + gap(), y + gap(), depth, y + width));
    y = y + width;
  }
  for (int i = dice.whole(0, 3); i > 0; --i) {
    const double fx = on(dice.between(0, 80)), fy = on(dice.between(0, 100));
    scene.things.push_back(rect(fx, fy, fx + on(dice.between(5, 30)), fy + on(dice.between(5, 30))));
  }
  return scene;
}

inline Scene alongAngledWall(Dice& dice) {
  const double cut_x = dice.between(20, 70), cut_y = dice.between(20, 90);
  Scene scene{{at(0, 0), at(96, 0), at(96, cut_y), at(cut_x, 120), at(0, 120)}, {}};
  const Point from = at(96, cut_y), to = at(cut_x, 120);
  const Direction along = Direction::between(from, to);
  const double run = distance(from, to).inches();
  for (double s = 0; s < run - 6;) {
    const double width = std::min(dice.between(6, 30), run - s);
    const Point start = from + Length::fromInches(s) * along;
    scene.things.push_back(
        backedRect(start, along, Length::fromInches(width), Length::fromInches(dice.between(8, 30))));
    s += width;
  }
  double x = 0;
  while (x < 90) {
    const double width = dice.between(12, 36);
    scene.things.push_back(rect(x, 0, x + width, dice.between(10, 30)));
    x += width;
  }
  return scene;
}

inline Scene curves(Dice& dice) {
  Scene scene{rect(0, 0, 96, 120), {}};
  const double a = dice.between(8, 16), b = dice.between(10, 30);
  scene.things.push_back(oval(a, 60, a, b));                    // tangent to the left wall
  scene.things.push_back(oval(3 * a, 60, a, b));                // tangent to the first
  scene.things.push_back(rect(0, 60 - b - 20, 4 * a, 60 - b));  // tangent below both
  const double leaf = dice.between(24, 36);
  Outline swing = arcPoints(at(96, 0), Length::fromInches(leaf), {-1, 0}, Angle::fromDegrees(-90), 32);
  swing.insert(swing.begin(), at(96, 0));
  scene.things.push_back(swing);
  scene.things.push_back(rect(96 - leaf - 20, 0, 96 - leaf, 20));  // where the arc starts
  scene.things.push_back(rect(60, leaf, 96, leaf + 18));           // where it ends
  scene.things.push_back(oval(96 - dice.between(10, 14), 120 - 15, 20, 15));
  scene.things.push_back(oval(48, 120 - b, a, b, dice.whole(12, 64)));
  return scene;
}

inline Scene nested(Dice& dice) {
  Scene scene = rowsAlongWalls(dice, 0.25, [] { return 0.0; });
  const std::size_t n = scene.things.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Box box = boundsOf(scene.things[i]);
    const double x0 = box.low.x.inches(), y0 = box.low.y.inches();
    const double x1 = box.high.x.inches(), y1 = box.high.y.inches();
    switch (dice.whole(0, 5)) {
      case 0:
        scene.things.push_back(scene.things[i]);
        break;
      case 1:
        scene.things.push_back(reversed(scene.things[i]));
        break;
      case 2:
        scene.things.push_back(rect(x0, y0, (x0 + x1) / 2, (y0 + y1) / 2));
        break;
      case 3:
        scene.things.push_back(rect(x0 + 1, y0 + 1, x1 - 1, y1 - 1));
        break;
      case 4:
        scene.things.push_back(rect(x1, y1, x1 + 8, y1 + 8));
        break;
      default:
        break;
    }
  }
  if (dice.chance(0.05)) scene.things.push_back(scene.room);
  return scene;
}

inline Scene flushScene(Flush kind, std::uint64_t seed) {
  Dice dice(seed * 7 + static_cast<std::uint64_t>(kind));
  const auto none = [] { return 0.0; };
  switch (kind) {
    case Flush::quarter_grid:
      return rowsAlongWalls(dice, 0.25, none);
    case Flush::angled_wall:
      return alongAngledWall(dice);
    case Flush::turned_plan: {
      Scene scene = rowsAlongWalls(dice, 0.25, none);
      const Angle angle = Angle::fromDegrees(dice.between(0, 360));
      scene.room = turned(scene.room, angle);
      for (Outline& thing : scene.things) thing = turned(thing, angle);
      return scene;
    }
    case Flush::curves:
      return curves(dice);
    case Flush::tenth_mm:
      return rowsAlongWalls(dice, 0.1 / 25.4, none);
    case Flush::tiny_gaps:
      return rowsAlongWalls(
          dice, 0.25, [&dice] { return (dice.chance(0.5) ? 1 : -1) * std::pow(10, dice.between(-8, -5)); });
    case Flush::nested:
      return nested(dice);
  }
  return {};
}

}  // namespace elbowroom::oracle

#include "core/drawing/pen.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace elbowroom {

std::vector<Point> arcChords(const ArcPrim& arc, int steps) {
  std::vector<Point> points;
  for (int i = 0; i <= steps; ++i) {
    const Angle turn = Angle::microdegrees(arc.from.microdegrees() + arc.sweep.microdegrees() * i / steps);
    points.push_back(arc.center + arc.radius * Direction::fromAngle(turn));
  }
  return points;
}

std::vector<Point> ellipseChords(const EllipsePrim& ellipse, int steps) {
  const Direction u = Direction::fromAngle(ellipse.turn), v = u.left();
  std::vector<Point> points;
  for (int i = 0; i < steps; ++i) {
    const double t = 2 * std::numbers::pi * i / steps;
    points.push_back(ellipse.center + ellipse.rx.scaled(std::cos(t)) * u +
                     ellipse.ry.scaled(std::sin(t)) * v);
  }
  return points;
}

Angle readableTurn(Direction along) {
  double degrees = along.angle().degrees();
  // A hair past vertical still reads from the right.
  while (degrees > 90.01) degrees -= 180;
  while (degrees <= -89.99) degrees += 180;
  return Angle::fromDegrees(degrees);
}

void Pen::line(Role role, double x0, double y0, double x1, double y1) {
  add(role, LinePrim{frame_.at(x0, y0), frame_.at(x1, y1)});
}

void Pen::poly(Role role, const std::vector<std::array<double, 2>>& points, bool closed, bool filled) {
  PolyPrim poly;
  poly.closed = closed;
  poly.filled = filled;
  for (const auto& p : points) poly.points.push_back(frame_.at(p[0], p[1]));
  add(role, std::move(poly));
}

void Pen::rectangle(Role role, double x0, double y0, double x1, double y1, double corner_radius,
                    bool filled) {
  const double r = std::min({corner_radius, std::abs(x1 - x0) / 2, std::abs(y1 - y0) / 2});
  if (r <= 0) return poly(role, {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}, true, filled);
  std::vector<std::array<double, 2>> points;
  const auto corner = [&](double cx, double cy, double start) {
    for (int i = 0; i <= 6; ++i) {
      const double t = (start + 15.0 * i) * std::numbers::pi / 180;
      points.push_back({cx + r * std::cos(t), cy + r * std::sin(t)});
    }
  };
  corner(x1 - r, y1 - r, 0);
  corner(x0 + r, y1 - r, 90);
  corner(x0 + r, y0 + r, 180);
  corner(x1 - r, y0 + r, 270);
  poly(role, points, true, filled);
}

void Pen::ellipse(Role role, double x, double y, double rx, double ry, bool filled) {
  add(role,
      EllipsePrim{frame_.at(x, y), Length::fromInches(rx), Length::fromInches(ry), frame_.u.angle(), filled});
}

void Pen::arc(Role role, double x, double y, double rx, double ry, double a, double b) {
  std::vector<std::array<double, 2>> points;
  const int steps = std::max(4, static_cast<int>(std::ceil(std::abs(b - a) / 8)));
  for (int i = 0; i <= steps; ++i) {
    const double t = (a + (b - a) * i / steps) * std::numbers::pi / 180;
    points.push_back({x + rx * std::cos(t), y + ry * std::sin(t)});
  }
  poly(role, points, false);
}

}  // namespace elbowroom

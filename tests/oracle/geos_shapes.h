// The same outlines as GEOS polygons in inches; for tests only.
#pragma once

#ifndef USE_UNSTABLE_GEOS_CPP_API  // an oracle in tests may follow the installed version
#define USE_UNSTABLE_GEOS_CPP_API
#endif
#include <geos/geom/Coordinate.h>
#include <geos/geom/CoordinateArraySequence.h>
#include <geos/geom/Geometry.h>
#include <geos/geom/GeometryFactory.h>
#include <geos/geom/LineString.h>
#include <geos/geom/LinearRing.h>
#include <geos/geom/Point.h>
#include <geos/geom/Polygon.h>

#include <memory>
#include <vector>

#include "core/geometry/measure.h"

namespace elbowroom::oracle {

using Shape = std::unique_ptr<geos::geom::Geometry>;

inline const geos::geom::GeometryFactory& factory() {
  return *geos::geom::GeometryFactory::getDefaultInstance();
}

inline std::unique_ptr<geos::geom::CoordinateArraySequence> sequence(const Outline& points, bool closed) {
  std::vector<geos::geom::Coordinate> out;
  for (const Point& p : points) out.emplace_back(p.x.inches(), p.y.inches());
  if (closed) out.push_back(out.front());
  return std::make_unique<geos::geom::CoordinateArraySequence>(std::move(out));
}
inline Shape solid(const Outline& ring) {
  return factory().createPolygon(factory().createLinearRing(sequence(ring, true)));
}
inline Shape boundary(const Outline& ring) { return factory().createLinearRing(sequence(ring, true)); }
inline Shape line(Segment s) { return factory().createLineString(sequence({s.a, s.b}, false)); }
inline Shape dot(Point p) {
  return Shape(factory().createPoint(geos::geom::Coordinate(p.x.inches(), p.y.inches())));
}

}  // namespace elbowroom::oracle

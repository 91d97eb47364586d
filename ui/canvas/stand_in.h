// A turning circle or a clear floor space that can be put on the plan and moved; not part of the plan file.
#pragma once

#include <QString>

#include "ui/session/session.h"

namespace elbowroom::ui {

struct StandIn {
  enum class Kind { none, circle, rectangle };
  Kind kind = Kind::none;
  Point center;
  Angle turn;               // of the rectangle's long side
  Length diameter = Length::fromInches(60);
  Length along = Length::fromInches(48), across = Length::fromInches(30);

  bool shown() const { return kind != Kind::none; }
  bool grabs(Point) const;
  // Over the floor with knee and toe space counted where the plan states it.
  Fit fit(const Layout&) const;
  // "Turning circle 5'-0": fits" or "... misses by 3 1/2" at Vanity".
  QString verdict(const Session&, Unit) const;
  Outline outline() const;  // polyline, for hit tests and hatching
  // Moves to the nearest place where it fits: first at the present turn, then at any. False: no place found.
  bool jump(const Layout&);
};

}  // namespace elbowroom::ui

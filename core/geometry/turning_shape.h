// T-shaped turning spaces: a bar across the end of a base.
#pragma once

#include "core/geometry/placed.h"
#include "core/geometry/point.h"

namespace elbowroom {

// Preconditions: all positive but the chamfer; base_width <= across, bar_width <= along.
struct TurningShape {
  Length across;  // the bar from end to end
  Length along;   // over all, from the bar's outer side to the end of the base
  Length bar_width;
  Length base_width;
  Length chamfer;  // legs of the triangles of floor asked for in the two inner corners; 0 for none
  bool operator==(const TurningShape&) const = default;
};

// 2010 ADA Standards 304.3.2 (and ICC A117.1-2017 304.3.2 for existing buildings): in a 60 x 60 square, bar
// and base 36 wide, so that each arm is clear 12 beyond the base and the base 24 beyond the bar.
inline constexpr TurningShape kTurningT2010{Length::nanometres(1'524'000'000),
                                            Length::nanometres(1'524'000'000),
                                            Length::nanometres(914'400'000),
                                            Length::nanometres(914'400'000),
                                            {}};
// ICC A117.1-2017 304.3.2.1, new buildings, as two secondary sources agree: 68 x 60 with 36 in bar and base
// and 8 in chamfers; 64 x 60 with bar 38 and base 42; 64 x 60 with bar and base 40.
inline constexpr TurningShape kTurningT2017First{
    Length::nanometres(1'727'200'000), Length::nanometres(1'524'000'000), Length::nanometres(914'400'000),
    Length::nanometres(914'400'000), Length::nanometres(203'200'000)};
inline constexpr TurningShape kTurningT2017Second{Length::nanometres(1'625'600'000),
                                                  Length::nanometres(1'524'000'000),
                                                  Length::nanometres(965'200'000),
                                                  Length::nanometres(1'066'800'000),
                                                  {}};
inline constexpr TurningShape kTurningT2017Third{Length::nanometres(1'625'600'000),
                                                 Length::nanometres(1'524'000'000),
                                                 Length::nanometres(1'016'000'000),
                                                 Length::nanometres(1'016'000'000),
                                                 {}};

// The end of the T that lies over knee and toe space. Left and right as seen from the base looking at the
// bar.
enum class TurningEnd { none, base, leftArm, rightArm };

struct PlacedTurning {
  // Centre of the across x along rectangle; turn = direction from the base to the bar.
  Placed place;
  TurningEnd under_knees = TurningEnd::none;
};

// The T's outline at a place, counter-clockwise.
Outline turningOutline(const TurningShape& shape, Placed place);
// The same of the 2010 T.
Outline turningTOutline(Placed place);
// Diameter of the largest disc about a point of its middle line that lies within bar and base: where no such
// disc is free, no T is. Chamfers are not counted.
Length discWithin(const TurningShape& shape);
Area areaOf(const TurningShape& shape);

}  // namespace elbowroom

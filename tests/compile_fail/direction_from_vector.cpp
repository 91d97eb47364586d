// EXPECT: conversion from .(const )?elbowroom::Vector.|no viable conversion
#include <string>

#include "core/base/id.h"
#include "core/base/length.h"
#include "core/geometry/point.h"

using namespace elbowroom;
using namespace elbowroom::literals;

void mix() {
  [[maybe_unused]] const Length a = 3_in, b = 4_in;
  [[maybe_unused]] const Area area = a * b;
  [[maybe_unused]] const Angle angle = 90_deg;
  [[maybe_unused]] const ElementId id{"wc"};
  [[maybe_unused]] const Point p{a, b};
  [[maybe_unused]] const Vector v = p - p;
#ifndef CONTROL
  Direction wrong = v;
#endif
}

// Against the definition: a place within the slabs lies in the piece at every turn of the range.
#include "core/geometry/turn_range.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <iterator>
#include <random>

namespace elbowroom::floor_kernel {
namespace {

bool within(const Slabs& slabs, Vec p) {
  return std::all_of(std::begin(slabs), std::end(slabs),
                     [&](const Slab& s) { return dot(p, s.axis) >= s.least && dot(p, s.axis) <= s.most; });
}

double outside(const Piece& piece, double turn, Vec p) {
  const Axes axes(turn);
  const double x = dot(p, axes.first(piece.diagonal)), y = dot(p, axes.second(piece.diagonal));
  return std::max({piece.low.x - x, x - piece.high.x, piece.low.y - y, y - piece.high.y});
}

TEST(TurnRange, WhatLiesWithinTheSlabsLiesInThePieceAtEveryTurn) {
  std::mt19937 random(7);
  const auto from = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  int count = 0;
  double nearest = -HUGE_VAL;
  for (int k = 0; k < 300; ++k) {
    RigidPattern pattern;
    for (const bool diagonal : {false, true}) {
      const Vec low{from(-30, 5), from(-30, 5)};
      pattern.pieces.push_back({low, low + Vec{from(10, 40), from(10, 40)}, diagonal});
    }
    TurnRanges ranges(pattern);
    const int range = ranges.add(from(-4, 4), from(0.02, 0.5));
    for (std::size_t piece = 0; piece < pattern.pieces.size(); ++piece)
      for (int i = 0; i < 200; ++i) {
        const Vec p{from(-60, 60), from(-60, 60)};
        if (!within(ranges.slabs(range, piece), p)) continue;
        ++count;
        for (int t = -10; t <= 10; ++t) {
          const double off =
              outside(pattern.pieces[piece], ranges[range].turn + t / 10.0 * ranges[range].spread, p);
          ASSERT_LE(off, 1e-9) << "sample " << k;
          nearest = std::max(nearest, off);
        }
      }
  }
  EXPECT_GT(count, 2000);
  EXPECT_GT(nearest, -0.1);  // the limits are not far too narrow
}

TEST(TurnRange, PartsFollowOneAnotherAndAreKept) {
  RigidPattern pattern;
  pattern.pieces.push_back({{-10, -5}, {10, 5}});
  TurnRanges ranges(pattern);
  const int all = ranges.add(1, 0.8), first = ranges.split(all, 4);
  for (int i = 0; i < 4; ++i) {
    EXPECT_NEAR(ranges[first + i].turn, 1 + 0.4 * i - 0.6, 1e-12);
    EXPECT_NEAR(ranges[first + i].spread, 0.2, 1e-12);
  }
  EXPECT_EQ(ranges.split(all, 4), first);
}

}  // namespace
}  // namespace elbowroom::floor_kernel

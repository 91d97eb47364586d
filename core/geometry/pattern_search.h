// Private to core/geometry: where a pattern of one or two rectangles fits at a turn.
//
// The room is halved once into squares near whose middle the pattern's inscribed circle can lie. For each
// turn the squares are tested with the pattern shrunk by the square's half diagonal (rejects) and at its full
// size (accepts), and halved until one of the two answers. What overlaps by no more than 0.010 in is always
// found; nothing that overlaps by more than kContact is accepted.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/geometry/box_pattern.h"

namespace elbowroom::floor_kernel {

struct PatternBox {
  Vec offset;  // of the rectangle's middle from the pattern's centre, in the frame
  BoxHalf half;
};

struct Pattern {
  std::vector<PatternBox> boxes;
  double inscribed;      // radius of a circle about the centre inside the pattern
  double circumscribed;  // radius of the circle about the centre that contains the pattern
};

class PatternSearch {
 public:
  PatternSearch(const Kernel& kernel, Pattern pattern, Vec near);

  // Looks at one turn for a place nearer than the best so far; true when it became the best.
  bool tryTurn(Angle turn);
  // Stop at the first place of a turn instead of the nearest.
  void anyPlaceWillDo() { any_place_ = true; }
  // The best place, moved clear of all overlap when that is possible close by.
  std::optional<Placed> result() const;

 private:
  struct Square {
    Vec at;
    double half;
    double away;  // least distance from `near`
    std::uint32_t first, count;
  };

  void collect(Vec at, double half, const std::vector<std::uint32_t>& edges);
  bool search(Vec at, double half, const Square& seed);
  bool meets(Vec framed, double shrink, const Square& seed) const;
  double away(Vec at, double half) const;
  std::vector<Chord> chordsAt(const Frame& frame) const;
  double depthAt(Vec framed, const std::vector<Chord>& chords) const;

  const Kernel& kernel_;
  Pattern pattern_;
  Vec near_;
  bool any_place_ = false;
  std::vector<Square> squares_;
  std::vector<std::uint32_t> arena_;
  Frame frame_;
  std::vector<Chord> chords_;
  double best_;
  Vec best_at_;
  Angle best_turn_;
};

// Every whole degree below `full_circle_degrees` and every turn parallel to an edge or square to it.
std::vector<Angle> turnsToTry(const Kernel& kernel, int full_circle_degrees);

}  // namespace elbowroom::floor_kernel

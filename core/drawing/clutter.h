// What is drawn already, to find quiet places for texts.
#pragma once

#include <optional>
#include <set>
#include <vector>

#include "core/drawing/display_list.h"

namespace elbowroom {

// What lying over another text costs.
inline constexpr double kTextOverText = 1000;

class Clutter {
 public:
  void add(const DisplayList&);
  void addText(const Box&);
  // 0: nothing there. Texts weigh far more than lines, walls more than other lines. What costs `enough` is
  // not counted further.
  double costOf(const Box&, double enough = 1e18) const;

 private:
  struct Line {
    double x0, y0, x1, y1, weight;
    double left, right, low, high;
  };  // inches
  std::vector<Line> lines_;
  std::vector<Outline> solids_;  // cut walls: nothing is legible on them
  std::vector<Box> texts_;
};

// The quietest of `count` places: the one whose cost(i, enough) is least, of equals the first; nullopt when
// none costs less than `limit`. A cost that has reached `enough` need not be counted further.
template <class CostOf>
std::optional<std::size_t> quietest(std::size_t count, double limit, const CostOf& cost) {
  std::optional<std::size_t> best;
  for (std::size_t i = 0; i < count; ++i)
    if (const double here = cost(i, limit); here < limit) limit = here, best = i;
  return best;
}

// The same among texts, each with what it costs beyond what it covers. nullopt: each would lie over another
// text, or costs `limit` in other ways.
struct TextPlace {
  TextPrim text;
  double penalty = 0;
};
std::optional<TextPrim> quietestText(const Clutter&, const std::vector<TextPlace>&,
                                     double limit = kTextOverText);

// Which labels a round places: those of the things asked for first, or the others.
struct LabelRound {
  std::set<ElementId> chosen = {};
  bool first = false;
  bool takes(const ElementId& id) const { return (chosen.count(id) > 0) == first; }
  bool takes(const std::vector<ElementId>& ids) const {
    for (const ElementId& id : ids)
      if (chosen.count(id) > 0) return first;
    return !first;
  }
};

}  // namespace elbowroom

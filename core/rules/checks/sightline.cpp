#include "core/rules/checks/sightline.h"

#include <cmath>

#include "core/rules/checks/common.h"
#include "core/rules/sightline.h"

namespace elbowroom::checks {

std::vector<Measurement> toiletsSeen(const CheckInput& in) {
  std::vector<Measurement> found;
  const Length near = in.rule->sizes.at(0), far = in.rule->sizes.at(1);
  for (const PlacedOpening& o : in.layout.openings) {
    Angle opens;
    for (const DoorFigures& d : in.figures.doors)
      if (d.id == o.opening.id) opens = d.opens;
    for (const Length out : {near, (near + far) / 2, far}) {
      const auto figure = sightFigure(in.layout, o, opens, out);
      if (!figure) continue;
      for (const SightFigure::Thing& toilet : figure->toilets) {
        Measurement m{.subjects = {toilet.id, o.opening.id},
                      .measured = Amount{std::llround(toilet.seen.share * 100'000)},
                      .places = {lineFrom(figure->eye, toilet.seen.at)}};
        if (toilet.seen.share <= 0) m.places = {lineFrom(o.left, o.right)};
        bool known = false;
        for (Measurement& other : found) {
          if (other.subjects[0] != toilet.id) continue;
          known = true;
          if (std::get<Amount>(*m.measured) > std::get<Amount>(*other.measured)) other = m;
        }
        if (!known) found.push_back(std::move(m));
      }
    }
  }
  return found;
}

}  // namespace elbowroom::checks

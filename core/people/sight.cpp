#include "core/people/sight.h"

#include <algorithm>

namespace elbowroom {

using namespace literals;

namespace {
constexpr Length kCrown = Length::nanometres(112'268'000);  // crown above eye, 4.42 in, ANSUR II, computed
}  // namespace

Length mirrorTopFor(const Person& p) { return (eyesOf(p).high + p.stature) / 2; }
Length mirrorFaceBottomFor(const Person& p) { return eyesOf(p).high - 2_in; }
Length mirrorWaistBottomFor(const Person& p) { return (eyesOf(p).high + elbowHeight(p)) / 2; }

std::optional<MirrorEdges> mirrorEdgesFor(const std::vector<const Person*>& people) {
  std::optional<MirrorEdges> edges;
  for (const Person* p : people) {
    const HeightBand eyes = eyesOf(*p);
    const Length top = p->chair ? eyes.high + kCrown / 2 : mirrorTopFor(*p);
    const Length bottom = p->chair ? eyes.low - 2_in : p->child ? mirrorFaceBottomFor(*p) : mirrorWaistBottomFor(*p);
    edges = edges ? MirrorEdges{std::max(edges->top_at_least, top), std::min(edges->bottom_at_most, bottom)}
                  : MirrorEdges{top, bottom};
  }
  return edges;
}

std::optional<HeightBand> mirrorBottomsFor(const std::vector<const Person*>& people, Length height) {
  const auto edges = mirrorEdgesFor(people);
  if (!edges || edges->top_at_least - height > edges->bottom_at_most) return std::nullopt;
  return HeightBand{std::max(Length{}, edges->top_at_least - height), edges->bottom_at_most};
}

std::optional<HeightBand> eyesWithin(const std::vector<const Person*>& people, Length height) {
  if (people.empty()) return std::nullopt;
  HeightBand eyes{eyesOf(*people[0]).high, eyesOf(*people[0]).low};
  for (const Person* p : people) {
    // Somebody seated may be anywhere between: the thing has to reach that stretch.
    eyes.low = std::min(eyes.low, eyesOf(*p).high);
    eyes.high = std::max(eyes.high, eyesOf(*p).low);
  }
  const HeightBand band{eyes.high - height / 2, eyes.low + height / 2};
  if (band.low > band.high) return std::nullopt;
  return band;
}

}  // namespace elbowroom

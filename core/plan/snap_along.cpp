#include "core/plan/snap_along.h"

#include <algorithm>
#include <cmath>

namespace elbowroom {

std::string_view wordsOf(SnapReason reason) {
  switch (reason) {
    case SnapReason::none: return "";
    case SnapReason::wall: return "against the wall";
    case SnapReason::corner: return "into the corner";
    case SnapReason::neighbour: return "beside the next one";
    case SnapReason::wallCentre: return "at the middle of the wall";
    case SnapReason::alignedCentre: return "in line with another centreline";
    case SnapReason::step: return "at the nearest step";
    case SnapReason::rightAngle: return "at a right angle";
    case SnapReason::halfAngle: return "at 45 degrees";
    case SnapReason::closing: return "closes the room";
    case SnapReason::endPoint: return "in line with another corner";
  }
  return "";
}

namespace snap_parts {
namespace {

struct Range {
  Length low, high;
};

std::vector<Range> allowedRanges(const AlongProblem& problem) {
  std::vector<Range> blocked;
  for (const Span& span : problem.blocked) blocked.push_back({span.low - problem.half, span.high + problem.half});
  std::sort(blocked.begin(), blocked.end(), [](const Range& a, const Range& b) { return a.low < b.low; });
  std::vector<Range> free;
  Length from = problem.half;
  const Length end = problem.wall_length - problem.half;
  for (const Range& range : blocked) {
    if (range.low >= from) free.push_back({from, std::min(range.low, end)});
    from = std::max(from, range.high);
  }
  free.push_back({from, end});
  std::erase_if(free, [](const Range& r) { return r.high < r.low; });
  return free;
}

}  // namespace

Length roundTo(Length value, Length step) {
  if (step <= Length{}) return value;
  return Length::nanometres(std::llround(value / step) * step.nm());
}

std::optional<Length> nearestAllowed(const AlongProblem& problem, Length wanted) {
  std::optional<Length> best;
  for (const Range& range : allowedRanges(problem)) {
    const Length at = std::clamp(wanted, range.low, range.high);
    if (!best || abs(at - wanted) < abs(*best - wanted)) best = at;
  }
  return best;
}

std::optional<AlongAnswer> settle(const AlongProblem& problem, Length wanted, const SnapRules& rules) {
  const std::vector<Range> ranges = allowedRanges(problem);
  const std::optional<Length> place = nearestAllowed(problem, wanted);
  if (!place) return std::nullopt;
  if (!rules.enabled) return AlongAnswer{*place, SnapReason::none, {}, {}};
  if (*place != wanted) return AlongAnswer{*place, SnapReason::corner, {}, {}};

  std::optional<AlongAnswer> best;
  const auto offer = [&](Length along, SnapReason reason, const std::optional<ElementId>& other,
                         const std::optional<Point>& guide) {
    if (abs(along - wanted) > rules.reach || (best && abs(best->along - wanted) <= abs(along - wanted))) return;
    for (const Range& range : ranges)
      if (range.low <= along && along <= range.high) best = AlongAnswer{along, reason, other, guide};
  };
  for (const Range& range : ranges)
    for (const Length end : {range.low, range.high}) offer(end, SnapReason::corner, {}, {});
  for (const Span& span : problem.neighbours)
    for (const Length beside : {span.low - problem.half, span.high + problem.half})
      offer(beside, SnapReason::neighbour, span.id, {});
  if (best) return best;
  for (const Centre& centre : problem.centres) {
    std::optional<Point> guide;
    if (centre.reason == SnapReason::alignedCentre) guide = centre.from;
    offer(centre.along, centre.reason, centre.id, guide);
  }
  if (best) return best;

  // A tape is hooked in the nearer corner.
  const bool from_left = 2 * wanted <= problem.wall_length;
  const Length rounded = from_left
                             ? roundTo(wanted, rules.step)
                             : problem.wall_length - roundTo(problem.wall_length - wanted, rules.step);
  return AlongAnswer{nearestAllowed(problem, rounded).value_or(*place), SnapReason::step, {}, {}};
}

}  // namespace snap_parts
}  // namespace elbowroom

#include "core/file/report_words.h"

#include <fmt/format.h>

#include "core/rules/text_quantity.h"
#include "core/rules/wishes.h"

namespace elbowroom {

std::string turningText(const TurningFigures& turning, Unit unit) {
  std::string text = words::flooredText(2 * turning.with_knees.radius, unit);
  if (turning.knee_space_used)
    text +=
        fmt::format(" with knee space ({} on the bare floor)", words::flooredText(2 * turning.largest.radius, unit));
  return text;
}

bool tellsWishes(const Report& report) { return wishCounts(report) != WishCounts{}; }

std::string wishesInBrief(const Report& report) {
  const WishCounts n = wishCounts(report);
  return tellsWishes(report) ? fmt::format("{} in, {} wanted, {} out, {} undecided", n.in_plan, n.wanted, n.left_out,
                                           n.undecided)
                             : "not told";
}

}  // namespace elbowroom

#include "core/rules/published.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "core/rules/text.h"
#include "core/rules/text_rules.h"

namespace elbowroom {
namespace {

// Rules that hold a height above the finished floor against figures of a text. "basin-height-adults" and the like are
// worked out for people and are not among them.
constexpr std::array<std::string_view, 25> kHeights{
    "grab-bar-height", "hook-height", "hook-reach", "light-over-mirror-height", "mirror-bottom", "mirror-bottom-seated",
    "mirror-over-basin", "mirror-top", "niche-height", "paper-holder-height", "shelf-height", "storage-reach",
    "shower-control-height", "shower-control-height-transfer", "bath-control-height", "shower-head-height",
    "side-light-height", "switch-height", "control-reach", "towel-bar-height", "basin-height", "basin-height-range",
    "basin-height-seated", "basin-rim-height", "toilet-upright-bar-bottom"};

}  // namespace

std::vector<PublishedBand> publishedBands(const Report& report, const ElementId& id) {
  std::vector<PublishedBand> bands;
  for (const std::string_view rule_id : kHeights)
    for (const Finding& f : report.findings) {
      if (f.rule != rule_id || f.subjects.empty() || f.subjects.front() != id || !f.limit) continue;
      const Length* limit = std::get_if<Length>(&*f.limit);
      const Length* high = f.limit_high ? std::get_if<Length>(&*f.limit_high) : nullptr;
      const Rule* rule = findRule(f.book, f.rule);
      if (limit == nullptr || rule == nullptr || rule->grade == Grade::commonPractice) continue;
      PublishedBand band{std::nullopt, std::nullopt, std::string(rule->title), f.book, sourceWords(rule->source)};
      if (f.compare != Compare::atMost) band.low = *limit;
      if (f.compare == Compare::atMost) band.high = *limit;
      if (f.compare == Compare::between && high != nullptr) band.high = *high;
      const bool listed = std::any_of(bands.begin(), bands.end(), [&](const PublishedBand& b) {
        return b.low == band.low && b.high == band.high && b.of == band.of;
      });
      if (!listed) bands.push_back(std::move(band));
    }
  return bands;
}

std::string wordsOf(const PublishedBand& band, Unit unit) {
  const auto text = [&](Length l) { return quantityText(l, unit); };
  if (band.low && band.high)
    return *band.low == *band.high ? fmt::format("{} {}", band.of, text(*band.low))
                                   : fmt::format("{} {} to {}", band.of, text(*band.low), text(*band.high));
  return band.low ? fmt::format("{} at least {}", band.of, text(*band.low))
                  : fmt::format("{} at most {}", band.of, text(*band.high));
}

}  // namespace elbowroom

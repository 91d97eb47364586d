#include "core/file/report_rules.h"

namespace elbowroom {

std::string_view gradeOf(const Finding& f) {
  const Rule* rule = findRule(f.book, f.rule);
  if (rule == nullptr) return {};
  const auto number = static_cast<std::size_t>(f.variant);
  if (f.variant >= 0 && number < rule->variants.size() && rule->variants[number].grade)
    return keyOf(*rule->variants[number].grade);
  return keyOf(rule->grade);
}

}  // namespace elbowroom

// Runs the chosen books over a layout. Pure: the same layout and choice give the same findings in the same order.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/rules/finding.h"
#include "core/rules/measures.h"
#include "core/rules/rule.h"

namespace elbowroom {

struct BookChoice {
  std::vector<std::string> books;   // ids; unknown ones are ignored (the reader has warned)
  Length site_tolerance = Length::fromInches(0.5);
  std::map<std::string, std::map<std::string, std::string>> settings = {};  // as Plan::book_settings
  std::vector<RuleChange> changes = {};                                     // as Plan::rule_changes
};
BookChoice choiceOf(const Plan&);

struct Report {
  Figures figures;
  std::vector<Finding> findings;    // every applicable rule, also those that are clear; stable order:
                                    // shortfall by level, unknown, close, clear; then registry order
};
Report check(const Layout&, const BookChoice&);

// A value missed by less than this counts as met (design.md section 5).
inline constexpr Length kMetTolerance = Length::nanometres(508'000);  // 0.02 in

// Verdict of one figure: exposed for tests.
Outcome judge(const Quantity& measured, Compare, const Quantity& limit, const std::optional<Quantity>& high,
              Length site_tolerance);

}  // namespace elbowroom

// What a check says: ids, figures and places; never finished text (core/rules/text.h makes the words).
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/amount.h"
#include "core/base/id.h"
#include "core/geometry/point.h"

namespace elbowroom {

enum class Outcome { clear, close, shortfall, unknown, notApplicable, failed };
enum class Level { required, advised, craft };
enum class Compare { atLeast, atMost, between, isTrue };

// A measured or needed figure.
using Quantity = std::variant<Length, Area, Angle, Count, bool, Amount>;

struct Place {
  enum class Kind { point, line, zone };  // a mark; a measured line; an area to hatch
  Kind kind = Kind::point;
  Outline points;                         // 1, 2 or at least 3 points
};

struct Finding {
  std::string rule;   // id, "toilet-clear-front"
  std::string book;   // "us-residential"
  Level level = Level::required;
  Outcome outcome = Outcome::clear;
  std::vector<ElementId> subjects;       // the first is the one to change
  std::optional<Quantity> measured;
  std::optional<Quantity> limit, limit_high;  // limit_high only for between
  Compare compare = Compare::atLeast;
  std::optional<Quantity> short_by;      // > 0 when short
  std::vector<Place> places;             // at least one, except for notApplicable
  std::string detail;                    // key of an extra sentence in the text catalogue, after a colon the
                                         // words that go into it ("fits-not:Ada"); may be empty
  std::string fact;                      // outcome unknown: the fact of the first subject (none: of the room) that
                                         // is not stated; a key of core/plan/facts.h or of a plain field
                                         // ("ceiling.height", "basins", "curb", ...); may be empty
  int variant = -1;                      // index into Rule::variants whose figures were used; -1 the rule's own
  bool changed = false;                  // the person has changed the limit (Plan::rule_changes)
  std::string changed_reason;            // and why
  std::string acknowledged;              // the person's reason; empty when not acknowledged
};

}  // namespace elbowroom

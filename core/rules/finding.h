// What a check says: ids, figures and places; never finished text (core/rules/text.h makes the words).
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/id.h"
#include "core/geometry/point.h"

namespace elbowroom {

enum class Outcome { clear, close, shortfall, unknown, notApplicable, failed };
enum class Level { required, advised, craft };
enum class Compare { atLeast, atMost, between, isTrue };

// A measured or needed figure.
struct Count { int value = 0; auto operator<=>(const Count&) const = default; };
using Quantity = std::variant<Length, Area, Angle, Count, bool>;

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
  std::string detail;                    // key of an extra sentence in the text catalogue; may be empty
};

}  // namespace elbowroom

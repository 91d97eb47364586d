// Heights that the chosen books publish for a thing on a wall or the rim of a basin, to stand beside those worked out for the
// people named.
#pragma once

#include <string>
#include <vector>

#include "core/rules/check.h"

namespace elbowroom {

struct PublishedBand {
  std::optional<Length> low, high;  // above the finished floor; at least one of them
  std::string of;                   // what it is the height of: "height of its centreline"
  std::string book;                 // id
  std::string source;               // "Trade article on bathroom accessories"
};
// Of this element, in the order of the report's rules, each band once. Rules whose grade is common practice have no text
// that publishes them and are left out; so are figures worked out for named people.
std::vector<PublishedBand> publishedBands(const Report&, const ElementId&);
// "height of its centreline 60\" to 66\""
std::string wordsOf(const PublishedBand&, Unit);

}  // namespace elbowroom

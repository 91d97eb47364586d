#include <array>

#include "core/drawing/sheet.h"

namespace elbowroom {
namespace {

struct Known {
  Paper paper;
  std::string_view key;
  PaperSize size;
};
// ANSI Y14.1 A and B; ISO 216 A4 and A3.
const std::array<Known, 4>& known() {
  static const std::array<Known, 4> papers{{
      {Paper::letter, "letter", {Length::fromInches(11), Length::fromInches(8.5)}},
      {Paper::tabloid, "tabloid", {Length::fromInches(17), Length::fromInches(11)}},
      {Paper::a4, "a4", {Length::fromMillimetres(297), Length::fromMillimetres(210)}},
      {Paper::a3, "a3", {Length::fromMillimetres(420), Length::fromMillimetres(297)}},
  }};
  return papers;
}

}  // namespace

PaperSize sizeOf(Paper paper) { return known()[static_cast<std::size_t>(paper)].size; }
std::string_view keyOf(Paper paper) { return known()[static_cast<std::size_t>(paper)].key; }

std::optional<Paper> paperFromKey(std::string_view key) {
  for (const Known& k : known()) {
    if (k.key == key) return k.paper;
  }
  return std::nullopt;
}

}  // namespace elbowroom

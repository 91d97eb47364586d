// Advance widths of the drawing font in 1/2048 em.
#pragma once

#include <cstdint>
#include <span>

namespace elbowroom {

struct Advance {
  std::uint32_t code;
  std::uint16_t regular, bold;
};
// Code points U+0020 to U+017F.
std::span<const std::uint16_t> latinAdvances(bool bold);
// Punctuation, arrows and fractions beyond, by ascending code point.
std::span<const Advance> otherAdvances();

}  // namespace elbowroom

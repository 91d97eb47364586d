// Decimal numbers as text, to and from whole fine units (nanometres, millionths of a degree) without passing
// through a double.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace elbowroom {

// What one unit of the text is worth: numerator * 10^power fine units.
struct Worth {
  int numerator = 1;
  int power = 0;
};
inline constexpr Worth kInchInNanometres{254, 5};
inline constexpr Worth kMillimetreInNanometres{1, 6};
inline constexpr Worth kDegreeInMicrodegrees{1, 6};
inline constexpr Worth kPlain{1, 0};
inline constexpr Worth kThousandths{1, 3};

// The number in fine units, rounded to nearest, halves away from zero. `text` is a JSON number (grammar
// already checked). nullopt: beyond +-9e17 fine units.
std::optional<std::int64_t> fineUnitsOf(std::string_view text, Worth worth);
// True when the number has no fractional part.
bool isWhole(std::string_view text);

// The fewest decimals that fineUnitsOf reads back as exactly `fine`. Precondition: |fine| <= 9e17.
std::string decimalText(std::int64_t fine, Worth worth);

}  // namespace elbowroom

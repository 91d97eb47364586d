#include "core/file/decimal.h"

#include <algorithm>

namespace elbowroom {
namespace {

struct Parsed {
  bool negative = false;
  std::string digits;      // no leading zeros; empty for zero
  std::int64_t power = 0;  // value = digits * 10^power
};

// Past this the number is out of range or zero whatever its digits; clamping keeps the sums small.
constexpr std::int64_t kFarPower = 1'000'000'000;

Parsed parse(std::string_view text) {
  Parsed out;
  std::size_t i = 0;
  if (i < text.size() && text[i] == '-') {
    out.negative = true;
    ++i;
  }
  bool after_point = false;
  for (; i < text.size() && text[i] != 'e' && text[i] != 'E'; ++i) {
    if (text[i] == '.') {
      after_point = true;
      continue;
    }
    out.digits += text[i];
    if (after_point) --out.power;
  }
  if (i < text.size()) {
    ++i;
    bool minus = false;
    if (i < text.size() && (text[i] == '+' || text[i] == '-')) minus = text[i++] == '-';
    std::int64_t exponent = 0;
    for (; i < text.size(); ++i) exponent = std::min(kFarPower, exponent * 10 + (text[i] - '0'));
    out.power += minus ? -exponent : exponent;
  }
  out.digits.erase(0, std::min(out.digits.find_first_not_of('0'), out.digits.size()));
  return out;
}

std::string times(const std::string& digits, int factor) {
  std::string reversed;
  int carry = 0;
  for (auto it = digits.rbegin(); it != digits.rend(); ++it) {
    const int product = (*it - '0') * factor + carry;
    reversed += static_cast<char>('0' + product % 10);
    carry = product / 10;
  }
  for (; carry > 0; carry /= 10) reversed += static_cast<char>('0' + carry % 10);
  return {reversed.rbegin(), reversed.rend()};
}

__int128 powerOfTen(int n) {
  __int128 value = 1;
  while (n-- > 0) value *= 10;
  return value;
}

__int128 dividedNearest(__int128 a, __int128 b) {
  const __int128 half = a < 0 ? -b / 2 : b / 2;
  return (a + half) / b;
}

}  // namespace

std::optional<std::int64_t> fineUnitsOf(std::string_view text, Worth worth) {
  const Parsed number = parse(text);
  if (number.digits.empty()) return 0;
  const std::string digits = times(number.digits, worth.numerator);
  const std::int64_t power = number.power + worth.power;
  const std::int64_t whole_digits = static_cast<std::int64_t>(digits.size()) + power;
  if (whole_digits > 18) return std::nullopt;
  if (whole_digits < 0) return 0;
  std::int64_t value = 0;
  for (std::int64_t i = 0; i < whole_digits; ++i) {
    const bool given = i < static_cast<std::int64_t>(digits.size());
    value = value * 10 + (given ? digits[static_cast<std::size_t>(i)] - '0' : 0);
  }
  const auto next = static_cast<std::size_t>(whole_digits);
  if (next < digits.size() && digits[next] >= '5') ++value;
  if (value > 900'000'000'000'000'000) return std::nullopt;
  return number.negative ? -value : value;
}

bool isWhole(std::string_view text) {
  const Parsed number = parse(text);
  if (number.power >= 0 || number.digits.empty()) return true;
  const std::size_t trailing = number.digits.size() - 1 - number.digits.find_last_not_of('0');
  return static_cast<std::int64_t>(trailing) >= -number.power;
}

std::string decimalText(std::int64_t fine, Worth worth) {
  const __int128 unit = worth.numerator * powerOfTen(worth.power);
  int decimals = 0;
  __int128 scaled = 0;
  // Ten decimals are finer than any fine unit in use, so the loop ends by its test.
  for (; decimals <= 10; ++decimals) {
    const __int128 ten = powerOfTen(decimals);
    scaled = dividedNearest(static_cast<__int128>(fine) * ten, unit);
    if (dividedNearest(scaled * unit, ten) == fine) break;
  }
  const bool negative = scaled < 0;
  if (negative) scaled = -scaled;
  std::string digits;
  do {
    digits += static_cast<char>('0' + static_cast<int>(scaled % 10));
    scaled /= 10;
  } while (scaled > 0);
  while (static_cast<int>(digits.size()) <= decimals) digits += '0';
  std::reverse(digits.begin(), digits.end());
  if (decimals > 0) digits.insert(digits.size() - static_cast<std::size_t>(decimals), 1, '.');
  return negative ? "-" + digits : digits;
}

}  // namespace elbowroom

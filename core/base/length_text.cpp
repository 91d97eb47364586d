#include "core/base/length_text.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace elbowroom {
namespace {

using Wide = __int128;

// Keeps every product below within 128 bits.
constexpr int kMostDigits = 18;
constexpr Wide kMostNm = Wide(1'000'000) * 1'000'000'000;  // 1,000 km
constexpr std::int64_t kInchNm = 25'400'000;

// One character as written, and what it counts as: curly marks as straight ones, capitals as small letters.
struct Symbol {
  char as = 0;  // 0: nothing a length contains
  std::string written;
};

char countsAs(std::uint32_t code) {
  if (code >= 'A' && code <= 'Z') return static_cast<char>(code - 'A' + 'a');
  if (code == '\t') return ' ';
  if (code > ' ' && code < 0x7f) return static_cast<char>(code);
  switch (code) {
    case ' ':
    case 0xa0:    // no-break space
    case 0x2009:  // thin space
    case 0x202f:
      return ' ';  // narrow no-break space
    case 0x2018:
    case 0x2019:
    case 0x2032:
      return '\'';
    case 0x201c:
    case 0x201d:
    case 0x2033:
      return '"';
    case 0x2212:
      return '-';  // the real minus sign
    case 0x2044:
      return '/';  // fraction slash
    default:
      return 0;
  }
}

std::vector<Symbol> symbolsOf(std::string_view text) {
  std::vector<Symbol> out;
  for (std::size_t i = 0; i < text.size();) {
    const auto first = static_cast<unsigned char>(text[i]);
    const std::size_t size = first < 0x80         ? 1
                             : first >> 5 == 0x06 ? 2
                             : first >> 4 == 0x0e ? 3
                             : first >> 3 == 0x1e ? 4
                                                  : 0;
    std::uint32_t code = size < 2 ? first : first & (0x7fU >> size);
    bool good = size > 0 && i + size <= text.size();
    for (std::size_t k = 1; good && k < size; ++k) {
      const auto next = static_cast<unsigned char>(text[i + k]);
      good = next >> 6 == 2;
      code = code << 6 | (next & 0x3fU);
    }
    if (good) {
      out.push_back({countsAs(code), std::string(text.substr(i, size))});
      i += size;
    } else {
      // A broken byte must not get into the message as it is.
      out.push_back({0, "\xef\xbf\xbd"});
      ++i;
    }
  }
  return out;
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }

// numerator / denominator, exact; not reduced.
struct Rational {
  Wide numerator = 0, denominator = 1;
  bool whole = true;      // written without decimals or a fraction
  std::size_t start = 0;  // its first symbol
};

enum class Mark { none, feet, inches, mm, cm, m };

class Reader {
 public:
  Reader(std::string_view text, Unit plain) : symbols_(symbolsOf(text)), plain_(plain) {}

  Result<Length> read() {
    skipSpaces();
    if (atEnd()) return error("No length is written.");
    const bool negative = take('-');
    skipSpaces();
    const std::optional<Wide> nm = magnitude();
    if (!nm) return *error_;
    if (*nm > kMostNm) return error("The length is too large.");
    const auto value = static_cast<std::int64_t>(*nm);
    return Length::nanometres(negative ? -value : value);
  }

 private:
  bool atEnd(std::size_t ahead = 0) const { return at_ + ahead >= symbols_.size(); }
  char peek(std::size_t ahead = 0) const { return atEnd(ahead) ? '\0' : symbols_[at_ + ahead].as; }
  bool take(char c) {
    if (peek() != c || atEnd()) return false;
    ++at_;
    return true;
  }
  void skipSpaces() {
    while (peek() == ' ') ++at_;
  }

  static Error error(std::string message) { return {"length", std::move(message), ""}; }
  std::nullopt_t fail(std::string message) {
    if (!error_) error_ = error(std::move(message));
    return std::nullopt;
  }
  std::string named(std::size_t index) const {
    return "\"" + symbols_[index].written + "\" at position " + std::to_string(index + 1);
  }
  std::nullopt_t failTooLong() { return fail("The number has too many digits from " + named(at_) + " on."); }
  std::nullopt_t failHere(const std::string& wanted) {
    if (atEnd()) {
      std::size_t last = symbols_.size() - 1;
      while (last > 0 && symbols_[last].as == ' ') --last;
      return fail("The length ends after " + named(last) + ", where " + wanted + " should follow.");
    }
    if (peek() == ',')
      return fail("The comma at position " + std::to_string(at_ + 1) +
                  " is not understood; write a point before decimals.");
    return fail("The character " + named(at_) + " is not understood; " + wanted + " should stand there.");
  }

  std::optional<Wide> magnitude() {
    std::optional<Rational> first = quantity();
    if (!first) return std::nullopt;
    skipSpaces();
    const std::size_t mark_at = at_;
    Mark mark = readMark();
    if (mark == Mark::none && first->whole && peek() == '-') mark = Mark::feet;
    skipSpaces();
    if (mark != Mark::feet || atEnd()) {
      if (!atEnd()) return failHere(mark == Mark::none ? "a unit, a fraction or the end" : "the end");
      if (mark == Mark::none) mark = plain_ == Unit::inches ? Mark::inches : Mark::mm;
      return nanometres(*first, mark);
    }
    if (!first->whole) {
      at_ = mark_at;
      return fail("The feet mark " + named(mark_at) + " must follow whole feet when inches come after it.");
    }
    take('-');
    skipSpaces();
    const std::optional<Rational> second = quantity();
    if (!second) return std::nullopt;
    if (second->numerator >= 12 * second->denominator)
      return fail("The inches beginning with " + named(second->start) + " must be less than 12 after feet.");
    skipSpaces();
    const std::size_t second_mark = at_;
    const Mark inch = readMark();
    if (inch != Mark::none && inch != Mark::inches) {
      at_ = second_mark;
      return failHere("an inch mark or the end");
    }
    skipSpaces();
    if (!atEnd()) return failHere("the end");
    const Rational sum{first->numerator * 12 * second->denominator + second->numerator, second->denominator};
    return nanometres(sum, Mark::inches);
  }

  static Wide nanometres(const Rational& value, Mark mark) {
    const std::int64_t scale = mark == Mark::feet     ? 12 * kInchNm
                               : mark == Mark::inches ? kInchNm
                               : mark == Mark::mm     ? 1'000'000
                               : mark == Mark::cm     ? 10'000'000
                                                      : 1'000'000'000;
    return (value.numerator * scale * 2 + value.denominator) / (value.denominator * 2);
  }

  Mark readMark() {
    if (take('\'')) return take('\'') ? Mark::inches : Mark::feet;
    if (take('"')) return Mark::inches;
    static constexpr std::pair<std::string_view, Mark> kWords[] = {
        {"inches", Mark::inches}, {"inch", Mark::inches}, {"in", Mark::inches},
        {"feet", Mark::feet},     {"foot", Mark::feet},   {"ft", Mark::feet},
        {"mm", Mark::mm},         {"cm", Mark::cm},       {"m", Mark::m}};
    std::string letters;
    while (peek(letters.size()) >= 'a' && peek(letters.size()) <= 'z') letters += peek(letters.size());
    for (const auto& [word, mark] : kWords) {
      if (letters != word) continue;
      at_ += word.size();
      return mark;
    }
    return Mark::none;
  }

  std::optional<Wide> digits(int& count) {
    Wide value = 0;
    while (isDigit(peek())) {
      if (++count > kMostDigits) return failTooLong();
      value = value * 10 + (peek() - '0');
      ++at_;
    }
    return value;
  }

  // A whole number with few enough digits for a fraction's products to stay exact.
  std::optional<Wide> shortWhole() {
    const std::size_t start = at_;
    int count = 0;
    if (!isDigit(peek())) return failHere("a digit");
    const std::optional<Wide> value = digits(count);
    if (value && count > 9) return fail("The number beginning with " + named(start) + " is too long.");
    return value;
  }

  std::optional<Rational> quantity() {
    Rational out;
    out.start = at_;
    if (!isDigit(peek()) && !(peek() == '.' && isDigit(peek(1)))) return failHere("a number");
    int count = 0;
    const std::optional<Wide> whole = digits(count);
    if (!whole) return std::nullopt;
    out.numerator = *whole;
    if (take('.')) {
      const int before = count;
      while (isDigit(peek())) {
        if (++count > kMostDigits) return failTooLong();
        out.numerator = out.numerator * 10 + (peek() - '0');
        out.denominator *= 10;
        ++at_;
      }
      out.whole = count == before;
      return out;
    }
    if (count > 9) return fail("The number beginning with " + named(out.start) + " is too long.");
    if (peek() == '/') return fraction(0, out.numerator, out.start);
    const std::size_t after_whole = at_;
    if (!startsFraction()) {
      at_ = after_whole;
      return out;
    }
    const std::size_t fraction_at = at_;
    const std::optional<Wide> top = shortWhole();
    if (!top) return std::nullopt;
    std::optional<Rational> both = fraction(out.numerator, *top, out.start);
    if (both && *top >= both->denominator)
      return fail("The fraction beginning with " + named(fraction_at) + " must be less than one.");
    return both;
  }

  // Moves past the blanks or the hyphen between a whole number and its fraction, if a fraction follows.
  bool startsFraction() {
    const std::size_t before = at_;
    skipSpaces();
    if (take('-')) skipSpaces();
    if (at_ == before) return false;
    std::size_t ahead = 0;
    while (isDigit(peek(ahead))) ++ahead;
    return ahead > 0 && peek(ahead) == '/';
  }

  std::optional<Rational> fraction(Wide whole, Wide top, std::size_t start) {
    take('/');
    const std::size_t bottom_at = at_;
    const std::optional<Wide> bottom = shortWhole();
    if (!bottom) return std::nullopt;
    if (*bottom == 0) return fail("The fraction divides by the " + named(bottom_at) + ".");
    return Rational{whole * *bottom + top, *bottom, false, start};
  }

  std::vector<Symbol> symbols_;
  std::size_t at_ = 0;
  Unit plain_;
  std::optional<Error> error_;
};

std::int64_t magnitudeOf(std::int64_t v) { return v < 0 ? -v : v; }

// Nearest whole multiple, halves away from zero; `value` must not be negative.
std::int64_t nearest(std::int64_t value, std::int64_t step) {
  return value / step + (value % step * 2 >= step ? 1 : 0);
}

// 40 sixteenths: 2 1/2
std::string sixteenthsText(std::int64_t sixteenths) {
  const std::int64_t whole = sixteenths / 16;
  std::int64_t top = sixteenths % 16, bottom = 16;
  if (top == 0) return std::to_string(whole);
  while (top % 2 == 0) {
    top /= 2;
    bottom /= 2;
  }
  const std::string fraction = std::to_string(top) + "/" + std::to_string(bottom);
  return whole == 0 ? fraction : std::to_string(whole) + " " + fraction;
}

constexpr std::int64_t kSixteenthNm = kInchNm / 16;

// hundredths with two decimals, or tenths with one
std::string decimalText(std::int64_t units, int decimals) {
  std::string digits = std::to_string(magnitudeOf(units));
  if (digits.size() < static_cast<std::size_t>(decimals) + 1)
    digits.insert(0, static_cast<std::size_t>(decimals) + 1 - digits.size(), '0');
  digits.insert(digits.size() - static_cast<std::size_t>(decimals), 1, '.');
  return (units < 0 ? "-" : "") + digits;
}

}  // namespace

Result<Length> parseLength(std::string_view text, Unit plain) { return Reader(text, plain).read(); }

std::string feetInches(Length value) {
  const std::int64_t sixteenths = nearest(magnitudeOf(value.nm()), kSixteenthNm);
  const std::string sign = value.nm() < 0 && sixteenths > 0 ? "-" : "";
  const std::int64_t feet = sixteenths / (12 * 16), rest = sixteenths % (12 * 16);
  if (feet == 0) return sign + sixteenthsText(rest) + "\"";
  // 5'-0 1/2", so that a lone fraction is not read as part of the feet.
  const std::string zero = rest > 0 && rest < 16 ? "0 " : "";
  return sign + std::to_string(feet) + "'-" + zero + sixteenthsText(rest) + "\"";
}

std::string inchesText(Length value) {
  const std::int64_t sixteenths = nearest(magnitudeOf(value.nm()), kSixteenthNm);
  return (value.nm() < 0 && sixteenths > 0 ? "-" : "") + sixteenthsText(sixteenths) + "\"";
}

std::string millimetresText(Length value, bool withUnit) {
  const std::int64_t mm = nearest(magnitudeOf(value.nm()), 1'000'000);
  return (value.nm() < 0 && mm > 0 ? "-" : "") + std::to_string(mm) + (withUnit ? " mm" : "");
}

std::string lengthText(Length value, Unit unit) {
  return unit == Unit::inches ? feetInches(value) : millimetresText(value);
}

std::string areaText(Area value, Unit unit) {
  const std::int64_t um2 = magnitudeOf(value.squareMicrometres());
  const std::int64_t sign = value < Area{} ? -1 : 1;
  // A square foot is 92,903,040,000 square micrometres.
  if (unit == Unit::inches) return decimalText(sign * nearest(um2, 9'290'304'000), 1) + " sq ft";
  return decimalText(sign * nearest(um2, 10'000'000'000), 2) + " m\xc2\xb2";
}

}  // namespace elbowroom

#include "core/base/length_text.h"

#include <gtest/gtest.h>

#include <random>

namespace elbowroom {
namespace {

constexpr std::int64_t kInch =
    25'400'000;  // 1959 international yard and pound agreement: 1 in = 25.4 mm exactly

struct Reads {
  const char* text;
  std::int64_t nm;
  Unit plain = Unit::inches;
};

// Every figure is in whole nanometres: a reading that passes through doubles anywhere must not drift.
const Reads kGood[] = {
    {"5' 2 1/2\"", 125 * kInch / 2},
    {"5-2 1/2", 125 * kInch / 2},
    {"5'-2 1/2\"", 125 * kInch / 2},
    {"5' - 2 1/2\"", 125 * kInch / 2},
    {"5'2 1/2", 125 * kInch / 2},
    {"5' 2-1/2\"", 125 * kInch / 2},
    {"5' 2.5\"", 125 * kInch / 2},
    {"62.5", 125 * kInch / 2},
    {"62.50", 125 * kInch / 2},
    {"62.5\"", 125 * kInch / 2},
    {"62.5 in", 125 * kInch / 2},
    {"62.5IN", 125 * kInch / 2},
    {"62 1/2", 125 * kInch / 2},
    {"62 1/2 in", 125 * kInch / 2},
    {"62 1/2 inches", 125 * kInch / 2},
    {"62-1/2\"", 125 * kInch / 2},
    {"  62 1/2  ", 125 * kInch / 2},
    {"1587.5 mm", 125 * kInch / 2},
    {"1587.5mm", 125 * kInch / 2},
    {"158.75 cm", 125 * kInch / 2},
    {"1.5875 m", 125 * kInch / 2},
    {"5'", 60 * kInch},
    {"5 ft", 60 * kInch},
    {"5 feet", 60 * kInch},
    {"5.5'", 66 * kInch},
    {"2 1/2'", 30 * kInch},
    {"5'2\"", 62 * kInch},
    {"5' 2", 62 * kInch},
    {"5-2", 62 * kInch},
    {"5-0", 60 * kInch},
    {"5ft 2in", 62 * kInch},
    {"5ft2in", 62 * kInch},
    {"5 feet 2 inches", 62 * kInch},
    {"0'-6\"", 6 * kInch},
    {"5' 11 63/64\"", 60 * kInch + 11 * kInch + 63 * kInch / 64},
    {"1/2", kInch / 2},
    {"3/2", 3 * kInch / 2},
    {".5", kInch / 2},
    {"5.", 5 * kInch},
    {"1/64", 396'875},
    {"63/64", 63 * 396'875},
    {"0", 0},
    {"-0", 0},
    {"-5-2", -62 * kInch},
    {"-5'-2\"", -62 * kInch},
    {"- 62.5", -125 * kInch / 2},
    {"62''", 62 * kInch},
    {"5' 2''", 62 * kInch},
    // curly, prime, real minus, fraction slash, no-break space
    {"5\xe2\x80\x99 2 1/2\xe2\x80\x9d", 125 * kInch / 2},
    {"5\xe2\x80\xb2 2 1/2\xe2\x80\xb3", 125 * kInch / 2},
    {"62\xe2\x80\x99\xe2\x80\x99", 62 * kInch},
    {"\xe2\x88\x92"
     "62",
     -62 * kInch},
    {"62 1\xe2\x81\x84"
     "2",
     125 * kInch / 2},
    {"62\xc2\xa0"
     "1/2\xc2\xa0in",
     125 * kInch / 2},
    // thirds and other fractions that no nanometre holds: nearest, halves away from zero
    {"1/3", 8'466'667},
    {"2/3", 16'933'333},
    {"-1/3", -8'466'667},
    {"0.0000005 mm", 1},
    {"0.0000004 mm", 0},
    {"0.1 mm", 100'000},
    {"0.3", 7'620'000},
    {"0.00000000000000001", 0},
    {"999999999 mm", 999'999'999'000'000},
    // a plain number is in the given unit, a written unit or feet win over it
    {"1587.5", 125 * kInch / 2, Unit::millimetres},
    {"1587 1/2", 125 * kInch / 2, Unit::millimetres},
    {"5' 2", 62 * kInch, Unit::millimetres},
    {"5-2", 62 * kInch, Unit::millimetres},
    {"62 in", 62 * kInch, Unit::millimetres},
};

TEST(ParseLength, ReadsWhatPeopleWriteExactly) {
  for (const Reads& c : kGood) {
    const auto got = parseLength(c.text, c.plain);
    ASSERT_TRUE(got.ok()) << c.text << ": " << got.error().message;
    EXPECT_EQ(got->nm(), c.nm) << c.text;
  }
}

struct Refuses {
  const char* text;
  const char* names;  // what the message must contain: the character and its position
};

const Refuses kBad[] = {
    {"", "No length"},
    {"   ", "No length"},
    {"-", "\"-\" at position 1"},
    {".", "\".\" at position 1"},
    {"x", "\"x\" at position 1"},
    {"ft", "\"f\" at position 1"},
    {"'", "\"'\" at position 1"},
    {"\"", "\"\"\" at position 1"},
    {"+5", "\"+\" at position 1"},
    {"--5", "\"-\" at position 2"},
    {"5 - ", "\"-\" at position 3"},
    {"5--2", "\"-\" at position 3"},
    {"62x", "\"x\" at position 3"},
    {"62 x", "\"x\" at position 4"},
    {"  62x", "\"x\" at position 5"},
    {"62 inn", "\"i\" at position 4"},
    {"62 yards", "\"y\" at position 4"},
    {"1587,5", "comma at position 5"},
    {"1,587.5", "comma at position 2"},
    {"5' 2,5\"", "comma at position 5"},
    {"1e3", "\"e\" at position 2"},
    {"5.5.5", "\".\" at position 4"},
    {"5..5", "\".\" at position 3"},
    {"5 2", "\"2\" at position 3"},
    {"5 2 1/2", "\"2\" at position 3"},
    {"5' 2 1", "\"1\" at position 6"},
    {"5' 2' 3", "\"'\" at position 5"},
    {"5' 2 mm", "\"m\" at position 6"},
    {"5 mm 2", "\"2\" at position 6"},
    {"5'''", "\"'\" at position 4"},
    {"5\"\"", "\"\"\" at position 3"},
    {"62 in 3", "\"3\" at position 7"},
    {"5.5' 2", "\"'\" at position 4"},
    {"2 1/2' 3\"", "\"'\" at position 6"},
    {"5' 12\"", "\"1\" at position 4"},
    {"60-72", "\"7\" at position 4"},
    {"5' -2\" 3", "\"3\" at position 8"},
    {"1/", "\"/\" at position 2"},
    {"1/ 2", "\" \" at position 3"},
    {"1//2", "\"/\" at position 3"},
    {"/2", "\"/\" at position 1"},
    {"1/0", "\"0\" at position 3"},
    {"1/2/3", "\"/\" at position 4"},
    {"1 3/2", "\"3\" at position 3"},
    {"1.5 1/2", "\"1\" at position 5"},
    {"1 1.5/2", "\"1\" at position 3"},
    {"12 345 mm", "\"3\" at position 4"},
    {"nan", "\"n\" at position 1"},
    {"inf", "\"i\" at position 1"},
    {"5\n2", "\"\n\" at position 2"},
    {"99999999999999999999", "\"9\" at position 19"},
    {"9999999999/64", "\"9\" at position 1"},
    {"9999999 m", "too large"},
    // positions count characters, not bytes
    {"5\xe2\x80\x99 2 x", "\"x\" at position 6"},
    {"62\xc2\xbd", "\"\xc2\xbd\" at position 3"},
    {"5\xe2\x82\xac", "\"\xe2\x82\xac\" at position 2"},
    {"5\xff", "at position 2"},
    {"5\xe2\x80", "at position 2"},
};

TEST(ParseLength, NamesTheOffendingCharacterAndItsPosition) {
  for (const Refuses& c : kBad) {
    const auto got = parseLength(c.text, Unit::inches);
    ASSERT_FALSE(got.ok()) << c.text << " was read as " << got->nm() << " nm";
    EXPECT_EQ(got.error().code, "length") << c.text;
    EXPECT_NE(got.error().message.find(c.names), std::string::npos) << c.text << ": " << got.error().message;
  }
}

TEST(ParseLength, CommaIsSaidNotToBeUnderstood) {
  EXPECT_EQ(parseLength("1587,5", Unit::millimetres).error().message,
            "The comma at position 5 is not understood; write a point before decimals.");
}

TEST(ParseLength, EverySixtyFourthIsExact) {
  for (int n = 1; n < 64; ++n)
    for (int whole : {0, 1, 7, 96, 1199}) {
      const std::string text = std::to_string(whole) + " " + std::to_string(n) + "/64";
      const auto got = parseLength(text, Unit::inches);
      ASSERT_TRUE(got.ok()) << text;
      EXPECT_EQ(got->nm(), whole * kInch + n * 396'875) << text;
    }
}

struct Prints {
  std::int64_t nm;
  const char* feet;
  const char* inches;
  const char* mm;
};

const Prints kPrinted[] = {
    {0, "0\"", "0\"", "0 mm"},
    {125 * kInch / 2, "5'-2 1/2\"", "62 1/2\"", "1588 mm"},
    {6 * kInch, "6\"", "6\"", "152 mm"},
    {12 * kInch, "1'-0\"", "12\"", "305 mm"},
    {60 * kInch + kInch / 2, "5'-0 1/2\"", "60 1/2\"", "1537 mm"},
    {kInch / 2, "1/2\"", "1/2\"", "13 mm"},
    {7 * kInch / 16, "7/16\"", "7/16\"", "11 mm"},
    {11 * kInch + 3 * kInch / 8, "11 3/8\"", "11 3/8\"", "289 mm"},
    // 1/64 below a foot rounds up into it; 1/32 is half a sixteenth and rounds away from zero
    {12 * kInch - kInch / 64, "1'-0\"", "12\"", "304 mm"},
    {kInch / 32, "1/16\"", "1/16\"", "1 mm"},
    {kInch / 64, "0\"", "0\"", "0 mm"},
    {-kInch / 64, "0\"", "0\"", "0 mm"},
    {-125 * kInch / 2, "-5'-2 1/2\"", "-62 1/2\"", "-1588 mm"},
    {-6 * kInch, "-6\"", "-6\"", "-152 mm"},
    {1'499'999, "1/16\"", "1/16\"", "1 mm"},
    {1'500'000, "1/16\"", "1/16\"", "2 mm"},
};

TEST(LengthText, PrintsFeetInchesAndMillimetres) {
  for (const Prints& c : kPrinted) {
    const Length v = Length::nanometres(c.nm);
    EXPECT_EQ(feetInches(v), c.feet) << c.nm;
    EXPECT_EQ(inchesText(v), c.inches) << c.nm;
    EXPECT_EQ(millimetresText(v), c.mm) << c.nm;
    EXPECT_EQ(lengthText(v, Unit::inches), c.feet);
    EXPECT_EQ(lengthText(v, Unit::millimetres), c.mm);
    EXPECT_EQ(millimetresText(v, false) + " mm", c.mm);
  }
}

TEST(LengthText, WhatIsPrintedReadsBackTheSame) {
  for (int sixteenths = -4000; sixteenths <= 4000; ++sixteenths) {
    const Length v = Length::nanometres(sixteenths * kInch / 16);
    for (const std::string& text : {feetInches(v), inchesText(v)}) {
      const auto back = parseLength(text, Unit::millimetres);
      ASSERT_TRUE(back.ok()) << text << ": " << back.error().message;
      ASSERT_EQ(*back, v) << text;
    }
  }
  for (int mm = -4000; mm <= 4000; ++mm) {
    const Length v = Length::nanometres(mm * 1'000'000LL);
    ASSERT_EQ(*parseLength(millimetresText(v), Unit::inches), v);
    ASSERT_EQ(*parseLength(millimetresText(v, false), Unit::millimetres), v);
  }
}

TEST(LengthText, PrintingIsWithinHalfAStepOfTheValue) {
  std::mt19937_64 random(62);
  std::uniform_int_distribution<std::int64_t> nm(-100'000'000'000, 100'000'000'000);
  for (int i = 0; i < 2000; ++i) {
    const Length v = Length::nanometres(nm(random));
    EXPECT_LE(abs(*parseLength(feetInches(v), Unit::inches) - v), Length::nanometres(kInch / 32));
    EXPECT_LE(abs(*parseLength(millimetresText(v), Unit::inches) - v), Length::nanometres(500'000));
  }
}

TEST(AreaText, SquareFeetWithOneDecimalAndSquareMetresWithTwo) {
  using namespace literals;
  EXPECT_EQ(areaText(60_in * 96_in, Unit::inches), "40.0 sq ft");
  EXPECT_EQ(areaText(60_in * 96_in, Unit::millimetres), "3.72 m\xc2\xb2");  // 3.7161 m2
  EXPECT_EQ(areaText(Area{}, Unit::inches), "0.0 sq ft");
  EXPECT_EQ(areaText(100_mm * 100_mm, Unit::millimetres), "0.01 m\xc2\xb2");
  EXPECT_EQ(areaText(36_in * 36_in, Unit::inches), "9.0 sq ft");
  EXPECT_EQ(areaText(Area{} - 12_in * 6_in, Unit::inches), "-0.5 sq ft");
  EXPECT_EQ(areaText(Area{} - 1_in * 1_in, Unit::inches), "0.0 sq ft");
}

}  // namespace
}  // namespace elbowroom

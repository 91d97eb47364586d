#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/drawing/sheet.h"

namespace elbowroom {
namespace {

using Rgb = std::array<double, 3>;

Rgb linear(const std::string& hex) {
  Rgb rgb{};
  for (std::size_t i = 0; i < 3; ++i) {
    const double v = std::stoi(hex.substr(1 + 2 * i, 2), nullptr, 16) / 255.0;
    rgb[i] = v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
  }
  return rgb;
}

// WCAG 2.1, relative luminance and contrast ratio.
double contrast(const std::string& a, const std::string& b) {
  const auto luminance = [](const Rgb& c) { return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2]; };
  const double la = luminance(linear(a)), lb = luminance(linear(b));
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

constexpr Role kTexts[] = {Role::dimensionText, Role::label,     Role::note,       Role::title,
                           Role::markShort,     Role::markClose, Role::markUnknown};

// WCAG 2.1, 1.4.3: at least 4.5:1 for text.
TEST(Ink, TextStandsOutFromItsPaper) {
  EXPECT_NEAR(contrast("#000000", "#ffffff"), 21, 1e-9);
  for (const Role role : kTexts) {
    for (const bool dark : {false, true}) {
      EXPECT_GE(contrast(inkOf(role, dark).stroke, inkOf(Role::paper, dark).fill), 4.5)
          << static_cast<int>(role) << dark;
    }
    EXPECT_GE(contrast(inkOf(role).stroke, "#ffffff"), 4.5);
  }
}

// WCAG 2.1, 1.4.11: at least 3:1 for what one must see to understand a picture.
TEST(Ink, LinesStandOutFromTheirPaper) {
  for (int r = 0; r <= static_cast<int>(Role::hidden); ++r) {
    const Role role = static_cast<Role>(r);
    for (const bool dark : {false, true}) {
      EXPECT_GE(contrast(inkOf(role, dark).stroke, inkOf(Role::paper, dark).fill), 3) << r << dark;
    }
  }
}

// Machado, Oliveira, Fernandes 2009, severity 1.0: full protanopia, deuteranopia, tritanopia (linear RGB).
using Matrix = std::array<Rgb, 3>;
constexpr Matrix kProtan{
    {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
constexpr Matrix kDeutan{
    {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}};
constexpr Matrix kTritan{
    {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}};

Rgb lab(const Rgb& c) {
  const double x = (0.4124 * c[0] + 0.3576 * c[1] + 0.1805 * c[2]) / 0.9505,
               y = 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2],
               z = (0.0193 * c[0] + 0.1192 * c[1] + 0.9505 * c[2]) / 1.089;
  const auto f = [](double t) { return t > 0.008856 ? std::cbrt(t) : 7.787 * t + 16.0 / 116; };
  return {116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))};
}

double seenApart(const std::string& a, const std::string& b, const Matrix& eye) {
  const auto through = [&](const Rgb& c) {
    Rgb out{};
    for (std::size_t i = 0; i < 3; ++i)
      out[i] = std::clamp(eye[i][0] * c[0] + eye[i][1] * c[1] + eye[i][2] * c[2], 0.0, 1.0);
    return lab(out);
  };
  const Rgb la = through(linear(a)), lb = through(linear(b));
  return std::hypot(la[0] - lb[0], la[1] - lb[1], la[2] - lb[2]);
}

// CIE 1976 difference: about 2 is just noticeable; 10 is seen at a glance. Short and close also differ in
// shape.
TEST(Ink, FindingsDifferForEveryEye) {
  for (const bool dark : {false, true}) {
    for (const Matrix& eye : {kProtan, kDeutan, kTritan}) {
      const std::string shortfall = inkOf(Role::markShort, dark).stroke,
                        close = inkOf(Role::markClose, dark).stroke,
                        unknown = inkOf(Role::markUnknown, dark).stroke;
      EXPECT_GE(seenApart(shortfall, close, eye), 20);
      EXPECT_GE(seenApart(shortfall, unknown, eye), 10);
      EXPECT_GE(seenApart(close, unknown, eye), 10);
    }
  }
}

TEST(Ink, LinesByWeightAndKind) {
  const auto width = [](Role role) { return inkOf(role).width_mm; };
  EXPECT_GT(width(Role::wallCutExterior), width(Role::fixture));
  EXPECT_GT(width(Role::doorLeaf), width(Role::fixture));
  EXPECT_GT(width(Role::fixture), width(Role::fixtureDetail));
  EXPECT_LE(width(Role::dimension), width(Role::fixtureDetail));  // dimensions are the finest
  EXPECT_FALSE(inkOf(Role::wallCut).fill.empty());
  EXPECT_TRUE(inkOf(Role::fixture).dash_mm.empty());
  EXPECT_FALSE(inkOf(Role::fixtureRemoved).dash_mm.empty());
  EXPECT_FALSE(inkOf(Role::clearZone).dash_mm.empty());
  // ISO 128-2: long-dashed dotted has one dot, long-dashed double-dotted two.
  EXPECT_EQ(inkOf(Role::centreline).dash_mm.size(), 4u);
  EXPECT_EQ(inkOf(Role::turning).dash_mm.size(), 6u);
}

}  // namespace
}  // namespace elbowroom

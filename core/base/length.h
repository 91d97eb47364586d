// Lengths, areas and angles as types.
//
// A Length is a whole number of nanometres, so that 1/64 in (396,875 nm) and 0.1 mm (100,000 nm) are both
// exact. An Area is a whole number of square micrometres; an Angle a whole number of millionths of a degree.
// No implicit conversion from or to plain numbers; a product of lengths is an Area, never a Length.
// Range: |Length| < 9.2e9 m in storage; plan files are limited to +-100 m (core/file).
#pragma once

#include <cmath>
#include <compare>
#include <concepts>
#include <cstdint>
#include <numbers>

namespace elbowroom {

class Length {
 public:
  constexpr Length() = default;
  static constexpr Length nanometres(std::int64_t n) { return Length(n); }
  // Nearest nanometre; the caller guarantees a finite value within +-1e6 m.
  static Length fromInches(double in) { return Length(std::llround(in * kNmPerInch)); }
  static Length fromMillimetres(double mm) { return Length(std::llround(mm * 1e6)); }

  constexpr std::int64_t nm() const { return nm_; }
  constexpr double inches() const { return static_cast<double>(nm_) / kNmPerInch; }
  constexpr double millimetres() const { return static_cast<double>(nm_) / 1e6; }

  constexpr auto operator<=>(const Length&) const = default;
  constexpr Length operator-() const { return Length(-nm_); }
  constexpr Length& operator+=(Length o) { nm_ += o.nm_; return *this; }
  constexpr Length& operator-=(Length o) { nm_ -= o.nm_; return *this; }
  friend constexpr Length operator+(Length a, Length b) { return Length(a.nm_ + b.nm_); }
  friend constexpr Length operator-(Length a, Length b) { return Length(a.nm_ - b.nm_); }
  friend constexpr Length operator*(Length a, int k) { return Length(a.nm_ * k); }
  friend constexpr Length operator*(int k, Length a) { return Length(a.nm_ * k); }
  friend constexpr Length operator/(Length a, int k) { return Length(a.nm_ / k); }
  // A double would be cut to an int without a word; say scaled().
  template <std::floating_point T> friend Length operator*(Length, T) = delete;
  template <std::floating_point T> friend Length operator*(T, Length) = delete;
  template <std::floating_point T> friend Length operator/(Length, T) = delete;
  // Ratio of two lengths, dimensionless; b must not be zero.
  friend constexpr double operator/(Length a, Length b) {
    return static_cast<double>(a.nm_) / static_cast<double>(b.nm_);
  }
  // The length times a dimensionless factor, to the nearest nanometre.
  Length scaled(double factor) const { return Length(std::llround(static_cast<double>(nm_) * factor)); }

 private:
  explicit constexpr Length(std::int64_t n) : nm_(n) {}
  static constexpr double kNmPerInch = 25'400'000.0;
  std::int64_t nm_ = 0;
};

constexpr Length abs(Length a) { return a < Length{} ? -a : a; }

class Area {
 public:
  constexpr Area() = default;
  static constexpr Area squareMicrometres(std::int64_t n) { return Area(n); }
  static Area fromSquareInches(double v) { return Area(std::llround(v * kPerSquareInch)); }

  constexpr std::int64_t squareMicrometres() const { return um2_; }
  constexpr double squareInches() const { return static_cast<double>(um2_) / kPerSquareInch; }
  constexpr double squareFeet() const { return squareInches() / 144.0; }
  constexpr double squareMetres() const { return static_cast<double>(um2_) / 1e12; }

  constexpr auto operator<=>(const Area&) const = default;
  friend constexpr Area operator+(Area a, Area b) { return Area(a.um2_ + b.um2_); }
  friend constexpr Area operator-(Area a, Area b) { return Area(a.um2_ - b.um2_); }
  Area scaled(double factor) const { return Area(std::llround(static_cast<double>(um2_) * factor)); }

 private:
  explicit constexpr Area(std::int64_t n) : um2_(n) {}
  static constexpr double kPerSquareInch = 645'160'000.0;
  std::int64_t um2_ = 0;
};

constexpr Area operator*(Length a, Length b) {
  const __int128 product = static_cast<__int128>(a.nm()) * b.nm();
  const __int128 half = product < 0 ? -500'000 : 500'000;
  return Area::squareMicrometres(static_cast<std::int64_t>((product + half) / 1'000'000));
}

class Angle {
 public:
  constexpr Angle() = default;
  static constexpr Angle microdegrees(std::int64_t n) { return Angle(n); }
  static Angle fromDegrees(double d) { return Angle(std::llround(d * 1e6)); }
  static Angle fromRadians(double r) { return fromDegrees(r * 180.0 / std::numbers::pi); }

  constexpr std::int64_t microdegrees() const { return udeg_; }
  constexpr double degrees() const { return static_cast<double>(udeg_) / 1e6; }
  constexpr double radians() const { return degrees() * std::numbers::pi / 180.0; }
  // The same direction within [0, 360).
  constexpr Angle normalised() const {
    const std::int64_t full = 360'000'000;
    return Angle(((udeg_ % full) + full) % full);
  }

  constexpr auto operator<=>(const Angle&) const = default;
  constexpr Angle operator-() const { return Angle(-udeg_); }
  friend constexpr Angle operator+(Angle a, Angle b) { return Angle(a.udeg_ + b.udeg_); }
  friend constexpr Angle operator-(Angle a, Angle b) { return Angle(a.udeg_ - b.udeg_); }

 private:
  explicit constexpr Angle(std::int64_t n) : udeg_(n) {}
  std::int64_t udeg_ = 0;
};

namespace literals {
inline Length operator""_in(long double v) { return Length::fromInches(static_cast<double>(v)); }
constexpr Length operator""_in(unsigned long long v) {
  return Length::nanometres(static_cast<std::int64_t>(v) * 25'400'000);
}
inline Length operator""_mm(long double v) { return Length::fromMillimetres(static_cast<double>(v)); }
constexpr Length operator""_mm(unsigned long long v) {
  return Length::nanometres(static_cast<std::int64_t>(v) * 1'000'000);
}
inline Angle operator""_deg(long double v) { return Angle::fromDegrees(static_cast<double>(v)); }
constexpr Angle operator""_deg(unsigned long long v) {
  return Angle::microdegrees(static_cast<std::int64_t>(v) * 1'000'000);
}
}  // namespace literals

}  // namespace elbowroom

// Plain numbers that are neither a length, an area nor an angle.
#pragma once

#include <compare>
#include <concepts>
#include <cstdint>

namespace elbowroom {

// How many of something.
struct Count {
  int value = 0;
  auto operator<=>(const Count&) const = default;
};

// A figure in a unit that its fact or rule names (cfm, degrees Fahrenheit, amperes, per cent, pounds), in
// thousandths of it so that it stays exact.
struct Amount {
  std::int64_t thousandths = 0;
  static constexpr Amount of(std::int64_t whole) { return {whole * 1000}; }
  template <std::floating_point T>
  static Amount of(T) = delete;  // would lose its thousandths
  constexpr double value() const { return static_cast<double>(thousandths) / 1000; }
  auto operator<=>(const Amount&) const = default;
  friend constexpr Amount operator-(Amount a, Amount b) { return {a.thousandths - b.thousandths}; }
};

}  // namespace elbowroom

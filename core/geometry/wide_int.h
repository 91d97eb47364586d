// Private to core/geometry: whole numbers of up to 2,176 bits for the predicates of Boost.Polygon's Voronoi builder.
// They are exact like its own extended_int<64>, in limbs of 64 bits, and a copy takes only the limbs in use: with rooms,
// whose edges are parallel and meet in line, a diagram spends most of its time in them.
#pragma once

#include <algorithm>
#include <cassert>
#include <cmath>
#include <concepts>
#include <cstdint>

namespace elbowroom::floor_kernel {

class WideInt {
 public:
  static constexpr int kLimbs = 34;  // the predicates need 2,048 bits for coordinates of 32

  WideInt() = default;
  // Implicit, as the predicates mix both.
  template <std::signed_integral T>
  WideInt(T value) : size_(value != 0), negative_(value < 0) {
    const auto bits = static_cast<std::uint64_t>(static_cast<std::int64_t>(value));
    limbs_[0] = value < 0 ? 0 - bits : bits;
  }
  WideInt(const WideInt& other) { *this = other; }
  WideInt& operator=(const WideInt& other) {
    size_ = other.size_;
    negative_ = other.negative_;
    std::copy_n(other.limbs_, size_, limbs_);
    return *this;
  }

  int sign() const { return size_ == 0 ? 0 : negative_ ? -1 : 1; }
  // To 64 bits of mantissa.
  long double value() const {
    long double v = 0;
    for (int i = size_; i-- > std::max(0, size_ - 3);) v = v * 0x1p64L + static_cast<long double>(limbs_[i]);
    if (size_ > 3) v = std::ldexp(v, 64 * (size_ - 3));
    return negative_ ? -v : v;
  }

  WideInt operator-() const {
    WideInt r = *this;
    r.negative_ = !negative_;
    return r;
  }
  friend WideInt operator+(const WideInt& a, const WideInt& b) { return summed(a, b, b.negative_); }
  friend WideInt operator-(const WideInt& a, const WideInt& b) { return summed(a, b, !b.negative_); }
  friend WideInt operator*(const WideInt& a, const WideInt& b) {
    WideInt r;
    if (a.size_ == 0 || b.size_ == 0) return r;
    assert(a.size_ + b.size_ <= kLimbs);
    r.negative_ = a.negative_ != b.negative_;
    r.size_ = a.size_ + b.size_;
    std::uint64_t first = 0;  // the first row has nothing to add to
    for (int k = 0; k < b.size_; ++k) {
      const Twice t = Twice{a.limbs_[0]} * b.limbs_[k] + first;
      r.limbs_[k] = static_cast<std::uint64_t>(t);
      first = static_cast<std::uint64_t>(t >> 64);
    }
    r.limbs_[b.size_] = first;
    for (int i = 1; i < a.size_; ++i) {
      std::uint64_t carry = 0;
      for (int k = 0; k < b.size_; ++k) {
        const Twice t = Twice{a.limbs_[i]} * b.limbs_[k] + r.limbs_[i + k] + carry;
        r.limbs_[i + k] = static_cast<std::uint64_t>(t);
        carry = static_cast<std::uint64_t>(t >> 64);
      }
      r.limbs_[i + b.size_] = carry;
    }
    r.trim();
    return r;
  }

 private:
  __extension__ using Twice = unsigned __int128;

  void trim() {
    while (size_ > 0 && limbs_[size_ - 1] == 0) --size_;
  }
  static bool less(const WideInt& a, const WideInt& b) {  // without their signs
    if (a.size_ != b.size_) return a.size_ < b.size_;
    for (int i = a.size_; i-- > 0;)
      if (a.limbs_[i] != b.limbs_[i]) return a.limbs_[i] < b.limbs_[i];
    return false;
  }
  // a + b, b with the given sign.
  static WideInt summed(const WideInt& a, const WideInt& b, bool b_negative) {
    const bool swap = less(a, b);
    const WideInt &big = swap ? b : a, &small = swap ? a : b;
    WideInt r;
    r.negative_ = swap ? b_negative : a.negative_;
    r.size_ = big.size_;
    std::uint64_t carry = 0;
    const bool adds = a.negative_ == b_negative;
    for (int i = 0; i < big.size_; ++i) {
      const std::uint64_t other = i < small.size_ ? small.limbs_[i] : 0;
      const Twice t = adds ? Twice{big.limbs_[i]} + other + carry : Twice{big.limbs_[i]} - other - carry;
      r.limbs_[i] = static_cast<std::uint64_t>(t);
      carry = static_cast<std::uint64_t>(t >> 64) & 1;
    }
    if (adds && carry) {
      assert(r.size_ < kLimbs);
      r.limbs_[r.size_++] = carry;
    }
    r.trim();
    return r;
  }

  int size_ = 0;
  bool negative_ = false;
  std::uint64_t limbs_[kLimbs];  // the lowest first; beyond size_ without meaning
};

inline bool is_pos(const WideInt& n) { return n.sign() > 0; }
inline bool is_neg(const WideInt& n) { return n.sign() < 0; }
inline bool is_zero(const WideInt& n) { return n.sign() == 0; }

// What the predicates take roots of: 64 bits of mantissa, and an exponent that holds any WideInt.
struct WideReal {
  long double v = 0;
  WideReal operator-() const { return {-v}; }
  friend WideReal operator+(WideReal a, WideReal b) { return {a.v + b.v}; }
  friend WideReal operator-(WideReal a, WideReal b) { return {a.v - b.v}; }
  friend WideReal operator*(WideReal a, WideReal b) { return {a.v * b.v}; }
  friend WideReal operator/(WideReal a, WideReal b) { return {a.v / b.v}; }
};
inline bool is_pos(WideReal r) { return r.v > 0; }
inline bool is_neg(WideReal r) { return r.v < 0; }
inline bool is_zero(WideReal r) { return r.v == 0; }
inline WideReal get_sqrt(WideReal r) { return {std::sqrt(r.v)}; }

}  // namespace elbowroom::floor_kernel

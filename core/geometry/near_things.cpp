#include "core/geometry/near_things.h"

#include <algorithm>

namespace elbowroom {

NearThings::NearThings(std::vector<Box> boxes) : boxes_(std::move(boxes)) {
  if (!boxes_.empty()) {
    Point high = boxes_.front().high;
    low_ = boxes_.front().low;
    for (const Box& b : boxes_) {
      low_ = {std::min(low_.x, b.low.x), std::min(low_.y, b.low.y)};
      high = {std::max(high.x, b.high.x), std::max(high.y, b.high.y)};
    }
    // No more squares than a few for each thing, however far apart they stand.
    const double most = 4.0 * static_cast<double>(boxes_.size()) + 16;
    const Vector size = high - low_;
    while ((size.dx / side_ + 1) * (size.dy / side_ + 1) > most) side_ = 2 * side_;
    columns_ = static_cast<int>(size.dx / side_) + 1;
    rows_ = static_cast<int>(size.dy / side_) + 1;
  }
  first_.assign(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_) + 1, 0);
  const auto visit = [&](const Box& b, auto square) {
    for (int r = rowOf(b.low.y); r <= rowOf(b.high.y); ++r)
      for (int c = columnOf(b.low.x); c <= columnOf(b.high.x); ++c)
        square(static_cast<std::size_t>(r) * static_cast<std::size_t>(columns_) +
               static_cast<std::size_t>(c));
  };
  for (const Box& b : boxes_) visit(b, [&](std::size_t s) { ++first_[s + 1]; });
  for (std::size_t s = 1; s < first_.size(); ++s) first_[s] += first_[s - 1];
  listed_.resize(static_cast<std::size_t>(first_.back()));
  std::vector<int> next = first_;
  for (std::size_t i = 0; i < boxes_.size(); ++i)
    visit(boxes_[i],
          [&](std::size_t s) { listed_[static_cast<std::size_t>(next[s]++)] = static_cast<int>(i); });
}

int NearThings::columnOf(Length x) const {
  return static_cast<int>(std::clamp((x - low_.x) / side_, 0.0, static_cast<double>(columns_ - 1)));
}
int NearThings::rowOf(Length y) const {
  return static_cast<int>(std::clamp((y - low_.y) / side_, 0.0, static_cast<double>(rows_ - 1)));
}

void NearThings::within(const Box& box, Length reach, std::vector<int>& found) const {
  found.clear();
  if (boxes_.empty()) return;
  const Box wide = grown(box, reach);
  const int left = columnOf(wide.low.x), right = columnOf(wide.high.x), top = rowOf(wide.high.y);
  for (int r = rowOf(wide.low.y); r <= top; ++r)
    for (int c = left; c <= right; ++c) {
      const std::size_t s =
          static_cast<std::size_t>(r) * static_cast<std::size_t>(columns_) + static_cast<std::size_t>(c);
      for (int k = first_[s]; k < first_[s + 1]; ++k) {
        const int i = listed_[static_cast<std::size_t>(k)];
        if (touch(boxes_[static_cast<std::size_t>(i)], wide)) found.push_back(i);
      }
    }
  std::sort(found.begin(), found.end());
  found.erase(std::unique(found.begin(), found.end()), found.end());
}

}  // namespace elbowroom

#include "core/plan/full_mirror.h"

#include <algorithm>
#include <cmath>

#include "core/plan/ceiling.h"
#include "core/plan/corners.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr Length kLeast = Length::nanometres(25'400'000);  // 1 in
constexpr Length kRounding = Length::nanometres(10);
constexpr Length kThin =
    Length::nanometres(12'700'000);  // 1/2 in: glass on the next wall meets it in the corner

bool getsHole(const WallItem& item) {
  for (const WallUse use : {WallUse::lamp, WallUse::receptacle, WallUse::control, WallUse::box})
    if (is(item, use)) return true;
  return false;
}

std::vector<WallBox> inTheWay(const Layout& layout, const WallItem& mirror) {
  std::vector<WallBox> boxes;
  for (WallBox box : wallBoxesOn(layout, mirror.wall)) {
    const WallItem* item = findWallItem(layout.option, box.id);
    if (box.id == mirror.id || (item && getsHole(*item))) continue;
    if (const Fixture* f = findFixture(layout.option, box.id))
      box.high += lengthOf(f->facts, "backsplash").value_or(Length{});
    boxes.push_back(std::move(box));
  }
  for (const CornerTouch& touch : cornerTouches(layout))
    if (touch.wall == mirror.wall && touch.id != mirror.id && touch.to - touch.from >= kThin)
      boxes.push_back({touch.id, touch.wall, touch.from, touch.to, touch.low, touch.high});
  return boxes;
}

// The ceiling over a wall as a line that is concave: between its points it is straight.
using Line = std::vector<CeilingPoint>;

// Where the ceiling is at least `h` high; nullopt: nowhere.
struct Stretch {
  Length from, to;
};
std::optional<Stretch> under(const Line& line, Length h) {
  std::optional<Stretch> s;
  const auto take = [&](Length x) {
    s = s ? Stretch{std::min(s->from, x), std::max(s->to, x)} : Stretch{x, x};
  };
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i].height >= h) take(line[i].along);
    if (i + 1 == line.size() || (line[i].height >= h) == (line[i + 1].height >= h)) continue;
    const double share = (h - line[i].height) / (line[i + 1].height - line[i].height);
    take(line[i].along + (line[i + 1].along - line[i].along).scaled(share));
  }
  return s;
}

struct Rectangle {
  Length left, right, low, high;
  double area() const { return (right - left).inches() * (high - low).inches(); }
};

// The largest rectangle within left..right that stands at `low`, holds `middle` and reaches at most `cap`.
// Its width falls in straight pieces as its top rises, so that between two heights its area is a parabola.
std::optional<Rectangle> largest(const Line& ceiling, Rectangle within, Length middle) {
  std::vector<Length> tops{within.high};
  for (const CeilingPoint& p : ceiling) tops.push_back(p.height);
  const auto heightAt = [&](Length x) {
    for (std::size_t i = 0; i + 1 < ceiling.size(); ++i)
      if (x <= ceiling[i + 1].along)
        return ceiling[i].height +
               (ceiling[i + 1].height - ceiling[i].height)
                   .scaled((x - ceiling[i].along) / (ceiling[i + 1].along - ceiling[i].along));
    return ceiling.back().height;
  };
  for (const Length x : {within.left, middle, within.right}) tops.push_back(heightAt(x));
  tops.push_back(within.low + kLeast);
  std::sort(tops.begin(), tops.end());
  std::optional<Rectangle> best;
  const auto at = [&](Length top) -> std::optional<Rectangle> {
    const auto s = under(ceiling, top);
    if (!s || s->from > middle + kRounding || s->to < middle - kRounding) return std::nullopt;
    return Rectangle{std::max(within.left, s->from), std::min(within.right, s->to), within.low, top};
  };
  const auto offer = [&](const std::optional<Rectangle>& r) {
    if (!r || r->high > within.high || r->high - r->low < kLeast || r->right - r->left < kLeast) return;
    if (!best || r->area() > best->area()) best = r;
  };
  for (std::size_t i = 0; i < tops.size(); ++i) {
    const auto here = at(tops[i]);
    offer(here);
    if (i + 1 == tops.size() || !here) continue;
    const auto next = at(tops[i + 1]);
    if (!next || tops[i] == tops[i + 1]) continue;
    // width = w - k * (top - here): the parabola's summit.
    const double w = (here->right - here->left).inches();
    const double k = (w - (next->right - next->left).inches()) / (tops[i + 1] - tops[i]).inches();
    if (k <= 0) continue;
    const Length summit = tops[i] + Length::fromInches((w / k - (tops[i] - within.low).inches()) / 2);
    if (summit > tops[i] && summit < tops[i + 1]) offer(at(summit));
  }
  return best;
}

}  // namespace

std::optional<WallItem> fullMirror(const Layout& layout, WallItem mirror) {
  const WallFrame* wall = findWallFrame(layout, mirror.wall);
  const auto line = wall ? ceilingAlong(layout, {wall->from, wall->to}) : std::nullopt;
  if (!line || line->size() < 2) return std::nullopt;
  const Length middle = std::clamp(mirror.along, Length{}, wall->length), half = mirror.width / 2;
  const Length centre = mirror.bottom + mirror.height / 2;
  const std::vector<WallBox> boxes = inTheWay(layout, mirror);
  std::optional<Length> rim;
  for (const WallBox& box : boxes)
    if (findFixture(layout.option, box.id) && box.high < centre && box.left < middle + half &&
        box.right > middle - half)
      rim = std::max(rim.value_or(Length{}), box.high);
  const Length low = rim.value_or(mirror.bottom);
  std::vector<Length> lefts{Length{}}, rights{wall->length};
  for (const WallBox& box : boxes) {
    if (box.high <= low) continue;
    if (box.right <= middle) lefts.push_back(box.right);
    if (box.left >= middle) rights.push_back(box.left);
  }
  std::optional<Rectangle> best;
  for (const Length left : lefts)
    for (const Length right : rights) {
      Rectangle within{left, right, low, 1'000'000_in};
      for (const WallBox& box : boxes)
        if (box.high > low && box.left < right && box.right > left)
          within.high = std::min(within.high, box.low);
      const auto found = largest(*line, within, middle);
      if (found && (!best || found->area() > best->area())) best = found;
    }
  if (!best) return std::nullopt;
  mirror.width = best->right - best->left;
  mirror.along = best->left + mirror.width / 2;
  mirror.bottom = best->low;
  mirror.height = best->high - best->low;
  return mirror;
}

}  // namespace elbowroom

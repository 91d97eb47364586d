#include "core/drawing/dimensions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "core/drawing/dimension_rows.h"
#include "core/drawing/pen.h"
#include "core/drawing/sheet_text.h"

namespace elbowroom {
namespace {

using Corners = std::array<Point, 4>;

// Do two turned rectangles overlap? Separating axes of both.
bool overlapping(const Corners& a, const Corners& b) {
  for (const Corners* box : {&a, &b}) {
    for (int i = 0; i < 2; ++i) {
      const Direction axis =
          Direction::between((*box)[static_cast<std::size_t>(i)], (*box)[static_cast<std::size_t>(i + 1)]);
      const auto range = [&](const Corners& c) {
        double low = 1e18, high = -1e18;
        for (const Point p : c) {
          const double d = dot(p - Point{}, axis).inches();
          low = std::min(low, d), high = std::max(high, d);
        }
        return std::pair{low, high};
      };
      const auto [a0, a1] = range(a);
      const auto [b0, b1] = range(b);
      if (a1 <= b0 || b1 <= a0) return false;
    }
  }
  return true;
}

// One dimension's text: where its middle stands along the row and how many lines above it.
struct Caption {
  std::string text;
  double middle = 0, width = 0;
  double anchor = 0;  // middle of what it measures
  int lift = 0;
};

struct LaidRow {
  const DimensionRow* row;
  std::vector<Caption> captions;
  double low, high;  // extent along, texts included
  int lifts = 0;
  int level = 0;
};

std::string captionText(double inches, Unit unit) { return sheetText(Length::fromInches(inches), unit); }

bool clash(double a0, double a1, double b0, double b1) { return a0 < b1 && b0 < a1; }

// Finds each text a place that meets no other text of the row and, when possible, no line that crosses the
// row.
LaidRow layRow(const DimensionRow& row, const std::vector<double>& crossings, const DrawStyle& style) {
  const double mm = style.mm.inches();
  const Length height = style.mm.scaled(kDimensionTextMm);
  LaidRow laid{&row, {}, row.stations.front(), row.stations.back(), 0, 0};
  const auto free = [&](double middle, double width, int lift, double margin) {
    return std::none_of(laid.captions.begin(), laid.captions.end(), [&](const Caption& c) {
      return c.lift == lift && clash(middle - width / 2 - margin, middle + width / 2 + margin,
                                     c.middle - c.width / 2, c.middle + c.width / 2);
    });
  };
  const auto crossed = [&](double middle, double width, int lift) {
    const auto hits = [&](double s) { return std::abs(s - middle) < width / 2 + 0.5 * mm; };
    if (std::any_of(crossings.begin(), crossings.end(), hits)) return true;
    return lift > 0 && std::any_of(row.stations.begin(), row.stations.end(), hits);
  };
  const std::size_t count = row.stations.size() - 1;
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < count; ++i) order.push_back(i);
  // Wide ones take their places first; the narrow ones then see what is left.
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return row.stations[a + 1] - row.stations[a] > row.stations[b + 1] - row.stations[b];
  });
  for (const std::size_t i : order) {
    const double a = row.stations[i], b = row.stations[i + 1], middle = (a + b) / 2;
    Caption caption{captionText(b - a, style.unit), middle, 0, middle, 0};
    caption.width = textWidth(caption.text, height).inches();
    const double w = caption.width, room = (b - a - w) / 2 - 1.0 * mm;
    bool placed = false;
    if (room >= 0) {
      for (double off = 0; off <= room && !placed; off += 0.5 * mm) {
        for (const double at : {middle - off, middle + off}) {
          if (!crossed(at, w, 0)) {
            caption.middle = at;
            placed = true;
            break;
          }
        }
      }
      placed = true;  // crossed by a line wherever it stands: the halo keeps it readable
    }
    const double beside = 1.8 * mm + w / 2;
    if (!placed && i == 0 && free(a - beside, w, 0, mm)) caption.middle = a - beside, placed = true;
    if (!placed && i == count - 1 && free(b + beside, w, 0, mm)) caption.middle = b + beside, placed = true;
    for (int lift = 1; !placed && lift < 6; ++lift) {
      if (free(middle, w, lift, mm)) caption.lift = lift, placed = true;
    }
    if (!placed) continue;  // no place at all: one text across another would say less than none
    laid.captions.push_back(caption);
    const double reach = w / 2 + (room >= 0 ? 0 : 1.5 * mm);
    laid.low = std::min(laid.low, caption.middle - reach),
    laid.high = std::max(laid.high, caption.middle + reach);
    laid.lifts = std::max(laid.lifts, caption.lift);
  }
  return laid;
}

constexpr double kLiftMm = 3.7;

struct LaidGroup {
  const DimensionGroup* group;
  std::vector<LaidRow> rows;
  std::vector<double> offsets;  // of each level from the base
  double low = 1e9, high = -1e9, depth = 0;
  double start = 0;  // base, pushed outwards
};

LaidGroup layGroup(const DimensionGroup& group, const DrawStyle& style) {
  const double mm = style.mm.inches();
  LaidGroup laid{&group, {}, {}, 1e9, -1e9, 0, group.base};
  for (std::size_t i = 0; i < group.rows.size(); ++i) {
    std::vector<double> crossings;
    for (std::size_t k = i + 1; k < group.rows.size(); ++k) {
      crossings.insert(crossings.end(), group.rows[k].stations.begin(), group.rows[k].stations.end());
    }
    LaidRow row = layRow(group.rows[i], crossings, style);
    // The lowest level that is free of other rows and outside every row of a lower rank it overlaps.
    int level = 0;
    for (const LaidRow& other : laid.rows) {
      // Chains that only share a corner may stand on one line.
      const bool meets = clash(row.low + 0.01, row.high - 0.01, other.low, other.high);
      if (meets || row.row->rank >= 2) {
        const bool beyond = meets || other.row->rank < row.row->rank;
        level = std::max(level, other.level + (beyond ? 1 : 0));
      }
    }
    row.level = level;
    laid.low = std::min(laid.low, row.low), laid.high = std::max(laid.high, row.high);
    laid.rows.push_back(std::move(row));
  }
  int levels = 0;
  for (const LaidRow& row : laid.rows) levels = std::max(levels, row.level + 1);
  double at = kFirstRowMm * mm;
  for (int level = 0; level < levels; ++level) {
    laid.offsets.push_back(at);
    int lifts = 0;
    for (const LaidRow& row : laid.rows) lifts = row.level == level ? std::max(lifts, row.lifts) : lifts;
    at += (kRowMm + kLiftMm * lifts) * mm;
  }
  laid.depth = at;
  return laid;
}

Corners cornersOf(const LaidGroup& laid, const DrawStyle& style) {
  const double s0 = laid.low - style.mm.inches(), s1 = laid.high + style.mm.inches();
  const double t0 = laid.start + 2 * style.mm.inches(), t1 = laid.start + laid.depth;
  const DimensionGroup& g = *laid.group;
  return {g.at(s0, t0), g.at(s1, t0), g.at(s1, t1), g.at(s0, t1)};
}

void drawRow(DisplayList& list, const LaidGroup& laid, const LaidRow& row, const DrawStyle& style) {
  const DimensionGroup& g = *laid.group;
  const double mm = style.mm.inches(), t = laid.start + laid.offsets[static_cast<std::size_t>(row.level)];
  const std::vector<double>& s = row.row->stations;
  list.push_back({LinePrim{g.at(s.front(), t), g.at(s.back(), t)}, Role::dimension, {}});
  for (const double at : s) drawTick(list, g.at(at, t), g.along, style);
  const Angle turn = readableTurn(g.along);
  // Text stands above its line as it is read, on whichever side of the wall that is.
  const bool outside =
      Direction::fromAngle(turn).x * g.along.x + Direction::fromAngle(turn).y * g.along.y > 0;
  for (const Caption& caption : row.captions) {
    const double rise = (kTextRiseMm + kLiftMm * caption.lift) * mm;
    TextPrim text;
    text.text = caption.text;
    text.height = style.mm.scaled(kDimensionTextMm);
    text.turn = turn;
    text.h = AnchorH::centre;
    text.v = AnchorV::base;
    text.halo = true;
    // Lifted texts always go outwards, where the next row has made room for them.
    double base = outside ? t + rise : t - kTextRiseMm * mm;
    if (!outside && caption.lift > 0) base = t + rise + (kDimensionTextMm * 0.8 - 1.4) * mm;
    text.at = g.at(caption.middle, base);
    if (caption.lift > 0) {
      list.push_back(
          {LinePrim{g.at(caption.anchor, t), g.at(caption.anchor, t + rise - (outside ? 0.6 : 1.6) * mm)},
           Role::dimension,
           {}});
    }
    list.push_back({text, Role::dimensionText, {}});
  }
}

void drawExtensions(DisplayList& list, const LaidGroup& laid, const DrawStyle& style) {
  const DimensionGroup& g = *laid.group;
  const double mm = style.mm.inches();
  struct Reach {
    double s, start, end;
    bool centreline;
  };
  std::vector<Reach> lines;
  for (const LaidRow& row : laid.rows) {
    const double end = laid.start + laid.offsets[static_cast<std::size_t>(row.level)] + kExtensionPastMm * mm;
    for (std::size_t i = 0; i < row.row->stations.size(); ++i) {
      const double s = row.row->stations[i], start = row.row->starts[i] + 2 * mm;
      const auto it =
          std::find_if(lines.begin(), lines.end(), [&](const Reach& r) { return std::abs(r.s - s) < 0.02; });
      if (it == lines.end()) {
        lines.push_back({s, start, end, row.row->centreline[i]});
      } else {
        it->start = std::min(it->start, start), it->end = std::max(it->end, end);
        it->centreline = it->centreline && row.row->centreline[i];
      }
    }
  }
  for (const Reach& line : lines) {
    list.push_back({LinePrim{g.at(line.s, line.start), g.at(line.s, line.end)},
                    line.centreline ? Role::centreline : Role::dimension,
                    {}});
  }
}

}  // namespace

DisplayList drawDimensionGroups(const std::vector<DimensionGroup>& groups, const DrawStyle& style) {
  std::vector<Corners> taken;
  DisplayList lines, list;
  for (const DimensionGroup& group : groups) {
    if (group.rows.empty()) continue;
    LaidGroup laid = layGroup(group, style);
    for (int step = 0; step < 200; ++step) {
      const Corners corners = cornersOf(laid, style);
      if (std::none_of(taken.begin(), taken.end(), [&](const Corners& c) { return overlapping(c, corners); }))
        break;
      laid.start += 2 * style.mm.inches();
    }
    taken.push_back(cornersOf(laid, style));
    drawExtensions(lines, laid, style);
    for (const LaidRow& row : laid.rows) drawRow(list, laid, row, style);
  }
  // Extension lines first: the halo of every text then lies over them.
  append(lines, std::move(list));
  return lines;
}

DisplayList drawDimensions(const Layout& layout, const DrawStyle& style) {
  DisplayList list = drawDimensionGroups(dimensionGroups(layout), style);
  for (const PlacedFixture& placed : layout.fixtures) {
    if (placed.fixture.status == Status::remove || placed.wall < 0) continue;
    const Length past = style.mm.scaled(1.5);
    list.push_back({LinePrim{placed.front_center, placed.front_center + past * placed.facing},
                    Role::centreline, placed.fixture.id});
  }
  return list;
}

}  // namespace elbowroom

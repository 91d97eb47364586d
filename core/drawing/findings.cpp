#include <algorithm>
#include <array>

#include "core/drawing/marks.h"
#include "core/drawing/pen.h"
#include "core/geometry/measure.h"
#include "core/rules/wishes.h"

namespace elbowroom {
namespace {

Role hatchRole(Outcome outcome) {
  return outcome == Outcome::shortfall ? Role::hatchShort : Role::hatchClose;
}

Point middleOf(const Place& place) {
  if (place.points.empty()) return {};
  if (place.points.size() == 2) return midpoint(place.points[0], place.points[1]);
  if (place.points.size() >= 3 && areaOf(place.points) > Area{}) return centroidOf(place.points);
  return place.points[0];
}

// An area says more than a line, a line more than a point.
const Place* clearestPlace(const Finding& finding) {
  const Place* best = nullptr;
  for (const Place& place : finding.places) {
    if (place.points.empty()) continue;
    if (best == nullptr || place.kind > best->kind) best = &place;
  }
  return best;
}

void drawPlace(DisplayList& list, const Place& place, Outcome outcome, const ElementId& source,
               const DrawStyle& style) {
  const Role role = hatchRole(outcome);
  if (place.points.size() >= 3) {
    const double spacing = outcome == Outcome::shortfall ? 1.5 : 2.6;
    if (outcome != Outcome::unknown)
      list.push_back({HatchPrim{place.points, style.mm.scaled(spacing)}, role, source});
    list.push_back({PolyPrim{place.points, true, false}, role, source});
  } else if (place.points.size() == 2) {
    const Point a = place.points[0], b = place.points[1];
    if (a == b) return;
    const Vector bar = style.mm.scaled(1.0) * Direction::between(a, b).left();
    list.push_back({LinePrim{a, b}, role, source});
    list.push_back({LinePrim{a - bar, a + bar}, role, source});
    list.push_back({LinePrim{b - bar, b + bar}, role, source});
  }
}

}  // namespace

bool isMarked(const Finding& finding) {
  if (onlyWished(finding)) return false;
  return finding.outcome == Outcome::shortfall || finding.outcome == Outcome::close;
}

Role markRole(Outcome outcome) {
  return outcome == Outcome::shortfall ? Role::markShort
         : outcome == Outcome::close   ? Role::markClose
                                       : Role::markUnknown;
}

DisplayList drawMark(Outcome outcome, Point middle, const DrawStyle& style, const ElementId& source,
                     bool quiet) {
  const double r = kMarkMm / 2 * style.mm.inches();
  const Role role = markRole(outcome);
  Pen pen({middle, {1, 0}, {0, 1}}, source);
  if (outcome == Outcome::shortfall) {
    pen.poly(role, {{-r, 0}, {0, -r}, {r, 0}, {0, r}}, true, !quiet);
  } else if (outcome == Outcome::close) {
    pen.poly(role, {{-r, -0.8 * r}, {r, -0.8 * r}, {0, r}}, true, true);
  } else {
    pen.rectangle(role, -0.9 * r, -0.9 * r, 0.9 * r, 0.9 * r, 0, true);
    TextPrim text;
    text.at = middle;
    text.text = "?";
    text.height = style.mm.scaled(kMarkTextMm);
    text.h = AnchorH::centre;
    text.v = AnchorV::middle;
    text.bold = true;
    pen.add(role, text);
  }
  return pen.take();
}

DisplayList drawFindingsAmid(const Report& report, Clutter drawn, const DrawStyle& style) {
  DisplayList list, marks;
  int number = 0;
  // Findings of one kind about one place share a mark: "2, 9".
  struct Marked {
    Outcome outcome;
    bool quiet;
    ElementId source;
    Point middle;
    std::string digits;
    int count = 1;
  };
  std::vector<Marked> marked;
  const Length mark = style.mm.scaled(kMarkMm), text_height = style.mm.scaled(kMarkTextMm);
  // Boxes of marks already placed are texts to the others: never covered.
  for (const Finding& finding : report.findings) {
    if (!isMarked(finding)) continue;
    ++number;
    const ElementId source = finding.subjects.empty() ? ElementId{} : finding.subjects.front();
    const bool quiet = !finding.acknowledged.empty();
    if (!quiet)
      for (const Place& place : finding.places) drawPlace(list, place, finding.outcome, source, style);
    const Place* where = clearestPlace(finding);
    if (where == nullptr) continue;
    const Point middle = middleOf(*where);
    const auto same = std::find_if(marked.begin(), marked.end(), [&](const Marked& m) {
      return m.outcome == finding.outcome && m.quiet == quiet && distance(m.middle, middle) < mark * 3;
    });
    if (same == marked.end()) {
      marked.push_back({finding.outcome, quiet, source, middle, std::to_string(number)});
      continue;
    }
    ++same->count;
    if (style.most_numbers == 0 || same->count <= style.most_numbers)
      same->digits += ", " + std::to_string(number);
    else if (same->count == style.most_numbers + 1)
      same->digits += " \u2026";
  }
  for (const auto& [outcome, quiet, source, middle, digits, count] : marked) {
    const Length gap = style.mm.scaled(0.4), width = mark + gap + textWidth(digits, text_height, true);
    // The place itself, then twelve on each of fifteen rings; a farther ring costs more.
    const Point from = middle;
    const auto place = [&](std::size_t i) {
      const std::size_t ring = (i + 11) / 12;
      const Angle turn = Angle::fromDegrees(30.0 * static_cast<double>((i + 11) % 12));
      return from + mark.scaled(0.8 * static_cast<double>(ring)) * Direction::fromAngle(turn);
    };
    const auto quiet_place = quietest(1 + 15 * 12, 1e18, [&](std::size_t i, double enough) {
      const double away = 6 * static_cast<double>((i + 11) / 12);
      if (away >= enough) return enough;
      const Point at = place(i);
      const Box box{{at.x - mark / 2, at.y - mark / 2}, {at.x - mark / 2 + width, at.y + mark / 2}};
      return away + drawn.costOf(grown(box, gap), enough - away);
    });
    const Point best = quiet_place ? place(*quiet_place) : middle;
    append(marks, drawMark(outcome, best, style, source, quiet));
    TextPrim text;
    text.at = {best.x + mark / 2 + gap, best.y};
    text.text = digits;
    text.height = text_height;
    text.v = AnchorV::middle;
    text.bold = true;
    text.halo = true;
    marks.push_back({text, markRole(outcome), source});
    drawn.addText({{best.x - mark / 2, best.y - mark / 2}, {best.x - mark / 2 + width, best.y + mark / 2}});
  }
  append(list, std::move(marks));
  return list;
}

DisplayList drawFindings(const Report& report, const DrawStyle& style) {
  return drawFindingsAmid(report, Clutter{}, style);
}

}  // namespace elbowroom

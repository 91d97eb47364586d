#include "core/drawing/plan_column.h"

#include <algorithm>
#include <cmath>

#include "core/base/length_text.h"
#include "core/drawing/marks.h"
#include "core/rules/text.h"
#include "core/rules/text_quantity.h"
#include "core/rules/tally.h"

namespace elbowroom {
namespace {

constexpr double kText = 2.6;

class Column {
 public:
  Column(const Field& field, Unit unit) : f_(field), unit_(unit), y_(field.y1 - 3) {
    style_.mm = Length::fromMillimetres(1);
    pen_.line(Role::tableLine, f_.x0, f_.y0, f_.x0, f_.y1);
  }

  void north(const std::optional<Angle>& north);
  void scaleBar(const std::optional<Scale>&);
  void figures(const Layout&, const Report&);
  void legend(const Layout&, const std::set<Role>& used, bool accepted);
  void findings(const Layout&, const Report&);
  void notes(const Report&);
  DisplayList take() { return pen_.take(); }

 private:
  void heading(const std::string& words) {
    y_ -= 2.6;
    pen_.text(left(), y_ - 2, words, 2.9, Role::title, true);
    y_ -= 4.4;
  }
  void rule() {
    y_ -= 2;
    pen_.line(Role::tableLine, f_.x0, y_, f_.x1, y_);
  }
  // Rounded as the findings round it.
  std::string turns(Circle circle) const {
    return lengthText(std::get<Length>(words::rounded(circle.radius * 2, unit_, words::Toward::lower)),
                      unit_);
  }
  double left() const { return f_.x0 + 3; }
  double inner() const { return f_.width() - 6; }

  Field f_;
  Unit unit_;
  double y_;
  DrawStyle style_;
  PaperPen pen_;
};

void Column::north(const std::optional<Angle>& north) {
  const double r = 6, x = left() + r, y = y_ - r - 0.5;
  const double turn = north ? north->radians() : 0;
  // Local frame: y towards north.
  Pen mark({pointFromMillimetres(x, y), {std::cos(turn), std::sin(turn)}, {-std::sin(turn), std::cos(turn)}},
           {});
  const auto in = [](double mm) { return mm / 25.4; };
  mark.circle(north ? Role::northMark : Role::hidden, 0, 0, in(r));
  if (north) {
    mark.poly(Role::northMark, {{0, in(r)}, {in(-2.4), in(-4.6)}, {0, in(-3)}}, true, true);
    mark.poly(Role::northMark, {{0, in(r)}, {in(2.4), in(-4.6)}, {0, in(-3)}}, true, false);
  }
  pen_.add(mark.take());
  if (north) {
    pen_.text(left() + 2 * r + 4, y - 1.2, "North", 3.2, Role::title, true);
  } else {
    pen_.text(x, y - 1.2, "?", 3.6, Role::title, true, AnchorH::centre);
    pen_.text(left() + 2 * r + 4, y - 1.2, "North is not stated", kText, Role::label);
  }
  y_ = y - r - 1;
}

void Column::scaleBar(const std::optional<Scale>& scale) {
  if (!scale) return;
  if (y_ < f_.y1 - 3) rule();
  heading("Scale " + scale->name);
  // Whole feet, or half or whole metres: as many as the column takes, at most six.
  const bool feet = unit_ == Unit::inches;
  double step = (feet ? 304.8 : 500.0) * scale->ratio;
  int each = 1;
  while (step * each < 8) each *= 2;
  const int count = std::clamp(static_cast<int>((inner() - 10) / (step * each)), 1, 6);
  const double low = y_ - 3, high = low + 1.8;
  for (int i = 0; i < count; ++i) {
    const double x0 = left() + i * step * each, x1 = x0 + step * each;
    pen_.rectangle(Role::scaleBar, x0, low, x1, high, i % 2 == 0);
  }
  const auto figure = [&](int i) {
    if (feet) return std::to_string(i * each) + (i == count ? " ft" : "");
    const int halves = i * each;
    std::string text = std::to_string(halves / 2) + (halves % 2 ? ".5" : "");
    return text + (i == count ? " m" : "");
  };
  for (int i = 0; i <= count; ++i) {
    pen_.text(left() + i * step * each, low - 3.2, figure(i), kCaptionTextMm, Role::label, false,
              i == 0 ? AnchorH::left : AnchorH::centre);
  }
  y_ = low - 3.6;
}

void Column::figures(const Layout& layout, const Report& report) {
  rule();
  heading("Figures");
  const auto line = [&](const std::string& name, const std::string& value) {
    pen_.text(left(), y_ - 2, name, kText, Role::label);
    pen_.text(f_.x1 - 3, y_ - 2, value, kText, Role::label, true, AnchorH::right);
    y_ -= kLineStepMm;
  };
  const auto& ceiling = layout.option.room.ceiling.height;
  line("Room", areaText(report.figures.room_area, unit_));
  line("Free floor", areaText(report.figures.free_floor, unit_));
  line("Ceiling", ceiling ? lengthText(*ceiling, unit_) : "not stated");
  line("Largest clear circle", "\u2300 " + turns(report.figures.turning.largest));
  if (report.figures.turning.knee_space_used) {
    line("with knee space", "\u2300 " + turns(report.figures.turning.with_knees));
  }
}

void Column::legend(const Layout& layout, const std::set<Role>& used, bool accepted) {
  rule();
  heading("Legend");
  const auto entry = [&](const std::string& words, const auto& draw) {
    const double middle = y_ - 1.6;
    draw(left(), left() + 10, middle);
    pen_.text(left() + 13, middle - 0.95, words, kText, Role::label);
    y_ -= 4.6;
  };
  const auto sample = [&](Role role) {
    return [this, role](double x0, double x1, double y) { pen_.line(role, x0, y, x1, y); };
  };
  const auto mark = [&](Outcome outcome, bool quiet = false) {
    return [this, outcome, quiet](double x0, double x1, double y) {
      if (outcome == Outcome::shortfall && !quiet) {
        const Outline zone{pointFromMillimetres(x0, y - 1.5), pointFromMillimetres(x0 + 4.6, y - 1.5),
                           pointFromMillimetres(x0 + 4.6, y + 1.5), pointFromMillimetres(x0, y + 1.5)};
        pen_.add({{HatchPrim{zone, Length::fromMillimetres(1.5)}, Role::hatchShort, {}},
                  {PolyPrim{zone, true, false}, Role::hatchShort, {}}});
      }
      pen_.add(drawMark(outcome, pointFromMillimetres(x1 - 2, y), style_, {}, quiet));
    };
  };
  if (used.count(Role::markShort)) entry("Short of what is needed", mark(Outcome::shortfall));
  if (used.count(Role::markShort) && accepted)
    entry("Accepted with a reason", mark(Outcome::shortfall, true));
  if (used.count(Role::markClose)) entry("Close: little to spare", mark(Outcome::close));
  if (used.count(Role::markUnknown)) entry("The plan does not say", mark(Outcome::unknown));
  if (used.count(Role::clearZone)) entry("Clear floor asked for in front", sample(Role::clearZone));
  if (used.count(Role::turning)) entry("Largest clear circle", sample(Role::turning));
  if (used.count(Role::centreline)) entry("Centreline", sample(Role::centreline));
  if (used.count(Role::fixtureRemoved)) entry("To be removed", sample(Role::fixtureRemoved));
  if (used.count(Role::hidden)) entry("Hidden or overhead", sample(Role::hidden));
  if (used.count(Role::wallCutExterior)) {
    entry("Exterior wall", [this](double x0, double x1, double y) {
      pen_.rectangle(Role::wallCut, x0, y - 1.2, x1, y + 0.3, true);
      pen_.line(Role::wallCutExterior, x0, y + 1.4, x1, y + 1.4);
    });
  }
  const bool pipes =
      std::any_of(layout.walls.begin(), layout.walls.end(), [](const WallFrame& w) { return w.plumbing; });
  if (pipes) {
    entry("Wall with pipes", [this](double x0, double x1, double y) {
      pen_.rectangle(Role::wallCut, x0, y - 1.7, x1, y + 1.7, true);
      pen_.add(drawPlumbingMark(pointFromMillimetres((x0 + x1) / 2, y), Length::fromMillimetres(1.5)));
    });
  }
}

void Column::findings(const Layout& layout, const Report& report) {
  rule();
  heading("Findings");
  int number = 0, left_out = 0;
  bool full = false;
  const double foot = f_.y0 + 3;
  const Tally tally = tallyOf(report);
  const int total = static_cast<int>(std::count_if(report.findings.begin(), report.findings.end(), isMarked));
  for (const Finding& finding : report.findings) {
    if (!isMarked(finding)) continue;
    ++number;
    const FindingText text = textOf(finding, layout.option, unit_);
    const std::vector<std::string> lines = wrapMm(text.headline, kCaptionTextMm, inner() - 10);
    const double height = static_cast<double>(lines.size()) * 3.1 + 1.4;
    const bool last = number == total && tally.questions == 0;
    if (full || y_ - height < foot + (last ? 0 : 7.2)) {
      full = true;
      ++left_out;
      continue;
    }
    pen_.add(drawMark(finding.outcome, pointFromMillimetres(left() + 1.8, y_ - 1.3), style_, {},
                      !finding.acknowledged.empty()));
    pen_.text(left() + 4.4, y_ - 2.2, std::to_string(number), kCaptionTextMm, Role::label, true);
    double y = y_ - 2.2;
    for (const std::string& line : lines) {
      pen_.text(left() + 10, y, fitted(line, kCaptionTextMm, inner() - 10), kCaptionTextMm, Role::label);
      y -= 3.1;
    }
    y_ -= height;
  }
  std::string rest;
  if (left_out > 0) rest = std::to_string(left_out) + (left_out == number ? "" : " more");
  if (tally.questions > 0) rest += (rest.empty() ? "" : " and ") + std::to_string(tally.questions) + " not stated";
  if (rest.empty() && number == 0)
    pen_.text(left(), y_ - 2.2, "Nothing short, close or not stated.", kCaptionTextMm, Role::label);
  if (rest.empty()) return;
  for (const std::string& line : wrapMm(rest + " on the findings list.", kCaptionTextMm, inner() - 4)) {
    pen_.text(left(), y_ - 2.2, line, kCaptionTextMm, Role::label, true);
    y_ -= 3.1;
  }
}

void Column::notes(const Report& report) {
  rule();
  heading("Notes");
  const Tally tally = tallyOf(report);
  const std::vector<std::string> notes{
      std::string("Dimensions to finished faces, in ") +
          (unit_ == Unit::inches ? "feet and inches." : "millimetres."),
      "Openings: to the jambs, that is the leaf's width. Fixtures: to their centreline. Both from the wall's "
      "two corners.",
      "Written figures go before scaled ones. Check all sizes on site.",
      "Leaves, hands and rough openings: see the schedules.",
      "Checked: " + std::to_string(tally.allShort()) + " short, " +
          (tally.accepted > 0 ? std::to_string(tally.accepted) + " accepted, " : "") + std::to_string(tally.close) +
          " close, " + std::to_string(tally.questions) + " not stated, " + std::to_string(tally.clear) +
          " clear; see the findings.",
  };
  for (const std::string& note : notes) {
    for (const std::string& line : wrapMm(note, kText, inner())) {
      pen_.text(left(), y_ - 2, line, kText, Role::label);
      y_ -= 3.5;
    }
    y_ -= 1.2;
  }
}

}  // namespace

DisplayList drawPlanColumn(const Layout& layout, const Report& report, const Field& field,
                           const std::optional<Scale>& scale, const std::set<Role>& used) {
  Column column(field, layout.settings.unit);
  column.north(layout.settings.north);
  column.scaleBar(scale);
  column.figures(layout, report);
  column.legend(layout, used, tallyOf(report).accepted > 0);
  column.notes(report);
  return column.take();
}

DisplayList drawFindingsColumn(const Layout& layout, const Report& report, const Field& field,
                               const std::optional<Scale>& scale, const std::set<Role>& used) {
  Column column(field, layout.settings.unit);
  column.scaleBar(scale);
  column.legend(layout, used, tallyOf(report).accepted > 0);
  column.findings(layout, report);
  return column.take();
}

}  // namespace elbowroom

// Parts of a sheet, in millimetres of paper from the lower left corner.
#pragma once

#include <functional>

#include "core/drawing/draw_elevation.h"
#include "core/drawing/pen.h"
#include "core/drawing/sheet.h"

namespace elbowroom {

struct Field {
  double x0 = 0, y0 = 0, x1 = 0, y1 = 0;
  double width() const { return x1 - x0; }
  double height() const { return y1 - y0; }
};

inline constexpr double kFrameMm = 10;  // from the paper's edge to the frame
inline constexpr double kTitleBlockMm = 17;
inline constexpr double kCaptionTextMm = 2.3;
inline constexpr double kNoteTextMm = 2.6;
inline constexpr double kLineStepMm = 3.7;

Point pointFromMillimetres(double x, double y);

class PaperPen {
 public:
  void line(Role role, double x0, double y0, double x1, double y1);
  void rectangle(Role role, double x0, double y0, double x1, double y1, bool filled = false);
  void text(double x, double y, const std::string& words, double height, Role role = Role::note,
            bool bold = false, AnchorH h = AnchorH::left);
  void add(DisplayList more) { append(list_, std::move(more)); }
  DisplayList take() { return std::move(list_); }

 private:
  DisplayList list_;
};

double textWidthMm(const std::string& text, double height, bool bold = false);
std::vector<std::string> wrapMm(const std::string& text, double height, double width, bool bold = false);
// The text, cut with an ellipsis when it is wider than `width`.
std::string fitted(const std::string& text, double height, double width, bool bold = false);

Field frameOf(Paper);
// What is left above the title block and the caution.
Field bodyOf(Paper);
// Drawing field and side column of the plan sheet.
struct PlanFields {
  Field drawing, column;
};
PlanFields planFields(Paper);

struct TitleFacts {
  std::string title, option, sheet, number, scale, date, units;
};
// Frame, title block and the caution above it.
DisplayList furnish(Paper, const TitleFacts&);

// A list from plan lengths to paper: times `ratio`, then moved. Text heights and radii scale too.
DisplayList toPaper(const DisplayList& plan, double ratio, Vector by);

// The first of the usual named scales for which this holds, the preferred one before all others.
// For details the larger ones come first.
std::optional<Scale> firstScale(Unit, const std::function<bool(const Scale&)>& fits, bool detail = false);

// Parts of makeSheets.
struct PageContent {
  std::string name;  // "Plan"
  std::optional<Scale> scale;
  DisplayList content;
};
// The dimensioned plan, and the same plan with the findings on it instead of the dimensions.
PageContent planPage(const Layout&, const Report&, Paper);
PageContent findingsPlanPage(const Layout&, const Report&, Paper);
// Every wall as an elevation, in the room's order; two on a page where both fit at the scale of the first.
std::vector<PageContent> elevationPages(const Layout&, const Report&, Paper, const StripLayers&);
// One per mirror that is cut to measure: size, holes, what the fabricator's limits say against them.
std::vector<PageContent> mirrorPages(const Layout&, Paper);
// Backing, zones of wiring and the order of works, as tables.
std::vector<PageContent> backingPages(const Layout&, Paper);
std::vector<PageContent> wiringPages(const Layout&, Paper);
std::vector<PageContent> orderPages(const Layout&, Paper);
std::vector<PageContent> schedulePages(const Layout&, Paper);
std::vector<PageContent> findingPages(const Layout&, const Report&, Paper);

}  // namespace elbowroom

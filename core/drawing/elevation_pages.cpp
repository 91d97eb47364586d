#include <algorithm>

#include "core/drawing/elevation_key.h"
#include "core/rules/published.h"

namespace elbowroom {
namespace {

constexpr double kTitleMm = 3.4, kEntryMm = 2.5, kStepMm = 3.3, kGapMm = 6, kHeadMm = 7;

struct Drawn {
  std::size_t wall;
  DisplayList list;
  Box bounds;
  std::vector<KeyEntry> key;
};

Drawn drawAt(const Layout& layout, std::size_t wall, const StripLayers& layers, const Scale& scale) {
  DrawStyle style;
  style.mm = Length::fromMillimetres(1 / scale.ratio);
  style.unit = layout.settings.unit;
  ElevationDrawing elevation = drawElevation(layout, wall, layers, style);
  Drawn drawn{wall, {}, elevation.bounds, keyOfWall(layout, wall)};
  DisplayList numbers = drawNumbers(layout, wall, drawn.key, elevation.list, style);
  drawn.list = std::move(elevation.list);
  append(drawn.list, std::move(numbers));
  append(drawn.list, drawSideNames(layout, wall, drawn.list, style));
  return drawn;
}

// Beside the heights for the people, those that the books publish.
KeyEntry withPublished(KeyEntry entry, const Report& report, Unit unit) {
  std::string bands;
  for (const PublishedBand& band : publishedBands(report, entry.id))
    bands += (bands.empty() ? "" : "; ") + wordsOf(band, unit);
  if (bands.empty()) return entry;
  if (entry.lines.empty()) entry.lines.emplace_back();
  entry.lines.back() += (entry.lines.back().empty() ? "" : "; ") + ("published: " + bands);
  return entry;
}

double widthMm(const Drawn& drawn, const Scale& scale) {
  return (drawn.bounds.high.x - drawn.bounds.low.x).scaled(scale.ratio).millimetres();
}
double heightMm(const Drawn& drawn, const Scale& scale) {
  return (drawn.bounds.high.y - drawn.bounds.low.y).scaled(scale.ratio).millimetres();
}

// The lists of one page's walls, in a column; what it cannot hold goes to columns of pages that follow.
class KeyColumns {
 public:
  KeyColumns(Field first, Field further, std::string further_name)
      : column_(first), further_(further), name_(std::move(further_name)), y_(first.y1 - 2) {}

  void heading(const std::string& title, const std::string& words) {
    const std::vector<std::string> lines = wrapMm(words, kEntryMm, inner());
    need(8 + kStepMm * static_cast<double>(lines.size()));
    y_ -= 4;
    pen_.text(left(), y_, title, kTitleMm, Role::title, true);
    y_ -= 1;
    write(lines, left());
    y_ -= 1.6;
  }
  void entry(const KeyEntry& entry) {
    std::vector<std::string> lines;
    for (const std::string& line : entry.lines)
      for (const std::string& part : wrapMm(line, kEntryMm, inner() - kIndent)) lines.push_back(part);
    need(kStepMm * static_cast<double>(lines.size() + 1) + 1.4);
    y_ -= kStepMm;
    pen_.text(left(), y_, std::to_string(entry.number), kEntryMm, Role::label, true);
    pen_.text(left() + kIndent, y_, fitted(entry.title, kEntryMm, inner() - kIndent, true), kEntryMm,
              Role::label, true);
    write(lines, left() + kIndent);
    y_ -= 1.4;
  }
  void note(const std::string& words) {
    const std::vector<std::string> lines = wrapMm(words, kCaptionTextMm, inner());
    need(kStepMm * static_cast<double>(lines.size()) + 2);
    y_ -= 1;
    for (const std::string& line : lines) {
      y_ -= kStepMm;
      pen_.text(left(), y_, line, kCaptionTextMm, Role::note);
    }
    y_ -= 1.4;
  }
  // Content of the first column; then whole pages.
  DisplayList takeFirst() {
    if (pages_.empty() && !on_further_) return pen_.take();
    if (on_further_) pages_.push_back({name_, std::nullopt, pen_.take()});
    return std::move(first_);
  }
  std::vector<PageContent> takeRest() { return std::move(pages_); }

 private:
  static constexpr double kIndent = 6;
  double left() const { return column_.x0 + 3; }
  double inner() const { return column_.width() - 6; }
  void write(const std::vector<std::string>& lines, double x) {
    for (const std::string& line : lines) {
      y_ -= kStepMm;
      pen_.text(x, y_, line, kEntryMm, Role::label);
    }
  }
  void need(double height) {
    if (y_ - height >= column_.y0 + 2) return;
    const double width = std::min(further_.width(), 84.0);
    if (!on_further_) {
      first_ = pen_.take();
      on_further_ = true;
      column_ = {further_.x0, further_.y0, further_.x0 + width, further_.y1};
    } else if (column_.x1 + width <= further_.x1 + 0.01) {
      column_ = {column_.x1, further_.y0, column_.x1 + width, further_.y1};
    } else {
      pages_.push_back({name_, std::nullopt, pen_.take()});
      column_ = {further_.x0, further_.y0, further_.x0 + width, further_.y1};
    }
    y_ = column_.y1 - 2;
  }

  Field column_, further_;
  std::string name_;
  PaperPen pen_;
  DisplayList first_;
  std::vector<PageContent> pages_;
  double y_;
  bool on_further_ = false;
};

void place(PaperPen& pen, const Layout& layout, const Drawn& drawn, const Scale& scale, double x0, double x1,
           const Field& field) {
  const double width = widthMm(drawn, scale), height = heightMm(drawn, scale);
  const double left = (x0 + x1 - width) / 2, low = field.y0 + (field.height() - kHeadMm - height) / 2;
  const Vector by{Length::fromMillimetres(left) - drawn.bounds.low.x.scaled(scale.ratio),
                  Length::fromMillimetres(low) - drawn.bounds.low.y.scaled(scale.ratio)};
  pen.text((x0 + x1) / 2, field.y1 - 6, "Wall " + layout.walls[drawn.wall].id.text, kTitleMm, Role::title,
           true, AnchorH::centre);
  pen.add(toPaper(drawn.list, scale.ratio, by));
}

}  // namespace

std::vector<PageContent> elevationPages(const Layout& layout, const Report& report, Paper paper,
                                        const StripLayers& layers) {
  std::vector<PageContent> pages;
  const PlanFields fields = planFields(paper);
  const Field& field = fields.drawing;
  for (std::size_t wall = 0; wall < layout.walls.size();) {
    std::vector<Drawn> drawn;
    const auto scale = firstScale(layout.settings.unit, [&](const Scale& s) {
      drawn.assign(1, drawAt(layout, wall, layers, s));
      return widthMm(drawn[0], s) <= field.width() && heightMm(drawn[0], s) <= field.height() - kHeadMm;
    });
    PaperPen pen;
    std::string name = "Elevation " + layout.walls[wall].id.text;
    if (!scale) {
      pen.text((field.x0 + field.x1) / 2, (field.y0 + field.y1) / 2,
               "This wall is too large for this paper at any usual scale.", 4, Role::title, false,
               AnchorH::centre);
      drawn.assign(1, {wall, {}, {}, keyOfWall(layout, wall)});
    } else if (wall + 1 < layout.walls.size()) {
      Drawn next = drawAt(layout, wall + 1, layers, *scale);
      if (widthMm(drawn[0], *scale) + widthMm(next, *scale) + kGapMm <= field.width() &&
          heightMm(next, *scale) <= field.height() - kHeadMm) {
        drawn.push_back(std::move(next));
        name = "Elevations " + layout.walls[wall].id.text + ", " + layout.walls[wall + 1].id.text;
      }
    }
    if (scale) {
      double total = 0;
      for (const Drawn& each : drawn) total += widthMm(each, *scale);
      const double spare = (field.width() - total) / static_cast<double>(drawn.size() + 1);
      double x = field.x0;
      for (const Drawn& each : drawn) {
        const double width = widthMm(each, *scale);
        place(pen, layout, each, *scale, x + spare, x + spare + width, field);
        x += spare + width;
      }
    }
    pen.line(Role::tableLine, fields.column.x0, fields.column.y0, fields.column.x0, fields.column.y1);
    KeyColumns column(fields.column, bodyOf(paper), name);
    for (const Drawn& each : drawn) {
      column.heading("Wall " + layout.walls[each.wall].id.text, wallWords(layout, each.wall));
      for (const KeyEntry& entry : each.key)
        column.entry(layers.people ? withPublished(entry, report, layout.settings.unit) : entry);
      if (each.key.empty()) column.note("Nothing stands or hangs at this wall.");
    }
    column.note(
        "Seen from inside. Heights above the finished floor; ctr: middle of a box, bar or fitting. Strings "
        "below and above run from corner to corner over centrelines.");
    pen.add(column.takeFirst());
    pages.push_back({name, scale, pen.take()});
    for (PageContent& more : column.takeRest()) pages.push_back(std::move(more));
    wall += drawn.size();
  }
  return pages;
}

}  // namespace elbowroom

// What the wall strip shows and where: the drawing wall by wall, one box per thing and wall it shows on, the
// marks of findings. Strip figures: x along all walls from the left end of the first, y above the finished
// floor. Pure.
#pragma once

#include <utility>
#include <vector>

#include "core/drawing/draw_elevation.h"
#include "core/plan/snap_wall_item.h"
#include "core/rules/check.h"

namespace elbowroom::ui {

class StripScene {
 public:
  struct Shown {
    ElementId id;
    Box box;
    bool own = true;  // on its own wall; else seen from its side on the neighbour
  };
  struct Mark {
    int finding = -1;  // index into the report; the first of those that share the mark
    Box box;
  };

  // Answers which walls look different from before; all of them when their places have changed. What `first`
  // names is labelled before everything else; labels that would cover another or a mark are left out.
  std::vector<std::size_t> rebuild(const Layout&, const Report&, const DrawStyle&, const StripLayers& = {},
                                   const std::set<ElementId>& first = {});

  bool empty() const { return drawing_.walls.empty(); }
  const WallStripDrawing& drawing() const { return drawing_; }
  // Everything on one wall.
  const DisplayList& listOf(std::size_t wall) const { return walls_[wall].list; }
  // Marks of the findings, to be painted over all walls: their numbers may reach into the next one.
  const DisplayList& markList() const { return mark_list_.list; }
  // The floor and ceiling lines and whatever spans several walls.
  const DisplayList& common() const { return common_.list; }
  const std::vector<Shown>& shown() const { return shown_; }
  const std::vector<Mark>& marks() const { return marks_; }

  // The thing under a point, the smallest first, small ones a little generously (`reach`); else the wall;
  // else none.
  ElementId thingAt(Point, Length reach) const;
  // Where a thing is drawn on its own wall, else where it is drawn first; where a wall is. nullopt: nowhere.
  std::optional<Box> boxOf(const ElementId&) const;
  int findingAt(Point) const;  // -1: no mark there
  std::vector<ElementId> within(const Box&) const;  // things wholly inside
  std::vector<ElementId> inOrder() const;           // walls and what is on them, in reading order

  // Between the strip's figures and a wall's. x beyond the strip's ends is clamped.
  struct Spot {
    ElementId wall;
    Length along;
  };
  Spot spotAt(Length x) const;
  std::optional<Length> leftOf(const ElementId& wall) const;
  Segment fromWall(const ElementId& wall, const Segment&) const;

 private:
  struct OneWall {
    DisplayList list;
    std::size_t fingerprint = 0;
  };
  void distribute(const Layout&, std::size_t begin);
  DisplayList& listFor(const Layout&, const ElementId&, const Box&);
  void show(const Layout&, const ElementId&, Box drawn);
  void showCorners(const Layout&);
  void mark(const Report&, const DrawStyle&);
  std::pair<Length, Length> endsAt(Length x) const;  // of the wall that is there

  WallStripDrawing drawing_;
  std::vector<OneWall> walls_;
  OneWall mark_list_;
  OneWall common_;
  std::vector<Shown> shown_;
  std::vector<Mark> marks_;
};

}  // namespace elbowroom::ui

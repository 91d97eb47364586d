// A drawing as data: primitives with a role, in one coordinate system (y up). Back ends: QPainter, PDF, SVG.
// Plan lists are in plan lengths; sheet lists in paper lengths. Text heights are lengths in the same system.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "core/base/id.h"
#include "core/geometry/point.h"

namespace elbowroom {

// What a primitive is, hence its pen, fill and dash. Line kinds as ISO 128 names them.
enum class Role {
  paper,            // sheet background and frame
  wallCut,          // filled, continuous wide
  wallCutExterior,  // the same, exterior mark
  opening,          // hole, jambs: continuous narrow
  doorLeaf,         // continuous wide
  doorSwing,        // continuous narrow arc
  fixture,          // continuous medium
  fixtureDetail,    // continuous narrow inside a fixture
  fixtureRemoved,   // dashed
  clearZone,        // dashed narrow
  turning,          // long-dashed double-dotted narrow (outline of a movable thing)
  centreline,       // long-dashed dotted narrow
  dimension,        // continuous finest, oblique ticks
  dimensionText,
  label, note, title,
  hatchShort, hatchClose,   // findings
  markShort, markClose, markUnknown,
  guide,            // snapping guide, canvas only
  selection,        // canvas only
  northMark, scaleBar, tableLine,
  stud,     // dashed finest: a stud's edges behind the finish
  backing,  // hatched, continuous narrow: blocking or plywood behind the finish
  power,    // long-dashed short-dashed: zones that rules on wiring speak of
  person,   // chain: eye, elbow and reach lines
  hidden            // dashed narrow: headers above, leaves in a pocket
};

enum class AnchorH { left, centre, right };
enum class AnchorV { base, middle, top };

struct LinePrim { Point a, b; };
struct PolyPrim { std::vector<Point> points; bool closed = false; bool filled = false; };
struct ArcPrim { Point center; Length radius; Angle from, sweep; };  // ccw positive, from +x
struct EllipsePrim { Point center; Length rx, ry; Angle turn; bool filled = false; };
struct TextPrim {
  Point at;
  std::string text;       // one line
  Length height;          // font size (em)
  Angle turn;             // counter-clockwise
  AnchorH h = AnchorH::left;
  AnchorV v = AnchorV::base;
  bool bold = false;
  bool halo = false;      // paper-coloured outline, so lines do not cut the text
};
// 45-degree lines clipped to the outline by the back end.
struct HatchPrim {
  Outline outline;
  Length spacing;
};
using Prim = std::variant<LinePrim, PolyPrim, ArcPrim, EllipsePrim, TextPrim, HatchPrim>;

struct DrawItem {
  Prim prim;
  Role role = Role::note;
  ElementId source;       // for picking and lighting up; empty when none
};
using DisplayList = std::vector<DrawItem>;

// Advance width of a line of text in the drawing font (DejaVu Sans; table in text_width.cpp), for a font
// size.
Length textWidth(const std::string& text, Length height, bool bold = false);
// Box of a text primitive, turned texts as their bounding box.
Box textBounds(const TextPrim&);
// Wraps at spaces so that no line is wider than `width`; a longer word stands alone.
std::vector<std::string> wrapText(const std::string& text, Length height, Length width, bool bold = false);
// The straight 45-degree lines of a hatch, inside its outline (even-odd), on a grid common to the whole
// drawing.
std::vector<Segment> hatchLines(const HatchPrim&);
// Bounds of a list (text included). Empty list: a zero box.
Box boundsOf(const DisplayList&);

}  // namespace elbowroom

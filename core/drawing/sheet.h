// Sheets: pages of paper as display lists in paper lengths, origin at the lower left corner, y up.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/drawing/draw_elevation.h"

namespace elbowroom {

enum class Paper { letter, tabloid, a4, a3 };
struct PaperSize { Length width, height; };  // landscape
PaperSize sizeOf(Paper);
std::string_view keyOf(Paper);               // "letter", ...
std::optional<Paper> paperFromKey(std::string_view);

// A named drawing scale: paper length per plan length.
struct Scale {
  std::string name;   // "1/2\" = 1'-0\"", "1:20"
  double ratio = 1;   // paper / plan
};
// The preferred scale (1/2 in = 1 ft; metric plans 1:20) if the plan and its dimensions fit the drawing
// field, else the largest of the usual named scales that does. Never an unnamed scale; nullopt: none fits.
std::optional<Scale> chooseScale(const Layout&, Paper);

struct Sheet {
  std::string name;           // "P1 Plan", "P2 Findings"
  PaperSize paper;
  std::optional<Scale> scale; // unset on text sheets
  DisplayList content;
};
// Which pages are made; at least the plan.
struct SheetChoice {
  bool plan = true, elevations = true, mirrors = true, works = true, schedules = true, findings = true;
  bool operator==(const SheetChoice&) const = default;
};
struct SheetInfo {
  std::string date;           // ISO, given by the caller (core reads no clock)
  Paper paper = Paper::letter;
  // Of the elevations.
  StripLayers layers{.studs = true,
                     .people = false,
                     .backing = true,
                     .electrical = false,
                     .dimensions = true};
  SheetChoice choice = {};
};
// Sheet 1: the dimensioned plan with north mark, scale bar, door and fixture labels and title block; no
// findings are drawn over its dimensions. Then every wall as an elevation with what is on it, a cut sheet per
// mirror, the backing, zones of wiring and order of works; the schedules of doors, windows, fixtures and things
// on walls and ceilings; the Wish list once it is answered; the plan once more with findings, clear floor and the largest circle on it; and
// the findings list with measured, needed, source and grade, on as many sheets as they need. The whole
// caution stands on every sheet's foot. Every text lies inside the frame and no two texts overlap
// (tests/core/drawing holds this on all samples).
std::vector<Sheet> makeSheets(const Layout&, const Report&, const SheetInfo&);

// A sheet as SVG text; the same bytes for the same input. Sizes in millimetres.
std::string toSvg(const Sheet&);
// Several sheets below one another in one SVG.
std::string toSvg(const std::vector<Sheet>&);

// Pen and fill of a role on white paper: used by every back end.
struct Ink {
  double width_mm = 0.18;      // 0: no stroke
  std::string stroke = "#000000";
  std::string fill;            // empty: none
  std::vector<double> dash_mm; // empty: continuous
};
Ink inkOf(Role, bool dark = false);

}  // namespace elbowroom

// Colours: dark vermilion, blue and purple keep apart for every common kind of colour blindness, and every
// text colour has at least 4.5:1 against its paper (WCAG 2.1, 1.4.3). tests/core/drawing/ink_test.cpp holds
// it.
#include "core/drawing/sheet.h"

namespace elbowroom {
namespace {

struct Palette {
  const char *paper, *ink, *soft, *wall, *shortfall, *close, *unknown, *selection, *guide, *power, *person;
};
constexpr Palette kLight = {"#fbf8f1", "#211f1c", "#4a4640", "#3b3833", "#a33600",
                            "#005a94", "#5a1450", "#0b63a8", "#8a2f78", "#7a5200", "#00665c"};
constexpr Palette kDark = {"#201e1b", "#eee9de", "#bdb6a8", "#cdc6b8", "#ff9c70",
                           "#84c5f4", "#f3d3ee", "#7dbcf5", "#e7a3da", "#edc46a", "#86d8c8"};

}  // namespace

Ink inkOf(Role role, bool dark) {
  const Palette& c = dark ? kDark : kLight;
  // Line kinds of ISO 128-2: 02 dashed, 08 long-dashed short-dashed, 09 long-dashed double-short-dashed.
  const std::vector<double> dashed{2.2, 1.1}, fine_dashed{1.6, 1.0}, dotted_chain{6, 1, 0.6, 1},
      short_chain{4, 1, 1.6, 1}, double_dotted_chain{6, 1, 0.6, 1, 0.6, 1};
  switch (role) {
    case Role::paper:
      return {0.5, c.ink, c.paper, {}};
    case Role::wallCut:
      return {0.25, c.wall, c.wall, {}};
    case Role::wallCutExterior:
      return {0.5, c.wall, "", {}};
    case Role::opening:
      return {0.18, c.ink, c.paper, {}};
    case Role::doorLeaf:
      return {0.35, c.ink, c.paper, {}};
    case Role::doorSwing:
      return {0.18, c.ink, "", {}};
    case Role::fixture:
      return {0.25, c.ink, c.ink, {}};
    case Role::fixtureDetail:
      return {0.13, c.soft, c.soft, {}};
    case Role::fixtureRemoved:
      return {0.25, c.soft, "", dashed};
    case Role::clearZone:
      return {0.13, c.soft, "", fine_dashed};
    case Role::turning:
      return {0.25, c.ink, "", double_dotted_chain};
    case Role::centreline:
      return {0.13, c.soft, "", dotted_chain};
    case Role::dimension:
      return {0.13, c.ink, "", {}};
    case Role::dimensionText:
    case Role::label:
    case Role::title:
      return {0.18, c.ink, c.ink, {}};
    case Role::note:
      return {0.18, c.soft, c.soft, {}};
    case Role::hatchShort:
      return {0.18, c.shortfall, "", {}};
    case Role::hatchClose:
      return {0.13, c.close, "", {}};
    case Role::markShort:
      return {0.25, c.shortfall, c.shortfall, {}};
    case Role::markClose:
      return {0.35, c.close, c.paper, {}};
    case Role::markUnknown:
      return {0.35, c.unknown, c.paper, {}};
    case Role::guide:
      return {0.18, c.guide, "", fine_dashed};
    case Role::selection:
      return {0.5, c.selection, "", {}};
    case Role::northMark:
      return {0.25, c.ink, c.ink, {}};
    case Role::scaleBar:
      return {0.18, c.ink, c.ink, {}};
    case Role::tableLine:
      return {0.18, c.soft, "", {}};
    case Role::stud:
      return {0.1, c.soft, "", fine_dashed};
    case Role::backing:
      return {0.13, c.soft, "", {}};
    case Role::power:
      return {0.18, c.power, c.power, short_chain};
    case Role::person:
      return {0.18, c.person, c.person, dotted_chain};
    case Role::hidden:
      return {0.18, c.ink, "", dashed};
  }
  return {};
}

}  // namespace elbowroom

// Bands of heights that serve everybody named, by hand-computed cases. Ratios as core/people/body.h has them
// from ANSUR II: eye 0.935 S, elbow 0.617 S; a counter is worked at 2 to 4 in below the elbow; a mirror
// reaches from halfway between eye and crown to halfway between eye and elbow (optics).
#include "core/drawing/serving_bands.h"

#include <gtest/gtest.h>

#include "tests/core/drawing/plans.h"

namespace elbowroom {
namespace {

using namespace literals;
using testing::planOf;

// Statures 75 and 63 in. A mirror 36 in high, a vanity under it.
std::string room(const std::string& people, int mirror_height, const std::string& more = "") {
  return R"json({ "format": "elbowroom-plan", "version": 1, "unit": "in", "title": "Bands (invented example)",
 "books": ["comfort"], "people": [)json" +
         people + R"json(],
 "options": [ {"name": "As found",
   "room": {"ceiling": {"height": 96},
     "walls": [ {"id": "n", "from": [0,60], "thickness": 4.5}, {"id": "e", "from": [96,60], "thickness": 4.5},
                {"id": "s", "from": [96,0], "thickness": 4.5},
                {"id": "w", "from": [0,0], "thickness": 4.5} ]},
   "openings": [], "fixtures": [
                {"id": "v", "kind": "vanity", "wall": "n", "along": 48, "width": 36, "depth": 21,
       "height": 34, "basins": 1} ],
   "on_walls": [ {"id": "m", "kind": "mirror", "wall": "n", "along": 48, "bottom": 40, "width": 30,
                "height": )json" +
         std::to_string(mirror_height) + more + "} ] } ] }";
}
constexpr const char* kTwo = R"({"name": "Tall", "stature": 75}, {"name": "Short", "stature": 63})";

const ServingBand* bandOf(const std::vector<ServingBand>& bands, const char* id) {
  for (const ServingBand& band : bands)
    if (band.item == ElementId{id}) return &band;
  return nullptr;
}

TEST(ServingBands, AMirrorsLowerEdgeForTheTallAndTheShort) {
  const Plan plan = planOf(room(kTwo, 36).c_str());
  const Layout layout = deriveLayout(plan, 0);
  const auto bands = servingBands(layout, 0);
  const ServingBand* mirror = bandOf(bands, "m");
  ASSERT_TRUE(mirror && mirror->all);
  // Top for the tall one: (0.935 x 75 + 75) / 2 = 72.5625; less 36. Waist of the short one: (58.905 + 38.871)
  // / 2.
  EXPECT_NEAR(mirror->all->low.inches(), 36.5625, 1e-3);
  EXPECT_NEAR(mirror->all->high.inches(), 48.888, 1e-3);
}

TEST(ServingBands, ALowMirrorServesNotAll) {
  const Plan plan = planOf(room(kTwo, 20).c_str());
  const Layout layout = deriveLayout(plan, 0);
  const auto bands = servingBands(layout, 0);
  const ServingBand* mirror = bandOf(bands, "m");
  ASSERT_TRUE(mirror);
  EXPECT_FALSE(mirror->all);  // 72.5625 - 20 = 52.56 is above 48.89
  EXPECT_NEAR(mirror->wanted.low.inches(), 48.888, 1e-3);
  EXPECT_NEAR(mirror->wanted.high.inches(), 72.5625, 1e-3);
}

TEST(ServingBands, ABasinsRimServesNotBothWhoDifferByAFoot) {
  const Plan plan = planOf(room(kTwo, 36).c_str());
  const Layout layout = deriveLayout(plan, 0);
  const auto bands = servingBands(layout, 0);
  const ServingBand* rim = bandOf(bands, "v");
  ASSERT_TRUE(rim);
  EXPECT_FALSE(rim->all);  // elbows 46.275 and 38.871: 42.275 to 44.275 and 34.871 to 36.871
  EXPECT_NEAR(rim->wanted.low.inches(), 34.871, 1e-3);
  EXPECT_NEAR(rim->wanted.high.inches(), 44.275, 1e-3);
  // Three inches apart share a little: 0.617 x 72 - 4 = 40.424 to 0.617 x 69 - 2 = 40.573.
  const Plan near = planOf(room(R"({"name": "A", "stature": 72}, {"name": "B", "stature": 69})", 36).c_str());
  const Layout close = deriveLayout(near, 0);
  const auto shared = servingBands(close, 0);
  const ServingBand* both = bandOf(shared, "v");
  ASSERT_TRUE(both && both->all);
  EXPECT_NEAR(both->all->low.inches(), 40.424, 1e-3);
  EXPECT_NEAR(both->all->high.inches(), 40.573, 1e-3);
}

TEST(ServingBands, OnePersonOrAThingOfOnesOwnHasNone) {
  const Plan alone = planOf(room(R"({"name": "Tall", "stature": 75})", 36).c_str());
  EXPECT_TRUE(servingBands(deriveLayout(alone, 0), 0).empty());
  const Plan own = planOf(room(kTwo, 36, R"(, "for": "Short")").c_str());
  const Layout layout = deriveLayout(own, 0);
  EXPECT_EQ(bandOf(servingBands(layout, 0), "m"), nullptr);
}

int count(const DisplayList& list, bool hatched) {
  int n = 0;
  for (const DrawItem& item : list) {
    if (item.role != Role::person) continue;
    const auto* line = std::get_if<LinePrim>(&item.prim);
    if (hatched) n += std::holds_alternative<HatchPrim>(item.prim) ? 1 : 0;
    else n += line && line->a.x != line->b.x && line->a.y != line->b.y ? 1 : 0;
  }
  return n;
}

bool says(const DisplayList& list, const std::string& words) {
  for (const DrawItem& item : list)
    if (const auto* text = std::get_if<TextPrim>(&item.prim);
        text && text->text.find(words) != std::string::npos)
      return true;
  return false;
}

TEST(ServingBands, StripAndElevationDrawThemWithThePeople) {
  const Plan plan = planOf(room(kTwo, 36).c_str());
  const Layout layout = deriveLayout(plan, 0);
  DrawStyle style;
  style.mm = 24_mm;
  StripLayers people;
  people.people = true;
  for (const DisplayList& list : {drawWallStrip(layout, style, people).list,
                                  drawElevation(layout, 0, people, style).list}) {
    EXPECT_EQ(count(list, true), 1);   // the mirror's band
    EXPECT_EQ(count(list, false), 2);  // the rim's cross
    EXPECT_TRUE(says(list, "lower edge for all: 3'-0 9/16\" to 4'-0 7/8\""));
    EXPECT_TRUE(says(list, "no height serves all"));
  }
  EXPECT_EQ(count(drawWallStrip(layout, style, {}).list, true), 0);
}

}  // namespace
}  // namespace elbowroom

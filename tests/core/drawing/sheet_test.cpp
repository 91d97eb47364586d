#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <regex>
#include <set>

#include "core/drawing/marks.h"
#include "core/drawing/pen.h"
#include "core/drawing/sheet.h"
#include "core/drawing/table.h"
#include "core/geometry/measure.h"
#include "core/rules/text.h"
#include "core/rules/wishes.h"
#include "core/works/electrical_zones.h"
#include "tests/core/drawing/plans.h"

namespace elbowroom {
namespace {

using testing::allPlans;
using testing::NamedPlan;
using testing::planOf;

constexpr Paper kPapers[] = {Paper::letter, Paper::tabloid, Paper::a4, Paper::a3};

std::vector<Sheet> sheetsOf(const Plan& plan, std::size_t option, Paper paper) {
  const Layout layout = deriveLayout(plan, option);
  return makeSheets(layout, check(layout, choiceOf(plan)), {"2026-01-31", paper});
}

std::vector<const TextPrim*> textsOf(const DisplayList& list) {
  std::vector<const TextPrim*> texts;
  for (const DrawItem& item : list) {
    if (const auto* text = std::get_if<TextPrim>(&item.prim)) texts.push_back(text);
  }
  return texts;
}

bool says(const Sheet& sheet, const std::string& words) {
  std::string all;
  for (const TextPrim* text : textsOf(sheet.content)) all += text->text + " ";
  return all.find(words) != std::string::npos;
}

// Two turned boxes overlap by more than a tenth of a millimetre.
bool overlap(const std::array<Point, 4>& a, const std::array<Point, 4>& b) {
  for (const auto* box : {&a, &b}) {
    for (std::size_t i = 0; i < 2; ++i) {
      const Direction axis = Direction::between((*box)[i], (*box)[i + 1]);
      const auto range = [&](const std::array<Point, 4>& c) {
        double low = 1e9, high = -1e9;
        for (const Point p : c) {
          const double d = dot(p - Point{}, axis).millimetres();
          low = std::min(low, d), high = std::max(high, d);
        }
        return std::pair{low, high};
      };
      const auto [a0, a1] = range(a);
      const auto [b0, b1] = range(b);
      if (a1 < b0 + 0.1 || b1 < a0 + 0.1) return false;
    }
  }
  return true;
}

// Texts inside the frame, none over another, none too small or too large to read.
void expectReadable(const Sheet& sheet, const std::string& where) {
  const Length margin = Length::fromMillimetres(10);
  const std::vector<const TextPrim*> texts = textsOf(sheet.content);
  std::vector<std::array<Point, 4>> boxes;
  for (const TextPrim* text : texts) {
    boxes.push_back(textCorners(*text));
    const Box box = textBounds(*text);
    EXPECT_TRUE(box.low.x >= margin && box.low.y >= margin && box.high.x <= sheet.paper.width - margin &&
                box.high.y <= sheet.paper.height - margin)
        << where << ": outside the frame: " << text->text;
    EXPECT_GE(text->height.millimetres(), 2.25) << where << ": " << text->text;
    EXPECT_LE(text->height.millimetres(), 4.5) << where << ": " << text->text;
    const double turn = text->turn.degrees();
    EXPECT_TRUE(turn > -90 && turn <= 90.011)
        << where << ": not read from below or the right: " << text->text;
  }
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    for (std::size_t k = i + 1; k < boxes.size(); ++k) {
      EXPECT_FALSE(overlap(boxes[i], boxes[k]))
          << where << ": \"" << texts[i]->text << "\" over \"" << texts[k]->text << "\"";
    }
  }
  const Box all = boundsOf(sheet.content);
  EXPECT_TRUE(all.low.x >= margin && all.low.y >= margin && all.high.x <= sheet.paper.width - margin &&
              all.high.y <= sheet.paper.height - margin)
      << where << ": a line leaves the frame";
}

TEST(Sheets, EveryTextIsReadableOnEveryPaperInBothUnits) {
  int seen = 0;
  for (NamedPlan& named : allPlans()) {
    for (const Unit unit : {Unit::inches, Unit::millimetres}) {
      named.plan.unit = unit;
      for (std::size_t option = 0; option < named.plan.options.size(); ++option) {
        for (const Paper paper : kPapers) {
          for (const Sheet& sheet : sheetsOf(named.plan, option, paper)) {
            ++seen;
            expectReadable(sheet, named.name + "/" + std::to_string(option) + "/" +
                                      std::string(keyOf(paper)) + (unit == Unit::inches ? "/in/" : "/mm/") +
                                      sheet.name);
          }
        }
      }
    }
  }
  EXPECT_GT(seen, 100);
}

// Every layer at once is the most crowded that a person can ask for.
TEST(Sheets, ElevationsAreReadableWithEveryLayer) {
  int seen = 0;
  for (NamedPlan& named : allPlans()) {
    for (const Unit unit : {Unit::inches, Unit::millimetres}) {
      named.plan.unit = unit;
      for (std::size_t option = 0; option < named.plan.options.size(); ++option) {
        const Layout layout = deriveLayout(named.plan, option);
        for (const Paper paper : {Paper::letter, Paper::a3}) {
          SheetInfo info{
              "2026-01-31", paper, {true, true, true, true, true}, {false, true, false, false, false, false}};
          for (const Sheet& sheet : makeSheets(layout, Report{}, info)) {
            ++seen;
            expectReadable(sheet, named.name + "/" + std::to_string(option) + "/" + sheet.name);
          }
        }
      }
    }
  }
  EXPECT_GT(seen, 100);
}

TEST(Sheets, EveryWallHasItsElevation) {
  for (const NamedPlan& named : allPlans()) {
    const Layout layout = deriveLayout(named.plan, 0);
    std::string all;
    for (const Sheet& sheet : sheetsOf(named.plan, 0, Paper::letter))
      if (sheet.name.find("Elevation") != std::string::npos) {
        std::string words = sheet.name;
        std::replace(words.begin(), words.end(), ',', ' ');
        all += " " + words + " ";
        EXPECT_TRUE(sheet.scale.has_value()) << named.name << " " << sheet.name;
      }
    for (const WallFrame& wall : layout.walls)
      EXPECT_NE(all.find(" " + wall.id.text + " "), std::string::npos)
          << named.name << ": " << wall.id.text << all;
  }
}

// The elevations are named after walls, so the plan has to say which wall is which.
TEST(Sheets, ThePlanNamesEveryWall) {
  for (const NamedPlan& named : allPlans()) {
    for (std::size_t option = 0; option < named.plan.options.size(); ++option) {
      const Sheet plan = sheetsOf(named.plan, option, Paper::letter).front();
      for (const WallFrame& wall : deriveLayout(named.plan, option).walls)
        EXPECT_TRUE(says(plan, "Wall " + wall.id.text + " "))
            << named.name << " " << option << " " << wall.id.text;
    }
  }
}

TEST(Sheets, NothingIsCutShortInTheSamples) {
  for (const NamedPlan& named : allPlans()) {
    if (named.name == "large") continue;  // its names are longer than anything holds
    for (std::size_t option = 0; option < named.plan.options.size(); ++option)
      for (const Sheet& sheet : sheetsOf(named.plan, option, Paper::letter))
        for (const TextPrim* text : textsOf(sheet.content))
          EXPECT_FALSE(text->text.ends_with("\u2026"))
              << named.name << " " << sheet.name << ": " << text->text;
  }
}

// A bath across the end of a wall shows there as a bare outline unless it is named.
TEST(Sheets, WhatShowsItsSideIsNamed) {
  for (const NamedPlan& named : allPlans()) {
    if (named.name.find("hall-bath") == std::string::npos) continue;
    bool found = false;
    for (const Sheet& sheet : sheetsOf(named.plan, 0, Paper::letter))
      if (sheet.name.find("Elevation e") != std::string::npos) found |= says(sheet, "Bath ");
    EXPECT_TRUE(found);
  }
}

// Family bath: the fan's centre stands at (56, 86) in a room of 120 by 108 in, walls n (y = 108) and w (x =
// 0).
TEST(Sheets, TheScheduleSaysWhereThingsOnTheCeilingAre) {
  for (const NamedPlan& named : allPlans()) {
    if (named.name.find("family-walls") == std::string::npos) continue;
    bool found = false;
    for (const Sheet& sheet : sheetsOf(named.plan, 1, Paper::letter))
      found |= says(sheet, "1'-10\" from wall n, 4'-8\" from wall w");
    EXPECT_TRUE(found);
  }
}

// Boxes at 66 and 37 in of a mirror from 30 to 102 in, 38 to 96 in: holes at 36 and 7 in from its left edge;
// centres at 63 in, 25 in above its lower edge.
TEST(Sheets, AMirrorsOrderSaysWhereItsHolesAre) {
  const Result<Plan> plan = loadPlan(std::string(SOURCE_DIR) + "/samples/family-walls.elbowroom");
  ASSERT_TRUE(plan.ok());
  for (const Sheet& sheet : sheetsOf(*plan, 1, Paper::tabloid)) {
    if (sheet.name.find("Mirror order") == std::string::npos) continue;
    EXPECT_TRUE(says(sheet, "6'-0\" wide \u00d7 4'-10\" high"));
    EXPECT_TRUE(says(sheet, "centre 7\" from the left edge, 2'-1\" from the lower edge"));
    EXPECT_TRUE(says(sheet, "centre 3'-0\" from the left edge"));
    EXPECT_TRUE(says(sheet, "before this mirror is ordered"));
    return;
  }
  ADD_FAILURE() << "no mirror order";
}

// Lengths of the plan are feet and inches on every sheet; only findings keep to inches, as the texts do that
// they are held against.
TEST(Sheets, FeetAndInchesAreNotMixedWithInches) {
  const std::regex inches("(^|[^-'0-9/ ]|[^-'0-9/] )(1[2-9]|[2-9][0-9]|[0-9]{3,})( [0-9]+/[0-9]+)?\"");
  EXPECT_TRUE(std::regex_search("30\" left", inches) && std::regex_search("at 14 1/2\"", inches));
  EXPECT_FALSE(std::regex_search("2'-10 1/2\" \u00d7 11 15/16\"", inches));
  for (const NamedPlan& named : allPlans()) {
    for (std::size_t option = 0; option < named.plan.options.size(); ++option) {
      Plan plan = named.plan;
      plan.unit = Unit::inches;
      for (const Sheet& sheet : sheetsOf(plan, option, Paper::letter)) {
        if (sheet.name.find("Finding") != std::string::npos) continue;
        for (const TextPrim* text : textsOf(sheet.content))
          EXPECT_FALSE(std::regex_search(text->text, inches)) << sheet.name << ": " << text->text;
      }
    }
  }
}

// Between shower and closet a sixteenth of an inch of wall lies within three feet: no receptacle fits there.
TEST(Sheets, ZonesThatHoldNothingAreNotListed) {
  const Result<Plan> plan = loadPlan(std::string(SOURCE_DIR) + "/samples/ensuite-l.elbowroom");
  ASSERT_TRUE(plan.ok());
  for (std::size_t option = 0; option < plan->options.size(); ++option)
    for (const ElectricalZone& z : electricalZones(deriveLayout(*plan, option), choiceOf(*plan)))
      EXPECT_GE(z.to - z.from, Length::fromInches(0.5)) << z.wall.text << ", " << wordsOf(z.kind);
}

// With the people's heights the lists beside the elevations have those that texts publish.
TEST(Sheets, PublishedHeightsStandWithThePeoples) {
  const Result<Plan> plan = loadPlan(std::string(SOURCE_DIR) + "/samples/family-walls.elbowroom");
  ASSERT_TRUE(plan.ok());
  const Layout layout = deriveLayout(*plan, 1);
  const Report report = check(layout, choiceOf(*plan));
  for (const bool people : {false, true}) {
    SheetInfo info{"2026-01-31", Paper::letter};
    info.layers.people = people;
    bool said = false;
    for (const Sheet& sheet : makeSheets(layout, report, info))
      for (const DrawItem& item : sheet.content)
        if (const auto* text = std::get_if<TextPrim>(&item.prim)) said |= text->text.find("published:") != std::string::npos;
    EXPECT_EQ(said, people);
  }
}

// What is seen of the toilet from outside begins beyond the paper; its mark stands where the line leaves.
TEST(Sheets, WhatIsSeenFromOutsideIsMarked) {
  const Result<Plan> plan = loadPlan(std::string(SOURCE_DIR) + "/samples/family-walls.elbowroom");
  ASSERT_TRUE(plan.ok());
  const Layout layout = deriveLayout(*plan, 1);
  const Report report = check(layout, choiceOf(*plan));
  int number = 0, wanted = 0;
  for (const Finding& f : report.findings) {
    number += isMarked(f);
    if (isMarked(f) && f.rule == "toilet-seen") wanted = number;
  }
  ASSERT_GT(wanted, 0);
  bool marked = false;
  std::string printed;
  for (const Sheet& sheet : makeSheets(layout, report, {"2026-01-31", Paper::letter})) {
    for (const DrawItem& item : sheet.content)
      if (const auto* text = std::get_if<TextPrim>(&item.prim)) printed += text->text + " ";
    if (sheet.name.find("Findings plan") == std::string::npos) continue;
    for (const DrawItem& item : sheet.content)
      if (const auto* text = std::get_if<TextPrim>(&item.prim))
        marked |= item.role == Role::markShort &&
                  (", " + text->text + ",").find(", " + std::to_string(wanted) + ",") != std::string::npos;
  }
  EXPECT_TRUE(marked);
  // From where it is seen, with the finding.
  EXPECT_NE(printed.find("an eye 3 to 8 ft (0.9 to 2.4 m) outside, on the doorway's centreline"), std::string::npos);
}

// A page of two rows after a full one looks like a mistake: with rows of one height no last page holds less
// than a third of what the first does, whatever their number.
TEST(Sheets, NoTableEndsOnAnAlmostEmptyPage) {
  for (int rows = 1; rows <= 90; ++rows) {
    TablePages table("Rows", bodyOf(Paper::letter));
    table.heading("Rows");
    table.begin({{"No.", 1}, {"What", 5}});
    for (int i = 0; i < rows; ++i) table.row({{std::to_string(i), ""}, {"row", ""}});
    table.end();
    std::vector<int> on_page;
    int all = 0;
    for (const PageContent& page : table.take()) {
      const auto texts = textsOf(page.content);
      on_page.push_back(static_cast<int>(
          std::count_if(texts.begin(), texts.end(), [](const TextPrim* t) { return t->text == "row"; })));
      all += on_page.back();
    }
    EXPECT_EQ(all, rows);
    EXPECT_GE(on_page.back() * 3, on_page.front()) << rows << " rows on " << on_page.size() << " pages";
  }
}

TEST(Sheets, OnlyTheChosenPagesAreMade) {
  const Layout layout = deriveLayout(planOf(testing::kHallBath), 0);
  SheetInfo info{"2026-01-31", Paper::letter, {}, {false, false, false, false, true, false}};
  const std::vector<Sheet> schedules = makeSheets(layout, Report{}, info);
  ASSERT_EQ(schedules.size(), 1u);
  EXPECT_EQ(schedules[0].name, "P1 Schedules");
  info.choice = {false, false, false, false, false, false};
  EXPECT_EQ(makeSheets(layout, Report{}, info).size(), 1u);  // never an empty set
}

TEST(Sheets, EverySheetCarriesTheWholeCautionAndItsTitleBlock) {
  std::string caution;
  for (const std::string& line : cautionLines()) caution += (caution.empty() ? "" : " ") + line;
  for (const Paper paper : kPapers) {
    const std::vector<Sheet> sheets = sheetsOf(planOf(testing::kHallBath), 0, paper);
    ASSERT_GE(sheets.size(), 3u);
    for (const Sheet& sheet : sheets) {
      EXPECT_TRUE(says(sheet, caution)) << sheet.name;
      EXPECT_TRUE(says(sheet, "Hall bath (invented example)"));
      EXPECT_TRUE(says(sheet, "Option: As found"));
      EXPECT_TRUE(says(sheet, "2026-01-31"));
      EXPECT_TRUE(says(sheet, "to finished faces"));
      EXPECT_TRUE(says(sheet, sheet.name));
    }
    EXPECT_EQ(sheets[0].name, "P1 Plan");
    EXPECT_TRUE(says(sheets[0], "North"));
  }
}

TEST(Sheets, EveryFindingThatIsNotClearIsListedWithItsFigures) {
  const Plan plan = planOf(testing::kHallBath);
  const Layout layout = deriveLayout(plan, 0);
  const Report report = check(layout, choiceOf(plan));
  std::string all;
  for (const Sheet& sheet : makeSheets(layout, report, {"2026-01-31", Paper::letter})) {
    if (sheet.name.find("Findings list") == std::string::npos) continue;
    for (const TextPrim* text : textsOf(sheet.content)) all += text->text + " ";
  }
  int listed = 0;
  for (const Finding& finding : report.findings) {
    if (finding.outcome == Outcome::clear || finding.outcome == Outcome::failed || onlyWished(finding))
      continue;
    ++listed;
    const FindingText text = textOf(finding, layout.option, plan.unit);
    EXPECT_NE(all.find(text.headline), std::string::npos) << text.headline;
    EXPECT_NE(all.find(text.source), std::string::npos) << text.source;
    // A question of yes or no is said by its sentence.
    if (!finding.measured || !std::holds_alternative<bool>(*finding.measured)) {
      EXPECT_NE(all.find(text.needed), std::string::npos) << text.needed;
    }
    EXPECT_NE(all.find(text.by), std::string::npos) << text.by;
  }
  EXPECT_GT(listed, 5);  // the hall bath has real conflicts
}

// Listed with its figures and its reason, told apart by an open mark and a word.
TEST(Sheets, AnAcceptedFindingIsMarkedAsSuch) {
  Plan plan = planOf(testing::kHallBath);
  const Report before = check(deriveLayout(plan, 0), choiceOf(plan));
  const Finding& first = before.findings.front();
  ASSERT_EQ(first.outcome, Outcome::shortfall);
  const auto countOn = [&](const char* name) {
    const Layout layout = deriveLayout(plan, 0);
    int open = 0, words = 0;
    for (const Sheet& sheet :
         makeSheets(layout, check(layout, choiceOf(plan)), {"2026-01-31", Paper::letter})) {
      if (sheet.name.find(name) == std::string::npos) continue;
      for (const DrawItem& item : sheet.content) {
        const auto* mark = std::get_if<PolyPrim>(&item.prim);
        open += mark && item.role == Role::markShort && !mark->filled;
      }
      for (const TextPrim* text : textsOf(sheet.content))
        words += text->text == "accepted by you" || text->text == "Accepted with a reason";
    }
    return std::pair{open, words};
  };
  EXPECT_EQ(countOn("Findings list"), (std::pair{0, 0}));
  EXPECT_EQ(countOn("Findings plan"), (std::pair{0, 0}));
  plan.options[0].acknowledged.push_back({first.book, first.rule, first.subjects, "It stays as it is"});
  EXPECT_EQ(countOn("Findings list"), (std::pair{1, 1}));
  EXPECT_EQ(countOn("Findings plan"), (std::pair{3, 1}));  // on the plan, in its list and in the legend
}

// Extent of the plan's cut walls on paper.
Box wallsOn(const Sheet& sheet) {
  DisplayList walls;
  for (const DrawItem& item : sheet.content) {
    if (item.role == Role::wallCut && !item.source.empty()) walls.push_back(item);
  }
  return boundsOf(walls);
}

// At 1/2 in to the foot, 96 in of room and 9 in of walls are 105/24 in of paper; 60 in and 11 in are 71/24.
TEST(Sheets, DrawToScale) {
  const std::vector<Sheet> sheets = sheetsOf(planOf(testing::kHallBath), 0, Paper::letter);
  ASSERT_TRUE(sheets[0].scale.has_value());
  EXPECT_EQ(sheets[0].scale->name, "1/2\" = 1'-0\"");
  const Box walls = wallsOn(sheets[0]);
  EXPECT_NEAR((walls.high.x - walls.low.x).millimetres(), 105 * 25.4 / 24, 0.01);
  EXPECT_NEAR((walls.high.y - walls.low.y).millimetres(), 71 * 25.4 / 24, 0.01);

  // 3200 mm and two walls of 150 and 115 mm.
  for (const Paper paper : kPapers) {
    const Sheet plan = sheetsOf(planOf(testing::kLShape), 0, paper)[0];
    ASSERT_TRUE(plan.scale.has_value());
    const Box box = wallsOn(plan);
    EXPECT_NEAR((box.high.x - box.low.x).millimetres(), 3465 * plan.scale->ratio, 0.01) << plan.scale->name;
    EXPECT_EQ(plan.scale->name, "1:" + std::to_string(std::lround(1 / plan.scale->ratio)));
  }
}

TEST(Sheets, PreferTheNamedScaleElseTheLargestThatFits) {
  const auto scale = [](const char* json, Paper paper) {
    const std::optional<Scale> s = chooseScale(deriveLayout(planOf(json), 0), paper);
    return s ? s->name : "none";
  };
  EXPECT_EQ(scale(testing::kHallBath, Paper::letter), "1/2\" = 1'-0\"");
  EXPECT_EQ(scale(testing::kHallBath, Paper::tabloid), "1/2\" = 1'-0\"");
  EXPECT_EQ(scale(testing::kLShape, Paper::a3), "1:20");
  EXPECT_EQ(scale(testing::kLargeRoom, Paper::letter), "3/16\" = 1'-0\"");
  // 35 ft at 1/4 in to the foot is 8 3/4 in: wider than letter's field, but not tabloid's.
  EXPECT_EQ(scale(testing::kLargeRoom, Paper::tabloid), "1/4\" = 1'-0\"");
}

TEST(Sheets, ScaleBarIsTrue) {
  for (const char* json : {testing::kHallBath, testing::kLShape}) {
    const Sheet sheet = sheetsOf(planOf(json), 0, Paper::letter)[0];
    DisplayList bar;
    std::string last;
    for (const DrawItem& item : sheet.content) {
      if (item.role == Role::scaleBar) bar.push_back(item);
      if (const auto* text = std::get_if<TextPrim>(&item.prim)) {
        const std::string& t = text->text;
        if (t.size() > 2 && std::isdigit(static_cast<unsigned char>(t[0])) &&
            (t.ends_with(" ft") || t.ends_with(" m")) && last.empty())
          last = t;
      }
    }
    ASSERT_FALSE(bar.empty());
    ASSERT_FALSE(last.empty());
    const double stands_for = std::stod(last) * (last.ends_with(" ft") ? 304.8 : 1000);
    const Box box = boundsOf(bar);
    EXPECT_NEAR((box.high.x - box.low.x).millimetres(), stands_for * sheet.scale->ratio, 0.01);
  }
}

// ANSI Y14.1 sizes A and B; ISO 216 A4 and A3; landscape.
TEST(Paper, HasItsSize) {
  EXPECT_EQ(sizeOf(Paper::letter).width, Length::fromInches(11));
  EXPECT_EQ(sizeOf(Paper::letter).height, Length::fromInches(8.5));
  EXPECT_EQ(sizeOf(Paper::tabloid).width, Length::fromInches(17));
  EXPECT_EQ(sizeOf(Paper::a4).height, Length::fromMillimetres(210));
  EXPECT_EQ(sizeOf(Paper::a3).width, Length::fromMillimetres(420));
  for (const Paper paper : kPapers) EXPECT_EQ(paperFromKey(keyOf(paper)), paper);
  EXPECT_FALSE(paperFromKey("legal").has_value());
}

TEST(Svg, IsTheSameBytesEveryTimeAndEscapesNames) {
  const Plan plan = planOf(testing::kManyOpenings);
  const std::string svg = toSvg(sheetsOf(plan, 0, Paper::a4));
  EXPECT_EQ(svg, toSvg(sheetsOf(plan, 0, Paper::a4)));
  EXPECT_NE(svg.find("&amp; &lt;odd&gt; &quot;names&quot;"), std::string::npos);
  EXPECT_EQ(svg.find("<odd>"), std::string::npos);
  EXPECT_NE(svg.find("width=\"297mm\""), std::string::npos);
  EXPECT_NE(svg.find("DejaVu Sans"), std::string::npos);
  EXPECT_EQ(svg.find("nan"), std::string::npos);
}

}  // namespace
}  // namespace elbowroom

// Words of findings: figures agree with the verdict, nothing flatters the plan, nothing claims more than was
// measured.
#include <gtest/gtest.h>

#include <cmath>

#include "core/rules/text.h"
#include "core/rules/wishes.h"

namespace elbowroom {
namespace {
using namespace literals;

Option smallBath() {
  Option option;
  option.name = "As found";
  Wall wall;
  wall.id = {"n"};
  option.room.walls = {wall};
  Fixture wc;
  wc.id = {"wc"};
  wc.kind = FixtureKind::toilet;
  Fixture b1;
  b1.id = {"b1"};
  b1.kind = FixtureKind::basin;
  Fixture b2 = b1;
  b2.id = {"b2"};
  Fixture named = b1;
  named.id = {"x"};
  named.kind = FixtureKind::cabinet;
  named.name = "Grandmother's chest";
  option.fixtures = {wc, b1, b2, named};
  Opening door;
  door.id = {"d1"};
  option.openings = {door};
  return option;
}

Finding toiletFront(Length measured, Outcome outcome) {
  Finding f;
  f.rule = "toilet-clear-front";
  f.book = "us-residential";
  f.outcome = outcome;
  f.subjects = {{"wc"}, {"s"}};
  f.measured = measured;
  f.limit = 20_in;
  return f;
}

FindingText shown(const Finding& f, Unit unit = Unit::inches) { return textOf(f, smallBath(), unit); }

TEST(Text, AShortFigureIsRoundedAgainstThePerson) {
  const FindingText text = shown(toiletFront(20_in - 0.03125_in, Outcome::shortfall));
  EXPECT_EQ(text.measured, "19 15/16\"");
  EXPECT_EQ(text.needed, "at least 20\"");
  EXPECT_EQ(text.by, "short by 1/16\"");
  EXPECT_EQ(text.headline, "Toilet: clear floor in front is 19 15/16\", needs at least 20\"");
  EXPECT_EQ(text.outcome, "Short");
}

TEST(Text, AFigureMissedByRoundingPrintsAsMet) {
  const FindingText text = shown(toiletFront(19.985_in, Outcome::close));
  EXPECT_EQ(text.measured, "20\"");
  EXPECT_EQ(text.by, "nothing to spare");
  EXPECT_EQ(text.outcome, "Close");
}

TEST(Text, WhatIsToSpareIsNotRoundedUp) {
  const FindingText text = shown(toiletFront(20.24_in, Outcome::close));
  EXPECT_EQ(text.measured, "20 3/16\"");
  EXPECT_EQ(text.by, "3/16\" to spare");
  EXPECT_EQ(text.headline, "Toilet: clear floor in front is 20 3/16\"");
}

TEST(Text, Millimetres) {
  const FindingText text = shown(toiletFront(500_mm, Outcome::shortfall), Unit::millimetres);
  EXPECT_EQ(text.measured, "500 mm");
  EXPECT_EQ(text.needed, "at least 508 mm");
  EXPECT_EQ(text.by, "short by 8 mm");
}

TEST(Text, ARangeNamesTheEndThatIsMissed) {
  Finding f = toiletFront(18.5_in, Outcome::shortfall);
  f.book = "us-access";
  f.rule = "toilet-centreline-side";
  f.compare = Compare::between;
  f.limit = 16_in;
  f.limit_high = 18_in;
  EXPECT_EQ(shown(f).needed, "16\" to 18\"");
  EXPECT_EQ(shown(f).by, "over by 1/2\"");
  f.measured = 15.5_in;
  EXPECT_EQ(shown(f).by, "short by 1/2\"");
}

TEST(Text, NotStatedSaysSo) {
  Finding f;
  f.rule = "ceiling-height";
  f.book = "us-residential";
  f.outcome = Outcome::unknown;
  f.limit = 80_in;
  f.detail = "ceiling-not-stated";
  f.fact = "ceiling.height";
  const FindingText text = shown(f);
  EXPECT_EQ(text.outcome, "Not stated");
  EXPECT_EQ(text.headline, "Room: the plan does not say: how high is the ceiling above the finished floor?");
  EXPECT_EQ(text.needed, "at least 80\"");
  EXPECT_NE(text.detail.find("ceiling height"), std::string::npos);
}

TEST(Text, AYesOrNoThatIsNotStatedAsksInPlainWords) {
  Finding f;
  f.rule = "recess-in-bay";
  f.book = "craft";
  f.outcome = Outcome::unknown;
  f.compare = Compare::isTrue;
  f.limit = true;
  f.fact = "studs";
  EXPECT_EQ(shown(f).headline,
            "Room: the plan does not say whether it stands between two studs, or a header is planned");
  f.subjects = {{"n"}};
  EXPECT_EQ(shown(f).headline, "Wall n: the plan does not say: where is its first stud, and how far apart are they?");
  f.subjects = {};
  f.rule = "door-unlocks-outside";
  f.fact = "only_bathroom";  // in the catalogue: its question
  EXPECT_EQ(shown(f).headline,
            "Room: the plan does not say: is this the only bathroom of the dwelling?");
  f.fact = "";
  EXPECT_NE(shown(f).headline.find("cannot be told yet"), std::string::npos);
}

// A figure that is asked for by its own question, not by the name of what is made of it.
TEST(Text, AFigureThatIsNotStatedAsksForTheFact) {
  Finding f;
  f.rule = "basin-height-range";
  f.book = "comfort";
  f.subjects = {{"b2"}};
  f.outcome = Outcome::unknown;
  f.compare = Compare::between;
  f.limit = 32_in;
  f.limit_high = 43_in;
  f.fact = "height";
  EXPECT_EQ(shown(f).headline, "Basin b2: the plan does not say: how high does it stand above the floor?");
  EXPECT_EQ(shown(f).needed, "32\" to 43\"");
}

TEST(Text, FiguresReadAsOneWouldSayThem) {
  Finding f = toiletFront(-28_in, Outcome::shortfall);
  EXPECT_EQ(shown(f).measured, "28\" the other way") << "no figure below nothing";
  f.compare = Compare::between;
  f.limit = f.limit_high = 36_in;
  f.measured = 32_in;
  EXPECT_EQ(shown(f).needed, "exactly 36\"");
  f.rule = "bath-back-bars";
  f.book = "us-access";
  f.compare = Compare::atLeast;
  f.limit = Count{2};
  f.limit_high = {};
  f.measured = Count{1};
  f.short_by = Count{1};
  EXPECT_EQ(shown(f).headline, "Toilet: bars behind it: 1, needs at least 2");
  f.rule = "fan-sound";
  f.book = "comfort";
  f.compare = Compare::atMost;
  f.limit = Amount::of(1);
  f.measured = Amount{1500};
  EXPECT_EQ(shown(f).needed, "at most 1 sone");
  EXPECT_EQ(shown(f).measured, "1.5 sones");
}

TEST(Text, SourceAndGradeAreNamed) {
  const FindingText text = shown(toiletFront(19_in, Outcome::shortfall));
  EXPECT_EQ(text.source, "IRC 2009 (unchanged through 2021 from memory), P2705.1(5)");
  EXPECT_EQ(text.grade, "read in text quoted by others, not in the document itself");
  EXPECT_FALSE(text.why.empty());
}

TEST(Text, NamesOfThings) {
  const Option option = smallBath();
  EXPECT_EQ(subjectName(option, {"wc"}), "Toilet");
  EXPECT_EQ(subjectName(option, {"b2"}), "Basin b2") << "two basins need telling apart";
  EXPECT_EQ(subjectName(option, {"x"}), "Grandmother's chest");
  EXPECT_EQ(subjectName(option, {"d1"}), "Door d1");
  EXPECT_EQ(subjectName(option, {"n"}), "Wall n");
  Option lit = smallBath();
  WallItem light;
  light.id = {"light"};
  light.kind = "side-light";
  WallItem other = light;
  other.id = {"light2"};
  lit.on_walls = {light, other};
  EXPECT_EQ(subjectName(lit, {"light"}), "Side light");
  EXPECT_EQ(subjectName(lit, {"light2"}), "Side light 2");
}

TEST(Text, FiguresOfEachKind) {
  EXPECT_EQ(quantityText(62.5_in, Unit::inches), "62 1/2\"");
  EXPECT_EQ(quantityText(62.5_in, Unit::millimetres), "1588 mm");
  EXPECT_EQ(quantityText(Area::fromSquareInches(1024), Unit::inches), "1024 sq in");
  EXPECT_EQ(quantityText(Area::fromSquareInches(1024), Unit::millimetres), "0.661 m\u00b2");
  EXPECT_EQ(quantityText(90_deg, Unit::inches), "90\u00b0");
  EXPECT_EQ(quantityText(Count{2}, Unit::inches), "2");
}

// One finding of every rule and outcome in both units, with figures a hair off the limit and far off it.
std::vector<Finding> everyFinding() {
  std::vector<Finding> all;
  for (const Rule& rule : allRules()) {
    Finding f;
    f.rule = rule.id;
    f.book = rule.book;
    f.level = rule.level;
    f.compare = rule.compare;
    f.subjects = {{"wc"}, {"d1"}};
    f.limit = rule.limit == Quantity{Length{}} ? Quantity{61_in} : rule.limit;
    f.limit_high = rule.limit_high;
    f.outcome = Outcome::unknown;
    all.push_back(f);
    if (rule.compare == Compare::isTrue) {
      for (const bool met : {true, false}) {
        f.measured = met;
        f.outcome = met ? Outcome::clear : Outcome::shortfall;
        all.push_back(f);
      }
      continue;
    }
    for (const double off : {-9.0, -0.6, -0.0625, -0.03, -0.021, -0.01, 0.0, 0.01, 0.3, 7.0}) {
      if (const auto* l = std::get_if<Length>(&*f.limit)) f.measured = *l + Length::fromInches(off);
      if (const auto* a = std::get_if<Area>(&*f.limit)) f.measured = *a + Area::fromSquareInches(off * 64);
      if (const auto* a = std::get_if<Angle>(&*f.limit))
        f.measured = *a + Angle::fromDegrees(std::min(0.0, off * 3));
      if (const auto* c = std::get_if<Count>(&*f.limit))
        f.measured = Count{c->value + (off < -0.5 ? -1 : off > 0.5 ? 1 : 0)};
      if (const auto* a = std::get_if<Amount>(&*f.limit))
        f.measured = Amount{a->thousandths + std::llround(off * 1000)};
      if (const auto* c = std::get_if<Count>(&*f.limit))
        f.measured = Count{std::max(c->value + static_cast<int>(off), 0)};
      f.outcome = judge(*f.measured, f.compare, *f.limit, f.limit_high, 0.5_in);
      all.push_back(f);
    }
  }
  return all;
}

TEST(Text, EveryRuleAndOutcomeReadsAsASentenceWithItsFigures) {
  for (const Finding& f : everyFinding()) {
    for (const Unit unit : {Unit::inches, Unit::millimetres}) {
      const FindingText text = shown(f, unit);
      SCOPED_TRACE(f.book + "/" + f.rule + " " + text.headline + " | " + text.by);
      EXPECT_FALSE(text.headline.empty());
      const WishPoint* wish = wishOf(f);  // its own title heads a point of the Wish list
      EXPECT_NE(text.headline.find(wish ? wish->title : "Toilet"), std::string::npos) << "names its subject";
      EXPECT_EQ(text.headline.find(f.rule), std::string::npos) << "a key instead of words";
      EXPECT_FALSE(text.why.empty());
      EXPECT_FALSE(text.source.empty());
      EXPECT_FALSE(text.grade.empty());
      EXPECT_FALSE(text.outcome.empty());
      EXPECT_FALSE(text.measured.empty());
      if (!f.measured || f.compare == Compare::isTrue) continue;
      EXPECT_NE(text.headline.find(text.measured), std::string::npos);
      EXPECT_FALSE(text.needed.empty());
      if (f.outcome == Outcome::shortfall) {
        EXPECT_NE(text.headline.find(text.needed), std::string::npos);
        EXPECT_EQ(text.needed.find("at least " + text.measured + "\n"), std::string::npos);
        EXPECT_NE("at least " + text.measured, text.needed) << "the same figure cannot be short of itself";
        EXPECT_TRUE(text.by.starts_with("short by ") || text.by.starts_with("over by ")) << text.by;
        EXPECT_FALSE(text.by.ends_with(" by 0\"") || text.by.ends_with(" 0 mm") ||
                     text.by.ends_with(" 0\u00b0"))
            << text.by;
      } else {
        EXPECT_TRUE(text.by.ends_with("to spare")) << text.by;
      }
    }
  }
}

TEST(Text, NeverClaimsCompliance) {
  std::vector<std::string> all = cautionLines();
  for (const Finding& f : everyFinding())
    for (const Unit unit : {Unit::inches, Unit::millimetres}) {
      const FindingText text = shown(f, unit);
      all.insert(all.end(),
                 {text.headline, text.why, text.detail, text.grade, text.source, text.needed, text.by});
    }
  for (const Book& book : allBooks())
    all.insert(all.end(), {std::string(book.title), std::string(book.note)});
  for (std::string text : all) {
    for (char& c : text) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    const std::string name = "approved document m";  // what that text is called
    for (std::size_t at = text.find(name); at != std::string::npos; at = text.find(name)) text.erase(at, name.size());
    for (const char* word : {"compl", "violat", "legal", "approved", "guarantee"})
      EXPECT_EQ(text.find(word), std::string::npos) << text;
  }
}

TEST(Text, TheCautionIsWhole) {
  std::string all;
  for (const std::string& line : cautionLines()) all += line + " ";
  for (const char* part : {"advisory only", "Local code", "permits", "licensed trades", "joists",
                           "load-bearing", "wiring", "gas", "pressure piping"})
    EXPECT_NE(all.find(part), std::string::npos) << part;
}

TEST(Text, TroublesOfDoors) {
  const Option option = smallBath();
  const Trouble corner{DoorTrouble::pocketMeetsCorner, {"s"}, 5_in, {}};
  EXPECT_EQ(troubleText(corner, option, Unit::inches), "The pocket runs past the end of its wall by 5\".");
  for (const DoorTrouble kind :
       {DoorTrouble::pocketMeetsCorner, DoorTrouble::pocketMeetsOpening, DoorTrouble::pocketMeetsPipes,
        DoorTrouble::noWallToSlideOn, DoorTrouble::slideMeetsOpening, DoorTrouble::slideMeetsFixture})
    EXPECT_FALSE(troubleText({kind, {"d1"}, 5_in, {}}, option, Unit::millimetres).empty());
}


TEST(Text, NamesDoNotRepeatTheKind) {
  Option option;
  Opening door;
  door.id = {"door"};
  option.openings.push_back(door);
  door.id = {"door2"};
  option.openings.push_back(door);
  door.id = {"d1"};
  option.openings.push_back(door);
  Fixture vanity;
  vanity.kind = FixtureKind::vanity;
  vanity.id = {"vanity"};
  option.fixtures.push_back(vanity);
  vanity.id = {"vanity2"};
  option.fixtures.push_back(vanity);
  EXPECT_EQ(subjectName(option, {"door"}), "Door");
  EXPECT_EQ(subjectName(option, {"door2"}), "Door 2");
  EXPECT_EQ(subjectName(option, {"d1"}), "Door d1");
  EXPECT_EQ(subjectName(option, {"vanity2"}), "Vanity 2");
}
}  // namespace
}  // namespace elbowroom

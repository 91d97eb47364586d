// What a person meets on the wall strip of every sample: one box around what is selected, marks on their own
// walls, typed figures that come out as typed, and a menu that offers only what does something.
#include <gtest/gtest.h>

#include <QMenu>
#include <QSettings>
#include <QSignalSpy>

#include "core/plan/wall_catalogue.h"
#include "core/plan/wall_defaults.h"
#include "tests/ui/samples.h"
#include "tests/ui/strip_driver.h"
#include "ui/look/look.h"
#include "ui/session/selected.h"
#include "ui/walls/strip_dimensions.h"
#include "ui/walls/strip_menu.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

constexpr const char* kSamples[] = {"attic", "bath-metric", "ensuite-l", "family-walls", "hall-bath"};

template <class Visit>
void onEveryOption(const Visit& visit) {
  QSettings().remove("strip_layers");
  for (const char* name : kSamples) {
    const Plan plan = sample(name);
    for (std::size_t option = 0; option < plan.options.size(); ++option) {
      SCOPED_TRACE(std::string(name) + ", " + plan.options[option].name);
      Session session(plan);
      session.setOption(option);
      WallStrip strip(session);
      strip.resize(1280, 260);
      visit(session, strip);
    }
  }
}

std::vector<ElementId> thingsOn(const Session& session) {
  std::vector<ElementId> ids;
  for (const WallFrame& wall : session.layout().walls)
    for (const WallBox& box : wallBoxesOn(session.layout(), wall.id)) ids.push_back(box.id);
  return ids;
}

class StripUserTest : public StripDriver {
 protected:
  WallItem put(const char* kind, const char* wall, Length along) {
    WallItem item = typicalWallItem(kind, session.option());
    item.wall = {wall};
    item.along = along;
    session.perform(PutWallItems{{item}}, "Add");
    return item;
  }
};

TEST_F(StripUserTest, WhatReachesACornerHasOneBox) {
  WallItem shelf = put("shelf", "s", 90_in);
  shelf.width = 12_in, shelf.depth = 8_in, shelf.height = 10_in, shelf.bottom = 70_in;
  session.perform(PutWallItems{{shelf}}, "Size");
  session.select({shelf.id});
  const QImage image = strip.viewport()->grab().toImage();
  const QColor accent = lookOf(strip).accent;
  const auto isAccent = [&](QPointF at) {
    for (int dy = -2; dy <= 2; ++dy)
      if (QColor(image.pixel(at.toPoint() + QPoint(0, dy))) == accent) return true;
    return false;
  };
  // Between the handles of the upper edge on the south wall, and over its side on the west wall (252 to 260).
  EXPECT_TRUE(isAccent(px(156 + 87, 80)));
  EXPECT_FALSE(isAccent(px(252 + 5, 80)));
}

TEST(StripOfSamples, MarksStayOnTheWallOfTheirThing) {
  onEveryOption([](Session&, WallStrip& strip) {
    const StripScene& scene = strip.scene();
    for (const StripScene::Mark& mark : scene.marks()) {
      const auto on = [&](const StripWall& wall) {
        return mark.box.low.x >= wall.x && mark.box.high.x <= wall.x + wall.length;
      };
      const auto& walls = scene.drawing().walls;
      EXPECT_TRUE(std::any_of(walls.begin(), walls.end(), on)) << "finding " << mark.finding;
      EXPECT_GE(mark.box.low.y, Length{});
    }
  });
}

TEST(StripOfSamples, FiguresOfTheSelectedThingAreNotCutOff) {
  onEveryOption([](Session& session, WallStrip& strip) {
    const auto& bounds = strip.scene().drawing().bounds;
    for (const ElementId& id : thingsOn(session)) {
      session.select({id});  // may scroll
      const QRectF whole = QRectF(strip.map().toPx(bounds.low), strip.map().toPx(bounds.high)).normalized();
      for (const StripDimension& dim : stripDimensions(strip))
        EXPECT_TRUE(whole.adjusted(-0.01, -0.01, 0.01, 0.01).contains(dim.label_box))
            << id.text << " " << dim.text.toStdString();
    }
  });
}

// Every distance that shows, set to 0 and to itself: it reads what was typed, or is refused with a sentence
// and nothing moves.
TEST(StripOfSamples, TypedDistancesComeOutAsTyped) {
  int set = 0;
  onEveryOption([&](Session& session, WallStrip& strip) {
    for (const ElementId& id : thingsOn(session)) {
      session.select({id});
      const auto dims = stripDimensions(strip);
      for (std::size_t i = 0; i < dims.size(); ++i) {
        for (const Length wanted : {Length{}, dims[i].gap.distance}) {
          const Plan before = session.plan();
          const QString why = applyStripDimension(session, dims[i], wanted);
          if (!why.isEmpty()) {
            EXPECT_EQ(session.plan(), before);
            continue;
          }
          ++set;
          const auto after = stripDimensions(strip);
          const auto same = std::find_if(after.begin(), after.end(), [&](const StripDimension& d) {
            return d.gap.side == dims[i].gap.side && d.gap.other == dims[i].gap.other;
          });
          if (same != after.end()) {
            EXPECT_LE(abs(same->gap.distance - wanted).nm(), 1)
                << id.text << " " << i << " " << same->text.toStdString();
          }
          while (session.plan() != before && session.history().canUndo()) session.undo();
        }
      }
    }
  });
  EXPECT_GT(set, 100);
}

TEST(StripOfSamples, WhatTheMenuOffersDoesSomething) {
  int done = 0;
  onEveryOption([&](Session& session, WallStrip& strip) {
    for (const ElementId& id : thingsOn(session)) {
      const ElementId wall = wallBoxOf(session.layout(), id)->wall;
      session.select({id});
      copySelected(session);
      QMenu menu;
      fillStripMenu(menu, strip, {wall, 10_in});
      std::vector<QAction*> lines;
      for (QAction* each : menu.actions()) {
        if (!each->menu()) lines.push_back(each);
        else {
          const auto inner = each->menu()->actions();
          const bool any = std::any_of(inner.begin(), inner.end(), [](QAction* a) { return a->isEnabled(); });
          EXPECT_EQ(each->isEnabled(), any) << each->text().toStdString();
          for (QAction* line : inner) lines.push_back(line);
        }
      }
      for (QAction* line : lines) {
        if (line->isSeparator() || !line->isEnabled() || line->text().startsWith("Copy")) continue;
        const Plan before = session.plan();
        session.select({id});
        line->trigger();
        EXPECT_NE(session.plan(), before) << id.text << ": " << line->text().toStdString();
        session.undo();
        EXPECT_EQ(session.plan(), before) << line->text().toStdString();
        ++done;
      }
    }
  });
  EXPECT_GT(done, 300);
}

TEST_F(StripUserTest, AFixtureIsNotOfferedForPastingOnAWall) {
  session.select({{"v"}});
  copySelected(session);
  EXPECT_FALSE(choose(px(96 + 30, 80), "Paste on this wall"));
  session.select({{"m"}});
  copySelected(session);
  EXPECT_TRUE(choose(px(96 + 30, 80), "Paste on this wall"));
}

TEST_F(StripUserTest, WhatWasSaidOfANicheFollowsArrowsAndUndo) {
  Wall wall = *findWall(session.option(), {"n"});
  wall.studs = Studs{8_in, 16_in, {}};
  session.perform(PutWall{wall}, "State studs");
  const WallItem niche = put("niche", "n", 16_in);  // in the bay from 8 3/4 to 23 1/4
  strip.setFocus();
  session.select({niche.id});
  QSignalSpy said(&strip, &WallStrip::said);
  QTest::keyClick(&strip, Qt::Key_Right);
  ASSERT_FALSE(said.isEmpty());
  EXPECT_TRUE(said.last()[0].toString().startsWith("fits between the studs"));
  for (int i = 0; i < 8; ++i) QTest::keyClick(&strip, Qt::Key_Right);  // its right edge at 26 1/2
  EXPECT_TRUE(said.last()[0].toString().startsWith("must move")) << said.last()[0].toString().toStdString();
  session.undo();
  EXPECT_TRUE(said.last()[0].toString().startsWith("fits")) << said.last()[0].toString().toStdString();
}

// 4 1/2 in less two boards of 1/2 in leave 3 1/2 in of stud, 3 1/4 in go in; 3 1/2 in of wall leave 2 1/2 in.
TEST_F(StripUserTest, ANicheIsNoDeeperThanTheStudsByItself) {
  WallItem niche = typicalWallItem("niche", session.option());
  niche.wall = {"s"};
  EXPECT_FALSE(withDefaults(session.layout(), niche).depth);
  Wall wall = *findWall(session.option(), {"s"});
  wall.thickness = 3.5_in;
  session.perform(PutWall{wall}, "Thickness");
  EXPECT_EQ(withDefaults(session.layout(), niche).depth, 2.5_in);
  niche.depth = 3_in;  // stated: stays
  EXPECT_EQ(withDefaults(session.layout(), niche).depth, 3_in);
}

}  // namespace
}  // namespace elbowroom::ui

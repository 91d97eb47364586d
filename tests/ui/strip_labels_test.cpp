// The strip with all its layers: no words over other words, whatever is on the walls; what is pointed at says
// its own.
#include <gtest/gtest.h>

#include <QSettings>
#include <QTest>
#include <QToolButton>

#include "tests/ui/samples.h"
#include "tests/ui/strip_driver.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

const char* const kSamples[] = {"hall-bath", "ensuite-l", "attic", "bath-metric", "family-walls"};
const char* const kLayers[] = {"studs", "people", "backing", "electrical", "dimensions"};

// Leaves the switches as they were found.
struct AllLayers {
  AllLayers() { set(true); }
  ~AllLayers() { QSettings().remove("strip_layers"); }
  static void set(bool on) {
    for (const char* layer : kLayers) QSettings().setValue(QStringLiteral("strip_layers/") + layer, on);
  }
};

struct Word {
  std::string text;
  Box box;
};

std::vector<Word> wordsOn(const StripScene& scene) {
  std::vector<Word> words;
  const auto take = [&](const DisplayList& list) {
    for (const DrawItem& item : list)
      if (const auto* text = std::get_if<TextPrim>(&item.prim))
        words.push_back({text->text, textBounds(*text)});
  };
  for (std::size_t i = 0; i < scene.drawing().walls.size(); ++i) take(scene.listOf(i));
  take(scene.markList());
  take(scene.common());
  return words;
}

bool meet(const Box& a, const Box& b, Length by) {
  return a.low.x + by < b.high.x && b.low.x + by < a.high.x && a.low.y + by < b.high.y &&
         b.low.y + by < a.high.y;
}

void expectNoOverlap(const WallStrip& strip, const std::string& where) {
  const std::vector<Word> words = wordsOn(strip.scene());
  const Length half_px = strip.map().fromPx(0.5);
  EXPECT_FALSE(words.empty()) << where;
  for (std::size_t i = 0; i < words.size(); ++i)
    for (std::size_t k = i + 1; k < words.size(); ++k)
      EXPECT_FALSE(meet(words[i].box, words[k].box, half_px))
          << where << ": \"" << words[i].text << "\" over \"" << words[k].text << "\"";
  // A mark's sign counts as well as its figures.
  for (const StripScene::Mark& mark : strip.scene().marks())
    for (const Word& word : words) {
      const bool its_own = meet(mark.box, word.box, half_px) &&
                           word.text.find_first_not_of("0123456789, \u2026") == std::string::npos;
      EXPECT_TRUE(its_own || !meet(mark.box, word.box, half_px))
          << where << ": a mark over \"" << word.text << "\"";
    }
}

TEST(StripLabels, NoWordsOverWordsWithAllLayersInAnySample) {
  const AllLayers all;
  for (const char* name : kSamples) {
    const Plan plan = sample(name);
    for (std::size_t option = 0; option < plan.options.size(); ++option) {
      Session session(plan);
      session.setOption(option);
      WallStrip strip(session);
      for (const QSize size : {QSize(1280, strip.sizeHint().height()), QSize(674, 170)}) {
        strip.resize(size);
        strip.show();
        QTest::qWait(1);
        expectNoOverlap(
            strip, std::string(name) + " " + std::to_string(option) + " at " + std::to_string(size.width()));
      }
    }
  }
}

// Whatever finds no room, the thing itself is there; pointed at, it says its height.
TEST(StripLabels, WhatIsPointedAtSaysItsHeight) {
  const AllLayers all;
  Session session(sample("family-walls"));
  session.setOption(1);
  WallStrip strip(session);
  strip.resize(674, 170);
  strip.show();
  QTest::qWait(1);
  const auto says = [&](const std::string& text) {
    for (const Word& word : wordsOn(strip.scene()))
      if (word.text == text) return true;
    return false;
  };
  const auto point = [&](QPointF at) {
    QMouseEvent event(QEvent::MouseMove, at, strip.viewport()->mapToGlobal(at), Qt::NoButton, Qt::NoButton,
                      {});
    QApplication::sendEvent(strip.viewport(), &event);
  };
  int hidden = 0;
  // Heights of their centrelines as the sample states them; none shares its height with another thing.
  for (const auto& [id, height] : {std::pair{"hk1", "5'-4\""},
                                   {"hk2", "3'-4\""},
                                   {"gb1", "2'-10 5/8\""},
                                   {"shelf", "4'-9\""},
                                   {"mu", "4'-11\""},
                                   {"val", "3'-8\""},
                                   {"head", "6'-8\""}}) {
    const QRectF place = strip.placeOf({id});
    if (place.isNull()) continue;
    point({2, 2});
    hidden += says(height) ? 0 : 1;
    point(place.center());
    EXPECT_TRUE(says(height)) << id;
    expectNoOverlap(strip, std::string("pointing at ") + id);
  }
  EXPECT_GT(hidden, 0);  // or nothing was crowded
  // The mirror's lower edge for the three of the sample: 72 in wide, 58 high.
  const auto tells = [&](const std::string& part) {
    for (const Word& word : wordsOn(strip.scene()))
      if (word.text.find(part) != std::string::npos) return true;
    return false;
  };
  point(strip.placeOf({"m"}).center() + QPointF(0, 20));
  EXPECT_TRUE(tells("lower edge for all"));
  expectNoOverlap(strip, "pointing at the mirror");
}

}  // namespace
}  // namespace elbowroom::ui

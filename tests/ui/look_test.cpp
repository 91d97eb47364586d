// Contrast of the window's colours in both schemes, by WCAG 2.1: relative luminance and contrast ratio as its glossary
// defines them; text at least 4.5:1 (1.4.3), outlines and marks at least 3:1 (1.4.11).
#include "ui/look/look.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace elbowroom::ui {
namespace {

double luminance(QColor colour) {
  const auto linear = [](double c) { return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

double contrast(QColor a, QColor b) {
  const double la = luminance(a), lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

TEST(Contrast, IsAsTheTextSays) {
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-6);           // the largest there is
  EXPECT_NEAR(contrast(QColor(0x77, 0x77, 0x77), Qt::white), 4.48, 0.005);  // the well-known grey that just fails
}

class LookContrast : public testing::TestWithParam<bool> {};

TEST_P(LookContrast, TextCanBeReadOnEveryGround) {
  const Look& l = look(GetParam());
  const std::pair<const char*, QColor> grounds[] = {{"panel", l.panel}, {"sheet", l.sheet}, {"lit", l.lit}, {"chosen", l.chosen}};
  const std::pair<const char*, QColor> texts[] = {{"ink", l.ink}, {"soft", l.soft}, {"warning", l.warning}};
  for (const auto& [ground, under] : grounds)
    for (const auto& [text, colour] : texts) EXPECT_GE(contrast(colour, under), 4.5) << text << " on " << ground;
  for (const QColor& under : {l.panel, l.sheet}) EXPECT_GE(contrast(l.accent, under), 4.5) << "links";
}

TEST_P(LookContrast, OutlinesStandOut) {
  const Look& l = look(GetParam());
  for (const QColor& under : {l.panel, l.sheet, l.chosen}) EXPECT_GE(contrast(l.accent, under), 3);
}

INSTANTIATE_TEST_SUITE_P(Scheme, LookContrast, testing::Bool(),
                         [](const auto& info) { return info.param ? std::string("Dark") : std::string("Light"); });

}  // namespace
}  // namespace elbowroom::ui

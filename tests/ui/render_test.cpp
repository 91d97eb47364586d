// The QPainter, PDF and SVG back ends.
#include <gtest/gtest.h>

#include <QFile>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include "tests/core/drawing/plans.h"
#include "ui/render/paint.h"

namespace elbowroom::ui {
namespace {

using namespace literals;
using elbowroom::testing::planOf;

std::vector<Sheet> sheetsOf(const char* json, Paper paper) {
  const Plan plan = planOf(json);
  const Layout layout = deriveLayout(plan, 0);
  return makeSheets(layout, check(layout, choiceOf(plan)), {"2026-01-31", paper});
}

// The table of advances in core/drawing against the font that Qt draws with.
TEST(Render, TextWidthsAreTheFonts) {
  QFont font("DejaVu Sans");
  font.setPixelSize(2048);
  font.setKerning(false);
  font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);  // no ligatures, as paint() draws
  font.setHintingPreference(QFont::PreferNoHinting);
  ASSERT_EQ(QFontInfo(font).family(), QString("DejaVu Sans"));
  for (const bool bold : {false, true}) {
    font.setBold(bold);
    const QFontMetricsF metrics(font);
    for (const char* text :
         {"5'-2 1/2\"", "Clear floor in front, needs at least 21\"", "WAVE To fi ffl", "\u2300 1\u202f524",
          "24\" \u00d7 36\"", "3.67 m\u00b2", "Stra\u00dfe \u2026 \u2265 \u2264 \u00bd", "0123456789"}) {
      const double expected = metrics.horizontalAdvance(QString::fromUtf8(text));
      const double ours = textWidth(text, 2048_mm, bold).millimetres();
      if (std::string(text).find("\u202f") != std::string::npos) {
        EXPECT_GE(ours, expected);  // not in the table: more room, never less
      } else {
        EXPECT_NEAR(ours, expected, 2048 * 0.002 * static_cast<double>(QString::fromUtf8(text).size()))
            << text << bold;
      }
    }
  }
}

TEST(Render, ViewMapGoesBothWays) {
  ViewMap map;
  map.px_per_inch = 7.5;
  map.origin = {120, 480};
  EXPECT_EQ(map.toPx({10_in, 20_in}), QPointF(195, 330));  // up in the plan is up on the screen
  const Point back = map.toPlan({195, 330});
  EXPECT_EQ(back, (Point{10_in, 20_in}));
  EXPECT_DOUBLE_EQ(map.px(4_in), 30);
  EXPECT_EQ(map.fromPx(30), 4_in);
}

QImage painted(const DisplayList& list, const PaintOptions& options = {}) {
  QImage image(200, 200, QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::white);
  QPainter painter(&image);
  ViewMap map;
  map.px_per_inch = 10;
  map.origin = {0, 200};
  paint(painter, list, map, options);
  painter.end();
  return image;
}

// Words are kept from frame to frame: they look as when they were written first, in each scheme's own ink.
TEST(Render, KeptWordsAreThoseOfTheirScheme) {
  TextPrim text;
  text.at = {5_in, 10_in};
  text.text = "Vanity";
  text.height = 2_in;
  text.halo = true;
  const DisplayList list{{text, Role::label, {}}};
  PaintOptions dark;
  dark.dark = true;
  const QImage light_first = painted(list), dark_first = painted(list, dark);
  EXPECT_NE(light_first, dark_first);
  EXPECT_EQ(painted(list), light_first);
  EXPECT_EQ(painted(list, dark), dark_first);
  TextPrim moved = text;
  moved.at.x += 3_in;
  const QImage aside = painted({{moved, Role::label, {}}});
  EXPECT_EQ(aside.copy(30, 0, 170, 200), light_first.copy(0, 0, 170, 200));
}

int inked(const QImage& image, const QRect& where) {
  int count = 0;
  for (int y = where.top(); y <= where.bottom(); ++y) {
    for (int x = where.left(); x <= where.right(); ++x) count += qGray(image.pixel(x, y)) < 200;
  }
  return count;
}

TEST(Render, HatchStaysWithinItsOutline) {
  const DisplayList hatch{{HatchPrim{{{5_in, 5_in}, {15_in, 5_in}, {15_in, 15_in}, {5_in, 15_in}}, 0.5_in},
                           Role::hatchShort,
                           {}}};
  const QImage image = painted(hatch);
  EXPECT_GT(inked(image, QRect(52, 52, 96, 96)), 300);
  EXPECT_EQ(inked(image, QRect(0, 0, 200, 48)), 0);
  EXPECT_EQ(inked(image, QRect(0, 152, 200, 48)), 0);
  EXPECT_EQ(inked(image, QRect(0, 0, 48, 200)), 0);
  EXPECT_EQ(inked(image, QRect(152, 0, 48, 200)), 0);
}

TEST(Render, FillsAndArcsLieWhereThePlanSays) {
  const DisplayList wall{
      {PolyPrim{{{2_in, 2_in}, {8_in, 2_in}, {8_in, 4_in}, {2_in, 4_in}}, true, true}, Role::wallCut, {}}};
  const QImage image = painted(wall);
  EXPECT_EQ(inked(image, QRect(22, 162, 56, 16)), 56 * 16);  // y up: 2..4 in is 160..180 px
  EXPECT_EQ(inked(image, QRect(22, 22, 56, 16)), 0);
  // A quarter from east to north about (10, 10) in: ink to the upper right only.
  const QImage arc = painted({{ArcPrim{{10_in, 10_in}, 8_in, 0_deg, 90_deg}, Role::doorLeaf, {}}});
  EXPECT_GT(inked(arc, QRect(100, 0, 100, 100)), 50);
  EXPECT_EQ(inked(arc, QRect(0, 0, 98, 200)), 0);
  EXPECT_EQ(inked(arc, QRect(0, 103, 200, 97)), 0);
}

TEST(Render, HaloKeepsLinesOutOfText) {
  DisplayList list;
  for (int i = 0; i < 200; ++i) {
    const Length y = Length::fromInches(i * 0.1);
    list.push_back({LinePrim{{0_in, y}, {20_in, y}}, Role::doorLeaf, {}});
  }
  TextPrim text{{10_in, 10_in}, "-", 6_in, {}, AnchorH::centre, AnchorV::middle};
  list.push_back({text, Role::label, {}});
  const int without = inked(painted(list), QRect(0, 0, 200, 200));
  text.halo = true;
  list.back() = {text, Role::label, {}};
  PaintOptions options;
  options.white_paper = true;
  EXPECT_LT(inked(painted(list, options), QRect(0, 0, 200, 200)), without - 100);
}

TEST(Render, DashesAreMillimetresOfPaper) {
  // 2.2 mm on, 1.1 mm off at 4 px/mm: a period of 13.2 px over 200 px has 15 gaps.
  PaintOptions options;
  options.px_per_mm = 4;
  const QImage image =
      painted({{LinePrim{{0_in, 10_in}, {20_in, 10_in}}, Role::fixtureRemoved, {}}}, options);
  int starts = 0;
  bool ink = false;
  for (int x = 0; x < 200; ++x) {
    const bool now = inked(image, QRect(x, 98, 1, 4)) > 0;
    starts += now && !ink;
    ink = now;
  }
  EXPECT_NEAR(starts, 200 / 13.2, 1.5);
}

struct PdfCase {
  Paper paper;
  double width_pt, height_pt;
};

// A point is 1/72 in; letter is 11 x 8.5 in, A4 297 x 210 mm.
TEST(Pdf, PagesHaveTheRightSizeAndNumber) {
  QTemporaryDir dir;
  for (const PdfCase& c : {PdfCase{Paper::letter, 792, 612}, PdfCase{Paper::tabloid, 1224, 792},
                           PdfCase{Paper::a4, 297 / 25.4 * 72, 210 / 25.4 * 72},
                           PdfCase{Paper::a3, 420 / 25.4 * 72, 297 / 25.4 * 72}}) {
    const std::vector<Sheet> sheets = sheetsOf(elbowroom::testing::kHallBath, c.paper);
    const QString path = dir.filePath("out.pdf");
    const Result<bool> written = writePdf(sheets, path.toStdString(), "Hall bath (invented example)");
    ASSERT_TRUE(written.ok()) << written.error().message;
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString pdf = QString::fromLatin1(file.readAll());
    EXPECT_TRUE(pdf.startsWith("%PDF-"));
    static const QRegularExpression box(R"(/MediaBox\s*\[\s*([\d.]+)\s+([\d.]+)\s+([\d.]+)\s+([\d.]+)\s*\])");
    int pages = 0;
    for (auto it = box.globalMatch(pdf); it.hasNext(); ++pages) {
      const QRegularExpressionMatch m = it.next();
      EXPECT_NEAR(m.captured(3).toDouble(), c.width_pt, 1);
      EXPECT_NEAR(m.captured(4).toDouble(), c.height_pt, 1);
    }
    EXPECT_EQ(pages, static_cast<int>(sheets.size()));
    EXPECT_GE(pdf.count("/FontFile2"), 2);          // both weights embedded
    EXPECT_FALSE(pdf.contains("/Subtype /Image"));  // vector throughout
  }
}

// What a reader makes of it: title, fonts, words that can be searched.
TEST(Pdf, PopplerReadsTitleFontsAndWords) {
  if (QStandardPaths::findExecutable("pdfinfo").isEmpty()) GTEST_SKIP() << "poppler-utils are not installed";
  QTemporaryDir dir;
  const QString path = dir.filePath("out.pdf");
  ASSERT_TRUE(
      writePdf(sheetsOf(elbowroom::testing::kHallBath, Paper::a4), path.toStdString(), "Hall bath & more")
          .ok());
  const auto run = [&](const QString& tool, const QStringList& arguments) {
    QProcess process;
    process.start(tool, arguments);
    process.waitForFinished();
    return QString::fromUtf8(process.readAllStandardOutput());
  };
  EXPECT_TRUE(run("pdfinfo", {path}).contains("Hall bath & more"));
  const QString fonts = run("pdffonts", {path});
  EXPECT_TRUE(fonts.contains("DejaVuSans-Bold"));
  for (const QString& line : fonts.split('\n', Qt::SkipEmptyParts).mid(2)) {
    EXPECT_TRUE(line.contains(QRegularExpression(R"(\byes\s+(yes|no)\s+(yes|no)\b)"))) << line.toStdString();
  }
  const QString words = run("pdftotext", {"-layout", path, "-"});
  EXPECT_TRUE(words.contains("Laundry"));
  EXPECT_TRUE(words.contains("advisory only"));
  EXPECT_TRUE(words.contains("Dimensions to finished faces"));
}

TEST(Pdf, RefusesWithASentence) {
  const Result<bool> nowhere =
      writePdf(sheetsOf(elbowroom::testing::kEmptyRoom, Paper::a4), "/no/such/folder/out.pdf", "x");
  ASSERT_FALSE(nowhere.ok());
  EXPECT_NE(nowhere.error().message.find("/no/such/folder/out.pdf"), std::string::npos);
  EXPECT_FALSE(writePdf({}, "unused.pdf", "x").ok());
}

TEST(Svg, IsWellFormedAndAReaderDrawsIt) {
  for (const elbowroom::testing::NamedPlan& named : elbowroom::testing::allPlans()) {
    const Layout layout = deriveLayout(named.plan, 0);
    const std::vector<Sheet> sheets =
        makeSheets(layout, check(layout, choiceOf(named.plan)), {"2026-01-31", Paper::a4});
    const QByteArray svg = QByteArray::fromStdString(toSvg(sheets));
    QXmlStreamReader xml(svg);
    int texts = 0;
    while (!xml.atEnd()) {
      if (xml.readNext() == QXmlStreamReader::StartElement && xml.name() == QLatin1String("text")) ++texts;
    }
    EXPECT_FALSE(xml.hasError()) << named.name << ": " << xml.errorString().toStdString();
    EXPECT_GT(texts, 10) << named.name;
    QSvgRenderer renderer(svg);
    ASSERT_TRUE(renderer.isValid());
    EXPECT_NEAR(renderer.viewBoxF().height(), 210.0 * static_cast<double>(sheets.size()), 0.01);
  }
}

}  // namespace
}  // namespace elbowroom::ui

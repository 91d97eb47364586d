// The check boxes of the sheets dialog, clicked: each puts its pages into the PDF or leaves them out.
#include "ui/sheets/sheets_dialog.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QFile>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include "tests/ui/samples.h"
#include "ui/session/session.h"

namespace elbowroom::ui {
namespace {

struct SheetsDialogTest : testing::Test {
  Session session{sample("family-walls")};
  QTemporaryDir folder;
  std::unique_ptr<SheetsDialog> dialog;
  SheetsDialogTest() {
    QSettings().remove("sheets");
    session.setOption(1);
    open();
  }
  ~SheetsDialogTest() override { QSettings().remove("sheets"); }
  void open() {
    dialog = std::make_unique<SheetsDialog>(session, nullptr);
    dialog->show();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(dialog.get());
  }
  QCheckBox* box(const char* key) const { return dialog->findChild<QCheckBox*>(key); }
  void click(const char* key) {
    QCheckBox* at = box(key);
    ASSERT_TRUE(at) << key;
    QTest::mouseClick(at, Qt::LeftButton, {}, {8, at->height() / 2});
  }
  QByteArray pdf() {
    const QString path = folder.filePath("out.pdf");
    EXPECT_EQ(dialog->writePdfTo(path), QString());
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
  }
  // Page objects as ISO 32000 7.7.3.3 has them; Qt writes them uncompressed.
  int pages() {
    const QByteArray bytes = pdf();
    return static_cast<int>(bytes.count("/Type /Page\n"));
  }
  // The SVG holds the same sheets as text.
  QString words() {
    const QString path = folder.filePath("out.svg");
    EXPECT_EQ(dialog->writeSvgTo(path), QString());
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll());
  }
};

TEST_F(SheetsDialogTest, EachBoxOfThePagesAddsAndRemovesItsPages) {
  const int all = pages();
  ASSERT_GT(all, 12);
  int removed = 0;
  const std::pair<const char*, const char*> boxes[] = {{"plan", "P1 Plan"},
                                                       {"elevations", "Elevation n"},
                                                       {"mirrors", "Mirror order"},
                                                       {"works", "Backing in the walls"},
                                                       {"schedules", "Clear opening"},
                                                       {"findings", "Findings plan"}};
  for (const auto& [key, heading] : boxes) {
    ASSERT_TRUE(box(key)->isChecked()) << key;
    EXPECT_TRUE(words().contains(heading)) << key;
    click(key);
    EXPECT_FALSE(box(key)->isChecked()) << key;
    const int without = pages();
    EXPECT_LT(without, all) << key << " takes no page out of the PDF";
    EXPECT_FALSE(words().contains(heading)) << key;
    removed += all - without;
    click(key);
    EXPECT_EQ(pages(), all) << key << " does not bring its pages back";
  }
  EXPECT_EQ(removed, all);  // every page belongs to one box
}

TEST_F(SheetsDialogTest, OneWallIsOnePageOfTheFamilyBath) {
  const int all = pages();
  click("elevations");
  EXPECT_EQ(all - pages(), 4);  // four walls of nine and ten feet, none beside another at 1/2" = 1'-0"
  click("mirrors");
  EXPECT_EQ(all - pages(), 5);  // and the mirror over the vanity
}

// What elevations show is drawn on their pages and on no other.
TEST_F(SheetsDialogTest, EachLayerChangesTheElevations) {
  for (const char* key : {"plan", "mirrors", "works", "schedules", "findings"}) click(key);
  const std::pair<const char*, const char*> layers[] = {{"studs", "1'-2 1/2\""},
                                                        {"backing", "B1"},
                                                        {"people", "Tall adult: eyes"},
                                                        {"electrical", "No receptacle here"}};
  for (const auto& [key, sign] : layers) {
    const int count = pages();
    const QString quoted = QString(sign).replace("\"", "&quot;");
    const auto shows = [&] {
      const QString text = words();
      return text.contains(sign) || text.contains(quoted);
    };
    const bool was = box(key)->isChecked();
    EXPECT_EQ(shows(), was) << key;
    click(key);
    EXPECT_EQ(shows(), !was) << key;
    EXPECT_EQ(pages(), count) << key;
    click(key);
    EXPECT_EQ(shows(), was) << key;
  }
}

TEST_F(SheetsDialogTest, TheChoiceIsRemembered) {
  click("findings");
  const int fewer = pages();
  open();
  EXPECT_FALSE(box("findings")->isChecked());
  EXPECT_EQ(pages(), fewer);
}

}  // namespace
}  // namespace elbowroom::ui

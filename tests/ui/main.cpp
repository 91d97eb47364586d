// One QApplication for all tests of the window; any Qt warning during a test fails it.
#include <gtest/gtest.h>

#include <QApplication>
#include <QTemporaryDir>

#include "ui/look/look.h"

namespace {

void onMessage(QtMsgType type, const QMessageLogContext&, const QString& text) {
  // The offscreen platform says this of every window with a minimum size; it is about the platform, not about
  // us.
  if (text.startsWith("This plugin does not support")) return;
  if (type == QtDebugMsg || type == QtInfoMsg) {
    fprintf(stderr, "%s\n", qPrintable(text));
    return;
  }
  ADD_FAILURE() << "Qt warns: " << text.toStdString();
  if (type == QtFatalMsg) abort();
}

}  // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  testing::InitGoogleTest(&argc, argv);
  // Never the settings of whoever runs the tests, nor those of a test that runs beside this one.
  QTemporaryDir own;
  if (!own.isValid()) return 1;
  qputenv("XDG_CONFIG_HOME", own.filePath("config").toUtf8());
  qputenv("XDG_DATA_HOME", own.filePath("data").toUtf8());
  QApplication app(argc, argv);
  QApplication::setOrganizationName("elbowroom-tests");
  QApplication::setApplicationName("elbowroom-tests");
  elbowroom::ui::applyLook(app, elbowroom::ui::Scheme::light);
  qInstallMessageHandler(onMessage);
  return RUN_ALL_TESTS();
}

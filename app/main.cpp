// Starts the window, or answers a headless verb.
#include <QApplication>
#include <QTimer>
#include <cstdio>

#include "app/headless.h"
#include "app/options.h"
#include "core/file/plan_file.h"
#include "ui/look/look.h"
#include "ui/window/file_flow.h"
#include "ui/window/main_window.h"

namespace {

int runWindow(int argc, char** argv, const elbowroom::Options& options) {
  QApplication app(argc, argv);
  QCoreApplication::setOrganizationName("elbowroom");
  QCoreApplication::setApplicationName("Elbowroom");
  QCoreApplication::setApplicationVersion(ELBOWROOM_VERSION);
  elbowroom::ui::applyLook(app);
  elbowroom::ui::MainWindow window(elbowroom::emptyPlan(elbowroom::Unit::inches));
  window.show();
  if (!options.file.empty()) window.files().open(QString::fromStdString(options.file));
  else window.offerRecovery();
  return QApplication::exec();
}

}  // namespace

int main(int argc, char** argv) {
  const elbowroom::Options options = elbowroom::parseOptions(argc, argv);
  if (options.verb != elbowroom::Verb::window) return elbowroom::runHeadless(options);
  return runWindow(argc, argv, options);
}

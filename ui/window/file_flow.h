// Opening, saving and not losing: recent files, the unsaved-changes guard, and a recovery copy while working.
#pragma once

#include <QObject>
#include <QStringList>
#include <QTimer>

#include "ui/session/session.h"

namespace elbowroom::ui {

class FileFlow : public QObject {
  Q_OBJECT
 public:
  FileFlow(Session&, QWidget* window);

  const QString& path() const { return path_; }
  QString displayName() const;

  void newPlan();
  void openDialog();
  // False: not opened; the error was shown inline and the present plan is untouched.
  bool open(const QString& path);
  // Asks about unsaved changes first, but only when the file can be opened.
  bool openAsking(const QString& path);
  void openExample(const QString& resource);
  bool save();
  bool saveAs();
  // Asks when there are unsaved changes. True: go on.
  bool mayLeave();
  QStringList recent() const;

  // A copy left by a session that did not end well; empty when there is none.
  QString recoveryFile() const;
  bool restoreRecovery();
  void dropRecovery();

 signals:
  void pathChanged();
  void problem(const QString& sentence);
  void done(const QString& sentence);

 private:
  // nullopt: said why.
  std::optional<Plan> load(const QString& path);
  void show(Plan plan, const QString& path);
  void setPath(const QString& path);
  void remember(const QString& path);
  void writeRecovery();
  Session& session_;
  QWidget* window_;
  QString path_;
  QTimer recovery_timer_;
};

}  // namespace elbowroom::ui

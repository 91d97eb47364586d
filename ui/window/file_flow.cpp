#include "ui/window/file_flow.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QRegularExpression>
#include <QSettings>
#include <QStandardPaths>

#include "core/file/plan_file.h"

namespace elbowroom::ui {
namespace {
constexpr int kRecentMost = 8;
const char* const kSuffix = ".elbowroom";
}  // namespace

FileFlow::FileFlow(Session& session, QWidget* window) : QObject(window), session_(session), window_(window) {
  recovery_timer_.setInterval(20'000);
  recovery_timer_.setSingleShot(true);
  connect(&recovery_timer_, &QTimer::timeout, this, &FileFlow::writeRecovery);
  connect(&session_, &Session::changed, this, [this] {
    if (!recovery_timer_.isActive()) recovery_timer_.start();
  });
}

QString FileFlow::displayName() const {
  const QString title = QString::fromStdString(session_.plan().title);
  if (!path_.isEmpty()) return QFileInfo(path_).completeBaseName();
  return title.isEmpty() ? tr("Untitled plan") : title;
}

void FileFlow::setPath(const QString& path) {
  path_ = path;
  emit pathChanged();
}

void FileFlow::remember(const QString& path) {
  QStringList list = recent();
  const QString full = QFileInfo(path).absoluteFilePath();
  list.removeAll(full);
  list.prepend(full);
  while (list.size() > kRecentMost) list.removeLast();
  QSettings().setValue("recent", list);
  emit pathChanged();
}

QStringList FileFlow::recent() const {
  QStringList there;
  for (const QString& path : QSettings().value("recent").toStringList())
    if (QFile::exists(path)) there << path;
  return there;
}

void FileFlow::newPlan() {
  if (!mayLeave()) return;
  const Unit unit = session_.plan().unit;
  session_.replace(emptyPlan(unit));
  setPath({});
  dropRecovery();
}

void FileFlow::openDialog() {
  const QString path = QFileDialog::getOpenFileName(window_, tr("Open plan"), QFileInfo(path_).absolutePath(),
                                                    tr("Elbowroom plans (*%1);;All files (*)").arg(kSuffix));
  if (!path.isEmpty()) openAsking(path);
}

std::optional<Plan> FileFlow::load(const QString& path) {
  auto plan = loadPlan(path.toStdString());
  if (plan) return std::move(plan).value();
  // The sentence begins with the whole path; the name is enough for somebody who has just chosen it.
  QString why = QString::fromStdString(plan.error().message);
  const QString place = path + QStringLiteral(": ");
  if (why.startsWith(place)) why = why.mid(place.size());
  const QString name = QFileInfo(path).fileName();
  emit problem(session_.layout().room.empty()
                   ? tr("%1 was not opened: %2").arg(name, why)
                   : tr("%1 was not opened: %2 The plan you have open is unchanged.").arg(name, why));
  return std::nullopt;
}

void FileFlow::show(Plan plan, const QString& path) {
  session_.replace(std::move(plan));
  setPath(path);
  remember(path);
  dropRecovery();
}

bool FileFlow::open(const QString& path) {
  auto plan = load(path);
  if (plan) show(std::move(*plan), path);
  return plan.has_value();
}

bool FileFlow::openAsking(const QString& path) {
  auto plan = load(path);
  if (!plan || !mayLeave()) return false;
  show(std::move(*plan), path);
  return true;
}

void FileFlow::openExample(const QString& resource) {
  if (!mayLeave()) return;
  QFile file(resource);
  if (!file.open(QIODevice::ReadOnly)) {
    emit problem(tr("The example could not be read."));
    return;
  }
  auto plan = readPlan(file.readAll().toStdString());
  if (!plan) {
    emit problem(QString::fromStdString(plan.error().message));
    return;
  }
  session_.replace(std::move(plan).value());
  setPath({});
  dropRecovery();
}

bool FileFlow::save() {
  if (path_.isEmpty()) return saveAs();
  const auto saved = savePlan(session_.plan(), path_.toStdString());
  if (!saved) {
    emit problem(QString::fromStdString(saved.error().message));
    return false;
  }
  session_.markSaved();
  remember(path_);
  dropRecovery();
  emit done(tr("Saved %1").arg(QFileInfo(path_).fileName()));
  return true;
}

bool FileFlow::saveAs() {
  QString start = path_;
  if (start.isEmpty()) {
    QString name = QString::fromStdString(session_.plan().title).simplified().toLower();
    name.remove(QRegularExpression("[^a-z0-9 -]"));
    start = (name.isEmpty() ? QStringLiteral("bathroom") : name.replace(' ', '-')) + kSuffix;
  }
  QString path = QFileDialog::getSaveFileName(window_, tr("Save plan"), start,
                                              tr("Elbowroom plans (*%1)").arg(kSuffix));
  if (path.isEmpty()) return false;
  if (!path.endsWith(kSuffix)) path += kSuffix;
  const QString before = path_;
  path_ = path;
  if (!save()) {
    path_ = before;
    return false;
  }
  setPath(path);
  return true;
}

bool FileFlow::mayLeave() {
  if (!session_.dirty()) return true;
  QMessageBox box(QMessageBox::Question, tr("Unsaved changes"),
                  tr("%1 has changes that are not saved.").arg(displayName()), QMessageBox::NoButton, window_);
  auto* save_button = box.addButton(tr("Save"), QMessageBox::AcceptRole);
  auto* drop_button = box.addButton(tr("Do not save"), QMessageBox::DestructiveRole);
  box.addButton(tr("Go back"), QMessageBox::RejectRole);
  box.setDefaultButton(save_button);
  box.exec();
  if (box.clickedButton() == save_button) return save();
  if (box.clickedButton() != drop_button) return false;
  dropRecovery();
  return true;
}

QString FileFlow::recoveryFile() const {
  return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) + "/recovery" + kSuffix;
}

void FileFlow::writeRecovery() {
  if (!session_.dirty()) return;
  QDir().mkpath(QFileInfo(recoveryFile()).absolutePath());
  // A recovery copy that cannot be written is no reason to interrupt; the guard on leaving still holds.
  (void)savePlan(session_.plan(), recoveryFile().toStdString());
}

bool FileFlow::restoreRecovery() {
  auto plan = loadPlan(recoveryFile().toStdString());
  if (!plan) {
    emit problem(QString::fromStdString(plan.error().message));
    return false;
  }
  setPath({});
  session_.adoptUnsaved(std::move(plan).value());
  return true;
}

void FileFlow::dropRecovery() {
  recovery_timer_.stop();
  QFile::remove(recoveryFile());
}

}  // namespace elbowroom::ui

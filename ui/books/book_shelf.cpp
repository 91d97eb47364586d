#include "ui/books/book_shelf.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include "core/file/book_file.h"

namespace elbowroom::ui {

BookShelf::BookShelf(QObject* parent) : QObject(parent) {}

QString BookShelf::folder() {
  return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + "/books";
}

QStringList BookShelf::load() {
  QStringList refused;
  bool any = false;
  for (const QFileInfo& file : QDir(folder()).entryInfoList({"*.json"}, QDir::Files, QDir::Name)) {
    const auto book = loadBook(file.absoluteFilePath().toStdString());
    if (!book) {
      refused << QString::fromStdString(book.error().message);
    } else if (!isAdded((*book)->book.id)) {  // a second window of the same program has it already
      if (const auto added = addBook(*book); added) any = true;
      else refused << file.fileName() + ": " + QString::fromStdString(added.error().message);
    }
  }
  if (any) emit changed();
  return refused;
}

QString BookShelf::add(const QString& path, QString* id) {
  const auto book = loadBook(path.toStdString());
  if (!book) return QString::fromStdString(book.error().message);
  const QString name = QString::fromUtf8((*book)->book.id.data(), static_cast<qsizetype>((*book)->book.id.size()));
  if (const auto added = addBook(*book); !added) return path + ": " + QString::fromStdString(added.error().message);
  const QString kept = folder() + "/" + name + ".json";
  QDir().mkpath(folder());
  if (QFileInfo(path).absoluteFilePath() != QFileInfo(kept).absoluteFilePath()) {
    QFile::remove(kept);  // of a book that was refused at the start, or it would be here
    if (!QFile::copy(path, kept)) {
      removeBook((*book)->book.id);
      return tr("%1 cannot be written; the book was not added.").arg(kept);
    }
  }
  if (id) *id = name;
  emit changed();
  return {};
}

QString BookShelf::remove(const QString& id) {
  const QString kept = folder() + "/" + id + ".json";
  const std::string key = id.toStdString();
  QString file = kept;
  for (const SharedBook& book : addedBooks())
    if (book->book.id == key && QFileInfo(QString::fromStdString(book->file)).absolutePath() == QFileInfo(kept).absolutePath())
      file = QString::fromStdString(book->file);
  if (QFile::exists(file) && !QFile::remove(file)) return tr("%1 cannot be removed.").arg(file);
  if (!removeBook(key)) return tr("This book comes with the program and stays.");
  emit changed();
  return {};
}

QStringList BookShelf::missing(const std::vector<std::string>& named) {
  QStringList ids;
  for (const std::string& id : named)
    if (findBook(id) == nullptr) ids << QString::fromStdString(id);
  return ids;
}

}  // namespace elbowroom::ui

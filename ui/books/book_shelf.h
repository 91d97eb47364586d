// The books a person has added: files in the user's data folder, read when the program starts.
#pragma once

#include <QObject>
#include <QStringList>

namespace elbowroom::ui {

class BookShelf : public QObject {
  Q_OBJECT
 public:
  explicit BookShelf(QObject* parent = nullptr);

  static QString folder();
  // Reads what is in the folder; one sentence per book that is refused.
  QStringList load();
  // Copies the file into the folder and adds its book. The sentence why not, or empty; `id` is the book's then.
  QString add(const QString& path, QString* id = nullptr);
  // Takes an added book out of the program and the folder. The sentence why not, or empty.
  QString remove(const QString& id);
  // Titles or ids of books that the plan names and nobody has.
  static QStringList missing(const std::vector<std::string>& named);

 signals:
  void changed();
};

}  // namespace elbowroom::ui

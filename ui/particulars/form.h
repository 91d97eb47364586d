// Rows of a page of the Particulars: a label and its field, and what a page is.
#pragma once

#include <QWidget>

#include "core/base/id.h"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;

namespace elbowroom::ui {

class LengthEdit;
class Session;

class Form : public QWidget {
  Q_OBJECT
 public:
  explicit Form(QWidget* parent = nullptr);

  LengthEdit* addLength(const QString& label);
  QComboBox* addChoice(const QString& label, const QStringList& choices);
  QCheckBox* addMark(const QString& label);  // the label stands beside the box
  QLabel* addFact(const QString& label);
  void addField(const QString& label, QWidget* field);
  void wrapLabels();  // for rows added from here on: long labels break and share the width with their fields
  void addHeading(const QString& text);
  void addWide(QWidget* widget);
  void setShown(QWidget* field, bool shown);  // with its label

 private:
  QGridLayout* grid_;
  int row_ = 0;
  bool wraps_ = false;
  QHash<QWidget*, QLabel*> labels_;
};

// A page shows one kind of selection and edits it through the session.
class Page : public Form {
  Q_OBJECT
 public:
  Page(Session& session, QWidget* parent) : Form(parent), session_(session) {}
  virtual QString title() const = 0;
  virtual void refresh() = 0;

 protected:
  Session& session_;
};

}  // namespace elbowroom::ui

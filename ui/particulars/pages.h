// The pages of the Particulars, one per kind of selection.
#pragma once

#include <functional>

#include "core/plan/edit.h"
#include "ui/particulars/form.h"

class QDoubleSpinBox;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace elbowroom::ui {

class GlassForm;
class NorthField;
class SlopesForm;

class RoomPage : public Page {  // nothing is selected
  Q_OBJECT
 public:
  explicit RoomPage(Session&, QWidget* parent = nullptr);
  QString title() const override;
  void refresh() override;

 private:
  QLineEdit* name_;
  LengthEdit* ceiling_;
  SlopesForm* slopes_;
  NorthField* north_;
  QLabel *area_, *free_;
};

class WallPage : public Page {
  Q_OBJECT
 public:
  explicit WallPage(Session&, QWidget* parent = nullptr);
  QString title() const override;
  void refresh() override;

 private:
  const Wall* wall() const;
  void put(const std::function<void(Wall&)>& change, LengthEdit* from = nullptr);
  QLabel* length_;
  LengthEdit *thickness_, *first_stud_, *spacing_;
  QCheckBox *exterior_, *plumbing_, *studs_;
};

class OpeningPage : public Page {
  Q_OBJECT
 public:
  explicit OpeningPage(Session&, QWidget* parent = nullptr);
  QString title() const override;
  void refresh() override;

 private:
  const Opening* opening() const;
  void put(const std::function<void(Opening&)>& change, LengthEdit* from = nullptr);
  QComboBox *action_, *hinge_, *swing_, *toward_, *closer_, *latch_;
  LengthEdit *width_, *window_width_, *height_, *sill_, *left_, *right_, *thickness_;
  QPushButton* remove_;
};

class FixturePage : public Page {
  Q_OBJECT
 public:
  explicit FixturePage(Session&, QWidget* parent = nullptr);
  QString title() const override;
  void refresh() override;

 private:
  const Fixture* fixture() const;
  void put(const std::function<void(Fixture&)>& change, LengthEdit* from = nullptr);
  void buildPlace();
  void buildKind();
  void refreshPlace(const Fixture&);
  void refreshKind(const Fixture&);
  QLineEdit* name_;
  QComboBox* status_;
  LengthEdit *width_, *depth_, *height_;
  LengthEdit *left_, *right_, *gap_, *x_, *y_;
  QDoubleSpinBox* turn_;
  QCheckBox* knee_;
  LengthEdit *knee_height_, *knee_depth_, *curb_, *bowl_, *tank_width_, *tank_depth_;
  QSpinBox* basins_;
  GlassForm* glass_;
};

class WallItemPage : public Page {
  Q_OBJECT
 public:
  explicit WallItemPage(Session&, QWidget* parent = nullptr);
  QString title() const override;
  void refresh() override;

 private:
  const WallItem* item() const;
  void put(const std::function<void(WallItem&)>& change, LengthEdit* from = nullptr);
  void connectPlace();
  void connectChoices();
  void refreshChoices(const WallItem&);
  QLineEdit* name_;
  QComboBox *kind_, *wall_, *shower_, *person_, *status_;
  LengthEdit *left_, *right_, *bottom_, *centre_, *width_, *height_, *depth_;
  QPushButton* full_;
};

class CeilingItemPage : public Page {
  Q_OBJECT
 public:
  explicit CeilingItemPage(Session&, QWidget* parent = nullptr);
  QString title() const override;
  void refresh() override;

 private:
  const CeilingItem* item() const;
  void put(const std::function<void(CeilingItem&)>& change, LengthEdit* from = nullptr);
  QLineEdit* name_;
  QComboBox* kind_;
  LengthEdit *x_, *y_, *width_, *depth_;
};

class SeveralPage : public Page {
  Q_OBJECT
 public:
  explicit SeveralPage(Session&, QWidget* parent = nullptr);
  QString title() const override;
  void refresh() override;

 private:
  QLabel* names_;
  QPushButton* remove_;
};

// Shared by the pages: the single selected element, and edits whose refusal is said at the field.
ElementId selectedOne(const Session&);
Length wallLength(const Session&, const ElementId& wall);  // 0 when there is no such wall
// A line of text that was edited and left goes to `put`, trimmed.
void commitText(QLineEdit*, std::function<void(const std::string&)> put);
void performAt(Session&, Change, const QString& label, const ElementId& on, LengthEdit* from);

}  // namespace elbowroom::ui

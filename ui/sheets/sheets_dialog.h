// Shows the sheets as they will print and writes them: PDF, SVG or a printer.
#pragma once

#include <QDialog>

#include "core/drawing/sheet.h"
#include "ui/session/session.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QScrollArea;

namespace elbowroom::ui {

class SheetView;

class SheetsDialog : public QDialog {
  Q_OBJECT
 public:
  SheetsDialog(Session&, QWidget* parent);
  // Also used without the dialog's buttons, for instance by tests. Error text, or empty.
  QString writePdfTo(const QString& path);
  QString writeSvgTo(const QString& path);

 signals:
  void written(const QString& path);

 protected:
  void showEvent(QShowEvent*) override;

 private:
  void refresh();
  void ask(bool pdf);
  void print();
  // A check box per page or layer, remembered; `which` is the part of the choice that it sets.
  template <typename Choice>
  void addChoice(QBoxLayout* column, Choice* choice, bool Choice::*which, const QString& key,
                 const QString& label, const QString& tip);
  QString suggestedName(const QString& suffix) const;
  Session& session_;
  QComboBox* paper_;
  QLabel* scale_;
  QLabel* message_;
  SheetView* view_;
  std::vector<Sheet> sheets_;
  SheetInfo info_;
  bool stale_ = false;  // the plan changed while the dialog was closed
};

}  // namespace elbowroom::ui

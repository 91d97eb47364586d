// Sheets of paper below one another, scaled to the width at hand.
#pragma once

#include <QWidget>
#include <vector>

#include "core/drawing/sheet.h"

namespace elbowroom::ui {

class SheetView : public QWidget {
  Q_OBJECT
 public:
  explicit SheetView(QWidget* parent = nullptr);
  void setSheets(const std::vector<Sheet>* sheets);
  int heightForWidth(int width) const override;
  bool hasHeightForWidth() const override { return true; }

 protected:
  void paintEvent(QPaintEvent*) override;
  void resizeEvent(QResizeEvent*) override;

 private:
  const std::vector<Sheet>* sheets_ = nullptr;
};

}  // namespace elbowroom::ui

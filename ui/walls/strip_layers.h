// The row above the Wall strip that says what it shows: studs, people's heights, backing, wiring, dimensions.
#pragma once

#include <QWidget>

#include "core/drawing/draw_elevation.h"

class QToolButton;

namespace elbowroom::ui {

class StripLayersBar : public QWidget {
  Q_OBJECT
 public:
  explicit StripLayersBar(QWidget* parent);
  StripLayers layers() const { return layers_; }
  // Then the people's heights have nothing to show, and the row says so.
  void setNobodyNamed(bool);

 signals:
  void changed();
  void peopleWanted();

 private:
  void set(bool StripLayers::*which, bool on);
  void showNobody();
  StripLayers layers_;
  QToolButton* nobody_;
  bool nobody_named_ = false;
};

}  // namespace elbowroom::ui

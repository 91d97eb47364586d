// The row above the Wall strip that says what it shows: studs, people's heights, backing, wiring, dimensions.
#pragma once

#include <QWidget>

#include "core/drawing/draw_elevation.h"

namespace elbowroom::ui {

class StripLayersBar : public QWidget {
  Q_OBJECT
 public:
  explicit StripLayersBar(QWidget* parent);
  StripLayers layers() const { return layers_; }

 signals:
  void changed();

 private:
  void set(bool StripLayers::*which, bool on);
  StripLayers layers_;
};

}  // namespace elbowroom::ui

// Where north is on the plan: one of eight directions, or an angle; "not stated" until somebody says so.
#pragma once

#include <QWidget>
#include <optional>

#include "core/base/length.h"

class QComboBox;
class QDoubleSpinBox;

namespace elbowroom::ui {

class NorthField : public QWidget {
  Q_OBJECT
 public:
  explicit NorthField(QWidget* parent = nullptr);
  // Counter-clockwise from up, as the plan states it.
  void setNorth(const std::optional<Angle>& north);

 signals:
  // `merges`: the angle goes on from the one before (typed, stepped).
  void stated(const std::optional<Angle>& north, bool merges);

 private:
  QComboBox* direction_;
  QDoubleSpinBox* angle_;
  bool by_angle_ = false;
};

}  // namespace elbowroom::ui

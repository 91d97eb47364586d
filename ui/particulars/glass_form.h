// The glass of a shower on its page: one block per side of the shower.
#pragma once

#include <array>
#include <functional>

#include "core/plan/plan.h"
#include "ui/particulars/form.h"

namespace elbowroom::ui {

class GlassForm : public Form {
  Q_OBJECT
 public:
  // `put` performs a change of the selected shower.
  using Put = std::function<void(const std::function<void(Fixture&)>&, LengthEdit*)>;
  GlassForm(Put put, QWidget* parent);
  void refresh(const Fixture&, Unit);

 private:
  struct Block {
    Side side;
    QCheckBox* glass = nullptr;
    LengthEdit *height = nullptr, *door = nullptr;
    QComboBox *swing = nullptr, *hinge = nullptr;
  };
  void build(Block&, const QString& name);
  void putPane(Side, const std::function<void(Pane&)>&, LengthEdit* from);

  Put put_;
  std::array<Block, 4> blocks_;
};

}  // namespace elbowroom::ui

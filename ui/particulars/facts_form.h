// What may be stated about the selected thing beyond place and size: one row per fact of the catalogue that
// concerns its kind (core/plan/facts.h), each with "not stated".
#pragma once

#include <string>

#include "core/plan/facts.h"
#include "ui/particulars/form.h"

class QVBoxLayout;

namespace elbowroom::ui {

class FactsForm : public QWidget {
  Q_OBJECT
 public:
  explicit FactsForm(Session&, QWidget* parent = nullptr);
  // Of the room with an empty id; hidden where no fact concerns the thing.
  void setThing(const ElementId& id);
  // Puts the cursor into the row of this fact; false: there is none.
  bool ask(const std::string& key);

 private:
  struct Row {
    const FactInfo* info = nullptr;
    QWidget* field = nullptr;
  };
  void build();
  void refresh(const Facts&);
  void state(const FactInfo&, std::optional<FactValue>, LengthEdit* from = nullptr);
  QWidget* fieldFor(const FactInfo&, Form&);

  Session& session_;
  QVBoxLayout* column_;
  Form* form_ = nullptr;
  std::vector<Row> rows_;
  ElementId id_;
  FactOn on_ = FactOn::room;
  std::string kind_;
  bool built_ = false;
};

}  // namespace elbowroom::ui

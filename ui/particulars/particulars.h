// What is selected, with every figure editable; nothing selected: the room.
#pragma once

#include <QScrollArea>

class QLabel;

namespace elbowroom::ui {

class DoorTryout;
class FactsForm;
class Page;
class Session;

class Particulars : public QScrollArea {
  Q_OBJECT
 public:
  explicit Particulars(Session& session, QWidget* parent = nullptr);

  Page* page() const { return page_; }
  QString title() const;
  FactsForm* facts() const { return facts_; }

 private:
  void refresh();
  Page* wanted() const;

  Session& session_;
  QLabel* title_;
  Page *room_, *wall_, *opening_, *fixture_, *item_, *ceiling_item_, *several_;
  Page* page_ = nullptr;
  FactsForm* facts_;
  DoorTryout* tryout_;
};

}  // namespace elbowroom::ui

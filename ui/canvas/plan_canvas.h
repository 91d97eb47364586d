// The plan: paints the layout and the report that belong to it and passes pointer and keys to the tool in
// hand.
#pragma once

#include <QWidget>
#include <memory>

#include "core/drawing/clutter.h"
#include "ui/canvas/select_tool.h"

namespace elbowroom::ui {

class LengthEntry;

class PlanCanvas : public QWidget, public CanvasContext {
  Q_OBJECT
 public:
  explicit PlanCanvas(Session&, QWidget* parent = nullptr);
  ~PlanCanvas() override;

  void startRoom();
  // The tool in hand takes its own last step back first (a corner while drawing), else the plan's.
  void undo();
  void startPlacing(const QString& payload);
  void stopPlacing();  // what is only carried is taken away
  bool choosing() const { return tool_ == &select_; }  // the selecting tool is in hand
  SelectTool& selectTool() { return select_; }

  StandIn& standIn() { return stand_in_; }
  void showStandIn(StandIn::Kind);
  void standInChanged();
  void jumpStandIn();

  void zoomToFit();
  void zoomBy(double factor, QPointF about);
  void zoomToPlace(const Place&);

  bool showsClearZones() const { return clear_zones_; }
  void setShowsClearZones(bool on);
  bool showsTurning() const { return turning_; }
  void setShowsTurning(bool on);

  // CanvasContext
  Session& session() override { return session_; }
  const ViewMap& map() const override { return map_; }
  SnapRules snapRules(const Pointer&) const override;
  Unit unit() const override { return session_.plan().unit; }
  void repaint() override { update(); }
  void say(const QString& text) override { emit said(text); }
  void askLength(QPointF px, const QString& initial, std::function<QString(Length)> take,
                 const QString& purpose) override;
  void toolDone() override;
  void draw(QPainter&, const DisplayList&) override;
  DrawStyle style() const override;

  QSize minimumSizeHint() const override { return {320, 240}; }

 signals:
  void said(const QString& text);
  void toolChanged();
  void standInMoved();

 protected:
  void paintEvent(QPaintEvent*) override;
  void mousePressEvent(QMouseEvent*) override;
  void mouseMoveEvent(QMouseEvent*) override;
  void mouseReleaseEvent(QMouseEvent*) override;
  void mouseDoubleClickEvent(QMouseEvent*) override;
  void leaveEvent(QEvent*) override;
  void wheelEvent(QWheelEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  void keyReleaseEvent(QKeyEvent*) override;
  void resizeEvent(QResizeEvent*) override;
  void dragEnterEvent(QDragEnterEvent*) override;
  void dragMoveEvent(QDragMoveEvent*) override;
  void dragLeaveEvent(QDragLeaveEvent*) override;
  void dropEvent(QDropEvent*) override;
  bool focusNextPrevChild(bool next) override;

 private:
  Pointer pointerAt(QPointF px, Qt::KeyboardModifiers) const;
  void take(std::unique_ptr<Tool>);
  void rebuild();
  bool roomInView() const;
  // A room that was whole in the view and has grown out of it is shown whole again; who has zoomed into it stays there.
  void followRoom();
  DisplayList turningList(Clutter drawn) const;
  void paintPlan(QPainter&);
  void paintStandIn(QPainter&);
  void paintLit(QPainter&);
  void paintPreview(QPainter&);
  void paintSelection(QPainter&);

  Session& session_;
  ViewMap map_;
  StandIn stand_in_;
  SelectTool select_;
  std::unique_ptr<Tool> other_;
  Tool* tool_ = nullptr;
  LengthEntry* entry_ = nullptr;
  DisplayList plan_list_, zone_list_, finding_list_, turning_list_;
  bool stale_ = true;
  bool clear_zones_ = true, turning_ = true;
  bool fitted_ = false;
  bool had_room_ = false;
  bool in_view_ = false;  // the whole room, when the view or the plan was last changed by hand
  std::optional<QPointF> panning_from_;
  bool space_ = false;
};

}  // namespace elbowroom::ui

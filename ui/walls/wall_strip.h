// All walls unrolled left to right under the plan: select, drag, resize, type, place. Shares the plan's
// selection and its lit finding.
#pragma once

#include <QAbstractScrollArea>
#include <memory>

#include "ui/walls/strip_select.h"

namespace elbowroom::ui {

class LengthEntry;
class StripLayersBar;

class WallStrip : public QAbstractScrollArea, public StripContext {
  Q_OBJECT
 public:
  explicit WallStrip(Session& session, QWidget* parent = nullptr);
  ~WallStrip() override;

  // The thing at a place of the viewport: an opening, fixture, item, else the wall; empty outside.
  ElementId thingAt(QPointF at) const;
  // Where a thing is drawn in the viewport (its first showing); null rectangle when it is not.
  QRectF placeOf(const ElementId& id) const;
  QSize sizeHint() const override { return {600, 192}; }

  StripSelect& selectTool() { return select_; }
  // "wall:mirror": it follows the pointer until a click puts it down. Other payloads are the plan's.
  void startPlacing(const QString& payload);
  void stopPlacing();  // drops the tool and leaves the session's drag to whoever ends it
  bool choosing() const { return tool_ == &select_; }
  // The tool in hand takes its own last step back (a drag). False: it has none, the plan's is next.
  bool undoOwnStep();
  // 1: the walls fill the height.
  double zoom() const { return zoom_; }
  void zoomBy(double factor, QPointF about);
  void zoomToFit();
  const DrawStyle& drawStyle() const { return style_; }

  // StripContext
  Session& session() override { return session_; }
  const ViewMap& map() const override { return map_; }
  SnapRules snapRules(const Pointer&) const override;
  Unit unit() const override { return session_.plan().unit; }
  void repaint() override;
  void say(const QString& text) override { emit said(text); }
  void askLength(QPointF px, const QString& initial, std::function<QString(Length)> take,
                 const QString& purpose) override;
  void toolDone() override;
  void draw(QPainter&, const DisplayList&) override;
  DrawStyle style() const override { return style_; }
  const StripScene& scene() const override { return scene_; }
  std::vector<HeightLine> eyes() const override;

 signals:
  void said(const QString& text);
  void placingEnded();
  void peopleWanted();  // heights of people are to be shown and nobody is named

 protected:
  void paintEvent(QPaintEvent*) override;
  void resizeEvent(QResizeEvent*) override;
  void mousePressEvent(QMouseEvent*) override;
  void mouseMoveEvent(QMouseEvent*) override;
  void mouseReleaseEvent(QMouseEvent*) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override { mousePressEvent(event); }
  void wheelEvent(QWheelEvent*) override;
  void contextMenuEvent(QContextMenuEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  void dragEnterEvent(QDragEnterEvent*) override;
  void dragMoveEvent(QDragMoveEvent*) override;
  void dragLeaveEvent(QDragLeaveEvent*) override;
  void dropEvent(QDropEvent*) override;
  bool viewportEvent(QEvent*) override;
  bool focusNextPrevChild(bool next) override;
  void focusInEvent(QFocusEvent*) override;
  void focusOutEvent(QFocusEvent*) override;
  void scrollContentsBy(int, int) override;

 private:
  Pointer pointerAt(QPointF px, Qt::KeyboardModifiers) const;
  void redraw();
  std::set<ElementId> labelledFirst() const;
  void showSelected();
  void arrange();
  void placeMap();
  void updateChosen();
  QRect rectOfWall(std::size_t) const;
  void paintSelection(QPainter&);
  void paintLit(QPainter&);
  void paintPreview(QPainter&);
  void autoScroll(QPointF at);

  Session& session_;
  StripScene scene_;
  ViewMap map_;
  DrawStyle style_;
  StripSelect select_;
  std::unique_ptr<Tool> placing_;
  Tool* tool_ = nullptr;
  LengthEntry* entry_ = nullptr;
  StripLayersBar* layers_ = nullptr;
  double zoom_ = 1;
  std::set<ElementId> first_;
  QRect chosen_before_;
  std::optional<QPointF> panning_from_;
};

}  // namespace elbowroom::ui

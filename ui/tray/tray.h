// The Tray: things to place, as pictures. Drag one onto the plan or the wall strip, or choose it (click, Enter) and
// click there.
#pragma once

#include <QScrollArea>
#include <functional>
#include <vector>

class QDrag;
class QGridLayout;
class QLabel;

namespace elbowroom::ui {

class Session;
class TrayTile;

inline constexpr const char* kKindMime = "application/x-elbowroom-kind";

class Tray : public QScrollArea {
  Q_OBJECT
 public:
  explicit Tray(Session& session, QWidget* parent = nullptr);

  const std::vector<TrayTile*>& tiles() const { return tiles_; }
  TrayTile* tile(const QString& payload) const;  // nullptr for an unknown one
  // Runs a drag; replaced in tests, where no window system takes part.
  std::function<void(QDrag*)> run_drag;

 signals:
  // "fixture:toilet", "door:hinged", "window", "wall:mirror" or "ceiling:fan": the next click places one.
  void picked(const QString& payload);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Section {
    QLabel* heading;
    QGridLayout* grid;
    std::vector<TrayTile*> tiles;
  };
  void addSection(const QString& title, std::vector<std::pair<QString, QString>> payloads_and_labels);
  void arrange();
  void describe();
  void focusTile(std::size_t index);
  int columns() const;

  Session& session_;
  QWidget* inside_;
  std::vector<Section> sections_;
  std::vector<TrayTile*> tiles_;
  int unit_described_ = -1;
  int arranged_columns_ = 0;
};

}  // namespace elbowroom::ui

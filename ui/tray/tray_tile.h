// One thing in the Tray: its picture over its name.
#pragma once

#include <QAbstractButton>
#include <QPixmap>

namespace elbowroom::ui {

class TrayTile : public QAbstractButton {
  Q_OBJECT
 public:
  TrayTile(QString payload, const QString& label, QWidget* parent = nullptr);

  const QString& payload() const { return payload_; }
  const QPixmap& picture() const;
  void forgetPicture() { picture_ = {}; }  // the scheme has changed
  QSize sizeHint() const override;

 signals:
  void dragWanted();

 protected:
  void paintEvent(QPaintEvent*) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QString payload_;
  mutable QPixmap picture_;
  QPoint pressed_at_;
};

}  // namespace elbowroom::ui

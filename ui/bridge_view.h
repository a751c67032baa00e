// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTransform>
#include <QWidget>
#include <memory>
#include <optional>

#include "ui/bridge/bridge_parts.h"
#include "ui/session.h"
#include "ui/theme.h"

class QLabel;

namespace ui {

/// The chosen channel's bridge at the chosen step, and the place where shunts are moved.
///
/// Drag a shunt's end to another node, or step to it with the arrow keys and press Enter: output and
/// polarity follow at once, the document changes on release, as one undo step. Always edits the
/// channel's plan, never the set-up a closed check keeps; says so where the two differ.
///
/// Keys: Tab walks arms and shunt ends. On an arm the arrows walk all parts; on a shunt's end they move
/// it, Enter keeps it there, Escape takes it back, Delete removes the shunt, Space chooses the first
/// step that closes it. Enter asks for the part's field. + - 0 zoom, as the wheel with Ctrl does.
class BridgeView : public QWidget {
  Q_OBJECT

 public:
  explicit BridgeView(Session& session, QWidget* parent = nullptr);

  /// The circuit and its state in sentences; also the accessible description.
  QString description() const;
  /// What is drawn; none in a document without channels.
  const BridgePicture* picture() const { return m_picture.get(); }
  /// A point of the drawing in the widget's coordinates.
  QPointF toWidget(QPointF drawn) const { return transform().map(drawn); }
  /// What is shown now: while an end is moved, what would come of it. None in a document without channels.
  const BridgeState* stateNow() const;
  /// The end of a shunt that is being moved.
  const std::optional<ShuntMove>& move() const { return m_move; }
  /// What has the keyboard.
  const std::optional<BridgeSpot>& focus() const { return m_focus; }

  QSize sizeHint() const override { return {640, 470}; }
  QSize minimumSizeHint() const override { return {300, 220}; }

 public slots:
  /// Shows the whole drawing.
  void fit();
  void zoomIn();
  void zoomOut();

 signals:
  /// `stateNow` is another.
  void stateShown();
  /// Double click or Enter: the user wants to change this part.
  void partActivated(const ui::BridgePart& part);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool focusNextPrevChild(bool next) override;

 private:
  const core::Setup& setup() const { return m_channel->setup; }

  void follow();
  QString noticeNow() const;
  void showTexts();
  void showTexts(const QString& title, const QString& outcome, const QColor& colour);
  QTransform transform() const;
  QPointF toDrawing(QPointF widget) const { return transform().inverted().map(widget); }
  QRectF canvas() const;
  void zoomAt(QPointF anchor, double factor);
  static constexpr double zoomStep = 1.25;

  void setFocusSpot(std::optional<BridgeSpot> spot);
  bool walk(int direction, bool all);
  void handleKey(QKeyEvent* event);

  void beginOrContinueMove(std::size_t shunt, ShuntEnd end, std::optional<core::Node> target);
  void stepMove(int direction);
  void endMove(bool keep);
  void showVoltagesNow();
  void selectStepOf(std::size_t shunt);
  void removeShunt(std::size_t shunt);

  void paintEmpty(QPainter& painter) const;

  Session& m_session;
  QLabel* m_title;
  QLabel* m_leaks;   ///< insulation that leaks, in words: it is not drawn; hidden without
  QLabel* m_notice;  ///< hidden while there is nothing to notice
  QLabel* m_outcome;
  Colours m_colours;
  std::shared_ptr<const core::Channel> m_channel;
  std::optional<std::size_t> m_step;
  std::unique_ptr<BridgePicture> m_picture;
  std::optional<BridgeSpot> m_focus;
  std::optional<ShuntMove> m_move;
  QPointF m_pointer;  ///< while the mouse moves an end, in the drawing
  bool m_byMouse = false;
  std::optional<BridgeSpot> m_pressed;
  std::optional<QPoint> m_pressedAt;  ///< while the left button is down
  double m_zoom = 1;
  QPointF m_pan;  ///< of the zoomed drawing, in pixels
};

}  // namespace ui

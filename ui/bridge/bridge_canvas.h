// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QTransform>
#include <QWidget>
#include <memory>
#include <optional>

#include "ui/access/twin.h"
#include "ui/bridge/bridge_picture.h"
#include "ui/bridge/flow_painter.h"
#include "ui/theme.h"

namespace ui {

/// A drawing of a bridge at one step, to be looked at: zoom, pan, currents. Edits nothing and knows no
/// document; its accessible description says in words what is drawn.
///
/// Ctrl and the wheel zoom at the pointer; dragging moves a drawing that is larger than its room.
class BridgeCanvas : public QWidget, public Twin {
  Q_OBJECT

 public:
  explicit BridgeCanvas(QWidget* parent = nullptr);

  /// No step: all shunts open.
  void showSetup(const core::Setup& setup, std::optional<std::size_t> step);
  void showNothing();
  void setSymbols(Symbols symbols);
  Symbols symbols() const { return m_symbols; }
  void setFlowStyle(FlowStyle style);
  FlowStyle flowStyle() const { return m_flowStyle; }

  /// What is drawn; none without a setup.
  const BridgePicture* picture() const { return m_picture.get(); }
  virtual QString description() const;
  TwinTable twin() const override;
  /// A point of `picture` in the widget's coordinates.
  QPointF toWidget(QPointF drawn) const { return transform(*m_picture).map(drawn); }

  QSize sizeHint() const override { return {480, 360}; }
  QSize minimumSizeHint() const override { return {240, 180}; }

 public slots:
  /// Shows the whole drawing.
  void fit();
  void zoomIn();
  void zoomOut();

 protected:
  static constexpr int margin = 6;

  /// `prediction` is that of `channel`.
  void showChannel(std::shared_ptr<const core::Channel> channel, core::SetupPrediction prediction,
                   std::optional<std::size_t> step);
  /// What is drawn, to show other voltages in it.
  BridgePicture* drawn() { return m_picture.get(); }
  const Colours& colours() const { return m_colours; }
  QPointF toDrawing(QPointF widget) const { return transform(*m_picture).inverted().map(widget); }
  /// Whether the drawing is larger than its room.
  bool isZoomed() const { return m_zoom > 1; }
  void panBy(QPointF pixels);

  /// The part of the widget that is drawn on.
  virtual QRectF room() const;
  /// What is painted for now in place of `picture`, which the pointer goes by.
  virtual const BridgePicture& shownPicture() const { return *m_picture; }
  /// In the drawing's coordinates, below and above the bridge.
  virtual void paintUnder(QPainter&) {}
  virtual void paintOver(QPainter&) {}

  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;

 private:
  void redraw();
  void moveDots();
  QTransform transform(const BridgePicture& picture) const;
  void zoomAt(QPointF anchor, double factor);

  Colours m_colours;
  Symbols m_symbols = Symbols::Iec60617;
  FlowStyle m_flowStyle = FlowStyle::Off;
  QTimer m_tick;  ///< moves the dots while they are shown
  double m_phase = 0;
  std::shared_ptr<const core::Channel> m_channel;
  core::SetupPrediction m_prediction;
  std::optional<std::size_t> m_step;
  std::unique_ptr<BridgePicture> m_picture;
  double m_zoom = 1;
  QPointF m_pan;                     ///< of the zoomed drawing, in pixels
  std::optional<QPointF> m_panFrom;  ///< while the drawing is dragged
  QRectF m_paintedRoom;
};

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QTransform>
#include <QWidget>
#include <memory>
#include <optional>

#include "ui/bridge/bridge_picture.h"
#include "ui/bridge/flow_painter.h"
#include "ui/theme.h"

namespace ui {

/// A drawing of a bridge at one step, to be looked at: zoom, pan, currents. Edits nothing and knows no
/// document; its accessible description says in words what is drawn.
class BridgeCanvas : public QWidget {
  Q_OBJECT

 public:
  explicit BridgeCanvas(QWidget* parent = nullptr);

  /// No step: all shunts open.
  void showSetup(const core::Setup& setup, std::optional<std::size_t> step);
  void showNothing();
  void setSymbols(Symbols symbols);
  void setFlowStyle(FlowStyle style);
  FlowStyle flowStyle() const { return m_flowStyle; }

  /// What is drawn; none without a setup.
  const BridgePicture* picture() const { return m_picture.get(); }
  QString description() const;
  /// A point of the drawing in the widget's coordinates.
  QPointF toWidget(QPointF drawn) const { return transform().map(drawn); }

  QSize sizeHint() const override { return {480, 360}; }
  QSize minimumSizeHint() const override { return {240, 180}; }

 public slots:
  /// Shows the whole drawing.
  void fit();
  void zoomIn();
  void zoomOut();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  void redraw();
  QTransform transform() const;
  void zoomAt(QPointF anchor, double factor);

  Colours m_colours;
  Symbols m_symbols = Symbols::Iec60617;
  FlowStyle m_flowStyle = FlowStyle::Off;
  QTimer m_tick;  ///< moves the dots while they are shown
  double m_phase = 0;
  core::Channel m_channel;
  std::optional<std::size_t> m_step;
  std::unique_ptr<BridgePicture> m_picture;
  double m_zoom = 1;
  QPointF m_pan;  ///< of the zoomed drawing, in pixels
};

}  // namespace ui

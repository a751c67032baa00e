// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/access/twin.h"
#include "ui/theme.h"
#include "ui/wiring/wiring_layout.h"

namespace ui {

/// The drawing of pins and jumpers. Arrow keys go from pin to pin and across to the other column, plus, minus
/// and 0 zoom; it fills the scroll area around it, or is larger when it must. The table of pins says the
/// same in words.
class WiringDrawing : public QWidget, public Twin {
  Q_OBJECT

 public:
  explicit WiringDrawing(QWidget* parent = nullptr);

  void setPicture(WiringPicture picture);
  const WiringPicture& picture() const { return m_picture; }
  const WiringLayout& drawn() const { return m_drawn; }
  TwinTable twin() const override;
  /// Where a pin of the list is drawn, in this widget.
  QRect placeOf(std::size_t pin) const;
  void zoomBy(double factor);

 signals:
  void pinChosen(std::size_t pin);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void layOutAgain();
  const PinPlace* placeAt(QPointF point) const;
  const PinPlace* across(const PinPlace& from) const;
  void walk(int by);

  WiringPicture m_picture;
  WiringLayout m_drawn;
  Colours m_colours;
  double m_zoom = 1;   ///< by the user
  double m_scale = 1;  ///< of the drawing: the zoom, times what there is room for
};

}  // namespace ui

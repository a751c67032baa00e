// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QProxyStyle>

namespace ui {

/// The desktop's style, with frames around fields, buttons and boxes that can be seen on light and dark
/// colours alike (3 to 1; styles draw them a little darker than the window, which on dark colours is
/// nothing), and a ring around the cell of a table that has the keyboard, whether it is chosen too or not.
/// What scrolls has a frame as thick as the ring around what has the keyboard, which so hides nothing of it.
/// Borders between views are moved by keys.
class FrameStyle : public QProxyStyle {
 public:
  using QProxyStyle::QProxyStyle;

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget = nullptr) const override;
  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                          const QWidget* widget = nullptr) const override;
  int pixelMetric(PixelMetric metric, const QStyleOption* option = nullptr,
                  const QWidget* widget = nullptr) const override;
  int styleHint(StyleHint hint, const QStyleOption* option = nullptr, const QWidget* widget = nullptr,
                QStyleHintReturn* more = nullptr) const override;
  using QProxyStyle::polish;
  void polish(QWidget* widget) override;
};

}  // namespace ui

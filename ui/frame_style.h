// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QProxyStyle>

namespace ui {

/// The desktop's style, with frames around check boxes and radio buttons that can be seen on dark colours
/// too: styles draw them darker than the window, where nothing darker is left.
class FrameStyle : public QProxyStyle {
 public:
  using QProxyStyle::QProxyStyle;

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget = nullptr) const override;
};

}  // namespace ui

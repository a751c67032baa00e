// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame_style.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QStyleFactory>
#include <QStyleOptionButton>
#include <algorithm>
#include <cmath>

#include "ui/theme.h"

namespace ui {
namespace {

/// Relative luminance, WCAG 2.1.
double luminance(const QColor& colour) {
  const auto linear = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

/// Greatest contrast of any point of an unticked box with the table it lies on, as WCAG 2.1 reckons it.
double contrastOfFrame(QStyle::PrimitiveElement element, const QPalette& palette) {
  FrameStyle style(QStyleFactory::create("Fusion"));
  QImage image(16, 16, QImage::Format_RGB32);
  image.fill(palette.color(QPalette::Base));
  QStyleOptionButton option;
  option.rect = image.rect();
  option.palette = palette;
  option.state = QStyle::State_Enabled | QStyle::State_Off;
  QPainter painter(&image);
  style.drawPrimitive(element, &option, &painter);
  painter.end();
  const double ground = luminance(palette.color(QPalette::Base));
  double greatest = 1;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) {
      const double here = luminance(image.pixelColor(x, y));
      greatest = std::max(greatest, (std::max(here, ground) + 0.05) / (std::min(here, ground) + 0.05));
    }
  return greatest;
}

// WCAG 2.1, success criterion 1.4.11: 3 to 1 for what a control is told by.
TEST(FrameStyle, UntickedBoxesCanBeSeenOnDarkColours) {
  for (const auto element : {QStyle::PE_IndicatorCheckBox, QStyle::PE_IndicatorRadioButton})
    EXPECT_GE(contrastOfFrame(element, darkPalette()), 3);
}

}  // namespace
}  // namespace ui

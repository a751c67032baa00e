// SPDX-License-Identifier: GPL-3.0-or-later
// The bar of the bridge's output: side, text, and a scale that keeps still.
#include "ui/bridge/output_bar.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLocale>

#include "ui/theme.h"

namespace {

using core::Output;
using core::Polarity;

struct Bar : ui::OutputBar {
  explicit Bar(int width = 460) { resize(width, 34); }

  /// x of the first and last column that has the colour, none of them: an invalid pair.
  std::pair<int, int> columnsOf(const QColor& colour) {
    // The words at the left have the colour too.
    const QImage image = grab().toImage();
    std::pair<int, int> found(-1, -1);
    for (int x = 200; x < image.width(); ++x)
      if (image.pixelColor(x, 8) == colour) found = {found.first < 0 ? x : found.first, x};
    return found;
  }
  ui::Colours colours() const { return ui::coloursFor(palette()); }
};

TEST(OutputBar, SaysSignNumberAndWord) {
  Bar bar;
  bar.show(Output(-0.5005e-3), Polarity::Negative, Output(1e-3));
  EXPECT_EQ(bar.text(), QStringLiteral("change −0.5005 mV/V, negative"));
  EXPECT_EQ(bar.accessibleDescription(), bar.text());
  EXPECT_EQ(bar.accessibleName(), "Output");
  bar.show(Output(0.25e-3), Polarity::Positive, Output(1e-3));
  EXPECT_EQ(bar.text(), QStringLiteral("change +0.2500 mV/V, positive"));
  bar.show(Output(3e-17), Polarity::None, Output(1e-3));
  EXPECT_EQ(bar.text(), "change 0 mV/V");
  bar.show({}, Polarity::None, Output(1e-3));
  EXPECT_EQ(bar.text(), "output not known");
  EXPECT_EQ(bar.accessibleDescription(), bar.text());
}

TEST(OutputBar, HasTheUsersDecimalMark) {
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German));
  Bar bar;
  bar.show(Output(-0.5e-3), Polarity::Negative, Output(1e-3));
  EXPECT_EQ(bar.text(), QStringLiteral("change −0,5000 mV/V, negative"));
  QLocale::setDefault(before);
}

TEST(OutputBar, GoesRightWhenPositiveAndLeftWhenNegative) {
  for (const int width : {460, 1900}) {
    Bar bar(width);
    bar.show(Output(0.5e-3), Polarity::Positive, Output(1e-3));
    const auto right = bar.columnsOf(bar.colours().positive);
    bar.show(Output(-0.5e-3), Polarity::Negative, Output(1e-3));
    const auto left = bar.columnsOf(bar.colours().negative);
    ASSERT_GE(right.first, 0);
    ASSERT_GE(left.first, 0);
    EXPECT_LT(left.second, right.first);
    // Half the scale each: as far to the one side as to the other, a pixel more or less at each edge.
    EXPECT_NEAR(right.second - right.first, left.second - left.first, 2);
  }
}

TEST(OutputBar, IsAsLongAsItsShareOfTheScale) {
  Bar bar(1000);
  const auto length = [&](double output) {
    bar.show(Output(output), Polarity::Positive, Output(1e-3));
    const auto columns = bar.columnsOf(bar.colours().positive);
    return columns.second - columns.first + 1;
  };
  // The line at zero covers a pixel of both; edges are a pixel.
  EXPECT_NEAR(length(1e-3), 2 * length(0.5e-3), 3);
}

TEST(OutputBar, ShowsTheSideOfTheSmallestOutput) {
  Bar bar;
  bar.show(Output(1e-9), Polarity::Positive, Output(1e-3));
  EXPECT_GE(bar.columnsOf(bar.colours().positive).first, 0);
}

TEST(OutputBar, ScaleIsTheRoundNumberAboveTheLargestStep) {
  Bar bar;
  for (const auto& [largest, scale] :
       {std::pair(0.5e-3, 0.5e-3), std::pair(0.51e-3, 1e-3), std::pair(1.1e-3, 2e-3), std::pair(2.3e-3, 5e-3),
        std::pair(7e-3, 10e-3)}) {
    bar.show(Output(0), Polarity::None, Output(largest));
    EXPECT_DOUBLE_EQ(bar.scale().base(), scale) << largest;
  }
}

TEST(OutputBar, ScaleDoesNotJumpWhileSomethingIsDragged) {
  Bar bar;
  const Output largest(0.9e-3);
  bar.show(Output(0.9e-3), Polarity::Positive, largest);
  EXPECT_DOUBLE_EQ(bar.scale().base(), 1e-3);
  bar.show(Output(1e-6), Polarity::Positive, largest);
  EXPECT_DOUBLE_EQ(bar.scale().base(), 1e-3);
  bar.show(Output(-3e-3), Polarity::Negative, largest);  // over the edge: it must grow
  EXPECT_DOUBLE_EQ(bar.scale().base(), 5e-3);
  bar.show(Output(0.5e-3), Polarity::Positive, largest);  // and then stays
  EXPECT_DOUBLE_EQ(bar.scale().base(), 5e-3);
  bar.show({}, Polarity::None, largest);  // between two nodes
  EXPECT_DOUBLE_EQ(bar.scale().base(), 5e-3);
  bar.show(Output(0.5e-3), Polarity::Positive, Output(0.5e-3));  // another plan
  EXPECT_DOUBLE_EQ(bar.scale().base(), 0.5e-3);
}

TEST(OutputBar, ReadsInBothThemes) {
  Bar bar;
  bar.show(Output(0.5e-3), Polarity::Positive, Output(1e-3));
  for (const QPalette& palette : {ui::lightPalette(), ui::darkPalette()}) {
    bar.setPalette(palette);
    const ui::Colours colours = ui::coloursFor(palette);
    EXPECT_EQ(bar.grab().toImage().pixelColor(1, 1), colours.background);
    EXPECT_GE(bar.columnsOf(colours.positive).first, 0);
  }
}

}  // namespace

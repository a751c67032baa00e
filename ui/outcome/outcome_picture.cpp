// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/outcome_picture.h"

#include <QPainter>

#include "ui/outcome/deviation_plot.h"
#include "ui/outcome/measured_plot.h"

namespace ui {
namespace {

void prepare(PlotFrame& plot, QSize size) {
  plot.setAttribute(Qt::WA_DontShowOnScreen);
  plot.setFont(QFont("DejaVu Sans", 9));
  plot.setPalette(lightPalette());
  plot.resize(size);
  plot.show();  // on no screen: without it the chart does not lay itself out
}

}  // namespace

QImage outcomePicture(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                      std::size_t check, QSize size) {
  const int upper = size.height() * 3 / 5;
  MeasuredPlot measured;
  DeviationPlot bars;
  prepare(measured, {size.width(), upper});
  prepare(bars, {size.width(), size.height() - upper});

  // On paper the limits are what the bars are held against.
  ChartOptions options;
  options.fit = BarFit::Limits;
  const CheckPlot plot = checkPlot(channel, evaluation, check);
  Extent x, y;
  addExtent(plot, x, y);
  measured.showPlot(plot, options, MeasuredPlot::Role::Chosen, false, niceTicks(x, 8),
                    niceTicks(y, measured.uprightIntervals()), {});
  bars.showBars(barPicture(channel, evaluation, check, plot, options), niceTicks(x, 8), {});
  const int left = std::max(measured.neededLeft(), bars.neededLeft());
  measured.setLeft(left);
  bars.setLeft(left);

  QImage image(3 * size, QImage::Format_RGB32);
  image.setDevicePixelRatio(3);
  image.fill(Qt::white);
  QPainter painter(&image);
  measured.grabInto(painter, {0, 0});
  bars.grabInto(painter, {0, upper});
  return image;
}

}  // namespace ui

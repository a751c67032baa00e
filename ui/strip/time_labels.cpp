// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/time_labels.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "ui/outcome/axis_ticks.h"
#include "ui/quantity_edit.h"

namespace ui {
namespace {

constexpr double minute_s = 60, hour_s = 3600, day_s = 86400;
constexpr double mostSeconds_s = 2 * minute_s,
                 mostMinutes_s = 2 * hour_s;  ///< told in the smaller unit up to
constexpr double wholeSteps_s[] = {1,   2,   5,    10,   15,   30,       60,        120,        300,
                                   600, 900, 1800, 3600, 7200, 3 * 3600, 6 * 3600., 12 * 3600., day_s};

/// 1, 2 or 5 times a power of ten, at least `least`.
double roundStep(double least) {
  const double power = std::pow(10, std::floor(std::log10(least)));
  for (const double factor : {1.0, 2.0, 5.0})
    if (least <= factor * power * (1 + 1e-9)) return factor * power;
  return 10 * power;
}

double stepAtLeast(double least_s) {
  if (least_s <= 0.5) return roundStep(least_s);
  for (const double step : wholeSteps_s)
    if (least_s <= step) return step;
  return day_s * roundStep(least_s / day_s);
}

int decimalsOf(double step_s) {
  return std::clamp(static_cast<int>(-std::floor(std::log10(step_s) + 1e-9)), 0, 9);
}

/// Seconds below a minute, with two figures before the mark.
QString secondsText(double seconds, int decimals) {
  const QString text = fixedNumberText(seconds, decimals);
  return seconds < 10 ? "0" + text : text;
}

}  // namespace

TimeTicks timeTicks(double begin_s, double end_s, int count) {
  TimeTicks ticks;
  if (!(end_s > begin_s)) return ticks;
  ticks.step_s = stepAtLeast((end_s - begin_s) / std::max(count, 1));
  const double play_s = 1e-9 * ticks.step_s;
  ticks.times_s = multiples(ticks.step_s, begin_s - play_s, end_s + play_s);
  return ticks;
}

QString timeText(double time_s, double step_s, double greatest_s) {
  const int decimals = decimalsOf(step_s);
  if (greatest_s <= mostSeconds_s) return fixedNumberText(time_s, decimals);
  // Rounded first, so that 59.99 s is never told as 60.0 of a minute.
  const double unit = std::pow(10, decimals);
  const double whole = std::round(std::abs(time_s) * unit) / unit;
  const QString sign = time_s < 0 && whole > 0 ? QString("−") : QString();
  const double minutes = std::floor(whole / minute_s + 1e-12);
  const QString seconds = secondsText(std::max(0.0, whole - minutes * minute_s), decimals);
  if (greatest_s <= mostMinutes_s) return sign + QString::number(minutes, 'f', 0) + ":" + seconds;
  const double hours = std::floor(minutes / 60);
  return sign + QString::number(hours, 'f', 0) + ":" +
         QString("%1").arg(static_cast<int>(minutes - 60 * hours), 2, 10, QChar('0')) + ":" + seconds;
}

QString timeUnitText(double greatest_s) {
  const auto tr = [](const char* text) { return QCoreApplication::translate("ui::TimeLabels", text); };
  if (greatest_s <= mostSeconds_s) return tr("s");
  return greatest_s <= mostMinutes_s ? tr("min:s") : tr("h:min:s");
}

}  // namespace ui

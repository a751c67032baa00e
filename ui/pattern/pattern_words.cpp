// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pattern/pattern_words.h"

#include <QCoreApplication>
#include <cmath>

#include "ui/quantity_edit.h"

namespace ui {
namespace {

QString words(const char* text) { return QCoreApplication::translate("ui::PatternDialog", text); }

}  // namespace

QStringList courseNames() {
  return {words("Rising"), words("Up and down (hysteresis)"), words("Random order (drift)")};
}

QStringList sidesNames() {
  return {words("Positive first"), words("Negative first"), words("Positive only"), words("Negative only")};
}

QString durationText(core::Duration duration) {
  const double seconds = duration.base();
  if (seconds < 59.95) return words("%1 s").arg(numberText(seconds, 3));
  const auto whole = static_cast<qint64>(std::ceil(seconds - 1e-9));
  if (whole < 3600) return words("%1 min %2 s").arg(QString::number(whole / 60), QString::number(whole % 60));
  const qint64 minutes = (whole + 59) / 60;
  return words("%1 h %2 min").arg(QString::number(minutes / 60), QString::number(minutes % 60));
}

core::Duration totalOf(const std::vector<core::Step>& steps) {
  core::Duration total{0};
  for (const core::Step& step : steps) total += step.settle + step.hold;
  return total;
}

}  // namespace ui

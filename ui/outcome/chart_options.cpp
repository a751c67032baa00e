// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/chart_options.h"

#include "ui/state_file.h"

namespace ui {

ChartOptions rememberedChartOptions() {
  QSettings state = stateFile();
  state.beginGroup("outcome");
  ChartOptions options;
  const auto read = [&](const char* key, bool& shown) { shown = state.value(key, shown).toBool(); };
  read("line", options.line);
  read("confidence", options.confidence);
  read("prediction", options.prediction);
  read("errorBars", options.errorBars);
  read("branches", options.branches);
  if (state.value("fit").toString() == "limits") options.fit = BarFit::Limits;
  return options;
}

void rememberChartOptions(const ChartOptions& options) {
  QSettings state = stateFile();
  state.beginGroup("outcome");
  state.setValue("line", options.line);
  state.setValue("confidence", options.confidence);
  state.setValue("prediction", options.prediction);
  state.setValue("errorBars", options.errorBars);
  state.setValue("branches", options.branches);
  state.setValue("fit", options.fit == BarFit::Limits ? "limits" : "bars");
}

}  // namespace ui

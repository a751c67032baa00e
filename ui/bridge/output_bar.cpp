// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/output_bar.h"

namespace ui {

OutputBar::OutputBar(QWidget* parent) : QWidget(parent) { setObjectName("outputBar"); }

void OutputBar::show(std::optional<core::Output> output, core::Polarity polarity, core::Output largest) {
  m_output = output;
  m_polarity = polarity;
  m_largest = largest;
  update();
}

void OutputBar::paintEvent(QPaintEvent*) {}

}  // namespace ui

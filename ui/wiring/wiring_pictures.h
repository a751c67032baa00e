// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>

#include "core/plan/setup.h"

class QPainter;

namespace ui {

/// How large the pins of `setup` with the jumpers of `shunt` are drawn on paper.
QSizeF wiringSize_pt(const core::Setup& setup, std::size_t shunt);
/// Draws them into `room`, in light colours, with the marks of what is wrong.
void drawWiring(QPainter& painter, const QRectF& room, const core::Setup& setup, std::size_t shunt);

}  // namespace ui

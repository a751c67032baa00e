// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>

#include "core/evaluate/evaluation.h"

namespace ui {

/// Measured against simulated above deviations with their limits, in light colours, for paper: `size` in
/// points of a 96 dpi screen, three pixels a point. GUI thread only.
QImage outcomePicture(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                      std::size_t check, QSize size);

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "core/plan/pattern.h"

namespace ui {

/// In the order of the enumerators.
QStringList courseNames();
QStringList sidesNames();

/// "12.5 s", "3 min 20 s", "2 h 5 min".
QString durationText(core::Duration duration);
/// How long all steps take, one after the other.
core::Duration totalOf(const std::vector<core::Step>& steps);

}  // namespace ui

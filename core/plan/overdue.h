// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <string>
#include <vector>

#include "core/plan/setup.h"

namespace core {

/// Shunts that some step closes and whose resistor was due for calibration before `day`.
std::vector<std::size_t> overdueShunts(const Setup& setup, Date day);

/// "Overdue for calibration on 2026-11-25: AF-0104 (shunt R1 on arm 2, due 2026-09-01)." Empty when none is.
std::string overdueSentence(const Setup& setup, Date day);

}  // namespace core

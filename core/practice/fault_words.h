// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/practice/fault_distance.h"

// What the answer to a planted fault says of faults. Internal to core/practice.

namespace core {

/// Whether the kind multiplies all readings alike, as a wrong setting does: no readings tell one of them from
/// another.
bool isOfScale(CauseKind kind);

/// "Bridge factor set wrong (N = 1 set where 4 belongs, ...)": with its size, and what it means.
std::string withSize(const Setup& setup, const Fault& fault);
/// "At best: Resistor A off its value, A acts as ...: step 3 would show 12 µm/m where 34 stands."
std::string whyNot(const ReadGround& ground, const Nearest& wrong, const std::vector<double>& shown);

/// The plan as it really runs with the fault, where a picture can show that; else unchanged.
Setup faultyPlan(Setup setup, const Fault& fault);
/// What a fault of readings makes of the expected reading of a step, with the numbers; empty for a fault of
/// parts.
std::string readingLine(const ReadGround& ground, const Fault& fault, std::size_t step,
                        const std::vector<double>& shown);

/// The step where two rows of readings lie furthest apart.
std::size_t furthest(const std::vector<double>& a, const std::vector<double>& b);
/// The greatest difference of two rows of readings, over `reach`.
double missOf(const std::vector<double>& a, const std::vector<double>& b, double reach);

}  // namespace core

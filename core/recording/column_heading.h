// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/recording/layout.h"

// What the words above a column say.

namespace core {

/// Whether `unit` describes how a time of day or date is written: "hh:mm:ss", "dd.mm.yyyy".
bool looksLikeTimePattern(std::string_view unit);

/// "Force [kN]", "Force (kN)", "Force / kN", "Force in kN" taken apart. In parentheses and behind a slash
/// only what looks like a unit is one: "Strain (left)" is a name.
ColumnHeading headingOf(std::string_view cell);

/// How surely a column is a time by its name: 0 not, 1 "rise time", 2 "Timestamp", 3 "Time", "t", "Zeit".
int timeNameStrength(std::string_view name);

/// What the last part of a name with folders says: "run1/Time [ms]" is "Time" in "ms", "t_us" is "t" in "us".
ColumnHeading headingOfPath(std::string_view path);

/// Whether that is surely a time: "t", "time", "Time_s", "run1/time [ms]"; "t_max" is not.
bool isNameOfTime(std::string_view path);

/// Whether `name` is that of a running number: "No.", "Sample", "Index".
bool isCounterName(std::string_view name);

/// Whether a row of cells is a row of units: all that are not empty are in brackets, or units, or patterns of
/// times. Without brackets at least one must be a unit that is not "-".
bool isUnitRow(const std::vector<std::string_view>& cells);

std::string_view withoutBrackets(std::string_view text);

/// Gives names to columns without one ("Column 3") and a number to those that come twice ("a (2)").
void nameColumns(std::vector<ColumnHeading>& columns);

}  // namespace core

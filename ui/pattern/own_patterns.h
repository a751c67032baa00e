// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <vector>

#include "core/plan/pattern.h"
#include "core/units/result.h"

// The patterns that the user saved, kept for all documents beside the other things the program remembers.

namespace ui {

inline constexpr std::size_t mostOwnPatterns = 100;
inline constexpr int longestPatternName = 60;
/// What a spin box can show.
inline constexpr std::uint32_t greatestSeed = 0x7fffffff;

/// In the order they were saved in.
std::vector<core::Pattern> ownPatterns();
/// Saves `pattern` under its name; one of that name is replaced in its place. Fails when the name is empty,
/// too long, or that of a usual pattern, when there are too many, and when it cannot be written.
core::Result<void> saveOwnPattern(const core::Pattern& pattern);
void removeOwnPattern(const std::string& name);

/// An array of objects: name, course, sides, zero_between_steps, repeats, seed.
QByteArray patternsToJson(const std::vector<core::Pattern>& patterns);
/// Those that can be read; the file is the user's to edit, and one bad entry does not hide the others.
std::vector<core::Pattern> patternsFromJson(const QByteArray& json);

}  // namespace ui

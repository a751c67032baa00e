// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <stop_token>

#include "core/recording/layout.h"
#include "core/recording/recording.h"
#include "core/recording/text/text_limits.h"
#include "core/units/progress.h"
#include "core/units/result.h"

namespace core {

/// How a text file is read: in pieces of whole lines, by several threads. The result depends on neither.
struct TextReading {
  std::size_t pieceBytes = 1UL << 20U;
  unsigned threads = 0;  ///< 0: as many as there are cores, at most four
};

/// What lookAt (core/recording/reader.h) does with text: values separated by comma, semicolon, tab or blanks,
/// with decimal point or comma, in UTF-8, UTF-16 or Latin-1, any line end.
Result<Preview> lookAtText(const std::filesystem::path& path, const LayoutChoices& choices = {},
                           const std::stop_token& stop = {});

/// Reads a table of numbers over time, laid out as lookAtText tells.
///
/// No number is made up. A row with the wrong number of cells, without a time, with a time before the one
/// above, or without any number is skipped as a whole, counted and named; where the time comes from a rate it
/// keeps its place. Any other cell without a number is missing: NaN, counted and named. Columns of words are
/// left out, and so are those without a single number. Equal times are taken. Absolute times count from the
/// first sample. Quoted cells may hold separators but no line ends.
Result<Recording> readText(const std::filesystem::path& path, const LayoutChoices& choices = {},
                           const std::stop_token& stop = {}, const Progress& progress = {},
                           const TextReading& how = {});

}  // namespace core

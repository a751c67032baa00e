// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <stop_token>
#include <string>
#include <string_view>

#include "core/recording/recording.h"
#include "core/units/progress.h"
#include "core/units/result.h"

namespace core {

constexpr std::size_t longestLine = 64 * 1024;                  ///< bytes; a longer line is skipped
constexpr std::size_t greatestColumns = 4096;                   ///< a table with more is refused
constexpr std::size_t greatestFileSize = 1024UL * 1024 * 1024;  ///< bytes; a larger file is refused

/// Reads a table of numbers over time from text (UTF-8, or Latin-1 in names): values separated by comma,
/// semicolon, tab or blanks, decimal point or comma, any line end. Above the numbers may stand a preamble, a
/// row of names and a row of units, see text_heading.h; how the numbers are written is found from the rows
/// themselves.
///
/// The time is the column whose name or unit says so; else, when a preamble line gives a sample rate, the
/// sample number over the rate (a skipped row keeps its place in time); else the first column if it rises
/// throughout and its heading does not say otherwise. A file without time is refused.
/// No number is made up: a row with a bad cell, with too few or too many cells, or with a time before the
/// one above is skipped as a whole, counted and named. Equal times are taken.
/// Quoted cells may hold separators but no line ends. Clock times and dates are not read.
///
/// `fileName` is for messages. Fails on UTF-16 and binary data, on more than greatestColumns columns, without
/// time, without any row; with the error cancelled() soon after `stop` is requested.
Result<Recording> readDelimitedText(std::string_view bytes, const std::string& fileName,
                                    std::stop_token stop = {}, const Progress& progress = {});

/// As readDelimitedText, from a regular file of at most greatestFileSize bytes. A folder, pipe or device is
/// refused without waiting for it.
Result<Recording> readDelimitedFile(const std::filesystem::path& path, std::stop_token stop = {},
                                    const Progress& progress = {});

}  // namespace core

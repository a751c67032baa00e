// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <stop_token>

#include "core/recording/layout.h"
#include "core/recording/recording.h"
#include "core/units/progress.h"
#include "core/units/result.h"

// The one door to files of recordings: delimited text (text/), and WAV, NPY, MATLAB 4 to 7.3, HDF5 and
// universal file dataset 58 (binary/). What a file is shows in its content.
//
// Only regular files are opened; a folder, pipe or device is refused without waiting for it. A file that
// changes or ends while it is read is no crash: what was there is read, or the error says so. No number is
// made up; a row without a time is skipped, a cell without a number is NaN, all counted and the first ones
// named. Errors name the file. With `stop` requested work ends at once with cancelled().

namespace core {

/// Looks at the beginning of a file and guesses its layout, `choices` taken as given.
Result<Preview> lookAt(const std::filesystem::path& path, const LayoutChoices& choices = {},
                       const std::stop_token& stop = {});

/// Reads all of the file. Memory is a few pieces of the file and the numbers, many of which go to disk
/// (core/recording/samples.h).
Result<Recording> readRecording(const std::filesystem::path& path, const LayoutChoices& choices = {},
                                const std::stop_token& stop = {}, const Progress& progress = {});

}  // namespace core

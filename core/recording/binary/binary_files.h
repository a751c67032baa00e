// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <stop_token>
#include <string_view>

#include "core/recording/layout.h"
#include "core/recording/recording.h"
#include "core/units/progress.h"
#include "core/units/result.h"

// The recordings that are no text: WAV, NPY and universal file dataset 58 are read here; MATLAB and HDF5
// files by a process of its own (app/reader), because the libraries for them cannot be trusted with a foreign
// file.
//
// Records (samples of all channels at one time) are counted from 1 where text files have lines. Records that
// the file announces but does not hold are skipped ones. NaN and infinite numbers are missing cells.

namespace core {

/// How many bytes of a file binaryKindOf wants to see, fewer when the file is shorter.
constexpr std::size_t binaryKindBytes = 4096;

/// The kind by the marks at the beginning of a file; none for text and what is not known. Of MATLAB files 4
/// to 7 are FileKind::Mat; 7.3 is Hdf5, as which it is read.
std::optional<FileKind> binaryKindOf(std::string_view firstBytes);

/// What the file says of itself and its first records. `kind` is one that binaryKindOf gives. Of `choices`
/// those that belong to text alone are passed over.
Result<Preview> lookAtBinary(const std::filesystem::path& path, FileKind kind,
                             const LayoutChoices& choices = {}, const std::stop_token& stop = {});

/// Reads all of the file. Fails when neither the file nor `choices` tell the time.
Result<Recording> readBinary(const std::filesystem::path& path, FileKind kind,
                             const LayoutChoices& choices = {}, const std::stop_token& stop = {},
                             const Progress& progress = {});

}  // namespace core

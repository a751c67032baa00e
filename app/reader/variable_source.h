// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>

#include "core/recording/binary/reader_protocol.h"

namespace reader {

/// The variables of an open file.
class VariableSource {
 public:
  virtual ~VariableSource() = default;

  virtual const core::ReaderListing& listing() const = 0;
  /// How many numbers from `begin` on are best read at once.
  virtual std::size_t pieceAt(std::size_t variable, std::uint64_t begin) const = 0;
  /// Reads `count` numbers of a fit variable in the order of the file, at most those of pieceAt; false when
  /// the file does not have them.
  virtual bool read(std::size_t variable, std::uint64_t begin, std::size_t count, double* to) = 0;
};

/// Opens `path`, MATLAB 4 to 7; null when it is no such file. `fd` is the same file, to look at its bytes.
std::unique_ptr<VariableSource> openMat(const char* path, int fd);
/// Opens `path`, HDF5 or MATLAB 7.3; null when it is no such file.
std::unique_ptr<VariableSource> openHdf5(const char* path);

}  // namespace reader

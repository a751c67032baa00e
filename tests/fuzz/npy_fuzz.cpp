// SPDX-License-Identifier: GPL-3.0-or-later
// NumPy arrays.

#include "tests/fuzz/binary_recordings.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzz::readAsBinary(core::FileKind::Npy, fuzz::textOf(data, size));
  return 0;
}

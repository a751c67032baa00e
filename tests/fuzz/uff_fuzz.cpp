// SPDX-License-Identifier: GPL-3.0-or-later
// Universal files, data set 58.

#include "tests/fuzz/binary_recordings.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzz::readAsBinary(core::FileKind::Uff58, fuzz::textOf(data, size));
  return 0;
}

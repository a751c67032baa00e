// SPDX-License-Identifier: GPL-3.0-or-later
// What the reading process looks at in a MATLAB file before a library is let at it.

#include "app/reader/mat_elements.h"
#include "core/recording/binary/reader_protocol.h"
#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static fuzz::MemoryFile file;
  file.hold(fuzz::textOf(data, size));
  const auto elements = reader::matElements(file.descriptor());
  fuzz::must(elements.size() <= core::greatestReaderVariables + 1, "variables are counted");
  // A name cannot be longer than the head that is looked at.
  for (const reader::MatElement& element : elements)
    fuzz::must(element.name.size() <= 4096, "a name stands in the file");
  return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace reader {

/// A variable of a MATLAB file as its bytes are, before a library is let at it.
struct MatElement {
  std::string name;
  std::string fault;  ///< "is cut off by the end of the file"; empty when the sizes fit and the data unpack
};

/// All variables in the order of the file, up to the first whose end cannot be told. Compressed ones are
/// unpacked once with little memory: the library takes numbers from a damaged stream as they come. Source:
/// MAT-File Format, MATLAB documentation, levels 4 and 5; from memory.
std::vector<MatElement> matElements(int fd);

}  // namespace reader

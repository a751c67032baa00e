// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace reader {

/// Before the file is looked at: 2 GB of memory, 60 s of processor, no byte written to a file, no core dump,
/// few descriptors, no rights to gain, and an end with the program that started this. False when the system
/// refuses.
bool limitYourself();

/// Once the file is open: no further one can be opened, whatever a library is talked into.
bool openNoMore();

}  // namespace reader

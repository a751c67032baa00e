// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/binary/binary_files.h"
#include "tests/fuzz/recordings.h"

namespace fuzz {

/// Reads an input as a file of `kind`. Its first line holds the choices of the user, the rest is the file.
inline void readAsBinary(core::FileKind kind, std::string_view bytes) {
  static MemoryFile file;
  const core::LayoutChoices choices = choicesOff(bytes);
  file.hold(bytes);
  const auto preview = core::lookAtBinary(file.path(), kind, choices);
  if (preview) mustBeSound(*preview);
  const auto recording = core::readBinary(file.path(), kind, choices);
  if (!recording) return mustBeTold(recording.error());
  must(static_cast<bool>(preview), "what is read can be looked at");
  mustBeSound(*recording);
}

}  // namespace fuzz

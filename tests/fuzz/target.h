// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/mman.h>
#include <unistd.h>

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>

#include "core/units/result.h"
#include "core/units/text.h"

// What the fuzz targets share.

namespace fuzz {

/// Inputs are files of a corpus (replay.cpp), each of which is worth its time; else chance makes millions.
inline bool replayed = false;

/// Ends the program when what must hold of anything that was read does not hold: that is a finding.
inline void must(bool holds, const char* sentence) {
  if (holds) return;
  std::fprintf(stderr, "does not hold: %s\n", sentence);
  std::abort();
}

/// An error is fit for the person at the screen: a sentence, and all of it UTF-8, unless it quotes what was
/// `typed`, which may be none.
inline void mustBeTold(const core::Error& error, std::string_view typed = {}) {
  must(!error.what.empty(), "an error has a sentence");
  if (!core::firstInvalidUtf8(typed)) must(!core::firstInvalidUtf8(error.text()), "what is shown is UTF-8");
}

inline std::string_view textOf(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

/// Whether an input is one of `many` that costly work is done for; all of a corpus are. All bytes choose, and
/// not the size: inputs that are made of a chosen one are mostly of its size, and would nearly all be chosen.
inline bool isOneIn(std::size_t many, std::string_view input) {
  return replayed || std::hash<std::string_view>{}(input) % many == 0;
}

/// The first line of an input, taken off it: words that choose what is done with the rest.
inline std::string_view firstLineOff(std::string_view& input) {
  const std::size_t end = std::min(input.find('\n'), input.size());
  const std::string_view line = input.substr(0, end);
  input.remove_prefix(std::min(end + 1, input.size()));
  return line;
}

/// A file in memory that holds one input after the other.
class MemoryFile {
 public:
  MemoryFile() : m_descriptor(::memfd_create("input", MFD_CLOEXEC)) {
    must(m_descriptor >= 0, "there is memory for a file");
  }
  ~MemoryFile() { ::close(m_descriptor); }
  MemoryFile(const MemoryFile&) = delete;
  MemoryFile& operator=(const MemoryFile&) = delete;

  void hold(std::string_view bytes) {
    const bool held = ::ftruncate(m_descriptor, 0) == 0 && ::pwrite(m_descriptor, bytes.data(), bytes.size(),
                                                                    0) == static_cast<ssize_t>(bytes.size());
    must(held, "there is memory for the input");
  }
  int descriptor() const { return m_descriptor; }
  std::filesystem::path path() const { return "/proc/self/fd/" + std::to_string(m_descriptor); }

 private:
  int m_descriptor;
};

}  // namespace fuzz

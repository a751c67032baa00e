// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <stop_token>
#include <string>
#include <utility>

#include "core/units/result.h"

namespace core {

/// A regular file, open for reading until it goes out of scope. Folders, pipes and devices are refused
/// without waiting for them. Errors name the file and the cause the system gives.
class RegularFile {
 public:
  static Result<RegularFile> open(const std::filesystem::path& path);
  RegularFile(RegularFile&& other) noexcept
      : m_descriptor(std::exchange(other.m_descriptor, -1)),
        m_name(std::move(other.m_name)),
        m_size(other.m_size) {}
  RegularFile& operator=(RegularFile&& other) noexcept;
  ~RegularFile();

  const std::string& name() const { return m_name; }  ///< without the folder, clean UTF-8
  std::uint64_t size() const { return m_size; }       ///< bytes, when it was opened
  int descriptor() const { return m_descriptor; }     ///< for a process that is to read the file
  /// Up to `count` bytes from `offset` on. Fewer only at the end, also when the file was cut short since;
  /// nothing behind size(), so that what is appended while reading is left out. What the system refuses to
  /// read is an error and not the end.
  Result<std::size_t> read(std::uint64_t offset, char* to, std::size_t count) const;
  /// The same in a string, with room for no more than the file has: `count` may come from a damaged header.
  Result<std::string> read(std::uint64_t offset, std::size_t count) const;

  /// An error about this file.
  Error error(std::string what, std::string mend = {}) const {
    return {m_name, std::move(what), std::move(mend)};
  }

 private:
  RegularFile(int descriptor, std::string name) : m_descriptor(descriptor), m_name(std::move(name)) {}

  int m_descriptor = -1;
  std::string m_name;
  std::uint64_t m_size = 0;
};

/// One open file for all that read from it.
using SharedFile = std::shared_ptr<const RegularFile>;

/// All bytes of a regular file of at most `greatest` bytes; cancelled() soon after `stop` is requested.
Result<std::string> readRegularFile(const std::filesystem::path& path, std::size_t greatest,
                                    const std::stop_token& stop = {});

}  // namespace core

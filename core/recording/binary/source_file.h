// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

#include "core/units/result.h"

namespace core {

/// A regular file, open for reading at any place. Closes itself.
class SourceFile {
 public:
  /// Refuses folders, pipes and devices without waiting for them; the error says which.
  static Result<std::shared_ptr<const SourceFile>> open(const std::filesystem::path& path);

  ~SourceFile();
  SourceFile(const SourceFile&) = delete;
  SourceFile& operator=(const SourceFile&) = delete;

  /// The file's name without its folders, for messages.
  const std::string& name() const { return m_name; }
  int descriptor() const { return m_descriptor; }
  /// When it was opened, in bytes.
  std::uint64_t size() const { return m_size; }

  /// Up to `count` bytes from `offset` on into `to`; how many there were. Fewer than asked: the file ends, or
  /// the system refuses.
  std::size_t read(std::uint64_t offset, char* to, std::size_t count) const;
  std::string read(std::uint64_t offset, std::size_t count) const;

  Error error(std::string what, std::string mend = {}) const {
    return {m_name, std::move(what), std::move(mend)};
  }

 private:
  SourceFile(std::string name, int descriptor, std::uint64_t size)
      : m_name(std::move(name)), m_descriptor(descriptor), m_size(size) {}

  std::string m_name;
  int m_descriptor;
  std::uint64_t m_size;
};

using SourceFilePointer = std::shared_ptr<const SourceFile>;

}  // namespace core

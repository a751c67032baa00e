// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/recording/file_bytes.h"

namespace core {

/// Goes through a part of a file line by line with little memory. Of a line longer than longestScannedLine
/// the rest is passed over.
class LineScanner {
 public:
  LineScanner(const RegularFile& file, std::uint64_t begin, std::uint64_t end)
      : m_file(file), m_next(begin), m_end(end) {}

  /// False when there is no further line, or the file cannot be read: then fault() says why.
  bool next();
  /// Without its end; valid until next().
  std::string_view line() const { return m_line; }
  /// Where the line begins, and where the next one does.
  std::uint64_t lineOffset() const { return m_lineOffset; }
  std::uint64_t nextOffset() const { return m_next; }
  const std::optional<Error>& fault() const { return m_fault; }
  /// Goes on at another place.
  void moveTo(std::uint64_t offset);

 private:
  bool fill();

  const RegularFile& m_file;
  std::uint64_t m_next;  ///< in the file
  std::uint64_t m_end;
  std::uint64_t m_lineOffset = 0;
  std::string m_buffer;  ///< from m_next - m_used on
  std::size_t m_used = 0;
  std::string_view m_line;
  std::optional<Error> m_fault;
};

constexpr std::size_t longestScannedLine = 4096;

}  // namespace core

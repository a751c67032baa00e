// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace reader {

/// Bytes of a file in either order.
class MatBytes {
 public:
  MatBytes(std::string_view bytes, bool bigEndian) : m_bytes(bytes), m_bigEndian(bigEndian) {}

  bool holds(std::size_t offset, std::size_t count) const {
    return offset <= m_bytes.size() && count <= m_bytes.size() - offset;
  }
  std::uint32_t word(std::size_t offset) const {
    std::uint32_t word = 0;
    for (std::size_t k = 0; k < 4; ++k)
      word |= std::uint32_t{static_cast<unsigned char>(m_bytes[offset + k])}
              << (8 * (m_bigEndian ? 3 - k : k));
    return word;
  }
  std::string text(std::size_t offset, std::size_t count) const {
    return std::string(m_bytes.substr(offset, count));
  }

 private:
  std::string_view m_bytes;
  bool m_bigEndian;
};

/// Up to `count` bytes of an open file.
std::string bytesAt(int fd, std::uint64_t offset, std::size_t count);

}  // namespace reader

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/line_scanner.h"

#include <algorithm>
#include <utility>

namespace core {

bool LineScanner::fill() {
  constexpr std::size_t bufferBytes = 1UL << 18U;
  static_assert(bufferBytes > longestScannedLine);
  m_used = 0;
  m_buffer.clear();
  if (m_next >= m_end || m_fault) return false;
  auto bytes =
      m_file.read(m_next, static_cast<std::size_t>(std::min<std::uint64_t>(bufferBytes, m_end - m_next)));
  if (!bytes) {
    m_fault = bytes.error();
    return false;
  }
  m_buffer = std::move(*bytes);
  return !m_buffer.empty();
}

bool LineScanner::next() {
  if (m_used == m_buffer.size() && !fill()) return false;
  auto end = m_buffer.find('\n', m_used);
  if (end == std::string::npos) {
    // The line may go on behind the buffer.
    if (!fill()) return false;
    end = m_buffer.find('\n');
  }
  m_lineOffset = m_next;
  const std::size_t stop = std::min(end, m_buffer.size());
  m_line = std::string_view(m_buffer).substr(m_used, std::min(stop - m_used, longestScannedLine));
  if (!m_line.empty() && m_line.back() == '\r') m_line.remove_suffix(1);
  const std::size_t after = end == std::string::npos ? m_buffer.size() : end + 1;
  m_next += after - m_used;
  m_used = after;
  return true;
}

void LineScanner::moveTo(std::uint64_t offset) {
  m_next = offset;
  m_buffer.clear();
  m_used = 0;
}

}  // namespace core

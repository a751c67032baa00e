// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/pieces.h"

#include <algorithm>
#include <utility>

#include "core/recording/text/encoding.h"

namespace core {
namespace {

/// Behind the last line end in `text`, 0 when there is none.
std::size_t behindLastLine(std::string_view text, bool isEnd) {
  const std::size_t feed = text.rfind('\n');
  if (feed != std::string_view::npos) return feed + 1;
  std::size_t end = text.size();
  if (!isEnd && end > 0 && text[end - 1] == '\r') --end;
  const std::size_t carriage = text.substr(0, end).rfind('\r');
  return carriage == std::string_view::npos ? 0 : carriage + 1;
}

}  // namespace

std::size_t lineEndFrom(std::string_view text, std::size_t from, bool isEnd) {
  // A stretch at a time, or looking for a CR would read far beyond a LF that is near.
  constexpr std::size_t stretch = 512;
  std::size_t at = std::string_view::npos;
  for (std::size_t begin = from; begin < text.size() && at == std::string_view::npos; begin += stretch) {
    const std::string_view part = text.substr(begin, stretch);
    const std::size_t feed = part.find('\n'), carriage = part.substr(0, feed).find('\r');
    if (std::min(feed, carriage) != std::string_view::npos) at = begin + std::min(feed, carriage);
  }
  const bool isOpen = !isEnd && at + 1 == text.size() && text[at] == '\r';
  return isOpen ? std::string_view::npos : at;
}

PieceReader::PieceReader(const RegularFile& file, TextEncoding encoding, std::size_t pieceBytes,
                         std::stop_token stop)
    : m_file(file),
      m_encoding(encoding),
      m_pieceBytes(std::max<std::size_t>(pieceBytes, 2)),
      m_stop(std::move(stop)) {
  const auto mark = m_file.read(0, 4);
  if (mark) m_offset = byteOrderMark(*mark, m_encoding);
  if (!mark) m_fault = mark.error();
}

/// Appends the next bytes of the file to `text`; false at its end.
bool PieceReader::fill(std::string& text) {
  const bool isPlain = m_encoding == TextEncoding::Utf8;
  std::string& bytes = isPlain ? text : m_raw;
  const std::size_t before = bytes.size();
  // No more room than the file can fill: it is set to zero first.
  const std::uint64_t left = m_file.size() - std::min(m_offset, m_file.size());
  const auto room = static_cast<std::size_t>(std::min<std::uint64_t>(m_pieceBytes, left));
  bytes.resize(before + room);
  const auto got = m_file.read(m_offset, bytes.data() + before, room);
  if (!got) m_fault = got.error();
  const std::size_t count = got ? *got : 0;
  bytes.resize(before + count);
  m_offset += count;
  m_isEnd = count == 0;
  if (!isPlain) m_raw.erase(0, appendUtf8(m_raw, m_encoding, text));
  return !m_isEnd;
}

bool PieceReader::nextLines(TextPiece& piece) {
  std::string& text = piece.buffer;
  piece.beginsWithLongLine = false;
  text.swap(m_carry);
  m_carry.clear();
  while (true) {
    if (m_stop.stop_requested()) return false;
    if (!m_isEnd) fill(text);
    if (m_isInLongLine) {
      const std::size_t end = lineEndFrom(text, 0, m_isEnd);
      const bool open = end == std::string::npos;
      if (open && !m_isEnd) {
        // A CR at the end stays until it is known whether a LF follows.
        text.erase(0, text.size() - (text.ends_with('\r') ? 1 : 0));
        continue;
      }
      text.erase(0, open ? text.size() : behindLineEnd(text, end));
      piece.beginsWithLongLine = true;
      m_isInLongLine = false;
    }
    const std::size_t whole = m_isEnd ? text.size() : behindLastLine(text, m_isEnd);
    if (whole > 0 || m_isEnd) {
      m_carry.assign(text, whole);
      piece.size = whole;
      return whole > 0 || piece.beginsWithLongLine;
    }
    if (text.size() > longestLine + 1) {
      m_isInLongLine = true;
      text.erase(0, text.size() - (text.ends_with('\r') ? 1 : 0));
      if (piece.beginsWithLongLine) {
        m_carry.swap(text);
        piece.size = 0;
        return true;
      }
    }
  }
}

/// Takes lines off the beginning of `piece` while there are some to be left out.
void PieceReader::dropHeading(TextPiece& piece) {
  const std::size_t wanted = m_linesToLeaveOut - m_linesLeftOut;
  std::size_t dropped = 0, behind = 0;
  if (wanted > 0 && piece.beginsWithLongLine) {
    piece.beginsWithLongLine = false;
    ++dropped;
  }
  const std::string_view text = piece.text();
  while (dropped < wanted && behind < text.size()) {
    const std::size_t end = lineEndFrom(text, behind, true);
    behind = end == std::string_view::npos ? text.size() : behindLineEnd(text, end);
    ++dropped;
  }
  piece.buffer.erase(0, behind);
  piece.size -= behind;
  m_linesLeftOut += dropped;
}

bool PieceReader::next(TextPiece& piece) {
  do {
    piece.buffer.clear();
    piece.size = 0;
    if (m_fault || !nextLines(piece) || m_fault) return false;
    if (m_linesLeftOut < m_linesToLeaveOut) dropHeading(piece);
  } while (piece.size == 0 && !piece.beginsWithLongLine);
  piece.index = m_pieces++;
  piece.share = m_file.size() == 0 ? 1 : static_cast<double>(m_offset) / static_cast<double>(m_file.size());
  piece.buffer.resize(piece.size);
  piece.buffer += '\n';
  piece.buffer.append(padding, '\0');
  return true;
}

}  // namespace core

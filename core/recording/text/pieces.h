// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>

#include "core/recording/file_bytes.h"
#include "core/recording/layout.h"
#include "core/recording/text/text_limits.h"
#include "core/units/result.h"

// A text file a piece at a time, so that it never stands in memory as a whole.

namespace core {

/// Bytes that may be read behind the end of a piece's text.
constexpr std::size_t padding = 64;

/// Where the line that begins at `from` ends: the place of its CR or LF, or npos. A CR at the very end does
/// not count unless `isEnd`, since a LF may follow that belongs to it.
std::size_t lineEndFrom(std::string_view text, std::size_t from, bool isEnd);

/// Behind the line end at `at`: CR, LF and CRLF each end a line.
inline std::size_t behindLineEnd(std::string_view text, std::size_t at) {
  return at + (text[at] == '\r' && at + 1 < text.size() && text[at + 1] == '\n' ? 2 : 1);
}

/// Whole lines of a file.
struct TextPiece {
  std::size_t index = 0;            ///< counted from 0
  bool beginsWithLongLine = false;  ///< a line before `text` was longer than longestLine and is left out
  std::size_t size = 0;             ///< of the text in `buffer`; behind it stand a line end and zeros
  std::string buffer;
  double share = 0;  ///< of the file that has been given out with this piece

  std::string_view text() const { return {buffer.data(), size}; }
};

/// Gives out the lines of a file in order, as UTF-8.
class PieceReader {
 public:
  /// Begins behind the byte order mark. `file` must outlive it. With `stop` requested next() finds nothing
  /// more.
  PieceReader(const RegularFile& file, TextEncoding encoding, std::size_t pieceBytes, std::stop_token stop);

  /// The next lines, of about `pieceBytes`; false at the end of the file or after a fault. A file that ends
  /// early, because someone cut it while it was read, ends here too.
  bool next(TextPiece& piece);
  /// Leaves out that many lines; to be called first.
  void leaveOut(std::size_t lines) { m_linesToLeaveOut = lines; }
  std::size_t leftOut() const { return m_linesLeftOut; }
  const std::optional<Error>& fault() const { return m_fault; }

 private:
  bool fill(std::string& text);
  bool nextLines(TextPiece& piece);
  void dropHeading(TextPiece& piece);

  const RegularFile& m_file;
  TextEncoding m_encoding;
  std::size_t m_pieceBytes;
  std::stop_token m_stop;
  std::uint64_t m_offset = 0;
  std::string m_raw;    ///< bytes not yet turned into UTF-8
  std::string m_carry;  ///< the beginning of a line whose end is not yet read
  bool m_isEnd = false;
  bool m_isInLongLine = false;
  std::size_t m_pieces = 0;
  std::size_t m_linesToLeaveOut = 0;
  std::size_t m_linesLeftOut = 0;
  std::optional<Error> m_fault;
};

}  // namespace core

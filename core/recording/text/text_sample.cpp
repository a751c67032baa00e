// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/text_sample.h"

#include <algorithm>
#include <array>

#include "core/recording/text/encoding.h"
#include "core/recording/text/pieces.h"
#include "core/units/language.h"
#include "core/units/progress.h"

namespace core {
namespace {

constexpr std::size_t bytesForEncoding = std::size_t{64} * 1024;
constexpr std::size_t bytesPerPiece = std::size_t{128} * 1024;
constexpr std::size_t bytesWanted = std::size_t{512} * 1024;    ///< of the beginning, when lines are short
constexpr std::size_t bytesFartherOn = std::size_t{32} * 1024;  ///< at each place
constexpr std::size_t greatestBeginning = 64UL << 20;           ///< bytes kept to reach a first row far down

void appendLines(std::string_view text, std::vector<std::string_view>& lines) {
  std::size_t begin = 0;
  while (begin < text.size()) {
    const std::size_t end = std::min(lineEndFrom(text, begin, true), text.size());
    const std::string_view line = text.substr(begin, end - begin);
    lines.push_back(line.size() > longestLine ? std::string_view() : line);
    begin = end < text.size() ? behindLineEnd(text, end) : end;
  }
}

/// Whole lines around `offset`: those behind the first line end there.
Result<void> addFarther(const RegularFile& file, std::uint64_t offset, TextSample& sample) {
  const auto bytes = file.read(offset, bytesFartherOn);
  if (!bytes) return bytes.error();
  std::string text;
  appendUtf8(*bytes, sample.encoding, text);
  const std::size_t first = lineEndFrom(text, 0, false);
  if (first == std::string::npos) return {};
  const std::size_t begin = behindLineEnd(text, first);
  const std::size_t last = text.find_last_of("\r\n");
  sample.texts.push_back(text.substr(begin, std::max(last, begin) - begin));
  appendLines(sample.texts.back(), sample.farther);
  return {};
}

Result<TextEncoding> encodingIn(const RegularFile& file) {
  const auto bytes = file.read(0, bytesForEncoding);
  if (!bytes) return bytes.error();
  const TextEncoding encoding = encodingOf(*bytes);
  if (!isUtf16(encoding) && bytes->find('\0') != std::string::npos)
    return file.error(say("the file holds NUL bytes, so it is binary data and not plain text"),
                      say("Export the recording as text (UTF-8)"));
  return encoding;
}

}  // namespace

Result<TextSample> sampleOf(const RegularFile& file, const LayoutChoices& choices, std::size_t fewestLines,
                            const std::stop_token& stop) {
  TextSample sample;
  const auto encoding = encodingIn(file);
  if (!encoding && !choices.encoding) return encoding.error();
  sample.encoding = choices.encoding ? *choices.encoding : *encoding;
  PieceReader reader(file, sample.encoding, bytesPerPiece, stop);
  TextPiece piece;
  std::size_t bytes = 0;
  while (bytes < greatestBeginning && (sample.lines.size() < fewestLines || bytes < bytesWanted)) {
    if (stop.stop_requested()) return cancelled();
    if (!reader.next(piece)) {
      if (reader.fault()) return *reader.fault();
      if (stop.stop_requested()) return cancelled();
      sample.isWhole = true;
      return sample;
    }
    if (piece.beginsWithLongLine) sample.lines.emplace_back();
    sample.texts.push_back(std::move(piece.buffer));
    appendLines(std::string_view(sample.texts.back()).substr(0, piece.size), sample.lines);
    bytes += piece.size;
  }
  const auto behind = static_cast<std::uint64_t>(piece.share * static_cast<double>(file.size()));
  for (const std::uint64_t place :
       {file.size() / 2, file.size() - std::min<std::uint64_t>(file.size(), bytesFartherOn)}) {
    if (place < behind) continue;
    const auto added = addFarther(file, place / 4 * 4, sample);
    if (!added) return added.error();
  }
  return sample;
}

TextSample sampleOfText(std::string text) {
  TextSample sample;
  sample.texts.push_back(std::move(text));
  appendLines(sample.texts.back(), sample.lines);
  sample.isWhole = true;
  return sample;
}

}  // namespace core

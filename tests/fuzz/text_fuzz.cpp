// SPDX-License-Identifier: GPL-3.0-or-later
// Recordings of delimited text. The first line of an input holds the choices of the user, the rest is the
// file.

#include <array>
#include <bit>

#include "core/recording/text/delimited_text.h"
#include "tests/fuzz/recordings.h"

namespace {

using fuzz::must;

bool isSame(const core::Recording& a, const core::Recording& b) {
  const auto isSameColumn = [](const core::Column& one, const core::Column& other) {
    return one.name == other.name &&
           std::equal(one.values.begin(), one.values.end(), other.values.begin(), other.values.end(),
                      [](double x, double y) {
                        return std::bit_cast<std::uint64_t>(x) == std::bit_cast<std::uint64_t>(y);
                      });
  };
  return a.linesRead == b.linesRead && a.linesSkipped == b.linesSkipped && a.cellsMissing == b.cellsMissing &&
         std::equal(a.columns.begin(), a.columns.end(), b.columns.begin(), b.columns.end(), isSameColumn);
}

/// A format for those that shall not be guessed.
core::LayoutChoices withFormat(core::LayoutChoices choices, std::size_t lot) {
  constexpr std::array separators = {'\t', ';', ',', ' '};
  if (!choices.separator && choices.decimal != ',')
    choices.separator = separators[lot / 8 % separators.size()];
  if (!choices.decimal) choices.decimal = lot / 32 % 2 == 0 || choices.separator == ',' ? '.' : ',';
  return choices;
}

void readIn(const std::filesystem::path& path, const core::LayoutChoices& choices, bool inEachWay) {
  const auto recording = core::readText(path, choices, {}, {}, {.pieceBytes = 4096, .threads = 1});
  if (recording)
    fuzz::mustBeSound(*recording);
  else
    fuzz::mustBeTold(recording.error());
  if (!inEachWay) return;
  const auto preview = core::lookAtText(path, choices);
  if (preview) fuzz::mustBeSound(*preview);
  must(preview || !recording, "what is read can be looked at");
  const auto inPieces = core::readText(path, choices, {}, {}, {.pieceBytes = 64, .threads = 1});
  must(static_cast<bool>(recording) == static_cast<bool>(inPieces), "pieces change nothing");
  if (recording) must(isSame(*recording, *inPieces), "pieces change no number");
}

}  // namespace

// To guess the format is to try ten of them, and to read in each way is to guess three times, which takes
// most of the time: made inputs have each in their turn, those that are kept have all.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static fuzz::MemoryFile file;
  std::string_view bytes = fuzz::textOf(data, size);
  const core::LayoutChoices choices = fuzz::choicesOff(bytes);
  file.hold(bytes);
  const bool guessed = size % 8 == 1, inEachWay = size % 4 == 0;
  if (fuzz::replayed || guessed) readIn(file.path(), choices, fuzz::replayed);
  if (fuzz::replayed || !guessed) readIn(file.path(), withFormat(choices, size), fuzz::replayed || inEachWay);
  return 0;
}

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

/// To guess the format is to try ten of them, which takes most of the time: most inputs have one chosen.
void chooseFormat(std::size_t lot, core::LayoutChoices& choices) {
  constexpr std::array separators = {'\t', ';', ',', ' '};
  if (!choices.separator && choices.decimal != ',')
    choices.separator = separators[lot / 8 % separators.size()];
  if (!choices.decimal) choices.decimal = lot / 32 % 2 == 0 || choices.separator == ',' ? '.' : ',';
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static fuzz::MemoryFile file;
  std::string_view bytes = fuzz::textOf(data, size);
  core::LayoutChoices choices = fuzz::choicesOff(bytes);
  if (size % 8 != 0) chooseFormat(size, choices);
  file.hold(bytes);
  const auto recording = core::readText(file.path(), choices, {}, {}, {.pieceBytes = 4096, .threads = 1});
  if (recording)
    fuzz::mustBeSound(*recording);
  else
    fuzz::mustBeTold(recording.error());
  // Nor is every input read three times.
  if (size % 4 != 0) return 0;
  const auto preview = core::lookAtText(file.path(), choices);
  if (preview) fuzz::mustBeSound(*preview);
  must(preview || !recording, "what is read can be looked at");
  const auto inPieces = core::readText(file.path(), choices, {}, {}, {.pieceBytes = 64, .threads = 1});
  must(static_cast<bool>(recording) == static_cast<bool>(inPieces), "pieces change nothing");
  if (recording) must(isSame(*recording, *inPieces), "pieces change no number");
  return 0;
}

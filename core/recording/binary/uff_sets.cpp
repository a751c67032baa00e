// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/uff_sets.h"

#include <algorithm>

#include "core/recording/binary/binary_table.h"
#include "core/recording/binary/line_scanner.h"
#include "core/recording/characters.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr std::size_t linesBetweenLooks = 4096;

/// The line that opens and closes a data set.
bool isFence(std::string_view line) { return line.size() < 12 && trimmed(line) == "-1"; }

/// Past lines up to and with the next fence. Its offset, or the end of the file.
std::uint64_t passFence(LineScanner& lines, const RegularFile& file, const std::stop_token& stop) {
  for (std::size_t k = 1; lines.next(); ++k) {
    if (isFence(lines.line())) return lines.lineOffset();
    if (k % linesBetweenLooks == 0 && stop.stop_requested()) break;
  }
  return file.size();
}

std::uint64_t bytesOfNumbers(const Uff58Heading& heading, std::uint64_t left) {
  if (heading.binaryBytes > 0) return std::min(heading.binaryBytes, left);
  const std::uint64_t each = (heading.isDouble() ? 8U : 4U) + (heading.even ? 0U : 4U);
  return heading.count > left / each ? left : heading.count * each;
}

std::string named(const UffSets& sets) {
  return "Function " + std::to_string(sets.functions.size() + sets.broken.size() + 1);
}

/// Reads a data set 58; the scanner stands behind the line with its number.
void addFunction(LineScanner& lines, const RegularFile& file, std::string_view marker, UffSets& sets,
                 const std::stop_token& stop) {
  std::array<std::string, uff58HeadingLines> text;
  for (std::string& line : text) {
    if (!lines.next()) {
      sets.broken.push_back(say("{1} is left out: the file ends in its heading.", {named(sets)}));
      return;
    }
    line = lines.line();
  }
  const auto heading = uff58Heading(marker, text);
  if (!heading) {
    sets.broken.push_back(say("{1} is left out: its heading cannot be read.", {named(sets)}));
    passFence(lines, file, stop);
    return;
  }
  Uff58Set set{*heading, lines.nextOffset(), 0};
  if (heading->form == Uff58Form::Text) {
    set.end = passFence(lines, file, stop);
  } else {
    set.end = set.begin + bytesOfNumbers(*heading, file.size() - std::min(file.size(), set.begin));
    lines.moveTo(set.end);
    passFence(lines, file, stop);
  }
  sets.functions.push_back(std::move(set));
}

bool isFunction(std::string_view marker) {
  const std::string_view number = trimmed(marker.substr(0, 7));
  return number == "58" || number == "58b" || number == "58B";
}

}  // namespace

Result<UffSets> uffSets(const RegularFile& file, const std::stop_token& stop) {
  UffSets sets;
  LineScanner lines(file, 0, file.size());
  while (passFence(lines, file, stop) < file.size() && lines.next()) {
    if (stop.stop_requested()) return cancelled();
    const std::string marker(lines.line());
    if (isFence(marker)) continue;
    if (!isFunction(marker)) {
      ++sets.others;
      passFence(lines, file, stop);
      continue;
    }
    if (sets.functions.size() + sets.broken.size() == greatestBinaryColumns)
      return file.error(say("it holds more than {1} functions", {std::to_string(greatestBinaryColumns)}),
                        say("Export fewer channels"));
    addFunction(lines, file, marker, sets, stop);
  }
  if (stop.stop_requested()) return cancelled();
  if (lines.fault()) return *lines.fault();
  return sets;
}

}  // namespace core

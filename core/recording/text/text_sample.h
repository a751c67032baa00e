// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

#include "core/recording/file_bytes.h"
#include "core/recording/layout.h"
#include "core/units/result.h"

namespace core {

/// Lines of a file that its layout is guessed from. Lines that are too long are empty here
/// and point nowhere (isLeftOut).
struct TextSample {
  TextEncoding encoding = TextEncoding::Utf8;
  std::deque<std::string> texts;          ///< what the lines point into
  std::vector<std::string_view> lines;    ///< from line 1 on
  std::vector<std::string_view> farther;  ///< whole lines from the middle and the end, in order
  bool isWhole = false;                   ///< `lines` are all lines of the file
};

inline bool isLeftOut(std::string_view line) { return line.data() == nullptr; }

/// At least `fewestLines` from the beginning, when there are as many, and some from farther on. Refuses a
/// file with zero bytes that is no UTF-16.
Result<TextSample> sampleOf(const RegularFile& file, const LayoutChoices& choices, std::size_t fewestLines,
                            const std::stop_token& stop);

/// The lines of a text in memory, as a sample.
TextSample sampleOfText(std::string text);

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stop_token>
#include <string>
#include <vector>

#include "core/recording/file_bytes.h"
#include "core/recording/layout.h"
#include "core/recording/text/row_block.h"
#include "core/recording/text/text_sample.h"
#include "core/units/result.h"

namespace core {

/// All that is known of a text file before it is read.
struct TextGuess {
  Layout layout;
  RowPlan plan;
  std::optional<int> ahead_min;  ///< of the clock of absolute times
  std::string rateSource;        ///< in words, where the time comes from a rate
  std::vector<std::string> doubts;
  std::vector<std::string> leftOut;
  TextSample sample;
};

/// Guesses the layout from the beginning of a file and a look farther on, `choices` taken as given. Fails
/// with the word of a choice that cannot be right, as documents write it ("time=9"), and what may stand
/// there.
Result<TextGuess> guessText(const RegularFile& file, const LayoutChoices& choices,
                            const std::stop_token& stop);

}  // namespace core

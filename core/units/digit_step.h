// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace core {

// Steps of a number that stands in a text, digit by digit, exactly in decimal: 0.1 and 2 steps of the last
// digit give 0.3. The text is UTF-8; positions are bytes. Only the digits change, and the sign: mark, unit,
// exponent and what else stands there stay. The letter of IEC 60062 is a mark like any other ("4k7" and one
// step: "4k8").

/// The digit that the cursor stands right of, counted from the number's last one, which is 0. With the cursor
/// further right it is the last digit, further left the first. None when the text holds no number that can be
/// stepped: it begins with none, or it has more than 18 digits.
std::optional<int> digitAt(std::string_view text, std::size_t cursor);

struct SteppedText {
  std::string text;
  std::size_t cursor = 0;  ///< right of the stepped digit; before the number when it has no longer that many
};

/// `text` with `steps` added to digit number `digit`. Digits behind the mark stay as many, the number is
/// never written "-0". None as above, or when more than 18 digits would be needed.
std::optional<SteppedText> stepped(std::string_view text, int digit, long long steps);

}  // namespace core

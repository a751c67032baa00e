// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string_view>

namespace core {

enum class Verdict : std::uint8_t {
  Pass,
  Fail,
  CannotTell,  ///< judged, but the uncertainty is too large for the rule to decide
  NotJudged,   ///< something needed is missing or wrong
};

/// "pass", "fail", "cannot tell", "not judged".
std::string_view verdictWord(Verdict verdict);

}  // namespace core

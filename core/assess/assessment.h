// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/assess/check.h"
#include "core/line/line.h"
#include "core/plan/prediction.h"

namespace core {

enum class Verdict : std::uint8_t { Pass, Fail, NotJudged };

/// "pass", "fail", "not judged".
std::string_view verdictWord(Verdict verdict);

/// One step of a check against its prediction.
struct StepAssessment {
  Verdict verdict = Verdict::NotJudged;
  std::optional<Reading> change;     ///< measured reading less the zero reference
  std::optional<Reading> deviation;  ///< `change` less the expected reading
  std::optional<Reading> limit;      ///< greatest deviation that passes
  std::string reason;                ///< one sentence with its numbers
};

/// A whole check against its prediction.
struct CheckAssessment {
  std::vector<StepAssessment> steps;
  std::optional<std::size_t>
      zeroStep;  ///< the step that was taken as zero reference, none without a zero reading
  std::optional<Reading> zeroReturn;  ///< last zero reading less the first; none with fewer than two
  Reading zeroReturnLimit;
  Result<Line> line = Error{};  ///< measured change against simulated value, both in their units
  Verdict verdict = Verdict::NotJudged;
  std::string reason;  ///< the verdict in words a reviewer can quote
};

/// Judges `check` by simple acceptance: a step passes when the deviation is finite and not beyond the
/// larger of `limits.relative` times the expected reading and `limits.least`; a zero step after the
/// first by `limits.zeroReturn` times the greatest expected reading, never narrower than `least`.
/// The first zero step that has a reading is the zero reference. A check passes when every step has
/// been judged and passes; it fails when one fails; otherwise it is not judged, with the reason.
/// It says something about the electrical chain only, never about gauge factor, bond or alignment.
CheckAssessment assess(const Setup& setup, const SetupPrediction& prediction, const Check& check);

}  // namespace core

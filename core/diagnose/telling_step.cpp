// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/telling_step.h"

namespace core {

std::optional<TellingStep> tellingStep(const DiagnosisGround&, const Refit&, const Refit&) {
  return std::nullopt;
}

}  // namespace core

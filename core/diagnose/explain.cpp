// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/explain.h"

namespace core {

void describe(const DiagnosisGround&, const Budget&, const Refit& refit, Explanation& explanation) {
  explanation.title = std::string(causeKindKey(refit.fault.kind));
}

}  // namespace core

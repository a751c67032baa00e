// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/explain.h"

#include "core/diagnose/cause_words.h"
#include "core/diagnose/check_times.h"
#include "core/diagnose/correction.h"

namespace core {

void describe(const DiagnosisGround& ground, const Budget& budget, const Refit& refit,
              Explanation& explanation) {
  const Setup& setup = ground.setup;
  const Fault& fault = refit.fault;
  const double lasted = lasted_s(setup, ground.check, ground.points.steps);
  explanation.title = causeTitle(setup, fault);
  explanation.sizeText = sizeWords(setup, fault, refit.standard, lasted);
  explanation.settings = settingWords(setup, fault, refit.standard);
  explanation.confirm = confirmWords(setup, fault, lasted);
  explanation.correction = correctionOf(ground, budget, refit);
  explanation.onStrain = strainWords(setup, fault, refit.standard, explanation.correction);
}

}  // namespace core

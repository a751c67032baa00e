// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diagnose/diagnosis.h"

namespace ui {

/// A diagnosis with what its explanations were held against.
struct DiagnosisOutcome {
  core::Diagnosis diagnosis;
  core::CheckPoints points;
};

}  // namespace ui

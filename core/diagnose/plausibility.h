// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diagnose/refit.h"

namespace core {

/// What is believed of causes before the readings are looked at: how often a kind is met, and how its sizes
/// are spread. Common practice, no source; near enough to decide between causes that the readings tell apart
/// badly, and far too vague to matter where they do tell them apart.
struct Plausibility {
  /// How ordinary a fault of this kind and size is, 0 to 1: how often its kind is met times how usual its
  /// size is beside the smallest of its kind.
  double ordinary = 0;
  /// -2 ln of the prior probability that this kind has a size as near to the fitted one as the readings can
  /// tell (Laplace's approximation of the marginal likelihood: prior density x standard uncertainty x
  /// sqrt(2 pi)). A cause whose size is free pays for that freedom; one that foretells the readings does not.
  double cost = 0;
};
Plausibility plausibilityOf(const DiagnosisGround& ground, const Refit& refit);

}  // namespace core

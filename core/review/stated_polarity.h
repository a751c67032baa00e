// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <string_view>

#include "core/plan/prediction.h"

// What a label says of a polarity. Internal to core/review.

namespace core {

/// The polarity that `text` says; None when it says none or contradicts itself.
///
/// A sign says it in front of a number, at the start, or alone at an end or in brackets: "+2", "R1 -1000",
/// "-R1", "R1 (+)". Else the words plus, minus, positive, negative; else tension, tensile, compression,
/// compressive; else up, down: "+2, coming down" is positive. A hyphen inside a word is no sign ("TP-01"),
/// neither is one between words, and "on the compression gauge" names a place.
Polarity statedPolarity(std::string_view text);

/// Whether `text` says its polarity by a word for a load, so that what is simulated must have it and not the
/// reading: "compression".
bool statesLoad(std::string_view text);

/// What must be said of a prediction: the polarity of what it simulates by a word for a load, else that of
/// its reading. The two differ with reversed wires or gauges.
Polarity polarityByWord(bool byLoad, const Prediction& prediction);
inline Polarity polarityToSay(std::string_view text, const Prediction& prediction) {
  return polarityByWord(statesLoad(text), prediction);
}

/// `text` with everything turned round that says `wrong`.
std::string withPolarityTurned(std::string_view text, Polarity wrong);

}  // namespace core

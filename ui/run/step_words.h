// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "core/assess/assessment.h"
#include "core/plan/prediction.h"

namespace ui {

// What is to be done at a step, in words for the person at the bridge. Names are foreign text: to be shown
// as plain text.

/// "S-104 on arm 2", "R1 positive (S-104) from S- to P-"; the place or the part is left out when the name
/// says it already.
QString shuntWords(const core::Shunt& shunt);

/// What takes the bridge from one step to the next: "Open S-102 on arm 2", "Close S-104 on arm 2", "Lay J1-C
/// to J2-A for S-104 on arm 2". A shunt with jumpers is switched by them, with the excitation off. `from`
/// null: nothing is known, and all shunts are to be open first.
QStringList actionsBetween(const core::Setup& setup, const core::Step* from, const core::Step& to);
/// What opens everything that is closed at `closed`; null: everything is to be seen to.
QStringList actionsToOpenAll(const core::Setup& setup, const core::Step* closed);
/// "Closed at this step, and nothing else: S-104 on arm 2.", "All shunts are open at this step."
QString stateWords(const core::Setup& setup, const core::Step& step);

/// "5 V", "a constant current of 10 mA".
QString excitationWords(const core::Instrument& instrument);

/// The greatest deviation that passes at each step, before there is a reading; none where a step cannot be
/// judged.
std::vector<std::optional<core::Reading>> limitsOf(const core::Setup& setup,
                                                   const core::SetupPrediction& prediction,
                                                   const core::Budget& budget);
/// Decimals that show about six digits of the greatest expected reading.
int readingDecimals(const core::SetupPrediction& prediction);

/// "✓", "✗", "?", "–": the sign that stands beside the word.
QString verdictSign(core::Verdict verdict);

/// What a note says when a reading is taken once more: the former reading is kept.
std::string noteOfRedone(const core::Measured& former, const core::Instrument& instrument,
                         const std::string& note);
/// The remark of a check with one more sentence about a step that has no reading to keep it.
std::string remarkWithNote(const std::string& remark, std::size_t step, const std::string& note);

}  // namespace ui

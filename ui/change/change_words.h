// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/compare/difference.h"
#include "ui/theme.h"

// A change in the user's words and notation.

namespace ui {

/// As the marks in the pictures look: "●", "◆", "▲", "□", "–".
QString changeSign(core::Change change);
QString changeWord(core::Change change);
/// "▲ changed": sign and word.
QString changeText(core::Change change);
QColor colourOf(const Colours& colours, core::Change change);

/// In what a difference is shown: its value times `factor`, with `unit` behind it.
struct ShownUnit {
  double factor = 1;
  QString unit;
};

/// "+1.23", with a sign in any case but zero.
QString signedText(double value, int significantDigits);
/// "0.034", "< 0.001".
QString probabilityText(double probability);
/// The whole of a difference in one sentence: what it comes to, value, interval, margin.
QString differenceSentence(const core::Difference& difference, const ShownUnit& in);

}  // namespace ui

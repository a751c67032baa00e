// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QDate>
#include <QPalette>
#include <QString>

#include "core/assess/assessment.h"
#include "core/units/date.h"

namespace ui {

/// The colours that mean something, for the light or dark palette in use. Taken from the
/// colour-blind-safe set of Okabe and Ito (2008), darkened or lightened to read on the background.
/// A colour is never the only sign: polarity has a word and a sign, a verdict has a word.
struct Colours {
  bool dark = false;
  QColor background, text, quiet, grid;      ///< quiet: secondary text; grid: lines behind data
  QColor frame;                              ///< around what can be worked with: 3 to 1 on window and field
  QColor positive, negative;                 ///< polarity
  QColor pass, fail, cannotTell, notJudged;  ///< verdict
  QColor measured, compared, fitted, band;   ///< chart: chosen check, other check, line, tolerance
  QColor selected;                           ///< ring around what belongs to the chosen step
};

bool isDark(const QPalette& palette);
Colours coloursFor(const QPalette& palette);
QColor colourOf(const Colours& colours, core::Verdict verdict);
QColor colourOf(const Colours& colours, core::Polarity polarity);

/// "+ positive", "− negative", "none".
QString polarityText(core::Polarity polarity);

/// A light or dark palette for the whole program; used where the desktop offers none of its own.
QPalette lightPalette();
QPalette darkPalette();

/// core::Error as one line for a label or message box, never interpreted as markup.
QString toText(const core::Error& error);
QString toQString(std::string_view text);
core::Date toDate(const QDate& day);

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QString>
#include <QStringView>
#include <cstdint>
#include <vector>

// Text on paper. Lengths are in dots of 1/1200 inch, so that letters have a whole number of them; a painter
// is scaled to its device. Any thread.

namespace ui {

inline constexpr double dotsPerInch = 1200;  ///< 96 would put letters on a coarse grid
inline constexpr double dotsPerPoint = dotsPerInch / 72;
inline constexpr double dotsPerMm = dotsPerInch / 25.4;

enum class Look : std::uint8_t { Title, Chapter, Heading, Body, Bold, Cell, CellBold, Fine, FineBold, Frame };
inline constexpr std::size_t lookCount = 10;

const QFont& fontOf(Look look);
double lineHeight(Look look);
/// From the top of a line to its baseline.
double ascent(Look look);
/// Without ligatures and kerning, which would hide "off" from a search and tie letters to their neighbours.
double widthOf(QStringView text, Look look);
/// The width of the longest part that no line may end in.
double longestWord(const QString& text, Look look);

struct TextLine {
  QString text;
  double width = 0;
};

/// `text` in lines of at most `width`; what has no place to break is broken between letters.
std::vector<TextLine> linesOf(const QString& text, Look look, double width);

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "ui/outcome/chart_options.h"
#include "ui/outcome/shown_outcome.h"
#include "ui/picture_file.h"

// The outcome outside the window: as picture with its heading, in light colours, and as data.

namespace ui {

/// What stands above the charts; plain text.
struct OutcomeHeading {
  QString title;    ///< of the document, or what this is
  QString subject;  ///< "Channel TP-01, pre-test, 2026-03-02"
  QString verdict;  ///< in words
  QString scope;    ///< what a verdict does not cover; empty without one
  core::Verdict is = core::Verdict::NotJudged;
};

OutcomeHeading headingOf(const Session& session, const ShownOutcome& outcome);

/// Size of a picture, in points of a 96 dpi screen.
QSize outcomePictureSize(const ShownOutcome& outcome);

/// The picture, to be copied or written; there must be something to draw. `session` must outlive it.
PictureDrawing outcomeDrawing(const Session& session, const ChartOptions& options);

/// "TP-01-pre-test": of letters, digits, '-' and '_' only, never empty.
QString suggestedName(const ShownOutcome& outcome);

/// Rows of cells, the header first: one row a step of each shown check, or of the plan. Numbers in the user's
/// notation with 15 digits; a text that a spreadsheet would take for a formula has an apostrophe before it.
QList<QStringList> outcomeData(const ShownOutcome& outcome);
/// A text as a cell, and a number, which is an empty cell when absent.
QString textCell(std::string_view text);
QString numberCell(const std::optional<double>& value);
/// Tab-separated; tabs and line breaks within cells become spaces.
QString asTabbedText(const QList<QStringList>& rows);
/// A table; everything escaped.
QString asHtmlTable(const QList<QStringList>& rows);

}  // namespace ui

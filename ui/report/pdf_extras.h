// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <optional>
#include <vector>

#include "ui/report/report_book.h"

// What QPdfWriter of Qt 6.4 has no call for, added to its bytes.

namespace ui {

/// What programs find out about a PDF without reading its pages. Plain text.
struct PdfFacts {
  QString title, author, subject;
  QString language = "en";   ///< of its text, ISO 639
  QString fingerprint = {};  ///< of the document, hexadecimal digits; may be empty
};

/// Metadata in XMP (ISO 16684-1): Dublin Core, and the fingerprint as shuntwright:fingerprint.
QByteArray xmpOf(const PdfFacts& facts);

/// `pdf` with an outline, links in its contents and its facts: author, subject, keywords (with the
/// fingerprint as "shuntwright-fingerprint:<digits>"), language. Appended as an incremental update (ISO
/// 32000-1, 7.5.6), so that not a byte of the pages is touched. Nothing when `pdf` is not laid out as
/// QPdfWriter does it: a file without an outline is better than a broken one.
std::optional<QByteArray> withExtras(const QByteArray& pdf, const PdfFacts& facts,
                                     const std::vector<PageLink>& links, const std::vector<PageMark>& marks);

}  // namespace ui

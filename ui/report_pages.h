// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QDate>
#include <QString>
#include <functional>
#include <stop_token>

#include "core/units/result.h"
#include "ui/report_pdf_breaks.h"

class QTextDocument;

namespace ui {

/// What the foot of each page says about its making.
struct ReportStamp {
  QString version;  ///< of the program; empty takes that of the application, and none when it has none
  QDate date = QDate::currentDate();
};

/// A PDF of A4 pages with `title` at the head of each and "Shuntwright 1.2.3 · 2031-05-04" and "Page x of n"
/// at the foot. `fill` puts the text into the document, which has its font and paint device set then; what
/// it draws, it draws with a decimal point. `breakPages` says where pages start once the page size is known;
/// keepTogether takes a layout for each page, so that a document of hundreds of pages needs another.
///
/// Needs a QApplication (without a screen will do). `progress` is told the share of the pages done, 0 to 1.
/// Fails when `stop` is requested meanwhile, and when the pages cannot be painted.
core::Result<QByteArray> pdfPages(const QString& title, const ReportStamp& stamp,
                                  const std::function<void(QTextDocument&)>& fill,
                                  const std::function<void(double)>& progress = {},
                                  const std::stop_token& stop = {},
                                  const std::function<void(QTextDocument&)>& breakPages = keepTogether);

}  // namespace ui

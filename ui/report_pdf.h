// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/document/document.h"
#include "core/report/report.h"
#include "ui/report_pages.h"

namespace ui {

class BookMaker;

/// The report of `document` on A4 pages: core::reportOf laid out, with the bridge of each channel and the
/// outcome of each check as pictures made of lines and letters, always in light colours. With an outline,
/// links in the contents, title, author, subject and fingerprint for programs that ask a PDF for them.
///
/// Needs a QApplication (without a screen will do) and must run on its thread, whose events go on meanwhile:
/// only pictures are drawn on it, one at a time, because some are widgets. The document may change: a copy is
/// used. `progress` is told the share done, 0 to 1. Fails when `stop` is requested meanwhile, and when the
/// pages cannot be painted. The caller puts the bytes into a file.
core::Result<QByteArray> reportPdf(const core::Document& document, const core::ReportOrder& order,
                                   const std::function<void(double)>& progress = {},
                                   std::stop_token stop = {}, const ReportStamp& stamp = {});
/// The full record in English, of the day of the stamp.
core::Result<QByteArray> reportPdf(const core::Document& document,
                                   const std::function<void(double)>& progress = {},
                                   std::stop_token stop = {}, const ReportStamp& stamp = {});
/// Of a book that is finished.
core::Result<QByteArray> reportPdf(BookMaker& finished, const std::function<void(double)>& progress = {},
                                   std::stop_token stop = {});

/// core::reportCsv, worked out on another thread while the events of this one go on. Needs a QApplication;
/// `progress` and `stop` as for reportPdf.
core::Result<QByteArray> reportCsvBytes(const core::Document& document,
                                        const std::function<void(double)>& progress = {},
                                        std::stop_token stop = {});

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/document/document.h"
#include "ui/report_pages.h"

namespace ui {

/// The report of `document` on A4 pages: core::reportOf laid out, with the bridge of each channel and the
/// outcome of each check as pictures, always in light colours.
///
/// Needs a QApplication (without a screen will do) and must run on its thread, because it draws
/// widgets. `progress` is told the share done, 0 to 1. Fails when `stop` is requested meanwhile, and when
/// the pages cannot be painted. The caller puts the bytes into a file.
core::Result<QByteArray> reportPdf(const core::Document& document,
                                   const std::function<void(double)>& progress = {},
                                   std::stop_token stop = {}, const ReportStamp& stamp = {});

/// core::reportCsv, worked out on another thread while the events of this one go on. Needs a QApplication;
/// `progress` and `stop` as for reportPdf.
core::Result<QByteArray> reportCsvBytes(const core::Document& document,
                                        const std::function<void(double)>& progress = {},
                                        std::stop_token stop = {});

}  // namespace ui

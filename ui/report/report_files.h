// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <array>
#include <functional>
#include <optional>
#include <stop_token>

#include "core/report/report.h"
#include "ui/report_pages.h"

namespace ui {

enum class ReportFormat : std::uint8_t { Pdf, Workbook, Html, Csv, Json };
inline constexpr std::array reportFormats{ReportFormat::Pdf, ReportFormat::Workbook, ReportFormat::Html,
                                          ReportFormat::Csv, ReportFormat::Json};
/// The ending of its files, without the point: "xlsx".
QString suffixOf(ReportFormat format);
/// "Workbook with formulas (XLSX)".
QString nameOf(ReportFormat format);
/// By the ending of `path`, capital and small letters alike.
std::optional<ReportFormat> reportFormatOf(const QString& path);

/// The report in a format, for the caller to put into a file. Needs a QApplication (without a screen will do)
/// and must run on its thread, whose events go on meanwhile. `progress` is told the share done, 0 to 1. Fails
/// when `stop` is requested meanwhile, and as the writer of the format does.
core::Result<QByteArray> reportBytes(const core::Document& document, const core::ReportOrder& order,
                                     ReportFormat format, const std::function<void(double)>& progress = {},
                                     std::stop_token stop = {}, const ReportStamp& stamp = {});

}  // namespace ui

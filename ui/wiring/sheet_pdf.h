// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/document/document.h"
#include "core/wiring/ohmmeter_sheet.h"
#include "ui/report_pages.h"

class QWidget;

namespace ui {

/// core::wiringSheet of channel `index` on A4 pages, with the bridge and the jumpers of each shunt drawn.
/// Needs a QApplication and must run on its thread. `progress` is told the share done, 0 to 1. Fails when
/// `stop` is requested meanwhile.
core::Result<QByteArray> wiringSheetPdf(const core::Document& document, std::size_t index,
                                        const core::OhmmeterConditions& conditions,
                                        const std::function<void(double)>& progress = {},
                                        const std::stop_token& stop = {}, const ReportStamp& stamp = {});

/// The same, put under the name `path` whole or not at all; over `parent` a dialog shows the progress of a
/// long one and lets it be cancelled.
core::Result<void> writeWiringSheet(QWidget* parent, const QString& path, const core::Document& document,
                                    std::size_t index, const core::OhmmeterConditions& conditions);

/// Asks where the sheet of `channel` is to go; empty when cancelled.
QString askForSheet(QWidget* parent, const core::Channel& channel);

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "app/output.h"
#include "core/document/document.h"
#include "core/intake/intake.h"
#include "core/recording/layout.h"
#include "core/recording/recording.h"

// Recordings as the command line names them.

namespace app {

/// What --read-as says about the layout of a recording, in the notation of core::textOf.
core::Result<core::LayoutChoices> layoutChoices(const std::string& readAs);

/// Help for --read-as.
extern const char* const readAsHelp;

/// Reads a recording of any kind, telling a terminal how far. Errors name the file; lines that were skipped
/// and cells that are missing are told on standard error, the first of each by its place.
core::Result<core::Recording> openRecording(const std::string& path, const core::LayoutChoices& choices);

/// "TP-01, TP-02": the value columns by name.
std::string columnNames(const core::Recording& recording);

/// Index of the column called `name`, or of all when `name` is empty. Fails for an unknown name, listing
/// the columns.
core::Result<std::vector<std::size_t>> columnsNamed(const core::Recording& recording,
                                                    const std::string& name);

/// Which channel is judged by which column, in the document's order: core::columnUses. With `channel` only
/// that one, whose column may be named by `column`, or have any name when it is the only one, which is told
/// on standard error. Fails when nothing pairs.
core::Result<std::vector<core::ColumnUse>> channelColumns(const core::Document& document,
                                                          const core::Recording& recording,
                                                          const std::string& channel,
                                                          const std::string& column);

/// Says on standard error which columns were left out of `uses` because an earlier one has the same name:
/// reading a recording numbers them.
void noteFurtherColumns(const core::Document& document, const core::Recording& recording,
                        const std::vector<core::ColumnUse>& uses);

/// Adds what reading gave up: lines_read, lines_skipped, skipped, cells_missing, missing; and read_as.
void addAccount(Json& json, const core::Recording& recording, const core::LayoutChoices& choices);

}  // namespace app

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/document/document.h"
#include "core/levels/levels.h"
#include "core/recording/recording.h"

// Recordings as the command line names them, and checks made from them.

namespace app {

/// Reads a recording. Errors name the file; lines that were skipped are told on standard error.
core::Result<core::Recording> openRecording(const std::string& path);

/// "TP-01, TP-02": the value columns by name.
std::string columnNames(const core::Recording& recording);

/// Index of the column called `name`; without a name the only value column. Fails for an unknown name
/// and for no name where there are several, listing the columns.
core::Result<std::size_t> columnNamed(const core::Recording& recording, const std::string& name);

/// A channel of the document and the column that holds its recording.
struct ChannelColumn {
  std::size_t channel;
  std::size_t column;
};

/// Pairs channels and columns of the same name, in the document's order. With `channel` given only
/// that one, whose column may have any name when it is the only one. Fails when nothing pairs.
core::Result<std::vector<ChannelColumn>> channelColumns(const core::Document& document,
                                                        const core::Recording& recording,
                                                        const std::string& channel);

/// Says on standard error which columns were left out of `pairs` because an earlier one has the same name:
/// reading a recording numbers them.
void noteFurtherColumns(const core::Document& document, const core::Recording& recording,
                        const std::vector<ChannelColumn>& pairs);

/// `channel` with a closed check made from the levels of `column`, the last of its checks.
/// `check` brings name, date, person and the reference to the recording.
core::Result<core::Channel> withCheckFrom(const core::Channel& channel, const core::Recording& recording,
                                          std::size_t column, core::Check check);

}  // namespace app

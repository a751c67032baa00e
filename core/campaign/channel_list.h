// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/document/document.h"

// Channels from a list that somebody keeps in a spreadsheet: delimited text, one channel a row, its columns
// said by the user.

namespace core {

/// What a column of a channel list may be.
enum class ListField : std::uint8_t {
  Ignored,
  Name,
  Group,
  Note,
  Like,             ///< name of a channel of the document that the row is a copy of
  Template,         ///< of the bridge, by its name or key
  GaugeResistance,  ///< the trade's notation: "350", "350 Ω"
  GaugeFactor,
  LeadResistance,  ///< of each lead
  LeadLength,      ///< with LeadCross-section it gives the resistance
  LeadSection,
  RecordingColumn,
  Unit,  ///< of the readings
  InstrumentName,
  InstrumentSerial,
  Excitation,
  Limit,  ///< relative
};
inline constexpr std::size_t listFieldCount = 17;

std::string_view listFieldKey(ListField field);
/// For people.
std::string_view listFieldName(ListField field);

/// A delimited text as cells, before anybody said what its columns are.
struct ListTable {
  char delimiter = ',';
  std::vector<std::string> header;             ///< of the first line, or "column 1" when that is none
  std::vector<std::vector<std::string>> rows;  ///< as many cells as the header has
  std::vector<std::size_t> lines;              ///< of each row, from 1
  bool hasHeader = true;
};
/// Reads UTF-8 (with or without byte order mark) or Windows-1252, comma, semicolon or tab, RFC 4180 quotes.
/// Fails on what is no such text, naming the line.
Result<ListTable> readListTable(std::string_view text);

/// What each column is guessed to be from its heading; Ignored when that says nothing.
std::vector<ListField> guessedFields(const ListTable& table);

/// What becomes of the rows.
struct ListImport {
  Document document;  ///< with the channels added
  std::size_t added = 0;
  std::vector<Error>
      refused;  ///< "line 7, gauge factor": what is wrong and how to mend it; those rows are left out
  std::vector<std::string> told;  ///< "line 9: there is a channel TP-03 already, named TP-03 (2)"
};
/// `document` with a channel for each row of `table`, whose columns are `fields`; each a copy of `like`
/// (set-up only, no checks), or of the channel that its own column Like names, with the row's values put in.
/// Nothing is done when a column is given twice or no column is the name (an error says so).
Result<ListImport> withChannelList(const Document& document, const ListTable& table,
                                   const std::vector<ListField>& fields, const Channel& like);

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/document/document.h"
#include "core/document/file_limits.h"

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

/// "ignored", "name", "group", "gauge_resistance", ...
std::string_view listFieldKey(ListField field);
std::optional<ListField> listFieldFromKey(std::string_view key);
/// For people, in the present language: "name", "gauge resistance", "lead length", ...
std::string listFieldName(ListField field);

/// A delimited text as cells, before anybody said what its columns are.
struct ListTable {
  char delimiter = ',';
  std::vector<std::string> header;             ///< of the first line, or "column 1" when that is none
  std::vector<std::vector<std::string>> rows;  ///< as many cells as the header has
  std::vector<std::size_t> lines;              ///< of each row, from 1
  bool hasHeader = true;
};
/// Reads UTF-8 (with or without byte order mark), UTF-16 with one, or Windows-1252; comma, semicolon or tab,
/// whichever makes the rows alike; RFC 4180 quotes. The first line is a header when a heading is known in it,
/// or when it has no digits and the second one has. Short rows are filled up with empty cells.
/// Fails on what is no such text, on a row with more cells than the header, and on more rows than
/// `mostChannels`, naming the line.
Result<ListTable> readListTable(std::string_view text);

/// What each column is guessed to be from its heading, English or German; Ignored when that says nothing or
/// an earlier column has it.
std::vector<ListField> guessedFields(const ListTable& table);

/// What is given as "name=Channel,gauge_factor=k": keys of fields and headings of columns (or their numbers,
/// from 1). Columns that are not named keep what `guessedFields` says, unless another one took it.
Result<std::vector<ListField>> fieldsFromText(const ListTable& table, std::string_view text);

/// What becomes of the rows.
struct ListImport {
  Document document;  ///< with the channels added at the end
  std::size_t added = 0;
  std::vector<Error>
      refused;  ///< "line 7, gauge factor": what is wrong and how to mend it; those rows are left out
  std::vector<std::string> told;  ///< "line 9: there is a channel TP-03 already, named TP-03 (2)"
};
/// `document` with a channel for each row of `table`, whose columns are `fields`; each a copy of `like`
/// (set-up and group only, no checks), or of the channel that its own column Like names, with the row's
/// values put in (core/campaign/channel_values.h says what follows what). An empty cell leaves what is
/// copied.
///
/// Quantities are in the trade's notation with decimal point or comma; a number alone is in the unit of its
/// heading ("Leads, ohm", "Länge [mm]"), else in that of the field. A unit in the heading that is none of the
/// field refuses the cells without one of their own.
///
/// Nothing is done when a column is given twice, no column is the name, or there would be more channels than
/// `mostChannels` (an error says so).
Result<ListImport> withChannelList(const Document& document, const ListTable& table,
                                   const std::vector<ListField>& fields, const Channel& like);

/// The channels of `document` as a list that `withChannelList` reads: every field but Like, comma between,
/// English headings, UTF-8. Leads that differ among each other are left empty. An apostrophe stands before
/// what a spreadsheet would take for a formula; reading takes it off.
std::string channelListCsv(const Document& document);

}  // namespace core

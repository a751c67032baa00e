// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/channel_list.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cstdlib>
#include <map>
#include <set>

#include "core/assess/reading_unit.h"
#include "core/campaign/channel_values.h"
#include "core/campaign/folded.h"
#include "core/campaign/list_heading.h"
#include "core/campaign/list_text.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

struct FieldNames {
  std::string_view key;
  std::string_view name;
};

// In the order of ListField.
constexpr std::array<FieldNames, listFieldCount> fieldNames = {{
    {"ignored", sayLater("ignored")},
    {"name", sayLater("name")},
    {"group", sayLater("group")},
    {"note", sayLater("note")},
    {"like", sayLater("like")},
    {"template", sayLater("template")},
    {"gauge_resistance", sayLater("gauge resistance")},
    {"gauge_factor", sayLater("gauge factor")},
    {"lead_resistance", sayLater("lead resistance")},
    {"lead_length", sayLater("lead length")},
    {"lead_section", sayLater("lead cross-section")},
    {"recording_column", sayLater("recording column")},
    {"unit", sayLater("unit")},
    {"instrument", sayLater("instrument")},
    {"serial", sayLater("serial number")},
    {"excitation", sayLater("excitation")},
    {"limit", sayLater("limit")},
}};

constexpr std::size_t longestName = 200;     // bytes; what does not fit a row of a table is no name
constexpr std::size_t longestText = 10'000;  // bytes

std::string lineText(std::size_t line) { return say("line {1}", {std::to_string(line)}); }

bool hasDigit(const std::string& cell) { return cell.find_first_of("0123456789") != std::string::npos; }

/// Whether the first row names the columns: a heading is known, or it has no digits and the second row has.
bool isHeader(const std::vector<Row>& rows) {
  const std::vector<std::string>& first = rows.front().cells;
  if (std::any_of(first.begin(), first.end(), [](const std::string& cell) {
        return fieldOfHeading(listHeadingOf(cell)) != ListField::Ignored;
      }))
    return true;
  if (std::any_of(first.begin(), first.end(), hasDigit) || rows.size() < 2) return false;
  return std::any_of(rows[1].cells.begin(), rows[1].cells.end(), hasDigit);
}

/// Empty cells at the end of a line say nothing: spreadsheets write as many as any line has.
void dropEmptyEnd(std::vector<std::string>& cells) {
  while (cells.size() > 1 && cells.back().empty()) cells.pop_back();
}

void nameColumns(ListTable& table, std::vector<std::string> first, std::size_t columns) {
  if (table.hasHeader) table.header = std::move(first);
  for (std::size_t k = table.header.size(); k < columns; ++k) table.header.emplace_back();
  for (std::size_t k = 0; k < columns; ++k)
    if (table.header[k].empty()) table.header[k] = say("column {1}", {std::to_string(k + 1)});
}

/// Reads the cells of one row. The first one at fault is kept.
class RowReader {
 public:
  RowReader(const ListTable& table, const std::vector<ListField>& fields, std::size_t row)
      : m_table(table), m_row(row) {
    for (std::size_t k = 0; k < fields.size(); ++k)
      if (fields[k] != ListField::Ignored) m_columns[static_cast<std::size_t>(fields[k])] = k;
  }

  const std::optional<Error>& error() const { return m_error; }

  bool has(ListField field) const { return !cell(field).empty(); }
  bool isColumn(ListField field) const { return m_columns[static_cast<std::size_t>(field)].has_value(); }

  /// The text of a cell; none when it is empty.
  std::optional<std::string> text(ListField field, std::size_t longest = longestText) {
    if (!has(field)) return std::nullopt;
    std::string text(withoutGuard(cell(field)));
    const bool oneLine = field != ListField::Note;
    if (text.size() > longest)
      refuse(field, say("it is longer than {1} characters", {std::to_string(longest)}), say("Shorten it"));
    if (oneLine && text.find_first_of("\r\n\t") != std::string::npos)
      refuse(field, say("there is a line break in it"), say("Write it on one line"));
    return text;
  }

  std::optional<double> number(ListField field) {
    if (!has(field)) return std::nullopt;
    const UnitFamily family = *familyOf(field);
    std::string written(cell(field));
    const std::string unit = listHeadingOf(m_table.header[column(field)]).unit;
    if (!unit.empty() && family != UnitFamily::Plain && parseQuantity(written, UnitFamily::Plain))
      written = folded(unit) == "awg" ? "AWG " + written : written + " " + unit;
    const auto value = parseQuantity(written, family);
    if (value) return *value;
    refuse(field, value.error().what, value.error().mend);
    return std::nullopt;
  }

  void refuse(ListField field, std::string what, std::string mend) {
    refuse(listFieldName(field), std::move(what), std::move(mend));
  }

  void refuse(const std::string& field, std::string what, std::string mend) {
    if (m_error) return;
    m_error =
        Error{say("{1}, {2}", {lineText(m_table.lines[m_row]), field}), std::move(what), std::move(mend)};
  }

 private:
  std::size_t column(ListField field) const { return *m_columns[static_cast<std::size_t>(field)]; }

  std::string_view cell(ListField field) const {
    const auto at = m_columns[static_cast<std::size_t>(field)];
    return at ? std::string_view(m_table.rows[m_row][*at]) : std::string_view();
  }

  const ListTable& m_table;
  std::size_t m_row;
  std::array<std::optional<std::size_t>, listFieldCount> m_columns{};
  std::optional<Error> m_error;
};

std::optional<BridgeType> templateFrom(RowReader& row) {
  const auto text = row.text(ListField::Template);
  if (!text) return std::nullopt;
  const std::string wanted = folded(*text);
  for (const BridgeTemplate& each : allTemplates())
    if (wanted == folded(each.key) || wanted == folded(each.name) || wanted == folded(say(each.name)))
      return each.type;
  std::string names;
  for (const BridgeTemplate& each : allTemplates()) names.append(names.empty() ? "" : "; ").append(each.key);
  row.refuse(ListField::Template, say("{1} is no template", {inQuotes(*text)}),
             say("There are {1}", {names}));
  return std::nullopt;
}

/// The lead as the row gives it: by its resistance, or by length and cross-section, of which the other one
/// may be that of `like`.
std::optional<Lead> leadFrom(RowReader& row, const Bridge& like) {
  const auto resistance = row.number(ListField::LeadResistance);
  const auto length = row.number(ListField::LeadLength), section = row.number(ListField::LeadSection);
  if (resistance && (length || section)) {
    row.refuse(ListField::LeadResistance, say("the resistance and the size of the wire are both given"),
               say("Leave one of them empty"));
    return std::nullopt;
  }
  if (resistance) return Lead(Resistance(*resistance));
  if (!length && !section) return std::nullopt;
  CopperWire wire;
  bool isWire = false;
  for (const Lead& lead : like.leads)
    if (const auto* copper = std::get_if<CopperWire>(&lead); copper && !isWire) {
      wire = *copper;
      isWire = true;
    }
  if (!isWire && !(length && section)) {
    const ListField missing = length ? ListField::LeadSection : ListField::LeadLength;
    row.refuse(missing, say("a wire needs both its length and its cross-section"),
               say("Give both, or the resistance of a lead"));
    return std::nullopt;
  }
  if (length) wire.length = Length(*length);
  if (section) wire.section = Area(*section);
  return Lead(wire);
}

std::optional<UnitSetting> unitFrom(RowReader& row, const Instrument& like) {
  const auto text = row.text(ListField::Unit);
  if (!text) return std::nullopt;
  for (const ReadingUnit unit :
       {ReadingUnit::MicrometrePerMetre, ReadingUnit::MillivoltPerVolt, ReadingUnit::Millivolt}) {
    Instrument instrument;
    instrument.unit = unit;
    if (requireReadingUnit(instrument, *text)) return UnitSetting{unit};
  }
  if (like.unit == ReadingUnit::Scaled && *text == like.scaledUnit)
    return UnitSetting{ReadingUnit::Scaled, *text};
  row.refuse(ListField::Unit, say("{1} is no unit that it can read in", {inQuotes(*text)}),
             say("Write µm/m, mV/V or mV, or copy a channel that reads in that unit"));
  return std::nullopt;
}

std::optional<Voltage> voltage(std::optional<double> value) {
  return value ? std::optional(Voltage(*value)) : std::nullopt;
}

ChannelValues valuesFrom(RowReader& row, const Channel& like) {
  ChannelValues values;
  // Of these an empty cell means none: they are about one channel, or say where it does not belong.
  if (row.isColumn(ListField::Group)) values.group = row.text(ListField::Group, longestName).value_or("");
  values.note = row.text(ListField::Note);
  values.recordingColumn = row.text(ListField::RecordingColumn, longestName);
  values.type = templateFrom(row);
  if (const auto ohm = row.number(ListField::GaugeResistance)) values.gaugeResistance = Resistance(*ohm);
  values.gaugeFactor = row.number(ListField::GaugeFactor);
  values.lead = leadFrom(row, like.setup.bridge);
  values.unit = unitFrom(row, like.setup.instrument);
  values.instrumentName = row.text(ListField::InstrumentName);
  values.instrumentSerial = row.text(ListField::InstrumentSerial);
  values.excitation = voltage(row.number(ListField::Excitation));
  values.relativeLimit = row.number(ListField::Limit);
  return values;
}

/// The channels that a list brings, row by row.
class Import {
 public:
  Import(const Document& document, const ListTable& table, const std::vector<ListField>& fields,
         const Channel& like)
      : m_table(table), m_fields(fields), m_like(like) {
    m_result.document = document;
    for (const auto& channel : document.channels) {
      m_names.insert(channel->name);
      m_byName.emplace(channel->name, channel.get());
    }
  }

  ListImport run() {
    for (std::size_t row = 0; row < m_table.rows.size(); ++row) addRow(row);
    return std::move(m_result);
  }

 private:
  void addRow(std::size_t index) {
    RowReader row(m_table, m_fields, index);
    const auto name = row.text(ListField::Name, longestName);
    if (!name)
      row.refuse(ListField::Name, say("there is no name"), say("Name the channel, or empty the line"));
    const Channel& like = likeOf(row);
    const ChannelValues values = valuesFrom(row, like);
    if (row.error()) return m_result.refused.push_back(*row.error());
    Channel channel;
    channel.setup = like.setup;
    channel.group = like.group;
    auto made = withValues(std::move(channel), values);
    if (!made) {
      row.refuse(made.error().where, made.error().what, made.error().mend);
    } else if (const auto usable = checkBridge(made->setup.bridge, made->setup.instrument);
               !usable && checkBridge(like.setup.bridge, like.setup.instrument)) {
      row.refuse(usable.error().where, usable.error().what, usable.error().mend);
    }
    if (row.error()) return m_result.refused.push_back(*row.error());
    made->name = freeName(*name, m_table.lines[index]);
    m_result.document.channels.push_back(std::make_shared<const Channel>(*std::move(made)));
    ++m_result.added;
  }

  const Channel& likeOf(RowReader& row) {
    const auto name = row.text(ListField::Like);
    if (!name) return m_like;
    if (const auto found = m_byName.find(*name); found != m_byName.end()) return *found->second;
    row.refuse(ListField::Like, say("there is no channel {1} in the document", {inQuotes(*name)}),
               say("Name a channel that was there before the list, or empty the cell"));
    return m_like;
  }

  std::string freeName(const std::string& name, std::size_t line) {
    if (m_names.insert(name).second) return name;
    std::size_t& number = m_numbers.try_emplace(name, 2).first->second;
    for (;; ++number) {
      std::string other = name + " (" + std::to_string(number) + ")";
      if (!m_names.insert(other).second) continue;
      m_result.told.push_back(
          say("{1}: there is a channel {2} already, named {3}", {lineText(line), name, other}));
      return other;
    }
  }

  const ListTable& m_table;
  const std::vector<ListField>& m_fields;
  const Channel& m_like;
  ListImport m_result;
  std::set<std::string> m_names;
  std::map<std::string, const Channel*> m_byName;
  std::map<std::string, std::size_t> m_numbers;  ///< the next one to be tried behind a name that is taken
};

/// What is wrong with the columns as a whole.
std::optional<Error> faultOfFields(const ListTable& table, const std::vector<ListField>& fields) {
  std::map<ListField, std::size_t> columns;
  for (std::size_t k = 0; k < fields.size(); ++k) {
    if (fields[k] == ListField::Ignored) continue;
    if (const auto [other, isNew] = columns.emplace(fields[k], k); !isNew)
      return Error{say("column {1}", {inQuotes(table.header[k])}),
                   say("it is taken for the {1}, and so is {2}",
                       {listFieldName(fields[k]), inQuotes(table.header[other->second])}),
                   say("Say which of them is ignored")};
  }
  if (columns.contains(ListField::Name)) return std::nullopt;
  return Error{"", say("no column is the name of the channels"), say("Say which column it is")};
}

/// Index of the column that a heading, or its name without the unit, or a number from 1 says.
std::optional<std::size_t> columnCalled(const ListTable& table, const std::string& text) {
  for (std::size_t k = 0; k < table.header.size(); ++k)
    if (folded(table.header[k]) == folded(text)) return k;
  for (std::size_t k = 0; k < table.header.size(); ++k)
    if (folded(listHeadingOf(table.header[k]).name) == folded(text)) return k;
  if (text.empty() || text.size() > 4 || text.find_first_not_of("0123456789") != std::string::npos)
    return std::nullopt;
  const std::size_t number = static_cast<std::size_t>(std::atoi(text.c_str()));
  if (number < 1 || number > table.header.size()) return std::nullopt;
  return number - 1;
}

std::string quantityCell(double value, UnitFamily family) {
  std::string text = formatQuantity(value, family, {}, 17);
  if (const std::size_t ohm = text.find("Ω"); ohm != std::string::npos) text.replace(ohm, 2, "ohm");
  return guardedCell(text);
}

/// Resistance, length and cross-section of the leads in use where they are alike, as three cells.
std::string leadCells(const Bridge& bridge) {
  std::optional<Lead> common;
  for (const Wire& wire : wiresOf(bridge)) {
    const Lead& lead = bridge.leads[static_cast<std::size_t>(wire.role)];
    if (common && *common != lead) return ",,";
    common = lead;
  }
  if (!common) return ",,";
  if (const auto* wire = std::get_if<CopperWire>(&*common))
    return "," + quantityCell(wire->length.base(), UnitFamily::Length) + "," +
           quantityCell(wire->section.base(), UnitFamily::Area);
  return quantityCell(std::get<Resistance>(*common).base(), UnitFamily::Resistance) + ",,";
}

}  // namespace

std::string_view listFieldKey(ListField field) { return fieldNames[static_cast<std::size_t>(field)].key; }

std::optional<ListField> listFieldFromKey(std::string_view key) {
  for (std::size_t k = 0; k < listFieldCount; ++k)
    if (fieldNames[k].key == key) return static_cast<ListField>(k);
  return std::nullopt;
}

std::string listFieldName(ListField field) { return say(fieldNames[static_cast<std::size_t>(field)].name); }

Result<ListTable> readListTable(std::string_view bytes) {
  const auto text = listText(bytes);
  if (!text) return text.error();
  auto read = listRows(*text, mostChannels + 1);
  if (!read) return read.error();
  if (read->rows.empty())
    return Error{lineText(1), say("there is nothing in the file"), say("Choose a list of channels")};
  for (Row& row : read->rows) dropEmptyEnd(row.cells);
  ListTable table;
  table.delimiter = read->delimiter;
  table.hasHeader = isHeader(read->rows);
  std::size_t columns = 0;
  for (const Row& row : read->rows) {
    if (table.hasHeader && columns > 0 && row.cells.size() > columns)
      return Error{lineText(row.line),
                   say("there are {1} cells under {2} headings",
                       {std::to_string(row.cells.size()), std::to_string(columns)}),
                   say("Put a cell that holds the separator in quotation marks")};
    columns = std::max(columns, row.cells.size());
  }
  // Short rows are filled up, so that a few bytes may ask for many cells.
  if (columns * read->rows.size() > mostCellsInRows)
    return Error{lineText(1), say("there are more than {1} cells", {std::to_string(mostCellsInRows)}),
                 say("Remove columns and rows that are not used")};
  nameColumns(table, read->rows.front().cells, columns);
  for (std::size_t k = table.hasHeader ? 1 : 0; k < read->rows.size(); ++k) {
    read->rows[k].cells.resize(columns);
    table.rows.push_back(std::move(read->rows[k].cells));
    table.lines.push_back(read->rows[k].line);
  }
  return table;
}

std::vector<ListField> guessedFields(const ListTable& table) {
  std::vector<ListField> fields;
  for (const std::string& heading : table.header) {
    const ListField field = table.hasHeader ? fieldOfHeading(listHeadingOf(heading)) : ListField::Ignored;
    const bool taken = std::find(fields.begin(), fields.end(), field) != fields.end();
    fields.push_back(taken ? ListField::Ignored : field);
  }
  return fields;
}

Result<std::vector<ListField>> fieldsFromText(const ListTable& table, std::string_view text) {
  std::vector<ListField> fields = guessedFields(table);
  while (!text.empty()) {
    // A heading may hold a comma itself: what comes up to the next key belongs to it.
    std::size_t end = text.find(',');
    while (end != text.npos) {
      const std::string_view rest = text.substr(end + 1);
      if (listFieldFromKey(rest.substr(0, rest.find('=')))) break;
      end = text.find(',', end + 1);
    }
    const std::string_view part = text.substr(0, end);
    text = end == text.npos ? std::string_view() : text.substr(end + 1);
    const std::size_t equals = part.find('=');
    const auto field = listFieldFromKey(part.substr(0, equals));
    if (equals == part.npos || !field) {
      std::string keys;
      for (const FieldNames& each : fieldNames) keys.append(keys.empty() ? "" : ", ").append(each.key);
      return Error{"", say("{1} is no field with its column", {inQuotes(part)}),
                   say("Write as in name=Channel; fields are {1}", {keys})};
    }
    const std::string heading(part.substr(equals + 1));
    const auto column = columnCalled(table, heading);
    if (!column) {
      std::string names;
      for (const std::string& each : table.header) names += (names.empty() ? "" : "; ") + inQuotes(each);
      return Error{"", say("there is no column {1}", {inQuotes(heading)}), say("There are {1}", {names})};
    }
    if (*field != ListField::Ignored) std::replace(fields.begin(), fields.end(), *field, ListField::Ignored);
    fields[*column] = *field;
  }
  return fields;
}

Result<ListImport> withChannelList(const Document& document, const ListTable& table,
                                   const std::vector<ListField>& fields, const Channel& like) {
  assert(fields.size() == table.header.size());
  if (auto fault = faultOfFields(table, fields)) return *std::move(fault);
  if (document.channels.size() + table.rows.size() > mostChannels)
    return Error{
        "",
        say("the document would have {1} channels, and it can hold {2}",
            {std::to_string(document.channels.size() + table.rows.size()), std::to_string(mostChannels)}),
        say("Split the list over several documents")};
  return Import(document, table, fields, like).run();
}

std::string channelListCsv(const Document& document) {
  std::string text =
      "Name,Group,Note,Template,Gauge resistance,Gauge factor,Lead resistance,Lead length,Lead cross-section,"
      "Recording column,Unit,Instrument,Serial number,Excitation,Limit\r\n";
  for (const auto& channel : document.channels) {
    const Setup& setup = channel->setup;
    text +=
        guardedCell(channel->name) + "," + guardedCell(channel->group) + "," + guardedCell(channel->note) +
        "," + guardedCell(templateOf(setup.bridge.type).key) + "," +
        quantityCell(setup.bridge.gauge.nominal.base(), UnitFamily::Resistance) + "," +
        quantityCell(setup.bridge.gauge.factor, UnitFamily::Plain) + "," + leadCells(setup.bridge) + "," +
        guardedCell(channel->recordingColumn) + "," + guardedCell(readingUnitText(setup.instrument)) + "," +
        guardedCell(setup.identity.name) + "," + guardedCell(setup.identity.serial) + "," +
        (setup.instrument.current ? ""
                                  : quantityCell(setup.instrument.excitation.base(), UnitFamily::Voltage)) +
        "," + quantityCell(setup.limits.relative, UnitFamily::Percent) + "\r\n";
  }
  return text;
}

}  // namespace core

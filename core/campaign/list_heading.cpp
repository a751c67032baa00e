// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/list_heading.h"

#include <algorithm>
#include <array>

#include "core/campaign/folded.h"

namespace core {
namespace {

struct Headings {
  ListField field;
  std::string_view words;  ///< headings between bars, as `plain` writes them
};

constexpr std::array<Headings, 16> known = {{
    {ListField::Name,
     "|name|channel|channel name|measuring point|point|id|tag|label|kanal|kanalname|bezeichnung|messstelle|"
     "messpunkt|"},
    {ListField::Group, "|group|zone|area|assembly|gruppe|bereich|baugruppe|"},
    {ListField::Note,
     "|note|notes|remark|remarks|comment|comments|bemerkung|bemerkungen|notiz|kommentar|anmerkung|"},
    {ListField::Like, "|like|copy of|same as|wie|wie kanal|kopie von|"},
    {ListField::Template,
     "|template|bridge|bridge type|bridge template|type of bridge|bridge configuration|brücke|brückentyp|"
     "brückenart|brückenschaltung|schaltung|"},
    {ListField::GaugeResistance,
     "|gauge resistance|gauge|gauges|nominal resistance|resistance|nominal|gauge nominal|dms widerstand|"
     "nennwiderstand|widerstand|dms|"},
    {ListField::GaugeFactor, "|gauge factor|k factor|k|gf|k faktor|kfaktor|k wert|dehnungsfaktor|"},
    {ListField::LeadResistance,
     "|leads|lead|lead resistance|lead wire resistance|wire resistance|cable resistance|leitung|leitungen|"
     "zuleitung|zuleitungen|leitungswiderstand|zuleitungswiderstand|aderwiderstand|kabelwiderstand|"},
    {ListField::LeadLength,
     "|lead length|cable length|wire length|length|cable|leitungslänge|zuleitungslänge|kabellänge|länge|"
     "kabel|"},
    {ListField::LeadSection,
     "|lead cross section|lead section|cross section|section|wire size|awg|querschnitt|leitungsquerschnitt|"
     "aderquerschnitt|leiterquerschnitt|kabelquerschnitt|"},
    {ListField::RecordingColumn,
     "|recording column|column|data column|signal|spalte|messspalte|aufzeichnungsspalte|"},
    {ListField::Unit, "|unit|units|reading unit|einheit|messeinheit|"},
    {ListField::InstrumentName,
     "|instrument|instrument name|amplifier|device|gerät|messgerät|verstärker|messverstärker|"},
    {ListField::InstrumentSerial,
     "|serial|serial number|serial no|instrument serial|s/n|sn|inventory number|seriennummer|serien nr|"
     "inventarnummer|gerätenummer|"},
    {ListField::Excitation,
     "|excitation|excitation voltage|supply|bridge supply|bridge voltage|speisung|speisespannung|"
     "brückenspeisung|brückenspannung|"},
    {ListField::Limit,
     "|limit|limits|tolerance|permitted deviation|grenze|toleranz|grenzabweichung|zulässige abweichung|"},
}};

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

/// "K-Faktor", "k_faktor", "K  Faktor" and "k faktor:" are one heading.
std::string plain(std::string_view text) {
  std::string result;
  for (const char c : folded(text)) {
    const bool blank = std::string_view(" \t_-.:\r\n").find(c) != std::string_view::npos;
    if (!blank)
      result += c;
    else if (!result.empty() && result.back() != ' ')
      result += ' ';
  }
  if (!result.empty() && result.back() == ' ') result.pop_back();
  return result;
}

bool isAmong(std::string_view words, const std::string& word) {
  return !word.empty() && word.find('|') == std::string::npos &&
         words.find("|" + word + "|") != std::string_view::npos;
}

/// Spellings that the quantity notation does not take, none of which could be meant otherwise.
std::string unitFrom(std::string_view text) {
  const std::string word = folded(trimmed(text));
  if (isAmong("|each|per lead|per wire|nominal|nom|rel|relative|je ader|je leitung|", word)) return {};
  if (isAmong("|ohm|ohms|ω|", word)) return "ohm";
  if (isAmong("|volt|volts|vdc|v dc|", word)) return "V";
  if (isAmong("|metre|metres|meter|meters|", word)) return "m";
  if (isAmong("|percent|per cent|prozent|", word)) return "%";
  return std::string(trimmed(text));
}

bool isUnitOf(const std::string& unit, UnitFamily family) {
  return !unit.empty() && parseQuantity("1 " + unit, family);
}

bool isUnit(const std::string& unit) {
  if (folded(unit) == "awg") return true;
  const UnitFamily families[] = {UnitFamily::Resistance, UnitFamily::Length, UnitFamily::Area,
                                 UnitFamily::Voltage, UnitFamily::Percent};
  return std::any_of(std::begin(families), std::end(families),
                     [&](UnitFamily family) { return isUnitOf(unit, family); });
}

/// Name and unit where a unit stands behind `between`.
std::optional<ListHeading> splitAt(std::string_view text, std::string_view between, bool anyWord) {
  const std::size_t at = text.rfind(between);
  if (at == text.npos || at == 0) return std::nullopt;
  std::string unit = unitFrom(text.substr(at + between.size()));
  if (!anyWord && !isUnit(unit)) return std::nullopt;
  return ListHeading{std::string(trimmed(text.substr(0, at))), std::move(unit)};
}

}  // namespace

ListHeading listHeadingOf(std::string_view text) {
  text = trimmed(text);
  for (const std::string_view brackets : {"[]", "()"})
    if (text.ends_with(brackets[1]))
      if (const std::size_t open = text.rfind(brackets[0]); open != text.npos && open > 0)
        return {std::string(trimmed(text.substr(0, open))),
                unitFrom(text.substr(open + 1, text.size() - open - 2))};
  if (const auto heading = splitAt(text, ",", true)) return *heading;
  for (const std::string_view between : {"/", " in "})
    if (const auto heading = splitAt(text, between, false)) return *heading;
  return {std::string(text), folded(text) == "awg" ? "AWG" : ""};
}

ListField fieldOfHeading(const ListHeading& heading) {
  const std::string name = plain(heading.name);
  const auto row = std::find_if(known.begin(), known.end(),
                                [&](const Headings& each) { return isAmong(each.words, name); });
  if (row == known.end()) return ListField::Ignored;
  // "Leads, m" and "cable, mm²" are about the wire and not about its resistance.
  const bool ofLead = row->field == ListField::LeadResistance || row->field == ListField::LeadLength;
  if (ofLead && isUnitOf(heading.unit, UnitFamily::Length)) return ListField::LeadLength;
  if (ofLead && (isUnitOf(heading.unit, UnitFamily::Area) || folded(heading.unit) == "awg"))
    return ListField::LeadSection;
  if (ofLead && isUnitOf(heading.unit, UnitFamily::Resistance)) return ListField::LeadResistance;
  return row->field;
}

std::optional<UnitFamily> familyOf(ListField field) {
  switch (field) {
    case ListField::GaugeResistance:
    case ListField::LeadResistance:
      return UnitFamily::Resistance;
    case ListField::GaugeFactor:
      return UnitFamily::Plain;
    case ListField::LeadLength:
      return UnitFamily::Length;
    case ListField::LeadSection:
      return UnitFamily::Area;
    case ListField::Excitation:
      return UnitFamily::Voltage;
    case ListField::Limit:
      return UnitFamily::Percent;
    default:
      return std::nullopt;
  }
}

}  // namespace core

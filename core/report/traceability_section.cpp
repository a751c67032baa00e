// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/traceability_section.h"

#include <algorithm>
#include <set>

#include "core/report/record_words.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// A set-up of a channel, and the day on which it must not have been overdue.
struct Occasion {
  const Channel* channel;
  const Setup* setup;
  std::optional<Date> day;
  std::string name;  ///< "TP-01, post-test, 2031-05-04"
};

std::vector<Occasion> occasionsOf(const ReportBasis& basis) {
  std::vector<Occasion> occasions;
  for (const std::size_t index : basis.channels) {
    const Channel& channel = basis.channel(index);
    for (const std::size_t number : reportedChecks(channel, basis.order.content)) {
      const Check& check = channel.checks[number];
      occasions.push_back({&channel, &setupOf(channel, check), dateFromText(check.date),
                           channel.name + ", " + check.name + ", " + shownDay(check.date)});
    }
    occasions.push_back({&channel, &channel.setup, basis.order.printed, say("on the day of printing")});
  }
  return occasions;
}

void addOnce(std::vector<std::string>& list, const std::string& text) {
  if (std::find(list.begin(), list.end(), text) == list.end()) list.push_back(text);
}

bool isSame(const Traced& a, const Traced& b) {
  return a.id == b.id && a.serial == b.serial && a.resistance == b.resistance &&
         a.certificate == b.certificate && a.due == b.due;
}

void note(std::vector<Traced>& all, const Traced& one, const Occasion& occasion, const std::string& use) {
  auto found = std::find_if(all.begin(), all.end(), [&](const Traced& other) { return isSame(one, other); });
  if (found == all.end()) found = all.insert(all.end(), one);
  addOnce(found->uses, use);
  if (found->due && occasion.day && *found->due < *occasion.day) addOnce(found->overdue, occasion.name);
}

std::string joined(const std::vector<std::string>& texts) {
  std::string all;
  for (const std::string& text : texts) all += (all.empty() ? "" : "; ") + text;
  return all;
}

TableRow rowOf(std::vector<std::string> cells, const Traced& one) {
  cells.push_back(givenText(one.certificate));
  cells.push_back(one.due ? shown(*one.due) : say("not given"));
  cells.push_back(joined(one.uses));
  cells.push_back(one.overdue.empty() ? (one.due ? say("no") : say("not known")) : joined(one.overdue));
  return {std::move(cells), {}};
}

void addColumns(Table& table) {
  for (TableColumn column :
       {TableColumn{say("Certificate"), false, 16}, TableColumn{say("Calibration due"), false, 12},
        TableColumn{say("Used by"), false, 26}, TableColumn{say("Overdue"), false, 20}})
    table.columns.push_back(std::move(column));
}

/// Shunts that stand for no resistor of the stock, and channels without a named instrument.
std::string untraced(const std::vector<Traced>& all) {
  std::vector<std::string> uses;
  for (const Traced& one : all)
    if (one.id.empty() && one.serial.empty()) uses.insert(uses.end(), one.uses.begin(), one.uses.end());
  return uses.empty() ? std::string() : listedNames(uses);
}

void addResistors(Section& section, const std::vector<Traced>& resistors) {
  Table table{say("Resistors"), {{say("Resistor"), false, 12}, {say("Resistance"), true, 14}}, {}};
  addColumns(table);
  for (const Traced& one : resistors)
    if (!one.id.empty())
      table.rows.push_back(
          rowOf({one.id, formatQuantity(one.resistance->base(), UnitFamily::Resistance)}, one));
  if (!table.rows.empty()) section.blocks.push_back(std::move(table));
  if (const std::string shunts = untraced(resistors); !shunts.empty())
    section.blocks.push_back(
        Caution{say("Not traceable: no resistor of the stock is named for these shunts: {1}.", {shunts})});
}

void addInstruments(Section& section, const std::vector<Traced>& instruments) {
  Table table{say("Instruments"), {{say("Instrument"), false, 14}, {say("Serial"), false, 12}}, {}};
  addColumns(table);
  for (const Traced& one : instruments)
    if (!one.id.empty() || !one.serial.empty())
      table.rows.push_back(rowOf({givenText(one.id), givenText(one.serial)}, one));
  if (!table.rows.empty()) section.blocks.push_back(std::move(table));
  if (const std::string channels = untraced(instruments); !channels.empty())
    section.blocks.push_back(
        Caution{say("Not traceable: no instrument is named for these channels: {1}.", {channels})});
}

}  // namespace

std::vector<Traced> tracedResistors(const ReportBasis& basis) {
  std::vector<Traced> all;
  for (const Occasion& occasion : occasionsOf(basis)) {
    std::set<std::size_t> closed;
    for (const Step& step : occasion.setup->sequence) closed.insert(step.closed.begin(), step.closed.end());
    for (const std::size_t index : closed) {
      if (index >= occasion.setup->shunts.size()) continue;
      const Shunt& shunt = occasion.setup->shunts[index];
      const bool isNamed = !shunt.part.id.empty();  // the others are one line: nothing is known of them
      note(all,
           isNamed ? Traced{shunt.part.id, {}, shunt.resistance, shunt.part.certificate, shunt.part.due}
                   : Traced{},
           occasion, occasion.channel->name + ": " + shunt.name);
    }
  }
  std::stable_sort(all.begin(), all.end(), [](const Traced& a, const Traced& b) { return a.id < b.id; });
  return all;
}

std::vector<Traced> tracedInstruments(const ReportBasis& basis) {
  std::vector<Traced> all;
  for (const Occasion& occasion : occasionsOf(basis)) {
    const Identity& identity = occasion.setup->identity;
    note(all, {identity.name, identity.serial, {}, identity.certificate, identity.due}, occasion,
         occasion.channel->name);
  }
  std::stable_sort(all.begin(), all.end(), [](const Traced& a, const Traced& b) { return a.id < b.id; });
  return all;
}

Section traceabilitySection(const ReportBasis& basis) {
  Section section{say("Traceability"), 1, {}};
  const std::vector<Traced> resistors = tracedResistors(basis);
  if (resistors.empty()) section.blocks.push_back(Paragraph{say("No step closes a shunt."), {}});
  addResistors(section, resistors);
  addInstruments(section, tracedInstruments(basis));
  return section;
}

}  // namespace core

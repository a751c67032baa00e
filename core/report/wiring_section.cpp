// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/wiring_section.h"

#include <algorithm>

#include "core/report/wiring_sheet.h"

namespace core {
namespace {

/// What was read in each state of the wiring beside what it must be, and what fits all of it. What the
/// ohmmeter was like is not in the document: the table says for which one it is.
void addOhmReadings(Section& section, const Channel& channel) {
  const auto& readings = channel.ohmReadings;
  if (readings.empty()) return;
  const OhmmeterConditions usual;
  std::size_t told = 0;
  section.blocks.push_back(Paragraph{ohmConditionsText(usual), {}});
  for (const WiringState& state : wiringStates(channel.setup)) {
    const auto isOfState = [&](const OhmReading& reading) { return reading.state == state; };
    if (std::none_of(readings.begin(), readings.end(), isOfState)) continue;
    auto table = ohmTable(channel, state, usual);
    if (!table) continue;
    std::erase_if(table->rows, [](const TableRow& row) { return !row.verdict; });
    told += table->rows.size();
    if (!table->rows.empty()) section.blocks.push_back(*std::move(table));
  }
  if (told < readings.size())
    section.blocks.push_back(Paragraph{
        sayCount(readings.size() - told,
                 "One more reading is between points that the sheet does not list, or that are gone.",
                 "{n} more readings are between points that the sheet does not list, or that are gone."),
        {}});
  if (Table faults = ohmFaultTable(channel, usual); !faults.rows.empty())
    section.blocks.push_back(std::move(faults));
}

}  // namespace

Section wiringSection(const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  const Setup& setup = channel.setup;
  Section section{say("{1}, wiring", {channel.name}), 2, {}};
  if (setup.wiring.pins.empty()) {
    section.blocks.push_back(Paragraph{
        say("No pins are entered: shunts are switched inside the instrument, or wired as the drawing "
            "shows."),
        {}});
    addOhmReadings(section, channel);
    return section;
  }
  section.blocks.push_back(Caution{say("Switch the excitation off before wiring or ohmmeter work.")});
  if (Table faults = wiringFaultTable(setup); !faults.rows.empty())
    section.blocks.push_back(std::move(faults));
  else
    section.blocks.push_back(Paragraph{say("Pins and jumpers have no fault."), {}});
  section.blocks.push_back(pinTable(setup));
  if (!setup.shunts.empty()) section.blocks.push_back(jumperTable(setup));
  if (basis.has(ReportPart::Schematic))
    for (std::size_t shunt = 0; shunt < setup.shunts.size(); ++shunt)
      if (!setup.shunts[shunt].jumpers.empty())
        section.blocks.push_back(Picture{Picture::Kind::Wiring, index, 0,
                                         say("Pins with the jumpers of {1}", {setup.shunts[shunt].name}),
                                         shunt});
  addOhmReadings(section, channel);
  return section;
}

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/wiring_section.h"

#include "core/report/wiring_sheet.h"

namespace core {

Section wiringSection(const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  const Setup& setup = channel.setup;
  Section section{say("{1}, wiring", {channel.name}), 2, {}};
  if (setup.wiring.pins.empty()) {
    section.blocks.push_back(Paragraph{
        say("No pins are entered: shunts are switched inside the instrument, or wired as the drawing "
            "shows."),
        {}});
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
  if (channel.ohmReadings.empty()) return section;
  if (Table faults = ohmFaultTable(channel, {}); !faults.rows.empty())
    section.blocks.push_back(std::move(faults));
  return section;
}

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/overdue.h"

#include <algorithm>

#include "core/stock/resistor.h"
#include "core/units/language.h"

namespace core {

std::vector<std::size_t> overdueShunts(const Setup& setup, Date day) {
  std::vector<std::size_t> overdue;
  for (std::size_t shunt = 0; shunt < setup.shunts.size(); ++shunt) {
    const bool closed = std::any_of(setup.sequence.begin(), setup.sequence.end(), [shunt](const Step& step) {
      return std::find(step.closed.begin(), step.closed.end(), shunt) != step.closed.end();
    });
    if (closed && isOverdue(setup.shunts[shunt].part.due, day)) overdue.push_back(shunt);
  }
  return overdue;
}

std::string overdueSentence(const Setup& setup, Date day) {
  std::string list;
  for (const std::size_t index : overdueShunts(setup, day)) {
    const Shunt& shunt = setup.shunts[index];
    const std::string resistor = resistorName(shunt), due = shown(*shunt.part.due);
    const std::string text = shunt.part.id.empty()
                                 ? say("{1} (due {2})", {resistor, due})
                                 : say("{1} (shunt {2}, due {3})", {resistor, shunt.name, due});
    list = list.empty() ? text : say("{1}, {2}", {list, text});
  }
  return list.empty() ? list : say("Overdue for calibration on {1}: {2}.", {shown(day), list});
}

}  // namespace core

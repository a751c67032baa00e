// SPDX-License-Identifier: GPL-3.0-or-later
// The edits that the buttons of the wiring page make.
#include <algorithm>

#include "core/document/file_limits.h"
#include "core/document/wiring_edits.h"
#include "ui/theme.h"
#include "ui/wiring/wiring_page.h"
#include "ui/wiring/wiring_words.h"

namespace ui {
namespace {

bool hasPin(const core::Wiring& wiring, const core::PinName& name) {
  return std::any_of(wiring.pins.begin(), wiring.pins.end(),
                     [&](const core::Pin& pin) { return pin.name == name; });
}

/// The first that is worked out and not there, else from the first pin to the second.
core::Jumper nextJumper(const core::Setup& setup, std::size_t shunt) {
  const auto& present = setup.shunts[shunt].jumpers;
  if (const auto needed = core::jumpersFor(setup, shunt))
    for (const core::Jumper& jumper : *needed)
      if (std::find(present.begin(), present.end(), jumper) == present.end()) return jumper;
  return {setup.wiring.pins[0].name, setup.wiring.pins[1].name};
}

}  // namespace

bool WiringPage::hasChannel() {
  if (!m_channel) emit refused(tr("There is no channel yet: add a channel first."));
  return m_channel != nullptr;
}

bool WiringPage::hasShunt() {
  if (!hasChannel()) return false;
  if (!m_shunt) emit refused(tr("The channel has no shunts yet: add them in the table of shunts."));
  return m_shunt.has_value();
}

int WiringPage::pinRow() const {
  return m_table->currentIndex().isValid() ? m_table->currentIndex().row() : -1;
}

void WiringPage::addPin() {
  if (!hasChannel()) return;
  const core::Wiring& wiring = m_channel->setup.wiring;
  if (wiring.pins.size() >= core::mostPins)
    return emit refused(tr("A channel has at most %1 pins.").arg(core::mostPins));
  const std::size_t at = pinRow() >= 0 ? static_cast<std::size_t>(pinRow()) + 1 : wiring.pins.size();
  core::PinName name = at > 0 ? pinNameAfter(wiring.pins[at - 1].name) : core::PinName{"J1", "A"};
  while (hasPin(wiring, name)) name = pinNameAfter(name);
  m_session.editChannel(tr("Add pin"), core::withPinInserted(*m_channel, at, {name, {}}));
  m_table->setCurrentIndex(m_pinModel.index(static_cast<int>(at), PinModel::PinColumn));
  m_table->setFocus();
}

void WiringPage::removePin() {
  if (!hasChannel()) return;
  const int row = pinRow();
  if (row < 0) return emit refused(tr("Choose the pin to remove."));
  m_session.editChannel(tr("Remove pin"), core::withPinRemoved(*m_channel, static_cast<std::size_t>(row)));
  const int next = std::min(row, m_pinModel.rowCount() - 1);
  if (next >= 0) m_table->setCurrentIndex(m_pinModel.index(next, PinModel::PinColumn));
}

void WiringPage::pinUp() { movePin(-1); }
void WiringPage::pinDown() { movePin(1); }

void WiringPage::movePin(int by) {
  if (!hasChannel()) return;
  const int row = pinRow(), to = row + by;
  if (row < 0) return emit refused(tr("Choose the pin to move."));
  if (to < 0 || to >= m_pinModel.rowCount()) return;
  m_session.editChannel(tr("Move pin"), core::withPinMoved(*m_channel, static_cast<std::size_t>(row),
                                                           static_cast<std::size_t>(to)));
  m_table->setCurrentIndex(m_pinModel.index(to, m_table->currentIndex().column()));
}

void WiringPage::usualPins() {
  if (!hasChannel()) return;
  m_session.editChannel(tr("Take usual pins"),
                        core::withWiring(*m_channel, core::usualWiring(m_channel->setup)));
}

void WiringPage::addJumper() {
  if (!hasShunt()) return;
  if (m_channel->setup.wiring.pins.size() < 2)
    return emit refused(tr("A jumper joins two pins: add pins first."));
  auto jumpers = m_channel->setup.shunts[*m_shunt].jumpers;
  if (jumpers.size() >= core::mostJumpers)
    return emit refused(tr("A shunt has at most %1 jumpers.").arg(core::mostJumpers));
  jumpers.push_back(nextJumper(m_channel->setup, *m_shunt));
  m_session.editChannel(tr("Add jumper"), core::withJumpers(*m_channel, *m_shunt, std::move(jumpers)));
  m_jumperTable->setCurrentIndex(m_jumperModel.index(m_jumperModel.rowCount() - 1, JumperModel::From));
  m_jumperTable->setFocus();
}

void WiringPage::removeJumper() {
  if (!hasShunt()) return;
  const QModelIndex chosen = m_jumperTable->currentIndex();
  if (!chosen.isValid()) return emit refused(tr("Choose the jumper to remove."));
  auto jumpers = m_channel->setup.shunts[*m_shunt].jumpers;
  jumpers.erase(jumpers.begin() + chosen.row());
  m_session.editChannel(tr("Remove jumper"), core::withJumpers(*m_channel, *m_shunt, std::move(jumpers)));
}

void WiringPage::workOut() {
  if (!hasShunt()) return;
  auto jumpers = core::jumpersFor(m_channel->setup, *m_shunt);
  if (!jumpers) return emit refused(toText(jumpers.error()));
  m_session.editChannel(tr("Work out jumpers"), core::withJumpers(*m_channel, *m_shunt, *std::move(jumpers)));
}

/// Shunts that cannot be laid keep their jumpers; the first reason is told.
void WiringPage::workOutAll() {
  if (!hasShunt()) return;
  core::Channel channel = *m_channel;
  std::optional<core::Error> first;
  std::size_t failed = 0;
  for (std::size_t shunt = 0; shunt < channel.setup.shunts.size(); ++shunt) {
    auto jumpers = core::jumpersFor(channel.setup, shunt);
    if (jumpers) {
      channel = core::withJumpers(std::move(channel), shunt, *std::move(jumpers));
      continue;
    }
    ++failed;
    if (!first) first = jumpers.error();
  }
  const std::size_t all = channel.setup.shunts.size();
  m_session.editChannel(tr("Work out all jumpers"), std::move(channel));
  if (first) emit refused(tr("%1 of %2 shunts cannot be laid. %3").arg(failed).arg(all).arg(toText(*first)));
}

}  // namespace ui

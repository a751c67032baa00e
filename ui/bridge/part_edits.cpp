// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/part_edits.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <set>

#include "core/circuit/hookup_words.h"
#include "core/document/bridge_edits.h"
#include "core/document/edits.h"
#include "core/units/language.h"
#include "ui/theme.h"

namespace ui {
namespace {

using Kind = BridgePart::Kind;
using core::Channel;

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
  return QCoreApplication::translate("Bridge", text, comment, n);
}

// ---- adding ----------------------------------------------------------------------------------

std::set<std::size_t> armsOf(const BridgePicture& picture, const std::vector<BridgePart>& parts) {
  std::set<std::size_t> arms;
  for (const BridgePart& part : parts)
    if (const auto arm = armOf(picture, part)) arms.insert(*arm);
  return arms;
}

QString armsText(const std::set<std::size_t>& arms) {
  QStringList numbers;
  for (const std::size_t arm : arms) numbers << QString::number(arm + 1);
  if (arms.empty()) return tr("an arm");
  return (arms.size() == 1 ? tr("arm %1") : tr("arms %1")).arg(numbers.join(", "));
}

/// Without an arm the entry stays in its place and says what is missing.
QString withoutArm() { return tr("Select an arm first, or a leak or a shunt that lies at one."); }

PartAddition shuntOver(const Channel& channel, const std::set<std::size_t>& arms) {
  PartAddition add{"addShunt", tr("Shunt over %1").arg(armsText(arms)), tr("Add shunt"), {}, channel, {}};
  add.added = BridgePart{Kind::Shunt, channel.setup.shunts.size()};
  if (arms.empty()) add.refusal = withoutArm();
  for (const std::size_t arm : arms) add.after = core::withShuntOverArm(std::move(add.after), arm);
  return add;
}

PartAddition leakAt(const Channel& channel, const std::set<std::size_t>& arms, bool toStructure) {
  const QString text = toStructure ? tr("Leak from %1 to the structure") : tr("Leak over %1");
  PartAddition add{toStructure ? "addStructureLeak" : "addLeak",
                   text.arg(armsText(arms)),
                   tr("Add leak"),
                   {},
                   channel,
                   {}};
  const auto at = [&](std::size_t arm) -> std::optional<core::Resistance>& {
    core::Leak& leak = add.after.setup.bridge.leaks[arm];
    return toStructure ? leak.toStructure : leak.across;
  };
  for (const std::size_t arm : arms) {
    if (at(arm)) continue;
    at(arm) = core::firstLeak;
    if (!add.added) add.added = BridgePart{toStructure ? Kind::StructureLeak : Kind::Leak, arm};
  }
  if (!add.added) add.refusal = arms.empty() ? withoutArm() : tr("There is such a leak already.");
  return add;
}

constexpr core::Resistance seriesPotentiometer{10};

PartAddition balance(const Channel& channel, core::BalanceKind kind) {
  const bool parallel = kind == core::BalanceKind::Parallel;
  PartAddition add{parallel ? "addBalanceParallel" : "addBalanceSeries",
                   parallel ? tr("Balance network, parallel") : tr("Balance network, series"),
                   tr("Add balance network"),
                   {},
                   channel,
                   BridgePart{Kind::Balance, 0}};
  if (channel.setup.instrument.balance.kind == kind)
    add.refusal = tr("There is this balance network already.");
  core::Balance& network = add.after.setup.instrument.balance;
  network.kind = kind;
  // Between the arms a few ohm are usual, over the excitation many kilohm; what was typed stays.
  const core::Resistance untouched = core::Balance{}.potentiometer;
  if (!parallel && network.potentiometer == untouched) network.potentiometer = seriesPotentiometer;
  if (parallel && network.potentiometer == seriesPotentiometer) network.potentiometer = untouched;
  return add;
}

PartAddition senseLeads(const Channel& channel) {
  const core::Bridge& bridge = channel.setup.bridge;
  PartAddition add{"addSenseLeads", tr("Sense leads (six-wire)"), tr("Add sense leads"), {}, channel, {}};
  if (!core::templateOf(bridge.type).senseLeads)
    add.refusal = tr("This bridge is not offered with sense leads.");
  else if (bridge.sixWire)
    add.refusal = tr("There are sense leads already.");
  else
    add.after = core::withSenseLeads(channel, true);
  return add;
}

PartAddition inputResistance(const Channel& channel) {
  PartAddition add{"addInput", tr("Input resistance"),    tr("Add input resistance"), {},
                   channel,    BridgePart{Kind::Input, 0}};
  auto& input = add.after.setup.instrument.inputResistance;
  if (input)
    add.refusal = tr("The input has a resistance already.");
  else
    input = core::firstInput;
  return add;
}

// ---- removing --------------------------------------------------------------------------------

bool isSense(const BridgePart& part) {
  const auto role = static_cast<core::LeadRole>(part.index);
  return part.kind == Kind::Lead && (role == core::LeadRole::SensePlus || role == core::LeadRole::SenseMinus);
}

QString leadRefusal(const Channel& channel, const BridgePart& part) {
  const QString name = toQString(core::leadWord(static_cast<core::LeadRole>(part.index)));
  if (!isSense(part))
    return tr("Lead %1 cannot be removed: without it the bridge is not connected. Enter 0 Ω to leave its "
              "resistance out, or break it on the page What if.")
        .arg(name);
  const auto shunt = core::shuntOnSenseTerminal(channel.setup);
  if (!shunt) return {};
  return tr("The sense leads cannot be removed: an end of %1 is at a sense terminal. Move it first.")
      .arg(toQString(channel.setup.shunts[*shunt].name));
}

/// Empty when it can be removed.
QString refusalOf(const Channel& channel, const BridgePart& part) {
  switch (part.kind) {
    case Kind::Arm:
      return tr("An arm cannot be removed: a bridge has four. Choose another bridge in the set-up.");
    case Kind::Lead:
      return leadRefusal(channel, part);
    case Kind::Instrument:
      return tr("The instrument cannot be removed.");
    case Kind::Input:
      return channel.setup.instrument.inputResistance ? QString()
                                                      : tr("The input has no resistance to be removed.");
    default:
      return {};
  }
}

QString nameOfKind(const BridgePart& part) {
  switch (part.kind) {
    case Kind::Shunt:
      return tr("Remove shunt");
    case Kind::Balance:
      return tr("Remove balance network");
    case Kind::Lead:
      return tr("Remove sense leads");
    case Kind::Input:
      return tr("Remove input resistance");
    default:
      return tr("Remove leak");
  }
}

// ---- what went and what stays, in words

QString inARow(const QStringList& words) {
  std::vector<std::string> items;
  for (const QString& word : words) items.push_back(word.toStdString());
  return toQString(core::sayAll(items));
}

QString shuntsText(const Channel& channel, const std::vector<BridgePart>& shunts) {
  if (shunts.size() > 1) return tr("%n shunt(s)", nullptr, int(shunts.size()));
  return toQString(channel.setup.shunts[shunts.front().index].name).simplified();
}

QString removedText(const Channel& channel, const std::vector<BridgePart>& removed) {
  const auto ofKind = [&](Kind kind) {
    std::vector<BridgePart> found;
    for (const BridgePart& part : removed)
      if (part.kind == kind) found.push_back(part);
    return found;
  };
  const std::vector<BridgePart> shunts = ofKind(Kind::Shunt);
  const std::size_t leaks = ofKind(Kind::Leak).size() + ofKind(Kind::StructureLeak).size();
  QStringList words;
  if (!shunts.empty()) words << shuntsText(channel, shunts);
  if (leaks > 0) words << tr("%n leak(s)", nullptr, int(leaks));
  if (!ofKind(Kind::Balance).empty()) words << tr("the balance network");
  if (!ofKind(Kind::Lead).empty()) words << tr("the sense leads");
  if (!ofKind(Kind::Input).empty()) words << tr("the input resistance");
  const QString what = inARow(words);
  const auto& steps = channel.setup.sequence;
  const auto losing =
      static_cast<std::size_t>(std::count_if(steps.begin(), steps.end(), [&](const auto& step) {
        return std::any_of(step.closed.begin(), step.closed.end(), [&](std::size_t shunt) {
          return std::find(shunts.begin(), shunts.end(), BridgePart{Kind::Shunt, shunt}) != shunts.end();
        });
      }));
  if (losing == 0) return tr("Removed %1.").arg(what);
  return (shunts.size() == 1 ? tr("Removed %1; %n step(s) lost it.", nullptr, int(losing))
                             : tr("Removed %1; %n step(s) lost theirs.", nullptr, int(losing)))
      .arg(what);
}

QString staysText(const std::vector<BridgePart>& stay) {
  const auto any = [&](Kind kind) {
    return std::any_of(stay.begin(), stay.end(), [&](const BridgePart& part) { return part.kind == kind; });
  };
  QStringList words;
  if (any(Kind::Arm)) words << tr("arms");
  if (any(Kind::Lead)) words << tr("leads");
  if (any(Kind::Instrument)) words << tr("the instrument");
  return words.isEmpty() ? QString() : tr("What every bridge has stays: %1.").arg(inARow(words));
}

Channel without(Channel channel, const BridgePart& part) {
  core::Setup& setup = channel.setup;
  switch (part.kind) {
    case Kind::Shunt:
      return core::withShuntRemoved(std::move(channel), part.index);
    case Kind::Leak:
      setup.bridge.leaks[part.index].across.reset();
      return channel;
    case Kind::StructureLeak:
      setup.bridge.leaks[part.index].toStructure.reset();
      return channel;
    case Kind::Balance:
      setup.instrument.balance.kind = core::BalanceKind::None;
      return channel;
    case Kind::Input:
      setup.instrument.inputResistance.reset();
      return channel;
    default:
      return core::withSenseLeads(std::move(channel), false);
  }
}

}  // namespace

std::vector<PartAddition> additionsAt(const Channel& channel, const BridgePicture& picture,
                                      const std::vector<BridgePart>& parts) {
  std::vector<PartAddition> all;
  const auto arms = armsOf(picture, parts);
  all.push_back(shuntOver(channel, arms));
  all.push_back(leakAt(channel, arms, false));
  all.push_back(leakAt(channel, arms, true));
  all.push_back(balance(channel, core::BalanceKind::Parallel));
  all.push_back(balance(channel, core::BalanceKind::Series));
  all.push_back(senseLeads(channel));
  all.push_back(inputResistance(channel));
  return all;
}

PartRemoval removalOf(const Channel& channel, const std::vector<BridgePart>& parts) {
  PartRemoval removal{channel, {}, {}, {}};
  std::vector<BridgePart> removable, stay;
  for (const BridgePart& part : parts) {
    const QString refusal = refusalOf(channel, part);
    if (refusal.isEmpty())
      removable.push_back(part);
    else
      stay.push_back(part);
    if (removal.refusal.isEmpty()) removal.refusal = refusal;
  }
  if (removable.empty()) return removal;
  removal.said = removedText(channel, removable);
  if (stay.size() > 1 || (stay.size() == 1 && stay.front().kind != Kind::Input))
    if (const QString stays = staysText(stay); !stays.isEmpty()) removal.refusal = stays;
  // Either sense lead goes with the other.
  const bool alike = removable.size() == 1 || std::all_of(removable.begin(), removable.end(), isSense);
  removal.undo =
      alike ? nameOfKind(removable.front()) : tr("Remove %n part(s)", nullptr, int(removable.size()));
  // From the last on, so that the indices of those before stay.
  std::sort(removable.begin(), removable.end(),
            [](const BridgePart& a, const BridgePart& b) { return a.index > b.index; });
  for (const BridgePart& part : removable) removal.after = without(std::move(removal.after), part);
  return removal;
}

}  // namespace ui

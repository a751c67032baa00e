// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/circuit/bridge.h"

// What of a Hookup counts, and the small changes to one.

namespace core {

/// The inverse of leadName.
std::optional<LeadRole> leadFromName(std::string_view name);
/// Whether `bridge` has the lead; sense leads with six wires only.
bool hasLead(const Bridge& bridge, LeadRole role);
/// The same two leads, in whatever order.
bool samePair(const LeadPair& a, const LeadPair& b);

/// The part of the bridge's hookup that does something, said shortest: of leads that it has, no lead with
/// itself, no touching pair twice, and no more exchanged pairs than give the same connection.
Hookup hookupInUse(const Bridge& bridge);
/// Whether the bridge is connected as its template says.
bool asTemplateSays(const Bridge& bridge);
/// Whether each lead is whole, at its own terminal and apart from the others: what is said of the template
/// then holds, but perhaps for its signs.
bool areLeadsInOrder(const Bridge& bridge);
/// 1, or -1 where the output of the template has its sign turned round by reversed signal or excitation
/// wires. For bridges whose leads are in order.
int outputSign(const Bridge& bridge);
/// 1, or -1 where the gauges are reversed.
int gaugeSign(const Bridge& bridge);

/// `bridge`, the two leads exchanged at the instrument once more: a second time undoes it.
Bridge withExchanged(Bridge bridge, const LeadPair& pair);
/// `bridge`, its two leads touching, or no longer.
Bridge withTouching(Bridge bridge, const LeadPair& pair, bool touching);

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "core/document/document.h"

namespace core {

/// What one channel hands to others; each keeps its own gauges, arms, leads and leaks.
struct ChannelParts {
  bool plan = false;           ///< shunts with what is stated about them, and the sequence
  bool wiring = false;         ///< pins; jumpers go with the shunts
  bool instrument = false;     ///< unit, factors, excitation, range, input, balance
  bool acquisition = false;    ///< sample rate, filter, mains
  bool limits = false;         ///< limits, of figures of merit too, and decision rule
  bool uncertainties = false;  ///< statements about everything but shunts
};

struct Applied {
  Document document;
  /// "TP-31: it has no sense leads for shunt R1"; those channels are as before.
  std::vector<std::string> refused;
  std::vector<std::size_t> refusedAt;  ///< their indices, in the same order
};

/// `document` with the chosen `parts` of channel `from` put into each of the channels `to`; `from` itself
/// among them is passed over.
///
/// Plan: statements of uncertainty about shunts go along. Readings of open checks stay when the same shunts
/// (name and place) close in the same order as before, else they are dropped; what an ohmmeter showed stays
/// where shunt and jumpers are the same. Closed checks never change.
///
/// Instrument: the bridge factor goes along only between bridges that ask for the same one (template, and
/// Poisson's ratio where it counts), since it follows from the bridge that it is set for; what turns output
/// into the unit goes along neither to nor from a transducer, except between two of one rating.
///
/// Statements of uncertainty replace all of their kind; the correlation of their groups goes along.
///
/// Refused is a channel that lacks a place which a shunt or a pin of `from` is at, where a shunt would have
/// both ends at one point, or where readings or the least limit would change their unit and not their number.
Applied withApplied(const Document& document, std::size_t from, const ChannelParts& parts,
                    std::span<const std::size_t> to);

/// How many readings of open checks `before` has where `after`, the same channel after an edit, has none.
std::size_t droppedReadings(const Channel& before, const Channel& after);

/// `channel` with shunt `shunt` made of `resistor`: its value, identity, and what is known of its uncertainty
/// (U of the certificate, else the tolerance, rectangular), in no group. Pins of its resistor follow
/// (carried_names.h).
Channel withResistor(Channel channel, std::size_t shunt, const Resistor& resistor);
/// The shunts of the channels `to` take value and identity anew from the stock, where it holds their part. Of
/// a decade box the value stays: it is what the box is set to.
Document withStockValues(Document document, std::span<const std::size_t> to);
/// The document with another stock; the channels stay as they are.
Document withStock(Document document, Stock stock);

}  // namespace core

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
  bool limits = false;         ///< limits and decision rule
  bool uncertainties = false;  ///< statements about everything but shunts
};

struct Applied {
  Document document;
  std::vector<std::string>
      refused;  ///< "TP-31: it has no sense leads for shunt R1", those channels are as before
};

/// `document` with the chosen `parts` of channel `from` put into each of the channels `to`. Readings of open
/// checks are dropped where the steps close other shunts than before; closed checks never change.
Applied withApplied(const Document& document, std::size_t from, const ChannelParts& parts,
                    std::span<const std::size_t> to);

/// `channel` with shunt `shunt` made of `resistor`: its value, identity, and what is known of its uncertainty
/// (certificate, else tolerance).
Channel withResistor(Channel channel, std::size_t shunt, const Resistor& resistor);
/// The shunts of the channels `to` take value and identity anew from the stock, where it holds their part.
Document withStockValues(Document document, std::span<const std::size_t> to);
/// The document with another stock; the channels stay as they are.
Document withStock(Document document, Stock stock);

}  // namespace core

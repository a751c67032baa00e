// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/intake/intake.h"

namespace core {

/// A channel as it is read from a recording that holds others too.
struct ReadChannel {
  const ChannelFind& find;  ///< with a match
  RunChoice choice = {};
  const Setup& setup;
};

/// Channels of one recording are usually switched together, so that all are at one step at one time. A
/// channel of opposite polarity in a recording that ends early looks like one that begins late, and alone
/// nothing tells. For each of `read` a sentence where it is at other steps than most of the others with as
/// many steps, and with none of them; else an empty text. Of very many channels some are compared.
std::vector<std::string> apartFromOthers(std::span<const ReadChannel> read);

}  // namespace core

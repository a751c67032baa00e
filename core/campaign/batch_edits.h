// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/campaign/channel_values.h"

// Edits of many channels at once. Each is one edit of the document and says what became of every channel;
// channels that refuse stay as they are and do not hold the others up. (A plan, a wiring or an instrument's
// settings as a whole are handed over by core/document/apply.h.)

namespace core {

/// What became of one channel.
struct BatchOutcome {
  std::size_t channel = 0;  ///< index in the document before the edit
  bool changed = false;
  bool refused = false;
  std::string sentence;  ///< "TP-03: gauge factor: 0 is not above zero", "TP-04: nothing to change"
};

struct BatchEdit {
  Document document;
  std::vector<BatchOutcome> outcomes;  ///< one for each channel that was chosen, in their order
};
std::size_t changedCount(const BatchEdit& edit);
/// The sentences of those that refused.
std::vector<std::string> refusals(const BatchEdit& edit);

/// `values` put into each of `to` (see channel_values.h).
BatchEdit withValuesIn(const Document& document, std::span<const std::size_t> to,
                       const ChannelValues& values);

/// Each of `to` renamed by `pattern`, in their order: "{n}" counts from `first` with as many digits as its
/// letters ("{nn}" gives 01), "{name}" is the present name, "{group}" the group, "{column}" the recording
/// column (the name where there is none). A channel that was read from the column of its name keeps that
/// column in recordings. Nothing is changed at all when two of the new names are alike, another channel has
/// one, one is empty, or braces hold anything else: the error says so.
Result<BatchEdit> withNamesByPattern(const Document& document, std::span<const std::size_t> to,
                                     std::string_view pattern, std::size_t first = 1);

/// The check called `check` of each of `to` closed with the present set-up. Refused is a channel that has no
/// such check, or where it has no reading; one that is closed already stays as it is.
BatchEdit withChecksClosed(const Document& document, std::span<const std::size_t> to,
                           const std::string& check);
/// All open checks that have a reading.
BatchEdit withOpenChecksClosed(const Document& document, std::span<const std::size_t> to);

/// The channels gone. Of each it is told how many checks went with it.
BatchEdit withChannelsRemoved(const Document& document, std::span<const std::size_t> to);

}  // namespace core

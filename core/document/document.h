// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/assess/check.h"
#include "core/document/sign_off.h"
#include "core/plan/setup.h"
#include "core/stock/stock.h"
#include "core/wiring/ohmmeter.h"

namespace core {

/// One bridge on one amplifier input, its plan, and the checks made of it.
struct Channel {
  std::string name = "CH-01";  ///< unique within a document
  std::string note;
  Setup setup;
  std::vector<Check> checks;                 ///< in the order they were made
  std::vector<OhmReading> ohmReadings = {};  ///< at most one of each pair of points in each state
  std::string recordingColumn = {};  ///< its column in recordings; empty: the one of the channel's name
  std::string group = {};            ///< what it belongs with: "left spar"; empty: none

  friend bool operator==(const Channel&, const Channel&) = default;
};

/// What a saved file holds, and nothing that can be computed from it.
///
/// Channels are shared, never changed: an edit replaces the channels it touches, so results can be
/// kept by a channel's identity and undo costs a few pointers.
struct Document {
  std::string title;
  std::string site;     ///< where the test is done
  std::string article;  ///< what is tested
  std::string person;   ///< who prepared the plan
  std::string note;
  std::vector<std::shared_ptr<const Channel>> channels;
  std::shared_ptr<const Stock> stock = noStock();  ///< never null
  SignOff signOff = {};
  /// One a saving, oldest first. Only saving adds to it: undoing an edit does not undo that it was saved.
  std::vector<Revision> history = {};

  friend bool operator==(const Document&, const Document&) = default;
};

/// The set-up that `check` is judged by: its own once closed, else the channel's.
inline const Setup& setupOf(const Channel& channel, const Check& check) {
  return check.closedWith ? *check.closedWith : channel.setup;
}

}  // namespace core

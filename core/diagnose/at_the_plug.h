// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/circuit/bridge.h"

// What an ohmmeter reads with the excitation off and the cable unplugged from the instrument: the
// measurements that confirm a cause.

namespace core {

/// Two ends to measure between, on one side of the plug.
struct OhmPlaces {
  Node a = Node::PPlus;
  Node b = Node::SMinus;
  std::string words;  ///< "lead S- to lead return"; at the instrument "terminal S+ to terminal P-"

  friend bool operator==(const OhmPlaces&, const OhmPlaces&) = default;
};

/// Between which ends of the cable the leads show best: two that meet at one point of the gauges, so that no
/// gauge is in the loop, where the template has them; else through as few gauges as possible.
OhmPlaces placesForLeads(const Bridge& bridge);
/// The ends of the cable next to the two ends of an arm at the article, or the terminals of the instrument at
/// the two ends of a completion resistor.
OhmPlaces placesForArm(const Bridge& bridge, std::size_t arm);

/// Between those places: of the arms, leads and leaks at the article with the cable unplugged, or of what the
/// instrument has inside. Zero when leads of no resistance join them, none when nothing does.
std::optional<Resistance> resistanceAtPlug(const Bridge& bridge, const OhmPlaces& places, bool ofArticle);
/// Whether `arm` lies beyond the plug.
bool isBeyondPlug(const Bridge& bridge, std::size_t arm);

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <variant>
#include <vector>

#include "core/plan/setup.h"

namespace core {

inline constexpr std::array<std::uint8_t, 2> resistorEnds = {1, 2};

/// Which pins, places of the bridge and ends of resistors are one conductor: by what pins lead to, by joins
/// of the bridge without a lead, and by the jumpers that were laid. Leads and resistors keep apart what they
/// lie between. Does not outlive the set-up it was made of.
class JumperGroups {
 public:
  /// No jumper laid.
  explicit JumperGroups(const Setup& setup);

  void lay(const Jumper& jumper);

  /// The points of the bridge (see core::pointOf) that an end of a resistor is joined to, rising.
  std::vector<Node> pointsAt(const ResistorEnd& end) const;
  bool joined(const PinName& a, const PinName& b) const;
  bool joined(const ResistorEnd& a, const ResistorEnd& b) const;
  /// Points of the bridge that are joined to each other, each group rising, groups of two or more.
  std::vector<std::vector<Node>> joinedPoints() const;
  /// All pins in the group of `node`, in their order.
  std::vector<PinName> pinsAt(Node node) const;

  /// What a pin is one conductor with.
  struct PinGroup {
    std::size_t group = 0;                           ///< the same for all pins of a group
    std::optional<Node> point = {};                  ///< the first point of the bridge in it
    std::vector<const std::string*> resistors = {};  ///< whose ends are in it
  };
  /// For each pin of the set-up, in their order.
  std::vector<PinGroup> pinGroups(const std::vector<Pin>& pins) const;

 private:
  using Item = std::variant<PinName, Node, ResistorEnd>;

  std::size_t add(const Item& item);
  std::size_t rootOf(std::size_t item) const;
  std::optional<std::size_t> groupOf(const Item& item) const;
  void join(const Item& a, const Item& b);

  const Bridge& m_bridge;
  std::shared_ptr<std::map<Item, std::size_t>> m_items;  ///< shared by copies until one of them adds to it
  std::vector<std::size_t> m_parent;
};

/// The point of the bridge, or the resistor's end, that `pin` leads to; none for an unused pin and for a
/// place that the bridge does not have.
std::optional<std::variant<Node, ResistorEnd>> leadsTo(const Bridge& bridge, const PinUse& use);

/// The points that the ends 1 and 2 of a shunt's resistor come to lie at.
using Landing = std::array<std::optional<Node>, 2>;

/// With the first `count` of `jumpers` laid. An end that is joined to several points is at the first of them.
Landing landingOf(const Setup& setup, const Shunt& shunt, const std::vector<Jumper>& jumpers,
                  std::size_t count);
/// Whether that is where the plan wants the shunt, either way round.
bool landsAsPlanned(const Setup& setup, const Shunt& shunt, const Landing& landing);

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/spice.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <numeric>

#include "core/circuit/hookup_words.h"
#include "core/plan/prediction.h"

namespace core {
namespace {

/// Shortest digits that give the double back, with an exponent and without a scale letter: SPICE
/// reads 1M as a thousandth and 4k7 as 4000.
std::string number(double value) {
  std::array<char, 40> text;
  const auto end =
      std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::scientific);
  return {text.data(), end.ptr};
}

/// Foreign text as a piece of a comment: printable ASCII without the backslash, which joins lines.
std::string comment(std::string_view text, std::size_t longest = 80) {
  std::string line;
  for (const char c : text) {
    const bool continuesCharacter = (static_cast<unsigned char>(c) & 0xC0) == 0x80;
    if (continuesCharacter) continue;
    if (line.size() == longest) return line + "...";
    const bool plain = c >= ' ' && c <= '~' && c != '\\';
    line += plain ? c : '?';
  }
  return line;
}

/// "pplus", "senseminus", "arm1begin", "balancewiper": letters and digits only. All names of nodes are ours.
std::string plainName(std::string_view node) {
  std::string name;
  for (const char c : node) {
    if (c == '+')
      name += "plus";
    else if (c == '-')
      name += "minus";
    else if (c != ' ')
      name += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  }
  return name;
}

/// Which nodes are one point, and what the points are called.
class Points {
 public:
  Points(const Network& network, Port excitation)
      : m_names(network.nodes),
        m_point(m_names.size()),
        m_used(m_names.size(), false),
        m_ground(excitation.minus) {
    m_used[excitation.plus] = m_used[excitation.minus] = true;  // the source is there, though no lead may be
    std::iota(m_point.begin(), m_point.end(), NodeIndex{0});
    for (const Branch& branch : network.branches) {
      m_used[branch.a] = m_used[branch.b] = true;
      if (branch.resistance.base() == 0) join(branch.a, branch.b);
    }
  }

  std::string name(NodeIndex node) const {
    return joined(node, m_ground) ? "0" : plainName(m_names[m_point[node]]);
  }

  bool joined(NodeIndex a, NodeIndex b) const { return m_point[a] == m_point[b]; }

  /// A comment line for each point, with all its places.
  std::string list() const {
    std::string lines;
    for (NodeIndex point = 0; point < m_point.size(); ++point) {
      if (m_point[point] != point || !m_used[point]) continue;
      std::string places;
      for (NodeIndex node = point; node < m_point.size(); ++node)
        if (m_point[node] == point) places += (places.empty() ? "" : ", ") + m_names[node];
      lines += "* node " + name(point) + ": " + places + "\n";
    }
    return lines;
  }

 private:
  /// The point keeps the first of its nodes' names.
  void join(NodeIndex a, NodeIndex b) {
    const NodeIndex kept = std::min(m_point[a], m_point[b]), gone = std::max(m_point[a], m_point[b]);
    std::replace(m_point.begin(), m_point.end(), gone, kept);
  }

  std::vector<std::string> m_names;
  std::vector<NodeIndex> m_point;  ///< node -> first node of its point
  std::vector<bool> m_used;
  NodeIndex m_ground;
};

std::string resistor(const std::string& name, const Points& points, const Branch& branch) {
  return name + " " + points.name(branch.a) + " " + points.name(branch.b) + " " +
         number(branch.resistance.base());
}

/// Everything but the shunts, each with its comment.
std::string fixedElements(const BridgeNetwork& bridge, const Points& points) {
  std::string lines;
  for (BranchIndex k = 0; k < bridge.firstShunt; ++k) {
    const Branch& branch = bridge.network.branches[k];
    if (branch.resistance.base() == 0) continue;  // stands in the list of nodes
    const bool bypassed = points.joined(branch.a, branch.b);
    lines += "* " + branch.name + (bypassed ? ", both ends on one node:" : "") + "\n";
    lines += (bypassed ? "* " : "") + resistor("R" + std::to_string(k + 1), points, branch) + "\n";
  }
  return lines;
}

std::string shuntElements(const BridgeNetwork& bridge, const Points& points, const Step& step) {
  std::string lines;
  for (BranchIndex k = bridge.firstShunt; k < bridge.network.branches.size(); ++k) {
    const std::size_t shunt = k - bridge.firstShunt;
    const Branch& branch = bridge.network.branches[k];
    const bool closed = std::find(step.closed.begin(), step.closed.end(), shunt) != step.closed.end();
    lines += std::string("* shunt, ") + (closed ? "closed: " : "open: ") + comment(branch.name) + "\n";
    lines += (closed ? "" : "* ") + resistor("R" + std::to_string(k + 1), points, branch) + "\n";
  }
  return lines;
}

/// A voltage as every `.print` takes it, and the elements that it needs. Its first node must not be ground,
/// and its nodes must be two: any other gets a node of its own from a source of unit gain.
struct Printed {
  std::string elements;
  std::string voltage;
};

Printed printed(const Points& points, Port port, const std::string& what) {
  const std::string plus = points.name(port.plus), minus = points.name(port.minus);
  if (plus != "0" && plus != minus) return {{}, "v(" + plus + (minus == "0" ? "" : "," + minus) + ")"};
  const std::string node = "printed" + what, name = what == "output" ? "E1" : "E2";
  // The resistor gives the node its second element, which some programs ask for.
  return {"* " + what + " at a node of its own, to be printed with its sign\n" + name + " " + node + " 0 " +
              plus + " " + minus + " 1\nR" + name + " " + node + " 0 1e+03\n",
          "v(" + node + ")"};
}

std::string difference(const BridgeNetwork& bridge, Port port) {
  return "(" + bridge.network.nodes[port.plus] + " - " + bridge.network.nodes[port.minus] + ")";
}

/// What the output voltage is divided by, in a comment.
std::string divisor(const Instrument& instrument, const BridgeNetwork& bridge) {
  if (instrument.current)
    return "(I x nominal resistance), " + number(nominalExcitation(instrument).base()) + " V";
  return difference(bridge, bridge.reference);
}

std::string hookupComments(const Bridge& bridge) {
  std::string lines;
  for (const std::string& sentence : hookupSentences(bridge))
    lines += "* " + comment(sentence, sentence.size()) + "\n";
  return lines;
}

std::string analyses(const Instrument& instrument, const BridgeNetwork& bridge, const Points& points) {
  const std::string plus = points.name(bridge.excitation.plus), minus = points.name(bridge.excitation.minus);
  const auto& current = instrument.current;
  const std::string amount = number(current ? current->supplied.base() : instrument.excitation.base());
  // A current source drives from its first node, through itself, to its second: here out of the plus side.
  const std::string name = current ? "I1" : "V1";
  std::string lines =
      "* excitation\n" + name + " " + (current ? minus + " " + plus : plus + " " + minus) + " ";
  const Printed output = printed(points, bridge.output, "output");
  Printed reference;
  if (bridge.reference.plus != bridge.excitation.plus)
    reference = printed(points, bridge.reference, "reference");
  lines += amount + "\n" + output.elements + reference.elements + ".op\n.dc " + name + " " + amount + " " +
           amount + " " + amount + "\n.print dc " + output.voltage;
  return lines + (reference.voltage.empty() ? "" : " " + reference.voltage) + "\n.end\n";
}

}  // namespace

Result<std::string> spiceNetlist(const Setup& setup, std::size_t step, const std::string& title) {
  if (step >= setup.sequence.size())
    return Error{"step " + std::to_string(step + 1),
                 "the sequence has " + std::to_string(setup.sequence.size()) + " steps",
                 "Choose one of them, counted from 1"};
  if (auto solved = potentials(setup, step); !solved) return solved.error();

  const auto shunts = shuntBranches(setup);
  const BridgeNetwork bridge = bridgeNetwork(setup.bridge, setup.instrument, shunts);
  Network wiring = bridge.network;
  wiring.branches.resize(bridge.firstShunt);  // an open shunt joins nothing, whatever its value
  const Points points(wiring, bridge.excitation);
  const Step& planned = setup.sequence[step];
  // The first line is the title; our word in front keeps it from being anything else.
  return "Bridge netlist: " + comment(title) + "\n* step " + std::to_string(step + 1) + ": " +
         comment(planned.label) + "\n" + hookupComments(setup.bridge) +
         "* output = " + difference(bridge, bridge.output) + " / " + divisor(setup.instrument, bridge) +
         "\n" + points.list() + fixedElements(bridge, points) + shuntElements(bridge, points, planned) +
         analyses(setup.instrument, bridge, points);
}

}  // namespace core

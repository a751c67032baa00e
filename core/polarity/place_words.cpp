// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/polarity/place_words.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/circuit/hookup_words.h"
#include "core/units/language.h"

namespace core {
namespace {

/// An arm or a lead between two points.
struct Link {
  Node a, b;
  std::optional<std::size_t> arm;  ///< else `lead`
  LeadRole lead = LeadRole::ExcitationPlus;

  /// So that any number of leads counts less than one arm.
  int length() const { return arm ? 100 : 1; }
};

std::vector<Link> linksOf(const Bridge& bridge) {
  std::vector<Link> links;
  for (const std::size_t arm : {0, 1, 2, 3})
    links.push_back({pointOf(bridge, armBegin(arm)), pointOf(bridge, armEnd(arm)), arm});
  for (const Wire& wire : wiresOf(bridge))
    links.push_back({pointOf(bridge, wire.from), pointOf(bridge, wire.to), std::nullopt, wire.role});
  return links;
}

constexpr int unreached = 1 << 20;

/// For each node the shortest way to it and the link that it came by.
struct Ways {
  std::array<int, nodeCount> length;
  std::array<const Link*, nodeCount> by;
};

std::size_t index(Node node) { return static_cast<std::size_t>(node); }

/// Bellman and Ford: a dozen links, a few rounds.
Ways waysFrom(Node start, const std::vector<Link>& links) {
  Ways ways;
  ways.length.fill(unreached);
  ways.by.fill(nullptr);
  ways.length[index(start)] = 0;
  for (bool changed = true; changed;) {
    changed = false;
    for (const Link& link : links)
      for (const auto& [from, to] : {std::pair(link.a, link.b), std::pair(link.b, link.a)}) {
        const int length = ways.length[index(from)] + link.length();
        if (length >= ways.length[index(to)]) continue;
        ways.length[index(to)] = length;
        ways.by[index(to)] = &link;
        changed = true;
      }
  }
  return ways;
}

std::string listOf(const std::vector<LeadRole>& leads) {
  std::vector<std::string> names;
  for (const LeadRole lead : leads) names.emplace_back(leadWord(lead));
  return sayCount(names.size(), "lead {1}", "leads {1}", {sayAll(names)});
}

bool isTerminal(Node point) { return point < Node::SensePlus; }

/// "the excitation" or "the output", of two opposite corners that are wired as the template says.
std::optional<std::string> oppositeCorners(const Bridge& bridge, Node a, Node b) {
  if (!bridge.hookup.exchanged.empty()) return std::nullopt;
  // A point belongs to the corner whose terminal it reaches without an arm.
  const auto links = linksOf(bridge);
  const Ways fromA = waysFrom(a, links), fromB = waysFrom(b, links);
  const auto meets = [&](Node one, Node other) {
    const auto near = [](const Ways& ways, Node node) { return ways.length[index(node)] < 100; };
    return (near(fromA, one) && near(fromB, other)) || (near(fromA, other) && near(fromB, one));
  };
  if (meets(Node::PPlus, Node::PMinus)) return say("the excitation");
  if (meets(Node::SPlus, Node::SMinus)) return say("the output");
  return std::nullopt;
}

std::string fromTo(const Bridge& bridge, Node a, Node b) {
  return say("from {1} to {2}", {pointName(bridge, a), pointName(bridge, b)});
}

std::string overTwoArms(const Bridge& bridge, Node a, Node b) {
  const auto whole = oppositeCorners(bridge, a, b);
  if (!whole) return fromTo(bridge, a, b);
  const std::string words = say("over {1}", {*whole});
  if (isTerminal(a) && isTerminal(b)) return words;
  if (a >= Node::Arm1Begin && b >= Node::Arm1Begin) return say("{1} at the bridge", {words});
  return words + ", " + fromTo(bridge, a, b);
}

}  // namespace

Span spanBetween(const Bridge& bridge, Node a, Node b) {
  const auto links = linksOf(bridge);
  const Node start = pointOf(bridge, a);
  const Ways ways = waysFrom(start, links);
  Span span;
  for (Node at = pointOf(bridge, b); ways.by[index(at)];) {
    const Link& link = *ways.by[index(at)];
    if (link.arm)
      span.arms.push_back(*link.arm);
    else
      span.leads.push_back(link.lead);
    at = link.a == at ? link.b : link.a;
  }
  std::sort(span.arms.begin(), span.arms.end());
  std::sort(span.leads.begin(), span.leads.end());
  return span;
}

std::string placeWords(const Bridge& bridge, Node nodeA, Node nodeB) {
  const Node a = std::min(pointOf(bridge, nodeA), pointOf(bridge, nodeB));
  const Node b = std::max(pointOf(bridge, nodeA), pointOf(bridge, nodeB));
  if (a == b) return say("both ends at {1}", {pointName(bridge, a)});
  const auto [arms, leads] = spanBetween(bridge, a, b);
  if (arms.empty()) return leads.empty() ? fromTo(bridge, a, b) : say("over {1}", {listOf(leads)});
  if (arms.size() > 1) return overTwoArms(bridge, a, b);
  const std::string arm = say("over arm {1}", {std::to_string(arms.front() + 1)});
  if (leads.empty()) return arm;
  if (isTerminal(a) && isTerminal(b)) return say("{1} from the terminals", {arm});
  return say("{1} and {2}", {arm, listOf(leads)});
}

std::pair<Node, Node> endsAt(const Bridge& bridge, Node nodeA, Node nodeB) {
  const Node a = pointOf(bridge, nodeA), b = pointOf(bridge, nodeB);
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const Node begin = pointOf(bridge, armBegin(arm)), end = pointOf(bridge, armEnd(arm));
    if ((a == begin && b == end) || (a == end && b == begin)) return {armBegin(arm), armEnd(arm)};
  }
  return {a, b};
}

}  // namespace core

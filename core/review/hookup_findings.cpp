// SPDX-License-Identifier: GPL-3.0-or-later
#include <utility>

#include "core/circuit/hookup_words.h"
#include "core/review/reviewed_plan.h"

namespace core {
namespace {

constexpr const char* whyBroken =
    "The bridge is not the one that the plan is for, and readings through it tell nothing of the article.";
constexpr const char* whyExchanged =
    "Signs and sizes of all readings follow from it, and shunts at the terminals lie elsewhere than they "
    "look.";
constexpr const char* whyWires =
    "Reversed signal or excitation wires turn every sign round, both together leave them as they are.";
constexpr const char* whyGauges =
    "What the article feels then reads with the other sign, and so does what a shunt simulates.";

/// Everything about one part of the hookup, in its own words. `mend` takes this part out of a hookup.
void addPart(const ReviewedPlan& plan, std::vector<Finding>& findings, Severity severity, const Hookup& part,
             const char* why, std::string label, std::function<void(Hookup&)> mend) {
  Bridge bridge = plan.setup().bridge;
  bridge.hookup = part;
  std::string what;
  for (const std::string& sentence : hookupSentences(bridge)) what += (what.empty() ? "" : " ") + sentence;
  if (severity == Severity::Note) what += " Is it on purpose?";
  findings.push_back({FindingKind::Hookup,
                      severity,
                      {},
                      {},
                      std::move(what),
                      why,
                      {{std::move(label), [mend](Channel channel) {
                          mend(channel.setup.bridge.hookup);
                          return channel;
                        }}}});
}

void addLeads(const ReviewedPlan& plan, std::vector<Finding>& findings, const Hookup& used) {
  for (std::size_t role = 0; role < leadRoleCount; ++role) {
    if (!used.broken[role]) continue;
    Hookup part;
    part.broken[role] = true;
    addPart(plan, findings, Severity::Fault, part, whyBroken,
            "Take lead " + std::string(leadName(static_cast<LeadRole>(role))) + " as whole",
            [role](Hookup& hookup) { hookup.broken[role] = false; });
  }
  for (const LeadPair& pair : used.touching)
    addPart(plan, findings, Severity::Fault, {.touching = {pair}}, whyBroken,
            "Take leads " + pairText(pair) + " as apart", [pair](Hookup& hookup) {
              std::erase_if(hookup.touching, [&](const LeadPair& one) { return samePair(one, pair); });
            });
  if (!used.exchanged.empty())
    addPart(plan, findings, Severity::Warning, {.exchanged = used.exchanged}, whyExchanged,
            "Connect the leads as the template says", [](Hookup& hookup) { hookup.exchanged.clear(); });
}

}  // namespace

/// What is wrong for certain is a fault, what changes the plan a warning, what one may want a note.
void findHookup(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Hookup used = hookupInUse(plan.setup().bridge);
  addLeads(plan, findings, used);
  const auto addReversed = [&](bool Hookup::*what, const char* why, const std::string& label) {
    if (!(used.*what)) return;
    Hookup part;
    part.*what = true;
    addPart(plan, findings, Severity::Note, part, why, label,
            [what](Hookup& hookup) { hookup.*what = false; });
  };
  addReversed(&Hookup::signalReversed, whyWires, "Connect the signal wires as the template says");
  addReversed(&Hookup::excitationReversed, whyWires, "Connect the excitation as the template says");
  addReversed(&Hookup::gaugesReversed, whyGauges, "Connect the gauges as the template says");
}

}  // namespace core

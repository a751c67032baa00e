// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <utility>

#include "core/circuit/hookup_words.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/whatif/what_if.h"

namespace core {
namespace {

constexpr std::string_view whyBroken = sayLater(
    "The bridge is not the one that the plan is for, and readings through it tell nothing of the article.");
constexpr std::string_view whyExchanged = sayLater(
    "Signs and sizes of all readings follow from it, and shunts at the terminals lie elsewhere than they "
    "look.");
constexpr std::string_view whyWires = sayLater(
    "Reversed signal or excitation wires turn every sign round, both together leave them as they are.");
constexpr std::string_view whyGauges = sayLater(
    "What the article feels then reads with the other sign and the shunts as before: a shunt check cannot "
    "see "
    "it, so the plan should say that it is meant.");
constexpr std::string_view whyAgainst = sayLater(
    "A check by these shunts passes while every strain of the article is recorded with the wrong sign.");

/// The readings of the plan with its exchanged leads, against those with each lead at its own terminal.
std::optional<WhatIf> ofExchange(const Setup& setup, const std::vector<LeadPair>& exchanged) {
  Setup apart = setup;
  apart.bridge.hookup.exchanged.clear();
  std::vector<Alteration> alterations;
  for (const LeadPair& pair : exchanged)
    alterations.push_back(
        {AlterationKind::LeadsExchanged, static_cast<std::size_t>(pair.a), static_cast<std::size_t>(pair.b)});
  auto result = whatIf(apart, alterations);
  return result ? std::optional(*std::move(result)) : std::nullopt;
}

/// Whether the article reads with the other sign at a step whose reading has the sign it should have.
bool turnsArticle(const WhatIf& whatIf) {
  return std::any_of(whatIf.steps.begin(), whatIf.steps.end(),
                     [](const WhatIfStep& step) { return articleSign(step) == ArticleSign::Alone; });
}

/// Everything about one part of the hookup, in its own words. `mend` takes this part out of a hookup.
void addPart(const ReviewedPlan& plan, std::vector<Finding>& findings, Severity severity, const Hookup& part,
             const std::string& why, std::string label, std::function<void(Hookup&)> mend) {
  Bridge bridge = plan.setup().bridge;
  bridge.hookup = part;
  std::string what;
  for (const std::string& sentence : hookupSentences(bridge)) what += (what.empty() ? "" : " ") + sentence;
  if (part.signalReversed || part.excitationReversed || part.gaugesReversed)
    what += " " + say("Is it on purpose?");
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

void addExchanged(const ReviewedPlan& plan, std::vector<Finding>& findings,
                  const std::vector<LeadPair>& exchanged) {
  const auto whatIf = ofExchange(plan.setup(), exchanged);
  const bool turned = whatIf && turnsArticle(*whatIf);
  addPart(plan, findings, Severity::Warning, {.exchanged = exchanged},
          turned ? say(whyAgainst) : say(whyExchanged), say("Connect the leads as the template says"),
          [](Hookup& hookup) { hookup.exchanged.clear(); });
  if (whatIf)
    if (const std::string article = articleSentence(*whatIf, false); !article.empty())
      findings.back().what += " " + article;
}

void addLeads(const ReviewedPlan& plan, std::vector<Finding>& findings, const Hookup& used) {
  for (std::size_t role = 0; role < leadRoleCount; ++role) {
    if (!used.broken[role]) continue;
    Hookup part;
    part.broken[role] = true;
    addPart(plan, findings, Severity::Fault, part, say(whyBroken),
            say("Take lead {1} as whole", {leadWord(static_cast<LeadRole>(role))}),
            [role](Hookup& hookup) { hookup.broken[role] = false; });
  }
  for (const LeadPair& pair : used.touching)
    addPart(plan, findings, Severity::Fault, {.touching = {pair}}, say(whyBroken),
            say("Take leads {1} as apart", {pairText(pair)}), [pair](Hookup& hookup) {
              std::erase_if(hookup.touching, [&](const LeadPair& one) { return samePair(one, pair); });
            });
  if (!used.exchanged.empty()) addExchanged(plan, findings, used.exchanged);
}

}  // namespace

/// What is wrong for certain is a fault, what changes the plan or what no shunt shows a warning, what one may
/// want and sees in the signs a note.
void findHookup(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Hookup used = hookupInUse(plan.setup().bridge);
  addLeads(plan, findings, used);
  const auto addReversed = [&](bool Hookup::*what, Severity severity, const std::string& why,
                               const std::string& label) {
    if (!(used.*what)) return;
    Hookup part;
    part.*what = true;
    addPart(plan, findings, severity, part, why, label, [what](Hookup& hookup) { hookup.*what = false; });
  };
  addReversed(&Hookup::signalReversed, Severity::Note, say(whyWires),
              say("Connect the signal wires as the template says"));
  addReversed(&Hookup::excitationReversed, Severity::Note, say(whyWires),
              say("Connect the excitation as the template says"));
  addReversed(&Hookup::gaugesReversed, Severity::Warning, say(whyGauges),
              say("Connect the gauges as the template says"));
}

}  // namespace core

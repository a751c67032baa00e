// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/hookup_words.h"

#include <array>
#include <numeric>

#include "core/units/language.h"

namespace core {
namespace {

std::string name(std::size_t role) { return leadWord(static_cast<LeadRole>(role)); }

/// Pairs that share a lead are no pairs any more: "At the instrument lead P+ is where S- belongs, S- where
/// ..."
std::string ringsText(const std::vector<LeadPair>& exchanged) {
  std::array<std::size_t, leadRoleCount> places{};
  std::iota(places.begin(), places.end(), std::size_t{0});
  for (const LeadPair& pair : exchanged)
    std::swap(places[static_cast<std::size_t>(pair.a)], places[static_cast<std::size_t>(pair.b)]);
  std::string text;
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    if (places[role] != role)
      text += say("{1} where {2} belongs",
                  {(text.empty() ? say("At the instrument lead {1} is", {name(role)}) : ", " + name(role)),
                   name(places[role])});
  return text + ".";
}

void addExchanged(const std::vector<LeadPair>& exchanged, std::vector<std::string>& sentences) {
  std::array<int, leadRoleCount> times{};
  bool shared = false;
  for (const LeadPair& pair : exchanged)
    for (const LeadRole role : {pair.a, pair.b})
      shared = ++times[static_cast<std::size_t>(role)] > 1 || shared;
  if (shared) return sentences.push_back(ringsText(exchanged));
  for (const LeadPair& pair : exchanged)
    sentences.push_back(say("Leads {1} are exchanged at the instrument.", {pairText(pair)}));
}

}  // namespace

std::string leadWord(LeadRole role) {
  if (role == LeadRole::Return) return say("return");
  return std::string(leadName(role));
}

std::string pairText(const LeadPair& pair) {
  return say("{1} and {2}", {leadWord(pair.a), leadWord(pair.b)});
}

std::vector<std::string> hookupSentences(const Bridge& bridge) {
  const Hookup hookup = hookupInUse(bridge);
  std::vector<std::string> sentences;
  if (hookup.signalReversed)
    sentences.emplace_back(say("The signal wires are reversed: the instrument measures S- against S+."));
  if (hookup.excitationReversed) {
    sentences.push_back(
        hasLead(bridge, LeadRole::SensePlus)
            ? say("The excitation is reversed: the source's plus side is on P-, and the sense pair with it.")
            : say("The excitation is reversed: the source's plus side is on P-."));
  }
  if (hookup.gaugesReversed)
    sentences.emplace_back(
        say("The gauges are reversed: each feels the opposite of what the template says."));
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    if (hookup.broken[role]) sentences.push_back(say("Lead {1} is broken.", {name(role)}));
  addExchanged(hookup.exchanged, sentences);
  for (const LeadPair& pair : hookup.touching)
    sentences.push_back(say("Leads {1} touch at their gauge ends.", {pairText(pair)}));
  return sentences;
}

std::string hookupText(const Bridge& bridge) {
  std::string text;
  for (const std::string& sentence : hookupSentences(bridge)) text += (text.empty() ? "" : " ") + sentence;
  return text;
}

}  // namespace core

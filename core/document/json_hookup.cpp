// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_hookup.h"

#include <algorithm>

#include "core/circuit/hookup.h"
#include "core/document/file_limits.h"
#include "core/units/language.h"

namespace core {
namespace {

using enum JsonEmitter::Layout;

void writePairs(JsonEmitter& out, std::string_view key, const std::vector<LeadPair>& pairs) {
  if (pairs.empty()) return;
  out.array(key, OneLine, [&] {
    for (const LeadPair& pair : pairs)
      out.array({}, OneLine, [&] {
        out.text({}, leadName(pair.a));
        out.text({}, leadName(pair.b));
      });
  });
}

void writeBroken(JsonEmitter& out, const std::array<bool, leadRoleCount>& broken) {
  if (std::none_of(broken.begin(), broken.end(), [](bool is) { return is; })) return;
  out.array("broken", OneLine, [&] {
    for (std::size_t role = 0; role < leadRoleCount; ++role)
      if (broken[role]) out.text({}, leadName(static_cast<LeadRole>(role)));
  });
}

LeadRole readRole(const JsonPlace& at) {
  const auto role = leadFromName(at.text());
  if (!role)
    at.fail(say("there is no lead {1}", {inQuotes(at.text())}),
            say("Use P+, P-, S+, S-, sense+, sense- or return"));
  return role.value_or(LeadRole::ExcitationPlus);
}

LeadPair readPair(const JsonPlace& at) {
  if (at.size() != 2) {
    at.fail(say("it does not name two leads"), say("Write two, such as [\"P+\", \"S-\"]"));
    return {};
  }
  const LeadPair pair{readRole(at.element(0)), readRole(at.element(1))};
  if (pair.a == pair.b)
    at.fail(say("it names the lead {1} twice", {inQuotes(std::string(leadName(pair.a)))}),
            say("Name two different leads"));
  return pair;
}

std::array<bool, leadRoleCount> readBroken(const JsonPlace& at) {
  std::array<bool, leadRoleCount> broken{};
  for (std::size_t k = 0; k < at.size() && !at.failed(); ++k) {
    const JsonPlace one = at.element(k);
    bool& is = broken[static_cast<std::size_t>(readRole(one))];
    if (is) one.fail(say("the lead {1} is broken already", {inQuotes(one.text())}), say("Name it once"));
    is = true;
  }
  return broken;
}

/// Exchanges follow each other, so that a pair may come again; leads touch or they do not.
std::vector<LeadPair> readTouching(const JsonPlace& at) {
  std::vector<LeadPair> pairs;
  for (std::size_t k = 0; k < at.size() && !at.failed(); ++k) {
    const JsonPlace one = at.element(k);
    const LeadPair pair = readPair(one);
    const bool again =
        std::any_of(pairs.begin(), pairs.end(), [&](const LeadPair& other) { return samePair(pair, other); });
    if (again) one.fail(say("these two leads touch already"), say("Name them once"));
    pairs.push_back(pair);
  }
  return pairs;
}

}  // namespace

void writeHookup(JsonEmitter& out, std::string_view key, const Hookup& hookup) {
  if (hookup == Hookup{}) return;
  out.object(key, OneLine, [&] {
    if (hookup.signalReversed) out.boolean("signal_reversed", true);
    if (hookup.excitationReversed) out.boolean("excitation_reversed", true);
    if (hookup.gaugesReversed) out.boolean("gauges_reversed", true);
    writeBroken(out, hookup.broken);
    writePairs(out, "exchanged", hookup.exchanged);
    writePairs(out, "touching", hookup.touching);
  });
}

Hookup readHookup(const JsonPlace& at) {
  const JsonFields in(
      at, {"signal_reversed", "excitation_reversed", "gauges_reversed", "broken", "exchanged", "touching"});
  const auto reversed = [&](std::string_view key) { return in.has(key) && in.at(key).boolean(); };
  Hookup hookup;
  hookup.signalReversed = reversed("signal_reversed");
  hookup.excitationReversed = reversed("excitation_reversed");
  hookup.gaugesReversed = reversed("gauges_reversed");
  if (in.has("broken")) hookup.broken = readBroken(in.at("broken"));
  if (in.has("exchanged"))
    hookup.exchanged =
        readShortList<LeadPair>(in.at("exchanged"), mostExchanges, say("exchanged pairs"), readPair);
  if (in.has("touching")) hookup.touching = readTouching(in.at("touching"));
  return hookup;
}

}  // namespace core

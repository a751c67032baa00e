// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/document/edits.h"
#include "core/review/review.h"
#include "tests/support/setups.h"

namespace core {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;
using enum LeadRole;

constexpr Date today{std::chrono::year(2026), std::chrono::May, std::chrono::day(11)};

/// A two-sided plan over arms 1 and 2 of a full bridge, labelled as `up` and `down` say: nothing to find.
Channel plain(const std::string& up = "+", const std::string& down = "-") {
  Channel channel;
  channel.setup = test::equalArms(BridgeType::FullBending, 350.0_ohm);
  channel.setup.sequence = {{"zero", {}}};
  for (const std::size_t arm : {1, 0}) {
    for (const double ohm : {174650.0, 87150.0, 58000.0}) {
      channel.setup.sequence.push_back(
          {(arm == 1 ? up : down) + std::to_string(channel.setup.shunts.size() % 3 + 1),
           {channel.setup.shunts.size()}});
      channel = withShuntAdded(channel, {"R" + std::to_string(channel.setup.shunts.size() + 1) + " arm",
                                         Resistance(ohm), armBegin(arm), armEnd(arm)});
    }
    channel.setup.sequence.push_back({"zero", {}});
  }
  return channel;
}

Channel hookedUp(const Hookup& hookup, Channel channel = plain()) {
  channel.setup.bridge.hookup = hookup;
  return channel;
}

std::vector<Finding> reviewed(const Channel& channel) {
  return review(channel, evaluate(channel), {}, today);
}

std::vector<Finding> of(FindingKind kind, const Channel& channel) {
  auto findings = reviewed(channel);
  std::erase_if(findings, [kind](const Finding& one) { return one.kind != kind; });
  return findings;
}

Finding only(const Channel& channel, FindingKind kind = FindingKind::Hookup) {
  const auto findings = of(kind, channel);
  EXPECT_THAT(findings, SizeIs(1));
  return findings.empty() ? Finding{kind, {}, {}, {}, {}, {}, {}} : findings.front();
}

TEST(HookupFindings, ABridgeAsItsTemplateSaysHasNone) { EXPECT_THAT(reviewed(plain()), IsEmpty()); }

TEST(HookupFindings, ABrokenOrTouchingLeadIsAFaultOfThePlan) {
  Hookup broken;
  broken.broken[static_cast<std::size_t>(ExcitationPlus)] = true;
  const Finding one = only(hookedUp(broken));
  EXPECT_EQ(one.severity, Severity::Fault);
  EXPECT_EQ(one.what, "Lead P+ is broken.");
  ASSERT_THAT(one.mends, SizeIs(1));
  EXPECT_EQ(one.mends[0].apply(hookedUp(broken)), plain());

  const Channel touching = hookedUp({.touching = {{SignalMinus, ExcitationPlus}, {SignalPlus, SignalMinus}}});
  const auto both = of(FindingKind::Hookup, touching);
  ASSERT_THAT(both, SizeIs(2));
  EXPECT_EQ(both[0].severity, Severity::Fault);
  EXPECT_EQ(both[0].what, "Leads S- and P+ touch at their gauge ends.");
  EXPECT_EQ(both[0].mends[0].apply(touching).setup.bridge.hookup.touching.size(), 1u);
}

TEST(HookupFindings, AnExchangedPairIsAWarningWithAMend) {
  const Channel channel = hookedUp({.exchanged = {{SignalPlus, SignalMinus}}});
  const Finding one = only(channel);
  EXPECT_EQ(one.severity, Severity::Warning);
  EXPECT_EQ(one.what, "Leads S+ and S- are exchanged at the instrument.");
  EXPECT_EQ(one.mends[0].apply(channel), plain());
}

TEST(HookupFindings, LeadsExchangedSoThatTheArticleTurnsAndTheShuntsDoNotAreAWarningThatSaysSo) {
  // Derived: from terminal P- or P+ to terminal S- a shunt lies over an arm of the other half bridge once S+
  // and S- are exchanged, and reads with the sign it had (TN-514: opposite arms); the gauges read the other
  // way round.
  Channel channel = plain();
  for (Shunt& shunt : channel.setup.shunts) {
    shunt.a = shunt.a == Node::Arm1Begin ? Node::PPlus : Node::SMinus;
    shunt.b = shunt.b == Node::Arm1End ? Node::SMinus : Node::PMinus;
  }
  ASSERT_THAT(reviewed(channel), IsEmpty());
  for (const LeadPair& pair :
       {LeadPair{SignalPlus, SignalMinus}, LeadPair{ExcitationPlus, ExcitationMinus}}) {
    const Channel exchanged = hookedUp({.exchanged = {pair}}, channel);
    const Finding one = only(exchanged);
    EXPECT_EQ(one.severity, Severity::Warning);
    EXPECT_THAT(one.why,
                HasSubstr("passes while every strain of the article is recorded with the wrong sign"));
    EXPECT_THAT(one.what, HasSubstr("The article's strain then reads with the other sign (simulated "));
    EXPECT_THAT(one.what, HasSubstr("which a shunt check does not see"));
    EXPECT_EQ(one.mends[0].apply(exchanged), channel);
  }
}

TEST(HookupFindings, WhatIsReversedIsANoteAndEachHasItsMend) {
  const Channel channel =
      hookedUp({.signalReversed = true, .excitationReversed = true, .gaugesReversed = true});
  auto notes = of(FindingKind::Hookup, channel);
  ASSERT_THAT(notes, SizeIs(3));
  for (const Finding& note : notes) {
    const bool gauges = note.what.find("gauges") != std::string::npos;
    EXPECT_EQ(note.severity, gauges ? Severity::Warning : Severity::Note);
    EXPECT_EQ(note.why.find("a shunt check cannot see it") != std::string::npos, gauges);
    EXPECT_THAT(note.what, HasSubstr("on purpose?"));
  }
  Channel mended = channel;
  for (const Finding& note : notes) mended = note.mends[0].apply(mended);
  EXPECT_EQ(mended, plain());
}

TEST(HookupFindings, WhatIsOfALeadThatIsNotThereIsNotSaid) {
  Hookup hookup{.exchanged = {{SensePlus, SenseMinus}}};
  hookup.broken[static_cast<std::size_t>(Return)] = true;
  EXPECT_THAT(reviewed(hookedUp(hookup)), IsEmpty());
}

TEST(HookupFindings, LabelsAreHeldAgainstWhatReversedWiresRead) {
  // TN-514: a shunt over arm 2 reads positive; with the signal wires reversed, negative.
  const Channel reversed = hookedUp({.signalReversed = true});
  const Finding opposite = only(reversed, FindingKind::OppositePolarity);
  EXPECT_THAT(opposite.what, HasSubstr("6 steps"));
  EXPECT_THAT(opposite.what, HasSubstr("will read -"));
  EXPECT_THAT(opposite.why, HasSubstr("the signal wires are entered as reversed and should not be"));
  ASSERT_THAT(opposite.mends, SizeIs(3));
  EXPECT_EQ(opposite.mends[2].apply(reversed), plain());
  EXPECT_THAT(of(FindingKind::OppositePolarity, hookedUp({.signalReversed = true}, plain("-", "+"))),
              IsEmpty());
  EXPECT_THAT(
      of(FindingKind::OppositePolarity, hookedUp({.signalReversed = true, .excitationReversed = true})),
      IsEmpty());
  EXPECT_THAT(of(FindingKind::OppositePolarity, hookedUp({.gaugesReversed = true})), IsEmpty())
      << "signs say what is read, and that stays";
}

TEST(HookupFindings, LabelsOfALoadAreHeldAgainstWhatIsSimulated) {
  const Channel words = plain("tension ", "compression ");
  EXPECT_THAT(reviewed(words), IsEmpty());
  EXPECT_THAT(of(FindingKind::OppositePolarity, hookedUp({.signalReversed = true}, words)), IsEmpty());
  const Channel reversed = hookedUp({.gaugesReversed = true}, words);
  const Finding opposite = only(reversed, FindingKind::OppositePolarity);
  EXPECT_THAT(opposite.what, HasSubstr("will simulate -"));
  EXPECT_EQ(opposite.mends.back().apply(reversed), words);
  EXPECT_THAT(of(FindingKind::OppositePolarity, opposite.mends.front().apply(reversed)), IsEmpty());
}

TEST(HookupFindings, ShuntsThroughLeadsAreToldForReversedWiresAndNotForExchangedOnes) {
  Channel channel = plain();
  channel.setup.bridge.leads.fill(Resistance(5));
  for (Shunt& shunt : channel.setup.shunts) {
    shunt.a = shunt.a == Node::Arm1Begin ? Node::PPlus : Node::SMinus;
    shunt.b = shunt.b == Node::Arm1End ? Node::SMinus : Node::PMinus;
  }
  const auto as = of(FindingKind::ShuntThroughLeads, channel);
  ASSERT_THAT(as, SizeIs(2));
  const auto reversed = of(FindingKind::ShuntThroughLeads, hookedUp({.signalReversed = true}, channel));
  ASSERT_THAT(reversed, SizeIs(2));
  EXPECT_EQ(reversed[0].what, as[0].what);
  EXPECT_THAT(
      of(FindingKind::ShuntThroughLeads, hookedUp({.exchanged = {{SignalPlus, SignalMinus}}}, channel)),
      IsEmpty());
}

}  // namespace
}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <functional>
#include <map>
#include <random>
#include <string>
#include <vector>

#include "core/campaign/batch_edits.h"
#include "core/campaign/numbering.h"
#include "core/document/apply.h"
#include "core/document/bridge_edits.h"
#include "core/document/edits.h"
#include "core/document/ohm_edits.h"
#include "core/document/span_edits.h"
#include "core/document/wiring_edits.h"
#include "core/plan/pattern.h"
#include "core/record/review_state.h"
#include "core/review/review.h"
#include "tests/support/random_document.h"
#include "ui/session.h"

// Every kind of edit that core knows, with arguments by chance.

namespace reliability {

class RandomEdits {
 public:
  RandomEdits(ui::Session& session, std::uint64_t seed) : m_session(session), m_engine(seed) {}

  /// Does one edit of the kinds that are possible now and tells its name; it may change nothing.
  std::string one() {
    chooseAnywhere();
    const auto& kinds = m_session.channel() ? channelKinds() : emptyKinds();
    const Kind& kind = kinds[below(kinds.size())];
    (this->*kind.act)();
    return kind.name;
  }

  std::size_t below(std::size_t bound) { return bound == 0 ? 0 : m_engine() % bound; }
  bool oneIn(std::size_t count) { return below(count) == 0; }
  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(m_engine() >> 11) * 0x1p-53);
  }
  /// Another channel, check or step is chosen now and then; that is no edit.
  void chooseAnywhere() {
    if (!oneIn(4)) return;
    const std::size_t channels = m_session.document().channels.size();
    if (channels == 0) return;
    m_session.selectChannel(below(channels));
    m_session.selectCheck(m_session.channel()->checks.empty() || oneIn(4)
                              ? std::nullopt
                              : std::optional(below(m_session.channel()->checks.size())));
    if (const std::size_t steps = m_session.channel()->setup.sequence.size())
      m_session.selectStep(below(steps));
  }

 private:
  struct Kind {
    const char* name;
    void (RandomEdits::*act)();
  };

  const core::Channel& channel() const { return *m_session.channel(); }
  const core::Setup& setup() const { return channel().setup; }
  std::size_t at() const { return *m_session.selection().channel; }
  void put(core::Channel next) { m_session.editChannel("Random edit", std::move(next)); }
  void put(core::Document next) { m_session.edit("Random edit", std::move(next)); }
  std::string word() {
    static const char* const words[] = {"R1",  "spar",    "S-104", "left <b>", "größer",
                                        "\"q", "a\tb\nc", "=1+1",  "ε µΩ",     ""};
    return words[below(std::size(words))] + (oneIn(3) ? std::to_string(below(1000)) : std::string());
  }
  core::Node node() { return core::allNodes()[below(core::nodeCount)]; }
  /// An index of an open check, if there is one.
  std::optional<std::size_t> openCheck() {
    std::vector<std::size_t> open;
    for (std::size_t k = 0; k < channel().checks.size(); ++k)
      if (!channel().checks[k].closedWith) open.push_back(k);
    return open.empty() ? std::nullopt : std::optional(open[below(open.size())]);
  }
  std::vector<std::size_t> someChannels() {
    std::vector<std::size_t> some;
    for (std::size_t k = 0; k < m_session.document().channels.size(); ++k)
      if (oneIn(2)) some.push_back(k);
    return some;
  }

  // The document and its channels.

  void details() {
    core::Document next = m_session.document();
    std::string* const texts[] = {&next.title, &next.site, &next.article, &next.person, &next.note};
    *texts[below(5)] = word();
    put(std::move(next));
  }
  void insertChannel() {
    const core::Document other = support::randomDocument(m_engine());
    core::Document next = m_session.document();
    if (other.channels.empty() || next.channels.size() > 5) return removeChannel();
    put(core::withChannelInserted(std::move(next), below(m_session.document().channels.size() + 1),
                                  *other.channels.front()));
  }
  void copyChannel() {
    if (m_session.document().channels.size() > 5) return removeChannel();
    put(core::withChannelCopies(m_session.document(), at(), 1 + below(2)));
  }
  void removeChannel() {
    if (m_session.document().channels.empty()) return;
    put(core::withChannelRemoved(m_session.document(), below(m_session.document().channels.size())));
  }
  void moveChannel() {
    core::Document next = m_session.document();
    std::swap(next.channels[below(next.channels.size())], next.channels[below(next.channels.size())]);
    put(std::move(next));
  }
  void renameMany() {
    const auto some = someChannels();
    if (const auto named =
            core::withNamesByPattern(m_session.document(), some, oneIn(2) ? "{name}-{n}" : "X{nn}"))
      put(named->document);
  }
  void editMany() {
    core::ChannelValues values;
    if (oneIn(2)) values.group = word();
    if (oneIn(3)) values.note = word();
    if (oneIn(3)) values.gaugeFactor = between(1, 3);
    if (oneIn(3)) values.gaugeResistance = core::Resistance(between(100, 1000));
    if (oneIn(4)) values.lead = core::Lead(core::Resistance(between(0, 5)));
    if (oneIn(4)) values.excitation = core::Voltage(between(0.5, 10));
    if (oneIn(4)) values.relativeLimit = between(0, 0.1);
    if (oneIn(4)) values.type = static_cast<core::BridgeType>(below(core::bridgeTypeCount));
    if (oneIn(4)) values.instrumentSerial = word();
    put(core::withValuesIn(m_session.document(), someChannels(), values).document);
  }
  void applyToOthers() {
    const core::ChannelParts parts{.plan = oneIn(2),
                                   .wiring = oneIn(2),
                                   .instrument = oneIn(2),
                                   .acquisition = oneIn(2),
                                   .limits = oneIn(2),
                                   .uncertainties = oneIn(2)};
    put(core::withApplied(m_session.document(), at(), parts, someChannels()).document);
  }
  void removeMany() {
    if (oneIn(8)) put(core::withChannelsRemoved(m_session.document(), someChannels()).document);
  }
  void closeMany() { put(core::withOpenChecksClosed(m_session.document(), someChannels()).document); }
  void takeStock() { put(core::withStock(m_session.document(), *support::randomDocument(m_engine()).stock)); }
  void stockValues() { put(core::withStockValues(m_session.document(), someChannels())); }
  void signOff() {
    const auto stage = static_cast<core::Stage>(below(core::stageCount));
    const auto next = core::withStage(m_session.document(), stage, oneIn(2) ? "R. Larch" : "B. Alder",
                                      "2031-05-04T10:00:00Z", word());
    if (next) put(*next);
  }

  // One channel as a whole.

  void channelTexts() {
    core::Channel next = channel();
    std::string* const texts[] = {&next.note, &next.group, &next.recordingColumn};
    *texts[below(3)] = word();
    if (oneIn(3)) next.name = core::uniqueChannelName(m_session.document(), "N" + word(), at());
    put(std::move(next));
  }
  void otherSetup() {
    const core::Document other = support::randomDocument(m_engine());
    if (other.channels.empty()) return;
    core::Channel next = *other.channels.front();
    next.name = channel().name;
    put(std::move(next));
  }
  void otherInstrument() {
    const core::Document other = support::randomDocument(m_engine());
    if (other.channels.empty()) return;
    core::Channel next = channel();
    next.setup.instrument = other.channels.front()->setup.instrument;
    next.setup.acquisition = other.channels.front()->setup.acquisition;
    next.setup.limits = other.channels.front()->setup.limits;
    next.setup.decision = other.channels.front()->setup.decision;
    put(std::move(next));
  }
  void bridgeType() {
    put(core::withBridgeType(channel(), static_cast<core::BridgeType>(below(core::bridgeTypeCount))));
  }
  void senseLeads() { put(core::withSenseLeads(channel(), !setup().bridge.sixWire)); }
  void exchangeArms() { put(core::withArmsExchanged(channel(), below(4), below(4))); }
  void moveLeak() { put(core::withLeakMoved(channel(), oneIn(2), below(4), below(4))); }
  void straighten() {
    core::Straighten what = core::allOf(setup());
    if (oneIn(2)) what.arms.clear();
    if (oneIn(2)) what.shunts.clear();
    put(core::withStraightened(channel(), what));
  }
  void armAndLead() {
    core::Channel next = channel();
    core::Bridge& bridge = next.setup.bridge;
    if (oneIn(2)) bridge.arms[below(4)] = core::Resistance(between(100, 1000));
    if (oneIn(2)) bridge.leads[below(core::leadRoleCount)] = core::Resistance(between(0, 20));
    if (oneIn(4)) bridge.hookup.signalReversed = !bridge.hookup.signalReversed;
    if (oneIn(4)) bridge.hookup.broken[below(core::leadRoleCount)] ^= true;
    put(std::move(next));
  }
  void mend() {
    const auto& evaluation = m_session.evaluation(at());
    const auto findings = core::review(channel(), evaluation, *m_session.document().stock, m_session.today());
    std::vector<core::Mend> mends;
    for (const core::Finding& finding : findings)
      mends.insert(mends.end(), finding.mends.begin(), finding.mends.end());
    if (!mends.empty()) put(mends[below(mends.size())].apply(channel()));
  }

  // Shunts and steps.

  void addShunt() {
    if (setup().shunts.size() > 8) return removeShunt();
    put(core::withShuntAdded(
        channel(),
        {.name = word(), .resistance = core::Resistance(between(1e4, 1e6)), .a = node(), .b = node()}));
  }
  void removeShunt() {
    if (!setup().shunts.empty()) put(core::withShuntRemoved(channel(), below(setup().shunts.size())));
  }
  void changeShunt() {
    if (setup().shunts.empty()) return;
    const std::size_t which = below(setup().shunts.size());
    core::Shunt shunt = setup().shunts[which];
    if (oneIn(2)) shunt.name = word();
    if (oneIn(2)) shunt.resistance = core::Resistance(between(1e3, 1e6));
    if (oneIn(3)) shunt.wires = core::Resistance(between(0, 2));
    if (oneIn(3)) shunt.part.id = word();
    put(core::withShunt(channel(), which, std::move(shunt)));
  }
  void moveShunt() {
    if (!setup().shunts.empty())
      put(core::withShuntAt(channel(), below(setup().shunts.size()), node(), node()));
  }
  void shuntOverArm() {
    if (setup().shunts.size() <= 8) put(core::withShuntOverArm(channel(), below(4)));
  }
  void copyShunts() {
    if (!setup().shunts.empty() && setup().shunts.size() <= 8)
      put(core::withShuntsDuplicated(channel(), {below(setup().shunts.size())}));
  }
  void fromStock() {
    const auto& resistors = m_session.document().stock->resistors;
    if (!resistors.empty() && !setup().shunts.empty())
      put(core::withResistor(channel(), below(setup().shunts.size()), resistors[below(resistors.size())]));
  }
  core::Step step() {
    core::Step made{.label = word(), .closed = {}};
    for (std::size_t k = 0; k < setup().shunts.size(); ++k)
      if (oneIn(3)) made.closed.push_back(k);
    made.hold = core::Duration(between(0, 5));
    return made;
  }
  void addStep() {
    if (setup().sequence.size() > 24) return removeStep();
    put(core::withStepInserted(channel(), below(setup().sequence.size() + 1), step()));
  }
  void removeStep() {
    if (!setup().sequence.empty()) put(core::withStepRemoved(channel(), below(setup().sequence.size())));
  }
  void changeStep() {
    if (!setup().sequence.empty()) put(core::withStep(channel(), below(setup().sequence.size()), step()));
  }
  void moveStep() {
    const std::size_t steps = setup().sequence.size();
    if (steps > 0) put(core::withStepMoved(channel(), below(steps), below(steps)));
  }
  void layOut() {
    core::Pattern pattern = core::usualPatterns()[below(core::usualPatterns().size())];
    pattern.repeats = 1;
    put(core::withSequence(channel(), core::layOut(pattern, core::levelsOfShunts(setup()), core::Duration(1),
                                                   core::Duration(2))));
  }
  void uncertainty() {
    const core::Input input{static_cast<core::InputKind>(below(core::inputKindCount)), 0};
    const bool ofShunt = input.kind == core::InputKind::Shunt || input.kind == core::InputKind::ShuntWires ||
                         input.kind == core::InputKind::ShuntContact;
    if (ofShunt && setup().shunts.empty()) return;  // only what the channel has can be stated
    core::Uncertainty stated{.amount = between(0, 0.1), .relative = oneIn(2)};
    if (oneIn(3)) stated.group = "lot";
    put(core::withUncertainty(channel(), input, oneIn(3) ? std::nullopt : std::optional(stated)));
  }
  void correlation() {
    put(core::withCorrelation(channel(), "lot", oneIn(2) ? std::nullopt : std::optional(between(-1, 1))));
  }

  // Checks.

  void addCheck() {
    if (channel().checks.size() > 4) return removeCheck();
    core::Check check;
    check.name = core::usualCheckName(channel());
    check.person = word();
    put(core::withCheckAdded(channel(), std::move(check)));
  }
  void removeCheck() {
    if (!channel().checks.empty()) put(core::withCheckRemoved(channel(), below(channel().checks.size())));
  }
  void changeCheck() {
    if (channel().checks.empty()) return;
    core::Channel next = channel();
    core::Check& check = next.checks[below(next.checks.size())];
    if (oneIn(2)) check.remark = word();
    if (oneIn(2)) check.remarks.push_back({{}, "R. Larch", "2031-05-04T10:00:00Z", "x" + word()});
    if (oneIn(3)) check.ambient.air = core::Temperature(between(-10, 40));
    if (check.remarks.size() > 4) check.remarks.clear();
    put(std::move(next));
  }
  void reading() {
    const auto check = openCheck();
    if (!check || channel().checks[*check].readings.empty()) return;
    const std::size_t step = below(channel().checks[*check].readings.size());
    put(core::withReading(
        channel(), *check, step,
        oneIn(5) ? std::nullopt
                 : std::optional(core::Measured{core::Reading(between(-2e3, 2e3)), {}, {}, {}})));
  }
  void closeCheck() {
    if (const auto check = openCheck()) put(core::withCheckClosed(channel(), *check));
  }
  void reopenCheck() {
    for (std::size_t k = 0; k < channel().checks.size(); ++k)
      if (channel().checks[k].closedWith) return put(core::withCheckReopened(channel(), k));
  }
  core::Measured span(double begin, double end) {
    return {core::Reading(between(-1e3, 1e3)), core::Reading(between(0, 1)), core::Duration(begin),
            core::Duration(end)};
  }
  void addSpan() {
    const auto check = openCheck();
    if (!check || channel().checks[*check].otherLevels.size() > 8) return;
    const double begin = between(0, 500), end = begin + between(0.1, 5);
    if (!core::isTaken(channel().checks[*check], begin, end))
      put(core::withSpanAdded(channel(), *check, span(begin, end)));
  }
  void changeSpan() {
    const auto check = openCheck();
    if (!check) return;
    const core::Check& open = channel().checks[*check];
    const auto spans = core::spansOf(open);
    if (spans.empty()) return addSpan();
    const core::SpanPlace place = spans[below(spans.size())];
    const double begin = core::spanAt(open, place).begin->base(), end = core::spanAt(open, place).end->base();
    const double middle = (begin + end) / 2;
    switch (below(5)) {
      case 0:
        return put(core::withSpanRemoved(channel(), *check, place));
      case 1:
        // Readings of other edits here may lie over each other, as those of a file may; the window moves none
        // there.
        if (begin < middle && middle < end && !core::isTaken(open, begin, middle, {{place}}))
          put(core::withSpanMoved(channel(), *check, place, span(begin, middle)));
        return;
      case 2:
        if (begin < middle && middle < end)
          put(core::withSpanSplit(channel(), *check, place, span(begin, begin + (middle - begin) / 2),
                                  span(middle, end)));
        return;
      case 3:
        if (!open.readings.empty())
          put(core::withSpanGivenToStep(channel(), *check, place, below(open.readings.size())));
        return;
      default:
        if (place.kind == core::SpanPlace::Kind::Step)
          put(core::withSpanTakenFromStep(channel(), *check, place.index));
    }
  }

  // Pins, jumpers, ohmmeter.

  core::PinName pinName() { return {oneIn(2) ? "J1" : "J2", std::string(1, char('A' + below(8)))}; }
  void addPin() {
    if (setup().wiring.pins.size() > 12) return removePin();
    core::Pin pin{pinName(), {}};
    if (oneIn(2)) pin.use = node();
    if (oneIn(4)) pin.use = core::ResistorEnd{word(), 2};
    put(core::withPinInserted(channel(), below(setup().wiring.pins.size() + 1), pin));
  }
  void removePin() {
    if (!setup().wiring.pins.empty()) put(core::withPinRemoved(channel(), below(setup().wiring.pins.size())));
  }
  void movePin() {
    const std::size_t pins = setup().wiring.pins.size();
    if (pins > 0) put(core::withPinMoved(channel(), below(pins), below(pins)));
  }
  void jumpers() {
    if (setup().shunts.empty()) return;
    std::vector<core::Jumper> laid;
    for (std::size_t k = below(4); k > 0; --k) laid.push_back({pinName(), pinName()});
    put(core::withJumpers(channel(), below(setup().shunts.size()), std::move(laid)));
  }
  void ohmReading() {
    core::OhmReading shown{{}, node(), node(), core::Resistance(between(1, 1000))};
    if (!setup().shunts.empty() && oneIn(2)) shown.state = {setup().shunts.front().name, 0};
    if (oneIn(4)) shown.ohm.reset();
    if (shown.from != shown.to) put(core::withOhmReading(channel(), std::move(shown)));
  }
  void dropOhmReadings() {
    if (oneIn(4)) put(core::withoutOhmReadings(channel()));
  }

  static const std::vector<Kind>& emptyKinds() {
    static const std::vector<Kind> kinds{{"details", &RandomEdits::details},
                                         {"insert channel", &RandomEdits::insertChannel}};
    return kinds;
  }
  static const std::vector<Kind>& channelKinds() {
    using E = RandomEdits;
    static const std::vector<Kind> kinds{
        {"details", &E::details},
        {"insert channel", &E::insertChannel},
        {"copy channel", &E::copyChannel},
        {"remove channel", &E::removeChannel},
        {"reorder channels", &E::moveChannel},
        {"rename many", &E::renameMany},
        {"edit many", &E::editMany},
        {"apply to others", &E::applyToOthers},
        {"remove many", &E::removeMany},
        {"close many checks", &E::closeMany},
        {"take a stock", &E::takeStock},
        {"values from the stock", &E::stockValues},
        {"sign-off", &E::signOff},
        {"channel texts", &E::channelTexts},
        {"another channel in its place", &E::otherSetup},
        {"another instrument", &E::otherInstrument},
        {"bridge type", &E::bridgeType},
        {"sense leads", &E::senseLeads},
        {"exchange arms", &E::exchangeArms},
        {"move a leak", &E::moveLeak},
        {"straighten", &E::straighten},
        {"arms, leads, hookup", &E::armAndLead},
        {"mend a finding", &E::mend},
        {"add shunt", &E::addShunt},
        {"remove shunt", &E::removeShunt},
        {"change shunt", &E::changeShunt},
        {"move shunt", &E::moveShunt},
        {"shunt over an arm", &E::shuntOverArm},
        {"copy shunts", &E::copyShunts},
        {"shunt from the stock", &E::fromStock},
        {"add step", &E::addStep},
        {"remove step", &E::removeStep},
        {"change step", &E::changeStep},
        {"move step", &E::moveStep},
        {"lay out a pattern", &E::layOut},
        {"uncertainty", &E::uncertainty},
        {"correlation", &E::correlation},
        {"add check", &E::addCheck},
        {"remove check", &E::removeCheck},
        {"change check", &E::changeCheck},
        {"reading", &E::reading},
        {"close check", &E::closeCheck},
        {"reopen check", &E::reopenCheck},
        {"add span", &E::addSpan},
        {"change span", &E::changeSpan},
        {"add pin", &E::addPin},
        {"remove pin", &E::removePin},
        {"move pin", &E::movePin},
        {"jumpers", &E::jumpers},
        {"ohmmeter reading", &E::ohmReading},
        {"drop ohmmeter readings", &E::dropOhmReadings},
    };
    return kinds;
  }

  ui::Session& m_session;
  std::mt19937_64 m_engine;
};

}  // namespace reliability

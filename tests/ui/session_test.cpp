// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <random>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"

namespace ui {
namespace {

core::Document twoChannels() {
  return sample::documentOf(
      {sample::nineStepChannel(), sample::withCheckReading(sample::nineStepChannel(), 1.0)});
}

TEST(Session, AnEditIsOneUndoStepWithItsName) {
  Session session(twoChannels());
  core::Channel next = *session.channel();
  next.setup.bridge.gauge.factor = 2.1;
  session.editChannel("Change gauge factor", next);
  EXPECT_EQ(session.history().undoText(), "Change gauge factor");
  EXPECT_EQ(session.channel()->setup.bridge.gauge.factor, 2.1);
  session.history().undo();
  EXPECT_EQ(session.channel()->setup.bridge.gauge.factor, 2.0);
}

TEST(Session, AnEditThatChangesNothingLeavesNoStep) {
  Session session(twoChannels());
  session.editChannel("Nothing", *session.channel());
  EXPECT_EQ(session.history().count(), 0);
}

TEST(Session, EditingOneChannelKeepsTheResultsOfTheOthers) {
  Session session(twoChannels());
  const core::ChannelEvaluation* other = &session.evaluation(1);
  core::Channel next = *session.channel();
  next.note = "edited";
  session.editChannel("Change note", next);
  EXPECT_EQ(&session.evaluation(1), other);
}

/// How often the value of the first channel is held after it has become another.
long holdersAfterAnEdit(bool isEvaluated) {
  Session session(twoChannels());
  const auto before = session.document().channels[0];
  if (isEvaluated) session.evaluation(0);
  core::Channel next = *before;
  next.note = "edited";
  session.editChannel("Change note", next);
  return before.use_count();
}

TEST(Session, ResultsOfAValueThatOnlyTheHistoryHoldsAreDropped) {
  EXPECT_EQ(holdersAfterAnEdit(true), holdersAfterAnEdit(false));
}

TEST(Session, TheSelectionAlwaysExists) {
  Session session(twoChannels());
  session.selectChannel(1);
  EXPECT_EQ(session.selection().check, 0u);
  session.selectStep(8);
  session.edit("Remove", core::withChannelRemoved(session.document(), 1));
  EXPECT_EQ(session.selection().channel, 0u);
  EXPECT_FALSE(session.selection().check);
  session.edit("Remove", core::withChannelRemoved(session.document(), 0));
  EXPECT_FALSE(session.selection().channel);
  EXPECT_EQ(session.channel(), nullptr);
  session.history().undo();
  EXPECT_EQ(session.selection().channel, 0u);
}

TEST(Session, UndoKeepsTheChosenChannelChosen) {
  Session session(twoChannels());
  session.edit("Insert", core::withChannelInserted(session.document(), 0, core::Channel{}));
  session.selectChannel(2);
  session.history().undo();
  EXPECT_EQ(session.channel()->name, "TP-01 (2)");
  EXPECT_EQ(session.selection().check, 0u);
}

TEST(Session, WhatCanBeRedoneIsToldAfterASingleUndo) {
  Session session(twoChannels());
  session.edit("Remove", core::withChannelRemoved(session.document(), 1));
  bool canRedo = false;
  QObject::connect(&session, &Session::historyChanged, [&] { canRedo = session.history().canRedo(); });
  session.history().undo();
  EXPECT_TRUE(canRedo);
}

TEST(Session, ChoosingTellsTheViewsOnce) {
  Session session(twoChannels());
  QSignalSpy spy(&session, &Session::changed);
  session.selectStep(3);
  session.selectStep(3);
  EXPECT_EQ(spy.count(), 1);
}

TEST(Session, TheScopeStaysChosenWithOtherChannelsAndThroughUndo) {
  Session session(twoChannels());
  EXPECT_EQ(session.selection().scope, core::Scope::Chain);
  QSignalSpy spy(&session, &Session::changed);
  session.selectScope(core::Scope::Strain);
  session.selectScope(core::Scope::Strain);
  EXPECT_EQ(spy.count(), 1);
  session.selectChannel(1);
  session.edit("Remove", core::withChannelRemoved(session.document(), 1));
  session.edit("Remove", core::withChannelRemoved(session.document(), 0));
  session.history().undo();
  EXPECT_EQ(session.selection().scope, core::Scope::Strain);
  session.reset({});
  EXPECT_EQ(session.selection().scope, core::Scope::Chain);
}

TEST(Session, AClosedCheckShowsTheSetUpItKeepsAndItsBudget) {
  Session session(twoChannels());
  session.selectChannel(1);
  session.editChannel("Close", core::withCheckClosed(*session.channel(), 0));
  core::Channel next = *session.channel();
  next.setup.bridge.gauge.factor = 2.2;
  session.editChannel("Change gauge factor", next);
  EXPECT_EQ(session.shownSetup().bridge.gauge.factor, 2.0);
  EXPECT_EQ(&session.shownBudget(), &session.evaluation()->checks[0].budget);
  session.selectCheck({});
  EXPECT_EQ(session.shownSetup().bridge.gauge.factor, 2.2);
  EXPECT_EQ(&session.shownBudget(), &session.evaluation()->budget);
  EXPECT_EQ(&session.shownPrediction(), &session.evaluation()->prediction);
}

TEST(Session, ACheckThatComesBackByRedoIsChosenAgain) {
  Session session(sample::documentOf({sample::nineStepChannel()}));
  ASSERT_FALSE(session.check());
  session.editChannel("Check", core::withCheckAdded(*session.channel(), {}));
  EXPECT_EQ(session.selection().check, 0u);
  session.history().undo();
  EXPECT_FALSE(session.check());
  session.history().redo();
  EXPECT_EQ(session.selection().check, 0u);
  session.editChannel("Check", core::withCheckAdded(*session.channel(), {}));
  EXPECT_EQ(session.selection().check, 0u) << "what the user looks at stays";
}

TEST(Session, APlanLookedAtOnPurposeStaysWhenNoCheckComes) {
  Session session(twoChannels());
  session.selectChannel(1);
  session.selectCheck({});
  core::Channel next = *session.channel();
  next.setup.bridge.gauge.factor = 2.2;
  session.editChannel("Change gauge factor", next);
  EXPECT_FALSE(session.check());
}

TEST(Session, AThousandRandomEditsUndoToTheFirstDocumentAndRedoToTheLast) {
  Session session(twoChannels());
  const core::Document first = session.document();
  std::mt19937 random(20261125);
  for (int k = 0; k < 1000; ++k) {
    session.selectChannel(random() % session.document().channels.size());
    core::Channel channel = *session.channel();
    const std::size_t steps = channel.setup.sequence.size();
    switch (random() % 4) {
      case 0:
        channel = core::withStepInserted(channel, random() % (steps + 1), {});
        break;
      case 1:
        if (steps > 0) channel = core::withStepRemoved(channel, random() % steps);
        break;
      case 2:
        channel.setup.bridge.arms[random() % 4] =
            core::Resistance(100.0 + static_cast<double>(random() % 900));
        break;
      default:
        channel = core::withCheckAdded(channel, {});
        break;
    }
    session.editChannel("Edit", channel);
  }
  const core::Document last = session.document();
  while (session.history().canUndo()) session.history().undo();
  EXPECT_EQ(session.document(), first);
  while (session.history().canRedo()) session.history().redo();
  EXPECT_EQ(session.document(), last);
}

}  // namespace
}  // namespace ui

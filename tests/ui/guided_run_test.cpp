// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/guided_run.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <cmath>

#include "core/assess/reading_unit.h"
#include "core/document/edits.h"
#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "tests/support/two_sided.h"
#include "ui/run/reading_text.h"
#include "ui/run/run_faults.h"
#include "ui/run/run_strip.h"
#include "ui/run/step_timer.h"
#include "ui/run/step_words.h"

namespace ui {
namespace {

core::Document documentWithOpenCheck() {
  core::Channel channel = sample::nineStepChannel();
  for (core::Step& step : channel.setup.sequence) step.settle = core::Duration(0.5);
  return sample::documentOf({core::withCheckAdded(channel, {})});
}

/// The page in a window of its own, with a clock that stands still unless it is put on.
class Run : public testing::Test {
 protected:
  explicit Run(core::Document document = documentWithOpenCheck())
      : session(std::move(document)),
        run(std::make_unique<GuidedRun>(session)),
        refused(run.get(), &GuidedRun::refused) {
    run->setClock([this] { return now_ms; });
    run->resize(1000, 720);
    run->show();
    run->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(run.get()));
    run->setFocus();
  }

  template <class W = QLabel>
  W* find(const char* name) {
    return run->findChild<W*>(name);
  }
  QString text(const char* label) { return find(label)->text(); }
  void click(const char* button) {
    ASSERT_TRUE(find<QPushButton>(button)->isEnabled()) << button;
    QTest::mouseClick(find<QPushButton>(button), Qt::LeftButton);
  }
  void tickCautions() {
    for (int k = 0; k < 5; ++k) find<QCheckBox>(qPrintable(QString("caution%1").arg(k)))->click();
  }
  void begin() {
    tickCautions();
    if (auto* faults = find<QCheckBox>("acceptFaults"); faults->isVisible()) faults->click();
    click("beginRun");
  }
  /// Puts the clock on and lets the panel see it.
  void pass(std::int64_t ms) {
    now_ms += ms;
    QTest::qWait(120);  // two ticks of the panel and some
  }
  void read(const QString& number) {
    click("skipWait");
    QTest::keyClicks(find<QLineEdit>("readingField"), number);
    QTest::keyClick(find<QLineEdit>("readingField"), Qt::Key_Return);
  }
  const std::optional<core::Measured>& reading(std::size_t step) { return session.check()->readings[step]; }

  std::int64_t now_ms = 1'000'000;
  Session session;
  std::unique_ptr<GuidedRun> run;
  QSignalSpy refused;
};

TEST_F(Run, BeginsOnlyWhenEveryCautionIsTicked) {
  EXPECT_EQ(text("cautionTitle"), "Before the first step");
  EXPECT_FALSE(find<QPushButton>("beginRun")->isEnabled());
  EXPECT_EQ(text("cautionsLeft"), "5 to tick before the run begins.");
  for (int k = 0; k < 4; ++k) find<QCheckBox>(qPrintable(QString("caution%1").arg(k)))->click();
  EXPECT_FALSE(find<QPushButton>("beginRun")->isEnabled());
  find<QCheckBox>("caution4")->click();
  click("beginRun");
  EXPECT_EQ(text("stepTitle"), "Step 1 of 9");
  EXPECT_EQ(session.selection().step, 0u);
}

/// The third step says otherwise than what it gives: one fault of the review.
core::Channel withWrongLabel(core::Channel channel) {
  channel.setup.sequence[2].label = "-2";
  return channel;
}

/// A full bridge with terminals and the ends of one shunt, R1 over arm 2, on pins.
core::Document wiredDocument(const std::vector<core::Jumper>& jumpers) {
  core::Channel channel;
  channel.name = "TP-01";
  channel.setup.bridge.type = core::BridgeType::FullBending;
  channel = core::withShuntAdded(
      channel, {"R1", core::Resistance(174650), core::Node::SMinus, core::Node::PMinus, core::Resistance(0)});
  channel.setup.wiring.pins = {
      {{"J1", "A"}, core::Node::PPlus},         {{"J1", "B"}, std::monostate{}},
      {{"J1", "C"}, core::Node::PMinus},        {{"J1", "D"}, std::monostate{}},
      {{"J1", "E"}, core::Node::SMinus},        {{"J2", "1"}, core::ResistorEnd{"R1", 1}},
      {{"J3", "1"}, core::ResistorEnd{"R1", 2}}};
  channel.setup.shunts[0].jumpers = jumpers;
  channel = sample::withTwoSidedSequence(channel, core::Duration(2));
  return sample::documentOf({core::withCheckAdded(channel, {})});
}

const core::Jumper toSignal{{"J2", "1"}, {"J1", "E"}}, toSupply{{"J3", "1"}, {"J1", "C"}},
    acrossSupply{{"J1", "A"}, {"J1", "C"}};

TEST_F(Run, SoundPlanShowsNoFaults) {
  for (const char* name : {"cautionFaults", "cautionShort", "cautionWhereFaults"})
    EXPECT_FALSE(find(name)->isVisible()) << name;
  EXPECT_FALSE(find<QCheckBox>("acceptFaults")->isVisible());
}

TEST_F(Run, KnownFaultsAreToldAndMustBeAccepted) {
  session.editChannel("Wrong label", withWrongLabel(*session.channel()));
  EXPECT_TRUE(find("cautionFaults")->isVisible());
  EXPECT_EQ(find("cautionFaults")->textFormat(), Qt::PlainText);
  EXPECT_TRUE(text("cautionFaults").contains("says negative")) << text("cautionFaults");
  EXPECT_TRUE(text("cautionFaults").contains("Correct the label")) << text("cautionFaults");
  EXPECT_TRUE(text("cautionWhereFaults").contains("Alt+5"));
  tickCautions();
  EXPECT_FALSE(find<QPushButton>("beginRun")->isEnabled());
  EXPECT_EQ(text("cautionsLeft"), "1 to tick before the run begins.");
  find<QCheckBox>("acceptFaults")->click();
  EXPECT_TRUE(find<QPushButton>("beginRun")->isEnabled());
  // Another fault is not what was accepted.
  core::Channel channel = *session.channel();
  channel.setup.sequence[3].label = "-3";
  session.editChannel("Another wrong label", channel);
  EXPECT_FALSE(find<QPushButton>("beginRun")->isEnabled());
  find<QCheckBox>("acceptFaults")->click();
  click("beginRun");
  EXPECT_EQ(text("stepTitle"), "Step 1 of 9");
}

TEST_F(Run, BeginStaysShutWhileJumpersShortTheExcitation) {
  session.reset(wiredDocument({toSignal, toSupply, acrossSupply}));
  EXPECT_TRUE(find("cautionShort")->isVisible());
  EXPECT_TRUE(text("cautionShort").contains("would short the excitation"));
  // The review tells what is of a step first; here wiring comes before it.
  core::Channel mislabelled = *session.channel();
  mislabelled.setup.sequence[1].label = "-1";
  session.editChannel("Wrong label", mislabelled);
  EXPECT_TRUE(text("cautionFaults").contains("\n• ")) << text("cautionFaults");
  EXPECT_TRUE(text("cautionFaults").section('\n', 0, 0).contains("they join P+ and P-"))
      << text("cautionFaults");
  tickCautions();
  find<QCheckBox>("acceptFaults")->click();
  EXPECT_FALSE(find<QPushButton>("beginRun")->isEnabled());
  EXPECT_TRUE(text("cautionsLeft").contains("short the excitation"));
  core::Channel channel = *session.channel();
  channel.setup.shunts[0].jumpers = {toSignal, toSupply};
  channel.setup.sequence[1].label = "+1";
  session.editChannel("Correct", channel);
  EXPECT_FALSE(find("cautionShort")->isVisible());
  EXPECT_TRUE(find<QPushButton>("beginRun")->isEnabled());
}

TEST_F(Run, StepTellsWhatIsWrongWithTheJumpersThatItLays) {
  session.reset(wiredDocument({toSignal}));  // the other end hangs
  begin();
  EXPECT_FALSE(find("stepWiringFaults")->isVisible());  // the zero lays none
  read("0");
  click("runNext");
  EXPECT_TRUE(find("stepWiringFaults")->isVisible());
  EXPECT_TRUE(text("stepWiringFaults").contains("lay no jumper")) << text("stepWiringFaults");
  EXPECT_TRUE(text("stepWiringFaults").contains("end 2")) << text("stepWiringFaults");
  core::Channel channel = *session.channel();
  channel.setup.shunts[0].jumpers = {toSignal, toSupply};
  session.editChannel("Correct", channel);
  EXPECT_FALSE(find("stepWiringFaults")->isVisible());
}

TEST(RunFaultsTest, AtMostFiveAreListedAndTheOthersCounted) {
  EXPECT_EQ(listOf({"a.", "b."}), "• a.\n• b.");
  EXPECT_EQ(listOf({"a", "b", "c", "d", "e", "f", "g"}), "• a\n• b\n• c\n• d\n• e\n• and 2 more");
}

TEST_F(Run, SaysWhatChangesFromTheStepBefore) {
  begin();
  EXPECT_EQ(text("stepActions"), "See that all shunts are open.");
  EXPECT_EQ(text("stepExpected"), "this reading becomes the zero");
  read("0.4");
  click("runNext");
  EXPECT_EQ(text("stepActions"), "Close up on arm 2.");
  EXPECT_EQ(text("stepPolarity"), "+ positive");
  EXPECT_TRUE(text("stepExpected").contains(", limit ± "))
      << "a ± behind the value is an uncertainty elsewhere";
  read("1000");
  click("runNext");
  EXPECT_EQ(text("stepActions"), "Open up on arm 2.\nClose up (2) on arm 2.");
  EXPECT_TRUE(text("stepState").contains("up (2) on arm 2"));
}

TEST_F(Run, CountsDownSettlingThenHoldingThenOpensTheField) {
  begin();
  auto* field = find<QLineEdit>("readingField");
  EXPECT_FALSE(field->isEnabled());
  EXPECT_EQ(text("countDown"), "2.5 s");
  QTest::keyClick(run->focusWidget(), Qt::Key_Space);
  EXPECT_TRUE(text("waitPhase").startsWith("Settling"));
  EXPECT_EQ(text("countDown"), "0.5 s");
  pass(600);
  EXPECT_TRUE(text("waitPhase").startsWith("Holding"));
  EXPECT_EQ(text("countDown"), "1.9 s");
  EXPECT_EQ(find<QProgressBar>("waitBar")->value(), 240);  // 0.6 s of 2.5 s, in thousandths
  EXPECT_FALSE(field->isEnabled());
  pass(1900);
  EXPECT_EQ(text("waitPhase"), "Read now");
  EXPECT_TRUE(field->isEnabled());
  EXPECT_TRUE(field->hasFocus());
}

TEST_F(Run, StartsByItselfAtTheNextStepsWhenAsked) {
  begin();
  find<QCheckBox>("autoStart")->click();
  EXPECT_TRUE(text("waitPhase").startsWith("Ready"));
  read("0");
  click("runNext");
  EXPECT_TRUE(text("waitPhase").startsWith("Settling"));
}

TEST_F(Run, WholeSequenceByKeyboardAloneWithTypedReadings) {
  const core::SetupPrediction prediction = core::predict(session.channel()->setup);
  for (int k = 0; k < 5; ++k) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  }
  ASSERT_EQ(QApplication::focusWidget(), find<QPushButton>("beginRun"));
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  for (std::size_t step = 0; step < 9; ++step) {
    ASSERT_EQ(text("stepTitle"), QString("Step %1 of 9").arg(step + 1));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    pass(2600);
    QTest::keyClicks(QApplication::focusWidget(),
                     QString::number(prediction.steps[step]->reading.base() + 0.25, 'g', 12));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(text("stepVerdict"), "✓ pass");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  }
  EXPECT_TRUE(text("summaryVerdict").contains("pass"));
  EXPECT_TRUE(text("summaryReason").startsWith("Pass: all 9 steps within limits"));
  EXPECT_TRUE(text("summaryHint").contains("Close check"));
  EXPECT_EQ(session.history().count(), 9);  // one undo step a reading
  EXPECT_EQ(session.history().undoText(), "Enter reading of step 9");
}

TEST_F(Run, JudgesAReadingAtOnceAgainstPredictionAndLimit) {
  begin();
  read("0");
  EXPECT_EQ(text("stepReason"), "Zero reference of this check.");
  click("runNext");
  // Derived: the limit is 1 % of the expected reading; 2 % off is beyond it, 0.5 % within.
  const double expected = core::predict(session.channel()->setup).steps[1]->reading.base();
  read(QString::number(1.02 * expected, 'g', 12));
  EXPECT_EQ(text("stepVerdict"), "✗ fail");
  EXPECT_EQ(find<RunStrip>("runStrip")->wordsOf(1), "Step 2, up: fail");
  click("redoStep");
  read(QString::number(1.005 * expected, 'g', 12));
  EXPECT_EQ(text("stepVerdict"), "✓ pass");
  EXPECT_TRUE(text("stepDeviation").contains(QString::number(0.005 * expected, 'f', 2)))
      << text("stepDeviation");
}

TEST_F(Run, JudgesALaterZeroStepAsZeroReturn) {
  begin();
  read("0");
  for (int k = 0; k < 4; ++k) QTest::mouseClick(find<QPushButton>("runNext"), Qt::LeftButton);
  EXPECT_EQ(text("stepTitle"), "Step 5 of 9");
  EXPECT_EQ(text("stepPolarity"), "zero");
  // The zero-return limit is 0.5 % of the greatest expected reading, which is below 3100 µm/m: 15.5 µm/m.
  read("16");
  EXPECT_EQ(text("stepVerdict"), "✗ fail");
}

TEST_F(Run, RedoingKeepsTheFormerReadingUntilThereIsAnotherAndThenInTheNote) {
  begin();
  read("-1001.25");
  click("redoStep");
  EXPECT_EQ(reading(0)->mean, core::Reading(-1001.25));
  EXPECT_TRUE(text("stepReason").contains("-1001.25"));
  read("-999.5");
  EXPECT_EQ(reading(0)->mean, core::Reading(-999.5));
  EXPECT_EQ(reading(0)->note, "redone; before: -1001.25 µm/m");
  EXPECT_EQ(find<QLineEdit>("noteField")->text(), "redone; before: -1001.25 µm/m");
  EXPECT_EQ(session.history().undoText(), "Redo step 1");
  session.history().undo();
  EXPECT_EQ(reading(0)->mean, core::Reading(-1001.25));
}

TEST_F(Run, UndoingWhileRedoingLeavesTheStepToBeReadAgain) {
  begin();
  read("3");
  click("redoStep");
  session.history().undo();
  EXPECT_FALSE(reading(0));
  EXPECT_EQ(text("stepReason"), "");
  read("4");
  EXPECT_EQ(reading(0)->note, "");
}

TEST_F(Run, PastedColumnBecomesItsMeanWithUncertainty) {
  begin();
  click("skipWait");
  QApplication::clipboard()->setText("1\n2\n3\n4\n5\n");
  QTest::keyClick(find<QLineEdit>("readingField"), Qt::Key_V, Qt::ControlModifier);
  EXPECT_TRUE(text("series").startsWith("5 readings: mean 3")) << text("series");
  click("enterReading");
  ASSERT_TRUE(reading(0));
  EXPECT_EQ(reading(0)->mean, core::Reading(3));
  // Derived: s^2 = 10/4, so the standard uncertainty of the mean is sqrt(2.5/5) (JCGM 100:2008, 4.2.3).
  // Four roundings at most lie between.
  EXPECT_NEAR(reading(0)->uncertainty->base(), std::sqrt(0.5), 1e-15);
}

TEST_F(Run, RefusesWhatIsNoReadingAndChangesNothing) {
  begin();
  const auto told = [&] {
    for (const QLabel* sheet : run->findChildren<QLabel*>("fieldEcho"))
      if (sheet->isVisible()) return sheet->text();
    return QString();
  };
  read("12,3,4");
  EXPECT_TRUE(told().contains("12,3,4")) << told();
  QTest::keyClicks(find<QLineEdit>("readingField"), "5 mV/V");
  QTest::keyClick(find<QLineEdit>("readingField"), Qt::Key_Return);
  EXPECT_TRUE(told().contains("5 mV/V")) << told();
  find<QLineEdit>("readingField")->clear();
  QTest::keyClick(find<QLineEdit>("readingField"), Qt::Key_Return);
  EXPECT_FALSE(told().isEmpty()) << "an empty field is told of as well";
  EXPECT_EQ(refused.count(), 0) << "beside the field, and nowhere else";
  EXPECT_EQ(session.history().count(), 0);
  QTest::keyClicks(find<QLineEdit>("readingField"), "0");
  QTest::keyClick(find<QLineEdit>("readingField"), Qt::Key_Return);
  EXPECT_TRUE(reading(0));
  EXPECT_EQ(told(), "");
}

TEST_F(Run, NoteGoesIntoTheReadingAndWithoutOneIntoTheRemark) {
  begin();
  click("runNote");
  QTest::keyClicks(find<QLineEdit>("noteField"), "crane moved");
  read("0.1");
  EXPECT_EQ(reading(0)->note, "crane moved");
  click("runNote");
  QTest::keyClicks(find<QLineEdit>("noteField"), ", then still");
  QTest::keyClick(find<QLineEdit>("noteField"), Qt::Key_Return);
  EXPECT_EQ(reading(0)->note, "crane moved, then still");
  EXPECT_EQ(session.history().undoText(), "Note at step 1");
  click("runNext");
  click("runNote");
  QTest::keyClicks(find<QLineEdit>("noteField"), "relay sticks");
  click("stopSafely");
  EXPECT_EQ(session.check()->remark, "Step 2: relay sticks");
}

TEST_F(Run, StopsSafelyAndResumesAtTheFirstStepWithoutAReadingAfterSaveAndOpen) {
  QSignalSpy finished(run.get(), &GuidedRun::finished);
  begin();
  for (const char* shown : {"0", "1000", "2000"}) {
    read(shown);
    click("runNext");
  }
  click("skipWait");
  click("stopSafely");
  EXPECT_TRUE(text("stopActions").contains("Open up (3) on arm 2.")) << text("stopActions");
  EXPECT_TRUE(text("stopActions").contains("stay at 5 V"));
  EXPECT_TRUE(text("stopKept").contains("3 of 9 readings"));
  EXPECT_TRUE(text("stopKept").contains("resumes at step 4"));
  click("leaveRun");
  EXPECT_EQ(finished.count(), 1);

  const auto saved = core::writeDocument(session.document());
  ASSERT_TRUE(saved) << saved.error().text();
  const auto opened = core::readDocument(*saved);
  ASSERT_TRUE(opened) << opened.error().text();
  session.reset(*opened);
  EXPECT_TRUE(text("resumeNotice").contains("Resuming at step 4")) << text("resumeNotice");
  EXPECT_EQ(text("cautionTitle"), "Before going on");
  begin();
  EXPECT_EQ(text("stepTitle"), "Step 4 of 9");
  EXPECT_TRUE(text("runNotice").startsWith("Resuming at step 4"));
  // After a stop nothing is known to be closed.
  EXPECT_EQ(text("stepActions"), "See that all shunts are open.\nClose up (3) on arm 2.");
}

TEST_F(Run, GoingOnAfterStopStaysAtTheStep) {
  begin();
  read("0");
  click("runNext");
  click("stopSafely");
  click("goOn");
  EXPECT_EQ(text("stepTitle"), "Step 2 of 9");
}

TEST_F(Run, StripGoesToAStepAndTellsItInWords) {
  begin();
  read("0");
  auto* strip = find<RunStrip>("runStrip");
  EXPECT_EQ(strip->wordsOf(0), "Step 1, zero: pass");
  EXPECT_EQ(strip->wordsOf(6), "Step 7, down (2): no reading");
  QTest::mouseClick(strip, Qt::LeftButton, {}, strip->fieldOf(6).center());
  EXPECT_EQ(text("stepTitle"), "Step 7 of 9");
  EXPECT_EQ(session.selection().step, 6u);
}

TEST_F(Run, OtherCheckOrChannelEndsTheRunOnView) {
  begin();
  session.selectCheck({});
  EXPECT_TRUE(find("runStartTitle")->isVisible());
  session.selectCheck(0);
  EXPECT_TRUE(find("cautionTitle")->isVisible());
  EXPECT_FALSE(find<QCheckBox>("caution0")->isChecked());
  session.edit("Remove", core::withChannelRemoved(session.document(), 0));
  EXPECT_EQ(text("runStartSentence"), "There is no channel yet: add a channel first.");
}

TEST_F(Run, HiddenPageTakesUpTheRunWhereItStands) {
  begin();
  read("1");
  run->hide();
  session.history().undo();
  run->show();
  EXPECT_EQ(text("stepTitle"), "Step 1 of 9");
  EXPECT_FALSE(find("stepVerdict")->isVisible());
  run->hide();
  session.selectCheck({});
  run->show();
  EXPECT_TRUE(find("runStartTitle")->isVisible());
}

TEST_F(Run, HalfTypedNoteStaysWithItsRun) {
  session.editChannel("Add", core::withCheckAdded(*session.channel(), {}));
  begin();
  click("runNote");
  QTest::keyClicks(find<QLineEdit>("noteField"), "crane moved");
  session.selectCheck(1);
  begin();
  read("1");
  click("runNext");
  EXPECT_EQ(session.channel()->checks[1].readings[0]->note, "");
  EXPECT_EQ(session.channel()->checks[1].remark, "");
}

TEST_F(Run, StepsGoneByAnEditLeaveTheLastOne) {
  begin();
  click("runNext");
  core::Channel channel = *session.channel();
  while (channel.setup.sequence.size() > 1) channel = core::withStepRemoved(std::move(channel), 1);
  session.editChannel("Cut", channel);
  EXPECT_EQ(text("stepTitle"), "Step 1 of 1");
  session.editChannel("Cut", core::withStepRemoved(channel, 0));
  EXPECT_EQ(text("runStartSentence"), "TP-01 has no steps yet: lay out its sequence first.");
}

TEST(RunStripTest, LongSequenceShowsTheRowsAroundThePresentStep) {
  RunStrip strip;
  strip.resize(400, 60);
  strip.showSteps(std::vector<RunStrip::Field>(200), 0);
  EXPECT_FALSE(strip.fieldOf(0).isEmpty());
  EXPECT_TRUE(strip.fieldOf(199).isEmpty());
  strip.showSteps(std::vector<RunStrip::Field>(200), 199);
  EXPECT_TRUE(strip.fieldOf(0).isEmpty());
  EXPECT_TRUE(strip.rect().contains(strip.fieldOf(199)));
}

TEST_F(Run, ClosedCheckIsNotRunAndANewOneIsOffered) {
  session.editChannel("Close", core::withCheckClosed(*session.channel(), 0));
  EXPECT_TRUE(text("runStartSentence").contains("pre-test is closed")) << text("runStartSentence");
  session.setToday(*core::dateFromText("2026-11-25"));
  EXPECT_EQ(find<QLineEdit>("runCheckName")->text(), "post-test");
  EXPECT_EQ(find<QLineEdit>("runDate")->text(), "2026-11-25");
  QTest::keyClicks(find<QLineEdit>("runPerson"), "M. Example");
  find<QLineEdit>("runDate")->selectAll();
  QTest::keyClicks(find<QLineEdit>("runDate"), "2026-02-30");
  click("startRunCheck");
  EXPECT_EQ(refused.count(), 1);
  find<QLineEdit>("runDate")->selectAll();
  QTest::keyClicks(find<QLineEdit>("runDate"), "2026-02-28");
  click("startRunCheck");
  EXPECT_EQ(session.check()->name, "post-test");
  EXPECT_EQ(session.check()->person, "M. Example");
  EXPECT_EQ(session.check()->date, "2026-02-28");
  EXPECT_TRUE(find("cautionTitle")->isVisible());
}

TEST_F(Run, StepThatCannotBePredictedSaysWhyAndIsNotJudged) {
  core::Channel channel = *session.channel();
  channel.setup.shunts[0].b = channel.setup.shunts[0].a;
  session.editChannel("Break", channel);
  begin();
  read("0");
  click("runNext");
  EXPECT_FALSE(text("stepExpected").isEmpty());
  EXPECT_EQ(text("stepPolarity"), "not known");
  read("1");
  EXPECT_EQ(text("stepVerdict"), "– not judged");
}

TEST(StepWords, JumpersAreLaidAndRemovedWithTheExcitationOff) {
  core::Setup setup = sample::nineStepChannel().setup;
  const core::PinName c{"J1", "C"}, a{"J2", "A"}, b{"J2", "B"};
  setup.shunts[0].jumpers = {{c, a}};
  setup.shunts[0].part.id = "S-104";
  setup.shunts[2].jumpers = {{a, c}, {c, b}};
  const core::Step zero{.label = "zero", .closed = {}}, one{.label = "1", .closed = {0}},
      two{.label = "2", .closed = {2}};
  const QString on = "Switch the excitation on again and let the bridge warm up again before the reading";
  EXPECT_EQ(actionsBetween(setup, &zero, one).join("|"),
            "Switch the excitation off|Lay J1-C to J2-A for up (S-104) on arm 2|" + on);
  // The jumper between the same pins stays, whichever way round it is written.
  EXPECT_EQ(actionsBetween(setup, &one, two).join("|"),
            "Switch the excitation off|Lay J1-C to J2-B for up (2) on arm 2|" + on);
  EXPECT_EQ(actionsToOpenAll(setup, &one).join("|"),
            "Switch the excitation off|Remove the jumper J1-C to J2-A for up (S-104) on arm 2|" + on +
                "|See that all shunts are open and no jumper is laid");
  EXPECT_EQ(actionsBetween(setup, &two, two).join("|"), "Change nothing: all stays as it is");
}

TEST(StepWords, NameThatSaysThePlaceIsNotFollowedByIt) {
  core::Shunt shunt{.name = "R1 on arm 2", .a = core::Node::Arm2End, .b = core::Node::Arm2Begin};
  EXPECT_EQ(shuntWords(shunt), "R1 on arm 2");
  shunt.name = "R1";
  EXPECT_EQ(shuntWords(shunt), "R1 on arm 2");
  shunt.b = core::Node::SPlus;
  EXPECT_EQ(shuntWords(shunt), "R1 from arm 2 end to S+");
}

TEST(ReadingText, TakesTheUsersNotationAndPartsNumbersOnlyWhereNoNumberHasThat) {
  core::Instrument instrument;
  EXPECT_EQ(readingFromText("−1000,5 µm/m", instrument)->measured.mean, core::Reading(-1000.5));
  EXPECT_EQ(readingFromText("1;2\t3", instrument)->count, 3u);
  EXPECT_FALSE(readingFromText("1 000", instrument));  // not the mean of 1 and 0
  EXPECT_FALSE(readingFromText("  \n", instrument));
  EXPECT_EQ(readingFromText("1\nx\n3", instrument).error().where, "number 2");
  instrument.unit = core::ReadingUnit::Scaled;
  instrument.scaledUnit = "kN";
  EXPECT_EQ(readingFromText("12.5 kN", instrument)->measured.mean, core::Reading(12.5));
  EXPECT_FALSE(readingFromText("12.5 µm/m", instrument));
  EXPECT_EQ(readingFromText("1e12", instrument)->measured.mean, core::greatestReading);
  EXPECT_EQ(
      readingFromText("1\n-1e300", instrument).error().text(),
      "number 2: -1e300 kN is more than any instrument shows. Check the number and its decimal mark; up "
      "to 1000000000000 kN is taken.");
}

TEST(StepTimer, SettlesThenHoldsAndTakesBadTimesForNone) {
  std::int64_t now = 5;
  StepTimer timer;
  timer.setClock([&] { return now; });
  timer.prepare(core::Duration(1), core::Duration(3));
  EXPECT_EQ(timer.phase(), StepTimer::Phase::Ready);
  EXPECT_EQ(timer.left(), core::Duration(4));
  timer.start();
  now += 1000;
  EXPECT_EQ(timer.phase(), StepTimer::Phase::Holding);
  EXPECT_EQ(timer.left(), core::Duration(3));
  EXPECT_EQ(timer.shareDone(), 0.25);
  now += 3000;
  EXPECT_EQ(timer.phase(), StepTimer::Phase::Over);
  timer.prepare(core::Duration(NAN), core::Duration(-1));
  timer.start();
  EXPECT_EQ(timer.phase(), StepTimer::Phase::Over);
}

}  // namespace
}  // namespace ui

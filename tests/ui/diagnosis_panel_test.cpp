// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diagnosis/diagnosis_panel.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLocale>
#include <QSplitter>
#include <QTest>
#include <QToolButton>

#include "tests/support/sample_channel.h"
#include "ui/diagnosis/cause_details.h"
#include "ui/diagnosis/remainder_model.h"
#include "ui/sheet_view.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// The nine-step channel with a check that reads `gain` times what is expected, each reading known to
/// 0.05 um/m; levels up to 3000 um/m.
core::Channel reading(double gain) {
  core::Channel channel = sample::withCheckReading(sample::nineStepChannel(), gain);
  for (auto& measured : channel.checks[0].readings) measured->uncertainty = core::Reading(0.05);
  return channel;
}

/// Every reading of check 0 times `factor`.
core::Channel scaled(core::Channel channel, double factor) {
  for (auto& measured : channel.checks[0].readings) measured->mean = factor * measured->mean;
  return channel;
}

class Diagnosis : public testing::Test {
 protected:
  explicit Diagnosis(double gain = 1.05)
      : session(sample::documentOf({reading(gain), reading(1), sample::nineStepChannel()})), panel(session) {
    panel.resize(1000, 700);
  }

  void show() {
    panel.show();
    panel.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&panel));
  }
  template <class T>
  T* find(const char* name) {
    T* found = panel.findChild<T*>(name);
    EXPECT_TRUE(found) << name;
    return found;
  }
  QString label(const char* name) { return find<QLabel>(name)->text().remove(QChar(0x2060)); }
  bool isDone() {
    return find<QToolButton>("copyDiagnosis")->isVisibleTo(&panel) &&
           !label("diagnosisSentence").startsWith("Being");
  }
  void wait() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return isDone(); }, 20000));
  }
  QAbstractItemModel* causes() { return find<SheetView>("causeTable")->model(); }
  QString cause(int row) { return causes()->index(row, CauseModel::Cause).data().toString(); }
  QString firstTitle() { return cause(0).section('\n', 0, 0); }

  Session session;
  DiagnosisPanel panel;
};

TEST_F(Diagnosis, WaitsUntilItIsOnTheScreenAndIsThenWorkedOutAside) {
  QTest::qWait(100);
  EXPECT_EQ(label("diagnosisSentence"), "Looking for what may be wrong …");
  EXPECT_EQ(causes()->rowCount(), 0);
  show();
  EXPECT_FALSE(isDone());  // not within the event that shows it
  wait();
  EXPECT_GT(causes()->rowCount(), 0);
}

TEST_F(Diagnosis, CanBeAskedForWithoutBeingOnTheScreen) {
  panel.run();
  wait();
  EXPECT_GT(causes()->rowCount(), 0);
}

// All readings 1.05 times too great: a wrong scale, as that was planted. Its size is that factor.
TEST_F(Diagnosis, ShowsThePlantedCauseWithWhatFollows) {
  show();
  wait();
  EXPECT_TRUE(cause(0).contains("5.00 ")) << cause(0).toStdString();  // percent too great
  EXPECT_EQ(causes()->index(0, CauseModel::Explains).data().toString(), "100");
  EXPECT_FALSE(label("causeConfirm").isEmpty());
  EXPECT_FALSE(label("causeOnStrain").isEmpty());
  EXPECT_TRUE(label("diagnosisCaution").contains("suspicion"));
  EXPECT_TRUE(label("causeCorrection").startsWith("corrected = ")) << label("causeCorrection").toStdString();
}

TEST_F(Diagnosis, ShowsWhatTheCauseLeavesOfEachStep) {
  show();
  wait();
  const auto* table = find<SheetView>("causeRemainders");
  const QAbstractItemModel& model = *table->model();
  ASSERT_EQ(model.rowCount(), 9);
  for (int row = 0; row < 9; ++row) {
    const double before = model.index(row, RemainderModel::Before).data().toString().toDouble();
    const double after = model.index(row, RemainderModel::After).data().toString().toDouble();
    const double expected =
        session.evaluation()->prediction.steps[static_cast<std::size_t>(row)]->reading.base();
    EXPECT_NEAR(before, 0.05 * expected, 0.06);  // as planted; shown to a tenth
    // Nothing but the scale was planted: what is left is how the fit weighs the steps, far below 1 % of 150.
    EXPECT_NEAR(after, 0, 1.5);
  }
}

TEST_F(Diagnosis, AnEditChangesTheCauseAndUndoShowsTheOldOneAtOnce) {
  show();
  wait();
  const QString before = panel.text();
  session.editChannel("Scale back", scaled(*session.channel(), 1 / 1.05));
  EXPECT_FALSE(find<QSplitter>("diagnosisBody")->isEnabled()) << "what is out of date looks so";
  EXPECT_TRUE(label("diagnosisSentence").startsWith("Being worked out again"));
  wait();
  EXPECT_NE(panel.text(), before);
  EXPECT_EQ(causes()->rowCount() > 0 && find<QSplitter>("diagnosisBody")->isVisible(), false)
      << "nothing is wrong with readings that are as expected: " << panel.text().toStdString();
  session.history().undo();
  EXPECT_EQ(panel.text(), before);  // no waiting
  EXPECT_TRUE(find<QSplitter>("diagnosisBody")->isEnabled());
}

TEST_F(Diagnosis, AnotherCheckShowsItsOwnAndGoingBackShowsTheFirstAtOnce) {
  show();
  wait();
  const QString before = panel.text();
  session.selectChannel(1);
  EXPECT_EQ(label("diagnosisSentence"), "Looking for what may be wrong …") << "not that of another check";
  wait();
  EXPECT_NE(panel.text(), before);
  session.selectChannel(0);
  EXPECT_EQ(panel.text(), before);
}

TEST_F(Diagnosis, ARemarkStartsNothing) {
  show();
  wait();
  core::Channel channel = *session.channel();
  channel.checks[0].remark = "windy";
  session.editChannel("Change remark", channel);
  EXPECT_TRUE(isDone());
}

TEST_F(Diagnosis, SaysWhatIsMissing) {
  show();
  session.selectChannel(2);
  EXPECT_TRUE(label("diagnosisSentence").startsWith("No check yet."));
  session.editChannel("Add check", core::withCheckAdded(*session.channel(), {}));
  EXPECT_EQ(label("diagnosisSentence"), "The check has no readings yet.");
  session.selectChannel(0);
  session.selectCheck({});
  EXPECT_TRUE(label("diagnosisSentence").startsWith("Plan only"));
  session.reset({});
  EXPECT_EQ(label("diagnosisSentence"), "No channel yet.");
  EXPECT_FALSE(find<QSplitter>("diagnosisBody")->isVisible());
}

TEST_F(Diagnosis, TwoReadingsAreTooFewAndThatIsSaid) {
  core::Channel channel = *session.channel();
  for (std::size_t step = 2; step < 9; ++step) channel.checks[0].readings[step].reset();
  session.editChannel("Remove readings", channel);
  show();
  wait();
  EXPECT_FALSE(label("diagnosisSentence").isEmpty());
  EXPECT_FALSE(find<QSplitter>("diagnosisBody")->isVisible());
}

/// Readings that are too small may as well come from longer leads.
class DiagnosisOfLowReadings : public Diagnosis {
 protected:
  DiagnosisOfLowReadings() : Diagnosis(0.98) {}
};

TEST_F(DiagnosisOfLowReadings, ACauseIsChosenByKeyboardAndAStepOfItIsChosenEverywhere) {
  show();
  wait();
  auto* table = find<SheetView>("causeTable");
  ASSERT_GE(causes()->rowCount(), 2);
  table->setFocus();
  QTest::keyClick(table, Qt::Key_Down);
  EXPECT_EQ(label("causeTitle"), cause(1).section('\n', 0, 0));
  auto* steps = find<SheetView>("causeRemainders");
  steps->setFocus();
  steps->setCurrentIndex(steps->model()->index(4, 0));
  EXPECT_EQ(session.selection().step, 4U);
  EXPECT_EQ(label("causeTitle"), cause(1).section('\n', 0, 0)) << "the cause stays chosen";
  session.selectStep(6);
  EXPECT_EQ(steps->currentIndex().row(), 6);
}

TEST_F(Diagnosis, IsCopiedAsPlainText) {
  show();
  wait();
  QTest::mouseClick(find<QToolButton>("copyDiagnosis"), Qt::LeftButton);
  const QString text = QApplication::clipboard()->text();
  for (const QString& part : {label("diagnosisSentence"), firstTitle(), label("causeConfirm"),
                              label("causeOnStrain"), QString("suspicion")})
    EXPECT_TRUE(text.contains(part)) << part.toStdString() << "\n" << text.toStdString();
  EXPECT_FALSE(text.contains(QChar(0x2060))) << "what keeps units whole on the screen is no text";
  EXPECT_EQ(text.count("\n9"), 1) << "a line for each step\n" << text.toStdString();
}

TEST_F(Diagnosis, SaysOfWhichCheckItIsAndThatThisPassesAllTheSame) {
  show();
  wait();
  const QString name = QString::fromStdString(session.check()->name) + ": ";
  EXPECT_TRUE(label("diagnosisSentence").startsWith(name)) << label("diagnosisSentence").toStdString();
  EXPECT_FALSE(label("diagnosisSentence").contains("all the same"));
  core::Channel generous = *session.channel();
  generous.setup.limits.relative = 0.2;  // 5 % were planted
  session.editChannel("Widen limits", generous);
  wait();
  EXPECT_TRUE(label("diagnosisSentence").startsWith(name + "All steps are within limits all the same. "))
      << label("diagnosisSentence").toStdString();
}

TEST_F(Diagnosis, NumbersAreInTheUsersNotation) {
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  show();
  wait();
  EXPECT_TRUE(causes()->index(0, CauseModel::Bayesian).data().toString().contains(','))
      << panel.text().toStdString();
  QLocale::setDefault(QLocale::c());
}

TEST_F(Diagnosis, StandsInNarrowAndWideRoomsAndInBothPalettes) {
  show();
  wait();
  for (const QSize size : {QSize(490, 380), QSize(1200, 900)}) {
    panel.resize(size);
    QTest::qWait(10);
    EXPECT_EQ(panel.size(), size) << "its content asks for more";
    EXPECT_EQ(find<QSplitter>("diagnosisBody")->orientation(),
              size.width() > 800 ? Qt::Horizontal : Qt::Vertical);
  }
  for (const QPalette& palette : {lightPalette(), darkPalette()}) {
    panel.setPalette(palette);
    EXPECT_NE(find<QLabel>("diagnosisSentence")->palette().color(QPalette::WindowText),
              palette.color(QPalette::Window));
  }
}

TEST_F(Diagnosis, ModelsKeepTheRulesOfModels) {
  const QAbstractItemModelTester causesTester(causes(),
                                              QAbstractItemModelTester::FailureReportingMode::Fatal);
  const QAbstractItemModelTester stepsTester(find<SheetView>("causeRemainders")->model(),
                                             QAbstractItemModelTester::FailureReportingMode::Fatal);
  show();
  wait();
  session.selectChannel(1);
  wait();
}

TEST_F(Diagnosis, HostileNamesAreShownAsTyped) {
  core::Channel channel = *session.channel();
  channel.setup.sequence[1].label = "<b>x</b>";
  session.editChannel("Rename step", channel);
  show();
  wait();
  const QAbstractItemModel& model = *find<SheetView>("causeRemainders")->model();
  EXPECT_EQ(model.index(1, RemainderModel::Step).data().toString(), "2  <b>x</b>");
  for (const QLabel* shown : panel.findChildren<QLabel*>()) EXPECT_EQ(shown->textFormat(), Qt::PlainText);
}

}  // namespace
}  // namespace ui

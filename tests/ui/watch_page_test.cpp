// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/watch_page.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <random>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"

namespace {

using ui::WatchPage;

/// A page that watches an empty folder beside the document of one channel with nine steps.
class WatchPageTest : public testing::Test {
 protected:
  WatchPageTest() : m_session(sample::documentOf({sample::nineStepChannel()})), m_page(m_session, m_store) {
    m_page.setDocumentPath(m_folder.filePath("a.bridgecal"));
    m_page.resize(1000, 500);
    m_page.show();
    m_page.watch(m_folder.path());
    m_page.folder().setRest(std::chrono::milliseconds(100));
    QTest::qWait(1200);  // until it has seen that nothing is there
  }

  /// The first `steps` steps as predicted, 2 s each at 100 samples/s with noise of 0.3 um/m (fixed seed).
  QByteArray recordingOf(std::size_t steps) const {
    const auto prediction = core::predict(m_session.channel()->setup);
    QByteArray text = "time [s],TP-01 [µm/m]\n";
    std::mt19937 random(7);
    std::normal_distribution<double> noise(0, 0.3);
    for (std::size_t k = 0; k < 200 * steps; ++k)
      text += QByteArray::number(0.01 * static_cast<double>(k), 'f', 2) + "," +
              QByteArray::number(prediction.steps[k / 200]->reading.base() + noise(random), 'f', 3) + "\n";
    return text;
  }
  void write(const QString& name, const QByteArray& bytes) const {
    QFile file(m_folder.filePath(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }
  QTableWidget* list() { return m_page.findChild<QTableWidget*>("watchList"); }
  QString stateAt(int row) { return row < list()->rowCount() ? list()->item(row, 2)->text() : QString(); }
  bool waitForState(const QString& state) {
    return QTest::qWaitFor([&] { return stateAt(0) == state; }, 20'000);
  }
  void click(const char* name) { QTest::mouseClick(m_page.findChild<QToolButton*>(name), Qt::LeftButton); }
  const std::vector<core::Check>& checks() const { return m_session.channel()->checks; }

  QTemporaryDir m_folder;
  ui::Session m_session;
  ui::RecordingStore m_store;
  WatchPage m_page;
};

TEST_F(WatchPageTest, TakesUpARecordingThatLeavesNoChoice) {
  const std::size_t before = checks().size();
  write("pre_1.csv", recordingOf(9));
  ASSERT_TRUE(waitForState("taken up")) << stateAt(0).toStdString();
  ASSERT_EQ(checks().size(), before + 1);
  EXPECT_EQ(checks().back().name, "pre_1");
  EXPECT_EQ(checks().back().recording->path, "pre_1.csv");
  EXPECT_EQ(checks().back().recording->column, "TP-01");
  EXPECT_EQ(checks().back().recording->sha256.size(), 64u);
  EXPECT_EQ(m_session.evaluation()->verdict, core::Verdict::Pass);
  m_session.history().undo();
  EXPECT_EQ(checks().size(), before) << "one undo step";
}

TEST_F(WatchPageTest, UpdatesTheOpenCheckWhenTheRecordingIsWrittenAnew) {
  write("pre.csv", recordingOf(9));
  ASSERT_TRUE(waitForState("taken up"));
  const std::size_t once = checks().size();
  const std::string firstHash = checks().back().recording->sha256;
  write("pre.csv", recordingOf(9) + "18.00,0.1\n18.01,0.2\n");
  ASSERT_TRUE(QTest::qWaitFor([&] { return checks().back().recording->sha256 != firstHash; }, 20'000));
  EXPECT_EQ(checks().size(), once);
}

TEST_F(WatchPageTest, LeavesToTheUserWhatIsIncomplete) {
  const std::size_t before = checks().size();
  write("short.csv", recordingOf(4));
  ASSERT_TRUE(waitForState("waits for you")) << stateAt(0).toStdString();
  EXPECT_EQ(checks().size(), before);
  QSignalSpy wanted(&m_page, &WatchPage::importWanted);
  list()->setCurrentCell(0, 0);
  click("watchDecide");
  ASSERT_EQ(wanted.size(), 1);
  EXPECT_EQ(wanted[0][0].toString(), m_folder.filePath("short.csv"));
}

TEST_F(WatchPageTest, TakesNothingByItselfWhenToldSo) {
  m_page.findChild<QCheckBox*>("watchTakesUp")->setChecked(false);
  write("pre.csv", recordingOf(9));
  ASSERT_TRUE(waitForState("waits for you"));
  EXPECT_TRUE(list()->item(0, 3)->text().contains("9 of 9 steps"))
      << list()->item(0, 3)->text().toStdString();
}

TEST_F(WatchPageTest, NamesChecksAndTellsTheirVerdict) {
  m_page.findChild<QComboBox*>("watchNames")->setCurrentIndex(1);
  QTest::keyClicks(m_page.findChild<QLineEdit*>("watchPerson"), "shift B");
  write("a_17.csv", recordingOf(9));
  ASSERT_TRUE(waitForState("taken up"));
  EXPECT_EQ(checks().back().name, "pre-test");
  EXPECT_EQ(checks().back().person, "shift B");
  EXPECT_EQ(list()->item(0, 3)->text(), "TP-01, pre-test: pass");
}

TEST_F(WatchPageTest, SaysThatAnotherPlaceIsWatchedNow) {
  QSignalSpy said(&m_page, &WatchPage::said);
  QTemporaryDir other;
  m_page.watch(other.path());
  ASSERT_EQ(said.size(), 1);
  EXPECT_TRUE(said[0][0].toString().contains(m_folder.path()));
}

TEST_F(WatchPageTest, SaysWhyAFileIsNoRecording) {
  write("letter.csv", "Dear all,\nno numbers here.\n");
  ASSERT_TRUE(waitForState("not read"));
  EXPECT_FALSE(list()->item(0, 3)->text().isEmpty());
}

TEST_F(WatchPageTest, PausesAndGoesOn) {
  click("watchPause");
  write("pre.csv", recordingOf(9));
  QTest::qWait(1500);
  EXPECT_EQ(list()->rowCount(), 0);
  EXPECT_TRUE(m_page.findChild<QLabel*>("watchState")->text().startsWith("Paused"));
  click("watchPause");
  EXPECT_TRUE(waitForState("taken up"));
}

}  // namespace

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/recording_dialog.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <random>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"

namespace ui {
namespace {

/// A document of one channel and a recording of its nine steps, 2 s each at 100 samples/s, made from
/// the expected readings with noise of 0.3 um/m (fixed seed).
class Recorded : public testing::Test {
 protected:
  Recorded()
      : session(sample::documentOf({sample::nineStepChannel()})),
        dialog(session, folder.filePath("a.bridgecal")) {
    dialog.show();
  }

  QString write(const QString& name, const QString& column, std::size_t steps) {
    const auto prediction = core::predict(session.channel()->setup);
    QByteArray text = "time [s]," + column.toUtf8() + "\n";
    std::mt19937 random(7);
    std::normal_distribution<double> noise(0, 0.3);
    for (std::size_t k = 0; k < 200 * steps; ++k)
      text += QByteArray::number(0.01 * static_cast<double>(k), 'f', 2) + "," +
              QByteArray::number(prediction.steps[k / 200]->reading.base() + noise(random), 'f', 3) + "\n";
    return writeBytes(name, text);
  }
  QString writeBytes(const QString& name, const QByteArray& bytes) {
    QFile file(folder.filePath(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    return file.fileName();
  }
  void read(const QString& path) {
    QSignalSpy done(&dialog, &RecordingDialog::readingDone);
    dialog.readFile(path);
    ASSERT_TRUE(done.wait(20000));
  }
  QString message() { return dialog.findChild<QLabel*>("recordingMessage")->text(); }
  QPushButton* take() { return dialog.findChild<QPushButton*>("takeReadings"); }
  QTableWidget* levels() { return dialog.findChild<QTableWidget*>("recordingLevels"); }
  QTableWidget* channels() { return dialog.findChild<QTableWidget*>("recordingChannels"); }

  QTemporaryDir folder;
  Session session;
  RecordingDialog dialog;
};

TEST_F(Recorded, LevelsOfTheColumnNamedLikeTheChannelBecomeItsReadings) {
  read(write("pre.csv", "TP-01 [µm/m]", 9));
  EXPECT_EQ(levels()->rowCount(), 9);
  ASSERT_TRUE(take()->isEnabled()) << message();
  QTest::mouseClick(take(), Qt::LeftButton);
  ASSERT_TRUE(session.check());
  EXPECT_EQ(session.evaluation()->verdict, core::Verdict::Pass);
  EXPECT_EQ(session.check()->recording->path, "pre.csv");
  EXPECT_EQ(session.check()->recording->sha256.size(), 64u);
  EXPECT_EQ(session.history().count(), 1);
}

TEST_F(Recorded, AChannelThatDidNotMatchOneFileIsTickedAgainForTheNext) {
  read(write("short.csv", "TP-01", 7));
  EXPECT_EQ(channels()->item(0, 0)->checkState(), Qt::Unchecked);
  read(write("whole.csv", "TP-01", 9));
  EXPECT_EQ(channels()->item(0, 0)->checkState(), Qt::Checked);
  QTest::mouseClick(take(), Qt::LeftButton);
  EXPECT_EQ(dialog.taken(), 1u);
}

TEST_F(Recorded, AnUntickedChannelIsNotTaken) {
  read(write("whole.csv", "TP-01", 9));
  channels()->item(0, 0)->setCheckState(Qt::Unchecked);
  QTest::mouseClick(take(), Qt::LeftButton);
  EXPECT_EQ(session.history().count(), 0);
  EXPECT_TRUE(message().contains("Tick at least one")) << message();
}

TEST_F(Recorded, TooFewLevelsAreSaidAndNotTaken) {
  read(write("short.csv", "TP-01", 7));
  EXPECT_FALSE(take()->isEnabled());
  EXPECT_TRUE(channels()->item(0, 3)->text().contains("9")) << channels()->item(0, 3)->text();
}

TEST_F(Recorded, AnExtraLevelCanBeLeftOutByHand) {
  session.editChannel("Shorten", core::withStepRemoved(*session.channel(), 8));
  core::Channel nine = sample::nineStepChannel();
  Session full(sample::documentOf({nine}));
  const auto prediction = core::predict(nine.setup);
  QByteArray text = "time,TP-01\n";
  for (std::size_t k = 0; k < 1800; ++k)
    text += QByteArray::number(0.01 * static_cast<double>(k), 'f', 2) + "," +
            QByteArray::number(prediction.steps[k / 200]->reading.base() + static_cast<double>(k % 3) * 0.1,
                               'f', 3) +
            "\n";
  read(writeBytes("nine.csv", text));
  EXPECT_FALSE(take()->isEnabled());
  ASSERT_EQ(levels()->rowCount(), 9);
  levels()->item(8, 0)->setCheckState(Qt::Unchecked);
  EXPECT_TRUE(QTest::qWaitFor([&] { return take()->isEnabled(); }, 2000)) << channels()->item(0, 3)->text();
}

TEST_F(Recorded, AnotherColumnCanBeChosenForTheChannel) {
  read(write("other.csv", "strain", 9));
  EXPECT_FALSE(take()->isEnabled());
  EXPECT_TRUE(message().contains("No column is named like a channel")) << message();
  auto* column = dialog.findChild<QComboBox*>("recordingColumn");
  QSignalSpy done(&dialog, &RecordingDialog::readingDone);
  column->setCurrentIndex(0);
  emit column->activated(0);
  ASSERT_TRUE(done.wait(20000));
  EXPECT_TRUE(take()->isEnabled()) << message();
}

TEST_F(Recorded, AnotherUnitIsRefused) {
  read(write("unit.csv", "TP-01 [mV/V]", 9));
  EXPECT_FALSE(take()->isEnabled());
  EXPECT_TRUE(channels()->item(0, 3)->text().contains("mV/V"));
}

TEST_F(Recorded, AnotherSpellingOfTheUnitIsTaken) {
  read(write("spelling.csv", "TP-01 [um/m]", 9));
  EXPECT_TRUE(take()->isEnabled()) << channels()->item(0, 3)->text();
}

TEST_F(Recorded, AFileWithoutNumbersOrAMissingOneIsExplained) {
  read(writeBytes("words.csv", "time,TP-01\nnone,none\n"));
  EXPECT_FALSE(take()->isEnabled());
  EXPECT_FALSE(message().isEmpty());
  read(folder.filePath("missing.csv"));
  EXPECT_TRUE(message().contains("missing.csv")) << message();
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Recorded, ClosingTheDialogWhileItReadsIsHarmless) {
  dialog.readFile(write("pre.csv", "TP-01", 9));
  dialog.reject();
  EXPECT_EQ(session.history().count(), 0);
}

}  // namespace
}  // namespace ui

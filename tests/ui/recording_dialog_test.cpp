// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/recording_dialog.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <numeric>
#include <random>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/fields/count_edit.h"
#include "ui/recording/column_table.h"
#include "ui/recording/find_table.h"
#include "ui/recording/signal_picture.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// A document of the given channels, and recordings of their nine steps, 2 s each at 100 samples/s, made from
/// the expected readings with noise of 0.3 um/m (fixed seed).
class Recorded : public testing::Test {
 protected:
  explicit Recorded(core::Document document = sample::documentOf({sample::nineStepChannel()}))
      : session(std::move(document)) {
    open();
  }

  void open() {
    dialog = std::make_unique<RecordingDialog>(session, folder.filePath("a.bridgecal"));
    new QAbstractItemModelTester(channels()->model(), dialog.get());
    new QAbstractItemModelTester(levels()->model(), dialog.get());
    new QAbstractItemModelTester(find<QTableView>("previewLines")->model(), dialog.get());
    dialog->show();
    dialog->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(dialog.get()));
  }

  struct Form {
    QByteArray separator = ",";
    QByteArray timeName = "time [s]";
    double timeFactor = 1;
    char decimal = '.';
  };
  QByteArray rows(const QByteArray& columns, std::size_t steps, const Form& form) {
    std::vector<std::size_t> inOrder(steps);
    std::iota(inOrder.begin(), inOrder.end(), std::size_t{0});
    return rowsOf(columns, inOrder, form);
  }
  QByteArray rowsOf(const QByteArray& columns, const std::vector<std::size_t>& steps, const Form& form) {
    const auto prediction = core::predict(session.channel()->setup);
    QByteArray text = form.timeName + form.separator + columns + "\n";
    std::mt19937 random(7);
    std::normal_distribution<double> noise(0, 0.3);
    for (std::size_t k = 0; k < 200 * steps.size(); ++k) {
      const double value = prediction.steps[steps[k / 200]]->reading.base() + noise(random);
      QByteArray row = QByteArray::number(form.timeFactor * 0.01 * static_cast<double>(k), 'f', 2);
      for (int column = 0; column <= columns.count(form.separator); ++column)
        row += form.separator + QByteArray::number(value, 'f', 3);
      text += row.replace('.', form.decimal) + "\n";
    }
    return text;
  }
  QString write(const QString& name, const QByteArray& columns, std::size_t steps) {
    return writeBytes(name, rows(columns, steps, {}));
  }
  QString writeBytes(const QString& name, const QByteArray& bytes) {
    QFile file(folder.filePath(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    return file.fileName();
  }
  void read(const QString& path) {
    QSignalSpy done(dialog.get(), &RecordingDialog::readingDone);
    dialog->readFile(path);
    ASSERT_TRUE(done.wait(20000));
  }
  /// Does something that makes the file be read anew, and waits for that.
  template <class Act>
  void readAnewBy(const Act& act) {
    QSignalSpy done(dialog.get(), &RecordingDialog::readingDone);
    act();
    ASSERT_TRUE(!done.isEmpty() || done.wait(20000));
  }
  void takeAndWait() {
    QTest::mouseClick(take(), Qt::LeftButton);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !dialog->isVisible(); }, 10000)) << message();
  }

  template <class Widget>
  Widget* find(const char* name) {
    auto* widget = dialog->findChild<Widget*>(name);
    EXPECT_TRUE(widget) << name;
    return widget;
  }
  QString message() { return find<QLabel>("recordingMessage")->text(); }
  QString fileError() {
    auto* label = find<QLabel>("recordingFileError");
    return label->isVisible() ? label->text() : QString();
  }
  QString nameNote() {
    auto* label = find<QLabel>("recordingNameNote");
    return label->isVisible() ? label->text() : QString();
  }
  QString checkName() { return find<QLineEdit>("recordingCheckName")->text(); }
  QString beside() { return find<QLabel>("matchWords")->text(); }
  void tick(int row) {
    channels()->setFocus();
    channels()->setCurrentIndex(channels()->model()->index(row, ColumnTable::Channel));
    QTest::keyClick(channels(), Qt::Key_Space);
  }
  QPushButton* take() { return find<QPushButton>("takeReadings"); }
  QTableView* levels() { return find<QTableView>("recordingLevels"); }
  QTableView* channels() { return find<QTableView>("recordingChannels"); }
  QString text(QTableView* table, int row, int column) {
    return table->model()->index(row, column).data().toString();
  }
  QString match(int row = 0) { return text(channels(), row, ColumnTable::Match); }
  Qt::CheckState ticked(int row) {
    return static_cast<Qt::CheckState>(
        channels()->model()->index(row, ColumnTable::Channel).data(Qt::CheckStateRole).toInt());
  }
  /// Clicks on the cell and chooses from the list that opens.
  void choose(QTableView* table, int row, int column, const QString& entry) {
    const QModelIndex cell = table->model()->index(row, column);
    table->scrollTo(cell);
    QTest::mouseClick(table->viewport(), Qt::LeftButton, Qt::NoModifier, table->visualRect(cell).center());
    auto* box = table->viewport()->findChild<QComboBox*>();
    ASSERT_TRUE(box) << "no list opened";
    const int at = box->findText(entry);
    ASSERT_GE(at, 0) << "no " << entry.toStdString();
    ASSERT_TRUE(QTest::qWaitFor([&] { return box->view()->isVisible(); }, 5000));
    box->view()->setCurrentIndex(box->model()->index(at, 0));
    QTest::keyClick(box->view(), Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !table->viewport()->findChild<QComboBox*>(); }, 5000));
  }
  void openFields() {
    if (!find<QToolButton>("layoutChange")->isChecked())
      QTest::mouseClick(find<QToolButton>("layoutChange"), Qt::LeftButton);
  }
  /// Chooses with the keyboard.
  void chooseIn(const char* name, const QString& entry) {
    auto* box = find<QComboBox>(name);
    const int row = box->findText(entry);
    ASSERT_GE(row, 0) << name << " has no " << entry.toStdString();
    box->setFocus();
    const int key = row < box->currentIndex() ? Qt::Key_Up : Qt::Key_Down;
    for (int k = std::abs(row - box->currentIndex()); k > 0; --k)
      QTest::keyClick(box, static_cast<Qt::Key>(key));
  }

  QTemporaryDir folder;
  Session session;
  std::unique_ptr<RecordingDialog> dialog;
};

TEST_F(Recorded, LevelsOfTheColumnNamedLikeTheChannelBecomeItsReadings) {
  read(write("pre.csv", "TP-01 [µm/m]", 9));
  EXPECT_EQ(levels()->model()->rowCount(), 9);
  EXPECT_TRUE(match().contains("every step has its level")) << match();
  ASSERT_TRUE(take()->isEnabled()) << message();
  takeAndWait();
  ASSERT_TRUE(session.check());
  EXPECT_EQ(session.evaluation()->verdict, core::Verdict::Pass);
  EXPECT_EQ(session.check()->recording->path, "pre.csv");
  EXPECT_EQ(session.check()->recording->sha256.size(), 64u);
  EXPECT_EQ(session.check()->recording->readAs, "");
  EXPECT_EQ(session.history().count(), 1);
}

TEST_F(Recorded, WhoRanTheCheckAndWhenIsKept) {
  find<QLineEdit>("recordingPerson")->setFocus();
  QTest::keyClicks(find<QLineEdit>("recordingPerson"), "K. Moss");
  auto* date = find<QLineEdit>("recordingDate");
  date->selectAll();
  QTest::keyClicks(date, "2026-05-11");
  read(write("pre.csv", "TP-01", 9));
  takeAndWait();
  ASSERT_TRUE(session.check());
  EXPECT_EQ(session.check()->person, "K. Moss");
  EXPECT_EQ(session.check()->date, "2026-05-11") << "the file's day took the place of what was typed";
}

TEST_F(Recorded, ADateThatIsNoDayIsRefusedBeforeAnythingIsTaken) {
  auto* date = find<QLineEdit>("recordingDate");
  date->selectAll();
  QTest::keyClicks(date, "31.02.2026");
  read(write("pre.csv", "TP-01", 9));
  QTest::mouseClick(take(), Qt::LeftButton);
  EXPECT_TRUE(dialog->isVisible());
  EXPECT_TRUE(find<QLabel>("recordingMessage")->text().contains("“31.02.2026” is no day"));
  EXPECT_FALSE(session.check());
}

TEST_F(Recorded, AChannelThatDidNotMatchOneFileIsTickedAgainForTheNext) {
  read(write("other.csv", "TP-01 [mV/V]", 9));
  EXPECT_EQ(ticked(0), Qt::Unchecked);
  read(write("whole.csv", "TP-01", 9));
  EXPECT_EQ(ticked(0), Qt::Checked);
  takeAndWait();
  EXPECT_EQ(dialog->taken(), 1u);
}

TEST_F(Recorded, AnUntickedChannelIsNotTaken) {
  read(write("whole.csv", "TP-01", 9));
  channels()->setFocus();
  channels()->setCurrentIndex(channels()->model()->index(0, ColumnTable::Channel));
  QTest::keyClick(channels(), Qt::Key_Space);
  EXPECT_EQ(ticked(0), Qt::Unchecked);
  EXPECT_FALSE(take()->isEnabled());
  EXPECT_TRUE(take()->toolTip().contains("Tick at least one")) << take()->toolTip().toStdString();
  QTest::mouseClick(take(), Qt::LeftButton);
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Recorded, MissingStepsAreSaidAndNotTickedUnasked) {
  read(write("short.csv", "TP-01", 7));
  EXPECT_EQ(ticked(0), Qt::Unchecked);
  EXPECT_FALSE(match().contains("every step has its level")) << match();
  EXPECT_TRUE(match().contains("9")) << match();
}

TEST_F(Recorded, ALevelCanBeGivenToNoStepByHand) {
  read(write("whole.csv", "TP-01", 9));
  ASSERT_EQ(levels()->model()->rowCount(), 9);
  choose(levels(), 8, FindTable::Step, "no step");
  EXPECT_EQ(text(levels(), 8, FindTable::Step), "no step");
  EXPECT_TRUE(match().contains("by hand")) << match();
  EXPECT_TRUE(match().contains("8 of 9")) << match();
  EXPECT_EQ(beside().count(" steps have a level"), 1) << beside();
  EXPECT_TRUE(beside().contains("8 of 9")) << beside();
  takeAndWait();
  ASSERT_TRUE(session.check());
  EXPECT_FALSE(session.check()->readings[8]);
  EXPECT_TRUE(session.check()->readings[7]);
  EXPECT_EQ(session.check()->otherLevels.size(), 1u);
}

TEST_F(Recorded, ALevelGivenToAStepByHandLeavesItsFormerLevelOver) {
  read(write("whole.csv", "TP-01", 9));
  const QString second = text(levels(), 1, FindTable::Step);
  choose(levels(), 0, FindTable::Step, second);
  EXPECT_EQ(text(levels(), 0, FindTable::Step), second);
  EXPECT_EQ(text(levels(), 1, FindTable::Step), "no step");
}

TEST_F(Recorded, ReturnOpensTheListOfACellAndTakesNothing) {
  read(write("pre.csv", "TP-01,other", 9));
  channels()->setFocus();
  channels()->setCurrentIndex(channels()->model()->index(0, ColumnTable::ColumnColumn));
  QTest::keyClick(channels(), Qt::Key_Return);
  auto* box = channels()->viewport()->findChild<QComboBox*>("columnChoice");
  ASSERT_TRUE(box);
  EXPECT_EQ(box->count(), 3);
  EXPECT_EQ(box->currentText(), "TP-01");
  EXPECT_TRUE(dialog->isVisible());
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Recorded, ReturnInAFieldTakesNothing) {
  read(write("pre.csv", "TP-01", 9));
  find<QLineEdit>("recordingCheckName")->setFocus();
  QTest::keyClick(find<QLineEdit>("recordingCheckName"), Qt::Key_Return);
  QTest::qWait(100);
  EXPECT_TRUE(dialog->isVisible());
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Recorded, AColumnChosenForTheChannelIsRememberedByIt) {
  read(write("other.csv", "strain", 9));
  EXPECT_FALSE(take()->isEnabled());
  EXPECT_TRUE(message().contains("No column is named like a channel")) << message();
  choose(channels(), 0, ColumnTable::ColumnColumn, "strain");
  ASSERT_TRUE(QTest::qWaitFor([&] { return take()->isEnabled(); }, 20000)) << match();
  EXPECT_EQ(ticked(0), Qt::Checked);
  takeAndWait();
  EXPECT_EQ(session.channel()->recordingColumn, "strain");
  open();
  read(write("next.csv", "strain", 9));
  EXPECT_EQ(text(channels(), 0, ColumnTable::ColumnColumn), "strain");
  EXPECT_TRUE(take()->isEnabled());
}

TEST_F(Recorded, AnotherUnitIsRefusedUntilItIsTypedOver) {
  read(write("unit.csv", "TP-01 [mV/V]", 9));
  EXPECT_FALSE(take()->isEnabled());
  EXPECT_TRUE(match().contains("mV/V")) << match();
  auto* lines = find<QTableView>("previewLines");
  const QModelIndex unit = lines->model()->index(1, 1);
  ASSERT_EQ(unit.data().toString(), "mV/V");
  lines->setCurrentIndex(unit);
  lines->edit(unit);
  auto* editor = lines->viewport()->findChild<QLineEdit*>();
  ASSERT_TRUE(editor);
  readAnewBy([&] {
    editor->selectAll();
    QTest::keyClicks(editor, "um/m");
    QTest::keyClick(editor, Qt::Key_Return);
  });
  EXPECT_TRUE(take()->isEnabled()) << match();
  takeAndWait();
  ASSERT_TRUE(session.check());
  const auto kept = core::choicesFromText(session.check()->recording->readAs);
  ASSERT_TRUE(kept);
  EXPECT_EQ(kept->units, (std::map<std::size_t, std::string>{{1, "um/m"}}));
}

TEST_F(Recorded, AnotherSpellingOfTheUnitIsTaken) {
  read(write("spelling.csv", "TP-01 [um/m]", 9));
  EXPECT_TRUE(take()->isEnabled()) << match();
}

TEST_F(Recorded, TheGuessIsSaidAndShownWithTheFirstLines) {
  read(writeBytes("german.txt", rows("TP-01 [µm/m]", 9, {.separator = ";", .decimal = ','})));
  const QString sentence = find<QLabel>("layoutSentence")->text();
  for (const char* word : {"UTF-8", "semicolon", "decimal comma", "names in line 1", "numbers from line 2"})
    EXPECT_TRUE(sentence.contains(word)) << word << " in " << sentence;
  auto* lines = find<QTableView>("previewLines");
  EXPECT_EQ(text(lines, 0, 0), "time [s]");
  EXPECT_EQ(text(lines, 1, 1), "µm/m") << "the unit that the column is taken to have";
  EXPECT_EQ(text(lines, 2, 0), "0,00");
  EXPECT_TRUE(lines->model()->headerData(2, Qt::Vertical).toString().contains("numbers"));
  EXPECT_FALSE(find<QLabel>("layoutNote")->isVisible());
}

TEST_F(Recorded, AChangedGuessReadsAnewIsMarkedAndCanBeTakenBack) {
  read(writeBytes("ms.csv", rows("TP-01", 9, {.timeName = "time", .timeFactor = 1000})));
  openFields();
  const QString before = text(levels(), 8, FindTable::To);
  auto* back = find<QToolButton>("layoutTimeFormAsGuessed");
  EXPECT_FALSE(back->isVisible());
  readAnewBy([&] { chooseIn("layoutTimeForm", "milliseconds"); });
  // Derived: 9 levels of 2 s are 18 s.
  EXPECT_LT(QLocale().toDouble(text(levels(), 8, FindTable::To)), 18.0);
  EXPECT_TRUE(back->isVisible());
  EXPECT_TRUE(find<QLabel>("layoutNote")->text().startsWith("Changed by you"))
      << find<QLabel>("layoutNote")->text();
  readAnewBy([&] { QTest::mouseClick(back, Qt::LeftButton); });
  EXPECT_EQ(text(levels(), 8, FindTable::To), before);
  EXPECT_FALSE(back->isVisible());
}

TEST_F(Recorded, ASampleRateTakesThePlaceOfATimeColumn) {
  read(write("pre.csv", "TP-01", 9));
  openFields();
  chooseIn("layoutTimeFrom", "the sample rate");
  auto* rate = find<QLineEdit>("layoutRate");
  ASSERT_TRUE(rate->isVisible());
  readAnewBy([&] {
    QTest::keyClicks(rate, "50");
    QTest::keyClick(rate, Qt::Key_Return);
  });
  // Derived: 1800 samples at 50 Hz are 36 s; the last level ends within its last quarter of a second.
  EXPECT_NEAR(QLocale().toDouble(text(levels(), 8, FindTable::To)), 36, 0.5);
  takeAndWait();
  ASSERT_TRUE(session.check());
  EXPECT_EQ(core::choicesFromText(session.check()->recording->readAs)->rate_Hz, 50.0);
}

TEST_F(Recorded, AFileWithoutTimesAsksForTheSampleRate) {
  // Derived from the NPY format 1.0 (NumPy Enhancement Proposal 1): magic, version, length of the header, the
  // header padded to a multiple of 64 bytes, then the numbers.
  QByteArray header = "{'descr': '<f8', 'fortran_order': False, 'shape': (900,), }";
  while ((10 + header.size() + 1) % 64 != 0) header += ' ';
  header += '\n';
  QByteArray bytes("\x93NUMPY\x01\x00", 8);
  bytes += static_cast<char>(header.size());
  bytes += '\0';
  bytes += header;
  for (int k = 0; k < 900; ++k) {
    const double value = k < 450 ? 0 : 1000;
    bytes += QByteArray(reinterpret_cast<const char*>(&value), sizeof value);
  }
  read(writeBytes("levels.npy", bytes));
  auto* rate = find<QLineEdit>("layoutRate");
  ASSERT_TRUE(rate->isVisible()) << message();
  EXPECT_TRUE(fileError().contains("sample rate")) << fileError();
  readAnewBy([&] {
    rate->setFocus();
    QTest::keyClicks(rate, "100");
    QTest::keyClick(rate, Qt::Key_Return);
  });
  EXPECT_TRUE(message().contains("Samples: 900")) << message();
}

TEST_F(Recorded, ChoicesOfTheLastRecordingAreUsedAgainAndSaid) {
  core::Channel channel = *session.channel();
  core::Check check;
  check.recording = core::RecordingReference{"old.csv", 10, std::string(64, 'a'), "TP-01", "rate=50"};
  session.editChannel("Check", core::withCheckAdded(channel, check));
  read(write("pre.csv", "TP-01", 9));
  auto* note = find<QLabel>("layoutNote");
  EXPECT_TRUE(note->isVisible());
  EXPECT_EQ(note->text(), "As for the last recording: sample rate.");
  EXPECT_NEAR(QLocale().toDouble(text(levels(), 8, FindTable::To)), 36, 0.5);
  readAnewBy([&] { QTest::mouseClick(find<QPushButton>("allAsGuessed"), Qt::LeftButton); });
  EXPECT_FALSE(note->isVisible());
  EXPECT_NEAR(QLocale().toDouble(text(levels(), 8, FindTable::To)), 18, 0.5);
}

TEST_F(Recorded, AChoiceThatLeavesNothingToReadCanBeTakenBack) {
  read(write("pre.csv", "TP-01", 9));
  openFields();
  auto* firstRow = find<CountEdit>("layoutFirstRow");
  readAnewBy([&] {
    firstRow->setFocus();
    firstRow->selectAll();
    QTest::keyClicks(firstRow, "900000");
    QTest::keyClick(firstRow, Qt::Key_Return);
  });
  EXPECT_FALSE(take()->isEnabled());
  EXPECT_FALSE(fileError().isEmpty());
  auto* back = find<QPushButton>("allAsGuessed");
  ASSERT_TRUE(back->isVisible());
  readAnewBy([&] { QTest::mouseClick(back, Qt::LeftButton); });
  EXPECT_TRUE(take()->isEnabled()) << message();
}

TEST_F(Recorded, WhatWasNotReadIsListed) {
  QByteArray bytes = rows("TP-01", 9, {});
  bytes.insert(bytes.indexOf("\n0.50,") + 1, "pause,pause\n");
  read(writeBytes("skips.csv", bytes));
  auto* list = find<QListWidget>("notRead");
  ASSERT_GE(list->count(), 1);
  EXPECT_TRUE(list->item(0)->text().startsWith("Line 52")) << list->item(0)->text();
  EXPECT_TRUE(message().contains("skipped: 1;")) << message();
}

TEST_F(Recorded, AFileWithoutNumbersOrAMissingOneIsExplained) {
  read(writeBytes("words.csv", "time,TP-01\nnone,none\n"));
  EXPECT_FALSE(take()->isEnabled());
  EXPECT_FALSE(fileError().isEmpty());
  read(folder.filePath("missing.csv"));
  EXPECT_TRUE(fileError().contains("missing.csv")) << fileError();
  EXPECT_EQ(message(), "") << "said twice";
  EXPECT_FALSE(take()->isEnabled());
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Recorded, ClosingTheDialogWhileItReadsIsHarmless) {
  dialog->readFile(write("pre.csv", "TP-01", 9));
  dialog->reject();
  dialog.reset();
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Recorded, EscapeStopsTheReadingAndLeavesTheDialogOpen) {
  dialog->readFile(write("pre.csv", "TP-01", 9));
  QTest::keyClick(dialog.get(), Qt::Key_Escape);
  EXPECT_TRUE(dialog->isVisible());
  EXPECT_TRUE(message().contains("stopped")) << message();
  EXPECT_FALSE(take()->isEnabled());
  readAnewBy([&] { QTest::mouseClick(find<QPushButton>("readAgain"), Qt::LeftButton); });
  EXPECT_TRUE(take()->isEnabled());
}

TEST_F(Recorded, APlanThatChangedMeanwhileIsNotGivenTheReadings) {
  read(write("pre.csv", "TP-01", 9));
  session.editChannel("Shorten", core::withStepRemoved(*session.channel(), 8));
  QTest::mouseClick(take(), Qt::LeftButton);
  EXPECT_TRUE(QTest::qWaitFor([&] { return message().contains("changed"); }, 10000)) << message();
  EXPECT_TRUE(dialog->isVisible());
  EXPECT_EQ(session.history().count(), 1);
}

TEST_F(Recorded, NumbersAreInTheUsersNotation) {
  QLocale::setDefault(QLocale(QLocale::German));
  read(write("pre.csv", "TP-01", 9));
  EXPECT_TRUE(text(levels(), 1, FindTable::Mean).contains(',')) << text(levels(), 1, FindTable::Mean);
  QLocale::setDefault(QLocale::c());
}

TEST_F(Recorded, WhatWasReadIsInTheStore) {
  RecordingStore store;
  store.setFolder(folder.path());
  dialog = std::make_unique<RecordingDialog>(session, folder.filePath("a.bridgecal"), nullptr, &store);
  dialog->show();
  read(write("pre.csv", "TP-01", 9));
  takeAndWait();
  ASSERT_TRUE(session.check());
  const auto kept = store.recording(*session.check()->recording);
  ASSERT_TRUE(kept);
  EXPECT_EQ(kept->recording.time.size(), 1800u);
  EXPECT_EQ(kept->envelopes.size(), kept->recording.columns.size());
}

TEST_F(Recorded, WaysToReadARecordingAreShortAndNothingIsClaimedBeforeTheChoice) {
  // Zero, a shunt and zero again stand at several places of the plan.
  read(writeBytes("three.csv", rowsOf("TP-01", {0, 1, 0}, {})));
  auto* readAs = find<QComboBox>("readAs");
  ASSERT_TRUE(readAs->isVisible()) << match();
  for (int k = 0; k < readAs->count(); ++k) {
    const QString words = readAs->itemText(k);
    EXPECT_LT(words.size(), 80) << words;
    EXPECT_FALSE(words.contains("misfit") || words.contains("missing")) << words;
    EXPECT_FALSE(readAs->itemData(k, Qt::ToolTipRole).toString().contains("e-")) << words;
    for (int other = 0; other < k; ++other) EXPECT_NE(words, readAs->itemText(other));
  }
  EXPECT_FALSE(beside().contains("steps have a level")) << beside();
  EXPECT_TRUE(beside().contains(QString("%1 ways").arg(readAs->count()))) << beside();
  readAs->setFocus();
  QTest::keyClick(readAs, Qt::Key_Down);
  EXPECT_TRUE(beside().contains("of 9 steps have a level")) << beside();
  EXPECT_TRUE(take()->isEnabled());
}

TEST_F(Recorded, AColumnNearlyNamedLikeTheChannelIsProposedAndNotTicked) {
  for (const char* name : {"TP01", "tp-01_raw", "TP-01 copy"}) {
    read(write("near.csv", name, 9));
    EXPECT_EQ(text(channels(), 0, ColumnTable::ColumnColumn), name);
    EXPECT_EQ(ticked(0), Qt::Unchecked) << name;
    EXPECT_TRUE(match().contains(QString("column %1 has nearly the channel's name").arg(name))) << match();
    EXPECT_FALSE(take()->isEnabled());
  }
  tick(0);
  EXPECT_FALSE(match().contains("nearly")) << match();
  takeAndWait();
  EXPECT_EQ(session.channel()->recordingColumn, "TP-01 copy");
}

TEST_F(Recorded, NoColumnIsProposedWhenSeveralAreNearlyNamedOrTheNameGoesOn) {
  read(write("two.csv", "TP01,tp_01", 9));
  EXPECT_EQ(match(), "no column");
  read(write("raw.csv", "tp-01_raw,TP-01 copy", 9));
  EXPECT_EQ(match(), "no column");
  read(write("alike.csv", "TP01,tp-01_raw,TP-01 copy", 9));
  EXPECT_EQ(text(channels(), 0, ColumnTable::ColumnColumn), "TP01") << "alike goes before beginning so";
  read(write("longer.csv", "TP-012", 9));
  EXPECT_EQ(match(), "no column");
}

TEST_F(Recorded, TheSignalIsDrawnAndAClickOnALevelChoosesIt) {
  read(write("pre.csv", "TP-01", 9));
  auto* picture = find<SignalPicture>("signalPicture");
  ASSERT_TRUE(QTest::qWaitFor([&] { return picture->hasCurve(); }, 10000));
  EXPECT_EQ(picture->stepsOf(4), "5");
  QTest::mouseClick(picture, Qt::LeftButton, Qt::NoModifier, picture->bandOf(4).center().toPoint());
  EXPECT_EQ(levels()->currentIndex().row(), 4);
  // Where the curve is, there is its colour.
  const QImage image = picture->grab().toImage();
  const QColor curve = coloursFor(picture->palette()).measured;
  int drawn = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) drawn += image.pixelColor(x, y) == curve ? 1 : 0;
  EXPECT_GT(drawn, 100);
  choose(levels(), 4, FindTable::Step, "no step");
  EXPECT_EQ(picture->stepsOf(4), "");
}

TEST_F(Recorded, TheSecondRunBringsItsFirstLevelIntoView) {
  read(writeBytes("runs.csv", rowsOf("TP-01", {0, 1, 2, 3, 4, 5, 6, 7, 8, 0, 1, 2, 3, 4, 5, 6, 7, 8}, {})));
  ASSERT_TRUE(text(channels(), 0, ColumnTable::Run).contains("of 2")) << match();
  auto* table = channels();
  const QModelIndex cell = table->model()->index(0, ColumnTable::Run);
  QTest::mouseClick(table->viewport(), Qt::LeftButton, Qt::NoModifier, table->visualRect(cell).center());
  auto* box = table->viewport()->findChild<QComboBox*>("runChoice");
  ASSERT_TRUE(box);
  ASSERT_TRUE(QTest::qWaitFor([&] { return box->view()->isVisible(); }, 5000));
  QTest::keyClick(box->view(), Qt::Key_Down);
  QTest::keyClick(box->view(), Qt::Key_Return);
  const QModelIndex first = levels()->currentIndex();
  EXPECT_TRUE(first.siblingAtColumn(FindTable::Step).data().toString().startsWith("1"));
  EXPECT_GE(first.row(), 8);
  EXPECT_TRUE(levels()->viewport()->rect().intersects(levels()->visualRect(first)));
}

core::Channel named(core::Channel channel, const char* name) {
  channel.name = name;
  return channel;
}

class RecordedOfThree : public Recorded {
 protected:
  RecordedOfThree()
      : Recorded(sample::documentOf({sample::nineStepChannel(), named(sample::nineStepChannel(), "TP-02"),
                                     named(sample::nineStepChannel(), "TP-03")})) {}
};

TEST_F(RecordedOfThree, AllTickedChannelsAreOneUndoStep) {
  read(write("pre.csv", "TP-01,TP-03", 9));
  ASSERT_EQ(channels()->model()->rowCount(), 3);
  EXPECT_EQ(match(1), "no column");
  takeAndWait();
  EXPECT_EQ(dialog->taken(), 2u);
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(session.document().channels[0]->checks.size(), 1u);
  EXPECT_EQ(session.document().channels[1]->checks.size(), 0u);
  EXPECT_EQ(session.document().channels[2]->checks.size(), 1u);
  session.history().undo();
  EXPECT_EQ(session.document().channels[2]->checks.size(), 0u);
}

TEST_F(RecordedOfThree, ChecksOfOneRecordingHaveOneName) {
  core::Check earlier;
  earlier.name = "pre-test";
  session.editChannel("Check", core::withCheckAdded(*session.channel(), earlier));
  read(write("pre.csv", "TP-01,TP-03", 9));
  EXPECT_EQ(checkName(), "post-test") << "free in both";
  EXPECT_EQ(nameNote(), "");
  auto* name = find<QLineEdit>("recordingCheckName");
  name->selectAll();
  QTest::keyClicks(name, "pre-test");
  EXPECT_EQ(nameNote(), "TP-01 already has a check called pre-test: the checks will be called pre-test (2).");
  takeAndWait();
  EXPECT_EQ(session.document().channels[0]->checks.back().name, "pre-test (2)");
  EXPECT_EQ(session.document().channels[2]->checks.back().name, "pre-test (2)");
}

TEST_F(RecordedOfThree, ChannelsWithAColumnThatWereNotTakenAreNamed) {
  read(write("pre.csv", "TP-01,TP-03", 9));
  tick(2);
  EXPECT_EQ(ticked(2), Qt::Unchecked);
  takeAndWait();
  EXPECT_EQ(dialog->leftOut(), QStringList{"TP-03"});
}

TEST_F(RecordedOfThree, AColumnTakenAwayFromAChannelIsNotTaken) {
  read(write("pre.csv", "TP-01,TP-03", 9));
  choose(channels(), 2, ColumnTable::ColumnColumn, "none");
  EXPECT_EQ(match(2), "no column");
  takeAndWait();
  EXPECT_EQ(dialog->taken(), 1u);
}

}  // namespace
}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pattern/pattern_dialog.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QTimer>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/fields/count_edit.h"
#include "ui/pattern/own_patterns.h"
#include "ui/pattern/pattern_words.h"
#include "ui/quantity_edit.h"
#include "ui/text_form_dialog.h"

namespace ui {
namespace {

class PatternTest : public testing::Test {
 protected:
  explicit PatternTest(core::Channel channel = sample::nineStepChannel())
      : session(sample::documentOf({std::move(channel)})) {
    for (const core::Pattern& pattern : ownPatterns()) removeOwnPattern(pattern.name);
    open();
  }

  void open() {
    dialog = std::make_unique<PatternDialog>(session);
    dialog->show();
    dialog->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(dialog.get()));
  }

  template <class Widget>
  Widget* find(const char* name) {
    auto* widget = dialog->findChild<Widget*>(name);
    EXPECT_TRUE(widget) << name;
    return widget;
  }
  /// Opens the list with the keyboard and chooses the entry that reads `text`.
  void choose(const char* name, const QString& text) {
    auto* box = find<QComboBox>(name);
    const int row = box->findText(text);
    ASSERT_GE(row, 0) << name << " offers " << text.toStdString();
    box->setFocus();
    QTest::keyClick(box, Qt::Key_Home);
    while (box->currentIndex() < row) QTest::keyClick(box, Qt::Key_Down);
    EXPECT_EQ(box->currentText(), text);
  }
  void click(const char* name) {
    auto* button = find<QAbstractButton>(name);
    QTest::mouseClick(button, Qt::LeftButton, Qt::NoModifier, QPoint(8, button->height() / 2));
  }
  void type(const char* name, const QString& text) {
    auto* field = find<QWidget>(name);
    field->setFocus();
    QTest::keyClick(field, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(field, text);
    QTest::keyClick(field, Qt::Key_Tab);
  }
  void saveAs(const QString& name) {
    QTimer::singleShot(0, dialog.get(), [&] {
      auto* form = dialog->findChild<TextFormDialog*>();
      ASSERT_TRUE(form);
      auto* line = form->findChild<QLineEdit*>();
      line->selectAll();
      QTest::keyClicks(line, name);
      form->accept();
    });
    click("savePattern");
  }
  QString words(const char* name) { return find<QLabel>(name)->text(); }
  /// Labels of the preview, "0" for a zero step.
  QString shown() {
    QStringList labels;
    const QAbstractItemModel* model = find<QTableView>("patternPreview")->model();
    for (int row = 0; row < model->rowCount(); ++row)
      labels << model->index(row, StepPreview::Label).data().toString().replace("zero", "0");
    return labels.join(' ');
  }
  QString previewCell(int row, int column) {
    return find<QTableView>("patternPreview")->model()->index(row, column).data().toString();
  }
  const std::vector<core::Step>& sequence() { return session.channel()->setup.sequence; }

  Session session;
  std::unique_ptr<PatternDialog> dialog;
};

TEST_F(PatternTest, ThePreviewShowsPolarityAndWhatEachStepShouldRead) {
  EXPECT_TRUE(find<QPushButton>("layOut")->isDefault());
  const QAbstractItemModelTester rules(find<QTableView>("patternPreview")->model(),
                                       QAbstractItemModelTester::FailureReportingMode::Fatal);
  EXPECT_EQ(shown(), "0 up up (2) up (3) 0 down down (2) down (3) 0");
  EXPECT_EQ(previewCell(1, StepPreview::PolarityColumn), "+ positive");
  EXPECT_EQ(previewCell(5, StepPreview::PolarityColumn), "− negative");
  EXPECT_EQ(previewCell(3, StepPreview::Closed), "up (3)");
  // The nine-step channel has this very sequence already, so its own predictions are those of the preview.
  const auto& steps = session.evaluation()->prediction.steps;
  for (int row = 0; row < 9; ++row)
    EXPECT_NEAR(previewCell(row, StepPreview::Expected).toDouble(), steps[row]->reading.base(), 0.005)
        << "two decimals are shown";
}

TEST_F(PatternTest, NumberOfStepsAndTotalDurationAreSaid) {
  // Nine steps of 0.5 s and 2 s, as those of the present sequence.
  EXPECT_EQ(words("patternSummary"), "9 steps, 22.5 s in all");
  type("patternHold", "1 s");
  EXPECT_EQ(words("patternSummary"), "9 steps, 13.5 s in all");
  type("patternRepeats", "10");
  // 10 x 8 + 1 steps of 1.5 s: 121.5 s.
  EXPECT_EQ(words("patternSummary"), "81 steps, 2 min 2 s in all");
}

TEST_F(PatternTest, AUsualPatternIsLaidOutAsOneUndoStep) {
  choose("patternChoice", "up and down");
  EXPECT_EQ(shown(), "0 up up (2) up (3) up (2) up 0 down down (2) down (3) down (2) down 0");
  click("layOut");
  EXPECT_EQ(dialog->result(), QDialog::Accepted);
  EXPECT_EQ(sequence().size(), 13u);
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(session.history().undoText(), "Lay out sequence");
  session.history().undo();
  EXPECT_EQ(sequence().size(), 9u);
}

TEST_F(PatternTest, EveryPartOfAPatternCanBeChanged) {
  EXPECT_EQ(words("patternChanged"), "unchanged");
  choose("patternSides", "Negative only");
  EXPECT_EQ(shown(), "0 down down (2) down (3) 0");
  EXPECT_EQ(words("patternChanged"), "changed: save it as your own to keep it");
  click("patternZeroBetween");
  EXPECT_EQ(shown(), "0 down 0 down (2) 0 down (3) 0");
  type("patternRepeats", "2");
  EXPECT_EQ(shown(), "0 down 0 down (2) 0 down (3) 0 down 0 down (2) 0 down (3) 0");
  auto* choice = find<QComboBox>("patternChoice");
  choice->showPopup();
  QTest::keyClick(choice->view(), Qt::Key_Return);  // the same entry again brings back what it says
  EXPECT_EQ(shown(), "0 up up (2) up (3) 0 down down (2) down (3) 0");
}

TEST_F(PatternTest, TheNumberOfARandomOrderIsAskedForOnlyThere) {
  EXPECT_FALSE(find<CountEdit>("patternSeed")->isEnabled());
  choose("patternChoice", "random order");
  EXPECT_TRUE(find<CountEdit>("patternSeed")->isEnabled());
  const QString first = shown();
  type("patternSeed", "2");
  EXPECT_NE(shown(), first);
  type("patternSeed", "1");
  EXPECT_EQ(shown(), first);
}

TEST_F(PatternTest, LevelsCanBeThoseOfThePresentSequence) {
  core::Channel channel = *session.channel();
  channel.setup.sequence = {{.label = "both", .closed = {0, 2}}};
  session.editChannel("Combine", channel);
  choose("patternLevels", "The levels of the present sequence");
  EXPECT_EQ(shown(), "0 both 0");
  EXPECT_EQ(previewCell(1, StepPreview::Closed), "up, up (2)");
  click("layOut");
  EXPECT_EQ(sequence()[1].closed, (std::vector<std::size_t>{0, 2}));
}

TEST_F(PatternTest, TimesAreGivenWhileNothingIsKnownOfTheInstrument) {
  EXPECT_TRUE(find<QRadioButton>("timesGiven")->isChecked());
  EXPECT_TRUE(words("timesAskedNote").contains("Neither filter nor sample rate is stated"));
  type("patternSettle", "0,25");
  type("patternHold", "1500 ms");
  click("layOut");
  for (const core::Step& step : sequence()) {
    EXPECT_EQ(step.settle, core::Duration(0.25));
    EXPECT_EQ(step.hold, core::Duration(1.5));
  }
}

core::Channel filteredChannel() {
  core::Channel channel = sample::nineStepChannel();
  channel.setup.acquisition.filter = {
      .kind = core::FilterKind::Butterworth, .order = 1, .cutoff = core::Frequency(1)};
  return channel;
}

class FilteredPatternTest : public PatternTest {
 protected:
  FilteredPatternTest() : PatternTest(filteredChannel()) {}
};

TEST_F(FilteredPatternTest, TimesFollowTheFilterUnlessGiven) {
  EXPECT_TRUE(find<QRadioButton>("timesAsked")->isChecked());
  EXPECT_FALSE(find<QLineEdit>("patternHold")->isEnabled());
  // Derived: ln(1e4) / (2 pi 1 Hz) = 1.466 s, rounded up to 10 ms.
  EXPECT_EQ(words("timesAskedNote"), "settles in 1.47 s, hold at least 1.00 s");
  EXPECT_EQ(previewCell(0, StepPreview::Settle), "1.47");
  EXPECT_EQ(previewCell(0, StepPreview::Hold), "1");
  click("timesGiven");
  EXPECT_TRUE(find<QLineEdit>("patternHold")->isEnabled());
  EXPECT_EQ(previewCell(0, StepPreview::Settle), "0.5");
  EXPECT_EQ(previewCell(0, StepPreview::Hold), "2");
}

TEST_F(PatternTest, AFieldThatSaysNoTimeKeepsTheDialogOpen) {
  QSignalSpy refused(dialog.get(), &PatternDialog::refused);
  type("patternHold", "0");
  EXPECT_TRUE(find<QuantityEdit>("patternHold")->isRefused());
  EXPECT_TRUE(refused.isEmpty()) << "told beside the field";
  click("layOut");
  EXPECT_TRUE(dialog->isVisible());
  EXPECT_EQ(session.history().count(), 0);
  type("patternHold", "3");
  EXPECT_TRUE(words("patternMessage").isEmpty());
  click("layOut");
  EXPECT_EQ(sequence()[0].hold, core::Duration(3));
}

TEST_F(PatternTest, ReadingsThatWouldBeDroppedAreToldBefore) {
  session.editChannel("Check", sample::withCheckReading(*session.channel(), 1.0));
  EXPECT_FALSE(words("patternCaution").contains("readings")) << "the same shunts in the same order";
  choose("patternSides", "Negative first");
  EXPECT_TRUE(words("patternCaution").contains("readings of open checks will be dropped"));
  EXPECT_TRUE(find<QLabel>("patternCaution")->isVisible());
  choose("patternSides", "Positive first");
  type("patternHold", "5");
  click("layOut");
  EXPECT_TRUE(session.channel()->checks[0].readings[3]);
  EXPECT_EQ(sequence()[3].hold, core::Duration(5));
}

TEST_F(PatternTest, AShuntThatMovesNothingIsNamedAsLeftOut) {
  session.editChannel("Short",
                      core::withShuntAt(*session.channel(), 0, core::Node::Arm1Begin, core::Node::Arm1Begin));
  EXPECT_TRUE(words("patternCaution").contains("predicted: up."));
  EXPECT_EQ(shown(), "0 up (2) up (3) 0 down down (2) down (3) 0");
}

TEST_F(PatternTest, WithoutALevelThereIsNothingToLayOut) {
  core::Channel channel = *session.channel();
  channel.setup.sequence.clear();
  session.editChannel("Empty", channel);
  choose("patternLevels", "The levels of the present sequence");
  EXPECT_FALSE(find<QPushButton>("layOut")->isEnabled());
  EXPECT_TRUE(words("patternCaution").contains("no level"));
}

TEST_F(PatternTest, ASequenceTooLongToWorkOnIsNotLaidOut) {
  choose("patternChoice", "zero between steps");
  type("patternRepeats", "100");  // 100 x 6 x 2 + 1 steps
  EXPECT_FALSE(find<QPushButton>("layOut")->isEnabled());
  EXPECT_TRUE(words("patternCaution").contains("1000"));
  dialog->accept();
  EXPECT_TRUE(dialog->isVisible());
}

TEST_F(PatternTest, APatternOfOnesOwnIsThereAgainNextTimeAndCanBeRemoved) {
  choose("patternSides", "Negative first");
  click("patternZeroBetween");
  EXPECT_FALSE(find<QPushButton>("removePattern")->isEnabled());
  saveAs("hall usual");
  EXPECT_EQ(find<QComboBox>("patternChoice")->currentText(), "hall usual");
  EXPECT_EQ(words("patternChanged"), "unchanged");
  EXPECT_EQ(session.history().count(), 0) << "no document is touched";

  open();
  choose("patternChoice", "hall usual");
  EXPECT_EQ(shown(), "0 down 0 down (2) 0 down (3) 0 up 0 up (2) 0 up (3) 0");
  click("removePattern");
  EXPECT_EQ(find<QComboBox>("patternChoice")->findText("hall usual"), -1);
  EXPECT_TRUE(ownPatterns().empty());
  EXPECT_EQ(shown(), "0 down 0 down (2) 0 down (3) 0 up 0 up (2) 0 up (3) 0")
      << "what was removed by mistake can be saved again";
}

TEST_F(PatternTest, SavingUnderTheSameNameReplaces) {
  saveAs("mine");
  type("patternRepeats", "3");
  saveAs("mine");
  ASSERT_EQ(ownPatterns().size(), 1u);
  EXPECT_EQ(ownPatterns()[0].repeats, 3u);
}

TEST_F(PatternTest, NamesOfUsualPatternsAndEmptyOnesAreRefused) {
  QSignalSpy refused(dialog.get(), &PatternDialog::refused);
  saveAs("two-sided");
  EXPECT_TRUE(words("patternMessage").contains("one of the usual patterns"));
  saveAs(" ");
  EXPECT_EQ(refused.count(), 2);
  EXPECT_TRUE(ownPatterns().empty());
}

TEST(OwnPatterns, LeadBackThroughJson) {
  const std::vector<core::Pattern> patterns = {{.name = "a \"b\" ü",
                                                .course = core::Course::Random,
                                                .sides = core::Sides::NegativeOnly,
                                                .zeroBetweenSteps = true,
                                                .repeats = 100,
                                                .seed = greatestSeed},
                                               {.name = "c"}};
  EXPECT_EQ(patternsFromJson(patternsToJson(patterns)), patterns);
}

TEST(OwnPatterns, ABadEntryDoesNotHideTheOthers) {
  const QByteArray good =
      R"({"name":"good","course":"rising","sides":"positive_only","zero_between_steps":false,"repeats":2,"seed":0})";
  const auto without = [&](const char* was, const char* is) { return QByteArray(good).replace(was, is); };
  const QByteArray json = "[" +
                          QByteArrayList{without("rising", "falling"),
                                         without("positive_only", "both"),
                                         without(":false", ":1"),
                                         without("\"repeats\":2", "\"repeats\":101"),
                                         without("\"repeats\":2", "\"repeats\":1.5"),
                                         without("\"seed\":0", "\"seed\":-1"),
                                         without("good", " "),
                                         without("good", QByteArray(61, 'x').constData()),
                                         "7",
                                         good,
                                         good}
                              .join(',') +
                          "]";
  const auto patterns = patternsFromJson(json);
  ASSERT_EQ(patterns.size(), 1u);
  EXPECT_EQ(patterns[0].name, "good");
  EXPECT_EQ(patterns[0].repeats, 2u);
  EXPECT_TRUE(patternsFromJson("not json").empty());
  EXPECT_TRUE(patternsFromJson("{}").empty());
}

TEST(DurationText, IsInSecondsMinutesAndHours) {
  EXPECT_EQ(durationText(core::Duration(22.5)), "22.5 s");
  EXPECT_EQ(durationText(core::Duration(59.99)), "1 min 0 s");
  EXPECT_EQ(durationText(core::Duration(200)), "3 min 20 s");
  EXPECT_EQ(durationText(core::Duration(3600)), "1 h 0 min");
  EXPECT_EQ(durationText(core::Duration(7441)), "2 h 5 min");
}

TEST(EmptyPattern, SaysWhatToDoWithoutShuntsOrChannel) {
  Session none;
  PatternDialog noChannel(none);
  EXPECT_TRUE(noChannel.findChild<QLabel*>("patternEmpty")->text().contains("add a channel"));
  Session bare(sample::documentOf({core::Channel{}}));
  PatternDialog noShunts(bare);
  EXPECT_TRUE(noShunts.findChild<QLabel*>("patternEmpty")->text().contains("page Shunts"));
  EXPECT_FALSE(noShunts.findChild<QPushButton*>("layOut"));
  noShunts.accept();
  EXPECT_EQ(bare.history().count(), 0);
}

}  // namespace
}  // namespace ui

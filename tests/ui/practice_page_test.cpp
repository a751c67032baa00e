// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/practice_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QVBoxLayout>

#include "tests/support/practice_questions.h"
#include "tests/support/sample_channel.h"
#include "ui/fields/count_edit.h"
#include "ui/practice/choice_button.h"
#include "ui/practice/practice_score.h"
#include "ui/practice/question_picture.h"
#include "ui/quantity_edit.h"
#include "ui/state_file.h"

namespace ui {
namespace {

using core::Difficulty;
using core::QuestionKind;

/// Clicked and typed at as a user does. The questions are made by hand: choice 2 is right, the reading is
/// -1000/2002 mV/V (tests/support/practice_questions.h).
class PracticePageTest : public testing::Test {
 protected:
  PracticePageTest() : session(sample::documentOf({sample::nineStepChannel()})) {
    stateFile("practice").clear();
    makePage();
  }

  void makePage() {
    page = std::make_unique<PracticePage>(session);
    refused = std::make_unique<QSignalSpy>(page.get(), &PracticePage::refused);
    page->setSource(
        [](const PracticeSet& set, std::size_t index) { return test::handMade(kindOf(set, index), index); });
    page->resize(980, 690);
    page->show();
    page->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(page.get()));
    page->setFocus();
  }

  template <class W>
  W& part(const char* name) {
    for (W* found : page->findChildren<W*>(name))
      if (!found->isHidden()) return *found;
    ADD_FAILURE() << name << " is not there";
    std::abort();  // nothing sensible can be returned
  }
  bool shows(const char* name) {
    const auto found = page->findChildren<QWidget*>(name);
    return std::any_of(found.begin(), found.end(), [](QWidget* widget) { return widget->isVisible(); });
  }
  QString text(const char* label) { return part<QLabel>(label).text(); }
  void click(const char* button) { QTest::mouseClick(&part<QPushButton>(button), Qt::LeftButton); }
  /// A key where the keyboard is.
  void press(Qt::Key key) {
    ASSERT_TRUE(page->isAncestorOf(QApplication::focusWidget())) << "the keyboard is elsewhere";
    QTest::keyClick(QApplication::focusWidget(), key);
  }
  void onlyKind(int kind) {
    for (int k = 1; k <= 5; ++k) part<QCheckBox>(("kind" + std::to_string(k)).c_str()).setChecked(k == kind);
  }
  void begin(int count, const char* seed = "7") {
    part<QLineEdit>("practiceSeed").setText(seed);
    part<CountEdit>("practiceCount").setValue(count);
    click("practiceBegin");
  }
  /// Answers the question on view with that choice, and goes on.
  void choose(Qt::Key choice) {
    press(choice);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
  }

  Session session;
  std::unique_ptr<PracticePage> page;
  std::unique_ptr<QSignalSpy> refused;
};

TEST_F(PracticePageTest, ASetIsWhatTheFieldsSay) {
  part<QRadioButton>("difficulty3").setChecked(true);
  onlyKind(3);
  begin(4, "18446744073709551615");
  ASSERT_TRUE(page->run());
  const PracticeSet expected{UINT64_MAX, 4, Difficulty::Thorough, {QuestionKind::LargerShunt}};
  EXPECT_EQ(page->run()->set, expected);
  EXPECT_TRUE(text("questionHead").contains("seed 18446744073709551615"));
  EXPECT_TRUE(text("questionHead").contains("Question 1 of 4"));
}

TEST_F(PracticePageTest, ASeedIsProposedAndAnotherOneOnDemand) {
  const QString first = part<QLineEdit>("practiceSeed").text();
  EXPECT_FALSE(first.isEmpty());
  click("anotherSeed");
  EXPECT_NE(part<QLineEdit>("practiceSeed").text(), first);
}

TEST_F(PracticePageTest, NoSetWithoutKindsOrWithoutASeedInDigits) {
  onlyKind(0);
  begin(3);
  EXPECT_FALSE(page->run());
  ASSERT_EQ(refused->count(), 1);
  onlyKind(1);
  for (const char* seed : {"", "seven", "-1", "18446744073709551616", "1.5"}) {
    begin(3, seed);
    EXPECT_FALSE(page->run()) << seed;
  }
  EXPECT_EQ(refused->count(), 6);
}

TEST_F(PracticePageTest, KeysChooseAndAnswerAndSayWhatIsRightAndWhy) {
  onlyKind(1);
  begin(2);
  EXPECT_FALSE(shows("questionVerdict"));
  EXPECT_FALSE(shows("questionNext"));
  press(Qt::Key_2);
  EXPECT_TRUE(part<ChoiceButton>("choice2").isChecked());
  press(Qt::Key_Return);
  EXPECT_TRUE(text("questionVerdict").contains("Right"));
  EXPECT_FALSE(text("questionVerdict").contains("Wrong"));
  EXPECT_EQ(text("questionExplanation"), "R1 lowers arm 1. S- rises, so that the output falls.");
  EXPECT_TRUE(text("questionFormula").contains("-1/2002"));
  EXPECT_EQ(text("questionTally"), "1 of 1 right");
  EXPECT_FALSE(shows("questionAnswer"));
  press(Qt::Key_Return);
  EXPECT_TRUE(text("questionHead").contains("Question 2 of 2"));
  EXPECT_FALSE(shows("questionVerdict"));
}

TEST_F(PracticePageTest, AfterAClickOnNextTheKeyboardIsInTheNextQuestion) {
  // As in the window, where other widgets come after the page.
  QWidget window;
  auto* column = new QVBoxLayout(&window);
  column->addWidget(new QLineEdit);
  column->addWidget(page.get());
  column->addWidget(new QLineEdit);
  window.show();
  window.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  for (const int kind : {1, 4}) {
    onlyKind(kind);
    begin(3);
    for (int question = 1; question <= 2; ++question) {
      if (kind == 1) press(Qt::Key_2);
      if (kind == 4) part<QuantityEdit>("questionNumber").insert("-0.5");
      click("questionAnswer");
      click("questionNext");
      EXPECT_TRUE(text("questionHead").contains(QString("Question %1 of 3").arg(question + 1)));
      ASSERT_TRUE(page->isAncestorOf(QApplication::focusWidget())) << "after question " << question;
    }
    if (kind == 1) {
      press(Qt::Key_3);
      EXPECT_TRUE(part<ChoiceButton>("choice3").isChecked());
    } else {
      QTest::keyClicks(QApplication::focusWidget(), "-0.5");
    }
    press(Qt::Key_Return);
    EXPECT_TRUE(shows("questionNext")) << "answered by the keyboard alone";
    press(Qt::Key_Return);
    click("summaryStart");
  }
  page->setParent(nullptr);
}

TEST_F(PracticePageTest, FactsHaveTheColourOfTextInEveryQuestion) {
  page->setSource([](const PracticeSet& set, std::size_t index) {
    core::Question question = test::handMade(kindOf(set, index), index);
    question.given = {{"Excitation", "5 V"}};
    question.readings = {
        "Readings", {{"Step", false}, {"Expected", true}}, {{{"1", "0"}, {}}, {{"2", "-250"}, {}}}};
    return question;
  });
  onlyKind(5);
  begin(2);
  for (int question = 1; question <= 2; ++question) {
    const QLabel& given = part<QLabel>("questionGiven");
    EXPECT_EQ(given.palette().color(QPalette::WindowText), page->palette().color(QPalette::WindowText))
        << question;
    const QTableView& readings = part<QTableView>("questionReadings");
    press(Qt::Key_2);
    press(Qt::Key_Return);
    EXPECT_FALSE(readings.selectionModel()->hasSelection()) << "the readings are there to be read";
    QTest::mouseClick(readings.viewport(), Qt::LeftButton, {}, {4, 4});
    EXPECT_FALSE(readings.selectionModel()->hasSelection());
    click("questionNext");
  }
}

TEST_F(PracticePageTest, WhatBelongsToASeedIsSaid) {
  const auto labels = page->findChildren<QLabel*>("hint");
  EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
    return label->text().contains("same difficulty, kinds and number");
  }));
}

TEST_F(PracticePageTest, AWrongChoiceIsMarkedAndTheRightOneToo) {
  onlyKind(1);
  begin(1);
  QTest::mouseClick(&part<ChoiceButton>("choice4"), Qt::LeftButton);
  click("questionAnswer");
  EXPECT_TRUE(text("questionVerdict").contains("Wrong"));
  EXPECT_TRUE(text("questionVerdict").contains("a negative output"));
  EXPECT_EQ(part<ChoiceButton>("choice4").mark(), ChoiceButton::Mark::Wrong);
  EXPECT_EQ(part<ChoiceButton>("choice2").mark(), ChoiceButton::Mark::Right);
  EXPECT_EQ(part<ChoiceButton>("choice1").mark(), ChoiceButton::Mark::None);
  // The mark is not of colour alone.
  EXPECT_TRUE(part<ChoiceButton>("choice4").accessibleName().contains("wrong"));
}

TEST_F(PracticePageTest, NothingIsAnsweredWithoutAChoiceOrANumber) {
  onlyKind(1);
  begin(1);
  press(Qt::Key_Return);
  ASSERT_EQ(refused->count(), 1);
  EXPECT_NE(refused->last().at(0).toString(), "");
  EXPECT_TRUE(page->run()->given.empty());
  click("questionLeave");
  EXPECT_EQ(refused->last().at(0).toString(), "") << "of a page that is left";
  onlyKind(4);
  begin(1);
  press(Qt::Key_Return);
  EXPECT_NE(refused->last().at(0).toString(), "");
  QTest::keyClicks(QApplication::focusWidget(), "half");
  press(Qt::Key_Return);
  EXPECT_TRUE(part<QuantityEdit>("questionNumber").isRefused());
  EXPECT_TRUE(page->run()->given.empty());
}

TEST_F(PracticePageTest, WhatWasAmissIsTakenBackWithTheAnswer) {
  onlyKind(1);
  begin(1);
  press(Qt::Key_Return);
  ASSERT_NE(refused->last().at(0).toString(), "");
  press(Qt::Key_1);
  press(Qt::Key_Return);
  EXPECT_EQ(page->run()->given.size(), 1U);
  EXPECT_EQ(refused->last().at(0).toString(), "");
}

TEST_F(PracticePageTest, ANumberIsTakenInTheTradesSpellingsWithinFivePercent) {
  // -1000/2002 mV/V is -0.4995; 5 % of it is 0.0250.
  const std::pair<const char*, bool> typed[] = {
      {"-0.5", true},   {"-0,4995 mV/V", true}, {"\u22120.52 mV/V", true}, {"-0.476", true}, {"-0.47", false},
      {"-0.53", false}, {"0.5", false}};
  for (const auto& [number, right] : typed) {
    onlyKind(4);
    begin(1);
    ASSERT_TRUE(qobject_cast<QuantityEdit*>(QApplication::focusWidget()));
    part<QuantityEdit>("questionNumber").insert(number);
    press(Qt::Key_Return);
    ASSERT_EQ(page->run()->given.size(), 1u) << number;
    EXPECT_EQ(page->run()->given[0].right, right) << number;
    EXPECT_TRUE(text("questionVerdict").contains("\u22120.4995 mV/V")) << number;
    press(Qt::Key_Return);
    click("summaryStart");
  }
}

TEST_F(PracticePageTest, ThePictureTellsNoAnswerBeforeItIsGiven) {
  onlyKind(1);
  begin(1);
  const QuestionCanvas& canvas = part<QuestionCanvas>("bridgeCanvas");
  const auto voltages = [&] {
    const auto& labels = canvas.picture()->labels;
    return std::count_if(labels.begin(), labels.end(),
                         [](const BridgeLabel& label) { return label.role == LabelRole::Voltage; });
  };
  EXPECT_EQ(voltages(), 0);
  EXPECT_FALSE(canvas.picture()->state.flow);
  EXPECT_FALSE(canvas.picture()->state.output);
  EXPECT_TRUE(canvas.picture()->state.closed[0]);
  for (const char* word : {"negative", "positive", "mV/V", "output"})
    EXPECT_FALSE(canvas.accessibleDescription().contains(word)) << word;
  choose(Qt::Key_2);
  click("summaryLook");
  EXPECT_GT(voltages(), 0);
  EXPECT_TRUE(canvas.accessibleDescription().contains("negative"));
}

TEST_F(PracticePageTest, TheSummarySaysWhatWasRightByKindAndWhichWereWrong) {
  onlyKind(1);
  part<QCheckBox>("kind3").setChecked(true);
  begin(4);
  // Kinds in turn: sign, larger, sign, larger.
  choose(Qt::Key_2);
  choose(Qt::Key_1);
  choose(Qt::Key_2);
  choose(Qt::Key_2);
  EXPECT_EQ(text("summaryTitle"), "3 of 4 right");
  const QTableWidget& kinds = part<QTableWidget>("summaryKinds");
  ASSERT_EQ(kinds.rowCount(), 2);
  EXPECT_EQ(kinds.item(0, 1)->text(), "2 of 2 right");
  EXPECT_EQ(kinds.item(1, 1)->text(), "1 of 2 right");
  const QListWidget& list = part<QListWidget>("summaryQuestions");
  ASSERT_EQ(list.count(), 4);
  EXPECT_TRUE(list.item(1)->text().contains("wrong"));
  EXPECT_TRUE(list.item(2)->text().contains("right"));
  EXPECT_EQ(list.currentRow(), 1) << "the first wrong one is at hand";
}

TEST_F(PracticePageTest, AQuestionIsSeenAgainWithWhatWasAnswered) {
  onlyKind(1);
  begin(2);
  choose(Qt::Key_2);
  choose(Qt::Key_3);
  press(Qt::Key_Return);  // the wrong one is chosen in the list
  EXPECT_TRUE(text("questionHead").contains("Question 2 of 2"));
  EXPECT_TRUE(part<ChoiceButton>("choice3").isChecked());
  EXPECT_TRUE(text("questionVerdict").contains("Wrong"));
  press(Qt::Key_Return);
  EXPECT_TRUE(shows("practiceSummary"));
  EXPECT_EQ(page->run()->given.size(), 2u) << "looking answers nothing";
}

TEST_F(PracticePageTest, OnlyTheWrongOnesAreRepeatedAndDoNotCount) {
  onlyKind(1);
  begin(3);
  choose(Qt::Key_1);
  choose(Qt::Key_2);
  choose(Qt::Key_1);
  EXPECT_EQ(tallyOf(QuestionKind::Sign, Difficulty::First), (Tally{3, 1}));
  click("summaryRepeat");
  EXPECT_EQ(page->run()->order, (std::vector<std::size_t>{0, 2}));
  choose(Qt::Key_2);
  EXPECT_TRUE(text("questionText").contains("Question 3")) << "the third of the set, the second again";
  choose(Qt::Key_2);
  EXPECT_EQ(text("summaryTitle"), "2 of 2 right");
  EXPECT_FALSE(part<QPushButton>("summaryRepeat").isEnabled());
  EXPECT_EQ(tallyOf(QuestionKind::Sign, Difficulty::First), (Tally{3, 1}));
  click("summaryAgain");
  EXPECT_EQ(page->run()->order.size(), 3u);
  EXPECT_EQ(page->run()->set.seed, 7u);
}

TEST_F(PracticePageTest, TheScoreIsKeptByKindAndDifficultyAndCleared) {
  onlyKind(2);
  part<QRadioButton>("difficulty2").setChecked(true);
  begin(5);
  for (const Qt::Key key : {Qt::Key_2, Qt::Key_2, Qt::Key_1, Qt::Key_2, Qt::Key_2}) choose(key);
  makePage();  // as after a restart
  const QTableWidget& table = part<QTableWidget>("scoreTable");
  EXPECT_EQ(table.item(1, 1)->text(), "4 of 5");
  EXPECT_EQ(table.item(0, 1)->text(), "–");
  EXPECT_TRUE(text("bestSets").contains("best set 4 of 5 right, seed 7"));
  EXPECT_EQ(longestRow(), 2);
  const auto answer = [](const char* button) {
    QTimer::singleShot(0, [button] {
      auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
      ASSERT_TRUE(box);
      button ? box->findChild<QPushButton*>(button)->click() : box->reject();
    });
  };
  answer(nullptr);
  click("clearScore");
  EXPECT_EQ(table.item(1, 1)->text(), "4 of 5") << "not without a yes";
  answer("clearScoreYes");
  click("clearScore");
  EXPECT_EQ(table.item(1, 1)->text(), "–");
  EXPECT_FALSE(bestSet(Difficulty::Further));
  EXPECT_EQ(longestRow(), 0);
}

TEST_F(PracticePageTest, TheBestSetIsTheGreatestShareThenTheLonger) {
  const auto played = [](std::size_t count, std::size_t right, std::uint64_t seed) {
    PracticeRun run = runOf({seed, count, Difficulty::First, {QuestionKind::Sign}});
    for (std::size_t k = 0; k < count; ++k) run.given.push_back({.choice = 0, .right = k < right});
    countSet(run);
  };
  played(4, 4, 1);
  EXPECT_FALSE(bestSet(Difficulty::First)) << "four questions say little";
  played(10, 7, 2);
  played(20, 14, 3);
  EXPECT_EQ(bestSet(Difficulty::First), (BestSet{14, 20, 3}));
  played(5, 4, 4);
  EXPECT_EQ(bestSet(Difficulty::First), (BestSet{4, 5, 4}));
  played(100, 79, 5);
  EXPECT_EQ(bestSet(Difficulty::First), (BestSet{4, 5, 4}));
  EXPECT_FALSE(bestSet(Difficulty::Further));
}

TEST_F(PracticePageTest, ASetLeftHalfWayGoesOnWhereItWasLeft) {
  onlyKind(1);
  part<QCheckBox>("kind4").setChecked(true);
  begin(4);
  choose(Qt::Key_3);
  part<QuantityEdit>("questionNumber").insert("-0.5");
  press(Qt::Key_Return);
  makePage();  // as after a restart, without having gone on
  EXPECT_TRUE(text("practicePlace").contains("question 3 of 4"));
  EXPECT_EQ(QApplication::focusWidget()->objectName(), "practiceGoOn");
  press(Qt::Key_Return);
  EXPECT_TRUE(text("questionHead").contains("Question 3 of 4"));
  EXPECT_EQ(text("questionTally"), "1 of 2 right");
  EXPECT_FALSE(page->run()->given[0].right);
  EXPECT_EQ(page->run()->given[1].number, -0.5);
  choose(Qt::Key_2);
  click("questionLeave");
  EXPECT_TRUE(text("practicePlace").contains("question 4 of 4"));
  click("practiceGoOn");
  part<QuantityEdit>("questionNumber").insert("7");
  press(Qt::Key_Return);
  press(Qt::Key_Return);
  EXPECT_EQ(text("summaryTitle"), "2 of 4 right");
  makePage();
  EXPECT_FALSE(shows("practiceGoOn")) << "nothing is half way";
}

TEST_F(PracticePageTest, AStateFileThatCannotBeIsLeftOut) {
  QSettings file = stateFile("practice");
  const auto put = [&](const char* key, const QVariant& value) { file.setValue(key, value); };
  put("score/first/sign", QStringList{"3", "5"});         // more right than asked
  put("score/first/arm", QStringList{"3"});               // half of it
  put("score/further/best", QStringList{"a", "b", "c"});  // no numbers
  put("place/set", QStringList{"7", "1000000000"});       // too many
  put("place/difficulty", "first");
  put("place/kinds", QStringList{"sign"});
  put("place/order", QStringList{"0"});
  file.sync();
  EXPECT_EQ(tallyOf(QuestionKind::Sign, Difficulty::First), Tally{});
  EXPECT_EQ(tallyOf(QuestionKind::Arm, Difficulty::First), Tally{});
  EXPECT_FALSE(bestSet(Difficulty::Further));
  EXPECT_FALSE(keptPlace());
  put("place/set", QStringList{"7", "5"});
  file.sync();
  EXPECT_TRUE(keptPlace());
  put("place/order", QStringList{"0", "5"});  // past the end of the set
  file.sync();
  EXPECT_FALSE(keptPlace());
}

TEST_F(PracticePageTest, NothingOfItTouchesTheDocument) {
  const core::Document before = session.document();
  QSignalSpy changed(&session, &Session::changed);
  onlyKind(1);
  begin(2);
  choose(Qt::Key_1);
  choose(Qt::Key_2);
  EXPECT_EQ(session.document(), before);
  EXPECT_EQ(session.history().count(), 0);
  EXPECT_EQ(changed.count(), 0);
}

TEST_F(PracticePageTest, TextOfAQuestionIsNeverMarkup) {
  page->setSource([](const PracticeSet&, std::size_t index) {
    core::Question question = test::handMade(QuestionKind::Sign, index);
    question.text = "<b>R1</b> & R2";
    question.choices[0] = "<i>R&D</i>";
    return question;
  });
  onlyKind(1);
  begin(1);
  EXPECT_EQ(part<QLabel>("questionText").textFormat(), Qt::PlainText);
  EXPECT_EQ(part<ChoiceButton>("choice1").accessibleName(), "1 · <i>R&D</i>");
  EXPECT_TRUE(part<ChoiceButton>("choice1").shortcut().isEmpty());
}

TEST_F(PracticePageTest, TheSolversQuestionsAreAskedAndAnswered) {
  page->setSource([](const PracticeSet& set, std::size_t index) {
    return core::questionOf(set.seed, index, set.difficulty, set.kinds);
  });
  onlyKind(1);
  begin(2);
  const core::Question asked = core::questionOf(7, 0, Difficulty::First, {QuestionKind::Sign});
  EXPECT_EQ(text("questionText"), QString::fromStdString(asked.text));
  press(static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(asked.right)));
  press(Qt::Key_Return);
  EXPECT_TRUE(page->run()->given[0].right);
}

TEST_F(PracticePageTest, SheetsAreWrittenAndAFolderIsNot) {
  const QTemporaryDir folder;
  QSignalSpy said(page.get(), &PracticePage::said);
  const PracticeSet set{7, 2, Difficulty::First, {QuestionKind::Sign}};
  EXPECT_TRUE(page->writeSheets(set, folder.filePath("q.pdf"), false));
  EXPECT_GT(QFileInfo(folder.filePath("q.pdf")).size(), 1000);
  EXPECT_EQ(said.count(), 1);
  EXPECT_FALSE(page->writeSheets(set, folder.path(), true));
  EXPECT_EQ(refused->count(), 1);
}

}  // namespace
}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/change_panel.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLocale>
#include <QScrollArea>
#include <QStyleOptionComboBox>
#include <QTest>
#include <QToolButton>

#include "core/document/edits.h"
#include "tests/support/contrast.h"
#include "tests/support/sample_channel.h"
#include "ui/change/cause_section.h"
#include "ui/change/change_export.h"
#include "ui/change/change_words.h"
#include "ui/change/difference_strip.h"
#include "ui/change/interval_bar.h"
#include "ui/change/trend_chart.h"
#include "ui/outcome_view.h"
#include "ui/sheet_view.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// A check of the nine-step channel: each reading `gain` times what is expected plus `offset`, known to
/// 0.05 um/m; levels up to 3000 um/m.
core::Channel checkedAgain(core::Channel channel, const char* name, const char* date, double gain,
                           double offset = 0) {
  channel = sample::withCheckReading(std::move(channel), gain, offset);
  core::Check& check = channel.checks.back();
  check.name = name;
  check.date = date;
  for (auto& measured : check.readings) measured->uncertainty = core::Reading(0.05);
  return channel;
}

/// Three checks: the second like the first, the third with 5 % more gain and the zero moved by 400 um/m.
core::Channel threeChecks() {
  core::Channel channel = checkedAgain(sample::nineStepChannel(), "pre-test", "2026-05-11", 1);
  channel = checkedAgain(std::move(channel), "in between", "2026-05-12", 1);
  return checkedAgain(std::move(channel), "post-test", "2026-05-20", 1.05, 400);
}

core::Difference difference(double value, double half, double margin, core::Change change) {
  core::Difference one;
  one.value = value;
  one.standard = half / 1.96;
  one.margin = margin;
  one.halfWidth90 = half * 1.645 / 1.96;
  one.halfWidth95 = half;
  one.change = change;
  return one;
}

class Change : public testing::Test {
 protected:
  Change() : session(sample::documentOf({threeChecks(), sample::nineStepChannel()})), panel(session) {
    panel.resize(1000, 700);
  }

  void show() {
    panel.show();
    panel.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&panel));
    QApplication::processEvents();
  }
  template <class T>
  T* find(const char* name) {
    T* found = panel.findChild<T*>(name);
    EXPECT_TRUE(found) << name;
    return found;
  }
  QString label(const char* name) { return find<QLabel>(name)->text().remove(QChar(0x2060)); }
  QAbstractItemModel* steps() { return find<SheetView>("changeSteps")->model(); }
  QString cell(int row, int column) { return steps()->index(row, column).data().toString(); }
  void clickRow(SheetView* table, int row) {
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {},
                      table->visualRect(table->model()->index(row, 0)).center());
  }
  /// Chooses an entry with the keyboard, as a user does.
  void pick(const char* picker, int entry) {
    auto* box = find<QComboBox>(picker);
    box->setFocus();
    while (box->currentIndex() != entry) {
      const int before = box->currentIndex();
      QTest::keyClick(box, before < entry ? Qt::Key_Down : Qt::Key_Up);
      ASSERT_NE(box->currentIndex(), before);
    }
  }

  Session session;
  ChangePanel panel;
};

TEST_F(Change, NothingIsComparedWhileNobodyLooks) {
  EXPECT_EQ(panel.shown(), nullptr);
  session.compareWith(0);
  EXPECT_EQ(panel.shown(), nullptr);
  show();
  ASSERT_NE(panel.shown(), nullptr);
  const auto before = panel.shown();
  panel.hide();
  session.compareWith(1);
  EXPECT_EQ(panel.shown(), before);
  panel.show();
  EXPECT_EQ(panel.shown()->pair, (ChangePair{1, 2}));
}

TEST_F(Change, ShowsTheLastTwoChecksUntilAPairIsCompared) {
  show();
  EXPECT_EQ(panel.shown()->pair, (ChangePair{1, 2}));
  EXPECT_EQ(find<QComboBox>("changeEarlier")->currentText(), "in between  2026-05-12");
  EXPECT_EQ(find<QComboBox>("changeLater")->currentText(), "post-test  2026-05-20");
  session.compareWith(0);
  EXPECT_EQ(panel.shown()->pair, (ChangePair{0, 2}));
}

TEST_F(Change, ChoosingAStepElsewhereComparesNothingAnew) {
  show();
  const auto before = panel.shown();
  session.selectStep(4);
  EXPECT_EQ(panel.shown(), before);
}

TEST_F(Change, PickersChooseThePairThatAllViewsCompare) {
  show();
  pick("changeEarlier", 0);
  EXPECT_EQ(session.selection().check, 2U);
  EXPECT_EQ(session.selection().compared, 0U);
  pick("changeLater", 0);
  EXPECT_EQ(session.selection().check, 1U);
  EXPECT_EQ(session.selection().compared, 0U);
  // An earlier check that is not before the later one takes this with it.
  pick("changeEarlier", 1);
  EXPECT_EQ(panel.shown()->pair, (ChangePair{1, 2}));
}

// Derived from what is planted: alike readings known to 0.05 um/m differ by less than 0.2 um/m; margins are 1
// % of the levels, 10 um/m at the least, and 0.5 % of 3000 um/m for zeros. Of 5 % more gain and 400 um/m of
// zero all is far beyond.
TEST_F(Change, SaysInWordsWhatIsUnchangedAndWhatMoved) {
  show();
  EXPECT_EQ(panel.shown()->comparison.change, core::Change::Changed);
  EXPECT_TRUE(label("changeVerdict").startsWith("▲ ")) << label("changeVerdict").toStdString();
  EXPECT_EQ(find<QLabel>("changeVerdict")->palette().color(QPalette::WindowText),
            coloursFor(panel.palette()).fail);
  int changed = 0;
  for (int row = 0; row < steps()->rowCount(); ++row)
    changed += cell(row, StepChangeModel::Words) == "▲ changed";
  EXPECT_EQ(changed, 6) << "the steps that close a shunt";
  EXPECT_TRUE(label("changeGainWords").startsWith("▲ Changed by +5.0"))
      << label("changeGainWords").toStdString();
  EXPECT_TRUE(label("changeZeroWords").startsWith("▲ Changed by +400"))
      << label("changeZeroWords").toStdString();
  session.selectCheck(1);
  session.compareWith(0);
  EXPECT_EQ(panel.shown()->comparison.change, core::Change::Unchanged) << panel.verdictWords().toStdString();
  EXPECT_TRUE(label("changeVerdict").startsWith("● "));
  for (int row = 0; row < steps()->rowCount(); ++row)
    EXPECT_EQ(cell(row, StepChangeModel::Words), "● unchanged");
}

TEST_F(Change, TableAndStripTellOfTheSameSteps) {
  show();
  const auto* strip = find<DifferenceStrip>("differenceStrip");
  ASSERT_EQ(strip->steps().size(), steps()->rowCount());
  for (int row = 0; row < steps()->rowCount(); ++row) {
    const auto& moved = strip->steps()[row].moved;
    ASSERT_TRUE(moved);
    // Shown with two digits of the uncertainty of less than 1 um/m: to 0.1 at worst.
    EXPECT_NEAR(cell(row, StepChangeModel::Moved).toDouble(), moved->value, 0.06);
    EXPECT_EQ(cell(row, StepChangeModel::Words), changeText(moved->change));
  }
}

TEST_F(Change, AClickOnAMarkChoosesTheStepEverywhere) {
  show();
  auto* strip = find<DifferenceStrip>("differenceStrip");
  QTest::mouseClick(strip, Qt::LeftButton, {}, strip->markAt(5).toPoint());
  EXPECT_EQ(session.selection().step, 5U);
  EXPECT_EQ(find<SheetView>("changeSteps")->currentIndex().row(), 5);
  EXPECT_TRUE(label("changeStepWords").startsWith("Step 6")) << label("changeStepWords").toStdString();
  QTest::keyClick(strip, Qt::Key_Left);
  EXPECT_EQ(session.selection().step, 4U);
  QTest::keyClick(strip, Qt::Key_Right);
  QTest::keyClick(strip, Qt::Key_Right);
  EXPECT_EQ(session.selection().step, 6U);
}

TEST_F(Change, ARowChoosesTheStepEverywhereAndFollowsIt) {
  show();
  auto* table = find<SheetView>("changeSteps");
  clickRow(table, 3);
  EXPECT_EQ(session.selection().step, 3U);
  QTest::keyClick(table, Qt::Key_Down);
  EXPECT_EQ(session.selection().step, 4U);
  session.selectStep(7);
  EXPECT_EQ(table->currentIndex().row(), 7);
  session.selectStep(std::nullopt);
  EXPECT_TRUE(table->selectionModel()->selectedRows().isEmpty());
}

TEST_F(Change, TheChosenStepWearsARing) {
  show();
  auto* strip = find<DifferenceStrip>("differenceStrip");
  const QColor ring = coloursFor(strip->palette()).selected;
  const auto ringed = [&](qsizetype row) {
    const QImage image = strip->grab().toImage();
    const QPoint at = strip->markAt(row).toPoint();
    for (int x = at.x() - 12; x <= at.x() + 12; ++x)
      if (QColor(image.pixel(x, at.y())).rgb() == ring.rgb()) return true;
    return false;
  };
  EXPECT_FALSE(ringed(2));
  session.selectStep(2);
  EXPECT_TRUE(ringed(2));
  EXPECT_FALSE(ringed(3));
}

TEST_F(Change, SetUpsThatAreAlikeAreOneLineAndOthersATable) {
  show();
  auto* fold = find<QToolButton>("changeFold");
  EXPECT_EQ(fold->text(), "Set-ups: nothing differs.");
  EXPECT_FALSE(fold->isEnabled());
  EXPECT_FALSE(find<SheetView>("changeConfiguration")->isVisible());

  core::Channel channel = core::withCheckClosed(*session.channel(), 1);
  channel.setup.bridge.gauge.factor = 2.1;
  session.editChannel("Change gauge factor", std::move(channel));
  auto* table = find<SheetView>("changeConfiguration");
  EXPECT_TRUE(table->isVisible());
  ASSERT_GE(table->model()->rowCount(), 1);
  EXPECT_TRUE(fold->text().startsWith("Set-ups differ in ")) << fold->text().toStdString();
  QTest::mouseClick(fold, Qt::LeftButton);
  EXPECT_FALSE(table->isVisible());
  fold->setFocus();
  QTest::keyClick(fold, Qt::Key_Space);
  EXPECT_TRUE(table->isVisible());
}

TEST_F(Change, NumbersAreInTheUsersNotation) {
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German));
  show();
  EXPECT_TRUE(label("changeGainWords").contains("+5,0")) << label("changeGainWords").toStdString();
  int marks = 0;
  for (int row = 0; row < steps()->rowCount(); ++row) {
    for (const int column : {StepChangeModel::Moved, StepChangeModel::Expanded, StepChangeModel::EnNumber})
      EXPECT_FALSE(cell(row, column).contains('.')) << cell(row, column).toStdString();
    marks += cell(row, StepChangeModel::Moved).contains(',');
  }
  EXPECT_GT(marks, 0);
  QLocale::setDefault(before);
}

TEST_F(Change, SaysWhatIsMissing) {
  session.selectChannel(1);
  show();
  EXPECT_EQ(panel.shown(), nullptr);
  EXPECT_TRUE(label("changeMissing").startsWith("No check yet."));
  session.editChannel("Check", checkedAgain(*session.channel(), "pre-test", "", 1));
  EXPECT_TRUE(label("changeMissing").startsWith("Only one check yet."));
  EXPECT_FALSE(find<QScrollArea>("changeScroll")->isVisible());
  session.editChannel("Check", checkedAgain(*session.channel(), "post-test", "", 1));
  EXPECT_FALSE(find<QLabel>("changeMissing")->isVisible());
  EXPECT_TRUE(find<QScrollArea>("changeScroll")->isVisible());
}

TEST_F(Change, CausesAreLookedForAsideAndOnlyOnTheScreen) {
  EXPECT_TRUE(find<CauseSection>("changeCause")->lines().isEmpty());
  show();
  EXPECT_EQ(label("changeCauseSentence"), "Looking for what changed …");
  EXPECT_TRUE(QTest::qWaitFor([&] { return !find<CauseSection>("changeCause")->lines().isEmpty(); }, 20000));
  const QString first = label("changeCauseSentence");
  session.selectCheck(1);
  session.compareWith(0);
  EXPECT_EQ(label("changeCauseSentence"), "Looking for what changed …") << "not that of another pair";
  session.selectCheck(2);
  session.compareWith(1);
  EXPECT_EQ(label("changeCauseSentence"), first) << "kept, so there is no waiting";
}

TEST_F(Change, ChecksOverTimeAreChosenByTheirPointAndRow) {
  show();
  auto* table = find<SheetView>("trendTable");
  ASSERT_EQ(table->model()->rowCount(), 3);
  auto* chart = find<TrendChart>("trendZero");
  ASSERT_EQ(chart->marks().size(), 3);
  find<QScrollArea>("changeScroll")->ensureWidgetVisible(chart);
  QTest::mouseClick(chart, Qt::LeftButton, {}, chart->markAt(0).toPoint());
  EXPECT_EQ(panel.shown()->pair, (ChangePair{0, 2}));
  table->setFocus();
  table->setCurrentIndex(table->model()->index(1, 0));
  QTest::keyClick(table, Qt::Key_Return);
  EXPECT_EQ(panel.shown()->pair, (ChangePair{0, 1}));
  // 2026-05-11, -12 and -20: a day, then eight.
  const double first = chart->markAt(1).x() - chart->markAt(0).x();
  const double second = chart->markAt(2).x() - chart->markAt(1).x();
  EXPECT_NEAR(second / first, 8, 1e-6);  // places are not rounded to pixels
}

TEST_F(Change, TheVerdictStaysInSightInASmallView) {
  panel.resize(480, 330);
  show();
  QApplication::processEvents();
  auto* scroll = find<QScrollArea>("changeScroll");
  EXPECT_EQ(panel.height(), 330);
  EXPECT_EQ(panel.width(), 480);
  EXPECT_GE(scroll->height(), 150);
  EXPECT_LE(scroll->widget()->width(), scroll->viewport()->width());
  const auto* verdict = find<QLabel>("changeVerdict");
  EXPECT_TRUE(verdict->isVisible());
  EXPECT_LT(verdict->mapTo(&panel, QPoint(0, verdict->height())).y(), scroll->y() + 1);
  EXPECT_TRUE(verdict->toolTip().contains(panel.verdictWords().toHtmlEscaped()));
  // A wide view has strip and table side by side.
  panel.resize(1900, 950);
  QApplication::processEvents();
  const auto* strip = find<DifferenceStrip>("differenceStrip");
  EXPECT_LT(strip->geometry().right(), find<SheetView>("changeSteps")->x());
}

TEST_F(Change, AVerdictWithoutRoomIsTheWordAndStandsBelowOnce) {
  panel.resize(480, 330);
  show();
  EXPECT_EQ(label("changeVerdict"), "▲ changed");
  EXPECT_TRUE(find<QLabel>("changeReason")->isVisible());
  panel.resize(1900, 950);
  QApplication::processEvents();
  EXPECT_NE(label("changeVerdict"), "▲ changed");
  EXPECT_TRUE(label("changeVerdict").startsWith("▲ "));
  EXPECT_FALSE(find<QLabel>("changeReason")->isVisible());
}

TEST_F(Change, ChecksAreNamedWithTheirDaysInASmallView) {
  panel.resize(455, 330);
  show();
  for (const char* name : {"changeEarlier", "changeLater"}) {
    const auto* box = find<QComboBox>(name);
    QStyleOptionComboBox option;
    option.initFrom(box);
    const int room =
        box->style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, box).width();
    EXPECT_GE(room, box->fontMetrics().horizontalAdvance(box->currentText())) << name;
  }
}

TEST_F(Change, SetUpsThatDoNotDifferAreSaidInAColourThatCanBeRead) {
  show();
  const auto* fold = find<QToolButton>("changeFold");
  ASSERT_FALSE(fold->isEnabled());
  // WCAG 2.2, 1.4.3
  EXPECT_GE(test::contrastOf(fold->palette().color(QPalette::Disabled, QPalette::ButtonText),
                             panel.palette().color(QPalette::Window)),
            4.5);
}

TEST_F(Change, DataHasARowAStepThenGainAndZero) {
  show();
  const QList<QStringList> rows = changeData(*panel.shown());
  ASSERT_EQ(rows.size(), 1 + steps()->rowCount() + 2);
  for (const QStringList& row : rows) EXPECT_EQ(row.size(), rows[0].size());
  const auto& gain = panel.shown()->comparison.gain;
  ASSERT_TRUE(gain);
  EXPECT_NEAR(rows[rows.size() - 2][4].toDouble(), gain->value, 1e-12);  // written with 15 digits
  EXPECT_EQ(rows.last().last(), "changed");
}

TEST(ChangeInTheOutcome, SaysOneVerdictAndIsCopiedFromItsPage) {
  Session session(sample::documentOf({threeChecks()}));
  OutcomeView view(session);
  view.resize(900, 700);
  view.show();
  view.showPage(OutcomeView::Page::Change);
  QApplication::processEvents();
  const auto* panel = view.findChild<ChangePanel*>("changePanel");
  ASSERT_TRUE(panel && panel->isVisible());
  EXPECT_FALSE(view.findChild<QLabel*>("outcomeVerdict")->isVisible());
  EXPECT_TRUE(view.findChild<QToolButton*>("outcomeShare")->isVisible());
  view.copyData();
  EXPECT_EQ(QApplication::clipboard()->text().count('\n'), changeData(*panel->shown()).size());
  view.copyPicture();
  EXPECT_FALSE(QApplication::clipboard()->image().isNull());
  view.showPage(OutcomeView::Page::Table);
  EXPECT_TRUE(view.findChild<QLabel*>("outcomeVerdict")->isVisible());
}

TEST(DifferenceStrip, EachKindOfChangeHasAShapeOfItsOwn) {
  DifferenceStrip strip;
  strip.resize(600, 260);
  using core::Change;
  QList<StripStep> steps;
  const Change kinds[] = {Change::Unchanged, Change::Harmless, Change::Changed, Change::CannotTell};
  for (std::size_t k = 0; k < 4; ++k) steps.append({k, difference(0, 0.1, 2, kinds[k]), "text"});
  strip.showSteps(steps, "µm/m", std::nullopt);
  QList<QImage> shapes;
  for (qsizetype k = 0; k < 4; ++k) {
    const QPoint at = strip.markAt(k).toPoint();
    QImage shape = strip.grab(QRect(at - QPoint(8, 8), QSize(17, 17))).toImage();
    // Without colours: what is left are shapes.
    shapes.append(shape.convertToFormat(QImage::Format_Grayscale8)
                      .convertToFormat(QImage::Format_Mono, Qt::ThresholdDither));
  }
  for (qsizetype a = 0; a < 4; ++a)
    for (qsizetype b = a + 1; b < 4; ++b) EXPECT_NE(shapes[a], shapes[b]) << a << " " << b;
}

TEST(DifferenceStrip, AStepThatIsNotComparedIsStillThereToBeClicked) {
  DifferenceStrip strip;
  strip.resize(600, 260);
  strip.showSteps({{0, difference(1, 0.5, 2, core::Change::Unchanged), "a"}, {1, std::nullopt, "b"}}, "mV/V",
                  {});
  EXPECT_EQ(strip.stepAt(strip.markAt(1)), 1U);
  EXPECT_EQ(strip.stepAt(strip.markAt(0)), 0U);
  EXPECT_EQ(strip.stepAt({1, 1}), std::nullopt);
}

TEST(ChangeWords, SayWhatBothTestsSayTogether) {
  const ShownUnit in{1, "µm/m"};
  EXPECT_EQ(differenceSentence(difference(0.2, 0.5, 2, core::Change::Unchanged), in),
            "Unchanged within ± 2 µm/m: +0.20 ± 0.50 µm/m (95 %).");
  EXPECT_EQ(differenceSentence(difference(-7.04, 0.5, 2, core::Change::Changed), in),
            "Changed by -7.04 ± 0.50 µm/m (95 %), not within the margin of ± 2 µm/m.");
  core::Difference unknown;
  unknown.value = 1;
  unknown.margin = 2;
  unknown.change = core::Change::CannotTell;
  EXPECT_EQ(differenceSentence(unknown, in),
            "Cannot tell: +1 µm/m against a margin of ± 2 µm/m; how far it may be wrong is not known.");
  EXPECT_EQ(probabilityText(0.0001), "< 0.001");
}

TEST(IntervalBar, SaysItsNumbersToThoseWhoCannotSeeIt) {
  IntervalBar bar("bar");
  bar.showDifference(std::nullopt, {1, "mV/V"});
  EXPECT_EQ(bar.accessibleDescription(), "Not compared.");
  bar.showDifference(difference(0.01, 0.002, 0.005, core::Change::Changed), {100, "%"});
  EXPECT_TRUE(bar.accessibleDescription().contains("+1.00 ± 0.20 %"))
      << bar.accessibleDescription().toStdString();
}

/// A cause that somebody found, by hand.
core::ChangeCause foundCause() {
  core::ChangeCause cause;
  cause.diagnosis.result = core::DiagnosisResult::Found;
  cause.diagnosis.sentence = "Leak grown.";
  for (const char* title : {"Leak from S+ to the article", "Gain drifted"}) {
    core::Explanation one;
    one.title = title;
    one.sizeText = "12 MΩ";
    one.confirm = std::string("Measure about: ") + title;
    cause.diagnosis.explanations.push_back(one);
  }
  cause.data.emplace();
  cause.data->after.factor = 1.002;
  cause.data->greatestShare = 0.002;
  cause.data->greatestOffset = 3;
  cause.data->sentence = "Data in between may be wrong.";
  return cause;
}

TEST(CauseSection, ShowsWhatToMeasureAboutTheChosenCauseAndWhatItMeansForData) {
  const core::Channel channel = threeChecks();
  const ShownChange shown =
      shownChange(std::make_shared<const core::Channel>(channel), core::evaluate(channel), {1, 2});
  CauseSection section;
  section.resize(800, 500);
  section.show();
  section.showCause(shown, std::make_shared<const core::ChangeCause>(foundCause()));
  const auto text = [&](const char* name) {
    return section.findChild<QLabel*>(name)->text().remove(QChar(0x2060));
  };
  EXPECT_EQ(text("changeCauseSentence"), "Leak grown.");
  EXPECT_EQ(text("changeCauseMeasure"), "Measure about: Leak from S+ to the article");
  auto* table = section.findChild<SheetView*>("changeCauses");
  ASSERT_EQ(table->model()->rowCount(), 2);
  QTest::mouseClick(table->viewport(), Qt::LeftButton, {},
                    table->visualRect(table->model()->index(1, CauseModel::Cause)).center());
  EXPECT_EQ(text("changeCauseMeasure"), "Measure about: Gain drifted");
  EXPECT_EQ(text("dataAtStart"), "factor 1, offset 0: as read");
  EXPECT_TRUE(text("dataAtEnd").contains("1.002")) << text("dataAtEnd").toStdString();
  EXPECT_EQ(text("dataGreatestError"), "0.2 % of the strain, and 3 µm/m besides");
  section.showCause(shown, std::make_shared<const core::ChangeCause>());
  EXPECT_FALSE(table->isVisible());
  EXPECT_FALSE(section.findChild<QWidget*>("dataBetween")->isVisible());
}

}  // namespace
}  // namespace ui

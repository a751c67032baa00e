// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/main_window.h"

#include <gtest/gtest.h>

#include <QAbstractScrollArea>
#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollBar>
#include <QStatusBar>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QToolButton>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/bridge_view.h"
#include "ui/budget_view.h"
#include "ui/channel_list.h"
#include "ui/document_file.h"
#include "ui/outcome_view.h"
#include "ui/review/review_page.h"
#include "ui/run/guided_run.h"
#include "ui/sequence_pane.h"
#include "ui/stock/stock_page.h"
#include "ui/whatif/what_if_panel.h"
#include "ui/wiring/ohmmeter_page.h"
#include "ui/wiring/wiring_page.h"

namespace ui {
namespace {

class Window : public testing::Test {
 protected:
  explicit Window(core::Document document = {}) : session(std::move(document)), window(session) {
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }

  void trigger(const char* action) { window.findChild<QAction*>(action)->trigger(); }
  void click(const char* button) {
    QTest::mouseClick(window.findChild<QToolButton*>(button), Qt::LeftButton);
  }
  void type(const char* field, const QString& text) {
    auto* edit = window.findChild<QLineEdit*>(field);
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, text);
    QTest::keyClick(edit, Qt::Key_Return);
  }
  /// What was refused, empty when nothing is shown.
  QString warned() {
    auto* text = window.findChild<QLabel*>("noticeText");
    return text->isVisible() ? text->text() : QString();
  }
  SequencePane& sequence() { return *window.findChild<SequencePane*>(); }
  void answer(QMessageBox::StandardButton button) {
    QTimer::singleShot(0, [button] {
      auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
      ASSERT_TRUE(box);
      QTest::mouseClick(box->button(button), Qt::LeftButton);
    });
  }

  QTemporaryDir folder;
  Session session;
  MainWindow window;
};

class DemoWindow : public Window {
 protected:
  DemoWindow()
      : Window(sample::documentOf(
            {sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), 1.0), 1.02),
             sample::nineStepChannel()})) {}
};

TEST_F(DemoWindow, ANewChannelAndAnotherDocumentAreShownFromTheirBeginning) {
  const QString path = folder.filePath("demo.bridgecal");
  core::Channel channel = sample::nineStepChannel();
  while (channel.setup.sequence.size() < 60) channel.setup.sequence.push_back(channel.setup.sequence.back());
  ASSERT_TRUE(saveDocument(sample::documentOf({channel}), path));
  EXPECT_TRUE(window.openFile(path));
  QApplication::processEvents();
  QScrollBar* form = window.findChild<QAbstractScrollArea*>("setupForm")->verticalScrollBar();
  QScrollBar* table = sequence().steps().verticalScrollBar();
  const auto scroll = [&] {
    for (QScrollBar* bar : {form, table}) {
      bar->setValue(bar->maximum());
      ASSERT_GT(bar->value(), 0);
    }
  };
  scroll();
  EXPECT_TRUE(window.openFile(path));
  QApplication::processEvents();
  EXPECT_EQ(form->value(), 0);
  EXPECT_EQ(table->value(), 0);
  for (const char* button : {"duplicateChannel", "addChannel"}) {
    form->setValue(form->maximum());
    click(button);
    QApplication::processEvents();
    EXPECT_EQ(form->value(), 0) << button;
  }
}

TEST_F(Window, WhatWasTriedOutOnOneDocumentIsNotTriedOutOnAnother) {
  click("addChannel");
  auto* panel = window.findChild<WhatIfPanel*>();
  panel->tryOut({core::AlterationKind::LeadResistance, 0, 0, 2});
  trigger("sequenceAddShunt");
  EXPECT_EQ(panel->trials().size(), 1u) << "an edit leaves it";
  session.history().setClean();
  trigger("new");
  EXPECT_TRUE(panel->trials().empty());
}

TEST_F(Window, FromAnEmptyDocumentToAJudgedSavedAndReopenedCheck) {
  click("addChannel");
  type("channelName", "TP-05");
  type("gaugeResistance", "350");
  type("lead0", "2");
  trigger("sequenceAddShunt");
  auto* shunts = sequence().shunts().model();
  EXPECT_TRUE(shunts->setData(shunts->index(0, ShuntModel::Resistance), "174.65k"));
  trigger("sequenceAddShunt");
  EXPECT_TRUE(shunts->setData(shunts->index(1, ShuntModel::From), "arm 1 begin"));
  EXPECT_TRUE(shunts->setData(shunts->index(1, ShuntModel::To), "arm 1 end"));
  trigger("sequenceTwoSided");
  ASSERT_EQ(session.channel()->setup.sequence.size(), 5u);
  trigger("checkAdd");

  sequence().setCurrentIndex(0);
  auto* steps = sequence().steps().model();
  QStringList readings;
  for (const auto& step : session.evaluation()->prediction.steps)
    readings << QString::number(step->reading.base(), 'g', 12);
  QApplication::clipboard()->setText(readings.join('\n'));
  sequence().steps().setCurrentIndex(steps->index(0, SequenceModel::Measured));
  trigger("paste");
  EXPECT_EQ(session.evaluation()->verdict, core::Verdict::Pass);
  EXPECT_EQ(session.evaluation()->status, "pre-test: pass");

  const QString path = folder.filePath("mine.bridgecal");
  EXPECT_TRUE(window.saveAs(path));
  EXPECT_FALSE(window.isWindowModified());
  const core::Channel saved = *session.channel();
  EXPECT_TRUE(window.openFile(path));
  EXPECT_EQ(*session.channel(), saved);
  EXPECT_EQ(recentDocuments().first(), path);
}

TEST_F(DemoWindow, OneSelectionInAllViews) {
  session.selectStep(6);
  EXPECT_EQ(sequence().steps().currentIndex().row(), 6);
  EXPECT_TRUE(window.findChild<BridgeView*>()->description().contains("closed"));
  sequence().steps().setCurrentIndex(sequence().steps().model()->index(2, 0));
  EXPECT_EQ(session.selection().step, 2u);
  auto* list = window.findChild<QListView*>("channelList");
  list->setCurrentIndex(list->model()->index(1, 0));
  EXPECT_EQ(session.selection().channel, 1u);
  EXPECT_EQ(window.findChild<QLineEdit*>("channelName")->text(), "TP-01 (2)");
}

TEST_F(DemoWindow, UndoAndRedoAreNamedAndBringEverythingBack) {
  const core::Document before = session.document();
  trigger("channelRemove");
  EXPECT_EQ(window.findChild<QAction*>("undo")->text(), "&Undo: Remove channel");
  EXPECT_TRUE(window.isWindowModified());
  trigger("undo");
  EXPECT_TRUE(window.findChild<QAction*>("redo")->isEnabled());
  EXPECT_EQ(window.findChild<QAction*>("redo")->text(), "&Redo: Remove channel");
  EXPECT_EQ(session.document(), before);
  EXPECT_FALSE(window.isWindowModified());
  trigger("redo");
  EXPECT_EQ(session.document().channels.size(), 1u);
}

TEST_F(DemoWindow, EachViewFillsTheWholeAreaByOneKey) {
  auto* bridge = window.findChild<BridgeView*>();
  auto* outcome = window.findChild<OutcomeView*>();
  QTest::keyClick(&window, Qt::Key_1, Qt::AltModifier);
  EXPECT_TRUE(bridge->isVisible());
  EXPECT_FALSE(outcome->isVisible());
  EXPECT_FALSE(sequence().isVisible());
  QTest::keyClick(&window, Qt::Key_3, Qt::AltModifier);
  EXPECT_TRUE(outcome->isVisible());
  EXPECT_FALSE(bridge->isVisible());
  QTest::keyClick(&window, Qt::Key_4, Qt::AltModifier);
  EXPECT_TRUE(sequence().budget().isVisible());
  EXPECT_FALSE(outcome->isVisible());
  QTest::keyClick(&window, Qt::Key_2, Qt::AltModifier);
  EXPECT_TRUE(sequence().steps().isVisible());
  QTest::keyClick(&window, Qt::Key_0, Qt::AltModifier);
  for (QWidget* view : std::initializer_list<QWidget*>{bridge, outcome, &sequence()})
    EXPECT_TRUE(view->isVisible());
}

TEST_F(DemoWindow, PagesOfPlanningStandBesideTheChannelsByOneKeyAndLeadBack) {
  QTest::keyClick(&window, Qt::Key_5, Qt::AltModifier);
  EXPECT_TRUE(window.findChild<ReviewPage*>()->isVisible());
  const std::initializer_list<std::pair<Qt::Key, QWidget*>> pages = {
      {Qt::Key_6, window.findChild<WiringPage*>()},
      {Qt::Key_7, window.findChild<OhmmeterPage*>()},
      {Qt::Key_8, window.findChild<StockPage*>()},
      {Qt::Key_9, window.findChild<GuidedRun*>()}};
  for (const auto& [key, page] : pages) {
    QTest::keyClick(&window, key, Qt::AltModifier);
    EXPECT_TRUE(page->isVisible());
    EXPECT_TRUE(window.findChild<ChannelList*>()->isVisible());
    EXPECT_FALSE(sequence().isVisible());
    click(qPrintable(page->objectName() + "Back"));
    EXPECT_FALSE(page->isVisible());
    EXPECT_TRUE(sequence().isVisible());
  }
}

TEST_F(DemoWindow, DialogsOfPlanningOpenFromTheMenuAndTheButtons) {
  const auto opens = [&](const char* dialog, const std::function<void()>& act) {
    QString opened;
    QTimer::singleShot(0, [&opened] {
      auto* shown = QApplication::activeModalWidget();
      ASSERT_TRUE(shown);
      opened = shown->metaObject()->className();
      shown->close();
    });
    act();
    EXPECT_EQ(opened, dialog);
  };
  opens("ui::SearchDialog", [&] { trigger("prepareResistors"); });
  opens("ui::PatternDialog", [&] { trigger("sequenceLayOut"); });
  opens("ui::ApplyDialog", [&] { trigger("prepareApply"); });
  opens("ui::PatternDialog", [&] { click("fromPattern"); });
  opens("ui::SearchDialog", [&] {
    sequence().setCurrentIndex(1);
    click("chooseResistors");
  });
}

TEST_F(Window, WithoutAChannelTheDialogsOfPlanningSayWhatIsMissing) {
  for (const char* action : {"prepareResistors", "sequenceLayOut", "prepareApply"}) {
    window.warn({});
    trigger(action);
    EXPECT_TRUE(warned().startsWith("There is no channel")) << action;
  }
}

// Shunts may be closed, and somebody may rely on the reading.
TEST_F(DemoWindow, ARunThatIsLeftUnderWayIsNotForgotten) {
  session.selectChannel(1);
  trigger("checkAdd");
  trigger("prepareRun");
  auto* run = window.findChild<GuidedRun*>();
  trigger("viewAll");
  EXPECT_EQ(warned(), "");  // not begun yet
  trigger("prepareRun");
  for (int k = 0; k < 5; ++k) run->findChild<QCheckBox*>(QString("caution%1").arg(k))->click();
  QTest::mouseClick(run->findChild<QPushButton*>("beginRun"), Qt::LeftButton);
  EXPECT_TRUE(run->isUnderWay());
  trigger("viewAll");
  EXPECT_TRUE(warned().contains("shunts may still be closed")) << warned();
  for (int again = 0; again < 2; ++again) {
    trigger("prepareRun");
    EXPECT_EQ(warned(), "");
  }
}

TEST_F(DemoWindow, AResistorOverdueForCalibrationIsToldInBridgeAndOutcome) {
  const auto day = [](int year, unsigned month) { return std::chrono::year(year) / month / 1; };
  session.setToday(day(2026, 11));
  core::Channel channel = *session.channel();
  channel.setup.shunts[0].part = {.id = "AF-0104", .due = day(2026, 9)};
  channel.checks.back().date = "2026-05-11";
  session.editChannel("part", channel);
  EXPECT_TRUE(window.findChild<QLabel*>("bridgeNotice")->text().contains("AF-0104"));
  // On the day of the check it was not due yet.
  EXPECT_EQ(window.findChild<QLabel*>("outcomeNotice")->text(), "");
  channel.checks.back().date = "2026-10-11";
  session.editChannel("date", channel);
  EXPECT_TRUE(window.findChild<QLabel*>("outcomeNotice")->text().contains("AF-0104"));
}

TEST_F(DemoWindow, ComparesTheChosenCheckWithTheOneBefore) {
  trigger("checkCompare");
  EXPECT_EQ(session.selection().compared, 0u);
  EXPECT_TRUE(window.findChild<QLabel*>("outcomeVerdict")->text().startsWith("Changed"));
  trigger("checkCompare");
  EXPECT_FALSE(session.selection().compared);
}

TEST_F(DemoWindow, AFileThatIsNoDocumentIsExplainedAndTheOpenOneKept) {
  const core::Document before = session.document();
  for (const auto& [name, bytes] :
       {std::pair("cut.bridgecal", "{\"format\": \"shuntwright\", \"version\": 1, \"chan"),
        {"other.bridgecal", "a,b\n1,2\n"},
        {"empty.bridgecal", ""}}) {
    QFile file(folder.filePath(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    file.close();
    EXPECT_FALSE(window.openFile(file.fileName()));
    EXPECT_TRUE(warned().startsWith(QString("Not opened: %1").arg(name))) << warned();
  }
  EXPECT_FALSE(window.openFile(folder.filePath("missing.bridgecal")));
  EXPECT_FALSE(window.openFile(folder.path()));
  EXPECT_EQ(session.document(), before);
}

TEST_F(DemoWindow, AFailedSaveKeepsTheDocumentMarkedAsChanged) {
  trigger("channelDuplicate");
  EXPECT_FALSE(window.saveAs(folder.filePath("no/such/folder/a.bridgecal")));
  EXPECT_TRUE(warned().startsWith("Not saved:")) << warned();
  EXPECT_TRUE(window.isWindowModified());
}

TEST_F(DemoWindow, ReportsAreWrittenAsPdfOrCsvAndAFailureIsSaid) {
  EXPECT_TRUE(window.writeReport(folder.filePath("report.pdf")));
  EXPECT_TRUE(window.writeReport(folder.filePath("report.csv")));
  for (const auto& [name, beginning] : {std::pair("report.pdf", "%PDF-"), {"report.csv", "channel"}}) {
    QFile file(folder.filePath(name));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith(beginning)) << name;
  }
  EXPECT_FALSE(window.writeReport(folder.filePath("no/folder/report.pdf")));
  EXPECT_TRUE(warned().startsWith("No report:")) << warned();
}

TEST_F(DemoWindow, ClosingWithChangesAsksAndCancelKeepsTheWindow) {
  trigger("channelDuplicate");
  answer(QMessageBox::Cancel);
  EXPECT_FALSE(window.close());
  EXPECT_TRUE(window.isVisible());
  answer(QMessageBox::Discard);
  EXPECT_TRUE(window.close());
}

TEST_F(DemoWindow, WhatAFieldTellsBesideItselfIsNotToldAgainAtTheFoot) {
  type("gaugeFactor", "-2");
  const auto sheets = window.findChildren<QLabel*>("fieldEcho");
  EXPECT_TRUE(std::any_of(sheets.begin(), sheets.end(), [](const QLabel* sheet) {
    return sheet->isVisible() && sheet->text().contains("-2");
  }));
  EXPECT_EQ(warned(), "");
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(DemoWindow, WhatIsGivenUpIsToldUntilTheFieldCanBeReadAgain) {
  auto* field = window.findChild<QLineEdit*>("gaugeFactor");
  const QString before = field->text();
  const auto giveUp = [&] {
    type("gaugeFactor", "-2");
    for (int k = 0; k < 2; ++k) {
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
      field->setFocus();
    }
  };
  giveUp();
  EXPECT_TRUE(warned().contains("-2 was not taken: still " + before)) << warned();
  field->selectAll();
  QTest::keyClicks(field, "abc");
  EXPECT_FALSE(warned().isEmpty()) << "still nothing that can be read";
  field->selectAll();
  QTest::keyClicks(field, before);
  EXPECT_TRUE(warned().isEmpty()) << "put right, though nothing was changed by it";
  giveUp();
  ASSERT_FALSE(warned().isEmpty());
  type("gaugeFactor", "2.1");
  EXPECT_TRUE(warned().isEmpty()) << "out of date once something was changed";
}

TEST_F(DemoWindow, WhatWasDoneTakesThePlaceOfWhatWasRefused) {
  window.warn("Choose the step first.");
  window.say("Wrote step.cir.");
  EXPECT_EQ(warned(), "");
  EXPECT_EQ(window.statusBar()->currentMessage(), "Wrote step.cir.");
  window.warn("Choose the step first.");
  EXPECT_EQ(warned(), "Choose the step first.");
  EXPECT_EQ(window.statusBar()->currentMessage(), "");
}

TEST_F(DemoWindow, ARefusedCellIsNoLongerToldOnceItHoldsSomethingAgain) {
  SheetView& steps = sequence().steps();
  const auto enter = [&](const QString& text) {
    steps.setCurrentIndex(steps.model()->index(0, SequenceModel::Hold));
    QTest::keyClick(&steps, Qt::Key_F2);
    auto* editor = steps.viewport()->findChild<QLineEdit*>();
    ASSERT_TRUE(editor);
    editor->selectAll();
    QTest::keyClicks(editor, text);
    QTest::keyClick(editor, Qt::Key_Return);
    QTest::qWait(10);
  };
  const QString before = steps.model()->index(0, SequenceModel::Hold).data(Qt::EditRole).toString();
  enter("-1");
  ASSERT_FALSE(warned().isEmpty());
  enter(before);
  EXPECT_TRUE(warned().isEmpty()) << warned();
}

TEST_F(DemoWindow, ARefusalStaysReadableWhenTheColoursChange) {
  window.warn("Refused.");
  trigger("viewDark");
  auto* notice = window.findChild<QWidget*>("notice");
  const QColor background = QApplication::palette().color(QPalette::Base);
  EXPECT_TRUE(QTest::qWaitFor(
      [&] { return notice->grab().toImage().pixelColor(notice->width() - 4, 4) == background; }, 2000));
  trigger("viewLight");
}

TEST_F(DemoWindow, AnImpossibleBridgeIsExplainedInEachViewAndTheOthersStay) {
  core::Channel broken = *session.channel();
  broken.setup.bridge.arms[0] = core::Resistance(0);
  session.editChannel("Break", broken);
  EXPECT_EQ(session.evaluation()->status, "cannot be predicted");
  EXPECT_EQ(sequence().steps().model()->index(1, SequenceModel::PolarityColumn).data().toString(), "error");
  EXPECT_NE(session.evaluation(1).status, "cannot be predicted");
}

TEST_F(Window, ADocumentSavedElsewhereStillFindsItsRecordings) {
  QTemporaryDir folder;
  ASSERT_TRUE(QDir(folder.path()).mkpath("logger") && QDir(folder.path()).mkpath("plans/2026"));
  QFile file(folder.filePath("logger/pre.csv"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  core::Channel channel = sample::nineStepChannel();
  channel.checks.resize(2);
  channel.checks[0].name = "pre-test";
  channel.checks[0].recording = core::RecordingReference{"logger/pre.csv", 0, std::string(64, '0'), "TP-01"};
  channel.checks[1].name = "post-test";
  channel.checks[1].recording = core::RecordingReference{"logger/gone.csv", 0, std::string(64, '0'), "TP-01"};
  session.reset(sample::documentOf({channel}));
  ASSERT_TRUE(window.saveAs(folder.filePath("a.bridgecal")));
  ASSERT_TRUE(window.saveAs(folder.filePath("plans/2026/b.bridgecal")));
  const auto& checks = session.document().channels[0]->checks;
  EXPECT_EQ(checks[0].recording->path, "../../logger/pre.csv");
  EXPECT_EQ(checks[1].recording->path, "logger/gone.csv") << "what is not found is left as it is";
  EXPECT_TRUE(session.history().isClean());
  const auto saved = openDocument(folder.filePath("plans/2026/b.bridgecal"));
  ASSERT_TRUE(saved);
  EXPECT_EQ(*saved->channels[0], *session.document().channels[0]);
}

TEST_F(Window, AnEmptyDocumentIsHelpfulAndHarmless) {
  for (const char* action :
       {"channelDuplicate", "channelRemove", "sequenceAddStep", "sequenceRemoveStep", "sequenceTwoSided",
        "sequenceAddShunt", "sequenceRemoveShunt", "checkAdd", "checkRecording", "checkDetails", "checkClose",
        "checkRemove", "checkCompare", "netlist", "copy", "paste", "clear"})
    trigger(action);
  EXPECT_FALSE(warned().isEmpty());
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Window, CautionsAreShownAsPlainText) {
  QTimer::singleShot(0, [] {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    ASSERT_TRUE(box);
    EXPECT_EQ(box->textFormat(), Qt::PlainText);
    EXPECT_TRUE(box->text().contains("Switch the excitation off"));
    box->accept();
  });
  trigger("cautions");
}

TEST_F(Window, NamesWithMarkupAreShownAsTyped) {
  core::Channel hostile = sample::nineStepChannel();
  hostile.name = "<img src=x> & <b>bold</b> [*] %1";
  session.edit("Add", core::withChannelInserted(session.document(), 0, hostile));
  window.showAsUnsaved("<b>[*]</b>");
  auto* list = window.findChild<QListView*>("channelList");
  EXPECT_EQ(list->model()->index(0, 0).data().toString(), "<img src=x> & <b>bold</b> [*] %1");
  for (const auto* label : window.findChildren<QLabel*>())
    EXPECT_TRUE(!label->text().contains('<') || label->textFormat() == Qt::PlainText) << label->text();
}

}  // namespace
}  // namespace ui

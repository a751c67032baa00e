// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/working/working_panel.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QMimeData>
#include <QScrollBar>
#include <QTest>
#include <QTextDocument>
#include <QToolButton>

#include "core/document/edits.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/theme.h"
#include "ui/working/working_text.h"

namespace ui {
namespace {

/// The panel as a user has it on the screen, on a checked nine-step channel.
class Working : public testing::Test {
 protected:
  explicit Working(QSize size = {1200, 700})
      : session(sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1.001, 4)})),
        panel(session) {
    panel.resize(size);
    session.selectStep(1);
    panel.show();
    panel.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
  }

  template <class T>
  T* find(const char* name) {
    T* found = panel.findChild<T*>(name);
    EXPECT_TRUE(found) << name;
    return found;
  }

  QString shown() { return find<WorkingText>("workingText")->toPlainText(); }
  QString title() { return find<QLabel>("workingTitle")->text(); }
  QString message() { return find<QLabel>("workingMessage")->text(); }
  std::optional<std::size_t> step() { return session.selection().step; }

  Session session;
  WorkingPanel panel;
};

class NarrowWorking : public Working {
 protected:
  NarrowWorking() : Working({490, 700}) {}
};

}  // namespace

TEST_F(Working, SpellsOutTheLettersOfItsFormulas) {
  EXPECT_TRUE(shown().contains("c: sensitivity")) << shown().toStdString();
  EXPECT_TRUE(shown().contains("u: standard uncertainty"));
  EXPECT_TRUE(panel.text().contains("c: sensitivity"));
}

TEST_F(Working, ShowsAllPartsOfTheChosenStepInTheirOrder) {
  EXPECT_EQ(title(), "TP-01, pre-test, step 2, up");
  const QString text = "\n" + shown();
  qsizetype at = -1;
  for (const char* heading :
       {"The step", "Simulated strain", "The reading", "Its uncertainty", "The verdict", "The line"}) {
    const qsizetype found = text.indexOf(QString("\n%1\n").arg(heading), at + 1);
    EXPECT_GT(found, at) << heading;
    at = found;
  }
  EXPECT_TRUE(shown().contains("= 350 Ω × 174.65 kΩ / (350 Ω + 174.65 kΩ)")) << shown().left(600);
  EXPECT_TRUE(shown().contains("ε ≈ R / (F N (R + Rs))"));
}

TEST_F(Working, FollowsEditUndoAndSelection) {
  const QString before = shown();
  core::Channel channel = *session.channel();
  channel.setup.shunts[channel.setup.sequence[1].closed[0]].resistance = core::Resistance(200000);
  session.editChannel("Change shunt", channel);
  EXPECT_TRUE(shown().contains("200 kΩ"));
  session.history().undo();
  EXPECT_EQ(shown(), before);
  session.selectCheck(std::nullopt);
  EXPECT_EQ(title(), "TP-01, plan, step 2, up");
  EXPECT_FALSE(shown().contains("The verdict"));
}

TEST_F(Working, ArrowKeysAndButtonsWalkTheSteps) {
  auto* text = find<WorkingText>("workingText");
  text->setFocus();
  QTest::keyClick(text, Qt::Key_Right);
  EXPECT_EQ(step(), 2u);
  QTest::keyClick(text, Qt::Key_Left);
  QTest::keyClick(text, Qt::Key_Left);
  EXPECT_EQ(step(), 0u);
  QTest::keyClick(text, Qt::Key_Left);
  EXPECT_EQ(step(), 0u);
  EXPECT_FALSE(find<QToolButton>("workingBefore")->isEnabled());
  find<QToolButton>("workingAfter")->click();
  EXPECT_EQ(step(), 1u);
  session.selectStep(8);
  EXPECT_FALSE(find<QToolButton>("workingAfter")->isEnabled());
}

TEST_F(Working, BeginsAtItsBeginningWhateverItsSizeBecomes) {
  auto* text = find<WorkingText>("workingText");
  ASSERT_GT(text->verticalScrollBar()->maximum(), 0);
  text->ensureCursorVisible();  // as a new size does
  EXPECT_EQ(text->verticalScrollBar()->value(), 0);
}

TEST_F(Working, StaysWhereItIsScrolledTo) {
  QScrollBar* bar = find<WorkingText>("workingText")->verticalScrollBar();
  QCoreApplication::processEvents();
  ASSERT_GT(bar->maximum(), 300);
  bar->setValue(300);
  session.selectStep(2);
  EXPECT_EQ(bar->value(), 300);
}

TEST_F(Working, CopiesPlainTextOnly) {
  find<QToolButton>("copyWorking")->click();
  const QString whole = QApplication::clipboard()->text();
  EXPECT_TRUE(whole.startsWith("TP-01, pre-test, step 2, up\n\nThe step\n")) << whole.left(80);
  EXPECT_TRUE(whole.contains("The line"));

  auto* text = find<WorkingText>("workingText");
  text->selectAll();
  text->copy();
  const QMimeData* copied = QApplication::clipboard()->mimeData();
  EXPECT_FALSE(copied->hasHtml());
  EXPECT_TRUE(copied->text().contains("350 Ω × 174.65 kΩ"));
  EXPECT_TRUE(copied->text().contains("µm/m"));
  EXPECT_FALSE(copied->text().contains(QChar(0x2060)));
}

TEST_F(Working, NamesOfAnyKindAreShownAsTheyAre) {
  core::Channel channel = *session.channel();
  channel.name = "<i>TP</i>";
  channel.setup.shunts[channel.setup.sequence[1].closed[0]].name = "<b>R</b>&amp;";
  session.editChannel("Rename", channel);
  EXPECT_TRUE(shown().contains("Shunt <b>R</b>&amp;"));
  EXPECT_TRUE(title().startsWith("<i>TP</i>"));
  EXPECT_EQ(find<QLabel>("workingTitle")->textFormat(), Qt::PlainText);
}

TEST_F(Working, SaysWhatToDoWhenThereIsNothingToWorkOut) {
  session.selectStep(std::nullopt);
  EXPECT_TRUE(message().startsWith("No step is chosen.")) << message();
  EXPECT_FALSE(find<WorkingText>("workingText")->isVisible());
  EXPECT_FALSE(find<QToolButton>("copyWorking")->isEnabled());
  find<QToolButton>("workingAfter")->click();
  EXPECT_EQ(step(), 0u);
  EXPECT_TRUE(find<WorkingText>("workingText")->isVisible());

  core::Channel bad = *session.channel();
  bad.setup.bridge.arms[2] = core::Resistance(0);
  session.editChannel("Change arm", bad);
  EXPECT_TRUE(message().startsWith("Cannot be predicted. arm 3")) << message();

  core::Channel empty = bad;
  empty.checks.clear();
  empty.setup.sequence.clear();
  session.editChannel("Delete steps", empty);
  EXPECT_TRUE(message().contains("no steps yet")) << message();

  session.reset({});
  EXPECT_TRUE(message().startsWith("No channel yet.")) << message();
}

TEST_F(Working, ClosedCheckWithFewerStepsSaysSo) {
  core::Channel channel = *session.channel();
  core::Setup kept = channel.setup;
  kept.sequence.resize(3);
  channel.checks[0].readings.resize(3);
  channel.checks[0].closedWith = std::make_shared<const core::Setup>(kept);
  session.editChannel("Close check", channel);
  session.selectStep(6);
  EXPECT_TRUE(message().startsWith("The closed check does not have this step")) << message();
  find<QToolButton>("workingBefore")->click();
  EXPECT_EQ(step(), 2u);
  EXPECT_TRUE(message().isEmpty()) << message();
}

TEST_F(Working, WorksNothingOutWhileItIsHidden) {
  const QString before = shown();
  panel.hide();
  session.selectStep(3);
  EXPECT_EQ(shown(), before);
  panel.show();
  EXPECT_NE(shown(), before);
}

TEST_F(Working, TakesTheColoursOfThePalette) {
  panel.setPalette(darkPalette());
  auto* text = find<WorkingText>("workingText");
  QTextCursor cursor = text->document()->find("right across");
  ASSERT_FALSE(cursor.isNull());
  EXPECT_EQ(cursor.charFormat().foreground().color(), coloursFor(darkPalette()).quiet);
}

TEST_F(Working, StandsInColumnsAndNothingIsCutOff) {
  auto* text = find<WorkingText>("workingText");
  EXPECT_TRUE(text->inColumns());
  EXPECT_LE(text->document()->size().width(), text->viewport()->width());
  panel.resize(490, 700);
  QCoreApplication::processEvents();
  EXPECT_FALSE(text->inColumns());
}

TEST_F(NarrowWorking, StandsStackedAndNothingIsCutOff) {
  auto* text = find<WorkingText>("workingText");
  QCoreApplication::processEvents();
  EXPECT_FALSE(text->inColumns());
  EXPECT_LE(text->document()->size().width(), text->viewport()->width());
  EXPECT_TRUE(shown().contains("= 350 Ω × 174.65 kΩ / (350 Ω + 174.65 kΩ)\n")) << shown().left(600);
  EXPECT_TRUE(shown().contains("Formula gives"));
}

}  // namespace ui

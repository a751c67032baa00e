// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/record/record_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QTimer>
#include <fstream>
#include <iterator>

#include "core/document/json_reader.h"
#include "core/record/fingerprint.h"
#include "core/record/revisions.h"
#include "ui/record/act_dialog.h"
#include "ui/record/saving.h"

namespace {

core::Document demo() {
  std::ifstream file(SHUNTWRIGHT_SOURCE_DIR "/examples/demo.bridgecal", std::ios::binary);
  return *core::readDocument(std::string(std::istreambuf_iterator<char>(file), {}));
}

/// Fills the dialog that comes next, as `person`, and presses its button.
void answerNext(const QString& person, const QString& words) {
  QTimer::singleShot(0, [person, words] {
    auto* dialog = qobject_cast<ui::ActDialog*>(QApplication::activeModalWidget());
    ASSERT_TRUE(dialog);
    dialog->findChild<QLineEdit*>("actPerson")->setText(person);
    dialog->findChild<QPlainTextEdit*>("actWords")->setPlainText(words);
    auto* done = dialog->findChild<QPushButton*>("actDone");
    EXPECT_TRUE(done->isEnabled());
    done->isEnabled() ? done->click() : dialog->reject();
  });
}

/// The same for a dialog that has something against it: returns what, and what stays in the dialog of the
/// words.
struct Objection {
  QString why, caution, words;
};
void objectNext(const QString& person, const QString& words, Objection& said) {
  QTimer::singleShot(0, [person, words, &said] {
    auto* dialog = qobject_cast<ui::ActDialog*>(QApplication::activeModalWidget());
    ASSERT_TRUE(dialog);
    dialog->findChild<QLineEdit*>("actPerson")->setText(person);
    dialog->findChild<QPlainTextEdit*>("actWords")->setPlainText(words);
    dialog->findChild<QPushButton*>("actDone")->click();
    if (!dialog->isVisible()) return;
    const auto* why = dialog->findChild<QLabel*>("actObjection");
    if (why->isVisible()) said.why = why->text();
    said.caution = dialog->findChild<QLabel*>("actCaution")->text();
    said.words = dialog->words();
    dialog->reject();
  });
}

class Record : public testing::Test {
 protected:
  Record() : session(demo()), page(session) {
    QObject::connect(&page, &ui::RecordPage::refused, [this](const QString& reason) { refused = reason; });
    page.resize(990, 740);
    page.show();
    EXPECT_TRUE(knows());
  }

  /// The fingerprint is worked out aside.
  bool knows() {
    return QTest::qWaitFor([this] { return !text("recordFingerprint").isEmpty(); }, 20'000);
  }
  QString text(const char* name) const { return page.findChild<QLabel*>(name)->text(); }
  QPushButton* button(const char* name) const { return page.findChild<QPushButton*>(name); }
  QTableWidget* table(const char* name) const { return page.findChild<QTableWidget*>(name); }

  ui::Session session;
  ui::RecordPage page;
  QString refused;
};

TEST_F(Record, SaysWhereItStandsAndWithWhichFingerprint) {
  EXPECT_TRUE(text("recordState").contains("Returned by R. Larch on 2026-05-13"));
  EXPECT_EQ(text("recordFingerprint").toStdString(), *core::fingerprintOf(session.document()));
  EXPECT_TRUE(button("recordSubmitButton")->isEnabled());
  EXPECT_FALSE(button("recordAcceptButton")->isEnabled());
  EXPECT_FALSE(button("recordWithdrawButton")->isEnabled());
}

TEST_F(Record, IsSubmittedAndWithdrawnEachInOneUndoStep) {
  answerNext("P. Heron", "");
  page.submit();
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(session.document().signOff.acts.back().stage, core::Stage::Submitted);
  ASSERT_TRUE(knows());
  EXPECT_TRUE(text("recordState").contains("Submitted for review by P. Heron"));
  EXPECT_EQ(ui::personName(), "P. Heron");
  Objection said;
  objectNext("R. Larch", "All plausible", said);
  page.accept();
  EXPECT_TRUE(said.why.contains("2 remarks are not settled")) << said.why.toStdString();
  EXPECT_EQ(said.words, "All plausible") << "nothing typed is lost";
  EXPECT_TRUE(said.caution.startsWith("2 channels fail: TP-02, ")) << said.caution.toStdString();
  answerNext("P. Heron", "");
  page.withdraw();
  EXPECT_EQ(session.document().signOff.acts.back().stage, core::Stage::Draft);
  session.history().undo();
  session.history().undo();
  EXPECT_EQ(session.document().signOff, demo().signOff);
}

TEST_F(Record, WarnsWhenTheContentChangedSince) {
  EXPECT_FALSE(page.findChild<QLabel*>("recordWarning")->isVisible());
  answerNext("P. Heron", "");
  page.submit();
  core::Document next = session.document();
  next.note += "!";
  session.edit("note", next);
  ASSERT_TRUE(knows());
  EXPECT_TRUE(page.findChild<QLabel*>("recordWarning")->isVisible());
  EXPECT_TRUE(text("recordState").contains("changed since"));
}

TEST_F(Record, WarnsOfAFileThatWasAlteredAndKeepsWarningAfterItWasSaved) {
  const auto* warning = page.findChild<QLabel*>("recordWarning");
  EXPECT_FALSE(warning->isVisible());
  core::Channel altered = *session.document().channels[0];
  altered.checks[0].readings[0]->mean = core::Reading(7);
  session.reset(core::withChannel(session.document(), 0, altered));  // as it is opened: not by an edit
  ASSERT_TRUE(knows());
  ASSERT_TRUE(warning->isVisible());
  EXPECT_TRUE(warning->text().contains("altered outside of the program since its last saving"));

  session.edit("Something", [&] {
    core::Document next = session.document();
    core::Channel renamed = *next.channels[1];
    renamed.name += " b";
    return core::withChannel(std::move(next), 1, std::move(renamed));
  }());
  const core::Document before = session.saved();
  const auto saved =
      core::withRevision(session.document(), &before, {"P. Heron", "2026-05-14T08:00:00Z", "1"});
  ASSERT_TRUE(saved);
  session.setSaved(saved->history);
  ASSERT_TRUE(knows());
  EXPECT_FALSE(warning->text().contains("since its last saving"));
  EXPECT_TRUE(warning->isVisible());
  EXPECT_TRUE(warning->text().contains(
      QString("Before entry %1 of the history").arg(static_cast<int>(saved->history.size()))));
}

TEST_F(Record, ARemarkIsPinnedToTheChosenStepAndSettled) {
  session.selectChannel(0);
  session.selectCheck(1);
  session.selectStep(3);
  const int before = table("recordRemarks")->rowCount();
  answerNext("P. Heron", "Fan <b>on</b>");
  page.addRemark();
  ASSERT_EQ(table("recordRemarks")->rowCount(), before + 1);
  EXPECT_EQ(session.history().undoText(), "Add remark");
  const core::Remark& remark = session.document().channels[0]->checks[1].remarks.back();
  EXPECT_EQ(remark.step, 3u);
  EXPECT_EQ(remark.person, "P. Heron");
  table("recordRemarks")->selectRow(0);
  EXPECT_EQ(table("recordRemarks")->item(0, 2)->text(), "4");
  EXPECT_EQ(table("recordRemarks")->item(0, 5)->text(), "Fan <b>on</b>");
  button("remarkSettle")->click();
  EXPECT_TRUE(session.document().channels[0]->checks[1].remarks.back().settled);
  EXPECT_EQ(button("remarkSettle")->text(), "Open again");
  button("remarkDelete")->click();
  EXPECT_EQ(table("recordRemarks")->rowCount(), before);
}

TEST_F(Record, RemarksOfOthersAreNotRewritten) {
  ui::rememberPerson("P. Heron");
  table("recordRemarks")->selectRow(0);
  button("remarkDelete")->click();
  EXPECT_TRUE(refused.contains("R. Larch wrote that remark"));
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Record, GoesToTheStepOfARemark) {
  int wanted = 0;
  QObject::connect(&page, &ui::RecordPage::viewsWanted, [&] { ++wanted; });
  table("recordRemarks")->selectRow(0);
  button("remarkGo")->click();
  EXPECT_EQ(wanted, 1);
  EXPECT_EQ(session.channel()->name, "TP-02");
  EXPECT_EQ(session.check()->name, "post-test");
  EXPECT_EQ(session.selection().step, 5u);
}

TEST_F(Record, ShowsTheHistoryNewestFirstAndTellsABrokenOne) {
  ASSERT_EQ(table("recordHistory")->rowCount(), 5);
  EXPECT_EQ(table("recordHistory")->item(0, 1)->text(), "R. Larch");
  table("recordHistory")->selectRow(4);
  EXPECT_TRUE(
      page.findChild<QPlainTextEdit*>("recordDetails")->toPlainText().contains("check pre-test added"));
  auto history = session.document().history;
  history[1].person = "somebody else";
  session.setSaved(history);
  EXPECT_TRUE(text("recordNoHistory").contains("does not hold together: entry 2"));
}

TEST(SavedHistory, OutlivesUndo) {
  ui::Session session(demo());
  core::Document next = session.document();
  next.note = "new";
  session.edit("note", next);
  const auto saved = core::withRevision(session.document(), &session.saved(), ui::savingNow());
  ASSERT_TRUE(saved);
  session.setSaved(saved->history);
  EXPECT_TRUE(session.history().isClean());
  session.history().undo();
  EXPECT_EQ(session.document().note, demo().note);
  EXPECT_EQ(session.document().history.size(), 6u);
  session.history().redo();
  EXPECT_EQ(session.document().history.size(), 6u);
}

}  // namespace

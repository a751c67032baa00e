// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAbstractSpinBox>
#include <QDirIterator>
#include <QFile>
#include <QLineEdit>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/apply_dialog.h"
#include "ui/campaign/copies_dialog.h"
#include "ui/campaign/edit_many_dialog.h"
#include "ui/campaign/import_dialog.h"
#include "ui/fields/number_edit.h"
#include "ui/main_window.h"
#include "ui/pattern/pattern_dialog.h"
#include "ui/recording/recording_dialog.h"
#include "ui/report/report_dialog.h"
#include "ui/search/search_dialog.h"
#include "ui/wire_dialog.h"

// One kind of field for numbers, wherever one looks.

namespace ui {
namespace {

/// Fields that would take numbers in another way: digits they know, the rest swallowed or rearranged.
QStringList strangersIn(const QWidget& form) {
  QStringList names;
  for (const auto* box : form.findChildren<QAbstractSpinBox*>()) names << box->objectName() + " spins";
  for (const auto* field : form.findChildren<QLineEdit*>())
    if (field->validator() || !field->inputMask().isEmpty()) names << field->objectName() + " swallows keys";
  return names;
}

class Everywhere : public testing::Test {
 protected:
  Everywhere() : session(sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1.001)})) {}

  void expectOneKind(const QWidget& form, int atLeast) {
    EXPECT_EQ(strangersIn(form), QStringList());
    EXPECT_GE(form.findChildren<NumberEdit*>().size(), atLeast) << "nothing was looked at";
  }

  QTemporaryDir folder;
  Session session;
};

TEST_F(Everywhere, AllPagesOfTheWindowHaveThatField) {
  MainWindow window(session);
  window.show();
  expectOneKind(window, 60);
}

TEST_F(Everywhere, AllDialogsHaveThatField) {
  expectOneKind(CopiesDialog(session), 1);
  expectOneKind(EditManyDialog(session, {0}), 1);
  expectOneKind(PatternDialog(session), 4);
  expectOneKind(ReportDialog(session, folder.filePath("a.pdf")), 1);
  expectOneKind(SearchDialog(session), 5);
  expectOneKind(RecordingDialog(session, folder.filePath("a.bridgecal")), 4);
  expectOneKind(WireDialog(core::Lead{}), 3);
  expectOneKind(ApplyDialog(session), 0);
  expectOneKind(ImportDialog(session), 0);
}

TEST_F(Everywhere, NoValueChangesUnderAWheelThatPassesBy) {
  MainWindow window(session);
  window.show();
  window.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  const core::Document before = session.document();
  for (auto* field : window.findChildren<NumberEdit*>()) {
    const QString text = field->text();
    const QPointF middle = field->rect().center();
    QWheelEvent wheel(middle, field->mapToGlobal(middle), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(field, &wheel);
    EXPECT_EQ(field->text(), text) << field->objectName();
  }
  EXPECT_EQ(session.document(), before);
}

TEST_F(Everywhere, EveryNumberOfTheWindowIsAcceptedAsItIsShown) {
  MainWindow window(session);
  window.show();
  for (const auto* field : window.findChildren<NumberEdit*>()) {
    EXPECT_TRUE(field->text().isEmpty() || field->isTaken())
        << field->objectName() << " shows " << field->text();
  }
}

TEST(Sources, NoOtherFieldForNumbersIsMade) {
  // What is built only on demand is seen here.
  static const QRegularExpression other(
      "\\b(QSpinBox|QDoubleSpinBox|setValidator|setInputMask|QInputDialog::get(Int|Double))\\b");
  int files = 0;
  for (QDirIterator all(SHUNTWRIGHT_SOURCE_DIR "/ui", {"*.cpp", "*.h"}, QDir::Files,
                        QDirIterator::Subdirectories);
       all.hasNext(); ++files) {
    QFile file(all.next());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto found = other.match(QString::fromUtf8(file.readAll()));
    EXPECT_FALSE(found.hasMatch()) << file.fileName() << ": " << found.captured();
  }
  EXPECT_GT(files, 300);
}

}  // namespace
}  // namespace ui

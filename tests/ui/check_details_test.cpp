// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTimer>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/check_bar.h"
#include "ui/text_form_dialog.h"

namespace ui {
namespace {

class CheckDetails : public testing::Test {
 protected:
  /// Opens the details and does `steps` with the dialog, which is closed afterwards whatever comes.
  template <class Steps>
  void inDialog(const Steps& steps) {
    QTimer::singleShot(0, [&] {
      auto* dialog = qobject_cast<TextFormDialog*>(QApplication::activeModalWidget());
      ASSERT_TRUE(dialog);
      steps(*dialog);
      if (dialog->isVisible()) dialog->reject();
    });
    bar.editDetails();
  }
  static void type(TextFormDialog& dialog, int line, const QString& text) {
    auto* edit = dialog.findChild<QLineEdit*>(QString("line%1").arg(line));
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, text);
  }
  static void pressOk(TextFormDialog& dialog) {
    QTest::mouseClick(dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok), Qt::LeftButton);
  }
  static QString objection(TextFormDialog& dialog) {
    auto* label = dialog.findChild<QLabel*>("formObjection");
    return label->isVisible() ? label->text() : QString();
  }
  enum Line { Name, Date, Person, Remark, Air, Humidity };

  Session session{sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1)})};
  CheckBar bar{session};
};

// A date that is none would hide that a resistor was overdue on that day.
TEST_F(CheckDetails, ADateThatIsNoDayIsRefusedAndEverythingElseStays) {
  inDialog([&](TextFormDialog& dialog) {
    type(dialog, Date, "2026-02-30");
    type(dialog, Person, "K. Moss");
    pressOk(dialog);
    ASSERT_TRUE(dialog.isVisible());
    EXPECT_EQ(objection(dialog), "“2026-02-30” is no day. Enter it as in 2026-11-25.");
    EXPECT_TRUE(session.check()->date.empty());
    type(dialog, Date, "2026-02-28");
    EXPECT_EQ(objection(dialog), "") << "gone as soon as something is changed";
    pressOk(dialog);
    EXPECT_FALSE(dialog.isVisible());
  });
  EXPECT_EQ(session.check()->date, "2026-02-28");
  EXPECT_EQ(session.check()->person, "K. Moss");
  session.history().undo();
  EXPECT_TRUE(session.check()->person.empty());
}

TEST_F(CheckDetails, AWrongNumberOrAMissingNameIsSaidInTheDialog) {
  inDialog([&](TextFormDialog& dialog) {
    type(dialog, Air, "warm");
    pressOk(dialog);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(objection(dialog).contains("warm")) << objection(dialog);
    type(dialog, Air, "21");
    dialog.findChild<QLineEdit*>("line0")->clear();
    pressOk(dialog);
    EXPECT_EQ(objection(dialog), "a check needs a name. Enter one.");
  });
  EXPECT_EQ(session.history().count(), 0) << "nothing was taken";
}

}  // namespace
}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/quantity_edit.h"

#include <gtest/gtest.h>

#include <QInputMethodEvent>
#include <QLocale>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/printing.h"

namespace ui {
namespace {

/// A resistance field that must be above zero, holding 350 ohm, with the keyboard.
class QuantityField : public testing::Test {
 protected:
  QuantityField() : edit(core::UnitFamily::Resistance) {
    edit.setAccessibleName("Arm 1");
    edit.setLeast(0, false);
    edit.setValue(350.0);
    edit.show();
    edit.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&edit));
    edit.setFocus();
    edit.selectAll();
  }

  void type(const QString& text) {
    // QTest::keyClicks aborts on letters such as the ohm sign; an input method commits any text.
    QInputMethodEvent event;
    event.setCommitString(text);
    QCoreApplication::sendEvent(&edit, &event);
    QTest::keyClick(&edit, Qt::Key_Return);
  }

  QuantityEdit edit;
};

TEST_F(QuantityField, TakesTheTradesNotation) {
  QSignalSpy edited(&edit, &QuantityEdit::valueEdited);
  for (const auto& [text, ohm] :
       {std::pair("174.65k", 174650.0), {"59k9", 59900.0}, {"120 Ω", 120.0}, {"1,5 kΩ", 1500.0}}) {
    edit.selectAll();
    type(text);
    ASSERT_FALSE(edited.isEmpty()) << text;
    EXPECT_EQ(edited.takeLast().at(0).toDouble(), ohm) << text;
  }
  EXPECT_EQ(edit.text(), "1.5 kΩ");
}

TEST_F(QuantityField, RefusesNonsenseKeepsTheTextAndSaysWhy) {
  QSignalSpy edited(&edit, &QuantityEdit::valueEdited);
  QSignalSpy refused(&edit, &QuantityEdit::refused);
  type("1,234.5");
  EXPECT_TRUE(edited.isEmpty());
  EXPECT_TRUE(edit.isRefused());
  EXPECT_TRUE(edit.echo().contains("1,234.5")) << edit.echo();
  EXPECT_TRUE(refused.isEmpty()) << "told beside the field";
  EXPECT_EQ(edit.text(), "1,234.5");
  QTest::keyClick(&edit, Qt::Key_Escape);
  EXPECT_EQ(edit.text(), "350 Ω");
  EXPECT_FALSE(edit.isRefused());
}

TEST_F(QuantityField, ARefusalIsToldElsewhereWhileTheFieldIsNotOnView) {
  QSignalSpy refused(&edit, &QuantityEdit::refused);
  edit.hide();
  edit.setText("1,234.5");
  EXPECT_FALSE(edit.isReady());
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused.at(0).at(0).toString().startsWith("Arm 1:"));
}

TEST_F(QuantityField, RefusesZeroAndNegativeResistance) {
  QSignalSpy edited(&edit, &QuantityEdit::valueEdited);
  for (const char* text : {"0", "-350"}) {
    edit.selectAll();
    type(text);
    EXPECT_TRUE(edited.isEmpty()) << text;
    EXPECT_TRUE(edit.isRefused()) << text;
  }
}

TEST_F(QuantityField, LeavingWithoutTypingChangesNothing) {
  QSignalSpy edited(&edit, &QuantityEdit::valueEdited);
  edit.clearFocus();
  EXPECT_TRUE(edited.isEmpty());
}

TEST_F(QuantityField, AValueSetWhileTypingDoesNotDisturbTheTyping) {
  QTest::keyClicks(&edit, "12");
  edit.setValue(350.0);
  EXPECT_EQ(edit.text(), "12");
}

TEST(QuantityText, ShowsTheUsersDecimalMarkAndReadsItBack) {
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  EXPECT_EQ(quantityText(174650.0, core::UnitFamily::Resistance), "174,65 kΩ");
  const auto back = core::parseQuantity("174,65 kΩ", core::UnitFamily::Resistance);
  ASSERT_TRUE(back);
  EXPECT_EQ(*back, 174650.0);
  QLocale::setDefault(before);
}

}  // namespace
}  // namespace ui

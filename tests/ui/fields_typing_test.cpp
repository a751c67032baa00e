// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QHBoxLayout>
#include <QInputMethodEvent>
#include <QLabel>
#include <QSignalSpy>
#include <QStandardItemModel>
#include <QTableView>
#include <QTest>
#include <QVBoxLayout>
#include <QWheelEvent>

#include "tests/support/printing.h"
#include "ui/choice_delegates.h"
#include "ui/fields/cell_number.h"
#include "ui/fields/count_edit.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// A form of a resistance, a count and another field, as a user meets them.
class Fields : public testing::Test {
 protected:
  Fields() {
    auto* column = new QVBoxLayout(&form);
    resistance.setAccessibleName("Arm 1");
    resistance.setAccessibleDescription("of the bridge");
    resistance.setLeast(0, false);
    resistance.setGreatest(1e6);
    resistance.setValue(350.0);
    count.setAccessibleName("Repeats");
    count.setRange(1, 100);
    count.setValue(10);
    other.setText("another field");
    column->addWidget(&resistance);
    column->addWidget(&count);
    column->addWidget(&other);
    column->addStretch();
    form.resize(500, 300);
    form.show();
    form.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&form));
    resistance.setFocus();
    resistance.selectAll();
  }

  /// Any text: keyClicks takes few letters beyond ASCII.
  void type(QWidget& field, const QString& text) {
    QInputMethodEvent event;
    event.setCommitString(text);
    QCoreApplication::sendEvent(&field, &event);
  }
  QLabel* sheet() const {
    for (auto* label : form.findChildren<QLabel*>("fieldEcho"))
      if (label->isVisible()) return label;
    return nullptr;
  }
  QString sheetText() const { return sheet() ? sheet()->text() : QString(); }
  QRect inForm(const QWidget& widget) const { return {widget.mapTo(&form, QPoint()), widget.size()}; }
  void put(int cursor) {
    resistance.deselect();
    resistance.setCursorPosition(cursor);
  }
  void press(Qt::Key key, int times = 1) {
    for (; times > 0; --times) QTest::keyClick(QApplication::focusWidget(), key);
  }

  QWidget form;
  QuantityEdit resistance{core::UnitFamily::Resistance};
  CountEdit count;
  QLineEdit other;
};

TEST_F(Fields, SayWhileTypingHowTheTextIsUnderstood) {
  EXPECT_FALSE(sheet());
  QTest::keyClicks(&resistance, "59k9");
  EXPECT_EQ(sheetText(), QString("= 59.9 kΩ = 59\u202F900 Ω"));
  QTest::keyClicks(&resistance, "k");
  EXPECT_TRUE(sheetText().contains("something behind the resistance")) << sheetText().toStdString();
  press(Qt::Key_Backspace);
  press(Qt::Key_Return);
  EXPECT_EQ(resistance.text(), "59.9 kΩ");
  EXPECT_FALSE(sheet()) << "what is taken needs no more words";
}

TEST_F(Fields, SayItToScreenReadersWhenTheTypingPauses) {
  const auto described = [&] {
    return QAccessible::queryAccessibleInterface(&resistance)->text(QAccessible::Description);
  };
  QTest::keyClicks(&resistance, "120");
  EXPECT_EQ(described(), "of the bridge") << "not into the typing";
  EXPECT_TRUE(QTest::qWaitFor([&] { return described() == "= 120 Ω"; }, 3000)) << described().toStdString();
  press(Qt::Key_Return);
  EXPECT_EQ(described(), "of the bridge");
}

/// The lower one was refused first: the words of the upper one come to where those of the lower one are.
TEST_F(Fields, TheWordsOfTwoRefusedFieldsDoNotCoverEachOther) {
  for (const int width : {240, 320, 400, 500}) {
    SCOPED_TRACE(width);
    form.resize(width, 300);
    count.setFocus();
    count.selectAll();
    QTest::keyClicks(&count, "1000");
    press(Qt::Key_Return);
    resistance.setFocus();
    resistance.selectAll();
    QTest::keyClicks(&resistance, "1 sheep");
    press(Qt::Key_Return);
    QCoreApplication::processEvents();
    QList<QRect> sheets;
    for (const auto* label : form.findChildren<QLabel*>("fieldEcho"))
      if (label->isVisible()) sheets << label->geometry();
    ASSERT_EQ(sheets.size(), 2);
    EXPECT_FALSE(sheets[0].intersects(sheets[1]));
    for (const QRect& one : sheets) EXPECT_TRUE(form.rect().contains(one));
  }
}

TEST_F(Fields, TheWordsCoverNeitherTheFieldNorMoveTheLayout) {
  const QRect before = inForm(count);
  QTest::keyClicks(&resistance, "120");
  ASSERT_TRUE(sheet());
  EXPECT_FALSE(sheet()->geometry().intersects(inForm(resistance)));
  EXPECT_TRUE(form.rect().contains(sheet()->geometry()));
  EXPECT_EQ(inForm(count), before);
  EXPECT_TRUE(sheet()->testAttribute(Qt::WA_TransparentForMouseEvents));
}

TEST_F(Fields, ARefusedTextStaysInItsFrameWithItsReasonAndWhatStillHolds) {
  QSignalSpy refused(&resistance, &QuantityEdit::refused), edited(&resistance, &QuantityEdit::valueEdited);
  QTest::keyClicks(&resistance, "1,234.5");
  press(Qt::Key_Tab);
  EXPECT_TRUE(edited.isEmpty());
  EXPECT_TRUE(refused.isEmpty()) << "told beside the field, and so nowhere else";
  EXPECT_EQ(resistance.text(), "1,234.5");
  EXPECT_TRUE(resistance.isRefused());
  for (const QString& words : {sheetText(), resistance.accessibleDescription()}) {
    EXPECT_TRUE(words.contains("both a point and a comma")) << words.toStdString();
    EXPECT_TRUE(words.contains("Write 1234.5")) << words.toStdString();
    EXPECT_TRUE(words.contains("Still 350 Ω.")) << words.toStdString();
  }
  // The next field has the keyboard: its text must be seen.
  QTest::qWait(0);
  ASSERT_TRUE(count.hasFocus());
  ASSERT_TRUE(sheet());
  EXPECT_FALSE(sheet()->geometry().intersects(inForm(count)));
  EXPECT_TRUE(sheetText().startsWith("Arm 1: ")) << "away from the field it tells whose words these are";
  // The frame is painted in the colour of a failure.
  const QColor frame = resistance.grab().toImage().pixelColor(resistance.width() / 2, 0);
  EXPECT_EQ(frame.name(), coloursFor(resistance.palette()).fail.name());
}

TEST_F(Fields, EscapeOrLeavingTwiceBringsTheLastValueBack) {
  QSignalSpy refused(&resistance, &QuantityEdit::refused);
  QTest::keyClicks(&resistance, "12x");
  press(Qt::Key_Tab);
  ASSERT_TRUE(resistance.isRefused());
  resistance.setFocus();
  press(Qt::Key_Tab);
  EXPECT_FALSE(resistance.isRefused());
  EXPECT_EQ(resistance.text(), "350 Ω");
  EXPECT_TRUE(refused.last().at(0).toString().contains("12x was not taken: still 350 Ω"))
      << refused.last().at(0).toString().toStdString();
  EXPECT_FALSE(sheet());
  EXPECT_EQ(resistance.accessibleDescription(), "of the bridge");

  resistance.setFocus();
  resistance.selectAll();
  QTest::keyClicks(&resistance, "12x");
  press(Qt::Key_Return);
  ASSERT_TRUE(resistance.isRefused());
  press(Qt::Key_Escape);
  EXPECT_EQ(resistance.text(), "350 Ω");
  EXPECT_FALSE(resistance.isRefused());
}

TEST_F(Fields, WhoComesBackToMendMayLeaveASecondTime) {
  QTest::keyClicks(&resistance, "12x");
  press(Qt::Key_Tab);
  resistance.setFocus();
  resistance.end(false);
  press(Qt::Key_Backspace);
  EXPECT_FALSE(resistance.isRefused());
  press(Qt::Key_Tab);
  EXPECT_EQ(resistance.text(), "12 Ω");
}

TEST_F(Fields, LimitsAreToldWithTheirNumber) {
  QTest::keyClicks(&resistance, "2M");
  EXPECT_TRUE(sheetText().contains("too large")) << sheetText().toStdString();
  EXPECT_TRUE(sheetText().contains("Enter at most 1 MΩ")) << sheetText().toStdString();
}

TEST_F(Fields, ArrowsStepTheDigitLeftOfTheCursor) {
  put(2);  // 35|0 Ω
  press(Qt::Key_Up);
  EXPECT_EQ(resistance.text(), "360 Ω");
  EXPECT_EQ(resistance.cursorPosition(), 2);
  press(Qt::Key_Down, 2);
  EXPECT_EQ(resistance.text(), "340 Ω");
  press(Qt::Key_PageUp);
  EXPECT_EQ(resistance.text(), "440 Ω");
  put(5);  // behind the unit: the last digit
  press(Qt::Key_Up);
  EXPECT_EQ(resistance.text(), "441 Ω");
  EXPECT_EQ(sheetText(), "= 441 Ω");
}

TEST_F(Fields, ABurstOfStepsIsOneChangeAndEscapeGivesBack) {
  QSignalSpy edited(&resistance, &QuantityEdit::valueEdited);
  put(3);
  press(Qt::Key_Up, 7);
  EXPECT_EQ(resistance.text(), "357 Ω");
  EXPECT_TRUE(edited.isEmpty());
  press(Qt::Key_Tab);
  ASSERT_EQ(edited.count(), 1);
  EXPECT_EQ(edited.at(0).at(0).toDouble(), 357.0);

  resistance.setFocus();
  press(Qt::Key_Up, 3);
  press(Qt::Key_Escape);
  EXPECT_EQ(resistance.text(), "357 Ω");
  press(Qt::Key_Tab);
  EXPECT_EQ(edited.count(), 1);
}

TEST_F(Fields, StepsCarryExactlyInDecimal) {
  resistance.selectAll();
  QTest::keyClicks(&resistance, "0.1");
  press(Qt::Key_Up, 2);
  EXPECT_EQ(resistance.text(), "0.3");  // 0.1 + 0.2 in doubles is 0.30000000000000004
  QSignalSpy edited(&resistance, &QuantityEdit::valueEdited);
  press(Qt::Key_Return);
  ASSERT_EQ(edited.count(), 1);
  EXPECT_EQ(edited.at(0).at(0).toDouble(), 0.3);
}

TEST_F(Fields, StepsWorkOnLetterCodesAndStopAtTheLimits) {
  resistance.selectAll();
  QTest::keyClicks(&resistance, "4k9");
  press(Qt::Key_Up);
  EXPECT_EQ(resistance.text(), "5k0");
  resistance.selectAll();
  QTest::keyClicks(&resistance, "3");
  press(Qt::Key_PageDown);
  EXPECT_EQ(resistance.text(), "1") << "as far as the limit lets it";
  press(Qt::Key_Down);
  EXPECT_EQ(resistance.text(), "1");
  EXPECT_TRUE(sheetText().contains("Enter more than 0 Ω")) << sheetText().toStdString();
}

TEST_F(Fields, TheSameDigitBringsAShorterNumberBack) {
  resistance.selectAll();
  QTest::keyClicks(&resistance, "200");
  put(1);
  press(Qt::Key_Down);
  EXPECT_EQ(resistance.text(), "100");
  press(Qt::Key_Up, 9);
  EXPECT_EQ(resistance.text(), "1000");
  press(Qt::Key_Down);
  EXPECT_EQ(resistance.text(), "900");
  press(Qt::Key_Up);
  EXPECT_EQ(resistance.text(), "1000") << "still the hundreds";
}

TEST_F(Fields, TheWheelOverAFieldChangesNothing) {
  for (QWidget* field : {static_cast<QWidget*>(&resistance), static_cast<QWidget*>(&count)}) {
    const QPointF middle = field->rect().center();
    QWheelEvent wheel(middle, field->mapToGlobal(middle), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(field, &wheel);
  }
  EXPECT_EQ(resistance.text(), "350 Ω");
  EXPECT_EQ(count.text(), "10");
}

TEST_F(Fields, CountsAreTypedSteppedAndRefusedAlike) {
  QSignalSpy changed(&count, &CountEdit::valueChanged);
  count.setFocus();
  count.selectAll();
  QTest::keyClicks(&count, "12");
  EXPECT_EQ(count.value(), 12) << "taken while it is typed";
  press(Qt::Key_Up);
  EXPECT_EQ(count.value(), 13);
  press(Qt::Key_PageUp);
  EXPECT_EQ(count.value(), 23);
  count.selectAll();
  QTest::keyClicks(&count, "1.5");
  press(Qt::Key_Return);
  EXPECT_TRUE(count.isRefused());
  EXPECT_TRUE(sheetText().contains("not a whole number")) << sheetText().toStdString();
  press(Qt::Key_Escape);
  EXPECT_EQ(count.text(), "10") << "as it was when the keyboard came";
  EXPECT_EQ(count.value(), 10);
  count.selectAll();
  QTest::keyClicks(&count, "101");
  press(Qt::Key_Return);
  EXPECT_TRUE(count.isRefused());
  EXPECT_TRUE(sheetText().contains("from 1 to 100")) << sheetText().toStdString();
}

TEST_F(Fields, TheSignsOfAllCountsAreTheSamePictures) {
  // Qt keeps a name of each picture that was shown for as long as the program runs.
  const CountEdit one, other;
  const auto keyOf = [](const CountEdit& field, const char* sign) {
    return field.findChild<QAction*>(sign)->icon().cacheKey();
  };
  EXPECT_EQ(keyOf(one, "countMore"), keyOf(other, "countMore"));
  EXPECT_EQ(keyOf(one, "countFewer"), keyOf(other, "countFewer"));
  EXPECT_NE(keyOf(one, "countMore"), keyOf(one, "countFewer"));
}

TEST_F(Fields, ACountHasAWordForItsLeastAndWaitsWhenAskedTo) {
  CountEdit line(&form);
  line.setRange(0, 1000000);
  line.setLeastWord("none");
  line.setWaitsForEnter(true);
  line.setValue(3);
  line.show();
  QSignalSpy changed(&line, &CountEdit::valueChanged);
  line.setFocus();
  line.selectAll();
  QTest::keyClicks(&line, "12");
  EXPECT_EQ(changed.count(), 0) << "typing 12 is not read as 1";
  press(Qt::Key_Return);
  ASSERT_EQ(changed.count(), 1);
  EXPECT_EQ(line.value(), 12);
  line.selectAll();
  press(Qt::Key_Delete);
  press(Qt::Key_Return);
  EXPECT_EQ(line.value(), 0);
  EXPECT_EQ(line.text(), "none");
}

TEST_F(Fields, TimesStepThePartTheCursorIsIn) {
  QuantityEdit time(core::UnitFamily::Duration, &form);
  time.setLeast(0, true);
  time.show();
  time.setFocus();
  QTest::keyClicks(&time, "1 min 30 s");
  press(Qt::Key_Up);
  EXPECT_EQ(time.text(), "1 min 31 s");
  time.setCursorPosition(1);
  press(Qt::Key_Up);
  EXPECT_EQ(time.text(), "2 min 31 s");
  EXPECT_TRUE(sheetText().contains("= 151 s")) << sheetText().toStdString();
}

TEST_F(Fields, AnEmptyFieldLeavesTheKeysToThePage) {
  QuantityEdit empty(core::UnitFamily::Output, &form);
  empty.show();
  empty.setFocus();
  QKeyEvent key(QEvent::KeyPress, Qt::Key_PageUp, Qt::NoModifier);
  key.setAccepted(true);
  QCoreApplication::sendEvent(&empty, &key);
  EXPECT_FALSE(key.isAccepted());
  type(empty, "1");
  key.setAccepted(true);
  QCoreApplication::sendEvent(&empty, &key);
  EXPECT_TRUE(key.isAccepted());
  EXPECT_EQ(empty.text(), "11");
}

TEST_F(Fields, AListStepsTheNumberTheCursorIsIn) {
  attachNumberList(&other, [] { return CellNumber{core::UnitFamily::Strain, {}}; });
  other.setText("1000; 2000; 3000");
  other.setFocus();
  other.setCursorPosition(8);  // 1000; 20|00; 3000
  press(Qt::Key_Up);
  EXPECT_EQ(other.text(), "1000; 2100; 3000");
  EXPECT_EQ(other.cursorPosition(), 8);
  EXPECT_TRUE(sheetText().contains("1000 µm/m; 2100 µm/m; 3000 µm/m")) << sheetText().toStdString();
}

TEST_F(Fields, OutputsShowTheRatioAndTheUsersMark) {
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  QuantityEdit output(core::UnitFamily::Output, &form);
  output.show();
  output.setFocus();
  type(output, "1.5");
  EXPECT_EQ(sheetText(), "= 1,5 mV/V = 0,0015 V/V");
  output.selectAll();
  type(output, "1.234");
  EXPECT_TRUE(sheetText().startsWith("= 1,234 mV/V")) << sheetText().toStdString();
  EXPECT_TRUE(sheetText().contains("(the point is the decimal mark)"))
      << "1.234 looks like a thousand to a German";
  output.selectAll();
  type(output, "−0,5");
  press(Qt::Key_Up);
  EXPECT_EQ(output.text(), "−0,4") << "mark and minus as they were typed";
  QLocale::setDefault(before);
}

TEST(CellNumbers, EditorsOfTablesSayAndStepTheSame) {
  QStandardItemModel model(2, 1);
  model.setData(model.index(0, 0), "350 Ω");
  model.setData(model.index(1, 0), "words");
  model.setData(model.index(0, 0), cellNumber(core::UnitFamily::Resistance), cellNumberRole);
  QTableView view;
  view.setModel(&model);
  view.setItemDelegate(new TypedDelegate(&view));
  view.resize(400, 300);
  view.show();
  view.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&view));
  view.setCurrentIndex(model.index(0, 0));
  view.edit(model.index(0, 0));
  auto* editor = view.viewport()->findChild<QLineEdit*>();
  ASSERT_TRUE(editor);
  editor->selectAll();
  QTest::keyClicks(editor, "4k9");
  auto* sheet = view.findChild<QLabel*>("fieldEcho");
  ASSERT_TRUE(sheet);
  EXPECT_EQ(sheet->text(), "= 4.9 kΩ = 4900 Ω");
  QTest::keyClick(editor, Qt::Key_Up);
  EXPECT_EQ(editor->text(), "5k0");
  EXPECT_EQ(view.currentIndex().row(), 0);
  QTest::keyClick(editor, Qt::Key_Return);
  EXPECT_TRUE(QTest::qWaitFor([&] { return model.index(0, 0).data().toString() == "5k0"; }));
  // Without an editor the arrows go from cell to cell, and other cells have no echo.
  QTest::keyClick(&view, Qt::Key_Down);
  EXPECT_EQ(view.currentIndex().row(), 1);
  view.edit(model.index(1, 0));
  editor = view.viewport()->findChild<QLineEdit*>();
  ASSERT_TRUE(editor);
  QTest::keyClicks(editor, "1");
  EXPECT_FALSE(view.findChild<QLabel*>("fieldEcho"));
}

}  // namespace
}  // namespace ui

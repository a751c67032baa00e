// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/edit_many_dialog.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

#include "tests/support/sample_channel.h"

namespace ui {
namespace edit_many_test {

core::Channel named(core::Channel channel, std::string name) {
  channel.name = std::move(name);
  return channel;
}

class EditMany : public testing::Test {
 protected:
  EditMany()
      : session(sample::documentOf({named(sample::withCheckReading(sample::nineStepChannel(), 1), "TP-01"),
                                    named(sample::nineStepChannel(), "TP-02"), named({}, "LC-01")})),
        dialog(session, {0, 1, 2}) {
    dialog.show();
  }
  template <class Widget>
  Widget* find(const char* name) {
    auto* widget = dialog.findChild<Widget*>(name);
    EXPECT_TRUE(widget) << name;
    return widget;
  }
  void choose(const char* what) {
    auto* box = find<QComboBox>("manyWhat");
    const int index = box->findText(what);
    ASSERT_GE(index, 0) << what;
    box->setCurrentIndex(index);
  }
  void type(const char* text) {
    auto* field = find<QLineEdit>("manyText");
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, text);
  }
  QString summary() { return find<QLabel>("manySummary")->text(); }
  bool says(const char* words) {
    return QTest::qWaitFor([&] { return summary() == words; });
  }
  QString row(int row) { return find<QTableWidget>("manyRows")->item(row, 1)->text(); }
  void accept() { QTest::mouseClick(find<QPushButton>("manyOk"), Qt::LeftButton); }
  const core::Channel& channel(std::size_t k) const { return *session.document().channels[k]; }

  Session session;
  EditManyDialog dialog;
};

TEST_F(EditMany, ChangesAllChosenChannelsInOneUndoStep) {
  choose("Gauge factor");
  type("2.15");
  ASSERT_TRUE(says("3 channels change.")) << summary().toStdString();
  accept();
  for (std::size_t k = 0; k < 3; ++k) EXPECT_EQ(channel(k).setup.bridge.gauge.factor, 2.15);
  EXPECT_EQ(session.history().undoText(), "Change Gauge factor in 3 channels");
  session.history().undo();
  EXPECT_EQ(channel(0).setup.bridge.gauge.factor, 2.0);
}

TEST_F(EditMany, SaysWhoRefusesAndWhy) {
  choose("Unit of the readings");
  find<QComboBox>("manyChoice")->setCurrentIndex(1);
  ASSERT_TRUE(says("2 channels change. 1 refuses.")) << summary().toStdString();
  EXPECT_EQ(find<QTableWidget>("manyRows")->item(0, 0)->text(), "TP-01");
  EXPECT_TRUE(row(0).startsWith("refused: ")) << row(0).toStdString();
  EXPECT_TRUE(row(0).contains("open check")) << row(0).toStdString();
  accept();
  EXPECT_EQ(channel(0).setup.instrument.unit, core::ReadingUnit::MicrometrePerMetre);
  EXPECT_EQ(channel(1).setup.instrument.unit, core::ReadingUnit::MillivoltPerVolt);
}

TEST_F(EditMany, TextThatIsNoQuantityIsRefusedInWords) {
  choose("Gauge resistance");
  EXPECT_TRUE(says("A value is needed."));
  EXPECT_FALSE(find<QPushButton>("manyOk")->isEnabled());
  type("soft");
  EXPECT_TRUE(QTest::qWaitFor([&] { return summary().contains("soft"); })) << summary().toStdString();
  EXPECT_FALSE(find<QPushButton>("manyOk")->isEnabled());
}

TEST_F(EditMany, ADueDateIsADayOfTheCalendar) {
  choose("Due date of the instrument");
  type("2027-02-30");
  EXPECT_TRUE(QTest::qWaitFor([&] { return summary().contains("“2027-02-30” is no day"); }))
      << summary().toStdString();
  EXPECT_FALSE(find<QPushButton>("manyOk")->isEnabled());
  type("2027-02-28");
  ASSERT_TRUE(says("3 channels change.")) << summary().toStdString();
  accept();
  EXPECT_EQ(channel(1).setup.identity.due, core::dateFromText("2027-02-28"));
}

TEST_F(EditMany, NamesByAPattern) {
  choose("Names by a pattern");
  type("WG-{nn}");
  ASSERT_TRUE(says("3 channels change.")) << summary().toStdString();
  accept();
  EXPECT_EQ(channel(0).name, "WG-01");
  EXPECT_EQ(channel(2).name, "WG-03");
}

TEST_F(EditMany, ReturnRightBehindTheLastLetterIsEnough) {
  choose("Group");
  type("tail");
  QTest::keyClick(find<QLineEdit>("manyText"), Qt::Key_Return);
  EXPECT_EQ(channel(0).group, "tail");
  EXPECT_EQ(channel(2).group, "tail");
  EXPECT_FALSE(dialog.isVisible());
}

TEST_F(EditMany, ClosesOpenChecksAndRemovesChannels) {
  choose("Close a check");
  ASSERT_TRUE(says("1 channel changes. 2 stay as they are.")) << summary().toStdString();
  choose("Remove the channels");
  ASSERT_TRUE(says("3 channels change.")) << summary().toStdString();
  accept();
  EXPECT_TRUE(session.document().channels.empty());
}

}  // namespace edit_many_test
}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAbstractItemModel>
#include <QAbstractItemView>
#include <QLabel>
#include <QTest>
#include <QToolButton>

#include "core/document/edits.h"
#include "tests/support/sample_channel.h"
#include "ui/locale.h"
#include "ui/main_window.h"
#include "ui/polarity/polarity_shown.h"
#include "ui/quantity_edit.h"
#include "ui/sequence_pane.h"
#include "ui/shunt_model.h"

// Words that German readers took for something else.

namespace ui {
namespace {

class GermanWords : public testing::Test {
 protected:
  GermanWords()
      : session(sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1)})),
        window(session) {
    window.resize(1280, 760);
    window.show();
  }

  const SpokenScope words{languageFor("de", true)};
  Session session;
  MainWindow window;
};

TEST_F(GermanWords, AClosedCheckIsOpenedAgain) {
  session.editChannel("Close", core::withCheckClosed(*session.channel(), 0));
  QTest::qWait(30);
  const auto* button = window.findChild<QToolButton*>("closeCheck");
  ASSERT_TRUE(button && button->isVisible());
  EXPECT_EQ(button->text(), "Wieder öffnen");
  EXPECT_GE(button->width(), button->sizeHint().width());
}

TEST_F(GermanWords, TheGuidedRunIsCalledAsInTheManual) {
  const auto* button = window.findChild<QToolButton*>("guidedRun");
  ASSERT_TRUE(button);
  EXPECT_EQ(button->text(), "Durchgang");
}

TEST_F(GermanWords, TheReturnLeadHasOneNameWhereverItIsShown) {
  const core::Bridge& bridge = session.channel()->setup.bridge;
  EXPECT_EQ(shortPointText(bridge, core::Node::Arm2Begin), "Rück");
  EXPECT_EQ(
      window.findChild<QWidget*>("lead" + QString::number(int(core::LeadRole::Return)))->accessibleName(),
      "Leitung Rück");
  EXPECT_TRUE(QString::fromStdString(core::pointName(bridge, core::Node::Arm2Begin)).endsWith("Rück"));
}

TEST_F(GermanWords, AnEndOfAnArmIsShownAndTakenInWords) {
  auto* model = window.findChild<SequencePane*>()->shunts().model();
  const QModelIndex from = model->index(0, ShuntModel::From);
  for (const char* typed : {"Anfang von Zweig 2", "arm 2 begin"}) {
    ASSERT_TRUE(model->setData(from, "P+"));
    EXPECT_TRUE(model->setData(from, typed)) << typed;
    EXPECT_EQ(session.channel()->setup.shunts[0].a, core::Node::Arm2Begin) << typed;
    EXPECT_EQ(from.data().toString(), "Anfang von Zweig 2") << typed;
  }
}

}  // namespace
}  // namespace ui

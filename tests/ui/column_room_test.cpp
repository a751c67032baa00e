// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/column_room.h"

#include <gtest/gtest.h>

#include <QHeaderView>
#include <QStandardItemModel>
#include <QTableView>
#include <QTest>

using ui::ColumnRoom;

TEST(ColumnRoom, SharesWhatIsLeftAmongTheColumnsThatTakeIt) {
  QStandardItemModel model(1, 4);
  QTableView view;
  view.setModel(&model);
  const ColumnRoom room(view, {1, 2});
  view.resize(900, 200);
  view.show();
  QTest::qWait(20);
  EXPECT_NEAR(view.columnWidth(1), view.columnWidth(2), 1);  // an odd pixel goes to one of them
  EXPECT_EQ(view.horizontalHeader()->length(), view.viewport()->width());
  view.setColumnHidden(2, true);
  view.resize(800, 200);
  QTest::qWait(20);
  EXPECT_EQ(view.horizontalHeader()->length(), view.viewport()->width());
}

TEST(ColumnRoom, OutlivesAModelThatLosesTheColumnsWhichTakeIt) {
  QStandardItemModel model(1, 4);
  QTableView view;
  view.setModel(&model);
  const ColumnRoom room(view, {3});
  view.resize(900, 200);
  view.show();
  QTest::qWait(20);
  model.setColumnCount(2);
  view.resize(700, 200);
  QTest::qWait(20);
  EXPECT_EQ(view.horizontalHeader()->count(), 2);
}

// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QPushButton>
#include <QRegularExpression>
#include <QTableWidget>
#include <QTest>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "tests/support/window_walk.h"
#include "ui/access/access.h"
#include "ui/access/picture_access.h"
#include "ui/access/twin_dialog.h"
#include "ui/bridge/bridge_canvas.h"
#include "ui/bridge/output_bar.h"
#include "ui/bridge_pane.h"
#include "ui/bridge_view.h"
#include "ui/main_window.h"
#include "ui/outcome/plot_frame.h"
#include "ui/polarity/polarity_picture.h"

// WCAG 2.2, 1.1.1: what a picture shows is there in words too, for keyboard and assistive tools.

namespace ui {
namespace {

class TwinTest : public testing::Test {
 protected:
  TwinTest()
      : session((installAccess(),
                 sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1.001)}))),
        window(session) {
    session.selectStep(1);
    window.resize(1280, 800);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
  }

  Session session;
  MainWindow window;
};

/// Texts of a column.
QStringList column(const TwinTable& table, int which) {
  QStringList texts;
  for (const QStringList& row : table.rows) texts << row[which];
  return texts;
}

/// Names of the classes of ui that paint themselves, apart from controls and from those that derive from a
/// twin.
QStringList classesThatPaint() {
  const QRegularExpression declared(
      "class (\\w+)(?: final)? : public (\\w+)(, public Twin)?[^{]*\\{((?:(?!\\nclass ).)*?)void "
      "paintEvent\\(",
      QRegularExpression::DotMatchesEverythingOption);
  const QRegularExpression needsNone(
      "^(QToolButton|QPushButton|QRadioButton|QCheckBox|QLabel|QLineEdit|Q\\w*View|QFocusFrame|BridgeCanvas|"
      "PlotFrame|"
      "\\w*Edit|\\w*Label|\\w*Delegate)$");
  // A line of text, a frame around one, and frames around cells of a table that says itself which were found.
  const QStringList noPictures{"LineLabel", "NoticeBar", "MatchMarks"};
  QStringList found;
  QDirIterator files(SHUNTWRIGHT_SOURCE_DIR "/ui", {"*.h"}, QDir::Files, QDirIterator::Subdirectories);
  while (files.hasNext()) {
    QFile file(files.next());
    if (!file.open(QIODevice::ReadOnly)) continue;
    for (auto match = declared.globalMatch(QString::fromUtf8(file.readAll())); match.hasNext();) {
      const auto one = match.next();
      if (one.captured(3).isEmpty() && !noPictures.contains(one.captured(1)) &&
          !needsNone.match(one.captured(2)).hasMatch())
        found << one.captured(1);
    }
  }
  return found;
}

TEST(Twins, WhatPaintsItselfHasATwin) {
  const QStringList without = classesThatPaint();
  EXPECT_TRUE(without.isEmpty()) << without.join(", ").toStdString() << ": derive from ui::Twin";
}

TEST_F(TwinTest, EveryPictureOnEveryPageIsNamedDescribedAndATable) {
  std::set<std::string> kinds;
  test::visitEveryPlace(window, [&](QWidget& place, const QString& how) {
    SCOPED_TRACE(how.toStdString());
    for (QWidget* widget : place.findChildren<QWidget*>()) {
      const auto* picture = dynamic_cast<const Twin*>(widget);
      if (!picture || !widget->isVisible()) continue;
      kinds.insert(widget->metaObject()->className());
      const std::string name = test::nameForPeople(widget).toStdString();
      EXPECT_FALSE(widget->accessibleName().isEmpty()) << name;
      const TwinTable table = picture->twin();
      for (const QStringList& row : table.rows) EXPECT_EQ(row.size(), table.columns.size()) << name;
      if (table.rows.isEmpty()) continue;  // nothing is drawn yet
      QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
      ASSERT_TRUE(face) << name;
      EXPECT_EQ(face->role(), QAccessible::Graphic) << name;
      EXPECT_FALSE(face->text(QAccessible::Name).isEmpty()) << name;
      EXPECT_FALSE(face->text(QAccessible::Description).isEmpty()) << name;
    }
  });
  EXPECT_GE(kinds.size(), 5U);
}

TEST_F(TwinTest, TheBridgeSaysItsPartsAndItsStep) {
  auto* pane = window.findChild<BridgePane*>();
  ASSERT_TRUE(pane);
  const BridgeCanvas* canvas = &pane->view();
  ASSERT_TRUE(canvas && canvas->picture());
  const TwinTable table = canvas->twin();
  const QString all = spreadsheetText(table);
  for (const char* part : {"arm 1", "arm 2", "arm 3", "arm 4"})
    EXPECT_EQ(column(table, 0).count(part), 1) << part;
  for (const core::Shunt& shunt : session.channel()->setup.shunts)
    EXPECT_TRUE(all.contains(QString::fromStdString(shunt.name))) << shunt.name;
  EXPECT_TRUE(all.contains(canvas->picture()->state.outcome));
  const auto* bar = window.findChild<OutputBar*>();
  ASSERT_TRUE(bar);
  EXPECT_TRUE(spreadsheetText(bar->twin()).contains(bar->text()));
}

TEST_F(TwinTest, TheMapHasEveryPairOfPointsOnce) {
  auto* pane = window.findChild<BridgePane*>();
  pane->showPage(BridgePane::Page::Polarity);
  const auto* picture = pane->findChild<PolarityPicture*>();
  ASSERT_TRUE(picture);
  const TwinTable table = picture->twin();
  std::set<std::pair<QString, QString>> pairs;
  std::set<QString> points;
  for (const QStringList& row : table.rows) {
    pairs.insert(std::minmax(row[0], row[1]));
    points.insert({row[0], row[1]});
  }
  EXPECT_EQ(pairs.size(), static_cast<std::size_t>(table.rows.size()));
  // Combinatorics: n (n - 1) / 2 pairs of n points.
  EXPECT_EQ(pairs.size(), points.size() * (points.size() - 1) / 2);
}

TEST_F(TwinTest, APlotSaysEachStep) {
  int plots = 0;
  for (const PlotFrame* plot : window.findChildren<PlotFrame*>()) {
    if (!plot->isVisible()) continue;
    ++plots;
    const TwinTable table = plot->twin();
    QStringList steps;
    for (std::size_t step = 1; step <= session.channel()->setup.sequence.size(); ++step)
      steps << QString::number(step);
    QStringList said = column(table, 0);
    said.removeDuplicates();
    for (const QString& step : steps) EXPECT_TRUE(said.contains(step)) << step.toStdString();
  }
  EXPECT_GE(plots, 1);
}

TEST_F(TwinTest, TheDialogShowsAndCopiesEachPicture) {
  TwinDialog dialog(window);
  dialog.show();
  auto* pictures = dialog.findChild<QComboBox*>("twinPicture");
  auto* shown = dialog.findChild<QTableWidget*>("twinTable");
  const QList<ShownTwin> twins = twinsIn(window);
  ASSERT_GE(twins.size(), 3);
  ASSERT_EQ(pictures->count(), twins.size());
  for (int k = 0; k < pictures->count(); ++k) {
    pictures->setCurrentIndex(k);
    const TwinTable table = dynamic_cast<const Twin*>(twins[k].picture.data())->twin();
    ASSERT_EQ(shown->rowCount(), table.rows.size());
    EXPECT_EQ(shown->item(0, 0)->text(), table.rows[0][0]);
    EXPECT_EQ(shown->accessibleName(), twins[k].name);
    dialog.findChild<QPushButton*>("twinCopy")->click();
    EXPECT_EQ(QApplication::clipboard()->text().count('\n'), table.rows.size() + 1) << "with its heading";
  }
}

TEST_F(TwinTest, ComboBoxesSayWhatTheyAreForAndWhatIsChosen) {
  int combos = 0;
  for (QComboBox* combo : window.findChildren<QComboBox*>()) {
    if (!combo->isVisible() || combo->count() == 0) continue;
    ++combos;
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(combo);
    const std::string name = test::nameForPeople(combo).toStdString();
    EXPECT_FALSE(face->text(QAccessible::Name).isEmpty()) << name;
    EXPECT_EQ(face->text(QAccessible::Value), combo->currentText()) << name;
    ASSERT_TRUE(face->textInterface()) << name;
    EXPECT_EQ(face->textInterface()->text(0, face->textInterface()->characterCount()), combo->currentText())
        << name;
  }
  EXPECT_GE(combos, 5);
}

}  // namespace
}  // namespace ui

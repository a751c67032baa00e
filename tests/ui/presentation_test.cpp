// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/present/presentation.h"

#include <gtest/gtest.h>

#include <QtCharts/QChart>
#include <QtCharts/QChartView>

#include <QAbstractScrollArea>
#include <QAction>
#include <QApplication>
#include <QGraphicsOpacityEffect>
#include <QGraphicsTextItem>
#include <QHeaderView>
#include <QImage>
#include <QLabel>
#include <QPointer>
#include <QScreen>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QWindow>

#include "tests/support/sample_channel.h"
#include "ui/bridge/bridge_canvas.h"
#include "ui/bridge/output_bar.h"
#include "ui/locale.h"
#include "ui/main_window.h"
#include "ui/polarity/polarity_picture.h"
#include "ui/sequence_model.h"
#include "ui/theme.h"

namespace ui {
namespace {

using View = Presentation::View;

core::Document checkedDocument() {
  return sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1.001)});
}

/// Real keys and clicks, sent to the window as the screen sends them.
class PresentationTest : public testing::Test {
 protected:
  explicit PresentationTest() : session(checkedDocument()) {
    session.selectStep(0);
    makeShown(View::Bridge);
  }
  void makeShown(View view) {
    show = std::make_unique<Presentation>(session, view);
    show->showFullScreen();
    show->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(show.get()));
  }
  void press(int key) { QTest::keyClick(show->windowHandle(), static_cast<Qt::Key>(key)); }
  QString text(const char* label) { return show->findChild<QLabel*>(label)->text(); }
  std::size_t step() { return session.selection().step.value_or(999); }

  Session session;
  std::unique_ptr<Presentation> show;
};

TEST_F(PresentationTest, KeysWalkThroughTheStepsAndTheSessionGoesAlong) {
  EXPECT_EQ(text("presentationStep"), "Step 1 of 9");
  std::size_t expected = 0;
  for (const int key : {Qt::Key_Right, Qt::Key_Down, Qt::Key_Space, Qt::Key_PageDown}) {
    press(key);
    EXPECT_EQ(step(), ++expected) << key;
    EXPECT_EQ(text("presentationStep"), QString("Step %1 of 9").arg(expected + 1));
  }
  for (const int key : {Qt::Key_Left, Qt::Key_Up, Qt::Key_PageUp}) {
    press(key);
    EXPECT_EQ(step(), --expected) << key;
  }
  press(Qt::Key_End);
  EXPECT_EQ(step(), 8u);
  press(Qt::Key_Right);
  EXPECT_EQ(step(), 8u) << "the last step is not followed by the first";
  press(Qt::Key_Home);
  EXPECT_EQ(step(), 0u);
  press(Qt::Key_Left);
  EXPECT_EQ(step(), 0u);
}

TEST_F(PresentationTest, WithoutAStepTheFirstKeyChoosesOne) {
  session.selectStep(std::nullopt);
  EXPECT_EQ(text("presentationStep"), "No step");
  press(Qt::Key_Right);
  EXPECT_EQ(step(), 0u);
  session.selectStep(std::nullopt);
  press(Qt::Key_Left);
  EXPECT_EQ(step(), 8u);
}

TEST_F(PresentationTest, AClickAnywhereGoesOn) {
  const QPoint middle = show->rect().center();
  QTest::mouseClick(show->windowHandle(), Qt::LeftButton, {}, middle);
  EXPECT_EQ(step(), 1u);
  QTest::mouseClick(show->windowHandle(), Qt::LeftButton, {}, {show->width() / 2, 20});
  EXPECT_EQ(step(), 2u);
  QTest::mouseClick(show->windowHandle(), Qt::RightButton, {}, middle);
  EXPECT_EQ(step(), 2u);
}

TEST_F(PresentationTest, TitleSentenceAndOutputFollowTheStep) {
  press(Qt::Key_Right);
  // The second step closes the largest resistor over the completion arm 2: positive (core/circuit/node.h).
  EXPECT_TRUE(text("presentationTitle").contains("closed")) << text("presentationTitle").toStdString();
  EXPECT_TRUE(show->findChild<OutputBar*>()->text().contains("positive"));
  const QString second = text("presentationSentence");
  EXPECT_FALSE(second.isEmpty());
  EXPECT_TRUE(show->accessibleDescription().contains("Step 2 of 9"));
  press(Qt::Key_End);
  EXPECT_NE(text("presentationSentence"), second);
  EXPECT_TRUE(text("presentationTitle").contains("all shunts open"));
}

TEST_F(PresentationTest, DigitsChooseTheView) {
  const std::pair<int, View> keys[] = {{Qt::Key_3, View::Sequence},
                                       {Qt::Key_2, View::Polarity},
                                       {Qt::Key_4, View::Outcome},
                                       {Qt::Key_1, View::Bridge}};
  const char* names[] = {"presentationBridge", "polarityPanel", "sequenceBoard", "outcomeView"};
  for (const auto& [key, view] : keys) {
    press(key);
    EXPECT_EQ(show->view(), view);
    const auto* shown = show->findChild<QWidget*>(names[static_cast<int>(view)]);
    ASSERT_TRUE(shown) << names[static_cast<int>(view)];
    EXPECT_TRUE(shown->isVisible());
    press(Qt::Key_Right);
  }
  EXPECT_EQ(step(), 4u) << "each view goes from step to step";
}

TEST_F(PresentationTest, TheChosenStepOfTheSequenceIsLarger) {
  press(Qt::Key_3);
  press(Qt::Key_Right);
  const auto* board = show->findChild<QTableView*>("sequenceBoard");
  EXPECT_GT(board->rowHeight(1), board->rowHeight(0) + 2);
  press(Qt::Key_Right);
  EXPECT_GT(board->rowHeight(2), board->rowHeight(1) + 2);
  EXPECT_EQ(board->currentIndex().row(), 2);
  EXPECT_FALSE(board->isColumnHidden(SequenceModel::VerdictColumn)) << "a check is chosen";
  EXPECT_TRUE(board->isColumnHidden(SequenceModel::Settle));
  EXPECT_FALSE(board->isColumnHidden(SequenceModel::Change)) << "expected and change differ by the deviation";
  EXPECT_TRUE(board->isColumnHidden(SequenceModel::Measured));
}

TEST_F(PresentationTest, LettersAreLargerThanInTheWindowAndGrowWithPlus) {
  show->resize(1280, 800);
  // 1.6 to 2 times is what was asked for at the usual window's size.
  EXPECT_GE(show->letters(), 1.6);
  EXPECT_LE(show->letters(), 2.0);
  const QLabel* sentence = show->findChild<QLabel*>("presentationSentence");
  const double usual = sentence->font().pointSizeF();
  EXPECT_NEAR(usual, QApplication::font().pointSizeF() * show->letters(),
              0.26)  // Qt keeps quarters of a point
      << "plain words are as much larger";
  press(Qt::Key_Plus);
  EXPECT_GT(sentence->font().pointSizeF(), usual);
  press(Qt::Key_Minus);
  press(Qt::Key_Minus);
  EXPECT_LT(sentence->font().pointSizeF(), usual);
  for (int k = 0; k < 60; ++k) press(Qt::Key_Plus);
  EXPECT_LE(show->letters(), 4.0) << "there is an end to it";
  press(Qt::Key_0);
  EXPECT_NEAR(sentence->font().pointSizeF(), usual, 0.01);  // the same number by the same steps
}

TEST_F(PresentationTest, LargerLettersLeaveTheDrawingItsRoom) {
  for (const QSize screen : {QSize(1280, 800), QSize(1920, 1080)}) {
    show->resize(screen);
    press(Qt::Key_0);
    press(Qt::Key_Home);
    const auto* canvas = show->findChild<BridgeCanvas*>();
    QCoreApplication::processEvents();
    const QSize usual = canvas->size();
    EXPECT_GE(usual.height(), 7 * screen.height() / 10) << "the drawing is what it is about";
    for (int k = 0; k < 8; ++k) {
      press(k % 2 == 0 ? Qt::Key_Plus : Qt::Key_Right);
      QCoreApplication::processEvents();
      EXPECT_EQ(canvas->size(), usual) << k;
      EXPECT_EQ(show->size(), screen) << k;
    }
    const QLabel* sentence = show->findChild<QLabel*>("presentationSentence");
    EXPECT_GE(sentence->height(), sentence->heightForWidth(sentence->width())) << "all of it is seen";
    EXPECT_LE(sentence->geometry().bottom(), show->height());
  }
}

TEST_F(PresentationTest, ThePolarityPageHasNothingToPress) {
  press(Qt::Key_2);
  show->resize(1280, 800);
  QCoreApplication::processEvents();
  for (const char* name : {"polarityShunt", "polarityOhm", "polarityQuantity", "polaritySignal",
                           "polarityExcitation", "polarityGauges", "polaritySentence", "polarityAsTable"})
    EXPECT_FALSE(show->findChild<QWidget*>(name)->isVisible()) << name;
  EXPECT_TRUE(show->findChild<QWidget*>("polarityPicture")->isVisible());
  const auto* table = show->findChild<QTableView*>("polarityTable");
  for (const QHeaderView* header : {table->horizontalHeader(), table->verticalHeader()})
    EXPECT_NEAR(header->font().pointSizeF(), table->font().pointSizeF(), 0.26)  // quarters of a point
        << "at the first visit";
  if (!table->isVisible()) return;
  EXPECT_LE(table->horizontalHeader()->length(), table->viewport()->width());
  EXPECT_LE(table->verticalHeader()->length(), table->viewport()->height());
}

/// Pages that a trainer shows, at the size of a projector.
class PresentedPages : public testing::TestWithParam<std::tuple<const char*, QSize>> {
 protected:
  PresentedPages() : session(comparedDocument()) {
    session.selectCheck(1);
    session.compareWith(0);
    session.selectStep(4);
  }
  static core::Document comparedDocument() {
    core::Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.001);
    return sample::documentOf({sample::withCheckReading(std::move(channel), 1.04)});
  }
  void makeShown(View view) {
    show = std::make_unique<Presentation>(session, view);
    show->resize(std::get<1>(GetParam()));
    show->show();
    QTest::qWait(50);  // layouts settle from inside outwards
  }

  const SpokenScope words{languageFor(std::get<0>(GetParam()), true)};
  Session session;
  std::unique_ptr<Presentation> show;
};

TEST_P(PresentedPages, ThePolarityMapIsReadFromTheLastRow) {
  makeShown(View::Polarity);
  const auto* table = show->findChild<QTableView*>("polarityTable");
  const auto* picture = show->findChild<PolarityPicture*>();
  if (table->isVisible()) {
    for (const QHeaderView* header : {table->horizontalHeader(), table->verticalHeader()})
      for (const QWidget* drawn :
           {static_cast<const QWidget*>(header), static_cast<const QWidget*>(header->viewport())})
        EXPECT_NEAR(drawn->font().pointSizeF(), table->font().pointSizeF(), 0.26);  // quarters of a point
    const auto* corner = show->findChild<QLabel*>("polarityCorner");
    EXPECT_GE(corner->height(), corner->sizeHint().height()) << "two lines";
    EXPECT_GE(corner->width(), corner->sizeHint().width());
    EXPECT_LE(corner->height(), table->horizontalHeader()->height());
  }
  EXPECT_FALSE(picture->legend().what.contains("…")) << picture->legend().what.toStdString();
  // The diamond has its room beside the names and chips around it: a third of the picture each way.
  const PolarityLayout layout = picture->layoutNow();
  QRectF diamond;
  for (const PolaritySpot& spot : layout.spots) diamond |= QRectF(spot.at - QPointF(1, 1), QSizeF(2, 2));
  EXPECT_GE(diamond.width(), picture->width() / 3.0);
  EXPECT_GE(diamond.height(), picture->height() / 3.0);
  for (const PolarityChip& chip : picture->chipsNow())
    for (const PolaritySpot& spot : layout.spots)
      EXPECT_FALSE(chip.box.intersects(spot.nameBox)) << chip.text.toStdString();
}

TEST_P(PresentedPages, TheChartsOfAComparisonHaveRoomForTheirAxes) {
  makeShown(View::Outcome);
  int seen = 0;
  for (const auto* plot : show->findChildren<QChartView*>()) {
    if (!plot->isVisible()) continue;
    ++seen;
    EXPECT_GE(plot->chart()->plotArea().height(), show->height() / 7.0) << plot->objectName().toStdString();
    for (const QGraphicsItem* item : plot->scene()->items())
      if (const auto* text = qgraphicsitem_cast<const QGraphicsTextItem*>(item)) {
        EXPECT_FALSE(text->toPlainText().contains("...") || text->toPlainText().contains("…"))
            << plot->objectName().toStdString() << ": " << text->toPlainText().toStdString();
      }
  }
  EXPECT_GE(seen, 2);
}

TEST_P(PresentedPages, NothingHasToBeScrolledToBeRead) {
  makeShown(View::Outcome);
  for (const QAbstractScrollArea* area : show->findChildren<QAbstractScrollArea*>()) {
    if (!area->isVisible()) continue;
    EXPECT_EQ(area->verticalScrollBar()->maximum(), 0) << area->objectName().toStdString();
    EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0) << area->objectName().toStdString();
  }
}

INSTANTIATE_TEST_SUITE_P(Rooms, PresentedPages,
                         testing::Combine(testing::Values("en", "de"),
                                          testing::Values(QSize(1280, 800), QSize(1920, 1080))));

TEST_F(PresentationTest, TheBoardTakesTheColoursOfTheRoom) {
  press(Qt::Key_3);
  auto* board = show->findChild<QTableView*>("sequenceBoard");
  // Its delegate's option is what is painted.
  const auto painted = [&](int row, int column) {
    return board->grab().toImage().copy(
        board->visualRect(board->model()->index(row, column)).translated(board->viewport()->pos()));
  };
  const auto has = [](const QImage& image, const QColor& colour) {
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x)
        if (image.pixelColor(x, y) == colour) return true;
    return false;
  };
  if (!isDark(show->palette())) press(Qt::Key_D);
  const Colours dark = coloursFor(darkPalette()), light = coloursFor(lightPalette());
  press(Qt::Key_Home);
  QCoreApplication::processEvents();
  EXPECT_TRUE(has(painted(1, SequenceModel::PolarityColumn), dark.positive));
  EXPECT_FALSE(has(painted(1, SequenceModel::PolarityColumn), light.positive));
  EXPECT_TRUE(has(painted(1, SequenceModel::VerdictColumn), dark.pass));
  // Number and name stand apart by a letter at least.
  EXPECT_GE(board->columnWidth(SequenceModel::Number),
            board->fontMetrics().horizontalAdvance("9") + 2 * board->fontMetrics().averageCharWidth());
}

TEST_F(PresentationTest, LettersOfEachViewGrowAlike) {
  show->resize(1280, 800);
  for (const int key : {Qt::Key_2, Qt::Key_3, Qt::Key_4}) {
    press(key);
    for (const QLabel* label : show->findChildren<QLabel*>()) {
      if (!label->isVisible() || label->text().isEmpty() || label->objectName() == "presentationKeys")
        continue;
      // The smallest words of a view are 0.8 of the usual ones.
      EXPECT_GE(label->font().pointSizeF(), 0.78 * 1.6 * QApplication::font().pointSizeF())
          << label->objectName().toStdString() << ": " << label->text().toStdString();
    }
  }
}

TEST_F(PresentationTest, NothingIsEdited) {
  const core::Document before = session.document();
  for (const int view : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4}) {
    press(view);
    for (const int key :
         {Qt::Key_Tab, Qt::Key_Delete, Qt::Key_Return, Qt::Key_Backspace, Qt::Key_7, Qt::Key_X})
      press(key);
    for (int x = 40; x < show->width(); x += 160)
      for (int y = 40; y < show->height(); y += 120) {
        QTest::mouseClick(show->windowHandle(), Qt::LeftButton, {}, {x, y});
        QTest::mouseDClick(show->windowHandle(), Qt::LeftButton, {}, {x, y});
      }
    EXPECT_EQ(QApplication::focusWidget(), show.get());
    for (const QWidget* part : show->findChildren<QWidget*>())
      if (part->isVisible()) {
        EXPECT_EQ(part->focusPolicy(), Qt::NoFocus)
            << part->metaObject()->className() << " " << part->objectName().toStdString();
      }
  }
  EXPECT_EQ(session.document(), before);
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(PresentationTest, ColoursTurnHereAlone) {
  const QPalette application = QApplication::palette();
  const bool dark = isDark(show->palette());
  press(Qt::Key_D);
  EXPECT_NE(isDark(show->palette()), dark);
  EXPECT_NE(isDark(show->findChild<BridgeCanvas*>()->palette()), dark);
  press(Qt::Key_D);
  EXPECT_EQ(isDark(show->palette()), dark);
  EXPECT_EQ(QApplication::palette(), application);
}

TEST_F(PresentationTest, CurrentsAreSwitchedByAKey) {
  const auto* canvas = show->findChild<BridgeCanvas*>();
  const FlowStyle first = canvas->flowStyle();
  press(Qt::Key_C);
  EXPECT_NE(canvas->flowStyle(), first);
  press(Qt::Key_C);
  press(Qt::Key_C);
  EXPECT_EQ(canvas->flowStyle(), first);
}

TEST_F(PresentationTest, TheLineOfKeysFadesAndComesBack) {
  const auto* effect =
      static_cast<QGraphicsOpacityEffect*>(show->findChild<QLabel*>("presentationKeys")->graphicsEffect());
  EXPECT_EQ(effect->opacity(), 1.0);
  EXPECT_TRUE(QTest::qWaitFor([&] { return effect->opacity() == 0.0; }, 15000));
  press(Qt::Key_H);
  EXPECT_EQ(effect->opacity(), 1.0);
}

TEST_F(PresentationTest, AChannelThatGoesMeanwhileIsNoTrouble) {
  for (const int view : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4}) press(view);
  session.edit("Remove", core::withChannelRemoved(session.document(), 0));
  EXPECT_EQ(text("presentationStep"), "There is no channel.");
  for (const int key : {Qt::Key_Right, Qt::Key_End, Qt::Key_Left, Qt::Key_1, Qt::Key_3}) press(key);
  session.history().undo();
  EXPECT_TRUE(text("presentationStep").startsWith("Step") || text("presentationStep") == "No step");
}

/// From the window with F5, and back.
TEST(PresentationOfTheWindow, BeginsAndEndsByKeyAndLeavesTheWindowAsItWas) {
  for (const Qt::Key end : {Qt::Key_Escape, Qt::Key_F5}) {
    Session session(checkedDocument());
    MainWindow window(session);
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    session.selectStep(2);
    window.findChild<QAction*>("viewSequence")->trigger();
    QWidget* keyboard = QApplication::focusWidget();
    const QRect place = window.geometry();
    QTest::keyClick(window.windowHandle(), Qt::Key_F5);
    const QPointer<Presentation> show = window.findChild<Presentation*>();
    ASSERT_TRUE(show);
    ASSERT_TRUE(QTest::qWaitForWindowActive(show));
    EXPECT_EQ(show->view(), View::Sequence) << "what has the whole area is presented";
    EXPECT_TRUE(show->isFullScreen());
    EXPECT_EQ(show->screen(), window.screen());
    EXPECT_EQ(show->geometry(), window.screen()->geometry());
    QTest::keyClick(show->windowHandle(), Qt::Key_Right);
    QTest::keyClick(show->windowHandle(), end);
    EXPECT_TRUE(QTest::qWaitFor([&] { return show.isNull(); }, 2000));
    EXPECT_TRUE(window.isVisible());
    EXPECT_EQ(window.geometry(), place);
    EXPECT_EQ(session.selection().step, 3u);
    EXPECT_EQ(session.history().count(), 0);
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    EXPECT_EQ(QApplication::focusWidget(), keyboard);
  }
}

}  // namespace
}  // namespace ui

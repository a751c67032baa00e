// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/strip_view.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QCryptographicHash>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QToolBar>
#include <QToolButton>
#include <QWheelEvent>
#include <cmath>
#include <random>

#include "core/document/edits.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/access/focus_ring.h"
#include "ui/theme.h"

namespace ui {
namespace strip_view_test {

using core::SpanPlace;
constexpr std::size_t steps = 9;
constexpr double hold_s = 2, spacing_s = 0.01;
constexpr double spanBegin_s = 0.5, spanEnd_s = 1.8;  ///< of each step's span within its hold

SpanPlace step(std::size_t index) { return {SpanPlace::Kind::Step, index}; }
SpanPlace other(std::size_t index) { return {SpanPlace::Kind::Other, index}; }

/// Each step's expected reading, held, with noise of standard deviation 1 that differs by column.
std::vector<double> heldValues(const core::Channel& channel, unsigned seed, std::size_t perHold = 200) {
  const core::SetupPrediction prediction = core::predict(channel.setup);
  std::mt19937 random(seed);
  std::normal_distribution<double> noise;
  std::vector<double> values;
  for (std::size_t k = 0; k < steps; ++k)
    for (std::size_t sample = 0; sample < perHold; ++sample)
      values.push_back(prediction.steps[k]->reading.base() + noise(random));
  return values;
}

core::RecordingReference referenceTo(const std::string& column) {
  return {"run.csv", 1, std::string(64, '0'), column, {}};
}

/// A channel whose check has a span in each hold.
core::Channel channelNamed(const std::string& name) {
  core::Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.name = name;
  channel.checks[0].recording = referenceTo(name);
  for (std::size_t k = 0; k < steps; ++k) {
    const double begin_s =
        std::round((static_cast<double>(k) * hold_s + spanBegin_s) / spacing_s) * spacing_s;
    channel.checks[0].readings[k]->begin = core::Duration(begin_s);
    channel.checks[0].readings[k]->end = core::Duration(begin_s + spanEnd_s - spanBegin_s);
    channel.checks[0].readings[k]->uncertainty = core::Reading(0.1);
  }
  return channel;
}

std::shared_ptr<OpenRecording> recordingOf(const QString& path, std::size_t perHold = 200) {
  auto open = std::make_shared<OpenRecording>();
  open->path = path;
  open->recording.time = core::TimeAxis::even(0, hold_s / static_cast<double>(perHold), perHold * steps);
  for (const char* name : {"TP-01", "TP-02"})
    open->recording.columns.push_back({name, "", heldValues(channelNamed(name), name[4], perHold)});
  return open;
}

class StripViewTest : public testing::Test {
 protected:
  StripViewTest()
      : session(sample::documentOf({channelNamed("TP-01"), channelNamed("TP-02")})),
        view(session, store),
        refused(&view, &StripView::refused),
        chart(view.chart()) {
    store.setFolder(folder.path());
    open = recordingOf(store.pathOf(referenceTo("TP-01")));
    store.put(open);
    view.resize(1000, 300);
    view.show();
    view.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&view));
    view.setFocus();
    QApplication::processEvents();
  }

  const core::Check& check() const { return *session.check(); }
  int undoSteps() { return session.history().index(); }
  QPoint at(double time_s, std::size_t lane = 0) const {
    return {static_cast<int>(std::lround(chart.xOf(time_s))), chart.laneRect(lane).center().y()};
  }
  void click(double time_s, std::size_t lane = 0) {
    QTest::mouseClick(&chart, Qt::LeftButton, Qt::NoModifier, at(time_s, lane));
  }
  void move(double time_s) { moveTo(at(time_s)); }
  void moveTo(QPoint point) {
    QMouseEvent event(QEvent::MouseMove, QPointF(point), chart.mapToGlobal(QPointF(point)), Qt::NoButton,
                      Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&chart, &event);
  }
  void press(double time_s, Qt::KeyboardModifiers modifiers = {}) {
    QTest::mousePress(&chart, Qt::LeftButton, modifiers, at(time_s));
  }
  void release(double time_s) { QTest::mouseRelease(&chart, Qt::LeftButton, Qt::NoModifier, at(time_s)); }
  /// Along points that are where these times are when it begins.
  void drag(double from_s, double to_s, Qt::KeyboardModifiers modifiers = {}) {
    const QPoint from = at(from_s), to = at(to_s);
    QTest::mousePress(&chart, Qt::LeftButton, modifiers, from);
    moveTo((from + to) / 2);
    moveTo(to);
    QTest::mouseRelease(&chart, Qt::LeftButton, Qt::NoModifier, to);
  }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&chart, key, modifiers); }
  double plainMean(double begin_s, double end_s, std::size_t column = 0) const {
    double sum = 0;
    int count = 0;
    for (std::size_t k = 0; k < open->recording.time.size(); ++k) {
      const double t = open->recording.time[k];
      if (t < begin_s - spacing_s / 4 || t > end_s + spacing_s / 4) continue;
      sum += open->recording.columns[column].values[k], ++count;
    }
    return sum / count;
  }

  QTemporaryDir folder;
  RecordingStore store;
  Session session;
  StripView view;
  QSignalSpy refused;
  StripChart& chart;
  std::shared_ptr<OpenRecording> open;
};

TEST_F(StripViewTest, ShowsTheChannelsOfTheRecordingInTheDocumentsOrder) {
  ASSERT_EQ(chart.lanes().size(), 2u);
  EXPECT_EQ(chart.lanes()[0].name, "TP-01");
  EXPECT_EQ(chart.lanes()[0].spans.size(), steps);
  EXPECT_EQ(chart.lanes()[0].spans[1].samples, (core::SampleSpan{250, 381}));
  session.selectChannel(1);
  EXPECT_EQ(chart.lanes()[0].name, "TP-01");
  EXPECT_EQ(chart.own()->name, "TP-02");
  view.resize(1000, 130);  // room for one row: the chosen one
  QApplication::processEvents();
  EXPECT_TRUE(chart.laneRect(0).isEmpty());
  EXPECT_FALSE(chart.laneRect(1).isEmpty());
  session.selectChannel(0);
  EXPECT_TRUE(chart.laneRect(1).isEmpty());
  EXPECT_FALSE(chart.laneRect(0).isEmpty());
  key(Qt::Key_C);
  EXPECT_EQ(chart.lanes().size(), 1u);
}

TEST_F(StripViewTest, AClickOnASpanChoosesItsStepAndTheOtherWayRound) {
  click(3);
  EXPECT_EQ(session.selection().step, std::size_t{1});
  EXPECT_EQ(chart.chosen(), step(1));
  session.selectStep(4);
  EXPECT_EQ(chart.chosen(), step(4));
  click(4.2);  // between two spans
  EXPECT_FALSE(session.selection().step);
  EXPECT_FALSE(chart.chosen());
}

TEST_F(StripViewTest, AClickInAnotherLaneChoosesItsChannel) {
  click(3, 1);
  EXPECT_EQ(session.selection().channel, std::size_t{1});
  EXPECT_EQ(session.selection().step, std::size_t{1});
  EXPECT_EQ(chart.own()->name, "TP-02");
}

TEST_F(StripViewTest, AnEdgeInAnotherRowIsDraggedThereAndTheRowsStay) {
  const core::Check first = check();
  chart.showBetween(1, 10);  // the zoom stays too
  const QRect row = chart.laneRect(1);
  const QPoint from = at(2.5, 1), to = at(2.9, 1);
  QTest::mousePress(&chart, Qt::LeftButton, Qt::NoModifier, from);
  EXPECT_EQ(session.selection().channel, std::size_t{1});
  EXPECT_EQ(session.selection().step, std::size_t{1});
  moveTo((from + to) / 2);
  moveTo(to);
  ASSERT_TRUE(chart.preview());
  QTest::mouseRelease(&chart, Qt::LeftButton, Qt::NoModifier, to);
  EXPECT_EQ(undoSteps(), 1);
  EXPECT_NEAR(check().readings[1]->begin->base(), 2.9, 0.025);  // a pixel and half a sample
  EXPECT_NEAR(check().readings[1]->mean.base(), plainMean(2.9, 3.8, 1), 0.1);
  EXPECT_EQ(session.document().channels[0]->checks[0], first);
  EXPECT_EQ(chart.laneRect(1), row);
  EXPECT_NEAR(chart.begin_s(), 1, 1e-9);  // rounding alone
}

TEST_F(StripViewTest, DrawingOverASpanSaysWhyNothingIsDrawn) {
  const core::Check unchanged = check();
  drag(3, 3.4, Qt::ShiftModifier);
  EXPECT_EQ(check(), unchanged);
  EXPECT_FALSE(chart.preview());
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused[0][0].toString().contains("span already"));
  EXPECT_NEAR(chart.end_s() - chart.begin_s(), 18, 0.1);  // nor panned
}

TEST(StripChartSpans, ANameEndsWhereAnotherSpanLiesOverItsOwn) {
  const std::vector<double> begins{10, 40, 200};
  EXPECT_EQ(nameEnd(10, 100, begins), 40) << "before the one that lies over it";
  EXPECT_EQ(nameEnd(40, 100, begins), 100) << "the later one has its room";
  EXPECT_EQ(nameEnd(200, 250, begins), 250);
}

TEST_F(StripViewTest, NothingIsDrawnWhereTheRingLiesThatShowsTheKeyboard) {
  const WithoutRing without(chart);
  const QImage image = chart.grab().toImage();
  const QColor ground = image.pixelColor(0, 0);
  constexpr int ring = FocusRing::thickness_px;
  int drawn = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) {
      const bool under = y < ring || y >= image.height() - ring || x < ring || x >= image.width() - ring;
      drawn += under && image.pixelColor(x, y) != ground;
    }
  EXPECT_EQ(drawn, 0);
}

TEST_F(StripViewTest, ANarrowSpanShowsItsStepAlone) {
  const QFontMetrics metrics = chart.fontMetrics();
  StripSpan span{step(2), {0, 9}, "3 +2", "+1024.08", 1024.08, core::Polarity::Positive};
  const auto label = [&](const QString& room) {
    return spanLabel(span, "µm/m", metrics, metrics.horizontalAdvance(room));
  };
  EXPECT_EQ(label("3 +2:  +1024.08 µm/m"), "3 +2:  +1024.08 µm/m");
  EXPECT_EQ(label("3 +2:  +1024.08 µm"), "3 +2:  +1024.08");
  EXPECT_EQ(label("3 +2:  +1024.0"), "3:  +1024.08");
  EXPECT_EQ(label("3:  +1024.0"), "3");
  EXPECT_EQ(label("3"), "3");
  span.place = step(122);
  EXPECT_NE(label("12"), "123");  // cut where the span ends
  EXPECT_LE(metrics.horizontalAdvance(label("12")), metrics.horizontalAdvance("12"));
}

TEST_F(StripViewTest, TheCurveLiesBelowTheLabelsAtAnyHeight) {
  view.resize(1000, 130);
  session.selectStep(std::nullopt);
  QApplication::processEvents();
  const QRect row = chart.laneRect(chart.ownLane());
  const QImage image = chart.grab(row).toImage();
  const QRgb curve = coloursFor(view.palette()).fitted.rgb();
  int above = 0, below = 0;
  for (int x = 3; x < image.width() - 3; ++x)
    for (int y = 1; y < image.height(); ++y)
      if (image.pixel(x, y) == curve) ++(y < chart.fontMetrics().height() ? above : below);
  EXPECT_EQ(above, 0);
  EXPECT_GT(below, 100);
}

/// Luminance contrast by WCAG 2.1 (1.4.3).
double contrastOf(const QColor& a, const QColor& b) {
  const auto luminance = [](const QColor& colour) {
    const auto linear = [](double c) {
      return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
  };
  const double one = luminance(a), two = luminance(b);
  return (std::max(one, two) + 0.05) / (std::min(one, two) + 0.05);
}

/// The greatest contrast of what is painted inside `widget` to the window behind it.
double contrastWithin(QWidget& window, const QWidget& widget) {
  const QImage image = window.grab().toImage();
  const QRect inside(widget.mapTo(&window, QPoint(0, 0)), widget.size());
  const QColor behind = window.palette().color(QPalette::Window);
  double greatest = 1;
  for (int y = inside.top() + 3; y < inside.bottom() - 2; ++y)
    for (int x = inside.left() + 3; x < inside.right() - 2; ++x)
      greatest = std::max(greatest, contrastOf(image.pixelColor(x, y), behind));
  return greatest;
}

TEST_F(StripViewTest, ToolsAreReadableAfterTheColoursAreSwitched) {
  const QPalette before = QApplication::palette();
  for (const QPalette& palette : {lightPalette(), darkPalette(), lightPalette(), darkPalette()}) {
    QApplication::setPalette(palette);
    QApplication::processEvents();
    for (const char* name : {"stripShowAll", "stripAdd", "stripJoin"}) {
      const auto* action = view.findChild<QAction*>(name);
      const auto* row = view.findChild<QToolBar*>("stripTools");
      const QWidget& button = *row->widgetForAction(const_cast<QAction*>(action));
      // WCAG 2.1 asks 4.5 of text, and nothing of what is disabled: 2 is our own, to be seen at all.
      EXPECT_GT(contrastWithin(view, button), action->isEnabled() ? 4.5 : 2.0)
          << name << (isDark(palette) ? " dark" : " light");
    }
  }
  QApplication::setPalette(before);
}

TEST_F(StripViewTest, ACheckThatIsComparedIsDrawnInTheRowOfItsChannel) {
  core::Channel channel = *session.channel();
  channel.checks.push_back(channel.checks[0]);
  channel.checks[1].name = "Year before";
  channel.checks[1].recording->path = "before.csv";
  for (auto& reading : channel.checks[1].readings) {  // the same, begun 5 s later
    reading->begin = core::Duration(reading->begin->base() + 5);
    reading->end = core::Duration(reading->end->base() + 5);
  }
  session.editChannel("Add", channel);
  auto earlier = std::make_shared<OpenRecording>(*recordingOf(store.pathOf(*channel.checks[1].recording)));
  earlier->recording.time = core::TimeAxis::even(5, spacing_s, 200 * steps);
  for (double& value : earlier->recording.columns[0].values) value += 300;
  store.put(earlier);
  session.selectCheck(0);
  const auto coloured = [&] {
    const QImage image = chart.grab(chart.laneRect(0)).toImage();
    const QRgb wanted = coloursFor(view.palette()).compared.rgb();
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) == wanted;
    return count;
  };
  EXPECT_EQ(coloured(), 0);
  session.compareWith(1);
  ASSERT_TRUE(chart.compared());
  EXPECT_NEAR(chart.compared()->later_s, 5, 1e-9);  // rounding alone
  EXPECT_GT(coloured(), 200);
  EXPECT_TRUE(chart.accessibleDescription().contains("Year before"))
      << chart.accessibleDescription().toStdString();
  session.compareWith(std::nullopt);
  EXPECT_FALSE(chart.compared());
  EXPECT_EQ(coloured(), 0);
}

TEST_F(StripViewTest, CountsOnlySpansThatThereAre) {
  EXPECT_TRUE(chart.accessibleDescription().startsWith("9 spans of steps. "));
  click(3);
  key(Qt::Key_N);
  key(Qt::Key_Escape);
  EXPECT_TRUE(chart.accessibleDescription().startsWith("8 spans of steps, 1 span of no step. "))
      << chart.accessibleDescription().toStdString();
}

TEST_F(StripViewTest, AnEmptyDocumentAsksForAChannel) {
  session.reset({});
  const QString text = view.findChild<QLabel*>("stripMessage")->text();
  EXPECT_TRUE(text.contains("Add a channel first")) << text.toStdString();
  EXPECT_FALSE(text.contains("Ctrl+R"));
}

TEST_F(StripViewTest, ShowsItsKeysEvenWhileItIsHidden) {
  view.hide();
  view.showKeys();
  auto* sheet = view.findChild<QWidget*>("stripKeySheet");
  ASSERT_TRUE(sheet);
  EXPECT_TRUE(sheet->isVisible());
  sheet->close();
}

TEST_F(StripViewTest, BringsAStepThatIsOffTheViewIntoIt) {
  chart.showBetween(0, 2);
  session.selectStep(7);
  EXPECT_LT(chart.begin_s(), 14.5);
  EXPECT_GT(chart.end_s(), 15.8);
  EXPECT_NEAR(chart.end_s() - chart.begin_s(), 2, 1e-9);  // the same zoom; rounding alone
}

TEST_F(StripViewTest, TheWheelZoomsAboutTheCursorAndShiftPans) {
  const QPointF where(at(6));
  const auto turn = [&](int delta, Qt::KeyboardModifiers modifiers) {
    QWheelEvent event(where, chart.mapToGlobal(where), {}, {0, delta}, Qt::NoButton, modifiers,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&chart, &event);
  };
  const double time_s = chart.timeAt(where.x()), shown_s = chart.end_s() - chart.begin_s();
  turn(240, {});
  EXPECT_LT(chart.end_s() - chart.begin_s(), 0.8 * shown_s);
  EXPECT_NEAR(chart.timeAt(where.x()), time_s, 1e-9);  // rounding alone
  const double zoomed_s = chart.end_s() - chart.begin_s(), begin_s = chart.begin_s();
  turn(-120, Qt::ShiftModifier);
  EXPECT_NEAR(chart.end_s() - chart.begin_s(), zoomed_s, 1e-9);
  EXPECT_GT(chart.begin_s(), begin_s);
  for (int k = 0; k < 200; ++k) turn(-120, {});
  EXPECT_NEAR(chart.end_s() - chart.begin_s(), shown_s, 1e-9);  // never more than all
  for (int k = 0; k < 200; ++k) turn(120, {});
  EXPECT_GT(chart.end_s() - chart.begin_s(), 3 * spacing_s);  // never less than some samples
}

TEST_F(StripViewTest, KeysZoomAndPan) {
  const double shown_s = chart.end_s() - chart.begin_s();
  chart.setCursor_s(6.0);
  QTest::keyClicks(&chart, "+");
  EXPECT_LT(chart.end_s() - chart.begin_s(), shown_s);
  const double begin_s = chart.begin_s();
  key(Qt::Key_Right);
  EXPECT_GT(chart.begin_s(), begin_s);
  key(Qt::Key_Home);
  EXPECT_NEAR(chart.end_s() - chart.begin_s(), shown_s, 1e-9);
  session.selectStep(3);
  key(Qt::Key_Return);
  EXPECT_GT(chart.begin_s(), 5);
  EXPECT_LT(chart.begin_s(), 6.5);
  EXPECT_GT(chart.end_s(), 7.8);
  EXPECT_LT(chart.end_s(), 9);
  key(Qt::Key_PageDown);
  EXPECT_EQ(session.selection().step, std::size_t{4});
  key(Qt::Key_PageUp);
  EXPECT_EQ(session.selection().step, std::size_t{3});
}

TEST_F(StripViewTest, DraggingTheBackgroundPansAndTheOverviewFollows) {
  chart.showBetween(4, 8);
  drag(6.1, 5.1);
  EXPECT_NEAR(chart.begin_s(), 5, 0.02);  // a pixel
  EXPECT_EQ(undoSteps(), 0);
  const QRect overview = chart.overviewRect();
  QTest::mouseClick(&chart, Qt::LeftButton, Qt::NoModifier, {overview.right() - 5, overview.center().y()});
  EXPECT_NEAR(chart.end_s(), 18, 0.02);
}

TEST_F(StripViewTest, DraggingAnEdgeIsOneEditOnReleaseThatChangesThatReadingAlone) {
  const core::Check unchanged = check();
  press(2.5);
  move(2.7);
  ASSERT_TRUE(chart.preview());
  move(2.9);
  EXPECT_EQ(undoSteps(), 0);
  EXPECT_EQ(check(), unchanged);
  const core::SampleSpan shown = chart.preview()->samples;
  EXPECT_NEAR(chart.preview()->mean, plainMean(2.9, 3.8), 0.2);
  release(2.9);
  EXPECT_EQ(undoSteps(), 1);
  const core::Measured& moved = *check().readings[1];
  EXPECT_EQ(moved.begin->base(), open->recording.time[shown.begin]);
  EXPECT_EQ(moved.end->base(), open->recording.time[shown.end - 1]);
  // White noise without spikes: the level's mean is the plain one but for what is taken off as an outlier.
  EXPECT_NEAR(moved.mean.base(), plainMean(moved.begin->base(), moved.end->base()), 0.1);
  EXPECT_NEAR(moved.uncertainty->base(), 1 / std::sqrt(shown.size()), 0.5 / std::sqrt(shown.size()));
  for (std::size_t k = 0; k < steps; ++k) {
    if (k != 1) {
      EXPECT_EQ(check().readings[k], unchanged.readings[k]);
    }
  }
  EXPECT_EQ(session.selection().step, std::size_t{1});
  EXPECT_FALSE(chart.preview());
  session.history().undo();
  EXPECT_EQ(check(), unchanged);
}

TEST_F(StripViewTest, AnEdgeStopsAtTheNeighbour) {
  drag(2.5, 0.7);
  EXPECT_GT(check().readings[1]->begin->base(), 1.8);
  EXPECT_LE(check().readings[1]->begin->base(), 1.8 + 1.5 * spacing_s);
  session.history().undo();
  drag(3.8, 1.0);  // the end before the begin: one sample stays
  EXPECT_EQ(check().readings[1]->begin, check().readings[1]->end);
}

TEST_F(StripViewTest, OfSpansThatLieOverEachOtherOneCanBeMadeShorterUntilTheyDoNot) {
  core::Channel channel = *session.channel();  // as a file may bring it: the second step within the third
  channel.checks[0].readings[1]->begin = core::Duration(4.8);
  channel.checks[0].readings[1]->end = core::Duration(5.2);
  session.editChannel("Readings of a file", channel);
  const core::Check unchanged = check();

  session.selectStep(1);
  const auto within = chart.lanes()[0].at(step(1))->samples;
  for (const double cursor_s : {4.9, 5.1, 1.0, 9.0}) {  // neither grows over the other, nor leaves it
    chart.setCursor_s(cursor_s);
    chart.moveEndToCursor(true);
    chart.moveEndToCursor(false);
  }
  EXPECT_EQ(check(), unchanged);
  EXPECT_EQ(chart.lanes()[0].at(step(1))->samples, within);
  ASSERT_GE(refused.count(), 2);
  EXPECT_TRUE(refused[0][0].toString().contains("over another one"))
      << refused[0][0].toString().toStdString();

  session.selectStep(2);
  chart.setCursor_s(5.3);
  chart.moveEndToCursor(true);
  EXPECT_NEAR(check().readings[2]->begin->base(), 5.3, spacing_s / 2);
  EXPECT_EQ(check().readings[1], unchanged.readings[1]);
}

TEST_F(StripViewTest, SpansThatLieOverEachOtherAreJoinedToAllThatTheyHad) {
  core::Channel channel = *session.channel();
  channel.checks[0].readings[3]->begin = core::Duration(4.8);
  channel.checks[0].readings[3]->end = core::Duration(5.2);
  session.editChannel("Readings of a file", channel);
  const auto whole = chart.lanes()[0].at(step(2))->samples;
  session.selectStep(2);
  key(Qt::Key_J);
  EXPECT_EQ(chart.lanes()[0].at(step(2))->samples, whole);
  EXPECT_FALSE(check().readings[3]);
}

TEST_F(StripViewTest, TheChosenSpanMovesAsAWholeAndAnotherOneDoesNot) {
  const core::Check unchanged = check();
  drag(3, 3.1);
  EXPECT_EQ(check(), unchanged);
  chart.showAll();
  click(3);
  drag(3, 3.1);
  EXPECT_NEAR(check().readings[1]->begin->base(), 2.6, 0.025);
  EXPECT_NEAR(check().readings[1]->end->base() - check().readings[1]->begin->base(), 1.3, 1e-9);
  EXPECT_EQ(undoSteps(), 1);
}

TEST_F(StripViewTest, EscapeDropsADrag) {
  const core::Check unchanged = check();
  press(2.5);
  move(2.9);
  key(Qt::Key_Escape);
  EXPECT_FALSE(chart.preview());
  move(3.0);
  release(3.0);
  EXPECT_EQ(check(), unchanged);
  EXPECT_EQ(undoSteps(), 0);
}

TEST_F(StripViewTest, SplitsAtTheCursorAndJoinsAgain) {
  const auto samples = chart.lanes()[0].at(step(1))->samples;
  click(3);
  chart.setCursor_s(3.3);
  key(Qt::Key_S);
  ASSERT_EQ(check().otherLevels.size(), 1u);
  EXPECT_EQ(check().readings[1]->begin->base(), open->recording.time[samples.begin]);
  EXPECT_NEAR(check().readings[1]->end->base(), 3.29, 1e-9);  // the sample before the cursor's
  EXPECT_NEAR(check().otherLevels[0].begin->base(), 3.3, 1e-9);
  EXPECT_EQ(chart.chosen(), step(1));
  key(Qt::Key_J);
  EXPECT_TRUE(check().otherLevels.empty());
  EXPECT_EQ(chart.lanes()[0].at(step(1))->samples, samples);
  EXPECT_EQ(undoSteps(), 2);
}

TEST_F(StripViewTest, ToolsActAtTheCursorAndNotWhereTheMouseLeft) {
  click(3.1);
  QMouseEvent over(QEvent::MouseMove, QPointF(at(3.6)), chart.mapToGlobal(QPointF(at(3.6))), Qt::NoButton,
                   Qt::NoButton, Qt::NoModifier);
  QApplication::sendEvent(&chart, &over);
  EXPECT_NEAR(open->recording.time[*chart.cursorSample()], 3.6, 0.025);  // a pixel
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(&chart, &leave);
  view.findChild<QAction*>("stripSplit")->trigger();
  ASSERT_EQ(check().otherLevels.size(), 1u);
  EXPECT_NEAR(check().readings[1]->begin->base(), 3.1, 0.025);  // the longer part
}

TEST_F(StripViewTest, DeletesAndAddsByDrawingForTheChosenStep) {
  click(3);
  key(Qt::Key_Delete);
  EXPECT_FALSE(check().readings[1]);
  session.selectStep(1);
  drag(2.3, 3.6, Qt::ShiftModifier);
  ASSERT_TRUE(check().readings[1]);
  EXPECT_NEAR(check().readings[1]->begin->base(), 2.3, 0.025);  // a pixel and half a sample
  EXPECT_NEAR(check().readings[1]->end->base(), 3.6, 0.025);
  session.selectStep(std::nullopt);
  session.history().undo();
  drag(2.3, 3.6, Qt::ShiftModifier);
  EXPECT_FALSE(check().readings[1]);
  ASSERT_EQ(check().otherLevels.size(), 1u);
  EXPECT_EQ(chart.chosen(), other(0));
}

TEST_F(StripViewTest, AKeyAddsTheLevelAtTheCursor) {
  click(3);
  key(Qt::Key_Delete);
  chart.setCursor_s(3.0);
  key(Qt::Key_A);
  ASSERT_EQ(check().otherLevels.size() + (check().readings[1] ? 1 : 0), 1u);
  const core::Measured& added = check().readings[1] ? *check().readings[1] : check().otherLevels[0];
  // Held from 2 s to 4 s; the found span lies within, and covers most of it.
  EXPECT_GE(added.begin->base(), 2.0 - 1e-9);
  EXPECT_LT(added.end->base(), 4.0);
  EXPECT_GT(added.end->base() - added.begin->base(), 1.0);
  chart.setCursor_s(5.0);  // in the third step's span
  key(Qt::Key_A);
  EXPECT_EQ(refused.count(), 1);
}

TEST_F(StripViewTest, GivesASpanToAStepAndTakesItAway) {
  click(3);
  const auto span = check().readings[1];
  key(Qt::Key_N);
  EXPECT_FALSE(check().readings[1]);
  EXPECT_EQ(check().otherLevels, std::vector{*span});
  EXPECT_EQ(chart.chosen(), other(0));
  auto* menu = view.findChild<QMenu*>("stripStepMenu");
  emit menu->aboutToShow();
  const auto former = check().readings[4];
  menu->actions()[2 + 4]->trigger();
  EXPECT_EQ(check().readings[4], span);
  EXPECT_EQ(check().otherLevels, std::vector{*former});
  EXPECT_EQ(session.selection().step, std::size_t{4});
}

TEST_F(StripViewTest, KeysMoveAnEndBySamplesAsOneEdit) {
  click(3);
  const auto samples = chart.lanes()[0].at(step(1))->samples;
  QTest::keyPress(&chart, Qt::Key_Right, Qt::ControlModifier);
  QTest::keyPress(&chart, Qt::Key_Right, Qt::ControlModifier);
  EXPECT_EQ(undoSteps(), 0);
  QTest::keyRelease(&chart, Qt::Key_Right, Qt::ControlModifier);
  EXPECT_EQ(undoSteps(), 1);
  EXPECT_EQ(chart.lanes()[0].at(step(1))->samples, (core::SampleSpan{samples.begin, samples.end + 2}));
  key(Qt::Key_Space);  // both
  key(Qt::Key_Space);  // begin
  key(Qt::Key_Left, Qt::ControlModifier);
  EXPECT_EQ(chart.lanes()[0].at(step(1))->samples, (core::SampleSpan{samples.begin - 1, samples.end + 2}));
  chart.setCursor_s(2.7);
  key(Qt::Key_B);
  chart.setCursor_s(3.5);
  key(Qt::Key_E);
  EXPECT_EQ(chart.lanes()[0].at(step(1))->samples, (core::SampleSpan{270, 351}));
}

TEST_F(StripViewTest, AClosedCheckIsNotEditedAndSaysHowToReopenIt) {
  session.editChannel("Close", core::withCheckClosed(*session.channel(), 0));
  const core::Check closed = check();
  drag(2.5, 2.9);
  click(3);
  key(Qt::Key_Delete);
  EXPECT_EQ(check(), closed);
  ASSERT_EQ(refused.count(), 2);
  EXPECT_TRUE(refused[0][0].toString().contains("Reopen")) << refused[0][0].toString().toStdString();
  for (const char* name : {"stripAdd", "stripSplit", "stripJoin", "stripDelete", "stripMatch", "stripBegin",
                           "stripEnd", "stripFree", "stripGive"}) {
    const auto* action = view.findChild<QAction*>(name);
    EXPECT_FALSE(action->isEnabled()) << name;
    EXPECT_TRUE(action->toolTip().contains("Reopen")) << name;
  }
  const auto* steps = view.findChild<QToolButton*>("stripSteps");
  EXPECT_FALSE(steps->isEnabled());
  EXPECT_TRUE(steps->toolTip().contains("Reopen"));
  for (const Qt::Key pressed :
       {Qt::Key_A, Qt::Key_S, Qt::Key_J, Qt::Key_M, Qt::Key_B, Qt::Key_E, Qt::Key_N, Qt::Key_G}) {
    const auto count = refused.count();
    key(pressed);
    EXPECT_EQ(refused.count(), count + 1) << pressed;
  }
  EXPECT_EQ(check(), closed);
  session.history().undo();
  EXPECT_TRUE(view.findChild<QAction*>("stripDelete")->isEnabled());
  EXPECT_FALSE(view.findChild<QAction*>("stripDelete")->toolTip().contains("Reopen"));
}

TEST_F(StripViewTest, MatchesSpansWithTheStepsAgain) {
  const core::Check as = check();
  core::Channel mixed = core::withSpanGivenToStep(*session.channel(), 0, step(1), 3);  // 3 loses its own
  session.editChannel("Mix", mixed);
  ASSERT_EQ(check().otherLevels.size(), 1u);
  key(Qt::Key_M);
  EXPECT_EQ(refused.count(), 0) << (refused.isEmpty() ? "" : refused[0][0].toString().toStdString());
  EXPECT_EQ(check(), as);
}

TEST_F(StripViewTest, ChangesOfAMillionSamplesComeFromAWorker) {
  open = recordingOf(store.pathOf(referenceTo("TP-01")), 100'000);
  store.put(open);
  QApplication::processEvents();
  drag(2.5, 2.9);
  EXPECT_TRUE(chart.preview());  // shown until the worker is done
  EXPECT_TRUE(QTest::qWaitFor([&] { return undoSteps() == 1; }, 60'000));
  EXPECT_FALSE(chart.preview());
  EXPECT_NEAR(check().readings[1]->begin->base(), 2.9, 0.025);
  EXPECT_TRUE(QTest::qWaitFor([&] { return chart.accessibleDescription().contains("good"); }, 60'000))
      << chart.accessibleDescription().toStdString();
}

TEST_F(StripViewTest, TellsTheChosenSpanInWords) {
  click(3);
  EXPECT_TRUE(QTest::qWaitFor([&] { return chart.accessibleDescription().contains("good"); }, 10'000))
      << chart.accessibleDescription().toStdString();
  EXPECT_TRUE(chart.accessibleDescription().startsWith("Step 2 up: "))
      << chart.accessibleDescription().toStdString();
  EXPECT_TRUE(chart.accessibleDescription().contains("2.50 to 3.80 s, 131 samples"));
}

TEST_F(StripViewTest, IsDrawnInAnySizeWithNumbersMissing) {
  open = recordingOf(store.pathOf(referenceTo("TP-01")));
  auto& values = open->recording.columns[0].values;
  for (std::size_t k = 250; k < 900; ++k) values[k] = std::nan("");
  open->envelopes = envelopesOf(open->recording);
  store.put(open);
  for (const QSize size : {QSize(160, 84), QSize(1000, 150), QSize(1900, 900)}) {
    view.resize(size);
    for (const double end_s : {18.0, 3.0, 2.6}) {
      chart.showBetween(2.5, end_s);
      EXPECT_FALSE(view.grab().isNull());
    }
  }
  view.resize(1000, 300);
  chart.showAll();
  drag(2.5, 2.7);
  EXPECT_EQ(refused.count(), 1);  // no number is left in the span
}

// The store, with files.

class RecordingStoreTest : public testing::Test {
 protected:
  RecordingStoreTest() { store.setFolder(folder.path()); }

  static QByteArray text(int rows) {
    QByteArray made = "time [s],TP-01 [µm/m]\n";
    for (int k = 0; k < rows; ++k)
      made += QByteArray::number(0.01 * k) + "," + QByteArray::number(k % 7) + "\n";
    return made;
  }
  core::RecordingReference write(const QString& path, int rows = 50) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text(rows));
    file.close();
    const auto hash = QCryptographicHash::hash(text(rows), QCryptographicHash::Sha256).toHex();
    return {store.referenceTo(path).toStdString(),
            static_cast<std::uint64_t>(text(rows).size()),
            hash.toStdString(),
            "TP-01",
            {}};
  }
  bool becomes(const core::RecordingReference& reference, RecordingStore::State state) {
    return QTest::qWaitFor([&] { return store.state(reference) == state; }, 20'000);
  }
  using State = RecordingStore::State;
  using Obstacle = RecordingStore::Obstacle;

  QTemporaryDir folder, elsewhere;
  RecordingStore store;
};

TEST_F(RecordingStoreTest, ReadsAFileOfTheFolderOnAWorkerWithItsEnvelopes) {
  const auto reference = write(folder.filePath("a.csv"));
  EXPECT_EQ(store.state(reference), State::Absent);
  store.want(reference);
  EXPECT_EQ(store.state(reference), State::Reading);
  ASSERT_TRUE(becomes(reference, State::Ready));
  const auto open = store.recording(reference);
  ASSERT_EQ(open->recording.columns.size(), 1u);
  EXPECT_EQ(open->recording.time.size(), 50u);
  EXPECT_EQ(open->envelopes[0].of(open->recording.columns[0].values, 0, 50), (core::Extremes{0, 6}));
  QTest::qWait(50);
  EXPECT_EQ(store.warning(reference), "");
  store.forget(reference);
  EXPECT_EQ(store.state(reference), State::Absent);
}

TEST_F(RecordingStoreTest, WarnsWhenTheHashIsAnother) {
  auto reference = write(folder.filePath("a.csv"));
  reference.sha256 = std::string(64, '0');
  store.want(reference);
  ASSERT_TRUE(becomes(reference, State::Ready));
  EXPECT_TRUE(QTest::qWaitFor([&] { return store.warning(reference).contains("SHA-256"); }, 20'000));
}

TEST_F(RecordingStoreTest, NoticesAFileThatWasChangedAndReadsItAgainWhenAsked) {
  const auto reference = write(folder.filePath("a.csv"));
  core::Channel channel = channelNamed("TP-01");
  channel.checks[0].recording = reference;
  Session session(sample::documentOf({channel}));
  StripView view(session, store);
  view.resize(900, 200);
  view.show();
  ASSERT_TRUE(becomes(reference, State::Ready));
  const auto first = store.recording(reference);
  auto* again = view.findChild<QPushButton*>("stripReadAgain");
  EXPECT_FALSE(again->isVisible());
  write(folder.filePath("a.csv"), 70);
  EXPECT_TRUE(QTest::qWaitFor([&] { return again->isVisible(); }, 20'000));  // the system has told
  EXPECT_TRUE(view.findChild<QLabel*>("stripWarning")->text().contains("changed on the disk"));
  EXPECT_EQ(store.recording(reference), first);
  QTest::mouseClick(again, Qt::LeftButton);
  ASSERT_TRUE(becomes(reference, State::Ready));
  EXPECT_EQ(store.recording(reference)->recording.time.size(), 70u);
  EXPECT_FALSE(again->isVisible());
  EXPECT_TRUE(view.findChild<QLabel*>("stripWarning")->text().contains("bytes"));  // not the readings' file
}

TEST_F(RecordingStoreTest, SeesAFileOfTheSameSizeWithAnotherTimeAndOneThatIsGone) {
  const auto reference = write(folder.filePath("a.csv"));
  store.want(reference);
  ASSERT_TRUE(becomes(reference, State::Ready));
  store.look();
  EXPECT_FALSE(store.isOutdated(reference));
  QFile file(folder.filePath("a.csv"));
  ASSERT_TRUE(file.open(QIODevice::ReadWrite));
  ASSERT_TRUE(file.setFileTime(QDateTime::currentDateTime().addSecs(-60), QFileDevice::FileModificationTime));
  file.close();
  store.look();
  EXPECT_TRUE(store.isOutdated(reference));
  EXPECT_TRUE(store.warning(reference).contains("changed on the disk"));
  ASSERT_TRUE(file.remove());
  store.look();
  EXPECT_TRUE(store.warning(reference).contains("no longer on the disk"));
  EXPECT_EQ(store.state(reference), State::Ready);
}

TEST_F(RecordingStoreTest, AFileOfAnotherSizeIsReadWhenAskedForAndThenWarnedOf) {
  auto reference = write(folder.filePath("a.csv"));
  reference.size_bytes += 1;
  store.want(reference);
  EXPECT_EQ(store.state(reference), State::Failed);
  EXPECT_EQ(store.obstacle(reference), Obstacle::Changed);
  store.want(reference);  // not asked for: stays as it is
  EXPECT_EQ(store.state(reference), State::Failed);
  store.want(reference, true);
  ASSERT_TRUE(becomes(reference, State::Ready));
  EXPECT_TRUE(store.warning(reference).contains("bytes"));
}

TEST_F(RecordingStoreTest, ReadsNothingOutsideTheFolderUnasked) {
  const auto outside = write(elsewhere.filePath("a.csv"));  // reached by ".."
  store.want(outside);
  EXPECT_EQ(store.obstacle(outside), Obstacle::Outside);

  auto absolute = outside;
  absolute.path = elsewhere.filePath("a.csv").toStdString();
  store.forget(outside);
  store.want(absolute);
  EXPECT_EQ(store.obstacle(absolute), Obstacle::Outside);

  ASSERT_TRUE(QFile::link(elsewhere.filePath("a.csv"), folder.filePath("link.csv")));
  auto linked = outside;
  linked.path = "link.csv";
  store.want(linked);
  EXPECT_EQ(store.obstacle(linked), Obstacle::Outside);

  auto round = write(folder.filePath("in.csv"));
  round.path = "x/../in.csv";
  store.want(round);
  EXPECT_EQ(store.obstacle(round), Obstacle::Outside);

  store.want(linked, true);
  EXPECT_TRUE(becomes(linked, State::Ready));
}

TEST_F(RecordingStoreTest, SaysWhatIsMissingOrNoFile) {
  core::RecordingReference reference{"gone.csv", 1, std::string(64, '0'), "TP-01", {}};
  store.want(reference);
  EXPECT_EQ(store.obstacle(reference), Obstacle::Missing);
  EXPECT_TRUE(QString::fromStdString(store.error(reference)->text()).contains("gone.csv"));
  ASSERT_TRUE(QDir(folder.path()).mkdir("folder"));
  reference.path = "folder";
  store.want(reference);
  EXPECT_EQ(store.obstacle(reference), Obstacle::Unreadable);
}

TEST_F(RecordingStoreTest, CancelsAndReadsAgainWhenAsked) {
  const auto reference = write(folder.filePath("a.csv"), 200'000);
  store.want(reference);
  store.cancel(reference);
  EXPECT_EQ(store.obstacle(reference), Obstacle::Cancelled);
  QTest::qWait(50);
  EXPECT_EQ(store.state(reference), State::Failed);
  store.want(reference, true);
  EXPECT_TRUE(becomes(reference, State::Ready));
}

TEST_F(RecordingStoreTest, TheViewOffersToFindALostRecordingAndRemembersWhere) {
  core::Channel channel = channelNamed("TP-01");
  channel.checks[0].recording = core::RecordingReference{"gone.csv", 1, std::string(64, '0'), "TP-01", {}};
  Session session(sample::documentOf({channel}));
  StripView view(session, store);
  view.resize(900, 200);
  view.show();
  EXPECT_TRUE(view.findChild<QPushButton*>("stripFind")->isVisible());
  write(folder.filePath("gone.csv"));
  QTest::mouseClick(view.findChild<QPushButton*>("stripReadIt"), Qt::LeftButton);  // "Look again"
  EXPECT_EQ(store.obstacle(*session.check()->recording), Obstacle::Changed);
  ASSERT_TRUE(QFile::remove(folder.filePath("gone.csv")));
  EXPECT_TRUE(view.findChild<QLabel*>("stripMessage")->text().contains("gone.csv"));
  write(elsewhere.filePath("found.csv"));
  view.useFile(elsewhere.filePath("found.csv"));
  EXPECT_TRUE(QTest::qWaitFor([&] { return view.chart().isVisible(); }, 20'000));
  EXPECT_TRUE(QString::fromStdString(session.check()->recording->path).endsWith("/found.csv"));
  EXPECT_EQ(session.history().undoText(), "Find recording");
  EXPECT_TRUE(view.findChild<QLabel*>("stripWarning")->isVisible());  // another size
}

}  // namespace strip_view_test
}  // namespace ui

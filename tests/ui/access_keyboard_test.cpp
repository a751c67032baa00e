// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QButtonGroup>
#include <QFocusFrame>
#include <QGraphicsView>
#include <QGroupBox>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QStyleFactory>
#include <QTabBar>
#include <QTest>
#include <QTextEdit>
#include <algorithm>
#include <map>
#include <set>

#include "tests/support/contrast.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "tests/support/window_walk.h"
#include "ui/access/access.h"
#include "ui/access/focus_ring.h"
#include "ui/frame_style.h"
#include "ui/locale.h"
#include "ui/main_window.h"
#include "ui/theme.h"

// WCAG 2.2: all that can be worked with is reached by the keyboard (2.1.1), left again (2.1.2), in an order
// that makes sense (2.4.3), and shows that it has the keyboard (2.4.7, 2.4.13).

namespace ui {
namespace {

/// Everything that Tab (or Shift+Tab) comes by in `place`, until it is back where it began.
std::vector<QWidget*> walkedBy(QWidget& place, Qt::KeyboardModifiers modifiers) {
  std::vector<QWidget*> walked;
  std::map<QWidget*, int> stays;
  // A drawing takes Tab from part to part before it lets it go on; more than that is a trap.
  constexpr int mostTabs = 600, mostStays = 60;
  for (int k = 0; k < mostTabs; ++k) {
    QWidget* from = QApplication::focusWidget();
    QTest::keyClick(from ? from : &place, modifiers ? Qt::Key_Backtab : Qt::Key_Tab, modifiers);
    QWidget* focus = QApplication::focusWidget();
    if (!focus) break;
    if (++stays[focus] > mostStays && test::interactiveIn(place).size() > 1) {
      QStringList others;
      for (const QWidget* other : test::interactiveIn(place)) others << test::nameForPeople(other);
      ADD_FAILURE() << "Tab does not leave " << test::nameForPeople(focus).toStdString() << " for any of "
                    << others.join(", ").toStdString();
      break;
    }
    if (!walked.empty() && focus == walked.back()) continue;
    if (!walked.empty() && focus == walked.front()) break;
    walked.push_back(focus);
  }
  return walked;
}

/// Tab reaches one of an exclusive group, from which the arrows reach the others. Buttons of which the same
/// thing is in a menu that the menu key opens need no Tab of their own.
bool isReached(const QWidget* widget, const std::vector<QWidget*>& walked) {
  const auto has = [&](const QWidget* one) {
    return std::find(walked.begin(), walked.end(), one) != walked.end();
  };
  if (has(widget) || widget->objectName() == "bridgeMenuButton") return true;
  if (widget->focusProxy() && has(widget->focusProxy())) return true;
  const auto* button = qobject_cast<const QAbstractButton*>(widget);
  if (!button || !button->isCheckable()) return false;
  if (button->group() && button->group()->exclusive()) {
    const auto group = button->group()->buttons();
    return std::any_of(group.begin(), group.end(), has);
  }
  if (!button->autoExclusive()) return false;
  const auto siblings = button->parentWidget()->findChildren<QAbstractButton*>(Qt::FindDirectChildrenOnly);
  return std::any_of(siblings.begin(), siblings.end(),
                     [&](const QAbstractButton* one) { return one->autoExclusive() && has(one); });
}

/// Whether the keyboard went back up: within one parent, from a widget to one that lies wholly above it and
/// not to its right, as the top of a next column would.
bool goesBack(const QWidget* from, const QWidget* to) {
  if (from->parentWidget() != to->parentWidget() || qobject_cast<const QSplitterHandle*>(to)) return false;
  const QRect a = from->geometry(), b = to->geometry();
  return b.bottom() < a.top() && b.left() <= a.right();
}

/// How many pixels differ by 3 to 1 between a widget with the keyboard and without.
int pixelsOfFocus(QWidget& widget) {
  widget.setFocus(Qt::TabFocusReason);
  const QImage with = widget.grab().toImage();
  widget.clearFocus();
  const QImage without = widget.grab().toImage();
  int differing = 0;
  for (int y = 0; y < std::min(with.height(), without.height()); ++y)
    for (int x = 0; x < std::min(with.width(), without.width()); ++x)
      if (with.pixel(x, y) != without.pixel(x, y) &&
          test::contrastOf(with.pixelColor(x, y), without.pixelColor(x, y)) >= 3)
        ++differing;
  return differing;
}

/// WCAG 2.2, 2.4.13: as large as a line of two pixels around the widget. A third may lie over what has no
/// contrast with it, such as a chosen row, a frame or letters.
int leastPixelsOfFocus(const QWidget& widget) {
  const int around = 2 * (widget.width() + widget.height()) - 4;
  constexpr int thickness_px = 2;
  return thickness_px * around / 2;
}

class KeyboardTest : public testing::Test {
 protected:
  KeyboardTest() {
    QApplication::setStyle(new FrameStyle(QStyleFactory::create("Fusion")));
    installAccess();
    session = std::make_unique<Session>(sample::documentOf(
        {sample::withCheckReading(sample::nineStepChannel(), 1.001), sample::nineStepChannel()}));
    session->selectStep(1);
    window = std::make_unique<MainWindow>(*session);
    window->resize(1280, 800);
    window->show();
    window->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
  }
  ~KeyboardTest() override {
    session->history().setClean();  // else it asks whether to save
    window.reset();
    QApplication::setStyle("Fusion");
  }

  /// What is there now and was not seen before; those that are gone are forgotten.
  std::vector<QWidget*> newIn(QWidget& place) {
    std::vector<QWidget*> fresh;
    for (QWidget* widget : test::interactiveIn(place))
      if (!known.contains(widget) || known[widget] != widget) {
        fresh.push_back(widget);
        known[widget] = widget;
      }
    return fresh;
  }

  std::unique_ptr<Session> session;
  std::unique_ptr<MainWindow> window;
  std::map<QWidget*, QPointer<QWidget>> known;
};

TEST_F(KeyboardTest, EverythingIsReachedAndLeftByTabAndShowsIt) {
  std::size_t seen = 0;
  test::visitEveryPlace(*window, [&](QWidget& place, const QString& how) {
    SCOPED_TRACE(how.toStdString());
    const std::vector<QWidget*> fresh = newIn(place);
    if (fresh.empty()) return;
    place.activateWindow();
    QApplication::setActiveWindow(&place);  // a dialog that just opened waits for the window system
    ASSERT_TRUE(QTest::qWaitForWindowActive(&place));
    if (!QApplication::focusWidget() || QApplication::focusWidget()->window() != &place)
      for (QWidget* widget : fresh)
        if (widget->focusPolicy() & Qt::TabFocus) {
          widget->setFocus(Qt::TabFocusReason);
          break;
        }
    const std::vector<QWidget*> walked = walkedBy(place, Qt::NoModifier);
    const std::vector<QWidget*> back = walkedBy(place, Qt::ShiftModifier);
    for (QWidget* widget : fresh) {
      const std::string name = test::nameForPeople(widget).toStdString();
      EXPECT_TRUE(isReached(widget, walked) || isReached(widget, back)) << name << " is not reached by Tab";
    }
    for (std::size_t k = 1; k < walked.size(); ++k)
      EXPECT_FALSE(goesBack(walked[k - 1], walked[k]))
          << "from " << test::nameForPeople(walked[k - 1]).toStdString() << " back up to "
          << test::nameForPeople(walked[k]).toStdString();
    for (QWidget* widget : fresh)
      if (std::find(walked.begin(), walked.end(), widget) != walked.end() && widget->isVisible()) {
        EXPECT_GE(pixelsOfFocus(*widget), leastPixelsOfFocus(*widget))
            << test::nameForPeople(widget).toStdString() << " does not show that it has the keyboard";
      }
    seen += fresh.size();
  });
  EXPECT_GT(seen, 200U);
}

/// How far from its edge what is scrolled begins.
int roomAtTheEdge(const QAbstractScrollArea& area) {
  const auto* scroll = qobject_cast<const QScrollArea*>(&area);
  const QWidget* inside = scroll ? scroll->widget() : nullptr;
  int room = area.frameWidth();
  if (const auto* label = qobject_cast<const QLabel*>(inside)) room += label->margin();
  if (inside && inside->layout()) {
    const QMargins margins = inside->layout()->contentsMargins();
    room += std::min({margins.left(), margins.top(), margins.bottom()});
  }
  if (const auto* text = qobject_cast<const QTextEdit*>(&area))
    room += static_cast<int>(text->document()->documentMargin());
  return room;
}

TEST_F(KeyboardTest, TheRingLiesBesideWhatIsScrolled) {
  std::set<QString> seen;
  test::visitEveryPlace(*window, [&](QWidget& place, const QString& how) {
    for (const auto* area : place.findChildren<QAbstractScrollArea*>()) {
      const bool isView = !qobject_cast<const QGraphicsView*>(area);  // a drawing has margins of its own
      if (!isView || !area->isVisible() || !(area->focusPolicy() & Qt::TabFocus)) continue;
      EXPECT_GE(roomAtTheEdge(*area), FocusRing::thickness_px)
          << test::nameForPeople(area).toStdString() << " of " << how.toStdString();
      seen.insert(test::nameForPeople(area));
    }
  });
  EXPECT_GT(seen.size(), 10U);
}

TEST_F(KeyboardTest, TheMenuBarShowsTheKeyboardByItsChosenEntryAlone) {
  window->menuBar()->setFocus(Qt::MenuBarFocusReason);
  const auto rings = window->menuBar()->findChildren<QFocusFrame*>();
  EXPECT_TRUE(
      std::none_of(rings.begin(), rings.end(), [](const QFocusFrame* ring) { return ring->isVisible(); }));
}

// The same colours as in light, tried where the ring is most in danger: on fields, buttons, lists and boxes.
TEST_F(KeyboardTest, FocusIsSeenInDarkColoursToo) {
  const QPalette before = QApplication::palette();
  QApplication::setPalette(darkPalette());
  QApplication::processEvents();
  std::map<std::string, int> kinds;
  for (QWidget* widget : test::interactiveIn(*window)) {
    if (!(widget->focusPolicy() & Qt::TabFocus) || ++kinds[widget->metaObject()->className()] > 3) continue;
    EXPECT_GE(pixelsOfFocus(*widget), leastPixelsOfFocus(*widget))
        << test::nameForPeople(widget).toStdString();
  }
  EXPECT_GT(kinds.size(), 6U);
  QApplication::setPalette(before);
}

TEST_F(KeyboardTest, BordersBetweenViewsAreMovedByKeys) {
  int moved = 0;
  for (QSplitter* splitter : window->findChildren<QSplitter*>())
    for (int k = 1; k < splitter->count(); ++k) {
      QSplitterHandle* border = splitter->handle(k);
      if (!border->isVisible()) continue;
      EXPECT_TRUE(border->focusPolicy() & Qt::TabFocus);
      border->setFocus(Qt::TabFocusReason);
      const QList<int> before = splitter->sizes();
      const bool upright = splitter->orientation() == Qt::Vertical;
      for (const Qt::Key key :
           {upright ? Qt::Key_Up : Qt::Key_Left, upright ? Qt::Key_Down : Qt::Key_Right}) {
        QTest::keyClick(border, key);
        if (splitter->sizes() != before) break;
      }
      moved += splitter->sizes() != before;
    }
  EXPECT_GE(moved, 3) << "left column, bridge and outcome, views and sequence";
}

TEST_F(KeyboardTest, TheRingIsInNoPicture) {
  auto* list = window->findChild<QAbstractItemView*>("channelList");
  ASSERT_TRUE(list);
  list->setFocus();
  const QImage with = list->grab().toImage();
  {
    const WithoutRing without(*window);
    EXPECT_NE(list->grab().toImage(), with);
  }
  EXPECT_EQ(list->grab().toImage(), with);
}

// WCAG 2.2, 1.4.4: text of twice the size costs no control. What has no room scrolls.
TEST_F(KeyboardTest, AtTwiceTheTextNoControlIsLost) {
  const QFont before = QApplication::font();
  QFont twice = before;
  twice.setPointSizeF(2 * before.pointSizeF());
  QApplication::setFont(twice);
  QApplication::processEvents();
  const std::vector<QWidget*> all = test::interactiveIn(*window);
  for (const QWidget* widget : all) {
    const std::string name = test::nameForPeople(widget).toStdString();
    EXPECT_FALSE(widget->size().isEmpty()) << name;
    bool scrolls = false;
    for (const QWidget* around = widget->parentWidget(); around; around = around->parentWidget())
      scrolls = scrolls || qobject_cast<const QAbstractScrollArea*>(around);
    const QRect there(widget->mapTo(window.get(), QPoint(0, 0)), widget->size());
    EXPECT_TRUE(scrolls || window->rect().contains(there.center())) << name;
  }
  window->activateWindow();
  const std::vector<QWidget*> walked = walkedBy(*window, Qt::NoModifier);
  for (const QWidget* widget : all)
    EXPECT_TRUE(isReached(widget, walked)) << test::nameForPeople(widget).toStdString();
  QApplication::setFont(before);
}

// ---- letters

std::string letterOf(const QString& text) {
  static const QRegularExpression mark("(?<!&)&([^&\\s])");
  return mark.match(text).captured(1).toLower().toStdString();
}

using Letters = std::map<std::string, QStringList>;

void expectDifferent(const Letters& letters) {
  for (const auto& [letter, texts] : letters)
    EXPECT_EQ(texts.size(), 1) << letter << ": " << texts.join(" | ").toStdString();
}

void add(Letters& letters, const QString& text) {
  const std::string letter = letterOf(text);
  if (!letter.empty()) letters[letter] << text;
}

void checkMenu(const QList<QAction*>& actions, const QString& name) {
  SCOPED_TRACE(name.toStdString());
  Letters letters;
  for (const QAction* action : actions) {
    if (action->isVisible()) add(letters, action->text());
    if (action->menu()) checkMenu(action->menu()->actions(), action->text());
  }
  expectDifferent(letters);
}

/// Labels that lead to a field, buttons and page names that can be seen at the same time.
Letters lettersOf(const QWidget& place) {
  Letters letters;
  for (const QWidget* widget : place.findChildren<QWidget*>()) {
    if (!widget->isVisible() || !widget->isEnabled() || widget->window() != place.window()) continue;
    if (const auto* label = qobject_cast<const QLabel*>(widget); label && label->buddy()) {
      if (label->buddy()->isEnabled()) add(letters, label->text());
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
      add(letters, button->text());
    } else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
      for (int k = 0; k < tabs->count(); ++k) add(letters, tabs->tabText(k));
    }
  }
  return letters;
}

void checkLetters(MainWindow& window) {
  checkMenu(window.menuBar()->actions(), "menus");
  test::visitEveryPlace(window, [](QWidget& place, const QString& how) {
    SCOPED_TRACE(how.toStdString());
    expectDifferent(lettersOf(place));
  });
}

TEST_F(KeyboardTest, NoLetterStandsForTwoThings) { checkLetters(*window); }

TEST_F(KeyboardTest, NoLetterStandsForTwoThingsInGerman) {
  useLanguage("de");
  window = std::make_unique<MainWindow>(*session);
  window->show();
  EXPECT_TRUE(window->menuBar()->actions().first()->text().contains("Datei"));
  checkLetters(*window);
  useLanguage("en");
}

}  // namespace
}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QFile>
#include <QImage>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QTextBlock>
#include <QTimer>
#include <QToolButton>
#include <QTreeWidget>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/help/help_desk.h"
#include "ui/help/help_places.h"
#include "ui/help/manual.h"
#include "ui/help/manual_browser.h"
#include "ui/help/manual_window.h"
#include "ui/main_window.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr auto placeOfTheWindow = "start.md#window";

/// Addresses of the links of a page, as they stand in it; pictures are none.
QStringList linksOf(const QString& markdown) {
  static const QRegularExpression link("(?<!!)\\[[^\\]]*\\]\\(([^)]*)\\)");
  QStringList found;
  for (auto match = link.globalMatch(markdown); match.hasNext();) found << match.next().captured(1);
  return found;
}

TEST(Manual, EveryLinkOfEveryPageLeadsToAPlaceInIt) {
  for (const QString& language : manualLanguages())
    for (const QString& id : manualPageIds())
      for (const QString& link : linksOf(manualPage(id, language).markdown)) {
        const QString address = link.startsWith('#') ? id + ".md" + link : link;
        EXPECT_TRUE(isInManual(address)) << language << " " << id << ": " << link;
      }
}

TEST(Manual, ContentsListEveryPageOnce) {
  QStringList ids = manualPageIds();
  for (const QString& language : manualLanguages()) {
    QStringList listed;
    for (const ManualGroup& group : manualContents(language))
      for (const auto& entry : group.pages) {
        listed << entry.id;
        EXPECT_FALSE(entry.title.isEmpty());
      }
    listed.sort();
    ids.sort();
    EXPECT_EQ(listed, ids) << language;
  }
}

/// Other languages keep the order of the headings and their anchors, so that F1 and links find them.
TEST(Manual, AnchorsAreTheSameInEveryLanguage) {
  const auto anchorsOf = [](const ManualPage& page) {
    QStringList anchors;
    for (const ManualSection& section : page.sections) anchors << section.anchor;
    return anchors;
  };
  for (const QString& language : manualLanguages())
    for (const QString& id : manualPageIds()) {
      const QStringList english = anchorsOf(manualPage(id, "en"));
      EXPECT_EQ(anchorsOf(manualPage(id, language)), english) << language << " " << id;
      for (const QString& anchor : english)
        EXPECT_TRUE(anchor.isEmpty() || english.count(anchor) == 1)
            << id << ": " << anchor << " stands there twice";
    }
}

TEST(Manual, PicturesArePartOfTheProgram) {
  static const QRegularExpression picture("!\\[[^\\]]+\\]\\(([^)]*)\\)");
  for (const QString& language : manualLanguages())
    for (const QString& id : manualPageIds()) {
      const QString markdown = manualPage(id, language).markdown;
      for (auto match = picture.globalMatch(markdown); match.hasNext();) {
        const QString name = match.next().captured(1);
        EXPECT_FALSE(QImage(":/manual/pictures/" + name).isNull()) << id << ": " << name;
      }
    }
}

TEST(Manual, WhatALanguageLacksIsShownInEnglish) {
  EXPECT_EQ(manualPage("setup", "xx").title, manualPage("setup", "en").title);
  EXPECT_TRUE(manualPage("nosuchpage", "en").sections.empty());
  EXPECT_FALSE(isInManual("nosuchpage.md"));
  EXPECT_FALSE(isInManual("setup.md#nosuchplace"));
  EXPECT_FALSE(isInManual("https://example.org"));
}

TEST(Manual, SearchFindsSectionsWithAllWordsHeadingsFirst) {
  const auto hits = searchManual("guard band", "en");
  ASSERT_FALSE(hits.empty());
  EXPECT_TRUE(std::any_of(hits.begin(), hits.end(),
                          [](const ManualHit& hit) { return hit.address == "setup.md#limits"; }));
  EXPECT_EQ(searchManual("hysteresis", "en").size(), searchManual("HYSTERESIS", "en").size());
  EXPECT_EQ(searchManual("ohmmeter", "en").front().address, "ohmmeter.md");
  EXPECT_TRUE(searchManual("", "en").empty());
  EXPECT_TRUE(searchManual("zzzz", "en").empty());
}

// ---- the window of the manual --------------------------------------------------------------------

class Opened : public testing::Test {
 protected:
  Opened() {
    manual.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&manual));
  }
  ManualWindow manual;
};

TEST_F(Opened, LinksLeadOnAndBackLeadsBack) {
  manual.open("start.md");
  emit manual.page().addressWanted("bridge.md#edit");
  EXPECT_EQ(manual.address(), "bridge.md#edit");
  manual.back();
  EXPECT_EQ(manual.address(), "start.md");
  manual.forward();
  EXPECT_EQ(manual.address(), "bridge.md#edit");
}

TEST_F(Opened, LinksOutOfTheManualDoNothing) {
  manual.open("start.md");
  emit manual.page().addressWanted("https://example.org/");
  emit manual.page().addressWanted("file:///etc/passwd");
  EXPECT_EQ(manual.address(), "start.md");
  EXPECT_TRUE(manual.page().loadResource(QTextDocument::ImageResource, QUrl("file:///etc/passwd")).isNull());
}

TEST_F(Opened, AnAnchorIsScrolledTo) {
  manual.open("setup.md#limits");
  QCoreApplication::processEvents();
  EXPECT_GT(manual.page().verticalScrollBar()->value(), 0);
  EXPECT_TRUE(manual.page().textCursor().block().text().startsWith("Limits"))
      << manual.page().textCursor().block().text();
}

TEST_F(Opened, TypedWordsAreFoundAndMarked) {
  auto* search = manual.findChild<QLineEdit*>("manualSearch");
  QTest::keyClicks(search, "hysteresis");
  auto* hits = manual.findChild<QListWidget*>("manualHits");
  ASSERT_GT(hits->count(), 1);
  QTest::keyClick(search, Qt::Key_Return);
  EXPECT_FALSE(manual.page().extraSelections().empty());
  EXPECT_TRUE(manual.page().textCursor().selectedText().contains("hysteresis", Qt::CaseInsensitive));
  QTest::keyClick(&manual.page(), Qt::Key_Escape);
  EXPECT_TRUE(search->text().isEmpty());
  EXPECT_TRUE(manual.page().extraSelections().empty());
}

TEST_F(Opened, LettersGrowAndShrinkByKeys) {
  const double usual = manual.page().document()->defaultFont().pointSizeF();
  manual.findChild<QAction*>("manualLarger")->trigger();
  EXPECT_GT(manual.page().document()->defaultFont().pointSizeF(), usual);
  manual.findChild<QAction*>("manualUsual")->trigger();
  EXPECT_DOUBLE_EQ(manual.page().document()->defaultFont().pointSizeF(), usual);
}

/// WCAG 2.2, 1.4.3: relative luminance and contrast as defined there.
double contrast(const QColor& one, const QColor& other) {
  const auto luminance = [](const QColor& colour) {
    const auto linear = [](double c) {
      return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
  };
  const double a = luminance(one), b = luminance(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

TEST_F(Opened, LinksReadOnLightAndDark) {
  for (const QPalette& palette : {lightPalette(), darkPalette()}) {
    manual.setPalette(palette);
    manual.page().setPalette(palette);
    manual.open("start.md");
    int links = 0;
    for (QTextBlock block = manual.page().document()->begin(); block.isValid(); block = block.next())
      for (auto part = block.begin(); !part.atEnd(); ++part)
        if (const auto format = part.fragment().charFormat(); format.isAnchor()) {
          ++links;
          EXPECT_GE(contrast(format.foreground().color(), palette.color(QPalette::Base)), 4.5);
        }
    EXPECT_GT(links, 5);
  }
}

// ---- help on the place ---------------------------------------------------------------------------

TEST(HelpPlaces, AreAllInTheManual) {
  for (const HelpPlace& place : helpPlaces())
    EXPECT_TRUE(isInManual(place.address)) << place.name << place.address;
}

class HelpWindow : public testing::Test {
 protected:
  HelpWindow()
      : session(sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1)})),
        window(session) {
    window.resize(1280, 800);
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }
  QList<QAction*> commands() const {
    QList<QAction*> all;
    for (QAction* menu : window.menuBar()->actions()) collect(menu->menu(), all);
    return all;
  }
  static void collect(QMenu* menu, QList<QAction*>& all) {
    for (QAction* action : menu->actions())
      action->menu() ? collect(action->menu(), all) : all.push_back(action);
  }
  ManualWindow* shownManual() const {
    for (QWidget* top : QApplication::topLevelWidgets())
      if (auto* manual = qobject_cast<ManualWindow*>(top); manual && manual->isVisible()) return manual;
    return nullptr;
  }

  Session session;
  MainWindow window;
};

/// The bare window aside, whatever can have the keyboard has a page of its own.
TEST_F(HelpWindow, EveryPartThatTakesTheKeyboardHasAPage) {
  int parts = 0;
  for (const QWidget* part : window.findChildren<QWidget*>()) {
    const QString address = helpPlaceOf(part);
    EXPECT_TRUE(isInManual(address)) << part->objectName() << address;
    if (!(part->focusPolicy() & Qt::TabFocus)) continue;
    ++parts;
    const QString name = part->objectName();
    // What belongs to no view: the way back of a page, and the notice over the views.
    if (name.endsWith("Back") || name == "closeNotice" || name.isEmpty() || name.startsWith("qt_menubar"))
      continue;
    EXPECT_NE(address, placeOfTheWindow) << name << " " << part->metaObject()->className();
  }
  EXPECT_GT(parts, 100);
}

/// Every command that opens a dialog is given, and the dialog asked for its page.
TEST_F(HelpWindow, EveryDialogOfTheMenusHasAPage) {
  int dialogs = 0;
  for (QAction* command : commands()) {
    if (!command->text().contains(QString::fromUtf8("…")) || !command->isVisible()) continue;
    QString address, kind;
    QTimer look;
    QObject::connect(&look, &QTimer::timeout, [&] {
      if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
      QWidget* dialog = QApplication::activeModalWidget();
      if (!dialog) return;
      kind = dialog->metaObject()->className() + QString(" ") + dialog->objectName();
      QWidget* inside = dialog->focusWidget() ? dialog->focusWidget() : dialog;
      address = helpPlaceOf(inside);
      dialog->close();
    });
    look.start(20);
    command->trigger();
    look.stop();
    if (kind.isEmpty()) continue;  // refused for want of something; the window said so
    ++dialogs;
    EXPECT_TRUE(isInManual(address)) << command->text() << kind;
    EXPECT_NE(address, placeOfTheWindow) << command->text() << kind;
  }
  EXPECT_GE(dialogs, 8);
}

TEST_F(HelpWindow, EveryCommandIsMentionedInTheManual) {
  QString all;
  for (const QString& id : manualPageIds()) all += manualPage(id, "en").markdown;
  all = all.simplified();
  int mentioned = 0;
  for (const QAction* command : commands()) {
    QString text = command->text().remove('&').remove(QString::fromUtf8("…")).trimmed();
    if (command->isSeparator() || text.isEmpty() || command->objectName().isEmpty()) continue;
    if (command->objectName().startsWith("language")) continue;  // each language in its own words
    text = text.section(':', 0, 0) == "Undo" || text.section(':', 0, 0) == "Redo" ? text.section(':', 0, 0)
                                                                                  : text;
    EXPECT_TRUE(all.contains(text, Qt::CaseInsensitive)) << text;
    ++mentioned;
  }
  EXPECT_GT(mentioned, 60);
}

TEST_F(HelpWindow, F1InAFieldOpensItsSection) {
  auto* field = window.findChild<QLineEdit*>("lead0");
  if (!field) field = window.findChild<QLineEdit*>("gaugeFactor");
  ASSERT_TRUE(field);
  field->setFocus();
  QTest::keyClick(field, Qt::Key_F1);
  ASSERT_TRUE(QTest::qWaitFor([&] { return shownManual() != nullptr; }));
  EXPECT_TRUE(shownManual()->address().startsWith("setup.md#")) << shownManual()->address();
  shownManual()->close();
}

TEST_F(HelpWindow, F1InADialogOpensAManualThatCanBeUsed) {
  QString address;
  bool modal = false;
  QTimer::singleShot(200, [&] {
    QWidget* dialog = QApplication::activeModalWidget();
    ASSERT_TRUE(dialog);
    QTest::keyClick(dialog->focusWidget() ? dialog->focusWidget() : dialog, Qt::Key_F1);
    if (auto* manual = dialog->findChild<ManualWindow*>()) {
      address = manual->address();
      modal = manual->isModal();
      EXPECT_TRUE(manual->isVisible());
    }
    dialog->close();
  });
  window.findChild<QAction*>("sequenceLayOut")->trigger();
  EXPECT_EQ(address, "pattern.md");
  EXPECT_FALSE(modal);
}

TEST_F(HelpWindow, DialogsHaveAButtonToTheirPage) {
  QString address;
  QTimer::singleShot(200, [&] {
    QWidget* dialog = QApplication::activeModalWidget();
    ASSERT_TRUE(dialog);
    if (auto* help = dialog->findChild<QPushButton*>("dialogHelp")) {
      EXPECT_TRUE(help->isVisible());
      EXPECT_FALSE(help->isDefault());
      QTest::mouseClick(help, Qt::LeftButton);
    }
    if (auto* manual = dialog->findChild<ManualWindow*>()) address = manual->address();
    dialog->close();
  });
  window.findChild<QAction*>("channelCopies")->trigger();
  EXPECT_EQ(address, "overview.md#copies");
}

TEST_F(HelpWindow, TheManualComesBackWhereItWasLeft) {
  window.findChild<QAction*>("manual")->trigger();
  ManualWindow* manual = shownManual();
  ASSERT_TRUE(manual);
  manual->open("budget.md#trials");
  manual->close();
  window.findChild<QAction*>("manual")->trigger();
  ASSERT_EQ(shownManual(), manual);
  EXPECT_EQ(manual->address(), "budget.md#trials");
}

}  // namespace
}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QAction>
#include <QLabel>
#include <QMenu>
#include <QTest>
#include <algorithm>

#include "tests/support/bridges.h"
#include "ui/bridge/part_editor.h"
#include "ui/bridge_view.h"
#include "ui/quantity_edit.h"

namespace sample {

/// A bridge on the screen, with the hands of a user.
struct ShownBridge {
  using Part = ui::BridgePart;
  using Kind = ui::BridgePart::Kind;

  ui::Session session;
  ui::BridgeView view;

  explicit ShownBridge(core::Document document) : session(std::move(document)), view(session) {
    view.resize(700, 520);
    view.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&view));
    view.setFocus(Qt::OtherFocusReason);
  }
  explicit ShownBridge(const core::Channel& channel)
      : ShownBridge(core::withChannelInserted({}, 0, channel)) {}

  const core::Setup& setup() { return session.channel()->setup; }
  const core::Shunt& shunt(std::size_t index) { return setup().shunts[index]; }
  int steps() { return session.history().index(); }

  QPoint at(QPointF drawn) { return view.toWidget(drawn).toPoint(); }
  QPoint node(core::Node name) { return at(view.picture()->layout[name].at); }
  QPoint arm(std::size_t index) {
    const auto& place = view.picture()->layout.arms[index];
    return at((place.begin + place.end) / 2);
  }
  QPoint handle(std::size_t index, ui::ShuntEnd end) { return at(ui::handleOf(*view.picture(), index, end)); }
  QPoint grip(const Part& part) { return at(ui::gripOf(*view.picture(), {part, {}})); }

  /// Without what keeps numbers and units on a line.
  QString text(const char* name) {
    QString text = view.findChild<QLabel*>(name)->text();
    return text.replace(QChar(0xa0), ' ').remove(QChar(0x2060));
  }
  QString outcome() { return text("bridgeOutcome"); }
  QString title() { return text("bridgeTitle"); }

  void press(QPoint at, Qt::KeyboardModifiers modifiers = {}) {
    QTest::mousePress(&view, Qt::LeftButton, modifiers, at);
  }
  void dragTo(QPoint from, QPoint to) {
    QTest::mouseMove(&view, (from + to) / 2);
    QTest::mouseMove(&view, to);
  }
  void drop(QPoint at) { QTest::mouseRelease(&view, Qt::LeftButton, {}, at); }
  void drag(QPoint from, QPoint to) {
    press(from);
    dragTo(from, to);
    drop(to);
  }
  void click(QPoint at, Qt::KeyboardModifiers modifiers = {}) {
    QTest::mouseClick(&view, Qt::LeftButton, modifiers, at);
  }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&view, key, modifiers); }

  /// Walks with Tab until the part has the keyboard.
  void focus(const Part& part, std::optional<ui::ShuntEnd> end = {}) {
    view.clearFocus();
    view.setFocus(Qt::TabFocusReason);
    for (int stop = 0; stop < 60; ++stop) {
      if (view.focus() && *view.focus() == ui::BridgeSpot{part, end}) return;
      key(Qt::Key_Tab);
    }
    ADD_FAILURE() << "Tab does not reach the part";
  }
  void focusHandle(std::size_t index, ui::ShuntEnd end) { focus({Kind::Shunt, index}, end); }

  ui::PartEditor* editor() {
    for (auto* found : view.findChildren<ui::PartEditor*>())
      if (found->isVisible()) return found;
    return nullptr;
  }
  ui::QuantityEdit* field(const char* name) {
    return editor() ? editor()->findChild<ui::QuantityEdit*>(name) : nullptr;
  }
  /// Types over what is in a field of the editor.
  void type(const char* name, const QString& text) {
    ui::QuantityEdit* edit = field(name);
    ASSERT_TRUE(edit) << name;
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, text);
  }
  void enter(const char* name) { QTest::keyClick(field(name), Qt::Key_Return); }

  QAction* action(const char* name) { return view.findChild<QAction*>(name); }
  /// Opens the menu of what can be added and chooses there.
  void add(const char* name) {
    emit view.addMenu()->aboutToShow();
    QAction* found = view.addMenu()->findChild<QAction*>(name);
    ASSERT_TRUE(found) << name;
    found->trigger();
  }
};

}  // namespace sample

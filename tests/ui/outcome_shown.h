// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QTest>
#include <QToolButton>

#include "core/document/edits.h"
#include "tests/support/sample_channel.h"
#include "ui/outcome/deviation_plot.h"
#include "ui/outcome/measured_plot.h"
#include "ui/outcome/plot_marks.h"
#include "ui/outcome_view.h"
#include "ui/state_file.h"

namespace ui {

/// A quarter bridge of 350 ohm, gauge factor 2, without leads: zero, 349.65 kohm and 174.65 kohm across
/// arm 1, zero. Simulated exactly 0, -500, -1000, 0 um/m (derived: 350/350000 and 350/175000 over 2).
inline core::Channel twoLevels() {
  core::Channel channel;
  channel.name = "TP-01";
  using core::Node;
  channel.setup.shunts = {
      {"small", core::Resistance(349650), Node::Arm1Begin, Node::Arm1End, core::Resistance(0)},
      {"large", core::Resistance(174650), Node::Arm1Begin, Node::Arm1End, core::Resistance(0)}};
  channel.setup.sequence = {{"zero", {}, core::Duration(2)},
                            {"small", {0}, core::Duration(2)},
                            {"large", {1}, core::Duration(2)},
                            {"zero", {}, core::Duration(2)}};
  return channel;
}

inline core::Channel checkedWith(core::Channel channel, const char* name, std::vector<double> readings) {
  core::Check check;
  check.name = name;
  check.date = "2026-03-02";
  channel = core::withCheckAdded(std::move(channel), std::move(check));
  for (std::size_t k = 0; k < readings.size(); ++k)
    channel.checks.back().readings[k] = core::Measured{core::Reading(readings[k]), {}, {}, {}};
  return channel;
}

inline core::Channel oneCheck() {
  return checkedWith(twoLevels(), "pre-test", {3, 3 - 500.4, 3 - 1001.5, 4});
}

/// The view as a user has it on the screen, with nothing remembered from before.
struct ShownView {
  explicit ShownView(core::Channel channel, QSize size = {900, 700})
      : forgotten((stateFile().clear(), true)),
        session(sample::documentOf({std::move(channel)})),
        view(session) {
    view.resize(size);
    view.show();
    settle();
  }
  void settle() {
    for (int k = 0; k < 3; ++k) QApplication::processEvents();
  }
  template <class T>
  T* find(const char* name) {
    T* found = view.findChild<T*>(name);
    EXPECT_TRUE(found) << name;
    return found;
  }
  MeasuredPlot* measured() { return find<MeasuredPlot>("outcomeMeasured"); }
  DeviationPlot* bars() { return find<DeviationPlot>("outcomeBars"); }
  void click(const char* button) {
    QTest::mouseClick(find<QToolButton>(button), Qt::LeftButton);
    settle();
  }
  /// Chooses an entry of the button's menu with the pointer.
  void choose(const char* button, const char* entry) {
    QMenu* menu = find<QToolButton>(button)->menu();
    menu->popup({0, 0});
    settle();
    QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(find<QAction>(entry)).center());
    settle();
  }

  bool forgotten;
  Session session;
  OutcomeView view;
};

}  // namespace ui

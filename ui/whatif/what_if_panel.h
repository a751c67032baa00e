// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "core/whatif/what_if.h"
#include "ui/session.h"
#include "ui/whatif/what_if_model.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QMenu;
class QToolButton;

namespace ui {

class BridgeCanvas;
class SheetView;
class TrialList;

/// A page of the Bridge view: what a fault would do to the readings of the plan, side by side with and
/// without it. Leaves the document as it is until the user takes the change over.
///
/// What is tried out stays when another channel is chosen; what does not apply there is left out and says
/// why. Works out what it shows only while it is on the screen.
class WhatIfPanel : public QWidget {
  Q_OBJECT

 public:
  explicit WhatIfPanel(Session& session, QWidget* parent = nullptr);

  const std::vector<core::Alteration>& trials() const { return m_trials; }
  /// Tries one more thing out.
  void tryOut(const core::Alteration& alteration);
  /// Nothing is tried out any more.
  void forget();
  /// All that it says, as plain text; the table's cells between tabs.
  QString text() const;

  /// Drawing and table need no more room than the pane has.
  QSize minimumSizeHint() const override { return {300, 200}; }

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);

 protected:
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QLayout* head();
  QLayout* foot();
  QWidget* words();
  void fillMenu();
  void follow();
  void refresh();
  void showTable();
  void showDrawing();
  void arrange();
  void sizeColumns();
  void colour();
  void tellLeftOut();
  void chooseStep();
  void setValue(std::size_t trial, double value);
  void remove(std::size_t trial);
  void clear();
  void takeOver();
  core::Zeroed zeroed() const;
  QString sentence() const;
  QString triedText() const;
  std::optional<std::size_t> step() const;

  Session& m_session;
  std::vector<core::Alteration> m_trials;
  core::TriedOut m_tried;
  std::optional<core::WhatIf> m_whatIf;
  QStringList m_leftOut;  ///< what was told last
  std::vector<core::Alteration> m_offered;
  bool m_following = false;  ///< the table follows the session, not the user

  QToolButton* m_add = nullptr;
  QMenu* m_menu = nullptr;
  QComboBox* m_zeroed = nullptr;
  QToolButton* m_takeOver = nullptr;
  QToolButton* m_clear = nullptr;
  QToolButton* m_copy = nullptr;
  TrialList* m_list = nullptr;
  QLabel* m_sentence = nullptr;
  QLabel* m_caution = nullptr;
  WhatIfModel m_model;
  SheetView* m_table = nullptr;
  BridgeCanvas* m_drawing = nullptr;
  QBoxLayout* m_room = nullptr;
};

}  // namespace ui

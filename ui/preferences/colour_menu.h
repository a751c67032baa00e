// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QAction;
class QMenu;

namespace ui {

/// The choice of colours in a menu, with the one that holds ticked. Lives as long as the menu.
class ColourMenu : public QObject {
  Q_OBJECT

 public:
  explicit ColourMenu(QMenu& menu);

 private:
  void refresh();

  QList<QAction*> m_choices;  ///< in the order of Preferences::Colours
};

}  // namespace ui

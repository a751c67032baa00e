// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/preferences/colour_menu.h"

#include <QActionGroup>
#include <QMenu>

#include "ui/preferences/preferences.h"

namespace ui {

ColourMenu::ColourMenu(QMenu& menu) : QObject(&menu) {
  using Choice = Preferences::Colours;
  auto* group = new QActionGroup(this);
  const auto add = [&](const char* name, const QString& text, Choice choice) {
    QAction* action = menu.addAction(text);
    action->setObjectName(name);
    action->setCheckable(true);
    group->addAction(action);
    m_choices.append(action);
    connect(action, &QAction::triggered, this, [choice] {
      Preferences wanted = preferences();
      wanted.colours = choice;
      setPreferences(wanted);
    });
  };
  add("viewSystem", tr("As the &desktop"), Choice::System);
  add("viewLight", tr("&Light"), Choice::Light);
  add("viewDark", tr("Da&rk"), Choice::Dark);
  connect(&PreferencesSignal::instance(), &PreferencesSignal::preferencesChanged, this, &ColourMenu::refresh);
  refresh();
}

void ColourMenu::refresh() { m_choices[static_cast<int>(preferences().colours)]->setChecked(true); }

}  // namespace ui

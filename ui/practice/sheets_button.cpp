// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/sheets_button.h"

#include <QMenu>

namespace ui {

SheetsButton::SheetsButton(QWidget* parent) : QPushButton(parent) {
  setObjectName("practiceSheets");
  setText(tr("Pri&nt sheets"));
  setAccessibleName(tr("Print sheets"));
  setToolTip(tr("The questions of this set on paper, and the answers for the trainer"));
  auto* menu = new QMenu(this);
  const auto add = [&](const char* name, const QString& text, bool questions, bool answers) {
    QAction* action = menu->addAction(text);
    action->setObjectName(name);
    connect(action, &QAction::triggered, this,
            [this, questions, answers] { emit sheetsWanted(questions, answers); });
  };
  add("sheetsQuestions", tr("&Questions…"), true, false);
  add("sheetsAnswers", tr("&Answers…"), false, true);
  add("sheetsBoth", tr("&Both, in two files…"), true, true);
  setMenu(menu);
}

}  // namespace ui

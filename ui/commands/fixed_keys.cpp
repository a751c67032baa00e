// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/fixed_keys.h"

#include <QCoreApplication>

namespace ui {
namespace {

struct FixedKeysRow {
  const char *place, *text;
  const char* keys;  ///< as QKeySequence::listFromString reads them
};

// In the order of the window. The views' own key handling says the same: tests/ui/commands_test.cpp presses
// some.
constexpr FixedKeysRow fixedRows[] = {
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Tables"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "Copy the chosen cells"), "Ctrl+C; Ctrl+Ins"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Tables"), QT_TRANSLATE_NOOP("ui::FixedKeys", "Paste cells"),
     "Ctrl+V; Shift+Ins"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Tables"), QT_TRANSLATE_NOOP("ui::FixedKeys", "Choose all cells"),
     "Ctrl+A"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Tables"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "Clear the chosen cells"), "Del; Backspace"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Tables"), QT_TRANSLATE_NOOP("ui::FixedKeys", "Edit the cell"),
     "Return; Enter; F2"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Fields"), QT_TRANSLATE_NOOP("ui::FixedKeys", "Cut"),
     "Ctrl+X; Shift+Del"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Fields"), QT_TRANSLATE_NOOP("ui::FixedKeys", "Copy"),
     "Ctrl+C; Ctrl+Ins"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Fields"), QT_TRANSLATE_NOOP("ui::FixedKeys", "Paste"),
     "Ctrl+V; Shift+Ins"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Fields"), QT_TRANSLATE_NOOP("ui::FixedKeys", "Choose all text"),
     "Ctrl+A"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Fields"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "Word by word to the left or right"),
     "Ctrl+Left; Ctrl+Right; Ctrl+Shift+Left; Ctrl+Shift+Right"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Fields"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "What was typed is dropped"), "Esc"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Drawing of the bridge"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "From part to part, or move the chosen end"),
     "Left; Right; Up; Down"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Drawing of the bridge"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "Move the enlarged drawing"),
     "Ctrl+Left; Ctrl+Right; Ctrl+Up; Ctrl+Down"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Drawing of the bridge"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "Choose the step that closes the shunt"), "Space"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Drawing of the bridge"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "Choose one part more, or one less"), "Ctrl+Space"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Drawing of the bridge"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "What can be done here"), "Menu; Shift+F10"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Charts of the outcome"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "From step to step"), "Left; Right; Up; Down"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Recording strip"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "Move the cursor"), "Left; Right"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Recording strip"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "To the next or previous span"), "PgDown; PgUp"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Drawing of the wiring"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "From pin to pin"), "Left; Right; Up; Down; Home; End"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Drawing of the wiring"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "Larger, smaller, all of it"), "+; -; 0"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Guided run"), QT_TRANSLATE_NOOP("ui::FixedKeys", "Start the wait"),
     "Space"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Guided run"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "To the next or previous step"), "PgDown; PgUp"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Practice"), QT_TRANSLATE_NOOP("ui::FixedKeys", "Choose an answer"),
     "1; 2; 3; 4; 5; 6"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Presented view"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "To the next or previous step"), "Right; Left; Space; PgDown; PgUp"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Presented view"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "Bridge, polarity map, sequence, outcome"), "1; 2; 3; 4"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Presented view"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "End the presentation"), "Esc; F5"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Everywhere"), QT_TRANSLATE_NOOP("ui::FixedKeys", "To the menus"),
     "F10"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Everywhere"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "To the next or previous field"), "Tab; Shift+Tab"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Everywhere"),
     QT_TRANSLATE_NOOP("ui::FixedKeys", "From page to page of tabs"),
     "Ctrl+Tab; Ctrl+Shift+Tab; Ctrl+PgUp; Ctrl+PgDown"},
    {QT_TRANSLATE_NOOP("ui::FixedKeys", "Everywhere"), QT_TRANSLATE_NOOP("ui::FixedKeys", "Close the window"),
     "Alt+F4"},
};

}  // namespace

std::vector<FixedKeys> fixedKeys() {
  std::vector<FixedKeys> keys;
  const auto text = [](const char* english) { return QCoreApplication::translate("ui::FixedKeys", english); };
  for (const FixedKeysRow& row : fixedRows)
    keys.push_back({text(row.place), text(row.text),
                    QKeySequence::listFromString(row.keys, QKeySequence::PortableText)});
  return keys;
}

}  // namespace ui

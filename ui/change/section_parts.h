// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QAbstractItemModel;
class QLabel;

namespace ui {

class SheetView;

// What the sections of the page of changes are made of.

QLabel* sectionTitle(const char* objectName, const QString& text);
/// A table to be read, a row at a time.
SheetView* sectionTable(const char* objectName, const QString& meaning, QAbstractItemModel* model);
/// As high as its rows, so that the page scrolls and not a table within it; at most `most` rows.
void fitToRows(SheetView* table, int most = 30);

}  // namespace ui

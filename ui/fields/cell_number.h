// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMetaType>
#include <QModelIndex>
#include <QString>
#include <QVariant>
#include <functional>
#include <optional>

#include "core/units/notation.h"

class QLineEdit;

namespace ui {

class DigitKeys;

/// What number a cell of a table holds; models tell it under `cellNumberRole`, so that the cell's editor says
/// how the text is understood and steps digits as the fields do. What is taken or refused decides the model
/// alone.
struct CellNumber {
  core::UnitFamily family = core::UnitFamily::Plain;
  QString unit;  ///< for UnitFamily::Named
};

constexpr int cellNumberRole = Qt::UserRole + 790;

QVariant cellNumber(core::UnitFamily family, const QString& unit = {});

/// Gives the editor of a cell that holds a number its echo and arrow keys; other cells stay as they are. In
/// an editor Up and Down step the digit left of the cursor; Return and Tab go on to another cell. Without an
/// editor the arrows go from cell to cell.
void attachCellNumber(QLineEdit* editor, const QModelIndex& cell);

/// The same for a field of text that holds such a number now; none: it holds other text.
void attachNumber(QLineEdit* field, const std::function<std::optional<CellNumber>()>& number);

/// The same for a list of numbers between semicolons, line breaks, or commas that a blank follows. The digit
/// left of the cursor is one of the number that the cursor is in.
DigitKeys* attachNumberList(QLineEdit* field, const std::function<std::optional<CellNumber>()>& number);

}  // namespace ui

Q_DECLARE_METATYPE(ui::CellNumber)

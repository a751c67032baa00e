// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/recording/binary/binary_table.h"
#include "core/recording/layout.h"

namespace core {

/// The layout that a table is read with, and what stands in the way.
struct TableLayout {
  Layout layout;
  std::optional<Error> obstacle;  ///< why there is no time; `where` is empty
};

/// The table's own words with `choices` in their place. A chosen column takes precedence over a chosen rate.
TableLayout layoutOf(const BinaryTable& table, const LayoutChoices& choices);

/// The column that is the time where the file does not say: one with such a name, else the first when it
/// rises over the first `values`. Adds what is not sure to the doubts.
void guessTimeColumn(BinaryTable& table, const ColumnValues& values);

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/recording/layout.h"
#include "core/recording/text/cell_kind.h"
#include "core/recording/text/text_limits.h"
#include "core/recording/text/text_sample.h"
#include "core/units/result.h"

namespace core {

using Cells = std::vector<std::string_view>;

/// A table found in a text, before it is known which column is the time.
struct TableGuess {
  Layout layout;                  ///< all but the time; columns as the heading has them, names may be empty
  std::vector<CellKind> kinds;    ///< of each column: what most of its cells are
  std::vector<Cells> rows;        ///< rows of the sample, as wide as the table
  std::optional<double> rate_Hz;  ///< that a line above the table tells
  std::vector<std::string> doubts;
};

/// Finds how the values are written, where they begin and what stands above them; `choices` are taken as
/// given.
///
/// The separator and decimal mark are those by which most lines become rows with numbers. A row of names and
/// a row of units, in either order, may stand right above the values, behind a comment sign; a unit may also
/// stand in the name. All above is preamble. `where` is the place named in errors.
Result<TableGuess> guessTable(const TextSample& sample, const LayoutChoices& choices,
                              const std::string& where);

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

#include "core/recording/characters.h"

namespace core {

inline bool separates(char c, char separator) { return separator == ' ' ? isBlank(c) : c == separator; }

/// `cell` without the blanks around it and its quotes (").
std::string_view unquoted(std::string_view cell);

/// Where the cell that begins at `begin` ends: at a separator, a line end, or the end of the text. In a cell
/// that begins with a quote a separator ends nothing until the quote is closed; one that is not closed in its
/// line is a character like others.
std::size_t endOfCell(std::string_view text, std::size_t begin, char separator);

/// Puts the cells of `line` into `cells`, unquoted. One empty cell behind a closing separator is a cell too:
/// "1;2;" has three. Between blanks (`separator` ' ') there are no empty cells. A blank line has no cells.
void splitCells(std::string_view line, char separator, std::vector<std::string_view>& cells);

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "core/stock/e_series.h"
#include "core/stock/resistor.h"
#include "core/units/result.h"

namespace core {

/// "59k0", "R470", "2M21": IEC 60062, the letter in the place of the decimal mark; `digits` significant ones.
std::string letterCode(Resistance value, int digits);

/// "10x10k 10x1k 10x100": positions and step of each dial.
std::string decadesText(const std::vector<Decade>& decades);
/// The same the other way round; "×" and "*" for "x" too. Of an error `where` is empty.
Result<std::vector<Decade>> decadesFromText(std::string_view text);

/// "0.01 %", "±0.01%" or "50 ppm" as a share. A number alone is refused: it could be either. Of an error
/// `where` is empty.
Result<double> shareFromText(std::string_view text);

}  // namespace core

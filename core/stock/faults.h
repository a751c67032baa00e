// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/stock/stock.h"

namespace core {

constexpr std::size_t longestStockId = 60;  ///< bytes

/// What is wrong with one field of a resistor, box or range, by the field's name in stock files.
struct FieldFault {
  std::string_view field;
  std::string what;
  std::string mend;
};

/// The first thing that cannot be; see checkResistor and its like. Ids are not compared with others.
std::optional<FieldFault> faultOf(const Resistor& resistor);
std::optional<FieldFault> faultOf(const DecadeBox& box);
std::optional<FieldFault> faultOf(const SeriesRange& range);

}  // namespace core

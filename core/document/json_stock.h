// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/document/json_emitter.h"
#include "core/document/json_fields.h"
#include "core/stock/stock.h"

namespace core {

/// The member "stock": three lists, a resistor, box or range a line. What is not known is left out.
void writeStock(JsonEmitter& out, const Stock& stock);
/// Refuses what checkStock refuses, at its place in the file.
Stock readStock(const JsonPlace& at);

/// A day as ISO 8601 text; the member is left out when there is none.
void writeDate(JsonEmitter& out, std::string_view key, const std::optional<Date>& date);
std::optional<Date> readDate(const JsonFields& in, std::string_view key);

}  // namespace core

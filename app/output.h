// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/setup.h"
#include "core/report/report.h"
#include "core/units/date.h"
#include "core/units/quantity.h"
#include "core/units/result.h"

// What commands say: tables or JSON on standard output, one sentence an error on standard error.

namespace app {

/// What a command tells the shell.
enum Exit : int {
  AllPass = 0,      ///< done, and whatever was judged passes
  CheckFailed = 1,  ///< done, and something that was judged does not pass
  BadInput = 2,     ///< a file, name or option that cannot be used, or output that could not be written
};

/// Keys keep the order they are added in.
using Json = nlohmann::ordered_json;

/// `value`, or null when it is not a finite number: JSON has none such.
Json jsonNumber(double value);
Json jsonNumber(std::optional<double> value);

template <class Kind>
std::optional<double> baseOf(const std::optional<core::Quantity<Kind>>& quantity) {
  return quantity ? std::optional(quantity->base()) : std::nullopt;
}

/// A number among words: six significant digits, an en dash for none.
std::string shown(std::optional<double> value);

/// `text` without anything that steers a terminal; line ends are kept where `keepLines` says so.
std::string harmless(std::string text, bool keepLines);
/// The same of JSON, which escapes only some of that by itself: the same value with the rest escaped too.
std::string harmlessJson(const std::string& json);

/// The table in plain text: a title row, what stands in brackets below it, columns padded to the same width,
/// numbers at the right; its note in the end, its caption not at all.
std::string textOf(const core::Table& table);
/// One line an entry, values below each other.
std::string textOf(const std::vector<core::Entry>& entries);

/// Writes `text` to standard output and returns `exit`; BadInput with a message when it cannot be written.
/// Control characters other than line ends are shown as "?", since names in files may hold any.
int print(const std::string& text, Exit exit);
int print(const Json& json, Exit exit);

/// Writes a remark or an error to standard error, one line.
void note(const std::string& text);
int fail(const core::Error& error);
/// "Connection: Lead S- is broken." and a line end; empty where the bridge is connected as its template says.
std::string connectionLine(const core::Bridge& bridge);
/// A remark on the resistors of a channel that were overdue on `day`, if any.
void noteOverdue(const std::string& channel, const core::Setup& setup, core::Date day);

}  // namespace app

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/document/document.h"
#include "core/units/date.h"
#include "core/units/result.h"

// What several commands do with the files and names that the command line gives.

namespace app {

/// The longest file that is read as a document.
inline constexpr std::int64_t greatestDocument_bytes = 64 << 20;

/// Reads a document. Errors name the file; that it was altered since it was saved is told on standard error.
core::Result<core::Document> openDocument(const std::string& path);

/// Refuses what cannot be read as a recording or table before it is opened: a missing path, a folder,
/// a pipe or device (which could wait forever). The error names the file.
core::Result<void> requireRegularFile(const std::string& path);

/// `error` with the file in front of what it already says about the place.
core::Error inFile(const std::string& path, core::Error error);

/// Index of the channel called `name`, or of all channels when `name` is empty. Fails for an unknown
/// name, listing those there are, and for a document without channels.
core::Result<std::vector<std::size_t>> channelsNamed(const core::Document& document, const std::string& name);

/// For CLI::Option::check: what is wrong with a name that was given, which is only that it is empty.
std::string faultOfName(const std::string& name);

/// "pre" and "post" are short for "pre-test" and "post-test"; other names of checks stand for themselves.
std::string fullCheckName(const std::string& name);

/// Names of the shunts that `step` closes.
std::vector<std::string> closedShunts(const core::Setup& setup, std::size_t step);

/// The day that due dates are compared with where no other is given: the computer's.
core::Date today();
/// The moment, by the computer's clock; by SOURCE_DATE_EPOCH (seconds since 1970) where that is set, so that
/// what is made again is made alike.
core::Time now();
/// What --today says; nothing: the computer's day. Fails for text that is no day.
core::Result<core::Date> dayFrom(const std::string& text);

std::string joined(const std::vector<std::string>& words, const std::string& between);
/// `words` between commas, the first twelve when there are more.
std::string listed(const std::vector<std::string>& words);

}  // namespace app

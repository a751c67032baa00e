// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/reader_protocol.h"

#include <algorithm>
#include <charconv>

#include "core/recording/characters.h"
#include "core/recording/exact_text.h"

namespace core {
namespace {

constexpr std::string_view firstLine = "shuntwright-reader 1";
constexpr std::string_view lastLineWhole = "end";
constexpr std::string_view lastLineCut = "cut";
constexpr std::size_t greatestRank = 32;

/// Letters and digits as they are; "-" for nothing.
std::string encoded(std::string_view text) {
  if (text.empty()) return "-";
  return percentEncoded(text, [](char c) { return isLetter(c) || isDigit(c); });
}

std::optional<std::string> decoded(std::string_view text) {
  return text == "-" ? std::string{} : percentDecoded(text);
}

template <class Number>
std::optional<Number> number(std::string_view text) {
  Number value = 0;
  const auto end = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.empty() || end.ec != std::errc() || end.ptr != text.data() + text.size()) return std::nullopt;
  return value;
}

/// At most `most` and one more, which tells that there are too many: an answer may be all separators.
std::vector<std::string_view> parts(std::string_view text, char separator, std::size_t most) {
  std::vector<std::string_view> result;
  for (std::size_t at = 0; at <= text.size() && result.size() <= most;) {
    const std::size_t end = std::min(text.find(separator, at), text.size());
    result.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return result;
}

/// NAME UNIT UNFIT VALUE ORDER SIZE...
std::optional<ReaderVariable> variableIn(std::string_view line) {
  constexpr std::size_t fixedWords = 5;
  const auto words = parts(line, ' ', fixedWords + greatestRank);
  if (words.size() < fixedWords || words.size() > fixedWords + greatestRank) return std::nullopt;
  const auto name = decoded(words[0]);
  const auto unit = decoded(words[1]);
  const auto unfit = decoded(words[2]);
  if (!name || !unit || !unfit) return std::nullopt;
  ReaderVariable variable{*name, *unit, *unfit, {}, {}, words[4] == "columns"};
  if (words[3] != "-") {
    variable.value = number<double>(words[3]);
    if (!variable.value) return std::nullopt;
  }
  for (std::size_t k = fixedWords; k < words.size(); ++k) {
    const auto size = number<std::uint64_t>(words[k]);
    if (!size) return std::nullopt;
    variable.sizes.push_back(*size);
  }
  return variable;
}

}  // namespace

std::string textOf(const ReaderListing& listing) {
  std::string text(firstLine);
  text += '\n';
  for (const ReaderVariable& variable : listing.variables) {
    text += encoded(variable.name) + ' ' + encoded(variable.unit) + ' ' + encoded(variable.unfit) + ' ';
    text += variable.value ? shortestText(*variable.value) : "-";
    text += variable.columnMajor ? " columns" : " rows";
    for (std::size_t k = 0; k < variable.sizes.size() && k < greatestRank; ++k)
      text += ' ' + std::to_string(variable.sizes[k]);
    text += '\n';
  }
  text += listing.whole ? lastLineWhole : lastLineCut;
  return text += '\n';
}

std::optional<ReaderListing> readerListing(std::string_view text) {
  // The first line, the last one, and nothing behind its end.
  constexpr std::size_t most = greatestReaderVariables + 3;
  const auto lines = parts(text, '\n', most);
  if (lines.size() < 3 || lines.size() > most || lines.front() != firstLine || !lines.back().empty())
    return std::nullopt;
  const std::string_view last = lines[lines.size() - 2];
  if (last != lastLineWhole && last != lastLineCut) return std::nullopt;
  ReaderListing listing;
  listing.whole = last == lastLineWhole;
  for (std::size_t k = 1; k + 2 < lines.size(); ++k) {
    auto variable = variableIn(lines[k]);
    if (!variable) return std::nullopt;
    listing.variables.push_back(std::move(*variable));
  }
  return listing;
}

std::string textOf(const ReaderRange& range) {
  return std::to_string(range.variable) + ':' + std::to_string(range.begin) + ':' +
         std::to_string(range.count);
}

std::optional<ReaderRange> readerRange(std::string_view text) {
  const auto words = parts(text, ':', 3);
  if (words.size() != 3) return std::nullopt;
  const auto variable = number<std::size_t>(words[0]);
  const auto begin = number<std::uint64_t>(words[1]);
  const auto count = number<std::uint64_t>(words[2]);
  if (!variable || !begin || !count) return std::nullopt;
  return ReaderRange{*variable, *begin, *count};
}

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

// What the program and its reading process (app/reader) say to each other. The reading process holds
// libraries that a damaged file may make do anything, so that nothing it says is believed unchecked.
//
// It is called "shuntwright-reader KIND list" or "shuntwright-reader KIND read RANGE...", KIND mat or hdf5,
// with the file as standard input, and answers on standard output. list: the text of a listing. read: for
// each range pieces, each a count (8 bytes) and as many doubles, then a count of 0 and the number of finite
// doubles among them (8 bytes); all in the machine's byte order. How it ends is told by ReaderExit.

namespace core {

/// A variable of the file, or a field of a table in it.
struct ReaderVariable {
  std::string name;
  std::string unit;
  std::string unfit;  ///< why it cannot be read, "holds text"; empty when it is of real numbers
  /// Extents as they stand in the file, the one that changes slowest first; none for a single number.
  std::vector<std::uint64_t> sizes;
  std::optional<double> value;  ///< of a single number
  bool columnMajor = false;     ///< as MATLAB has it: the fastest extent is the rows
};

struct ReaderListing {
  std::vector<ReaderVariable> variables;
  bool whole = true;  ///< false when the file has more than greatestReaderVariables
};

/// Numbers of a variable that follow each other in the file.
struct ReaderRange {
  std::size_t variable = 0;
  std::uint64_t begin = 0;
  std::uint64_t count = 0;
};

enum class ReaderExit : int { Done = 0, Usage = 2, NoMemory = 3, Damaged = 4, NotOpened = 5 };

constexpr std::size_t greatestReaderVariables = 4096;
constexpr std::size_t greatestListingBytes = 16UL << 20U;
/// Of one piece, in doubles.
constexpr std::size_t greatestReaderPiece = 1UL << 17U;

std::string textOf(const ReaderListing& listing);
/// None when `text` is no listing.
std::optional<ReaderListing> readerListing(std::string_view text);

std::string textOf(const ReaderRange& range);
std::optional<ReaderRange> readerRange(std::string_view text);

}  // namespace core

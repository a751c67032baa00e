// SPDX-License-Identifier: GPL-3.0-or-later
// The reading process: looks at one MATLAB or HDF5 file, as core/recording/binary/reader_protocol.h has it.
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <new>
#include <string_view>
#include <vector>

#include "app/reader/limits.h"
#include "app/reader/variable_source.h"

namespace {

using core::ReaderExit;

bool writeAll(const void* bytes, std::size_t count) {
  const char* at = static_cast<const char*>(bytes);
  while (count > 0) {
    const ssize_t put = ::write(STDOUT_FILENO, at, count);
    if (put < 0 && errno == EINTR) continue;
    if (put <= 0) return false;
    at += put;
    count -= static_cast<std::size_t>(put);
  }
  return true;
}

bool writeCount(std::uint64_t count) { return writeAll(&count, sizeof count); }

ReaderExit list(const reader::VariableSource& source) {
  const std::string text = textOf(source.listing());
  return writeAll(text.data(), text.size()) ? ReaderExit::Done : ReaderExit::Usage;
}

bool isWithin(const core::ReaderRange& range, const core::ReaderListing& listing) {
  if (range.variable >= listing.variables.size()) return false;
  const core::ReaderVariable& variable = listing.variables[range.variable];
  std::uint64_t numbers = 1;
  for (const std::uint64_t size : variable.sizes)
    if (__builtin_mul_overflow(numbers, size, &numbers)) return false;
  return variable.unfit.empty() && range.begin <= numbers && range.count <= numbers - range.begin;
}

ReaderExit readRange(reader::VariableSource& source, const core::ReaderRange& range) {
  std::vector<double> numbers;
  std::uint64_t finite = 0;
  for (std::uint64_t done = 0; done < range.count;) {
    const std::uint64_t begin = range.begin + done;
    const auto count = static_cast<std::size_t>(
        std::min<std::uint64_t>(source.pieceAt(range.variable, begin), range.count - done));
    numbers.resize(count);
    if (!source.read(range.variable, begin, count, numbers.data())) return ReaderExit::Damaged;
    for (std::size_t at = 0; at < count; at += core::greatestReaderPiece) {
      const std::size_t part = std::min(core::greatestReaderPiece, count - at);
      if (!writeCount(part) || !writeAll(numbers.data() + at, part * sizeof(double)))
        return ReaderExit::Usage;
    }
    finite += static_cast<std::uint64_t>(
        std::count_if(numbers.begin(), numbers.end(), [](double value) { return std::isfinite(value); }));
    done += count;
  }
  return writeCount(0) && writeCount(finite) ? ReaderExit::Done : ReaderExit::Usage;
}

ReaderExit work(std::string_view kind, std::string_view task, const std::vector<core::ReaderRange>& ranges) {
  constexpr const char* file = "/proc/self/fd/0";
  const auto source = kind == "mat" ? reader::openMat(file, STDIN_FILENO) : reader::openHdf5(file);
  if (!source) return ReaderExit::NotOpened;
  if (task == "list") return list(*source);
  for (const core::ReaderRange& range : ranges) {
    if (!isWithin(range, source->listing())) return ReaderExit::Damaged;
    if (const ReaderExit end = readRange(*source, range); end != ReaderExit::Done) return end;
  }
  return ReaderExit::Done;
}

ReaderExit run(int words, char** word) {
  if (words < 3) return ReaderExit::Usage;
  std::vector<core::ReaderRange> ranges;
  for (int k = 3; k < words; ++k) {
    const auto range = core::readerRange(word[k]);
    if (!range) return ReaderExit::Usage;
    ranges.push_back(*range);
  }
  if (!reader::limitYourself()) return ReaderExit::Usage;
  try {
    return work(word[1], word[2], ranges);
  } catch (const std::bad_alloc&) {
    return ReaderExit::NoMemory;
  }
}

}  // namespace

int main(int words, char** word) {
  // At once: a library that tidies up after a damaged file does no more harm.
  ::_exit(static_cast<int>(run(words, word)));
}

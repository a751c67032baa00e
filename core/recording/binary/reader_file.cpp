// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/reader_file.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "core/recording/binary/reader_columns.h"
#include "core/recording/binary/reader_process.h"
#include "core/recording/binary/reader_protocol.h"
#include "core/units/language.h"

namespace core {
namespace {

const char* wordOf(FileKind kind) { return kind == FileKind::Mat ? "mat" : "hdf5"; }

Error garbage(const RegularFile& file) {
  return file.error(say("the file could not be read: the reading process gave an answer that makes no sense"),
                    say("Save it again, or export the recording as text"));
}

/// Asks a process of its own.
AskReader processFor(const SharedFile& file) {
  return [file](std::vector<std::string> words) -> Result<std::unique_ptr<ReaderAnswer>> {
    auto process = ReaderProcess::start(file, std::move(words));
    if (!process) return process.error();
    return std::unique_ptr<ReaderAnswer>(std::move(*process));
  };
}

Result<ReaderListing> listingOf(const SharedFile& file, FileKind kind, const AskReader& ask,
                                const std::stop_token& stop) {
  auto answer = ask({wordOf(kind), "list"});
  if (!answer) return answer.error();
  constexpr std::size_t piece = 1UL << 16U;
  std::string text;
  while (text.size() <= greatestListingBytes) {
    const std::size_t have = text.size();
    text.resize(have + piece);
    const auto got = (*answer)->read(text.data() + have, piece, stop);
    if (!got) return got.error();
    text.resize(have + *got);
    if (*got < piece) break;
  }
  if (text.size() > greatestListingBytes) return garbage(*file);
  if (auto ended = (*answer)->finish(); !ended) return ended.error();
  auto listing = readerListing(text);
  if (!listing) return garbage(*file);
  return std::move(*listing);
}

/// What a variable's range fills: number e of it belongs to column first + e / run % columns.
struct Target {
  ReaderRange range;
  std::size_t firstColumn = 0;
  std::size_t columns = 1;
  std::uint64_t run = 1;  ///< numbers in a row for the same column
};

/// The ranges that give the first `records` of all columns. Of a matrix with its columns one after the other
/// a part is taken column by column, of the first few columns when it is long: each costs going to its place.
std::vector<Target> targetsOf(const std::vector<VariableColumns>& sources, std::uint64_t samples,
                              std::uint64_t records) {
  constexpr std::size_t columnsLookedAt = 16;
  std::vector<Target> targets;
  for (const VariableColumns& source : sources) {
    if (source.interleaved || records >= samples) {
      targets.push_back({{source.variable, 0, std::min(records, samples) * source.columns},
                         source.firstColumn,
                         source.columns,
                         source.interleaved ? 1 : samples});
      continue;
    }
    for (std::size_t k = 0; k < std::min(source.columns, columnsLookedAt); ++k)
      targets.push_back({{source.variable, k * samples, records}, source.firstColumn + k, 1, records});
  }
  return targets;
}

/// Takes the pieces of one range apart.
class RangeReader {
 public:
  RangeReader(ReaderAnswer& answer, const RegularFile& file, const std::stop_token& stop)
      : m_answer(answer), m_file(file), m_stop(stop) {}

  /// Calls `told` with the numbers that came.
  Result<void> read(const Target& target, ColumnValues& values,
                    const std::function<void(std::uint64_t)>& told) {
    std::uint64_t have = 0;
    std::uint64_t finite = 0;
    while (true) {
      std::uint64_t count = 0;
      if (auto got = exactly(&count, sizeof count); !got) return got;
      if (count == 0) break;
      if (count > greatestReaderPiece || count > target.range.count - have) return garbage(m_file);
      m_piece.resize(std::max(m_piece.size(), static_cast<std::size_t>(count)));
      if (auto got = exactly(m_piece.data(), static_cast<std::size_t>(count) * sizeof(double)); !got)
        return got;
      const std::span<const double> piece(m_piece.data(), static_cast<std::size_t>(count));
      finite += static_cast<std::uint64_t>(
          std::count_if(piece.begin(), piece.end(), [](double value) { return std::isfinite(value); }));
      share(piece, have, target, values);
      have += count;
      told(count);
    }
    std::uint64_t finiteTold = 0;
    if (auto got = exactly(&finiteTold, sizeof finiteTold); !got) return got;
    if (have != target.range.count || finite != finiteTold) return garbage(m_file);
    return {};
  }

 private:
  static void share(std::span<const double> piece, std::uint64_t have, const Target& target,
                    ColumnValues& values) {
    if (target.columns == 1) {
      Samples& column = values[target.firstColumn];
      column.insert(column.end(), piece.begin(), piece.end());
      return;
    }
    for (std::size_t k = 0; k < piece.size(); ++k)
      values[target.firstColumn + (have + k) / target.run % target.columns].push_back(piece[k]);
  }
  Result<void> exactly(void* to, std::size_t bytes) {
    const auto got = m_answer.read(static_cast<char*>(to), bytes, m_stop);
    if (!got) return got.error();
    if (*got == bytes) return {};
    // Why it fell silent says more than that it did.
    auto ended = m_answer.finish();
    return ended ? Result<void>(garbage(m_file)) : ended;
  }

  ReaderAnswer& m_answer;
  const RegularFile& m_file;
  const std::stop_token& m_stop;
  std::vector<double> m_piece;
};

Result<ColumnValues> readInReader(const SharedFile& file, FileKind kind, const AskReader& ask,
                                  const std::vector<Target>& targets, std::size_t columns,
                                  const std::stop_token& stop, const Progress& progress) {
  std::vector<std::string> words = {wordOf(kind), "read"};
  std::uint64_t all = 0;
  for (const Target& target : targets) {
    words.push_back(textOf(target.range));
    all += target.range.count;
  }
  if (all > greatestBinaryCells) {
    return file->error(
        say("the file holds {1} numbers, more than can be read at once", {std::to_string(all)}),
        say("Save a shorter recording or fewer channels"));
  }
  auto answer = ask(std::move(words));
  if (!answer) return answer.error();
  ColumnValues values(columns);
  // What a header announces is not believed beyond the size of the file.
  for (const Target& target : targets)
    for (std::size_t k = 0; k < target.columns; ++k)
      values[target.firstColumn + k].reserve(
          static_cast<std::size_t>(std::min(target.range.count / target.columns, file->size())));
  RangeReader reader(**answer, *file, stop);
  std::uint64_t done = 0;
  for (const Target& target : targets) {
    const auto told = [&](std::uint64_t count) {
      done += count;
      if (progress) progress(static_cast<double>(done) / static_cast<double>(all));
    };
    if (auto got = reader.read(target, values, told); !got) return got.error();
  }
  if (auto ended = (*answer)->finish(); !ended) return ended.error();
  return values;
}

}  // namespace

Result<BinaryTable> openInReader(const SharedFile& file, FileKind kind, const std::stop_token& stop,
                                 AskReader ask) {
  if (!ask) ask = processFor(file);
  const auto listing = listingOf(file, kind, ask, stop);
  if (!listing) return listing.error();
  ReaderColumns found = columnsOf(*listing, file->size());
  found.table.kind = kind;
  if (found.sources.empty()) {
    const std::string reason =
        found.table.leftOut.empty() ? std::string{} : ": " + found.table.leftOut.front();
    return file->error(say("the file holds no vectors or matrices of real numbers{1}", {reason}),
                       say("Save the channels as vectors of one length"));
  }
  const std::size_t columns = found.table.columns.size();
  const std::uint64_t samples = found.table.records;
  found.table.read = [file, kind, ask, columns, samples, sources = found.sources](
                         std::uint64_t records, const std::stop_token& halt, const Progress& progress) {
    return readInReader(file, kind, ask, targetsOf(sources, samples, records), columns, halt, progress);
  };
  return std::move(found.table);
}

}  // namespace core

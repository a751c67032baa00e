// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/binary_files.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <new>

#include "core/recording/binary/columns_to_recording.h"
#include "core/recording/binary/npy_file.h"
#include "core/recording/binary/reader_file.h"
#include "core/recording/binary/table_layout.h"
#include "core/recording/binary/uff_file.h"
#include "core/recording/binary/wav_file.h"
#include "core/recording/exact_text.h"
#include "core/recording/file_bytes.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr std::uint64_t recordsLookedAt = 256;
constexpr std::size_t recordsShown = 20;
constexpr std::uint64_t allRecords = std::numeric_limits<std::uint64_t>::max();

Result<BinaryTable> openTable(const SharedFile& file, FileKind kind, const std::stop_token& stop) {
  switch (kind) {
    case FileKind::Wav:
      return openWav(file);
    case FileKind::Npy:
      return openNpy(file);
    case FileKind::Uff58:
      return openUff(file, stop);
    case FileKind::Mat:
    case FileKind::Hdf5:
      return openInReader(file, kind, stop);
    case FileKind::Text:
      break;
  }
  return file->error(say("the file is of no kind that can be read here"), say("Export it as text or WAV"));
}

/// A table and its first numbers.
struct Opened {
  BinaryTable table;
  ColumnValues first;
};

/// The first numbers are read to show them, else only to guess the time by them.
Result<Opened> openedTable(const SharedFile& file, FileKind kind, bool toShow, const std::stop_token& stop) {
  auto table = openTable(file, kind, stop);
  if (!table) return table.error();
  Opened opened{std::move(*table), {}};
  const bool timeKnown = opened.table.timeColumn || opened.table.spacing_s > 0;
  if (toShow || !timeKnown) {
    auto first = opened.table.read(recordsLookedAt, stop, {});
    if (!first) return first.error();
    opened.first = std::move(*first);
  }
  guessTimeColumn(opened.table, opened.first);
  return opened;
}

/// Empty where there is no number.
std::string cellText(const Samples& values, std::size_t row) {
  if (row >= values.size() || !std::isfinite(values[row])) return {};
  return shortestText(values[row]);
}

std::vector<PreviewRow> firstRows(const ColumnValues& values) {
  std::size_t held = 0;
  for (const auto& column : values) held = std::max(held, column.size());
  std::vector<PreviewRow> rows;
  for (std::size_t row = 0; row < std::min(held, recordsShown); ++row) {
    rows.push_back({row + 1, RowRole::Values, {}});
    for (const auto& column : values) rows.back().cells.push_back(cellText(column, row));
  }
  return rows;
}

std::string sentenceOf(const Error& error) {
  std::string text = error.text();
  if (text.front() >= 'a' && text.front() <= 'z') text.front() = static_cast<char>(text.front() - 'a' + 'A');
  return text;
}

Result<Preview> lookAtFile(const SharedFile& file, FileKind kind, const LayoutChoices& choices,
                           const std::stop_token& stop) {
  auto opened = openedTable(file, kind, true, stop);
  if (!opened) return opened.error();
  TableLayout found = layoutOf(opened->table, choices);
  Preview preview{std::move(found.layout), firstRows(opened->first), std::move(opened->table.doubts),
                  std::move(opened->table.leftOut)};
  if (found.obstacle) preview.doubts.push_back(sentenceOf(*found.obstacle));
  return preview;
}

Result<Recording> readFile(const SharedFile& file, FileKind kind, const LayoutChoices& choices,
                           const std::stop_token& stop, const Progress& progress) {
  const auto opened = openedTable(file, kind, false, stop);
  if (!opened) return opened.error();
  const TableLayout found = layoutOf(opened->table, choices);
  if (found.obstacle) return file->error(found.obstacle->what, found.obstacle->mend);
  auto values = opened->table.read(allRecords, stop, progress);
  if (!values) return values.error();
  auto recording = recordingOf(opened->table, found.layout, std::move(*values));
  if (!recording) return file->error(recording.error().what, recording.error().mend);
  return recording;
}

/// What `work` gives for the file at `path`; want of memory for a great one is an error as well.
template <class Work>
auto withFile(const std::filesystem::path& path, const Work& work) -> decltype(work(SharedFile{})) {
  auto opened = RegularFile::open(path);
  if (!opened) return opened.error();
  const auto file = std::make_shared<const RegularFile>(std::move(*opened));
  try {
    return work(file);
  } catch (const std::bad_alloc&) {
    return file->error(say("there is not enough memory for its numbers"),
                       say("Export a shorter recording or fewer channels"));
  }
}

}  // namespace

Result<Preview> lookAtBinary(const std::filesystem::path& path, FileKind kind, const LayoutChoices& choices,
                             const std::stop_token& stop) {
  return withFile(path, [&](const SharedFile& file) { return lookAtFile(file, kind, choices, stop); });
}

Result<Recording> readBinary(const std::filesystem::path& path, FileKind kind, const LayoutChoices& choices,
                             const std::stop_token& stop, const Progress& progress) {
  return withFile(path,
                  [&](const SharedFile& file) { return readFile(file, kind, choices, stop, progress); });
}

}  // namespace core

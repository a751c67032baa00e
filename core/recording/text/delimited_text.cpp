// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/delimited_text.h"

#include <algorithm>
#include <atomic>
#include <condition_variable>
#include <mutex>
#include <thread>

#include "core/recording/clean_text.h"
#include "core/recording/text/cells.h"
#include "core/recording/text/pieces.h"
#include "core/recording/text/recording_builder.h"
#include "core/recording/text/stamps.h"
#include "core/recording/text/table_heading.h"
#include "core/recording/text/text_guess.h"
#include "core/units/language.h"
#include "core/units/threads.h"

namespace core {
namespace {

constexpr std::size_t linesShownAbove = 40;

/// Threads that take pieces in turn, read their rows side by side, and put them together in order.
class ParallelReading {
 public:
  ParallelReading(PieceReader& pieces, const RowPlan& plan, RecordingBuilder& builder,
                  const std::stop_token& stop, const Progress& progress)
      : m_pieces(pieces), m_plan(plan), m_builder(builder), m_stop(stop), m_progress(progress) {}

  /// False when stopped.
  bool read(unsigned threads) {
    onThreads(threads, [this](unsigned thread) { work(thread == 0); });
    return !m_stop.stop_requested();
  }
  bool ranOutOfMemory() const { return m_ranOutOfMemory; }

 private:
  void work(bool reports) {
    TextPiece piece;
    RowBlock block;
    while (take(piece)) {
      readRows(piece, m_plan, block);
      if (!join(piece, block)) return;
      if (reports && m_progress) m_progress(std::min(piece.share, 1.0));
    }
  }

  bool take(TextPiece& piece) {
    const std::lock_guard lock(m_taking);
    if (m_stop.stop_requested()) end();
    return !m_isOver && m_pieces.next(piece);
  }

  bool join(const TextPiece& piece, RowBlock& block) {
    std::unique_lock lock(m_joining);
    m_joined.wait(lock, [&] { return m_next == piece.index || m_isOver; });
    if (m_isOver) return false;
    if (!m_builder.add(block, piece.share)) m_ranOutOfMemory = m_isOver = true;
    ++m_next;
    m_joined.notify_all();
    return !m_isOver;
  }

  /// No further piece; whoever waits for one wakes up.
  void end() {
    const std::lock_guard lock(m_joining);
    m_isOver = true;
    m_joined.notify_all();
  }

  PieceReader& m_pieces;
  const RowPlan& m_plan;
  RecordingBuilder& m_builder;
  const std::stop_token& m_stop;
  const Progress& m_progress;
  std::mutex m_taking;
  std::mutex m_joining;
  std::condition_variable m_joined;
  std::size_t m_next = 0;
  std::atomic<bool> m_isOver = false;
  bool m_ranOutOfMemory = false;
};

unsigned threadsFor(const TextReading& how, std::uint64_t bytes) {
  const auto pieces = bytes / how.pieceBytes + 1;
  const unsigned most =
      how.threads > 0 ? how.threads : std::clamp(std::thread::hardware_concurrency(), 1U, 4U);
  return static_cast<unsigned>(std::min<std::uint64_t>(most, pieces));
}

Error noTime(const std::string& name) {
  return {name, say("no column is known to be the time"),
          say("Choose the time column or give a sample rate; or name the column 'Time [s]', or write 'Sample "
              "rate: 50 Hz' above the names")};
}

/// Rows of twice as many cells as there are names: "0,01,2,5" is 0.01 and 2.5, or four numbers.
std::optional<Error> commasForBoth(const TextGuess& guess, const std::string& name) {
  const auto& lines = guess.sample.lines;
  const std::size_t row = guess.layout.firstRow - 1;
  if (guess.layout.separator != ',' || row == 0 || row >= lines.size()) return std::nullopt;
  Cells names, cells;
  splitCells(lines[row - 1], ',', names);
  splitCells(lines[row], ',', cells);
  if (names.size() < 2 || cells.size() != 2 * names.size()) return std::nullopt;
  const auto count = [](std::size_t number) { return std::to_string(number); };
  return Error{
      name + ", " + say("line {1}", {count(row + 1)}),
      say("it has {1} cells under {2} names: commas between cells and decimal commas cannot be told apart",
          {count(cells.size()), count(names.size())}),
      say("Export it with decimal points, or with semicolons or tabs between the cells")};
}

Result<void> requireUsable(const TextGuess& guess, const std::string& name) {
  if (const auto fault = commasForBoth(guess, name)) return *fault;
  if (!guess.plan.hasTimeColumn && !(guess.layout.time.rate_Hz > 0)) return noTime(name);
  if (guess.plan.values.empty())
    return Error{name, say("there is a time column and nothing else"), say("Export at least one channel")};
  return {};
}

/// What is still missing when all rows are together: units, sources, the start.
Result<Recording> finished(RecordingBuilder::Built built, const TextGuess& guess, const std::string& name) {
  Recording recording = std::move(built.recording);
  if (recording.time.empty()) {
    std::string why;
    if (!recording.skipped.empty())
      why = "; " + say("line {1}", {std::to_string(recording.skipped.front().line)}) + ": " +
            recording.skipped.front().reason;
    return Error{
        name, say("no row has a time and a number{1}", {why}),
        say("Look at that line: what is misread needs another layout, most often another time column "
            "or decimal mark; a file without numbers has to be exported anew")};
  }
  if (recording.columns.empty()) return Error{name, say("no column holds a number"), say("Check the layout")};
  for (std::size_t k = 0; k < recording.columns.size(); ++k)
    recording.columns[k].unit = guess.layout.columns[built.columns[k]].unit;
  const auto& time = guess.layout.time;
  recording.timeSource =
      time.column ? "column '" + guess.layout.columns[*time.column].name + "'" : guess.rateSource;
  if (time.dateColumn)
    recording.timeSource = "columns '" + guess.layout.columns[*time.dateColumn].name + "' and '" +
                           guess.layout.columns[*time.column].name + "'";
  const bool knowsDate = guess.plan.isAbsolute || time.form == TimeForm::DateAndTime || time.dateColumn;
  if (time.column && knowsDate) {
    const std::int64_t ahead_ns = 60 * nanoseconds * guess.ahead_min.value_or(0);
    recording.startedAt = isoText({built.start_ns + ahead_ns, guess.ahead_min});
  }
  return recording;
}

PreviewRow rowAt(const TextGuess& guess, std::size_t line) {
  PreviewRow row;
  row.line = line;
  const Layout& layout = guess.layout;
  row.role = line >= layout.firstRow   ? RowRole::Values
             : line == layout.nameLine ? RowRole::Names
             : line == layout.unitLine ? RowRole::Units
                                       : RowRole::Preamble;
  const std::string_view text = guess.sample.lines[line - 1];
  if (row.role == RowRole::Preamble) {
    row.cells.push_back(cleanText(text));
    return row;
  }
  TableGuess table;
  table.layout = layout;
  table.kinds.resize(layout.columns.size(), CellKind::Number);
  Cells cells;
  if (row.role == RowRole::Values)
    splitCells(text, layout.separator, cells);
  else
    cells = headingCells(text, table, layout.columns.size());
  for (const std::string_view cell : cells) row.cells.push_back(cleanText(cell));
  return row;
}

}  // namespace

Result<Preview> lookAtText(const std::filesystem::path& path, const LayoutChoices& choices,
                           const std::stop_token& stop) {
  const auto file = RegularFile::open(path);
  if (!file) return file.error();
  auto guess = guessText(*file, choices, stop);
  if (!guess) return guess.error();
  Preview preview;
  const std::size_t first =
      guess->layout.firstRow > linesShownAbove ? guess->layout.firstRow - linesShownAbove : 1;
  for (std::size_t line = first;
       line <= guess->sample.lines.size() && preview.rows.size() < greatestPreviewRows; ++line)
    preview.rows.push_back(rowAt(*guess, line));
  preview.doubts = std::move(guess->doubts);
  if (guess->plan.values.empty()) preview.doubts.push_back(say("There is a time column and nothing else."));
  preview.leftOut = std::move(guess->leftOut);
  preview.layout = std::move(guess->layout);
  return preview;
}

Result<Recording> readText(const std::filesystem::path& path, const LayoutChoices& choices,
                           const std::stop_token& stop, const Progress& progress, const TextReading& how) {
  const auto file = RegularFile::open(path);
  if (!file) return file.error();
  auto guess = guessText(*file, choices, stop);
  if (!guess) return guess.error();
  if (const auto usable = requireUsable(*guess, file->name()); !usable) return usable.error();
  guess->sample = {};

  PieceReader pieces(*file, guess->layout.encoding, how.pieceBytes, stop);
  pieces.leaveOut(guess->layout.firstRow - 1);
  RecordingBuilder builder(guess->plan, guess->layout.time.rate_Hz, guess->layout.firstRow - 1);
  ParallelReading reading(pieces, guess->plan, builder, stop, progress);
  if (!reading.read(threadsFor(how, file->size()))) return cancelled();
  if (pieces.fault()) return *pieces.fault();
  if (reading.ranOutOfMemory())
    return Error{file->name(), say("there is not memory enough for so many samples"),
                 say("Export a shorter recording or fewer channels")};
  if (progress) progress(1);
  return finished(builder.take(), *guess, file->name());
}

}  // namespace core

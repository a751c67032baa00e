// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <algorithm>
#include <atomic>
#include <csignal>
#include <cstdio>
#include <iterator>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "app/progress_line.h"
#include "app/recording_check.h"
#include "app/recordings.h"
#include "core/campaign/overview.h"
#include "core/document/edits.h"
#include "core/units/notation.h"
#include "core/units/threads.h"

namespace app {
namespace {

struct BatchOptions {
  std::vector<std::string> files;
  std::string recording;
  std::string name;
  std::string readAs;
  std::string today;
  unsigned jobs = 0;
  bool channels = false;
  bool json = false;
};

volatile std::sig_atomic_t interrupted = 0;

/// The documents that a word of the command line means: those in a folder, those of a pattern, or the file.
std::vector<std::string> filesOf(const std::string& word) {
  const QFileInfo info(QString::fromStdString(word));
  QDir folder(info.filePath());
  QStringList patterns{"*.bridgecal"};
  if (!info.exists() && info.fileName().contains(QRegularExpression("[*?\\[]"))) {
    folder = QDir(info.path());
    patterns = QStringList{info.fileName()};
  } else if (!info.isDir()) {
    return {word};
  }
  std::vector<std::string> files;
  for (const QString& name : folder.entryList(patterns, QDir::Files, QDir::Name))
    files.push_back(QDir::cleanPath(folder.filePath(name)).toStdString());
  return files;
}

/// All documents that are meant; a folder or pattern without any stands for itself and cannot be read.
struct Wanted {
  std::string file;
  bool isEmpty = false;
};
std::vector<Wanted> wantedFiles(const BatchOptions& options) {
  std::vector<Wanted> wanted;
  for (const std::string& word : options.files) {
    const std::vector<std::string> found = filesOf(word);
    if (found.empty()) wanted.push_back({word, true});
    for (const std::string& file : found) wanted.push_back({file});
  }
  return wanted;
}

/// The recording that the channels are judged by instead of the checks that they hold.
struct Judging {
  core::Recording recording;
  core::Check check;  ///< name and recording
};

/// What is the same for all documents.
struct Batch {
  BatchOptions options;
  std::optional<Judging> judging;
  core::Date today;
  unsigned threads = 1;  ///< for the channels of one document
};

/// Does `work(k)` for each k below `count` on `threads`, until Ctrl+C.
template <class Work>
void forEach(std::size_t count, unsigned threads, const Work& work) {
  std::atomic<std::size_t> next = 0;
  core::onThreads(static_cast<unsigned>(std::min<std::size_t>(threads, count)), [&](unsigned) {
    for (std::size_t k = next++; k < count && !interrupted; k = next++) work(k);
  });
}

/// What one document came to, as it is printed.
struct Done {
  std::string lines;
  Exit exit = AllPass;
  std::vector<std::string> notes;  ///< for standard error
};

std::string lineOf(const Json& json) {
  return harmlessJson(json.dump(-1, ' ', false, Json::error_handler_t::replace)) + "\n";
}

Json rowJson(const std::string& file, const core::Document& document, const core::OverviewRow& row) {
  return {{"file", file},
          {"channel", document.channels[row.channel]->name},
          {"group", document.channels[row.channel]->group},
          {"check", row.check ? Json(row.latest) : Json(nullptr)},
          {"verdict", core::verdictWord(row.verdict)},
          {"worst", jsonNumber(row.worst)},
          {"worst_step", row.worstStep ? Json(*row.worstStep + 1) : Json(nullptr)},
          {"gain", jsonNumber(core::gainOf(row))},
          {"change", core::changeKey(row.change)},
          {"gain_change", jsonNumber(core::gainChangeOf(row))},
          {"open_remarks", row.openRemarks},
          {"overdue", row.overdue},
          {"status", row.status}};
}

std::string worstText(const core::OverviewRow& row) {
  if (!row.worst) return "no deviation";
  return core::formatNumber(*row.worst, 3) + " times the limit at step " + std::to_string(*row.worstStep + 1);
}

std::string rowText(const std::string& file, const core::Document& document, const core::OverviewRow& row) {
  return file + ": " + document.channels[row.channel]->name + ": " + row.status + "; " + worstText(row) +
         "\n";
}

core::Verdict verdictOf(const core::OverviewTally& tally) {
  if (tally.fail > 0) return core::Verdict::Fail;
  if (tally.cannotTell > 0) return core::Verdict::CannotTell;
  return tally.channels > 0 && tally.pass == tally.channels ? core::Verdict::Pass : core::Verdict::NotJudged;
}

/// One line about a whole document: its worst channel stands for it.
std::string documentLine(const BatchOptions& options, const std::string& file, const core::Document& document,
                         const std::vector<core::OverviewRow>& rows, const core::OverviewTally& tally) {
  std::vector<std::size_t> order;
  for (std::size_t k = 0; k < rows.size(); ++k) order.push_back(k);
  core::sortRows(document, rows, core::OverviewOrder::WorstFirst, false, order);
  if (!options.json) {
    std::string text = file + ": " + std::string(core::verdictWord(verdictOf(tally))) + ", " +
                       std::to_string(tally.channels) + (tally.channels == 1 ? " channel: " : " channels: ") +
                       std::to_string(tally.pass) + " pass, " + std::to_string(tally.fail) + " fail, " +
                       std::to_string(tally.cannotTell) + " cannot tell, " +
                       std::to_string(tally.notJudged + tally.notChecked) + " not judged, " +
                       std::to_string(tally.changed) + " changed";
    if (!rows.empty()) {
      const core::OverviewRow& worst = rows[order.front()];
      text += "; worst " + document.channels[worst.channel]->name + ", " + worstText(worst);
    }
    return text + "\n";
  }
  Json json{{"file", file},
            {"title", document.title},
            {"verdict", core::verdictWord(verdictOf(tally))},
            {"channels", tally.channels},
            {"pass", tally.pass},
            {"fail", tally.fail},
            {"cannot_tell", tally.cannotTell},
            {"not_judged", tally.notJudged},
            {"not_checked", tally.notChecked},
            {"changed", tally.changed},
            {"unchanged", tally.unchanged},
            {"open_remarks", tally.remarks},
            {"overdue", tally.overdue}};
  json["worst"] = rows.empty() ? Json(nullptr) : rowJson(file, document, rows[order.front()]);
  return lineOf(json);
}

std::string rowLine(const BatchOptions& options, const std::string& file, const core::Document& document,
                    const core::OverviewRow& row) {
  if (options.json) return lineOf(rowJson(file, document, row));
  return harmless(rowText(file, document, row), true);
}

Done failed(const BatchOptions& options, const std::string& file, const core::Error& error) {
  Done done;
  done.exit = BadInput;
  done.notes = {error.text()};
  if (options.json) done.lines = lineOf({{"file", file}, {"error", error.text()}});
  return done;
}

/// A document as its checks are.
Done judgedAsIs(const Batch& batch, const std::string& file, const core::Document& document) {
  const BatchOptions& options = batch.options;
  Done done;
  std::vector<core::OverviewRow> rows(document.channels.size());
  forEach(rows.size(), batch.threads, [&](std::size_t k) {
    rows[k] = core::overviewRow(document, k, core::evaluate(*document.channels[k]), batch.today);
  });
  if (interrupted) return done;
  const core::OverviewTally tally = core::tallyOf(rows);
  if (options.channels) {
    for (const core::OverviewRow& row : rows) done.lines += rowLine(options, file, document, row);
  } else {
    const std::string line = documentLine(options, file, document, rows, tally);
    done.lines = options.json ? line : harmless(line, true);
  }
  if (verdictOf(tally) != core::Verdict::Pass || tally.changed > 0) done.exit = CheckFailed;
  return done;
}

/// One channel of a recording, as far as it could be judged.
void addChecked(const BatchOptions& options, const std::string& file, const core::Document& document,
                const CheckedChannel& one, core::Date today, Done& done) {
  if (!one.channel) {
    done.exit = BadInput;
    done.notes.push_back(file + ": " + one.channel.error().text());
    if (options.json)
      done.lines += lineOf({{"file", file}, {"channel", one.name}, {"error", one.channel.error().text()}});
    return;
  }
  const core::Document next = core::withChannel(document, one.index, *one.channel);
  const core::OverviewRow row = core::overviewRow(next, one.index, one.evaluation, today);
  done.lines += rowLine(options, file, next, row);
  for (const std::string& remark : remarksOf(one.find, *one.way, document.channels[one.index]->setup))
    done.notes.push_back(file + ": " + one.name + ": " + remark);
  if (row.verdict != core::Verdict::Pass || row.change == core::Change::Changed)
    done.exit = std::max(done.exit, CheckFailed);
}

/// A document whose channels are judged by the columns of a recording.
Done judgedByRecording(const Batch& batch, const std::string& file, const core::Document& document) {
  const core::Recording& recording = batch.judging->recording;
  const auto uses = channelColumns(document, recording, "", "");
  if (!uses) return failed(batch.options, file, inFile(file, uses.error()));
  std::vector<std::vector<CheckedChannel>> each(uses->size());
  forEach(uses->size(), batch.threads, [&](std::size_t k) {
    each[k] = checkedChannels(document, recording, {(*uses)[k]}, {}, batch.judging->check);
  });
  Done done;
  if (interrupted) return done;
  std::vector<CheckedChannel> all;
  for (std::vector<CheckedChannel>& ofUse : each)
    std::move(ofUse.begin(), ofUse.end(), std::back_inserter(all));
  for (const CheckedChannel& one : all) addChecked(batch.options, file, document, one, batch.today, done);
  const std::vector<std::string> missing = withoutColumn(document, all);
  if (!missing.empty())
    done.notes.push_back(file + ": the recording has no column for " + listed(missing) + ", not checked.");
  return done;
}

Done judged(const Batch& batch, const Wanted& wanted) {
  if (wanted.isEmpty)
    return failed(batch.options, wanted.file,
                  {wanted.file, "there is no document in it",
                   "Name a folder, a pattern or files ending in .bridgecal"});
  const auto document = openDocument(wanted.file);
  if (!document) return failed(batch.options, wanted.file, document.error());
  return batch.judging ? judgedByRecording(batch, wanted.file, *document)
                       : judgedAsIs(batch, wanted.file, *document);
}

/// Writes each document's lines as a whole and in the order of the documents, as soon as those before are
/// written.
class Writer {
 public:
  explicit Writer(std::size_t count) : m_done(count), m_progress("batch") {}

  void take(std::size_t index, Done done) {
    const std::lock_guard lock(m_lock);
    m_done[index] = std::move(done);
    ++m_finished;
    for (; m_next < m_done.size() && m_done[m_next]; ++m_next) {
      Done& next = *m_done[m_next];
      for (const std::string& sentence : next.notes) note(sentence);
      if (!next.lines.empty() &&
          (std::fwrite(next.lines.data(), 1, next.lines.size(), stdout) != next.lines.size() ||
           std::fflush(stdout) != 0))
        m_broken = true;
      m_exit = std::max(m_exit, next.exit);
      next = {};
    }
    m_progress.show(static_cast<double>(m_finished) / static_cast<double>(m_done.size()));
  }

  bool broken() const { return m_broken; }
  Exit exit() const { return m_exit; }

 private:
  std::mutex m_lock;
  std::vector<std::optional<Done>> m_done;
  std::size_t m_next = 0, m_finished = 0;
  std::atomic<bool> m_broken = false;
  Exit m_exit = AllPass;
  ProgressLine m_progress;
};

/// The recording, read once for all documents; nothing where none is named.
core::Result<std::optional<Judging>> judgingBy(const BatchOptions& options) {
  if (options.recording.empty()) {
    if (!options.name.empty() || !options.readAs.empty())
      return core::Error{options.name.empty() ? "--read-as" : "--as", "it is about a recording",
                         "Add --recording with the file"};
    return std::optional<Judging>();
  }
  const auto choices = layoutChoices(options.readAs);
  if (!choices) return choices.error();
  auto recording = openRecording(options.recording, *choices);
  if (!recording) return recording.error();
  Judging judging;
  judging.recording = std::move(*recording);
  judging.check.name = fullCheckName(options.name.empty() ? "pre" : options.name);
  return std::optional(std::move(judging));
}

/// The first Ctrl+C ends after the documents that are being judged, a second one at once.
void stopOnSignal() {
  std::signal(SIGINT, [](int) {
    interrupted = 1;
    std::signal(SIGINT, SIG_DFL);
  });
}

int run(const BatchOptions& options) {
  const auto today = dayFrom(options.today);
  if (!today) return fail(today.error());
  auto judging = judgingBy(options);
  if (!judging) return fail(judging.error());
  const std::vector<Wanted> wanted = wantedFiles(options);
  stopOnSignal();
  Writer writer(wanted.size());
  const unsigned most = options.jobs > 0 ? options.jobs : std::max(1U, std::thread::hardware_concurrency());
  const auto count = static_cast<unsigned>(std::min<std::size_t>(most, wanted.size()));
  const Batch batch{options, std::move(*judging), *today, most / count};
  forEach(wanted.size(), count, [&](std::size_t k) {
    if (writer.broken()) return;
    Done done = judged(batch, wanted[k]);
    if (!interrupted) writer.take(k, std::move(done));
  });
  if (writer.broken())
    return fail({"standard output", "the result could not be written", "Look whether the disk is full"});
  if (interrupted) return fail({"", "stopped; the documents above are complete", ""});
  return writer.exit();
}

}  // namespace

void addBatch(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<BatchOptions>();
  CLI::App* command = cli.add_subcommand("batch", "Judges every channel of many documents");
  command->add_option("FILES", options->files, "Documents, folders of documents, or patterns in quotes")
      ->type_name("")
      ->required();
  command->add_flag("--channels", options->channels, "A line a channel instead of a line a document");
  command
      ->add_option("--recording", options->recording,
                   "Judge the channels by the columns of this recording, a line a channel")
      ->type_name("FILE");
  command->add_option("--as", options->name, "Name of that check: pre, post or any other; pre without it")
      ->check(faultOfName);
  command->add_option("--read-as", options->readAs, readAsHelp);
  command
      ->add_option(
          "--jobs", options->jobs,
          "How many documents, or channels of a single one, at once; without it as many as processors")
      ->check(CLI::Range(1, 256));
  command->add_option("--today", options->today, "Day that due dates are compared with, as 2026-05-11");
  command->add_flag("--json", options->json, "A JSON object a line instead of text");
  command->footer(
      "Lines come in the order of the documents, whole or not at all. A document that cannot be read is one\n"
      "line on standard error, with --json also an object with \"error\", and does not hide the others.\n"
      "The exit status is 0 when all channels pass and none changed since the check before, 1 when one does\n"
      "not, 2 when a document cannot be read.\n"
      "With --recording the columns belong to the channels of their name, or that remember them. Each is\n"
      "judged as by \"shuntwright check\", which also saves the checks and takes --match, and compared with\n"
      "the latest check that it holds. One that cannot be read from the recording exits with 2.");
  command->callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

}  // namespace app

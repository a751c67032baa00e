// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <algorithm>
#include <atomic>
#include <csignal>
#include <cstdio>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "app/progress_line.h"
#include "core/campaign/overview.h"
#include "core/units/notation.h"
#include "core/units/threads.h"

namespace app {
namespace {

struct Options {
  std::vector<std::string> files;
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

core::Result<std::vector<std::string>> allFiles(const Options& options) {
  std::vector<std::string> files;
  for (const std::string& word : options.files) {
    const std::vector<std::string> found = filesOf(word);
    if (found.empty())
      return core::Error{word, "there is no document in it",
                         "Name a folder, a pattern or files ending in .bridgecal"};
    files.insert(files.end(), found.begin(), found.end());
  }
  return files;
}

/// What one document came to, as it is printed.
struct Done {
  std::string lines;
  Exit exit = AllPass;
  std::string error;
};

std::string lineOf(const Json& json) {
  return json.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n";
}

Json rowJson(const std::string& file, const core::Document& document, const core::OverviewRow& row) {
  return {{"file", file},
          {"channel", document.channels[row.channel]->name},
          {"group", document.channels[row.channel]->group},
          {"check", row.check ? Json(row.latest) : Json(nullptr)},
          {"verdict", core::verdictWord(row.verdict)},
          {"worst", jsonNumber(row.worst)},
          {"worst_step", row.worstStep ? Json(*row.worstStep + 1) : Json(nullptr)},
          {"gain", jsonNumber(row.gain)},
          {"change", core::changeKey(row.change)},
          {"gain_change", jsonNumber(row.gainChange)},
          {"open_remarks", row.openRemarks},
          {"overdue", row.overdue},
          {"status", row.status}};
}

std::string worstText(const core::OverviewRow& row) {
  if (!row.worst) return "no deviation";
  return core::formatNumber(*row.worst, 3) + " of the limit at step " + std::to_string(*row.worstStep + 1);
}

std::string rowText(const std::string& file, const core::Document& document, const core::OverviewRow& row) {
  return file + ": " + document.channels[row.channel]->name + ": " +
         std::string(core::verdictWord(row.verdict)) + ", " + worstText(row) + ", " +
         std::string(core::changeKey(row.change)) + ", " + row.status + "\n";
}

core::Verdict verdictOf(const core::OverviewTally& tally) {
  if (tally.fail > 0) return core::Verdict::Fail;
  if (tally.cannotTell > 0) return core::Verdict::CannotTell;
  return tally.channels > 0 && tally.pass == tally.channels ? core::Verdict::Pass : core::Verdict::NotJudged;
}

/// One line about a whole document: its worst channel stands for it.
std::string documentLine(const Options& options, const std::string& file, const core::Document& document,
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

Done judged(const Options& options, const std::string& file, core::Date today) {
  Done done;
  const auto document = openDocument(file);
  if (!document) {
    done.error = document.error().text();
    done.exit = BadInput;
    if (options.json) done.lines = lineOf({{"file", file}, {"error", done.error}});
    return done;
  }
  std::vector<core::OverviewRow> rows;
  for (std::size_t k = 0; k < document->channels.size() && !interrupted; ++k) {
    rows.push_back(core::overviewRow(*document, k, core::evaluate(*document->channels[k]), today));
    if (options.channels)
      done.lines += options.json ? lineOf(rowJson(file, *document, rows.back()))
                                 : harmless(rowText(file, *document, rows.back()), true);
  }
  const core::OverviewTally tally = core::tallyOf(rows);
  if (!options.channels) {
    const std::string line = documentLine(options, file, *document, rows, tally);
    done.lines = options.json ? line : harmless(line, true);
  }
  if (verdictOf(tally) != core::Verdict::Pass || tally.changed > 0) done.exit = CheckFailed;
  return done;
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
      if (!next.error.empty()) note(next.error);
      if (!next.lines.empty() &&
          std::fwrite(next.lines.data(), 1, next.lines.size(), stdout) != next.lines.size())
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

int batch(const Options& options) {
  const auto today = dayFrom(options.today);
  if (!today) return fail(today.error());
  const auto files = allFiles(options);
  if (!files) return fail(files.error());
  std::signal(SIGINT, [](int) { interrupted = 1; });
  Writer writer(files->size());
  std::atomic<std::size_t> next = 0;
  const unsigned most = options.jobs > 0 ? options.jobs : std::max(1U, std::thread::hardware_concurrency());
  const auto count = static_cast<unsigned>(std::min<std::size_t>(most, files->size()));
  core::onThreads(count, [&](unsigned) {
    for (std::size_t k = next++; k < files->size() && !interrupted && !writer.broken(); k = next++) {
      Done done = judged(options, (*files)[k], *today);
      if (!interrupted) writer.take(k, std::move(done));
    }
  });
  if (interrupted) {
    std::fflush(stdout);
    return fail({"", "stopped; the documents above are complete", ""});
  }
  if (writer.broken() || std::fflush(stdout) != 0)
    return fail({"standard output", "the result could not be written", "Look whether the disk is full"});
  return writer.exit();
}

}  // namespace

void addBatch(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<Options>();
  CLI::App* command = cli.add_subcommand("batch", "Judges every channel of many documents");
  command->add_option("FILES", options->files, "Documents, folders of documents, or patterns in quotes")
      ->type_name("")
      ->required();
  command->add_flag("--channels", options->channels, "A line a channel instead of a line a document");
  command->add_option("--jobs", options->jobs, "How many documents at once; without it one a processor")
      ->check(CLI::Range(1, 256));
  command->add_option("--today", options->today, "Day that due dates are compared with, as 2026-05-11");
  command->add_flag("--json", options->json, "A JSON object a line instead of text");
  command->footer(
      "Lines come in the order of the documents, whole or not at all. A document that cannot be read is one\n"
      "line on standard error and does not hide the others. The exit status is 0 when all channels pass and\n"
      "none changed since the check before, 1 when one does not, 2 when a document cannot be read.\n"
      "To judge all channels of one recording, see \"shuntwright check --help\".");
  command->callback([options, &chosen] { chosen = [options] { return batch(*options); }; });
}

}  // namespace app

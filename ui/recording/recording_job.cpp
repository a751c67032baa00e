// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/recording_job.h"

#include <QFileInfo>
#include <QtConcurrentRun>
#include <algorithm>

#include "core/recording/reader.h"
#include "core/units/language.h"
#include "core/units/threads.h"
#include "ui/safe_file.h"

namespace ui {
namespace {

constexpr int wholeProgress = 1000;
constexpr double shareOfReading = 0.7;  ///< the rest of the progress is level finding
constexpr unsigned findingThreads = 2;

QString letters(const QString& text) {
  QString kept;
  for (const QChar c : text)
    if (c.isLetterOrNumber()) kept += c.toCaseFolded();
  return kept;
}

std::optional<std::size_t> columnCalled(const core::Recording& recording, const std::string& name) {
  for (std::size_t k = 0; k < recording.columns.size(); ++k)
    if (recording.columns[k].name == name) return k;
  return std::nullopt;
}

/// Whether `column` is `name` but for capitals and punctuation, or begins so and goes on as another word:
/// TP-01_raw does for TP-01, TP-012 does not.
bool isNearly(const QString& column, const QString& name) {
  const QString word = letters(name);
  if (word.isEmpty() || !letters(column).startsWith(word)) return false;
  qsizetype taken = 0, at = 0;
  while (at < column.size() && taken < word.size()) taken += column[at++].isLetterOrNumber() ? 1 : 0;
  return at == column.size() || !column[at].isLetterOrNumber() || letters(column).size() == word.size() ||
         (column[at].isLetter() && word.back().isNumber());
}

/// Two threads take one column after the other.
std::vector<core::ChannelFind> findsOf(const RecordingTask& task, const core::Recording& recording,
                                       const std::vector<core::ColumnUse>& uses, const std::stop_token& stop,
                                       const core::Progress& progress) {
  std::vector<core::ChannelFind> finds(uses.size());
  std::atomic<std::size_t> next = 0, done = 0;
  core::onThreads(findingThreads, [&](unsigned) {
    for (std::size_t k = next++; k < uses.size() && !stop.stop_requested(); k = next++) {
      finds[k] = core::findInColumn(task.document, recording, uses[k], stop);
      progress(static_cast<double>(++done) / static_cast<double>(uses.size()));
    }
  });
  return finds;
}

std::shared_ptr<const RecordingRead> readNow(const RecordingTask& task, const std::stop_token& stop,
                                             std::atomic<int>& perMille) {
  const auto tell = [&](double share) { perMille = static_cast<int>(wholeProgress * share); };
  auto result = std::make_shared<RecordingRead>();
  result->stamp = stampOf(task.path);
  auto recording = core::readRecording(task.path.toStdString(), task.choices, stop,
                                       [&](double share) { tell(shareOfReading * share); });
  if (!recording) {
    result->open = recording.error();
    return result;
  }
  auto open = std::make_shared<OpenRecording>();
  open->path = task.path;
  open->choices = task.choices;
  open->recording = *std::move(recording);
  std::vector<core::ColumnUse> uses = usesOf(task.document, open->recording, task.columns);
  result->nearlyNamed = nearUses(task.document, open->recording, uses);
  // Whoever took the column away from a channel does not want it proposed.
  std::erase_if(result->nearlyNamed,
                [&](const core::ColumnUse& use) { return task.columns.contains(use.channel); });
  uses.insert(uses.end(), result->nearlyNamed.begin(), result->nearlyNamed.end());
  result->finds = findsOf(task, open->recording, uses, stop,
                          [&](double share) { tell(shareOfReading + (1 - shareOfReading) * share); });
  result->open = std::move(open);
  return result;
}

core::Result<QString> hashOfUnchanged(const QString& path, const FileStamp& stamp) {
  auto hash = sha256OfFile(path);
  if (hash && stampOf(path) != stamp)
    return core::Error{QFileInfo(path).fileName().toStdString(),
                       core::say("the file was changed since it was read"), core::say("Read it again")};
  return hash;
}

}  // namespace

std::vector<core::ColumnUse> usesOf(const core::Document& document, const core::Recording& recording,
                                    const ChosenColumns& columns) {
  std::vector<core::ColumnUse> uses = core::columnUses(document, recording);
  for (const auto& [channel, name] : columns) {
    const auto column = name ? columnCalled(recording, *name) : std::nullopt;
    // A column that this file has not leaves the usual one.
    if (name && !column) continue;
    std::erase_if(uses, [&](const core::ColumnUse& use) { return use.channel == channel; });
    if (column) uses.push_back({channel, *column});
  }
  return uses;
}

std::vector<core::ColumnUse> nearUses(const core::Document& document, const core::Recording& recording,
                                      const std::vector<core::ColumnUse>& uses) {
  std::vector<bool> usedChannels(document.channels.size()), usedColumns(recording.columns.size());
  for (const core::ColumnUse& use : uses) usedChannels[use.channel] = usedColumns[use.column] = true;
  std::vector<QString> called;  // hundreds of channels look at hundreds of columns
  for (const core::Column& column : recording.columns)
    called.push_back(letters(QString::fromStdString(column.name)));
  std::vector<core::ColumnUse> near;
  for (std::size_t channel = 0; channel < document.channels.size(); ++channel) {
    if (usedChannels[channel]) continue;
    const QString name = QString::fromStdString(document.channels[channel]->name), word = letters(name);
    std::vector<std::size_t> alike, beginning;
    for (std::size_t column = 0; column < recording.columns.size(); ++column) {
      if (usedColumns[column] || !called[column].startsWith(word)) continue;
      if (!isNearly(QString::fromStdString(recording.columns[column].name), name)) continue;
      (called[column] == word ? alike : beginning).push_back(column);
    }
    const std::vector<std::size_t>& nearest = alike.empty() ? beginning : alike;
    if (nearest.size() == 1) near.push_back({channel, nearest.front()});
  }
  return near;
}

FileStamp stampOf(const QString& path) {
  const QFileInfo file(path);
  return file.exists() ? FileStamp{file.size(), file.lastModified()} : FileStamp{};
}

RecordingJob::RecordingJob(QObject* parent) : QObject(parent), m_shared(std::make_shared<Shared>()) {
  m_tick.setInterval(50);
  connect(&m_tick, &QTimer::timeout, this, [this] { emit progressed(m_shared->perMille); });
  connect(&m_look, &QFutureWatcherBase::finished, this, [this] {
    if (m_look.future().resultCount() == 0) return;  // of a job that was forgotten
    const std::shared_ptr<const Look> look = m_look.result();
    *look ? readOn() : forget();
    emit looked(*look);
  });
  connect(&m_read, &QFutureWatcherBase::finished, this, &RecordingJob::takeRead);
  connect(&m_hash, &QFutureWatcherBase::finished, this, [this] {
    if (m_hash.future().resultCount() == 0) return;
    m_sha256 = m_hash.result();
    m_isFinished = true;
    m_time.done(tr("The recording %1 was read.").arg(QFileInfo(m_task.path).fileName()));
    emit finished();
  });
}

/// Workers hold copies of all they need and end by themselves: a hash cannot be stopped, and nobody should
/// wait for it.
RecordingJob::~RecordingJob() { m_shared->stop.request_stop(); }

void RecordingJob::forget() {
  m_shared->stop.request_stop();
  m_shared = std::make_shared<Shared>();
  m_look.setFuture({});
  m_read.setFuture({});
  m_hash.setFuture({});
  m_result.reset();
  m_sha256 = QString();
  m_isReading = m_isFinished = false;
  m_tick.stop();
}

void RecordingJob::start(const RecordingTask& task) {
  forget();
  m_task = task;
  m_isReading = true;
  m_time.begin();
  m_tick.start();
  m_look.setFuture(QtConcurrent::run([task = m_task, shared = m_shared]() -> std::shared_ptr<const Look> {
    return std::make_shared<Look>(
        core::lookAt(task.path.toStdString(), task.choices, shared->stop.get_token()));
  }));
}

void RecordingJob::cancel() {
  if (!m_isReading) return;
  forget();
  emit cancelled();
}

void RecordingJob::readOn() {
  m_read.setFuture(QtConcurrent::run([task = m_task, shared = m_shared] {
    return readNow(task, shared->stop.get_token(), shared->perMille);
  }));
}

void RecordingJob::takeRead() {
  if (m_read.future().resultCount() == 0) return;
  m_isReading = false;
  m_tick.stop();
  m_result = m_read.result();
  if (m_result->open)
    finishOn();
  else
    m_time.done(tr("The recording %1 could not be read.").arg(QFileInfo(m_task.path).fileName()));
  emit wasRead();
}

void RecordingJob::finishOn() {
  m_hash.setFuture(QtConcurrent::run([path = m_task.path, result = m_result, shared = m_shared] {
    // Nobody looks at the envelopes until the hash is there.
    OpenRecording& open = **result->open;
    for (const core::Column& column : open.recording.columns) {
      if (shared->stop.stop_requested()) return core::Result<QString>(core::cancelled());
      open.envelopes.emplace_back(column.values);
    }
    return hashOfUnchanged(path, result->stamp);
  }));
}

void RecordingJob::findAgain(core::ColumnUse use) {
  using Find = std::shared_ptr<const core::ChannelFind>;
  if (!m_result || !m_result->open) return;
  auto* watcher = new QFutureWatcher<Find>(this);
  connect(watcher, &QFutureWatcherBase::finished, this, [this, watcher, of = m_result] {
    watcher->deleteLater();
    if (m_result == of) emit foundAgain(watcher->result());
  });
  watcher->setFuture(
      QtConcurrent::run([use, document = m_task.document, result = m_result, shared = m_shared]() -> Find {
        const core::Recording& recording = (*result->open)->recording;
        return std::make_shared<core::ChannelFind>(
            core::findInColumn(document, recording, use, shared->stop.get_token()));
      }));
}

}  // namespace ui

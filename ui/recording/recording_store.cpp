// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/recording_store.h"

#include <fcntl.h>
#include <sys/stat.h>

#include <QCryptographicHash>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QFutureWatcher>
#include <QGuiApplication>
#include <QLocale>
#include <QPromise>
#include <QTemporaryDir>
#include <QWindow>
#include <QtConcurrentRun>
#include <algorithm>
#include <stop_token>

#include "core/recording/reader.h"
#include "core/units/language.h"
#include "core/units/text.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr std::size_t mostKept_bytes = std::size_t{3} << 30;
constexpr int wholeProgress = 1000;
constexpr double readingShare = 0.95;  ///< of the progress; the rest is for the envelopes
constexpr qint64 pieceOfHash_bytes = 1 << 20;

using Read = core::Result<std::shared_ptr<const OpenRecording>>;

std::size_t sizeOf(const OpenRecording& open) {
  // One column more for times that have a column of their own.
  return (open.recording.columns.size() + 1) * open.recording.time.size() * sizeof(double);
}

Read readWhole(const QString& path, const core::LayoutChoices& choices, const std::stop_token& stop,
               const core::Progress& progress) {
  auto recording = core::readRecording(path.toStdString(), choices, stop,
                                       [&](double share) { progress(readingShare * share); });
  if (!recording) return recording.error();
  auto open = std::make_shared<OpenRecording>();
  open->path = path;
  open->choices = choices;
  open->recording = *std::move(recording);
  open->envelopes = envelopesOf(open->recording);
  progress(1);
  return std::shared_ptr<const OpenRecording>(std::move(open));
}

/// SHA-256 of a regular file in hexadecimal digits; empty when it cannot be read or `stop` is requested.
QString hashOf(const QString& path, const std::stop_token& stop) {
  // Not waiting for a pipe that was put in the file's place.
  const int descriptor = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_NONBLOCK | O_CLOEXEC);
  if (descriptor < 0) return {};
  QFile file;
  struct stat status {};
  const bool regular = ::fstat(descriptor, &status) == 0 && S_ISREG(status.st_mode);
  if (!file.open(descriptor, QIODevice::ReadOnly, QFileDevice::AutoCloseHandle) || !regular) return {};
  QCryptographicHash hash(QCryptographicHash::Sha256);
  for (;;) {
    if (stop.stop_requested()) return {};
    const QByteArray piece = file.read(pieceOfHash_bytes);
    if (piece.isEmpty()) break;
    hash.addData(piece);
  }
  return file.error() == QFileDevice::NoError ? QString::fromLatin1(hash.result().toHex()) : QString();
}

/// By what a change of a file is noticed.
struct FileStamp {
  qint64 size_bytes = 0, changed_ms = 0;

  friend bool operator==(const FileStamp&, const FileStamp&) = default;
};

/// None when there is no such file.
std::optional<FileStamp> stampOf(const QString& path) {
  const QFileInfo file(path);
  if (!file.isFile()) return std::nullopt;
  return FileStamp{file.size(), file.lastModified().toMSecsSinceEpoch()};
}

std::string nameOf(const QString& path) {
  return core::inQuotes(QFileInfo(path).fileName().toStdString(), 80);
}

/// Whether `path` (of a file that is there) lies in `folder` and no part of it leads out by ".." or a link.
bool isInside(const QString& folder, const QString& path) {
  const QString root = QFileInfo(folder).canonicalFilePath(), file = QFileInfo(path).canonicalFilePath();
  if (root.isEmpty() || file.isEmpty()) return false;
  return file.startsWith(root.endsWith('/') ? root : root + '/');
}

bool goesUp(const QString& path) { return path.split('/').contains(QStringLiteral("..")); }

}  // namespace

std::vector<core::Envelope> envelopesOf(const core::Recording& recording) {
  std::vector<core::Envelope> envelopes;
  for (const core::Column& column : recording.columns) envelopes.emplace_back(column.values);
  return envelopes;
}

struct RecordingStore::Entry {
  State state = State::Reading;
  std::shared_ptr<const OpenRecording> open;
  std::optional<std::pair<Obstacle, core::Error>> fault;
  double progress = 0;
  std::optional<std::uint64_t> size_bytes;  ///< of the file when reading began; none: read elsewhere
  std::optional<FileStamp> stamp;           ///< of the file when reading began
  bool isOutdated = false;
  QString sha256;  ///< empty until it is known
  std::stop_source stop;
  QFutureWatcher<Read> reading;
  QFutureWatcher<QString> hashing;
  std::size_t used = 0;  ///< by the store's clock
};

RecordingStore::RecordingStore(QObject* parent) : QObject(parent) {
  connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, [this] {
    look();
    watchFiles();  // a file that was replaced is watched no more
  });
  connect(qGuiApp, &QGuiApplication::focusWindowChanged, this, [this](const QWindow* window) {
    if (window) look();
  });
}

/// The workers own all they use, so they may end after us.
RecordingStore::~RecordingStore() {
  for (const auto& [key, entry] : m_entries) entry->stop.request_stop();
}

void RecordingStore::setFolder(const QString& folder) {
  if (m_folder == folder) return;
  m_folder = folder;
  // What has failed may be found from here.
  std::erase_if(m_entries, [](const auto& kept) { return kept.second->state == State::Failed; });
  emit changed();
}

QString RecordingStore::pathOf(const core::RecordingReference& reference) const {
  const QString path = toQString(reference.path);
  const QDir from = m_folder.isEmpty() ? QDir::current() : QDir(m_folder);
  const QString absolute = QDir::cleanPath(from.absoluteFilePath(path));
  if (!m_folder.isEmpty() || QFileInfo::exists(absolute)) return absolute;
  const QString demo = builtIn(path);
  return demo.isEmpty() ? absolute : demo;
}

QString RecordingStore::referenceTo(const QString& path) const {
  return (m_folder.isEmpty() ? QDir::current() : QDir(m_folder)).relativeFilePath(path);
}

/// A copy of a recording of the demo on the disk, since recordings are read from files; empty when there is
/// no such recording.
QString RecordingStore::builtIn(const QString& name) const {
  const QString source = ":/demo/" + name;
  if (name.isEmpty() || name.contains('/') || !QFileInfo(source).isFile()) return {};
  if (!m_builtIn) m_builtIn = std::make_unique<QTemporaryDir>();
  const QString copy = m_builtIn->filePath(name);
  if (!QFileInfo::exists(copy) && !QFile::copy(source, copy)) return {};
  return copy;
}

RecordingStore::Key RecordingStore::keyOf(const core::RecordingReference& reference) const {
  return {pathOf(reference), reference.readAs};
}

const RecordingStore::Entry* RecordingStore::find(const core::RecordingReference& reference) const {
  const auto found = m_entries.find(keyOf(reference));
  if (found == m_entries.end()) return nullptr;
  found->second->used = ++m_clock;
  return found->second.get();
}

RecordingStore::State RecordingStore::state(const core::RecordingReference& reference) const {
  const Entry* entry = find(reference);
  return entry ? entry->state : State::Absent;
}

std::shared_ptr<const OpenRecording> RecordingStore::recording(
    const core::RecordingReference& reference) const {
  const Entry* entry = find(reference);
  return entry ? entry->open : nullptr;
}

std::optional<core::Error> RecordingStore::error(const core::RecordingReference& reference) const {
  const Entry* entry = find(reference);
  return entry && entry->fault ? std::optional(entry->fault->second) : std::nullopt;
}

std::optional<RecordingStore::Obstacle> RecordingStore::obstacle(
    const core::RecordingReference& reference) const {
  const Entry* entry = find(reference);
  return entry && entry->fault ? std::optional(entry->fault->first) : std::nullopt;
}

double RecordingStore::progress(const core::RecordingReference& reference) const {
  const Entry* entry = find(reference);
  return entry ? entry->progress : 0;
}

QString RecordingStore::warning(const core::RecordingReference& reference) const {
  const Entry* entry = find(reference);
  if (!entry || entry->state != State::Ready) return {};
  const QString name = QFileInfo(entry->open->path).fileName();
  const QLocale locale;
  if (entry->isOutdated)
    return QFileInfo(entry->open->path).isFile()
               ? tr("%1 was changed on the disk after it was read. What is shown is what was read then.")
                     .arg(name)
               : tr("%1 is no longer on the disk. What is shown was read before.").arg(name);
  if (entry->size_bytes && *entry->size_bytes != reference.size_bytes)
    return tr("%1 has %2 bytes now and had %3 when the readings were taken from it.")
        .arg(name, locale.toString(static_cast<qulonglong>(*entry->size_bytes)),
             locale.toString(static_cast<qulonglong>(reference.size_bytes)));
  if (!entry->sha256.isEmpty() && !reference.sha256.empty() &&
      entry->sha256.toStdString() != reference.sha256)
    return tr("%1: its contents are not those that the readings were taken from (SHA-256 differs).")
        .arg(name);
  return {};
}

bool RecordingStore::isOutdated(const core::RecordingReference& reference) const {
  const Entry* entry = find(reference);
  return entry && entry->isOutdated;
}

void RecordingStore::look() {
  bool isNews = false;
  for (const auto& [key, entry] : m_entries) {
    if (entry->state != State::Ready || !entry->stamp) continue;
    const bool isOutdated = stampOf(key.first) != entry->stamp;
    isNews = isNews || isOutdated != entry->isOutdated;
    entry->isOutdated = isOutdated;
  }
  if (isNews) emit changed();
}

void RecordingStore::readAgain(const core::RecordingReference& reference) {
  const auto found = m_entries.find(keyOf(reference));
  if (found != m_entries.end()) {
    found->second->stop.request_stop();
    m_entries.erase(found);
  }
  want(reference, true);
}

/// Those of the recordings in memory.
void RecordingStore::watchFiles() {
  QStringList wanted;
  for (const auto& [key, entry] : m_entries)
    if (entry->state == State::Ready && QFileInfo(key.first).isFile()) wanted << key.first;
  for (const QString& path : m_watcher.files())
    if (!wanted.contains(path)) m_watcher.removePath(path);
  for (const QString& path : wanted)
    if (!m_watcher.files().contains(path)) m_watcher.addPath(path);
}

std::optional<std::pair<RecordingStore::Obstacle, core::Error>> RecordingStore::refusalOf(
    const core::RecordingReference& reference) const {
  const QString path = pathOf(reference), stated = toQString(reference.path);
  const QFileInfo file(path);
  if (!file.exists())
    return std::pair(
        Obstacle::Missing,
        core::Error{nameOf(path), core::say("there is no such recording in the folder of the document"),
                    core::say("Find it, or put it back there")});
  const bool isBuiltIn = m_builtIn && path.startsWith(m_builtIn->path());
  const QString folder = m_folder.isEmpty() ? QDir::currentPath() : m_folder;
  if (!isBuiltIn && (QDir::isAbsolutePath(stated) || goesUp(stated) || !isInside(folder, path)))
    return std::pair(Obstacle::Outside,
                     core::Error{nameOf(path), core::say("it is not in the folder of the document"),
                                 core::say("It is read when you ask for it")});
  if (!file.isFile())
    return std::pair(Obstacle::Unreadable, core::Error{nameOf(path), core::say("it is no regular file"),
                                                       core::say("Find the recording")});
  if (static_cast<std::uint64_t>(file.size()) != reference.size_bytes)
    return std::pair(
        Obstacle::Changed,
        core::Error{nameOf(path),
                    core::say("it has {1} bytes and had {2} when the readings were taken",
                              {std::to_string(file.size()), std::to_string(reference.size_bytes)}),
                    core::say("The spans may lie elsewhere in it")});
  return std::nullopt;
}

void RecordingStore::want(const core::RecordingReference& reference, bool isAsked) {
  const Key key = keyOf(reference);
  const auto found = m_entries.find(key);
  if (found != m_entries.end() && (found->second->state != State::Failed || !isAsked)) return;
  auto entry = std::make_unique<Entry>();
  entry->used = ++m_clock;
  auto choices = core::choicesFromText(reference.readAs);
  if (!choices) entry->fault.emplace(Obstacle::Unreadable, choices.error());
  if (!isAsked && !entry->fault) entry->fault = refusalOf(reference);
  if (entry->fault) entry->state = State::Failed;
  const bool failed = entry->fault.has_value();
  m_entries[key] = std::move(entry);
  if (!failed) read(key, *std::move(choices));
  emit changed();
}

void RecordingStore::read(const Key& key, core::LayoutChoices choices) {
  Entry& entry = *m_entries[key];
  entry.size_bytes = static_cast<std::uint64_t>(QFileInfo(key.first).size());
  entry.stamp = stampOf(key.first);
  connect(&entry.reading, &QFutureWatcher<Read>::finished, this, [this, key] { take(key); });
  connect(&entry.reading, &QFutureWatcher<Read>::progressValueChanged, this, [this, &entry](int value) {
    entry.progress = static_cast<double>(value) / wholeProgress;
    emit changed();
  });
  entry.reading.setFuture(QtConcurrent::run([path = key.first, choices = std::move(choices),
                                             stop = entry.stop.get_token()](QPromise<Read>& promise) {
    promise.setProgressRange(0, wholeProgress);
    promise.addResult(readWhole(path, choices, stop, [&](double share) {
      promise.setProgressValue(static_cast<int>(wholeProgress * share));
    }));
  }));
}

void RecordingStore::take(const Key& key) {
  Entry& entry = *m_entries[key];
  const Read read = entry.reading.result();
  // Memory of the recording is held by the entry alone.
  entry.reading.disconnect(this);
  entry.reading.setFuture({});
  entry.state = read ? State::Ready : State::Failed;
  if (read) {
    entry.open = *read;
    letGo(key);
    hash(key);
    watchFiles();
  } else {
    entry.fault.emplace(Obstacle::Unreadable, read.error());
  }
  emit changed();
}

void RecordingStore::hash(const Key& key) {
  Entry& entry = *m_entries[key];
  connect(&entry.hashing, &QFutureWatcher<QString>::finished, this, [this, &entry] {
    entry.sha256 = entry.hashing.result();
    emit changed();
  });
  entry.hashing.setFuture(QtConcurrent::run(hashOf, key.first, entry.stop.get_token()));
}

void RecordingStore::put(std::shared_ptr<const OpenRecording> recording) {
  if (recording->envelopes.size() != recording->recording.columns.size()) {
    auto complete = std::make_shared<OpenRecording>(*recording);
    complete->envelopes = envelopesOf(complete->recording);
    recording = std::move(complete);
  }
  const Key key{QDir::cleanPath(recording->path), core::textOf(recording->choices)};
  auto& entry = m_entries[key];
  if (entry) entry->stop.request_stop();
  entry = std::make_unique<Entry>();
  entry->state = State::Ready;
  entry->open = std::move(recording);
  entry->progress = 1;
  entry->used = ++m_clock;
  entry->stamp = stampOf(key.first);
  letGo(key);
  watchFiles();
  emit changed();
}

/// The least lately used go until the rest is small enough; `kept` stays whatever it takes.
void RecordingStore::letGo(const Key& kept) {
  std::size_t total = 0;
  std::vector<std::pair<std::size_t, Key>> others;
  for (const auto& [key, entry] : m_entries) {
    if (!entry->open) continue;
    total += sizeOf(*entry->open);
    if (key != kept) others.emplace_back(entry->used, key);
  }
  std::sort(others.begin(), others.end());
  for (const auto& [used, key] : others) {
    if (total <= mostKept_bytes) return;
    total -= sizeOf(*m_entries[key]->open);
    m_entries[key]->stop.request_stop();
    m_entries.erase(key);
  }
}

void RecordingStore::cancel(const core::RecordingReference& reference) {
  const Key key = keyOf(reference);
  const auto found = m_entries.find(key);
  if (found == m_entries.end() || found->second->state != State::Reading) return;
  found->second->stop.request_stop();
  // A new entry: what the worker still comes to is of no use to anybody.
  auto stopped = std::make_unique<Entry>();
  stopped->state = State::Failed;
  stopped->fault.emplace(Obstacle::Cancelled,
                         core::Error{nameOf(key.first), core::say("reading was cancelled"), ""});
  found->second = std::move(stopped);
  emit changed();
}

void RecordingStore::forget(const core::RecordingReference& reference) {
  const auto found = m_entries.find(keyOf(reference));
  if (found == m_entries.end()) return;
  found->second->stop.request_stop();
  m_entries.erase(found);
  emit changed();
}

}  // namespace ui

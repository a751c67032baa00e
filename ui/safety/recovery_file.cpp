// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/recovery_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSysInfo>
#include <QUuid>
#include <algorithm>

#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/record/revisions.h"
#include "ui/document_file.h"
#include "ui/safe_file.h"
#include "ui/state_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int recoveryVersion = 1;
constexpr qint64 greatestRecovery_bytes = (64 << 20) + (64 << 10);
const char* const recoverySuffix = ".recovery";

std::shared_ptr<QLockFile> lockFor(const QString& file) {
  auto lock = std::make_shared<QLockFile>(file + ".lock");
  lock->setStaleLockTime(0);  // a window may stay open for weeks; only a dead process loses its lock
  return lock;
}

QByteArray headOf(const RecoveryNote& note, const QByteArray& body) {
  const QJsonObject head{{"format", "shuntwright-recovery"},
                         {"version", recoveryVersion},
                         {"path", note.path},
                         {"title", note.title},
                         {"when", note.when.toUTC().toString(Qt::ISODate)},
                         {"host", QSysInfo::machineHostName()},
                         {"process", QCoreApplication::applicationPid()},
                         {"sha256", sha256Of(body)}};
  return QJsonDocument(head).toJson(QJsonDocument::Compact) + '\n';
}

/// Reads head and body; what is wrong goes into `problem`.
void readInto(LeftOver& work) {
  const auto refuse = [&](const QString& why) { work.problem = why; };
  const auto bytes = loadBytes(work.slot.file, greatestRecovery_bytes);
  if (!bytes) return refuse(toText(bytes.error()));
  const qsizetype end = bytes->indexOf('\n');
  const QJsonObject head = QJsonDocument::fromJson(bytes->left(std::max<qsizetype>(end, 0))).object();
  work.note = {head["path"].toString(), head["title"].toString(),
               QDateTime::fromString(head["when"].toString(), Qt::ISODate).toLocalTime()};
  if (head["format"].toString() != "shuntwright-recovery")
    return refuse(QCoreApplication::translate("ui::Recovery", "its first line is not one that we wrote"));
  if (head["version"].toInt() != recoveryVersion)
    return refuse(QCoreApplication::translate("ui::Recovery", "a newer version of the program wrote it"));
  const QByteArray body = bytes->mid(end + 1);
  if (head["sha256"].toString() != sha256Of(body))
    return refuse(
        QCoreApplication::translate("ui::Recovery", "its content is not what was written (SHA-256 differs)"));
  auto document = core::readDocument({body.constData(), static_cast<std::size_t>(body.size())});
  if (!document) return refuse(toText(document.error()));
  work.document = *std::move(document);
}

/// Compares with the document's file. False when the work holds nothing that the file does not.
bool compareWithFile(LeftOver& work) {
  if (work.note.path.isEmpty()) return !work.document.channels.empty() || work.document != core::Document{};
  const QFileInfo info(work.note.path);
  work.fileIsGone = !info.exists();
  const auto file = openDocument(work.note.path);
  if (!file) return true;
  work.fileIsNewer = info.lastModified() > work.note.when.addSecs(1);  // `when` has whole seconds
  core::Document inFile = *file;
  inFile.history = work.document.history;  // saving may have been the last that was done
  const auto a = core::writeDocument(inFile), b = core::writeDocument(work.document);
  if (a && b && *a == *b) return false;
  work.differences = core::changesBetween(*file, work.document);
  return true;
}

}  // namespace

QString recoveryFolder() { return QFileInfo(stateFile().fileName()).path() + "/recovery"; }

RecoverySlot newRecoverySlot() {
  const QString name = QUuid::createUuid().toString(QUuid::WithoutBraces);
  const QString file = recoveryFolder() + "/" + name + recoverySuffix;
  return {file, lockFor(file)};
}

core::Result<void> writeRecovery(const RecoverySlot& slot, const RecoveryNote& note,
                                 const core::Document& document) {
  const auto text = core::writeDocument(document);
  if (!text) return text.error();
  const QString folder = QFileInfo(slot.file).path();
  if (QDir().mkpath(folder))
    QFile::setPermissions(folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
  // Without a lock the work is kept all the same: it is better offered twice than lost.
  if (!slot.lock->isLocked()) slot.lock->tryLock(0);
  const QByteArray body = QByteArray::fromStdString(*text);
  return saveBytes(slot.file, headOf(note, body) + body, Readers::OwnerOnly);
}

void removeRecovery(const RecoverySlot& slot) {
  const QFileInfo info(slot.file);
  QFile::remove(slot.file);
  const QDir folder(info.path());
  for (const QString& name : folder.entryList({info.fileName() + ".*"}, QDir::Files | QDir::Hidden))
    if (!name.endsWith(".lock")) QFile::remove(folder.filePath(name));
  slot.lock->unlock();
}

std::vector<LeftOver> findLeftOvers(const QString& folder) {
  std::vector<LeftOver> found;
  for (const QString& name : QDir(folder).entryList({QString("*") + recoverySuffix}, QDir::Files)) {
    LeftOver work;
    work.slot = {QDir(folder).filePath(name), lockFor(QDir(folder).filePath(name))};
    if (!work.slot.lock->tryLock(0)) continue;     // its window lives, or another offers it already
    if (!QFile::exists(work.slot.file)) continue;  // cleared between listing and locking
    readInto(work);
    if (work.problem.isEmpty() && !compareWithFile(work)) {
      removeRecovery(work.slot);
      continue;
    }
    if (!work.note.when.isValid()) work.note.when = QFileInfo(work.slot.file).lastModified();
    found.push_back(std::move(work));
  }
  std::stable_sort(found.begin(), found.end(), [](const LeftOver& a, const LeftOver& b) {
    if (a.problem.isEmpty() != b.problem.isEmpty()) return a.problem.isEmpty();
    return a.note.when > b.note.when;
  });
  return found;
}

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safe_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QCryptographicHash>
#include <QFile>
#include <QSaveFile>
#include <cerrno>
#include <filesystem>
#include <system_error>

#include "core/units/language.h"

namespace ui {
namespace {

/// An open file of the system, closed at the end of its life.
class Descriptor {
 public:
  Descriptor(const QString& path, int flags)
      : m_number(::open(QFile::encodeName(path).constData(), flags | O_CLOEXEC | O_NOCTTY)) {}
  ~Descriptor() {
    if (m_number >= 0) ::close(m_number);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;

  int number() const { return m_number; }
  explicit operator bool() const { return m_number >= 0; }

 private:
  int m_number;
};

/// What went wrong, in words; the system's own where we have none better.
std::string causeOf(int code) {
  switch (code) {
    case ENOSPC:
      return core::say("the disk is full");
    case EDQUOT:
      return core::say("your share of the disk is used up");
    case EFBIG:
      return core::say("the file would be larger than the system allows");
    case EACCES:
    case EPERM:
      return core::say("you do not have the right to do that here");
    case EROFS:
      return core::say("the disk is read-only");
    case EIO:
      return core::say("the disk reports a fault");
    case ENAMETOOLONG:
      return core::say("the name is too long");
    case ENOENT:
      return core::say("there is no such file");
    default:
      return std::generic_category().message(code);
  }
}

core::Error notSaved(const QString& path, const std::string& cause) {
  return {path.toStdString(), core::say("it cannot be written, {1}", {cause}),
          core::say("Save it in another place, or mend the cause and save again")};
}

core::Error notRead(const QString& path, const std::string& cause) {
  return {path.toStdString(), core::say("it cannot be read, {1}", {cause}), core::say("Choose another file")};
}

int retried(auto call) {
  int result = 0;
  do result = call();
  while (result != 0 && errno == EINTR);
  return result;
}

/// A folder may be there and not be reached: no right to look into it, or a disk that fails.
std::string causeOfNoFolder(const std::filesystem::path& folder, const std::error_code& error) {
  const bool isMissing = error == std::errc::no_such_file_or_directory || error == std::errc::not_a_directory;
  return isMissing ? core::say("there is no folder {1}", {folder.string()}) : causeOf(error.value());
}

/// A place that a file can be saved to: its folder without links, and the name in it.
struct Target {
  QString folder;
  QString file;
};

/// The file that a name stands for, through symlinks, whether it exists or not. Refuses names that
/// no file can be saved under, for reasons that the system words badly.
core::Result<Target> targetOf(const QString& path) {
  namespace fs = std::filesystem;
  std::error_code error;
  fs::path file = fs::absolute(QFile::encodeName(path).toStdString(), error);
  constexpr int mostLinks = 40;  // as many as Linux follows
  for (int links = 0; links <= mostLinks; ++links) {
    // By the file system and not by the text: behind a link to a folder, ".." is not the way back.
    const fs::path folder = fs::canonical(file.parent_path(), error);
    if (error) return notSaved(path, causeOfNoFolder(file.parent_path(), error));
    file = folder / file.filename();
    const fs::file_status status = fs::symlink_status(file, error);
    if (fs::is_symlink(status)) {
      file = folder / fs::read_symlink(file, error);
      if (error) return notSaved(path, causeOf(error.value()));
      continue;
    }
    if (fs::is_directory(status)) return notSaved(path, core::say("a folder has that name"));
    if (fs::exists(status) && !fs::is_regular_file(status))
      return notSaved(path, core::say("it is a pipe or a device"));
    return Target{QFile::decodeName(folder.c_str()), QFile::decodeName(file.c_str())};
  }
  return notSaved(path, core::say("it is a link that leads in a circle"));
}

/// Forces the name to the disk; without it a power cut may bring back the old file.
core::Result<void> syncFolder(const QString& path, const QString& folder) {
  const Descriptor descriptor(folder, O_RDONLY | O_DIRECTORY);
  if (descriptor && retried([&] { return ::fsync(descriptor.number()); }) == 0) return {};
  if (errno == EINVAL || errno == ENOTSUP) return {};  // a file system that has no such thing
  return core::Error{
      path.toStdString(),
      core::say("it is written, but the disk did not confirm its folder, {1}", {causeOf(errno)}),
      core::say("Save it in another place as well")};
}

/// Writes all bytes into the new file and sees them on the disk; 0, or the system's error.
int writeThrough(QSaveFile& file, const QByteArray& bytes) {
  errno = 0;
  if (file.write(bytes) != bytes.size() || !file.flush()) return errno != 0 ? errno : EIO;
  if (retried([&] { return ::fsync(file.handle()); }) != 0) return errno;
  struct stat status {};
  if (::fstat(file.handle(), &status) != 0) return errno;
  return status.st_size == bytes.size() ? 0 : EIO;
}

/// Opens a regular file for reading. Non-blocking, since opening a pipe would wait for its writer.
core::Result<void> checkReadable(const QString& path, const Descriptor& file, struct stat& status) {
  if (!file || ::fstat(file.number(), &status) != 0) return notRead(path, causeOf(errno));
  if (S_ISDIR(status.st_mode)) return notRead(path, core::say("it is a folder"));
  if (!S_ISREG(status.st_mode)) return notRead(path, core::say("it is a pipe or a device"));
  return {};
}

/// Hands the file to `take` piece by piece until its end, or until `take` says false.
template <class Take>
core::Result<void> readPieces(const QString& path, const Descriptor& file, const Take& take) {
  QByteArray piece(qsizetype{256} * 1024, Qt::Uninitialized);
  for (;;) {
    const ssize_t count = ::read(file.number(), piece.data(), static_cast<std::size_t>(piece.size()));
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return notRead(path, causeOf(errno));
    if (count == 0 || !take(QByteArrayView(piece.constData(), count))) return {};
  }
}

}  // namespace

core::Result<void> saveBytes(const QString& path, const QByteArray& bytes, Readers readers) {
  const auto target = targetOf(path);
  if (!target) return target.error();
  QSaveFile file(target->file);
  errno = 0;
  if (!file.open(QIODevice::WriteOnly)) {
    const int code = errno;
    return notSaved(path, code != 0 ? causeOf(code) : file.errorString().toStdString());
  }
  if (readers == Readers::OwnerOnly && ::fchmod(file.handle(), S_IRUSR | S_IWUSR) != 0) {
    const int why = errno;
    file.cancelWriting();
    file.commit();
    return notSaved(path, causeOf(why));
  }
  if (const int code = writeThrough(file, bytes); code != 0) {
    file.cancelWriting();
    file.commit();
    return notSaved(path, causeOf(code));
  }
  errno = 0;
  if (!file.commit()) return notSaved(path, causeOf(errno != 0 ? errno : EIO));
  return syncFolder(path, target->folder);
}

core::Result<QByteArray> loadBytes(const QString& path, qint64 cap) {
  const Descriptor file(path, O_RDONLY | O_NONBLOCK);
  struct stat status {};
  if (auto readable = checkReadable(path, file, status); !readable) return readable.error();
  const auto tooLarge = [&] {
    return notRead(path,
                   core::say("it is larger than {1} MB", {std::to_string(cap / (qint64{1024} * 1024))}));
  };
  if (status.st_size > cap) return tooLarge();
  QByteArray bytes;
  bytes.reserve(status.st_size);
  // The file may grow while it is read, and files of the system do not tell their size.
  const auto read = readPieces(path, file, [&](QByteArrayView piece) {
    bytes.append(piece);
    return bytes.size() <= cap;
  });
  if (!read) return read.error();
  if (bytes.size() > cap) return tooLarge();
  return bytes;
}

core::Result<QString> sha256OfFile(const QString& path) {
  const Descriptor file(path, O_RDONLY | O_NONBLOCK);
  struct stat status {};
  if (auto readable = checkReadable(path, file, status); !readable) return readable.error();
  QCryptographicHash hash(QCryptographicHash::Sha256);
  const auto read = readPieces(path, file, [&](QByteArrayView piece) {
    hash.addData(piece);
    return true;
  });
  if (!read) return read.error();
  return QString::fromLatin1(hash.result().toHex());
}

QString sha256Of(const QByteArray& bytes) {
  return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
}

}  // namespace ui

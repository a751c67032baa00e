// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/source_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <system_error>

#include "core/recording/binary/plain_text.h"

namespace core {

Result<std::shared_ptr<const SourceFile>> SourceFile::open(const std::filesystem::path& path) {
  std::string name = plainText(path.filename().string());
  // Non-blocking, or opening a pipe nobody writes to would wait forever.
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY);
  const int opened = errno;
  if (descriptor < 0) {
    return Error{name, "the file cannot be opened: " + std::generic_category().message(opened),
                 "Check the name and the access rights"};
  }
  struct stat status {};
  const bool known = ::fstat(descriptor, &status) == 0;
  if (!known || !S_ISREG(status.st_mode)) {
    ::close(descriptor);
    const bool folder = known && S_ISDIR(status.st_mode);
    return Error{name, folder ? "this is a folder" : "this is a pipe or device and not a file",
                 "Choose a file"};
  }
  return std::shared_ptr<const SourceFile>(
      new SourceFile(std::move(name), descriptor, static_cast<std::uint64_t>(status.st_size)));
}

SourceFile::~SourceFile() { ::close(m_descriptor); }

std::size_t SourceFile::read(std::uint64_t offset, char* to, std::size_t count) const {
  if (offset >= m_size) return 0;
  count = static_cast<std::size_t>(std::min<std::uint64_t>(count, m_size - offset));
  std::size_t have = 0;
  while (have < count) {
    const ssize_t got = ::pread(m_descriptor, to + have, count - have, static_cast<off_t>(offset + have));
    if (got < 0 && errno == EINTR) continue;
    if (got <= 0) break;
    have += static_cast<std::size_t>(got);
  }
  return have;
}

std::string SourceFile::read(std::uint64_t offset, std::size_t count) const {
  // The size first: a damaged header may ask for more than any file has.
  if (offset >= m_size) return {};
  std::string bytes(static_cast<std::size_t>(std::min<std::uint64_t>(count, m_size - offset)), '\0');
  bytes.resize(read(offset, bytes.data(), bytes.size()));
  return bytes;
}

}  // namespace core

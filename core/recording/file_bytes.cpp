// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/file_bytes.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <system_error>

#include "core/recording/clean_text.h"
#include "core/units/language.h"
#include "core/units/progress.h"

namespace core {
namespace {

Error systemError(const std::string& name, const std::string& what, int code) {
  return {name, what + ": " + std::generic_category().message(code),
          say("Check the name and the access rights")};
}

}  // namespace

Result<RegularFile> RegularFile::open(const std::filesystem::path& path) {
  std::string name = cleanText(path.filename().string());
  // Non-blocking, or opening a pipe nobody writes to would wait forever.
  RegularFile file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY), std::move(name));
  struct stat status {};
  if (file.m_descriptor < 0 || ::fstat(file.m_descriptor, &status) != 0)
    return systemError(file.m_name, say("the file cannot be opened"), errno);
  if (S_ISDIR(status.st_mode)) return Error{file.m_name, say("this is a folder"), say("Choose a file")};
  if (!S_ISREG(status.st_mode))
    return Error{file.m_name, say("this is a pipe or device and not a file"), say("Choose a file")};
  file.m_size = static_cast<std::uint64_t>(status.st_size);
  return file;
}

RegularFile& RegularFile::operator=(RegularFile&& other) noexcept {
  std::swap(m_descriptor, other.m_descriptor);
  std::swap(m_name, other.m_name);
  std::swap(m_size, other.m_size);
  return *this;
}

RegularFile::~RegularFile() {
  if (m_descriptor >= 0) ::close(m_descriptor);
}

Result<std::size_t> RegularFile::read(std::uint64_t offset, char* to, std::size_t count) const {
  if (offset >= m_size) return std::size_t{0};
  count = static_cast<std::size_t>(std::min<std::uint64_t>(count, m_size - offset));
  std::size_t have = 0;
  while (have < count) {
    const ssize_t got = ::pread(m_descriptor, to + have, count - have, static_cast<off_t>(offset + have));
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return systemError(m_name, say("the file cannot be read"), errno);
    if (got == 0) break;
    have += static_cast<std::size_t>(got);
  }
  return have;
}

Result<std::string> RegularFile::read(std::uint64_t offset, std::size_t count) const {
  if (offset >= m_size) return std::string{};
  std::string bytes(static_cast<std::size_t>(std::min<std::uint64_t>(count, m_size - offset)), '\0');
  const auto got = read(offset, bytes.data(), bytes.size());
  if (!got) return got.error();
  bytes.resize(*got);
  return bytes;
}

Result<std::string> readRegularFile(const std::filesystem::path& path, std::size_t greatest,
                                    const std::stop_token& stop) {
  constexpr std::size_t piece = 4UL * 1024 * 1024;
  const auto file = RegularFile::open(path);
  if (!file) return file.error();
  if (file->size() > greatest) {
    return Error{file->name(), say("the file is larger than {1} MiB", {std::to_string(greatest >> 20U)}),
                 say("Export a shorter recording or fewer channels")};
  }
  std::string bytes(static_cast<std::size_t>(file->size()), '\0');
  std::size_t have = 0;
  while (have < bytes.size()) {
    if (stop.stop_requested()) return cancelled();
    const auto got = file->read(have, bytes.data() + have, std::min(piece, bytes.size() - have));
    if (!got) return got.error();
    if (*got == 0) break;
    have += *got;
  }
  bytes.resize(have);
  return bytes;
}

}  // namespace core

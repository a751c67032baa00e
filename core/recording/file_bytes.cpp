// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/file_bytes.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <system_error>

#include "core/recording/text/text_table.h"
#include "core/units/progress.h"

namespace core {
namespace {

/// An open file that closes itself.
class Descriptor {
 public:
  /// Non-blocking, or opening a pipe nobody writes to would wait forever.
  explicit Descriptor(const std::filesystem::path& path)
      : m_number(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY)) {}
  ~Descriptor() {
    if (m_number >= 0) ::close(m_number);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  int number() const { return m_number; }

 private:
  int m_number;
};

Error systemError(const std::string& name, const std::string& what, int code) {
  return {name, what + ": " + std::generic_category().message(code), "Check the name and the access rights"};
}

}  // namespace

Result<std::string> readRegularFile(const std::filesystem::path& path, std::size_t greatest,
                                    const std::stop_token& stop) {
  constexpr std::size_t piece = 4UL * 1024 * 1024;
  const std::string name = cleanText(path.filename().string());
  const Descriptor file(path);
  struct stat status {};
  if (file.number() < 0 || ::fstat(file.number(), &status) != 0) {
    return systemError(name, "the file cannot be opened", errno);
  }
  if (S_ISDIR(status.st_mode)) return Error{name, "this is a folder", "Choose a file"};
  if (!S_ISREG(status.st_mode))
    return Error{name, "this is a pipe or device and not a file", "Choose a file"};
  const auto size = static_cast<std::size_t>(status.st_size);
  if (size > greatest) {
    return Error{name, "the file is larger than " + std::to_string(greatest >> 20U) + " MiB",
                 "Export a shorter recording or fewer channels"};
  }
  std::string bytes(size, '\0');
  std::size_t have = 0;
  while (have < size) {
    if (stop.stop_requested()) return cancelled();
    const ssize_t got = ::read(file.number(), bytes.data() + have, std::min(piece, size - have));
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return systemError(name, "the file cannot be read", errno);
    if (got == 0) break;
    have += static_cast<std::size_t>(got);
  }
  bytes.resize(have);
  return bytes;
}

}  // namespace core

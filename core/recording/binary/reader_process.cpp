// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/reader_process.h"

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>
#include <thread>

#include "core/recording/binary/reader_protocol.h"
#include "core/units/language.h"
#include "core/units/progress.h"

namespace core {
namespace {

using Clock = std::chrono::steady_clock;

constexpr const char* programName = "shuntwright-reader";

/// Beside the program; above it, where a build folder has it for tests; in libexec beside bin, where a
/// package keeps programs that nobody calls by hand. Empty when it is in none of these places.
std::filesystem::path readerIn(const std::filesystem::path& folder) {
  for (const auto& path : {folder / programName, folder.parent_path() / programName,
                           folder.parent_path() / "libexec/shuntwright" / programName})
    if (::access(path.c_str(), X_OK) == 0) return path;
  return {};
}

/// The child's descriptors: the file, the answer, and nothing else of the parent's.
class ChildDescriptors {
 public:
  ChildDescriptors(int file, int answer) {
    posix_spawn_file_actions_init(&m_actions);
    posix_spawn_file_actions_adddup2(&m_actions, file, STDIN_FILENO);
    posix_spawn_file_actions_adddup2(&m_actions, answer, STDOUT_FILENO);
    posix_spawn_file_actions_addopen(&m_actions, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
    posix_spawn_file_actions_addclosefrom_np(&m_actions, STDERR_FILENO + 1);
  }
  ~ChildDescriptors() { posix_spawn_file_actions_destroy(&m_actions); }
  ChildDescriptors(const ChildDescriptors&) = delete;
  ChildDescriptors& operator=(const ChildDescriptors&) = delete;
  const posix_spawn_file_actions_t* get() const { return &m_actions; }

 private:
  posix_spawn_file_actions_t m_actions;
};

std::string systemMessage(int code) { return std::generic_category().message(code); }

std::string reasonOfSignal(int signal) {
  if (signal == SIGXCPU) return say("ran longer than is allowed");
  if (signal == SIGKILL) return say("was killed, perhaps for want of memory");
  return say("came to grief on it (signal {1})", {std::to_string(signal)});
}

std::string reasonOfExit(int code) {
  switch (static_cast<ReaderExit>(code)) {
    case ReaderExit::NoMemory:
      return say("ran out of memory");
    case ReaderExit::Damaged:
      return say("found it damaged");
    case ReaderExit::NotOpened:
      return say("does not know it as a MATLAB or HDF5 file");
    case ReaderExit::Done:
    case ReaderExit::Usage:
      break;
  }
  return say("gave up ({1})", {std::to_string(code)});
}

Error unread(const RegularFile& file, const std::string& reason) {
  return file.error(say("the file could not be read: the reading process {1}", {reason}),
                    say("Save it again, or export the recording as text"));
}

}  // namespace

std::filesystem::path ReaderProcess::programFolder() {
  std::error_code error;
  return std::filesystem::read_symlink("/proc/self/exe", error).parent_path();
}

Result<std::unique_ptr<ReaderProcess>> ReaderProcess::start(SharedFile file, std::vector<std::string> words,
                                                            const std::filesystem::path& folder) {
  const std::string program = readerIn(folder).string();
  if (program.empty()) {
    return file->error(
        say("MATLAB and HDF5 files are read by the program shuntwright-reader, which is not here"),
        say("Put it beside the program, or export the recording as text"));
  }
  int ends[2];
  if (::pipe2(ends, O_CLOEXEC) != 0)
    return file->error(say("the reading process cannot be started: {1}", {systemMessage(errno)}), "");
  std::string name = programName;
  std::vector<char*> arguments = {name.data()};
  for (std::string& word : words) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  char* noEnvironment[] = {nullptr};
  const ChildDescriptors descriptors(file->descriptor(), ends[1]);
  pid_t process = 0;
  const int failed =
      ::posix_spawn(&process, program.c_str(), descriptors.get(), nullptr, arguments.data(), noEnvironment);
  ::close(ends[1]);
  if (failed != 0) {
    ::close(ends[0]);
    return file->error(say("the reading process cannot be started: {1}", {systemMessage(failed)}), "");
  }
  return std::unique_ptr<ReaderProcess>(new ReaderProcess(std::move(file), process, ends[0]));
}

ReaderProcess::~ReaderProcess() {
  kill();
  ::close(m_answer);
}

void ReaderProcess::kill() {
  if (m_ended) return;
  ::kill(m_process, SIGKILL);
  while (::waitpid(m_process, &m_status, 0) < 0 && errno == EINTR) {
  }
  m_ended = true;
}

Result<std::size_t> ReaderProcess::read(char* to, std::size_t count, const std::stop_token& stop) {
  constexpr int lookEvery_ms = 20;
  std::size_t have = 0;
  auto lastHeard = Clock::now();
  while (have < count) {
    if (stop.stop_requested()) {
      kill();
      return cancelled();
    }
    pollfd answer{m_answer, POLLIN, 0};
    const int ready = ::poll(&answer, 1, lookEvery_ms);
    if (ready == 0 && Clock::now() - lastHeard > m_silence) {
      kill();
      return unread(*m_file, say("said nothing for too long"));
    }
    if (ready == 0 || (ready < 0 && errno == EINTR)) continue;
    const ssize_t got = ::read(m_answer, to + have, count - have);
    if (got < 0 && errno == EINTR) continue;
    if (got <= 0) break;
    have += static_cast<std::size_t>(got);
    lastHeard = Clock::now();
  }
  return have;
}

/// Whether it ends by itself; nothing tells when but asking.
bool ReaderProcess::endsWithin(std::chrono::milliseconds time) {
  constexpr std::chrono::milliseconds askEvery{1};
  for (const auto begin = Clock::now(); !m_ended; std::this_thread::sleep_for(askEvery)) {
    const pid_t ended = ::waitpid(m_process, &m_status, WNOHANG);
    m_ended = ended > 0 || (ended < 0 && errno != EINTR);
    if (Clock::now() - begin > time) break;
  }
  return m_ended;
}

Result<void> ReaderProcess::finish() {
  if (!endsWithin(m_end)) {
    kill();
    return unread(*m_file, say("did not come to an end"));
  }
  if (WIFEXITED(m_status) && WEXITSTATUS(m_status) == static_cast<int>(ReaderExit::Done)) return {};
  return unread(*m_file, WIFSIGNALED(m_status) ? reasonOfSignal(WTERMSIG(m_status))
                                               : reasonOfExit(WEXITSTATUS(m_status)));
}

}  // namespace core

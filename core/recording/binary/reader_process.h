// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

#include <cstddef>
#include <filesystem>
#include <memory>
#include <stop_token>
#include <string>
#include <vector>

#include "core/recording/file_bytes.h"
#include "core/units/result.h"

namespace core {

/// A running reading process (see reader_protocol.h). It has the file and its answer, no other descriptor, no
/// environment, and limits itself before it looks at the file. Destroying this kills it.
class ReaderProcess {
 public:
  /// Its program is looked for in `folder`, the one above and the libexec beside; fails when it is not there.
  static Result<std::unique_ptr<ReaderProcess>> start(SharedFile file, std::vector<std::string> words,
                                                      const std::filesystem::path& folder = programFolder());
  /// Where the running program lies.
  static std::filesystem::path programFolder();

  ~ReaderProcess();
  ReaderProcess(const ReaderProcess&) = delete;
  ReaderProcess& operator=(const ReaderProcess&) = delete;

  /// Waits for `count` bytes of its answer. Fewer: the answer is at its end. With `stop` requested the
  /// process is killed within a few hundredths of a second and cancelled() returned.
  Result<std::size_t> read(char* to, std::size_t count, const std::stop_token& stop);

  /// Waits for its end. Fails with a sentence for the user when that was no good one.
  Result<void> finish();

  pid_t number() const { return m_process; }

 private:
  ReaderProcess(SharedFile file, pid_t process, int answer)
      : m_file(std::move(file)), m_process(process), m_answer(answer) {}
  void kill();

  SharedFile m_file;
  pid_t m_process;
  int m_answer;
  int m_status = 0;
  bool m_ended = false;
};

}  // namespace core

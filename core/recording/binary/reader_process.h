// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

#include <chrono>
#include <cstddef>
#include <filesystem>
#include <memory>
#include <stop_token>
#include <string>
#include <vector>

#include "core/recording/binary/reader_answer.h"
#include "core/recording/file_bytes.h"
#include "core/units/result.h"

namespace core {

/// A running reading process (see reader_protocol.h). It has the file and its answer, no other descriptor, no
/// environment, and limits itself before it looks at the file. One that has been taken over by a file may do
/// anything with its answer, silence too: there is an end to waiting. Destroying this kills it.
class ReaderProcess : public ReaderAnswer {
 public:
  /// Longer than it may work: its time on the processor is limited to one minute.
  static constexpr std::chrono::seconds longestSilence{300};
  /// From the end of its answer to its own.
  static constexpr std::chrono::seconds longestEnd{10};

  /// Its program is looked for in `folder`, the one above and the libexec beside; fails when it is not there.
  static Result<std::unique_ptr<ReaderProcess>> start(SharedFile file, std::vector<std::string> words,
                                                      const std::filesystem::path& folder = programFolder());
  /// Where the running program lies.
  static std::filesystem::path programFolder();

  ~ReaderProcess() override;
  ReaderProcess(const ReaderProcess&) = delete;
  ReaderProcess& operator=(const ReaderProcess&) = delete;

  /// With `stop` requested, or after a long silence, the process is killed within a few hundredths of a
  /// second.
  Result<std::size_t> read(char* to, std::size_t count, const std::stop_token& stop) override;
  Result<void> finish() override;

  /// How long to wait instead of the above.
  void waitAtMost(std::chrono::milliseconds silence, std::chrono::milliseconds end) {
    m_silence = silence;
    m_end = end;
  }
  pid_t number() const { return m_process; }

 private:
  ReaderProcess(SharedFile file, pid_t process, int answer)
      : m_file(std::move(file)), m_process(process), m_answer(answer) {}
  void kill();
  bool endsWithin(std::chrono::milliseconds time);

  SharedFile m_file;
  pid_t m_process;
  int m_answer;
  std::chrono::milliseconds m_silence = longestSilence;
  std::chrono::milliseconds m_end = longestEnd;
  int m_status = 0;
  bool m_ended = false;
};

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>
#include <memory>
#include <stop_token>
#include <string>
#include <vector>

#include "core/units/result.h"

namespace core {

/// What comes back from a reading process (reader_process.h), or from what a test puts in its place.
class ReaderAnswer {
 public:
  virtual ~ReaderAnswer() = default;

  /// Waits for `count` bytes. Fewer: the answer is at its end. Fails when it waited too long, and with
  /// cancelled() soon after `stop` is requested.
  virtual Result<std::size_t> read(char* to, std::size_t count, const std::stop_token& stop) = 0;
  /// Waits for the end of who answers. Fails with a sentence for the user when that was no good one.
  virtual Result<void> finish() = 0;
};

/// Asks in the words of reader_protocol.h.
using AskReader = std::function<Result<std::unique_ptr<ReaderAnswer>>(std::vector<std::string> words)>;

}  // namespace core

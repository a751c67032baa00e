// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <stop_token>
#include <thread>

#include "core/units/language.h"
#include "core/units/progress.h"
#include "core/units/threads.h"

namespace core {

/// Does `work(k)` for every k below `count`, once each, on as many threads as the machine has and in the
/// language of this one. `progress` is told on this thread. After `stop` the rest is not begun.
template <class Work>
void shareOut(std::size_t count, const Work& work, const Progress& progress = {},
              const std::stop_token& stop = {}) {
  std::atomic<std::size_t> next{0}, done{0};
  const auto language = currentLanguage();
  const auto threads = static_cast<unsigned>(
      std::clamp<std::size_t>(count, 1, std::max(1U, std::thread::hardware_concurrency())));
  onThreads(threads, [&](unsigned thread) {
    const LanguageScope scope(language);
    for (std::size_t k = next++; k < count && !stop.stop_requested(); k = next++) {
      work(k);
      const std::size_t finished = ++done;
      if (thread == 0 && progress) progress(static_cast<double>(finished) / static_cast<double>(count));
    }
  });
  if (progress && count > 0 && !stop.stop_requested()) progress(1);  // the others may have been faster
}

}  // namespace core

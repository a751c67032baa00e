// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <system_error>
#include <thread>
#include <vector>

#include "core/units/language.h"

namespace core {

/// Does `work(0)` here and `work(1)`, `work(2)` ... on threads of their own, and returns when all are done.
/// Where the system gives no more threads, fewer do it all: they must share the work out among themselves.
/// All speak the language of the thread that calls.
template <class Work>
void onThreads(unsigned count, const Work& work) {
  const auto spoken = currentLanguage();
  std::vector<std::jthread> threads;  // ends before what they look at: one may begin when all work is done
  threads.reserve(count);
  try {
    for (unsigned k = 1; k < count; ++k)
      threads.emplace_back([&work, &spoken, k] {
        const LanguageScope scope(spoken);
        work(k);
      });
  } catch (const std::system_error&) {
  }
  work(0);
}

}  // namespace core

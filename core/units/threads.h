// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <system_error>
#include <thread>
#include <vector>

namespace core {

/// Does `work(0)` here and `work(1)`, `work(2)` ... on threads of their own, and returns when all are done.
/// Where the system gives no more threads, fewer do it all: they must share the work out among themselves.
template <class Work>
void onThreads(unsigned count, const Work& work) {
  std::vector<std::jthread> threads;
  threads.reserve(count);
  try {
    for (unsigned k = 1; k < count; ++k) threads.emplace_back([&work, k] { work(k); });
  } catch (const std::system_error&) {
  }
  work(0);
}

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
// Counts what goes through the plain operator new, which the other forms but the over-aligned call.
#include "tests/support/allocations.h"

#include <atomic>
#include <cstdlib>
#include <new>

namespace {
std::atomic<std::size_t> counted = 0;
}

std::size_t test::allocations() { return counted; }

void* operator new(std::size_t size) {
  ++counted;
  if (void* memory = std::malloc(size > 0 ? size : 1)) return memory;
  throw std::bad_alloc();
}

void operator delete(void* memory) noexcept { std::free(memory); }
void operator delete(void* memory, std::size_t) noexcept { std::free(memory); }

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>
#include <initializer_list>
#include <new>
#include <vector>

namespace core {

/// As many samples, of all recordings together, lie in memory before others go to disk.
constexpr std::size_t greatestSamplesInMemory_bytes = 64UL << 20U;

/// Room for samples, all zero or of any content; null when neither memory nor disk has it.
///
/// Small room, and any while little is taken, is memory. Beyond greatestSamplesInMemory_bytes it is a file
/// without a name, which nobody else can open or cut short and which is gone with the process, however that
/// ends. All of it is there on the disk before it is used, so that a disk that fills up later does no harm.
/// It is mapped, and what was looked at is soon let go again: it costs the machine's spare memory alone.
/// TMPDIR names the folder; else it is /var/tmp. Any thread may call.
void* takeSampleRoom(std::size_t bytes) noexcept;
void giveSampleRoomBack(void* room, std::size_t bytes) noexcept;

/// For loops that look at samples here and there, each of which brings in its neighbours, and for those that
/// do next to nothing with each: what was looked at is let go at once, before it becomes much. Any other work
/// is slow enough for the thread that does it every 20 ms.
void letSamplesGo() noexcept;

template <class Number>
struct SampleAllocator {
  using value_type = Number;

  SampleAllocator() = default;
  template <class Other>
  SampleAllocator(const SampleAllocator<Other>&) {}

  Number* allocate(std::size_t count) {
    if (count > static_cast<std::size_t>(-1) / sizeof(Number)) throw std::bad_alloc();
    void* room = takeSampleRoom(count * sizeof(Number));
    if (!room) throw std::bad_alloc();
    return static_cast<Number*>(room);
  }
  void deallocate(Number* room, std::size_t count) { giveSampleRoomBack(room, count * sizeof(Number)); }

  friend bool operator==(const SampleAllocator&, const SampleAllocator&) { return true; }
};

/// The numbers of a column or the times of a recording, however many: a vector that lies where there is room.
struct Samples : std::vector<double, SampleAllocator<double>> {
  using std::vector<double, SampleAllocator<double>>::vector;
  Samples(const std::vector<double>& numbers) : Samples(numbers.begin(), numbers.end()) {}

  friend bool operator==(const Samples& a, const std::vector<double>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end());
  }
};

}  // namespace core

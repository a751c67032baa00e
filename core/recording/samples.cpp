// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/samples.h"

#include <fcntl.h>
#include <sys/mman.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <map>
#include <mutex>
#include <system_error>
#include <thread>

namespace core {
namespace {

constexpr std::size_t leastMapped_bytes = 64UL << 10U;  ///< below it a file costs more than it saves

/// A few fast looks at a recording lie between two times of letting go: some 50 MB.
constexpr auto lettingGo = std::chrono::milliseconds(20);

/// A new file without a name with all of its bytes on the disk; -1 when the folder gives none.
int fileIn(const char* folder, std::size_t bytes) {
  const int file = ::open(folder, O_TMPFILE | O_EXCL | O_RDWR | O_CLOEXEC, 0600);
  if (file < 0) return -1;
  int fault = EINTR;
  while (fault == EINTR) fault = ::posix_fallocate(file, 0, static_cast<off_t>(bytes));
  if (fault == 0) return file;
  ::close(file);
  return -1;
}

void* mappedFile(std::size_t bytes) {
  const char* const wanted = std::getenv("TMPDIR");
  const int file = fileIn(wanted && *wanted ? wanted : "/var/tmp", bytes);
  if (file < 0) return nullptr;
  void* const room = ::mmap(nullptr, bytes, PROT_READ | PROT_WRITE, MAP_SHARED, file, 0);
  ::close(file);  // the mapping keeps it
  if (room == MAP_FAILED) return nullptr;
  ::madvise(room, bytes, MADV_NOHUGEPAGE);  // a look here and there would bring in 2 MB each
  return room;
}

/// All room in files. What of it was looked at counts as this process's memory until it is let go; the system
/// does that under need alone, a thread does it here while there is such room. Only the process's share in
/// the pages ends: their contents stay with the system, which reads them from the disk where it had to drop
/// them.
class MappedRoom {
 public:
  void* take(std::size_t bytes) {
    void* const room = mappedFile(bytes);
    if (!room) return nullptr;
    const std::lock_guard lock(m_mutex);
    m_rooms.emplace(room, bytes);
    if (!m_isLettingGo) startLettingGo();
    return room;
  }

  void letGo() {
    const std::lock_guard lock(m_mutex);
    letGoOfAll();
  }

  /// False when `room` is none of these.
  bool giveBack(void* room) {
    const std::lock_guard lock(m_mutex);
    const auto found = m_rooms.find(room);
    if (found == m_rooms.end()) return false;
    if (m_isLettingGo)
      m_givenBack.insert(m_rooms.extract(found));
    else
      m_rooms.erase(unmapped(found));
    return true;
  }

 private:
  using Rooms = std::map<void*, std::size_t>;

  static Rooms::iterator unmapped(Rooms::iterator room) {
    ::munmap(room->first, room->second);
    return room;
  }

  void startLettingGo() {
    try {
      std::thread([this] {
        while (letGoInTurn()) std::this_thread::sleep_for(lettingGo);
      }).detach();
      m_isLettingGo = true;
    } catch (const std::system_error&) {  // no thread to be had: all works, with more memory
    }
  }

  /// False when nothing is left, so that the thread ends.
  bool letGoInTurn() {
    Rooms givenBack;
    bool goesOn = false;
    {
      const std::lock_guard lock(m_mutex);
      letGoOfAll();
      givenBack.swap(m_givenBack);
      goesOn = m_isLettingGo = !m_rooms.empty() || !givenBack.empty();
    }
    // Gigabytes on a disk take seconds to give back: whoever cancels waits for none of it.
    for (auto room = givenBack.begin(); room != givenBack.end(); ++room) unmapped(room);
    return goesOn;
  }

  void letGoOfAll() {
    for (const auto& [room, bytes] : m_rooms) ::madvise(room, bytes, MADV_DONTNEED);
  }

  std::mutex m_mutex;
  Rooms m_rooms;
  Rooms m_givenBack;  ///< nobody looks at them any longer
  bool m_isLettingGo = false;
};

/// Never destroyed: samples of static storage may end after it, and its thread with the process.
MappedRoom& mappedRoom() {
  static MappedRoom& room = *new MappedRoom;
  return room;
}

std::atomic<std::size_t> inMemory_bytes = 0;

}  // namespace

void* takeSampleRoom(std::size_t bytes) noexcept {
  if (bytes >= leastMapped_bytes && inMemory_bytes + bytes > greatestSamplesInMemory_bytes)
    if (void* const room = mappedRoom().take(bytes)) return room;
  void* const room = std::malloc(std::max<std::size_t>(bytes, 1));
  if (room) inMemory_bytes += bytes;
  return room;
}

void giveSampleRoomBack(void* room, std::size_t bytes) noexcept {
  if (bytes >= leastMapped_bytes && mappedRoom().giveBack(room)) return;
  std::free(room);
  inMemory_bytes -= bytes;
}

void letSamplesGo() noexcept { mappedRoom().letGo(); }

}  // namespace core

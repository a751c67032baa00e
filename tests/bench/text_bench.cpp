// SPDX-License-Identifier: GPL-3.0-or-later
// Reading delimited text: seconds and peak memory of one file, in a process of its own so that the peak is
// its own. tests/bench/text_peers.py puts general-purpose readers beside it.
//
//   text_bench make FILE ROWS      writes the file: time and two values, about 28 bytes a row
//   text_bench read FILE THREADS   reads it and prints a line of JSON
#include <sys/resource.h>

#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <vector>

#include "core/recording/text/delimited_text.h"

namespace {

double seconds(const timeval& time) {
  return static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_usec);
}

/// Uniform enough for digits that no branch predictor learns.
std::uint32_t next(std::uint64_t& state) {
  state = state * 6364136223846793005ULL + 1442695040888963407ULL;
  return static_cast<std::uint32_t>(state >> 33U);
}

int make(const char* path, long rows) {
  std::FILE* const file = std::fopen(path, "w");
  if (!file) return 2;
  std::vector<char> buffer(1U << 20U);
  std::setvbuf(file, buffer.data(), _IOFBF, buffer.size());
  std::fputs("Time [s],TP-01 [um/m],LC-1 [kN]\n", file);
  std::uint64_t state = 17;
  for (long k = 0; k < rows; ++k) {
    const double strain = static_cast<double>(next(state) % 4000000) * 1e-3 - 2000;
    const double load = static_cast<double>(next(state) % 100000000) * 1e-6 - 50;
    std::fprintf(file, "%.4f,%.3f,%.5f\n", static_cast<double>(k) * 1e-3, strain, load);
  }
  return std::fclose(file) == 0 ? 0 : 2;
}

int read(const char* path, unsigned threads) {
  const auto begin = std::chrono::steady_clock::now();
  const auto recording = core::readText(path, {}, {}, {}, {.threads = threads});
  const std::chrono::duration<double> wall = std::chrono::steady_clock::now() - begin;
  if (!recording) {
    std::fprintf(stderr, "%s\n", recording.error().text().c_str());
    return 1;
  }
  double sum = 0;
  for (const core::Column& column : recording->columns)
    for (const double value : column.values) sum += value;
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  const double numbers = 8.0 * static_cast<double>(recording->time.size() * (recording->columns.size() + 1));
  std::printf(
      "{\"wall_s\": %.4f, \"cpu_s\": %.4f, \"rows\": %zu, \"sum\": %.6f, \"peak_bytes\": %.0f, "
      "\"numbers_bytes\": %.0f}\n",
      wall.count(), seconds(usage.ru_utime) + seconds(usage.ru_stime), recording->time.size(), sum,
      1024.0 * static_cast<double>(usage.ru_maxrss), numbers);
  return 0;
}

}  // namespace

int main(int count, char** words) {
  if (count == 4 && std::strcmp(words[1], "make") == 0) return make(words[2], std::atol(words[3]));
  if (count == 4 && std::strcmp(words[1], "read") == 0)
    return read(words[2], static_cast<unsigned>(std::atoi(words[3])));
  std::fprintf(stderr, "usage: text_bench make FILE ROWS | read FILE THREADS\n");
  return 2;
}

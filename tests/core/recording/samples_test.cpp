// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <numeric>
#include <thread>

namespace core {
namespace {

constexpr std::size_t manySamples = 80'000'000;  // 640 MB

/// Memory of this process in MB, by a word of proc(5).
std::size_t megabytesOf(const std::string& wanted) {
  std::ifstream status("/proc/self/status");
  std::size_t kilobytes = 0;
  for (std::string word; status >> word;)
    if (word == wanted) status >> kilobytes;
  return kilobytes / 1024;
}

void forgetPeak() { std::ofstream("/proc/self/clear_refs") << "5"; }

TEST(Samples, OfAnyNumberAreKeptInLittleMemory) {
  forgetPeak();
  const std::size_t before = megabytesOf("VmRSS:");
  Samples samples;
  samples.reserve(manySamples);
  for (std::size_t k = 0; k < manySamples; ++k) samples.push_back(static_cast<double>(k));
  // Whole numbers below 2^53: the sum is n (n - 1)/2 to the last bit.
  double sum = 0;
  for (const double value : samples) sum += value;
  EXPECT_EQ(sum, 0.5 * static_cast<double>(manySamples) * static_cast<double>(manySamples - 1));
  // What is looked at within some 20 ms of the thread that lets go: far less than all, however busy the
  // machine is.
  EXPECT_LT(megabytesOf("VmHWM:"), before + manySamples * sizeof(double) / 1'000'000 / 4 * 3);
}

TEST(Samples, KeepTheirNumbersWhenTheyGrowAndMove) {
  Samples samples;
  for (std::size_t k = 0; k < manySamples / 2; ++k) samples.push_back(static_cast<double>(k));
  Samples moved = std::move(samples);
  const Samples copy = moved;
  moved.clear();
  moved.shrink_to_fit();
  ASSERT_EQ(copy.size(), manySamples / 2);
  for (std::size_t k = 0; k < copy.size(); ++k) ASSERT_EQ(copy[k], static_cast<double>(k));
}

TEST(Samples, AreReadByManyThreadsWhileTheyAreLetGo) {
  Samples samples(manySamples / 2);
  std::iota(samples.begin(), samples.end(), 0.0);
  std::vector<double> sums(4);
  {
    std::vector<std::jthread> threads;
    for (double& sum : sums)
      threads.emplace_back([&] { sum = std::accumulate(samples.begin(), samples.end(), 0.0); });
  }
  const double n = static_cast<double>(samples.size());
  EXPECT_THAT(sums, testing::Each(0.5 * n * (n - 1)));
}

/// Ends with 0 when samples behave where no folder takes a file of theirs.
[[noreturn]] void tryWithoutDisk(const char* folder) {
  setenv("TMPDIR", folder, 1);
  Samples samples(manySamples / 4, 1.0);
  _exit(std::accumulate(samples.begin(), samples.end(), 0.0) == static_cast<double>(manySamples / 4) ? 0 : 1);
}

/// A limit on the size of files refuses the room before anything is written to it, as a full disk does.
[[noreturn]] void tryWithFileLimit() {
  const rlimit limit{1 << 20, 1 << 20};
  setrlimit(RLIMIT_FSIZE, &limit);
  std::signal(SIGXFSZ, SIG_IGN);
  tryWithoutDisk("/var/tmp");
}

TEST(Samples, LieInMemoryWhereNoFolderTakesThem) {
  EXPECT_EXIT(tryWithoutDisk("/nowhere/at/all"), testing::ExitedWithCode(0), "");
  EXPECT_EXIT(tryWithFileLimit(), testing::ExitedWithCode(0), "");
}

TEST(Samples, LeaveNoFileBehindWhenTheProcessIsKilled) {
  const auto folder = std::filesystem::temp_directory_path() / ("samples-" + std::to_string(getpid()));
  std::filesystem::create_directory(folder);
  const pid_t child = fork();
  if (child == 0) {
    setenv("TMPDIR", folder.c_str(), 1);
    const Samples samples(manySamples / 2, 1.0);
    raise(SIGKILL);
  }
  int status = 0;
  waitpid(child, &status, 0);
  EXPECT_EQ(WTERMSIG(status), SIGKILL);
  EXPECT_TRUE(std::filesystem::is_empty(folder));
  std::filesystem::remove_all(folder);
}

TEST(Samples, CompareWithPlainNumbers) {
  const Samples samples{1, 2, 3};
  EXPECT_EQ(samples, (std::vector<double>{1, 2, 3}));
  EXPECT_FALSE(samples == (std::vector<double>{1, 2}));
  EXPECT_FALSE(samples == (std::vector<double>{1, 2, 4}));
}

}  // namespace
}  // namespace core

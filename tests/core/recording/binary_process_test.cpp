// SPDX-License-Identifier: GPL-3.0-or-later
// The reading process: that it is limited, that it dies when told, and that its word is not taken on trust.
#include <fcntl.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>

#include <chrono>
#include <set>
#include <sstream>
#include <thread>

#include "core/recording/binary/reader_columns.h"
#include "core/recording/binary/reader_process.h"
#include "core/recording/binary/reader_protocol.h"
#include "core/recording/column_heading.h"
#include "tests/core/recording/binary_samples.h"

namespace {

using core::FileKind;
using core::ReaderProcess;
using testing::HasSubstr;

/// A MATLAB 4 file with one vector of zeros, far more than a pipe holds.
std::string longFile(std::uint32_t numbers) {
  std::string bytes;
  for (const std::uint32_t word : {0U, numbers, 1U, 0U, 2U})
    for (int k = 0; k < 4; ++k) bytes += static_cast<char>(word >> (8 * k));
  bytes += std::string("x\0", 2);
  bytes.resize(bytes.size() + std::size_t{numbers} * 8, '\0');
  return bytes;
}

constexpr std::uint32_t numbers = 4'000'000;

/// Starts reading and waits for the first bytes; the process then stands still, as nobody takes the rest.
std::unique_ptr<ReaderProcess> startedOn(const samples::MemoryFile& file) {
  auto process =
      ReaderProcess::start(samples::opened(file.path()), {"mat", "read", "0:0:" + std::to_string(numbers)});
  if (!process) throw std::runtime_error(process.error().text());
  char first[8];
  if (const auto got = (*process)->read(first, sizeof first, {}); !got || *got != sizeof first)
    throw std::runtime_error("no answer");
  return std::move(*process);
}

std::string contentOf(const std::string& path) {
  std::ifstream file(path);
  return {std::istreambuf_iterator<char>(file), {}};
}

/// The soft and the hard limit that /proc tells, by the words that it uses.
std::pair<std::string, std::string> limitsOf(pid_t process, const std::string& name) {
  const std::string limits = contentOf("/proc/" + std::to_string(process) + "/limits");
  const auto at = limits.find(name);
  if (at == std::string::npos) return {"none", "none"};
  std::istringstream words(limits.substr(at + name.size()));
  std::pair<std::string, std::string> found;
  words >> found.first >> found.second;
  return found;
}

std::string limitOf(pid_t process, const std::string& name) { return limitsOf(process, name).first; }

TEST(ReaderProcess, IsLimitedAsItShouldBe) {
  // One that every child would get if nobody closed it.
  const int leaky = ::open("/dev/null", O_RDONLY);
  const samples::MemoryFile file(longFile(numbers));
  const auto process = startedOn(file);
  const pid_t id = process->number();
  EXPECT_EQ(limitOf(id, "Max address space"), "2147483648");
  // The signal that says why it ends comes at the soft limit; at the hard one it is killed (setrlimit(2)).
  EXPECT_EQ(limitsOf(id, "Max cpu time"), std::pair(std::string("60"), std::string("65")));
  EXPECT_EQ(limitOf(id, "Max file size"), "0");
  EXPECT_EQ(limitOf(id, "Max core file size"), "0");
  EXPECT_EQ(limitOf(id, "Max open files"), "0");
  EXPECT_THAT(contentOf("/proc/" + std::to_string(id) + "/status"), HasSubstr("NoNewPrivs:\t1"));
  EXPECT_TRUE(contentOf("/proc/" + std::to_string(id) + "/environ").empty());
  // The file, the answer, no errors, and the file once more, opened by the library.
  std::set<std::string> open;
  for (const auto& entry : std::filesystem::directory_iterator("/proc/" + std::to_string(id) + "/fd"))
    open.insert(entry.path().filename());
  EXPECT_EQ(open, (std::set<std::string>{"0", "1", "2", "3"}));
  ::close(leaky);
}

TEST(ReaderProcess, IsGoneAsSoonAsStopIsRequested) {
  const samples::MemoryFile file(longFile(numbers));
  std::stop_source source;
  int after = 0;
  const auto stopped =
      core::readBinary(file.path(), FileKind::Mat, samples::rateOf(64), source.get_token(), [&](double) {
        if (!source.request_stop()) ++after;
      });
  ASSERT_FALSE(stopped);
  EXPECT_EQ(stopped.error(), core::cancelled());
  EXPECT_EQ(after, 0);
  // No child is left, alive or dead.
  EXPECT_EQ(::waitpid(-1, nullptr, WNOHANG), -1);
  EXPECT_EQ(errno, ECHILD);
}

TEST(ReaderProcess, StopIsHeardWhileNothingComes) {
  const samples::MemoryFile file(longFile(numbers));
  const auto process = startedOn(file);
  ::kill(process->number(), SIGSTOP);
  std::stop_source source;
  std::jthread later([&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    source.request_stop();
  });
  std::vector<char> all(std::size_t{numbers} * 8);
  const auto got = process->read(all.data(), all.size(), source.get_token());
  ASSERT_FALSE(got);
  EXPECT_EQ(got.error(), core::cancelled());
}

TEST(ReaderProcess, ItsDeathIsOneSentence) {
  const std::pair<int, const char*> deaths[] = {{SIGKILL, "was killed, perhaps for want of memory"},
                                                {SIGXCPU, "ran longer than is allowed"},
                                                {SIGSEGV, "came to grief on it (signal 11)"}};
  for (const auto& [signal, words] : deaths) {
    const samples::MemoryFile file(longFile(numbers));
    const auto process = startedOn(file);
    ::kill(process->number(), signal);
    const auto ended = process->finish();
    ASSERT_FALSE(ended);
    EXPECT_THAT(ended.error().text(),
                HasSubstr("could not be read: the reading process " + std::string(words)));
  }
}

/// A folder with a reading process that does what a script says, as one could that a file has taken over.
class Impostor {
 public:
  explicit Impostor(const std::string& script)
      : m_folder(testing::TempDir() + "impostor_" + std::to_string(::getpid())) {
    std::filesystem::create_directories(m_folder);
    std::ofstream(m_folder / "shuntwright-reader") << "#!/bin/sh\n" << script << "\n";
    std::filesystem::permissions(m_folder / "shuntwright-reader", std::filesystem::perms::owner_all);
  }
  ~Impostor() { std::filesystem::remove_all(m_folder); }
  Impostor(const Impostor&) = delete;
  Impostor& operator=(const Impostor&) = delete;

  std::unique_ptr<ReaderProcess> start() const {
    auto process = ReaderProcess::start(samples::opened(m_file.path()), {"mat", "list"}, m_folder);
    if (!process) throw std::runtime_error(process.error().text());
    (*process)->waitAtMost(std::chrono::milliseconds(300), std::chrono::milliseconds(300));
    return std::move(*process);
  }

 private:
  std::filesystem::path m_folder;
  samples::MemoryFile m_file{"x"};
};

/// What waiting for `count` bytes and then for the end comes to.
std::string endOf(ReaderProcess& process, std::size_t count) {
  std::vector<char> bytes(count);
  const auto got = process.read(bytes.data(), count, {});
  if (!got) return got.error().text();
  const auto ended = process.finish();
  return ended ? std::to_string(*got) + " bytes" : ended.error().text();
}

TEST(ReaderProcess, IsNotWaitedForWithoutEnd) {
  const std::pair<const char*, const char*> tricks[] = {
      {"exec sleep 1000", "said nothing for too long"},
      {"echo one; exec sleep 1000", "said nothing for too long"},
      {"exec 1>&-; exec sleep 1000", "did not come to an end"},
      // More than was asked for, until the pipe is full: it hangs in writing, without using up its time.
      {"exec cat /dev/zero", "did not come to an end"},
      {"printf '%0100d' 1", "100 bytes"}};
  for (const auto& [script, end] : tricks) {
    SCOPED_TRACE(script);
    const Impostor impostor(script);
    EXPECT_THAT(endOf(*impostor.start(), 100), HasSubstr(end));
    EXPECT_EQ(::waitpid(-1, nullptr, WNOHANG), -1);  // no child is left, alive or dead
  }
}

TEST(ReaderProcess, DeathOfAnyKindIsOneSentence) {
  const std::pair<const char*, const char*> deaths[] = {
      {"kill -ABRT $$", "came to grief on it (signal 6)"},
      {"f() { f; }; ulimit -s 256; f", "came to grief on it (signal 11)"},
      {"ulimit -S -t 1; while :; do :; done", "ran longer than is allowed"},
      {"kill -KILL $$", "was killed, perhaps for want of memory"},
      {"exit 3", "ran out of memory"},
      {"exit 77", "gave up (77)"}};
  for (const auto& [script, words] : deaths) {
    SCOPED_TRACE(script);
    const Impostor impostor(script);
    const auto process = impostor.start();
    process->waitAtMost(std::chrono::seconds(60), std::chrono::seconds(60));
    EXPECT_THAT(endOf(*process, 100), HasSubstr(words));
  }
}

TEST(ReaderProcess, IsMissedByName) {
  const samples::MemoryFile file("x");
  const auto process =
      ReaderProcess::start(samples::opened(file.path()), {"mat", "list"}, "/proc/self/fdinfo");
  ASSERT_FALSE(process);
  EXPECT_THAT(process.error().text(), HasSubstr("shuntwright-reader"));
}

TEST(ReaderProcess, WhatIsNoMatlabOrHdf5FileIsSaidSo) {
  const samples::MemoryFile file("this is neither of them, and longer than any of their headings");
  for (const FileKind kind : {FileKind::Mat, FileKind::Hdf5}) {
    const auto refused = core::readBinary(file.path(), kind);
    ASSERT_FALSE(refused);
    EXPECT_FALSE(refused.error().what.empty());
  }
}

TEST(ReaderProtocol, AListingComesBackAsItWas) {
  core::ReaderListing listing;
  listing.variables.push_back({"a b/\xC3\xBC%\n", "um/m", "", {3, 4}, {}, true});
  listing.variables.push_back({"", "", "holds text", {}, {}, false});
  listing.variables.push_back({"fs", "", "", {1, 1}, 0.1, false});
  listing.whole = false;
  const auto back = core::readerListing(textOf(listing));
  ASSERT_TRUE(back);
  EXPECT_FALSE(back->whole);
  ASSERT_EQ(back->variables.size(), 3u);
  EXPECT_EQ(back->variables[0].name, listing.variables[0].name);
  EXPECT_EQ(back->variables[0].sizes, listing.variables[0].sizes);
  EXPECT_TRUE(back->variables[0].columnMajor);
  EXPECT_EQ(back->variables[1].unfit, "holds text");
  EXPECT_EQ(back->variables[2].value, 0.1);
}

TEST(ReaderProtocol, GarbageIsNoListing) {
  core::ReaderListing listing;
  listing.variables.push_back({"a", "", "", {3}, {}, true});
  const std::string good = textOf(listing);
  ASSERT_TRUE(core::readerListing(good));
  for (std::size_t length = 0; length < good.size(); ++length)
    EXPECT_FALSE(core::readerListing(std::string_view(good).substr(0, length))) << length;
  EXPECT_FALSE(core::readerListing(good + "x"));
  // Lines beyond the greatest number are not even looked for.
  EXPECT_FALSE(core::readerListing(std::string(core::greatestListingBytes, '\n')));
  for (const std::string_view bad :
       {"shuntwright-reader 2\nend\n", "shuntwright-reader 1\na - - - rows -3\nend\n",
        "shuntwright-reader 1\na - - x rows 3\nend\n", "shuntwright-reader 1\n% - - - rows 3\nend\n",
        "shuntwright-reader 1\na - - - rows 99999999999999999999\nend\n"})
    EXPECT_FALSE(core::readerListing(bad)) << bad;
}

TEST(ReaderColumns, SizesAreCountedWithCare) {
  core::ReaderListing listing;
  listing.variables.push_back({"over", "", "", {1ULL << 33U, 1ULL << 33U}, {}, false});
  listing.variables.push_back({"huge", "", "", {1ULL << 40U}, {}, false});
  listing.variables.push_back({"wide", "", "", {9000, 9000}, {}, false});
  listing.variables.push_back({"good", "", "", {100}, {}, false});
  const auto found = core::columnsOf(listing, 1'000'000);
  ASSERT_EQ(found.table.columns.size(), 1u);
  EXPECT_EQ(found.table.columns[0].name, "good");
  EXPECT_EQ(found.table.leftOut.size(), 3u);
}

TEST(ReaderColumns, AReasonThatShowsNothingIsOneAllTheSame) {
  // Found by random input: cleaned, nothing was left of it, and three dimensions were taken for a matrix.
  core::ReaderListing listing;
  listing.variables.push_back({"cube", "", "\x0e", {2, 3, 4}, {}, false});
  listing.variables.push_back({"good", "", "", {100}, {}, false});
  const auto found = core::columnsOf(listing, 1'000'000);
  ASSERT_EQ(found.table.columns.size(), 1u);
  EXPECT_THAT(found.table.leftOut, testing::ElementsAre("“cube” is no column of numbers"));
}

TEST(ReaderColumns, OnlyATimesNameIsATime) {
  for (const char* name : {"t", "Time", "run1/time", "TIME [ms]", "t_us", "Time (s)", "Zeit"})
    EXPECT_TRUE(core::isNameOfTime(name)) << name;
  for (const char* name : {"t_max", "time/force", "temperature", "timer", "", "tt", "T1"})
    EXPECT_FALSE(core::isNameOfTime(name)) << name;
}

TEST(ReaderColumns, TheTimeSaysHowManySamplesThereAre) {
  core::ReaderListing listing;
  listing.variables.push_back({"calibration", "", "", {5000}, {}, false});
  listing.variables.push_back({"Time", "", "", {1, 40}, {}, true});
  listing.variables.push_back({"square", "", "", {40, 40}, {}, true});
  const auto found = core::columnsOf(listing, 1'000'000);
  EXPECT_EQ(found.table.records, 40u);
  EXPECT_EQ(found.table.timeColumn, 0u);
  EXPECT_EQ(found.table.columns.size(), 41u);
  EXPECT_THAT(found.table.leftOut, testing::ElementsAre(HasSubstr("calibration")));
  // A square matrix of MATLAB: each of its columns is a channel, whose numbers follow each other.
  ASSERT_EQ(found.sources.size(), 2u);
  EXPECT_FALSE(found.sources[1].interleaved);
}

}  // namespace

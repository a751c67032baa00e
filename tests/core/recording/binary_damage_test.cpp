// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever is done to a file, reading it ends in an error or in a sound recording.
#include <fcntl.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include <random>

#include "core/recording/binary/npy_file.h"
#include "core/recording/binary/uff_file.h"
#include "core/recording/binary/wav_file.h"
#include "core/units/text.h"
#include "tests/core/recording/binary_samples.h"

namespace {

using core::FileKind;
using core::LayoutChoices;
using samples::rateOf;
using testing::HasSubstr;

constexpr const char* inProcess[] = {"int16.wav",    "float64.wav", "uint8.wav",  "rows.npy",
                                     "channels.npy", "fortran.npy", "named.npy",  "vector.npy",
                                     "even.uff",     "uneven.uff",  "little.uff", "big.uff"};
constexpr const char* inReader[] = {"level4.mat",  "level5.mat",  "level5z.mat",
                                    "level73.mat", "datasets.h5", "table.h5"};

/// Most memory that this process ever had, in MB.
long peakMemory_MB() {
  rusage used{};
  ::getrusage(RUSAGE_SELF, &used);
  return used.ru_maxrss / 1024;
}

void readDamaged(const std::string& bytes, FileKind kind, const LayoutChoices& choices) {
  const samples::MemoryFile file(bytes);
  const auto preview = core::lookAtBinary(file.path(), kind, choices);
  const auto recording = core::readBinary(file.path(), kind, choices);
  if (recording) samples::expectSound(*recording);
  if (!recording) {
    EXPECT_FALSE(recording.error().what.empty());
    // The reading process itself must not fall over: none of these damages is new to it.
    EXPECT_EQ(recording.error().what.find("signal"), std::string::npos) << recording.error().text();
  }
  if (preview) {
    EXPECT_LE(preview->rows.size(), core::greatestPreviewRows);
  }
}

TEST(BinaryDamage, CutAtEveryLength) {
  for (const char* name : inProcess) {
    SCOPED_TRACE(name);
    const std::string whole = samples::bytes(name);
    const FileKind kind = *samples::kindOf(whole);
    for (std::size_t length = 0; length < whole.size(); ++length)
      readDamaged(whole.substr(0, length), kind, rateOf(64));
  }
}

TEST(BinaryDamage, CutAtManyLengthsInTheReader) {
  constexpr std::size_t cuts = 10;
  for (const char* name : inReader) {
    SCOPED_TRACE(name);
    const std::string whole = samples::bytes(name);
    for (std::size_t k = 0; k < cuts; ++k)
      readDamaged(whole.substr(0, whole.size() * k / cuts), *samples::kindOf(whole), rateOf(64));
  }
}

/// Bytes changed, numbers made great, the end cut off.
std::string damaged(std::string bytes, std::mt19937& lot) {
  const auto upTo = [&](std::size_t n) { return static_cast<std::size_t>(lot() % n); };
  for (std::size_t edits = 1 + upTo(4); edits > 0; --edits) {
    // Half of them in the heading.
    const std::size_t at = upTo(upTo(2) == 0 ? bytes.size() : std::min<std::size_t>(bytes.size(), 200));
    switch (upTo(5)) {
      case 0:
        bytes[at] = static_cast<char>(lot());
        break;
      case 1:
        bytes[at] = static_cast<char>(bytes[at] ^ (1 << upTo(8)));
        break;
      case 2:
        bytes[at] = "\x00\xFF\x7F\x80\x01"[upTo(5)];
        break;
      case 3:
        bytes.replace(at, std::min<std::size_t>(4, bytes.size() - at), "\xFF\xFF\xFF\x7F");
        break;
      default:
        bytes.resize(at + 1);
        break;
    }
  }
  return bytes;
}

TEST(BinaryDamage, RandomDamageInThisProcess) {
  constexpr int filesEach = 400;
  constexpr std::uint32_t fixedStart = 20260511;
  const long before_MB = peakMemory_MB();
  std::mt19937 lot(fixedStart);
  for (const char* name : inProcess) {
    SCOPED_TRACE(name);
    const std::string whole = samples::bytes(name);
    for (int k = 0; k < filesEach; ++k)
      readDamaged(damaged(whole, lot), *samples::kindOf(whole), k % 2 == 0 ? rateOf(64) : LayoutChoices{});
  }
  // The samples have a few kB; a header that is believed would ask for GB.
  EXPECT_LT(peakMemory_MB() - before_MB, 100);
}

TEST(BinaryDamage, RandomDamageInTheReader) {
  constexpr int filesEach = 15;  // each starts a process; the fuzzers try millions of files
  constexpr std::uint32_t fixedStart = 20260512;
  std::mt19937 lot(fixedStart);
  for (const char* name : inReader) {
    SCOPED_TRACE(name);
    const std::string whole = samples::bytes(name);
    for (int k = 0; k < filesEach; ++k)
      readDamaged(damaged(whole, lot), *samples::kindOf(whole), k % 2 == 0 ? rateOf(64) : LayoutChoices{});
  }
}

std::string words(std::initializer_list<std::uint32_t> list, bool bigEndian = false) {
  std::string bytes;
  for (const std::uint32_t word : list)
    for (int k = 0; k < 4; ++k) bytes += static_cast<char>(word >> (8 * (bigEndian ? 3 - k : k)));
  return bytes;
}

/// A level 5 file with one matrix called x: its class (6 double, 1 cell), sizes, the type of its data (9
/// double, 3 16-bit integers) and the data. Source: MAT-File Format, level 5; from memory.
std::string level5(std::uint32_t kind, std::uint32_t rows, std::uint32_t columns, std::string_view data,
                   std::uint32_t dataType = 9, bool bigEndian = false) {
  std::string bytes = "MATLAB 5.0 MAT-file";
  bytes.resize(124, ' ');
  bytes += bigEndian ? std::string("\x01\x00MI", 4) : std::string("\x00\x01IM", 4);
  const auto length = static_cast<std::uint32_t>(data.size());
  std::string body = words({6, 8, kind, 0, 5, 8, rows, columns, 1, 1}, bigEndian);
  body += std::string("x\0\0\0\0\0\0\0", 8) + words({dataType, length}, bigEndian);
  body += data;
  body.resize((body.size() + 7) / 8 * 8, '\0');
  return bytes + words({14, static_cast<std::uint32_t>(body.size())}, bigEndian) + body;
}

TEST(BinaryDamage, AFileOf21BytesThatAsksForAGigabyteIsRefused) {
  const std::string bytes = words({0, 16384, 8192, 0, 1}) + std::string(1, '\0');
  ASSERT_EQ(bytes.size(), 21u);
  const samples::MemoryFile file(bytes);
  const long before_MB = peakMemory_MB();
  EXPECT_FALSE(core::readBinary(file.path(), FileKind::Mat, rateOf(64)));
  EXPECT_LT(peakMemory_MB() - before_MB, 50);
}

TEST(BinaryDamage, SizesThatNoFileCanHaveAreRefused) {
  const std::string files[] = {
      words({0, 0x80000000, 0x80000000, 0, 2}) + "x" + std::string(9, '\0'),  // 2^62 numbers, 2^65 bytes
      level5(6, 0x80000000, 0x80000000, std::string(8, '\0')), level5(6, 0xFFFFFFFF, 3, std::string(8, '\0')),
      level5(6, 100000, 1000, std::string(8, '\0')),  // more than its data
      level5(1, 0x20000000, 1, "")};                  // a cell array of 4 GB of pointers
  for (const std::string& bytes : files) {
    const samples::MemoryFile file(bytes);
    const auto refused = core::readBinary(file.path(), FileKind::Mat, rateOf(64));
    ASSERT_FALSE(refused);
    EXPECT_FALSE(refused.error().what.empty());
  }
  // The writer of these tests can write good ones.
  const std::string good[] = {level5(6, 2, 1, words({0, 0x3FF00000, 0, 0x40000000})),
                              level5(6, 2, 1, words({0x3FF00000, 0, 0x40000000, 0}, true), 9, true),
                              level5(6, 2, 1, std::string("\x01\x00\x02\x00", 4), 3)};
  for (const std::string& bytes : good) {
    const samples::MemoryFile file(bytes);
    const auto rec = core::readBinary(file.path(), FileKind::Mat, rateOf(64));
    ASSERT_TRUE(rec) << rec.error().text();
    EXPECT_THAT(rec->columns.at(0).values, testing::ElementsAre(1.0, 2.0));
  }
}

TEST(BinaryDamage, NpySizesThatNoFileCanHaveAreRefused) {
  for (const std::string shape : {"(4611686018427387904, 4)", "(4611686018427387904, 4611686018427387904)",
                                  "(99999999999999999999,)", "(-1,)", "(2, 3, 4)", "()", "(0,)"}) {
    std::string heading = "{'descr': '<f8', 'fortran_order': False, 'shape': " + shape + ", }\n";
    std::string bytes("\x93NUMPY\x01\x00", 8);
    bytes += static_cast<char>(heading.size());
    bytes += '\0';
    const samples::MemoryFile file(bytes + heading + std::string(64, '\0'));
    EXPECT_FALSE(core::readBinary(file.path(), FileKind::Npy, rateOf(64))) << shape;
  }
}

TEST(BinaryDamage, ATypeThatIsNoTextIsToldAsText) {
  std::string heading = "{'descr': '<f\xB5\xB5' , 'fortran_order': False, 'shape': (3,), }\n";
  const std::string bytes =
      std::string("\x93NUMPY\x01\x00", 8) + static_cast<char>(heading.size()) + '\0' + heading;
  const samples::MemoryFile file(bytes);
  const auto refused = core::readBinary(file.path(), FileKind::Npy, rateOf(64));
  ASSERT_FALSE(refused);
  EXPECT_FALSE(core::firstInvalidUtf8(refused.error().text())) << refused.error().text();
}

core::Result<core::BinaryTable> openedTable(const core::SharedFile& file, FileKind kind) {
  if (kind == FileKind::Wav) return core::openWav(file);
  return kind == FileKind::Npy ? core::openNpy(file) : core::openUff(file, {});
}

TEST(BinaryDamage, WhatTheSystemRefusesToReadIsAnErrorAndNotTheEnd) {
  for (const char* name : inProcess) {
    SCOPED_TRACE(name);
    const FileKind kind = *samples::kindOf(samples::bytes(name));
    const core::SharedFile file = samples::opened(samples::path(name));
    const auto table = openedTable(file, kind);
    ASSERT_TRUE(table) << table.error().text();
    // A folder takes the file's place: the system does not read it (EISDIR, POSIX read()).
    const int folder = ::open("/", O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    ASSERT_EQ(::dup2(folder, file->descriptor()), file->descriptor());
    ::close(folder);
    const auto values = table->read(100, {}, {});
    ASSERT_FALSE(values);
    EXPECT_THAT(values.error().text(), HasSubstr("cannot be read: "));
    EXPECT_EQ(values.error().where, name);
    const auto again = openedTable(file, kind);
    ASSERT_FALSE(again);
    EXPECT_THAT(again.error().text(), HasSubstr("cannot be read: "));
  }
}

TEST(BinaryDamage, AFifoAFolderAndNothingAreRefusedAtOnce) {
  const std::string fifo = testing::TempDir() + "binary_damage_fifo_" + std::to_string(::getpid());
  ASSERT_EQ(::mkfifo(fifo.c_str(), 0600), 0);
  for (const FileKind kind : {FileKind::Wav, FileKind::Npy, FileKind::Uff58, FileKind::Mat, FileKind::Hdf5}) {
    const auto pipe = core::readBinary(fifo, kind);
    ASSERT_FALSE(pipe);
    EXPECT_THAT(pipe.error().text(), HasSubstr("pipe or device"));
    const auto folder = core::lookAtBinary(testing::TempDir(), kind);
    ASSERT_FALSE(folder);
    EXPECT_THAT(folder.error().text(), HasSubstr("folder"));
    const auto nothing = core::readBinary(testing::TempDir() + "no such file", kind);
    ASSERT_FALSE(nothing);
    EXPECT_EQ(nothing.error().where, "no such file");
  }
  ::unlink(fifo.c_str());
}

}  // namespace

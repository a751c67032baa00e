// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>
#include <sys/mman.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/recording/binary/binary_files.h"
#include "core/recording/file_bytes.h"

// The samples of tests/data/recordings, written by outside programs from the formulas repeated here; see
// make_recordings.py there.

namespace samples {

constexpr std::size_t count = 40;

inline double time(std::size_t k) { return static_cast<double>(k) / 64; }
inline double force(std::size_t k) { return static_cast<double>(k) * (static_cast<double>(k) - 20); }
inline double strain(std::size_t k) { return static_cast<double>(k) / 2 - 7.25; }

template <class Formula>
std::vector<double> all(Formula formula, std::size_t n = count) {
  std::vector<double> values;
  for (std::size_t k = 0; k < n; ++k) values.push_back(formula(k));
  return values;
}

inline std::filesystem::path path(const std::string& name) {
  return std::filesystem::path(SHUNTWRIGHT_TESTS_DIR) / "data" / "recordings" / name;
}

inline std::string bytes(const std::string& name) {
  std::ifstream file(path(name), std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

inline std::optional<core::FileKind> kindOf(std::string_view bytes) {
  return core::binaryKindOf(bytes.substr(0, core::binaryKindBytes));
}

/// A file that lies in memory, so that thousands of them cost no disk.
class MemoryFile {
 public:
  explicit MemoryFile(std::string_view bytes) : m_descriptor(::memfd_create("damaged", MFD_CLOEXEC)) {
    if (::write(m_descriptor, bytes.data(), bytes.size()) != static_cast<ssize_t>(bytes.size()))
      throw std::runtime_error("no memory file");
  }
  ~MemoryFile() { ::close(m_descriptor); }
  MemoryFile(const MemoryFile&) = delete;
  MemoryFile& operator=(const MemoryFile&) = delete;
  std::filesystem::path path() const { return "/proc/self/fd/" + std::to_string(m_descriptor); }

 private:
  int m_descriptor;
};

/// Opened for several readers, as core/recording/binary does it.
inline core::SharedFile opened(const std::filesystem::path& path) {
  auto file = core::RegularFile::open(path);
  if (!file) throw std::runtime_error(file.error().text());
  return std::make_shared<const core::RegularFile>(std::move(*file));
}

inline core::LayoutChoices rateOf(double rate_Hz) {
  core::LayoutChoices choices;
  choices.rate_Hz = rate_Hz;
  return choices;
}

inline std::vector<double> times(const core::Recording& recording) {
  std::vector<double> list;
  for (std::size_t k = 0; k < recording.time.size(); ++k) list.push_back(recording.time[k]);
  return list;
}

/// The sample `name`, which must be readable.
inline core::Recording read(const std::string& name, const core::LayoutChoices& choices = {}) {
  const auto kind = kindOf(bytes(name));
  if (!kind) throw std::runtime_error(name + " is of no known kind");
  auto recording = core::readBinary(path(name), *kind, choices);
  if (!recording) throw std::runtime_error(recording.error().text());
  return *recording;
}

inline core::Preview look(const std::string& name, const core::LayoutChoices& choices = {}) {
  const auto preview = core::lookAtBinary(path(name), kindOf(bytes(name)).value(), choices);
  if (!preview) throw std::runtime_error(preview.error().text());
  return *preview;
}

inline const core::Samples& column(const core::Recording& recording, const std::string& name) {
  for (const core::Column& column : recording.columns)
    if (column.name == name) return column.values;
  throw std::runtime_error("there is no column " + name);
}

/// What holds for every recording, however damaged its file.
inline void expectSound(const core::Recording& recording) {
  const std::size_t samples = recording.time.size();
  EXPECT_EQ(recording.linesRead, samples);
  EXPECT_GT(samples, 0u);
  EXPECT_EQ(recording.skipped.size(), std::min(recording.linesSkipped, core::greatestSkippedListed));
  EXPECT_EQ(recording.missing.size(), std::min(recording.cellsMissing, core::greatestSkippedListed));
  std::size_t missing = 0;
  for (const core::Column& column : recording.columns) {
    ASSERT_EQ(column.values.size(), samples);
    EXPECT_FALSE(column.name.empty());
    for (const double value : column.values) {
      EXPECT_FALSE(std::isinf(value));
      missing += std::isnan(value) ? 1 : 0;
    }
  }
  EXPECT_EQ(missing, recording.cellsMissing);
  for (std::size_t k = 0; k < samples; ++k) {
    ASSERT_TRUE(std::isfinite(recording.time[k]));
    if (k > 0) {
      ASSERT_GE(recording.time[k], recording.time[k - 1]);
    }
  }
}

}  // namespace samples

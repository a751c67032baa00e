// SPDX-License-Identifier: GPL-3.0-or-later
// What a reading process could send back that a file has taken over. An input is its listing, up to the first
// zero byte, and its answer to every demand for numbers.

#include <algorithm>
#include <cstring>

#include "core/recording/binary/columns_to_recording.h"
#include "core/recording/binary/reader_file.h"
#include "core/recording/binary/reader_protocol.h"
#include "core/recording/binary/table_layout.h"
#include "tests/fuzz/recordings.h"

namespace {

using fuzz::must;

class Bytes : public core::ReaderAnswer {
 public:
  explicit Bytes(std::string_view bytes) : m_bytes(bytes) {}

  core::Result<std::size_t> read(char* to, std::size_t count, const std::stop_token&) override {
    const std::size_t given = std::min(count, m_bytes.size());
    std::memcpy(to, m_bytes.data(), given);
    m_bytes.remove_prefix(given);
    return given;
  }
  core::Result<void> finish() override { return {}; }

 private:
  std::string_view m_bytes;
};

core::SharedFile someFile() {
  static fuzz::MemoryFile file;
  file.hold(std::string(4096, '\0'));
  auto opened = core::RegularFile::open(file.path());
  must(static_cast<bool>(opened), "a file in memory can be opened");
  return std::make_shared<const core::RegularFile>(std::move(*opened));
}

void mustComeBack(const core::ReaderListing& listing) {
  must(listing.variables.size() <= core::greatestReaderVariables + 1, "variables are counted");
  const auto back = core::readerListing(textOf(listing));
  must(back && textOf(*back) == textOf(listing), "a listing comes back");
}

/// Whether matrices could give more than a few columns: those across the longest side of each.
bool isWide(const core::ReaderListing& listing) {
  constexpr std::uint64_t few = 64;
  std::uint64_t columns = 0;
  for (const core::ReaderVariable& variable : listing.variables) {
    const auto isSide = [](std::uint64_t size) { return size > 1; };
    if (std::count_if(variable.sizes.begin(), variable.sizes.end(), isSide) < 2) continue;
    columns += std::min(few + 1, *std::max_element(variable.sizes.begin(), variable.sizes.end()));
  }
  return columns > few;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const core::SharedFile file = someFile();
  const std::string_view input = fuzz::textOf(data, size);
  const std::size_t end = std::min(input.find('\0'), input.size());
  const std::string_view listing = input.substr(0, end);
  const std::string_view numbers = input.substr(std::min(end + 1, size));
  if (const auto read = core::readerListing(listing)) {
    mustComeBack(*read);
    // Thousands of columns take ten milliseconds, a hundred times the rest: few of these go on.
    if (isWide(*read) && !fuzz::isOneIn(256, input)) return 0;
  }
  const auto ask =
      [&](const std::vector<std::string>& words) -> core::Result<std::unique_ptr<core::ReaderAnswer>> {
    return std::unique_ptr<core::ReaderAnswer>(new Bytes(words[1] == "list" ? listing : numbers));
  };
  auto table = core::openInReader(file, core::FileKind::Mat, {}, ask);
  if (!table) {
    fuzz::mustBeTold(table.error());
    return 0;
  }
  auto values = table->read(table->records, {}, {});
  if (!values) {
    fuzz::mustBeTold(values.error());
    return 0;
  }
  core::guessTimeColumn(*table, *values);
  const core::TableLayout found = core::layoutOf(*table, {});
  if (found.obstacle) return 0;
  const auto recording = core::recordingOf(*table, found.layout, std::move(*values));
  if (recording) fuzz::mustBeSound(*recording);
  return 0;
}

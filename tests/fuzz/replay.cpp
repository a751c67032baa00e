// SPDX-License-Identifier: GPL-3.0-or-later
// Feeds each file of the folders and files named to a fuzz target once: NAME_fuzz PATH...

#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

void replay(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  const std::string bytes{std::istreambuf_iterator<char>(in), {}};
  LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
}

}  // namespace

int main(int count, char** words) {
  fuzz::replayed = true;
  int inputs = 0;
  for (int i = 1; i < count; ++i) {
    if (!std::filesystem::is_directory(words[i])) {
      replay(words[i]);
      ++inputs;
      continue;
    }
    for (const auto& entry : std::filesystem::recursive_directory_iterator(words[i]))
      if (entry.is_regular_file()) {
        replay(entry.path());
        ++inputs;
      }
  }
  std::printf("%d inputs replayed\n", inputs);
  return inputs > 0 ? 0 : 1;  // an empty corpus tests nothing
}

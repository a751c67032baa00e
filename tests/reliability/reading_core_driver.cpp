// SPDX-License-Identifier: GPL-3.0-or-later
// reading_core_driver KIND FILE...: reads each file and says in a line what came of it: "read", or the error.
// In the end the most memory that it ever had, and its reading process, in kB. KIND: recording, json,
// document, stock, channels.

#include <sys/resource.h>

#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>

#include "core/campaign/channel_list.h"
#include "core/document/json_reader.h"
#include "core/document/json_text.h"
#include "core/recording/reader.h"
#include "core/stock/stock_file.h"

namespace {

std::string bytesOf(const char* path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

template <class T>
std::string outcome(const core::Result<T>& result) {
  return result ? "read" : result.error().text();
}

/// What the program itself had: the system's count would begin with what its parent held.
long ownPeak_kB() {
  std::ifstream status("/proc/self/status");
  for (std::string word; status >> word;)
    if (word == "VmHWM:") {
      long peak = 0;
      status >> peak;
      return peak;
    }
  return -1;
}

/// A rate, so that a file without a time can be read as well.
core::LayoutChoices withRate() {
  core::LayoutChoices choices;
  choices.rate_Hz = 64;
  return choices;
}

std::string outcomeOf(const std::string& kind, const char* path) {
  if (kind == "recording") return outcome(core::readRecording(path, withRate()));
  const std::string bytes = bytesOf(path);
  if (kind == "json") return outcome(core::parseJson(bytes));
  if (kind == "document") return outcome(core::readDocument(bytes));
  if (kind == "stock") return outcome(core::readStockFile(bytes));
  if (kind == "channels") return outcome(core::readListTable(bytes));
  return "there is no such kind";
}

}  // namespace

int main(int count, char** words) {
  if (count < 3) return 2;
  for (int k = 2; k < count; ++k) std::printf("%s\n", outcomeOf(words[1], words[k]).c_str());
  rusage used{};
  ::getrusage(RUSAGE_CHILDREN, &used);
  std::printf("%ld %ld\n", ownPeak_kB(), used.ru_maxrss);
  return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
// Command lines, an argument a line. All are parsed; run are those that only read, and only files of a folder
// that holds nothing else: the fuzzer shall not write where chance tells it to.

#include <algorithm>
#include <array>
#include <fstream>
#include <vector>

#include "app/command_line.h"
#include "tests/fuzz/target.h"

namespace {

constexpr std::array reading = {"predict", "polarity", "levels",  "line",   "review", "wiring",
                                "working", "whatif",   "compare", "verify", "spice"};
constexpr std::size_t mostArguments = 24;
constexpr std::size_t runOneIn = 16;  // or a day is not enough for ten million

/// Goes to a folder of its own with a small document, a recording, and a table of points.
bool goToFolder() {
  const auto folder =
      std::filesystem::temp_directory_path() / ("command_line_fuzz_" + std::to_string(::getpid()));
  std::filesystem::create_directories(folder);
  const std::filesystem::path source = SHUNTWRIGHT_SOURCE;
  std::filesystem::copy_file(source / "examples/quarter_bridge.bridgecal", folder / "d",
                             std::filesystem::copy_options::overwrite_existing);
  std::ofstream recording(folder / "r");
  recording << "time,Q-1\n";
  for (int k = 0; k < 300; ++k) recording << k / 10.0 << ',' << (k / 100 == 1 ? 1000 : 0) + k % 3 << '\n';
  std::ofstream(folder / "t") << "x,y,uy\n1,1.1,0.1\n2,1.9,0.1\n3,3.2,0.1\n4,3.9,0.1\n";
  std::filesystem::current_path(folder);
  return true;
}

std::vector<std::string> argumentsIn(std::string_view input) {
  std::vector<std::string> arguments = {"shuntwright"};
  while (!input.empty() && arguments.size() < mostArguments) {
    // An argument ends at its first zero, as everywhere in C.
    const std::string line(fuzz::firstLineOff(input));
    arguments.emplace_back(line.c_str());
  }
  return arguments;
}

bool onlyReads(const std::vector<std::string>& arguments) {
  const auto isSafe = [](const std::string& argument) {
    return argument.find('/') == std::string::npos && argument.find("..") == std::string::npos &&
           !argument.starts_with("--trials");
  };
  return arguments.size() > 1 && std::find(reading.begin(), reading.end(), arguments[1]) != reading.end() &&
         std::all_of(arguments.begin(), arguments.end(), isSafe);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  [[maybe_unused]] static const bool there = goToFolder();
  // To build the parser takes a hundred times as long as to read a line. Only lines that are run need one of
  // their own.
  static app::CommandLine parser;
  const auto arguments = argumentsIn(fuzz::textOf(data, size));
  std::vector<const char*> words;
  for (const std::string& argument : arguments) words.push_back(argument.c_str());
  words.push_back(nullptr);
  const int count = static_cast<int>(arguments.size());
  const app::Request request = parser.read(count, words.data());
  if (request.exit) fuzz::must(*request.exit >= 0 && *request.exit <= 2, "the status is one that is told");
  if (request.exit || !request.command || !onlyReads(arguments)) return 0;
  if (!fuzz::isOneIn(runOneIn, fuzz::textOf(data, size))) return 0;
  const app::Request own = app::CommandLine().read(count, words.data());
  fuzz::must(own.command && !own.exit, "what an earlier line said changes nothing");
  const int status = own.command();
  fuzz::must(status >= 0 && status <= 2, "the status is one that is told");
  return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
// Scores the diagnosis on simulated checks with one planted fault each, and on healthy ones:
//
//   diagnosis_score [--seed N] [--checks N] [--healthy N] [--threads N]
//
// prints the tables; with --require it fails below the targets: the right cause first in 90 %, within the
// first two in 98 % (causes that the program says it cannot tell apart from the first count as first), less
// than 2 % of healthy checks declared faulty. The time that a diagnosis takes is printed, and measured by
// tests/bench/diagnosis_bench: a busy machine must not fail a test.
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

#include "tests/diagnosis/score.h"

namespace {

struct Options {
  std::uint64_t seed = 6;
  std::size_t checks = 2000, healthy = 1000;
  unsigned threads = 2;
  bool require = false;
  double leastTwo = 98;  ///< percent
};

bool read(int count, char** words, Options& options) {
  for (int k = 1; k < count; ++k) {
    const std::string_view word = words[k];
    if (word == "--require") {
      options.require = true;
      continue;
    }
    if (k + 1 == count) return false;
    const auto value = std::strtoull(words[++k], nullptr, 10);
    if (word == "--least-two")
      options.leastTwo = std::strtod(words[k], nullptr);
    else if (word == "--seed")
      options.seed = value;
    else if (word == "--checks")
      options.checks = value;
    else if (word == "--healthy")
      options.healthy = value;
    else if (word == "--threads")
      options.threads = static_cast<unsigned>(value);
    else
      return false;
  }
  return true;
}

/// Whether a target is met, with a line that tells.
bool meets(const char* what, double value, bool atLeast, double target, const char* unit) {
  const bool met = atLeast ? value >= target : value < target;
  std::printf("%-46s %7.2f %s, wanted %s %g %s: %s\n", what, value, unit, atLeast ? "at least" : "below",
              target, unit, met ? "met" : "MISSED");
  return met;
}

}  // namespace

int main(int count, char** words) {
  Options options;
  if (!read(count, words, options)) {
    std::fputs(
        "diagnosis_score [--seed N] [--checks N] [--healthy N] [--threads N] [--require] [--least-two "
        "PERCENT]\n",
        stderr);
    return 2;
  }
  const auto outcomes = diagnosis::outcomesOf(options.seed, options.checks, options.healthy, options.threads);
  std::fputs(diagnosis::tablesOf(outcomes).c_str(), stdout);
  const diagnosis::Rates rates = diagnosis::ratesOf(outcomes);
  std::printf("\nby list alone: first %.2f %%, first two %.2f %%\n", 100 * rates.strictFirst,
              100 * rates.strictTwo);
  bool met = meets("right cause first, ties counted", 100 * rates.first, true, 90, "%");
  met = meets("within the first two, ties counted", 100 * rates.firstTwo, true, options.leastTwo, "%") && met;
  met = meets("healthy checks declared faulty", 100 * rates.healthyCalledFaulty, false, 2, "%") && met;
  return options.require && !met ? 1 : 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
// How long reading a number takes, against std::from_chars on the bare digits (the peer: it knows no units).
// Target: a field reads its text under 5 us, so that an echo on every key costs nothing that is felt.
#include <benchmark/benchmark.h>

#include <charconv>
#include <string>

#include "core/units/digit_step.h"
#include "core/units/notation.h"

namespace {

using namespace core;

void FromChars(benchmark::State& state) {
  const std::string text = "174.65";
  for (auto _ : state) {
    double value = 0;
    benchmark::DoNotOptimize(std::from_chars(text.data(), text.data() + text.size(), value));
    benchmark::DoNotOptimize(value);
  }
}
BENCHMARK(FromChars);

void Parse(benchmark::State& state, const char* text, UnitFamily family) {
  for (auto _ : state) benchmark::DoNotOptimize(parseQuantity(text, family));
}
BENCHMARK_CAPTURE(Parse, number, "174.65", UnitFamily::Plain);
BENCHMARK_CAPTURE(Parse, resistance, "174.65 kΩ", UnitFamily::Resistance);
BENCHMARK_CAPTURE(Parse, letterCode, "59k9", UnitFamily::Resistance);
BENCHMARK_CAPTURE(Parse, strain, "−1000 µm/m", UnitFamily::Strain);
BENCHMARK_CAPTURE(Parse, timeInParts, "1 min 30.5 s", UnitFamily::Duration);
BENCHMARK_CAPTURE(Parse, refused, "1.234,5 Ω", UnitFamily::Resistance);

void StepADigit(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(stepped("174.65 kΩ", 1, 1));
}
BENCHMARK(StepADigit);

}  // namespace

BENCHMARK_MAIN();

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/levels.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/levels/describe.h"
#include "core/levels/find_spans.h"
#include "core/recording/samples.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr double greatestValue = 1e100;  ///< so that no square overflows
constexpr std::size_t block = 1 << 16;   ///< samples looked at between two looks at the stop

/// What a block of samples is checked by: a sum that only numbers leave at 0, and how many numbers there are.
struct Check {
  bool isTooLarge = false;
  std::size_t numbers = 0;
};

Check checkOf(std::span<const double> values) {
  std::size_t large = 0;
  std::size_t numbers = 0;
  for (const double v : values) {
    large += std::abs(v) > greatestValue ? 1 : 0;
    numbers += v == v ? 1 : 0;
  }
  return {large > 0, numbers};
}

Error tooLarge(std::span<const double> values, std::size_t begin) {
  while (!(std::abs(values[begin]) > greatestValue)) ++begin;
  const std::string where = say("sample {1}", {std::to_string(begin + 1)});
  if (std::isinf(values[begin])) return {where, say("the value is not a finite number"), say("Leave it out")};
  return {where, say("the value is too large"), say("Choose another unit")};
}

std::optional<Error> faultOfTimes(const TimeAxis& time, std::span<const double> values) {
  if (time.size() != values.size()) {
    return Error{say("recording"),
                 say("{1} times do not pair with {2} values",
                     {std::to_string(time.size()), std::to_string(values.size())}),
                 say("Give every value its time")};
  }
  if (values.size() < 3)
    return Error{say("recording"), say("it has fewer than three samples"), say("Record for longer")};
  if (time.front() == time.back()) {
    return Error{say("recording"), say("all times are equal"), say("Choose the column that holds the time")};
  }
  return std::nullopt;
}

std::optional<Error> faultOfValues(std::span<const double> values, const std::stop_token& stop) {
  std::size_t numbers = 0;
  for (std::size_t begin = 0; begin < values.size(); begin += block) {
    if (stop.stop_requested()) return cancelled();
    letSamplesGo();
    const Check check = checkOf(values.subspan(begin, std::min(block, values.size() - begin)));
    if (check.isTooLarge) return tooLarge(values, begin);
    numbers += check.numbers;
  }
  if (numbers >= 3) return std::nullopt;
  return Error{say("recording"), say("it has fewer than three numbers"),
               say("Choose another column or record for longer")};
}

}  // namespace

std::string_view qualityWord(LevelQuality quality) {
  constexpr std::string_view words[] = {sayLater("good"), sayLater("fair"), sayLater("poor")};
  return sayName(words[static_cast<std::size_t>(quality)]);
}

Result<std::vector<Level>> findLevels(const TimeAxis& time, std::span<const double> values,
                                      const LevelOptions& options, const std::stop_token& stop,
                                      const Progress& progress) {
  if (auto fault = faultOfTimes(time, values)) return *fault;
  if (auto fault = faultOfValues(values, stop)) return *fault;
  const Progress half = [&](double share) {
    if (progress) progress(0.7 * share);
  };
  const std::vector<SampleSpan> spans = findSpans(time, values, options, stop, half);
  if (stop.stop_requested()) return cancelled();
  std::vector<Level> levels = describeLevels(time, values, spans, options, stop);
  if (progress) progress(1);
  if (stop.stop_requested()) return cancelled();
  return levels;
}

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/beside_others.h"

#include <algorithm>
#include <optional>

#include "core/units/language.h"

namespace core {
namespace {

constexpr std::size_t mostCompared = 50;  ///< others that a channel is laid beside; enough for a majority

/// A step, and when it was held.
struct HeldStep {
  std::size_t step = 0;
  double begin_s = 0, end_s = 0;
};

std::vector<HeldStep> heldSteps(const ReadChannel& read) {
  std::vector<HeldStep> held;
  const RunMatch& run = chosenRun(*read.find.match, read.choice);
  for (std::size_t step = 0; step < run.levelOfStep.size(); ++step)
    if (const auto level = run.levelOfStep[step])
      held.push_back({step, (*read.find.levels)[*level].begin_s, (*read.find.levels)[*level].end_s});
  return held;
}

/// How two channels stand at the times that both are read at.
struct Times {
  std::size_t same = 0, other = 0;
  std::size_t step = 0, othersStep = 0;  ///< the first that differ
};

Times timesOf(const std::vector<HeldStep>& own, const std::vector<HeldStep>& others) {
  Times times;
  for (const HeldStep& a : own)
    for (const HeldStep& b : others) {
      const double middle_s = (b.begin_s + b.end_s) / 2;
      if (middle_s < a.begin_s || middle_s > a.end_s) continue;
      if (a.step != b.step && times.other == 0) times.step = a.step, times.othersStep = b.step;
      ++(a.step == b.step ? times.same : times.other);
    }
  return times;
}

std::string sentenceOn(std::size_t channels, const Times& times, const Setup& setup) {
  return sayCount(channels,
                  "At the time of {1} another channel of the recording is at {2}: if they were switched "
                  "together, this one has the opposite polarity, or its levels are given to the wrong steps.",
                  "At the time of {1} {n} other channels of the recording are at {2}: if all were switched "
                  "together, this one has the opposite polarity, or its levels are given to the wrong steps.",
                  {stepName(setup, times.step), stepName(setup, times.othersStep)});
}

}  // namespace

std::vector<std::string> apartFromOthers(std::span<const ReadChannel> read) {
  std::vector<std::vector<HeldStep>> held;
  for (const ReadChannel& one : read) held.push_back(heldSteps(one));
  const std::size_t stride = std::max<std::size_t>(1, read.size() / mostCompared);
  std::vector<std::string> sentences(read.size());
  for (std::size_t own = 0; own < read.size(); ++own) {
    std::size_t together = 0, apart = 0;
    std::optional<Times> first;
    for (std::size_t k = 0; k < read.size(); k += stride) {
      if (k == own || read[k].setup.sequence.size() != read[own].setup.sequence.size()) continue;
      const Times times = timesOf(held[own], held[k]);
      if (times.same > 0) ++together;
      if (times.same > 0 || times.other == 0) continue;
      ++apart;
      if (!first) first = times;
    }
    // Of two channels that differ neither is the odd one.
    if (together == 0 && apart > 1) sentences[own] = sentenceOn(apart, *first, read[own].setup);
  }
  return sentences;
}

}  // namespace core

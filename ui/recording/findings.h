// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <optional>
#include <vector>

#include "core/intake/intake.h"

namespace ui {

/// What was found in a recording for one channel of the document, and what the user decided about it.
struct Finding {
  std::size_t channel = 0;                 ///< index in the document
  std::optional<std::size_t> column = {};  ///< index in the recording
  /// None without a column, and while its levels are looked for.
  std::shared_ptr<const core::ChannelFind> find = {};
  std::size_t run = 0;
  /// How the run is read: 0 for its best match, k for the k-th of the others. None: it is ambiguous and the
  /// user has not chosen.
  std::optional<std::size_t> reading = {};
  /// The level of each step as set by hand; empty: as matched.
  std::vector<std::optional<std::size_t>> byHand = {};
  bool isTicked = false;
  /// The name of the column where it is only nearly that of the channel and nobody confirmed it; else empty.
  std::string nearName = {};
  /// That it is at other steps than the other channels at the same time; usually empty.
  std::string apart = {};
};

/// `find` as it is first shown: the first run; ticked when it is plain (taking_up.h), so that nothing is
/// taken unasked that asks for a look.
Finding findingOf(std::shared_ptr<const core::ChannelFind> find);
/// Lays the findings beside each other, as they are read first (core/intake/beside_others.h).
void tellThoseApart(std::vector<Finding>& findings, const core::Document& document);
/// A run, to be read the best way unless that is ambiguous; ticked when it is not.
void chooseRun(Finding& finding, std::size_t run);
void chooseReading(Finding& finding, std::size_t reading);
/// Gives a level to a step by hand, or to none; the step's former level is left over.
void giveLevel(Finding& finding, std::size_t level, std::optional<std::size_t> step, std::size_t stepsOfPlan);

/// The run shown, if there is one.
const core::FoundRun* runOf(const Finding& finding);
/// The level of each step as it would be taken. Of an ambiguous run nobody decided about: where all ways to
/// read it agree. Empty without a run.
std::vector<std::optional<std::size_t>> levelOfSteps(const Finding& finding);
std::size_t stepsWithLevel(const Finding& finding);

/// Whether the finding can become a check, or why it cannot.
core::Result<void> requireTakable(const Finding& finding, const core::Channel& channel);
/// The finding in a form that withCheckTaken takes; needs requireTakable.
core::ChannelFind decided(const Finding& finding);

/// One line: "every step has its level", "ambiguous: choose how to read it".
QString matchWords(const Finding& finding, const core::Channel& channel);
/// A sentence a line: all that is said of the match.
QStringList matchSentences(const Finding& finding, const core::Channel& channel);
/// The ways to read the run, best first, each in a few words: "as planned, levels 1–9".
QStringList readingWords(const Finding& finding, const core::Channel& channel);
/// The same ways, each in full: a sentence a line.
QStringList readingSentences(const Finding& finding, const core::Channel& channel);
/// "run 2, 41.5 s to 63 s", a run each.
QStringList runWords(const Finding& finding);

}  // namespace ui

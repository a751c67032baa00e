// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "app/output.h"
#include "core/intake/intake.h"

// How the levels of a recording were matched with the plan, and which way is taken.

namespace app {

/// What --match says, for all channels and for single ones.
struct MatchWishes {
  std::optional<core::RunChoice> forAll;
  std::map<std::string, core::RunChoice> ofChannel;  ///< by name; goes before `forAll`

  std::optional<core::RunChoice> of(const std::string& channel) const;
};

/// Each of `words` is a run, counted from 1, and 0 or nothing for its likeliest reading, else which of the
/// others: "2", "2.1"; or that for one channel: "TP-01=2.1". Fails for other words, for channels that
/// `document` does not have and for what is said twice.
core::Result<MatchWishes> matchWishes(const std::vector<std::string>& words, const core::Document& document);

/// The way that is taken: `wanted`, or the only one there is. Fails when `find` has no run, not the wanted
/// one, or several or ambiguous runs and nothing is wanted: nobody but the user chooses then.
core::Result<core::RunChoice> chosenWay(const core::ChannelFind& find, const core::Setup& setup,
                                        std::optional<core::RunChoice> wanted);

/// A way to match, as --match names it, and what it means, a sentence a line.
struct MatchWay {
  std::string name;
  std::vector<std::string> words;
};

/// All ways there are, in the order of time and the likelier first.
std::vector<MatchWay> waysOf(const core::ChannelFind& find, const core::Setup& setup);

/// What was done for the way taken, a sentence a line.
std::vector<std::string> wordsOf(const core::ChannelFind& find, core::RunChoice choice,
                                 const core::Setup& setup);

/// What is not as planned in the way taken, and levels of poor quality in it, a sentence a line.
std::vector<std::string> remarksOf(const core::ChannelFind& find, core::RunChoice choice,
                                   const core::Setup& setup);

Json matchJson(const core::ChannelFind& find, std::optional<core::RunChoice> choice,
               const core::Setup& setup);

}  // namespace app

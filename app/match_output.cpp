// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/match_output.h"

#include <charconv>

#include "app/files.h"
#include "core/units/text.h"

namespace app {
namespace {

std::optional<std::size_t> wholeNumber(std::string_view text) {
  std::size_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return number;
}

std::string nameOf(core::RunChoice choice) {
  const std::string run = std::to_string(choice.run + 1);
  return choice.other == 0 ? run : run + "." + std::to_string(choice.other);
}

bool has(const core::LevelMatch& match, core::RunChoice choice) {
  return choice.run < match.runs.size() && choice.other <= match.runs[choice.run].others.size();
}

/// From where to where a run lies.
std::string placeText(const core::ChannelFind& find, const core::RunMatch& run) {
  std::optional<double> begin, end;
  for (const auto& index : run.levelOfStep) {
    if (!index) continue;
    const core::Level& level = (*find.levels)[*index];
    if (!begin || level.begin_s < *begin) begin = level.begin_s;
    if (!end || level.end_s > *end) end = level.end_s;
  }
  return shown(begin) + " to " + shown(end) + " s";
}

const char* keyOf(core::MatchRemarkKind kind) {
  switch (kind) {
    case core::MatchRemarkKind::Missing:
      return "missing";
    case core::MatchRemarkKind::Extra:
      return "extra";
    case core::MatchRemarkKind::Repeated:
      return "repeated";
    case core::MatchRemarkKind::Swapped:
      return "swapped";
    case core::MatchRemarkKind::Reversed:
      return "reversed";
    case core::MatchRemarkKind::StartsLate:
      return "starts_late";
    case core::MatchRemarkKind::EndsEarly:
      return "ends_early";
    case core::MatchRemarkKind::Shared:
      return "shared";
    case core::MatchRemarkKind::Off:
      return "off";
  }
  return "";
}

Json remarkJson(const core::MatchRemark& remark, const core::ChannelFind& find, const core::Setup& setup) {
  Json json{{"kind", keyOf(remark.kind)},
            {"text", core::remarkText(remark, setup, *find.levels)},
            {"steps", Json::array()},
            {"levels", Json::array()}};
  for (const std::size_t step : remark.steps) json["steps"].push_back(step + 1);
  for (const std::size_t index : remark.levels) {
    const core::Level& level = (*find.levels)[index];
    json["levels"].push_back({{"begin_s", jsonNumber(level.begin_s)},
                              {"end_s", jsonNumber(level.end_s)},
                              {"mean", jsonNumber(level.mean)}});
  }
  for (const double deviation : remark.deviations) json["deviations"].push_back(jsonNumber(deviation));
  return json;
}

/// The words on one run; that there are others is told only where the user has not chosen among them.
std::vector<std::string> wordsOn(const core::ChannelFind& find, const core::RunMatch& run,
                                 const core::Setup& setup) {
  return core::matchText({run, {}}, setup, *find.levels);
}

core::Result<core::RunChoice> runChoice(const std::string& text) {
  const std::size_t point = text.find('.');
  const auto run = wholeNumber(std::string_view(text).substr(0, point));
  const auto other = point == std::string::npos ? std::optional<std::size_t>(0)
                                                : wholeNumber(std::string_view(text).substr(point + 1));
  if (!run || *run == 0 || !other)
    return core::Error{"--match", "\"" + text + "\" names no run",
                       "Write the number of the run, as 2, or of another reading of it, as 2.1; for one "
                       "channel with its name, as TP-01=2"};
  return core::RunChoice{*run - 1, *other};
}

}  // namespace

std::optional<core::RunChoice> MatchWishes::of(const std::string& channel) const {
  const auto own = ofChannel.find(channel);
  return own == ofChannel.end() ? forAll : std::optional(own->second);
}

core::Result<MatchWishes> matchWishes(const std::vector<std::string>& words, const core::Document& document) {
  MatchWishes wishes;
  for (const std::string& word : words) {
    const std::size_t equals = word.rfind('=');
    const bool isForAll = equals == std::string::npos;
    const auto choice = runChoice(isForAll ? word : word.substr(equals + 1));
    if (!choice) return choice.error();
    const std::string channel = isForAll ? "" : word.substr(0, equals);
    if (!isForAll) {
      const auto known = channelsNamed(document, channel);
      if (channel.empty() || !known)
        return core::Error{"--match", "there is no channel " + core::inQuotes(channel),
                           known ? "Write --match 2 for all channels" : known.error().mend};
    }
    const bool isNew =
        isForAll ? !wishes.forAll.has_value() : wishes.ofChannel.emplace(channel, *choice).second;
    if (!isNew)
      return core::Error{"--match", "it is given twice for " + (isForAll ? "all channels" : channel),
                         "Leave one out"};
    if (isForAll) wishes.forAll = *choice;
  }
  return wishes;
}

core::Result<core::RunChoice> chosenWay(const core::ChannelFind& find, const core::Setup& setup,
                                        std::optional<core::RunChoice> wanted) {
  if (!find.match) return find.match.error();
  const core::LevelMatch& match = *find.match;
  if (match.runs.empty()) return core::noRunError(setup, *find.levels);
  std::vector<std::string> names;
  for (const MatchWay& way : waysOf(find, setup)) names.push_back(way.name);
  if (wanted && !has(match, *wanted))
    return core::Error{"--match", "there is no run " + nameOf(*wanted), "There is " + listed(names)};
  if (wanted) return *wanted;
  if (match.runs.size() > 1)
    return core::Error{"",
                       "the recording holds " + std::to_string(match.runs.size()) + " runs of the sequence",
                       "Choose one with --match: " + listed(names)};
  if (match.runs.front().isAmbiguous())
    return core::Error{"",
                       "the levels can be matched with the steps in " + std::to_string(names.size()) +
                           " ways that are about as likely",
                       "Choose one with --match: " + listed(names)};
  return core::RunChoice{};
}

std::vector<MatchWay> waysOf(const core::ChannelFind& find, const core::Setup& setup) {
  std::vector<MatchWay> ways;
  if (!find.match) return ways;
  for (std::size_t run = 0; run < find.match->runs.size(); ++run)
    for (std::size_t other = 0; other <= find.match->runs[run].others.size(); ++other) {
      const core::RunChoice choice{run, other};
      ways.push_back({nameOf(choice), wordsOn(find, core::chosenRun(*find.match, choice), setup)});
      ways.back().words.front().insert(0, placeText(find, core::chosenRun(*find.match, choice)) + ": ");
    }
  return ways;
}

std::vector<std::string> wordsOf(const core::ChannelFind& find, core::RunChoice choice,
                                 const core::Setup& setup) {
  const core::RunMatch& run = core::chosenRun(*find.match, choice);
  std::vector<std::string> words = wordsOn(find, run, setup);
  if (find.match->runs.size() > 1 || choice.other > 0)
    words.insert(words.begin(), "Run " + nameOf(choice) + ", " + placeText(find, run) + ".");
  return words;
}

std::vector<std::string> remarksOf(const core::ChannelFind& find, core::RunChoice choice,
                                   const core::Setup& setup) {
  const core::RunMatch& run = core::chosenRun(*find.match, choice);
  std::vector<std::string> remarks;
  for (const core::MatchRemark& remark : run.remarks)
    remarks.push_back(core::remarkText(remark, setup, *find.levels));
  std::vector<std::string> poor;
  for (std::size_t step = 0; step < run.levelOfStep.size(); ++step) {
    if (!run.levelOfStep[step]) continue;
    const core::Level& level = (*find.levels)[*run.levelOfStep[step]];
    if (level.quality != core::LevelQuality::Poor) continue;
    poor.push_back(std::to_string(step + 1));
    if (poor.size() == 1)
      remarks.push_back("The level of " + core::stepName(setup, step) + " is poor: " + level.reason + ".");
  }
  if (poor.size() > 1) remarks.push_back("Levels are poor in steps " + listed(poor) + ".");
  return remarks;
}

Json matchJson(const core::ChannelFind& find, std::optional<core::RunChoice> choice,
               const core::Setup& setup) {
  if (!find.match) return nullptr;
  Json json{{"runs", find.match->runs.size()}};
  if (choice) {
    const core::RunMatch& run = core::chosenRun(*find.match, *choice);
    json["way"] = nameOf(*choice);
    json["gain"] = jsonNumber(run.gain);
    json["zero"] = jsonNumber(run.zero);
    json["misfit"] = jsonNumber(run.misfit);
    json["remarks"] = Json::array();
    for (const core::MatchRemark& remark : run.remarks)
      json["remarks"].push_back(remarkJson(remark, find, setup));
    json["words"] = wordsOf(find, *choice, setup);
  }
  json["ways"] = Json::array();
  for (const MatchWay& way : waysOf(find, setup))
    json["ways"].push_back({{"way", way.name}, {"words", way.words}});
  return json;
}

}  // namespace app

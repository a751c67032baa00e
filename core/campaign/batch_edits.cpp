// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/batch_edits.h"

#include <algorithm>
#include <optional>
#include <set>
#include <utility>

#include "core/document/edits.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

std::string about(const std::string& name, const std::string& what) { return say("{1}: {2}", {name, what}); }

/// Gives each channel to `change`, which returns it changed or says why not.
template <class Change>
BatchEdit changed(const Document& document, std::span<const std::size_t> to, const Change& change) {
  BatchEdit edit{document, {}};
  for (const std::size_t index : to) {
    const Channel& before = *document.channels[index];
    Result<Channel> after = change(before);
    BatchOutcome outcome{index, false, !after, {}};
    if (!after) {
      outcome.sentence = after.error().where.empty()
                             ? about(before.name, after.error().what)
                             : say("{1}: {2}: {3}", {before.name, after.error().where, after.error().what});
    } else {
      outcome.changed = !(*after == before);
      outcome.sentence = about(before.name, outcome.changed ? say("changed") : say("nothing to change"));
      if (outcome.changed) edit.document.channels[index] = std::make_shared<const Channel>(*std::move(after));
    }
    edit.outcomes.push_back(std::move(outcome));
  }
  return edit;
}

/// What stands in braces of a pattern, for one channel; none when it means nothing.
std::optional<std::string> filledIn(std::string_view word, const Channel& channel, std::size_t number) {
  if (word == "name") return channel.name;
  if (word == "group") return channel.group;
  if (word == "column") return channel.recordingColumn.empty() ? channel.name : channel.recordingColumn;
  if (word.empty() || word.size() > 9 || word.find_first_not_of('n') != word.npos) return std::nullopt;
  std::string digits = std::to_string(number);
  if (digits.size() < word.size()) digits.insert(0, word.size() - digits.size(), '0');
  return digits;
}

Result<std::string> nameBy(std::string_view pattern, const Channel& channel, std::size_t number) {
  std::string name;
  while (!pattern.empty()) {
    const std::size_t open = pattern.find('{');
    name += pattern.substr(0, open);
    if (open == pattern.npos) break;
    const std::size_t close = pattern.find('}', open);
    const auto word = close == pattern.npos
                          ? std::nullopt
                          : filledIn(pattern.substr(open + 1, close - open - 1), channel, number);
    if (!word)
      return Error{say("pattern"), say("{1} means nothing", {inQuotes(pattern.substr(open))}),
                   say("Known are {n}, {name}, {group} and {column}")};
    name += *word;
    pattern.remove_prefix(close + 1);
  }
  return name;
}

/// The new names, all of them to be had.
Result<std::vector<std::string>> newNames(const Document& document, std::span<const std::size_t> to,
                                          std::string_view pattern, std::size_t first) {
  const std::set<std::size_t> renamed(to.begin(), to.end());
  std::set<std::string> taken;
  for (std::size_t k = 0; k < document.channels.size(); ++k)
    if (!renamed.contains(k)) taken.insert(document.channels[k]->name);
  std::vector<std::string> names;
  for (std::size_t k = 0; k < to.size(); ++k) {
    const Channel& channel = *document.channels[to[k]];
    auto name = nameBy(pattern, channel, first + k);
    if (!name) return name.error();
    if (name->empty())
      return Error{channel.name, say("its name would be empty"), say("Put something else into the pattern")};
    if (!taken.insert(*name).second)
      return Error{channel.name, say("its name would be {1}, which another channel has", {inQuotes(*name)}),
                   say("Put {n} into the pattern, or begin with another number")};
    names.push_back(*std::move(name));
  }
  return names;
}

Channel renamed(Channel channel, std::string name) {
  if (name == channel.name) return channel;
  if (channel.recordingColumn.empty()) channel.recordingColumn = channel.name;
  channel.name = std::move(name);
  if (channel.recordingColumn == channel.name) channel.recordingColumn.clear();
  return channel;
}

}  // namespace

std::size_t changedCount(const BatchEdit& edit) {
  return static_cast<std::size_t>(std::count_if(edit.outcomes.begin(), edit.outcomes.end(),
                                                [](const BatchOutcome& outcome) { return outcome.changed; }));
}

std::vector<std::string> refusals(const BatchEdit& edit) {
  std::vector<std::string> sentences;
  for (const BatchOutcome& outcome : edit.outcomes)
    if (outcome.refused) sentences.push_back(outcome.sentence);
  return sentences;
}

BatchEdit withValuesIn(const Document& document, std::span<const std::size_t> to,
                       const ChannelValues& values) {
  return changed(document, to, [&](const Channel& channel) { return withValues(channel, values); });
}

Result<BatchEdit> withNamesByPattern(const Document& document, std::span<const std::size_t> to,
                                     std::string_view pattern, std::size_t first) {
  const auto names = newNames(document, to, pattern, first);
  if (!names) return names.error();
  std::size_t next = 0;
  BatchEdit edit = changed(document, to, [&](const Channel& channel) -> Result<Channel> {
    return renamed(channel, (*names)[next++]);
  });
  for (std::size_t k = 0; k < edit.outcomes.size(); ++k)
    if (edit.outcomes[k].changed)
      edit.outcomes[k].sentence = say("{1} is {2} now", {document.channels[to[k]]->name, (*names)[k]});
  return edit;
}

BatchEdit withChecksClosed(const Document& document, std::span<const std::size_t> to,
                           const std::string& check) {
  return changed(document, to, [&](const Channel& channel) -> Result<Channel> {
    const auto found = std::find_if(channel.checks.begin(), channel.checks.end(),
                                    [&](const Check& each) { return each.name == check; });
    if (found == channel.checks.end()) return Error{"", say("it has no check {1}", {inQuotes(check)}), ""};
    if (found->closedWith) return channel;
    if (!hasReading(*found)) return Error{"", say("check {1} has no reading", {inQuotes(check)}), ""};
    return withCheckClosed(channel, static_cast<std::size_t>(found - channel.checks.begin()));
  });
}

BatchEdit withOpenChecksClosed(const Document& document, std::span<const std::size_t> to) {
  return changed(document, to, [](Channel channel) -> Result<Channel> {
    for (std::size_t k = 0; k < channel.checks.size(); ++k)
      if (!channel.checks[k].closedWith && hasReading(channel.checks[k]))
        channel = withCheckClosed(std::move(channel), k);
    return channel;
  });
}

BatchEdit withChannelsRemoved(const Document& document, std::span<const std::size_t> to) {
  BatchEdit edit{document, {}};
  const std::set<std::size_t> gone(to.begin(), to.end());
  for (const std::size_t index : to) {
    const Channel& channel = *document.channels[index];
    const std::size_t checks = channel.checks.size();
    edit.outcomes.push_back({index, true, false,
                             checks == 0 ? say("{1}: removed", {channel.name})
                                         : sayCount(checks, "{1}: removed with its check",
                                                    "{1}: removed with its {n} checks", {channel.name})});
  }
  edit.document.channels.clear();
  for (std::size_t k = 0; k < document.channels.size(); ++k)
    if (!gone.contains(k)) edit.document.channels.push_back(document.channels[k]);
  return edit;
}

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/overview.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <tuple>

#include "core/campaign/folded.h"
#include "core/plan/overdue.h"
#include "core/units/language.h"

namespace core {
namespace {

enum Urgency : int { Failing, Changed, Unclear, NotJudged, NotChecked, Harmless, Passing };

bool isRead(const Check& check) {
  return std::any_of(check.readings.begin(), check.readings.end(),
                     [](const auto& reading) { return reading.has_value(); });
}

/// The last check with a reading before check `end`.
std::optional<std::size_t> lastWithReading(const Channel& channel, std::size_t end) {
  while (end-- > 0)
    if (isRead(channel.checks[end])) return end;
  return std::nullopt;
}

/// |deviation| over limit; without end where a limit of nothing is exceeded, and none where nothing is
/// judged.
std::optional<double> shareOfLimit(const StepAssessment& step) {
  if (!step.deviation || !step.limit) return std::nullopt;
  const double deviation = std::abs(step.deviation->base()), limit = step.limit->base();
  if (limit > 0) return deviation / limit;
  if (deviation > 0) return std::numeric_limits<double>::infinity();
  return std::nullopt;
}

void takeWorst(const CheckAssessment& assessment, OverviewRow& row) {
  for (std::size_t k = 0; k < assessment.steps.size(); ++k) {
    const auto share = shareOfLimit(assessment.steps[k]);
    if (!share || (row.worst && !(*share > *row.worst))) continue;
    row.worst = share;
    row.worstStep = k;
  }
}

void takeChange(const Channel& channel, const ChannelEvaluation& evaluation, OverviewRow& row) {
  row.comparedTo = lastWithReading(channel, *row.check);
  if (!row.comparedTo) return;
  const Comparison comparison = compare(channel, evaluation, *row.comparedTo, *row.check);
  row.change = comparison.change;
  row.gainChange = comparison.gain;
}

bool isOverdue(const Setup& setup, Date day) {
  return (setup.identity.due && *setup.identity.due < day) || !overdueShunts(setup, day).empty();
}

Urgency urgencyOf(const OverviewRow& row, bool predicted) {
  if (!row.check) return predicted ? NotChecked : NotJudged;
  if (row.verdict == Verdict::Fail) return Failing;
  if (row.change == Change::Changed) return Changed;
  if (row.verdict == Verdict::CannotTell || row.change == Change::CannotTell) return Unclear;
  if (row.verdict == Verdict::NotJudged) return NotJudged;
  return row.change == Change::Harmless ? Harmless : Passing;
}

std::string statusOf(const Channel& channel, const OverviewRow& row, const std::string& status) {
  if (!row.comparedTo) return status;
  const std::string& before = channel.checks[*row.comparedTo].name;
  switch (row.change) {
    case Change::Unchanged:
      return say("{1}; unchanged since {2}", {status, before});
    case Change::Harmless:
      return say("{1}; changed within the margin since {2}", {status, before});
    case Change::Changed:
      return say("{1}; changed since {2}", {status, before});
    case Change::CannotTell:
      return say("{1}; cannot tell whether it changed since {2}", {status, before});
    case Change::NotCompared:
      break;
  }
  return status;
}

std::string_view templateName(const Channel& channel) { return templateOf(channel.setup.bridge.type).name; }

std::vector<std::string> wordsOf(const std::string& text) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : folded(text) + " ") {
    if (c != ' ' && c != '\t') {
      word += c;
    } else if (!word.empty()) {
      words.push_back(std::move(word));
      word.clear();
    }
  }
  return words;
}

bool holdsAll(const Channel& channel, const OverviewRow& row, const std::vector<std::string>& words) {
  if (words.empty()) return true;
  const std::string text = folded(channel.name + "\n" + channel.group + "\n" +
                                  std::string(templateName(channel)) + "\n" + row.status);
  return std::all_of(words.begin(), words.end(),
                     [&](const std::string& word) { return text.find(word) != std::string::npos; });
}

bool passes(const Channel& channel, const OverviewRow& row, const OverviewFilter& filter,
            const std::vector<std::string>& words) {
  if (filter.verdict && !(row.check && row.verdict == *filter.verdict)) return false;
  if (filter.change && row.change != *filter.change) return false;
  if (filter.group && channel.group != *filter.group) return false;
  if (filter.urgency && row.urgency != *filter.urgency) return false;
  if (filter.unchecked && row.check) return false;
  if (filter.remarks && row.openRemarks == 0) return false;
  if (filter.overdue && !row.overdue) return false;
  if (filter.open && !row.open) return false;
  return holdsAll(channel, row, words);
}

int rankOfVerdict(const OverviewRow& row) {
  if (!row.check) return 3;
  switch (row.verdict) {
    case Verdict::Fail:
      return 0;
    case Verdict::CannotTell:
      return 1;
    case Verdict::NotJudged:
      return 2;
    case Verdict::Pass:
      break;
  }
  return 4;
}

int rankOfChange(Change change) {
  switch (change) {
    case Change::Changed:
      return 0;
    case Change::CannotTell:
      return 1;
    case Change::Harmless:
      return 2;
    case Change::Unchanged:
      return 3;
    case Change::NotCompared:
      break;
  }
  return 4;
}

/// A number to put rows in order by, none where the row has no such value.
std::optional<double> numberOf(const OverviewRow& row, OverviewOrder order) {
  switch (order) {
    case OverviewOrder::Day:
      if (!row.day) return std::nullopt;
      return static_cast<double>(std::chrono::sys_days(*row.day).time_since_epoch().count());
    case OverviewOrder::Verdict:
      return rankOfVerdict(row);
    case OverviewOrder::Worst:
      return row.worst;
    case OverviewOrder::Gain:
      return gainOf(row);
    case OverviewOrder::Change:
      return rankOfChange(row.change);
    case OverviewOrder::GainChange:
      return row.gainChange ? std::optional(std::abs(row.gainChange->value)) : std::nullopt;
    case OverviewOrder::Remarks:
      return static_cast<double>(row.openRemarks);
    default:
      return static_cast<double>(row.channel);
  }
}

std::string textOf(const Channel& channel, const OverviewRow& row, OverviewOrder order) {
  switch (order) {
    case OverviewOrder::Group:
      return channel.group;
    case OverviewOrder::Template:
      return std::string(templateName(channel));
    case OverviewOrder::Latest:
      return row.latest;
    default:
      return channel.name;
  }
}

bool isText(OverviewOrder order) {
  return order == OverviewOrder::Name || order == OverviewOrder::Group || order == OverviewOrder::Template ||
         order == OverviewOrder::Latest;
}

/// Puts `positions` in order by a key for each row; a key that `isNone` goes to the end.
template <class Key, class Before, class IsNone>
void sortBy(const std::vector<Key>& keys, bool descending, std::vector<std::size_t>& positions,
            const Before& before, const IsNone& isNone) {
  std::stable_sort(positions.begin(), positions.end(), [&](std::size_t a, std::size_t b) {
    if (isNone(keys[a]) || isNone(keys[b])) return !isNone(keys[a]) && isNone(keys[b]);
    return descending ? before(keys[b], keys[a]) : before(keys[a], keys[b]);
  });
}

bool isFigure(char c) { return c >= '0' && c <= '9'; }

/// Takes the digits at the beginning of `text` off, without zeros before them.
std::string_view takenDigits(std::string_view& text) {
  const std::size_t end = std::min(text.find_first_not_of("0123456789"), text.size());
  std::string_view digits = text.substr(0, end);
  text.remove_prefix(end);
  while (digits.size() > 1 && digits.front() == '0') digits.remove_prefix(1);
  return digits;
}

/// `a` and `b` are folded.
bool foldedBefore(std::string_view a, std::string_view b) {
  while (!a.empty() && !b.empty()) {
    if (isFigure(a.front()) && isFigure(b.front())) {
      const std::string_view x = takenDigits(a), y = takenDigits(b);
      if (x != y) return std::tuple(x.size(), x) < std::tuple(y.size(), y);
      continue;
    }
    if (a.front() != b.front())
      return static_cast<unsigned char>(a.front()) < static_cast<unsigned char>(b.front());
    a.remove_prefix(1);
    b.remove_prefix(1);
  }
  return a.size() < b.size();
}

}  // namespace

std::string urgencyName(int urgency) {
  constexpr std::array<std::string_view, urgencyCount> names = {
      sayLater("fails"),      sayLater("changed"),     sayLater("cannot tell"),
      sayLater("not judged"), sayLater("not checked"), sayLater("changed within the margin"),
      sayLater("passes")};
  return say(names[static_cast<std::size_t>(urgency)]);
}

std::optional<double> gainOf(const OverviewRow& row) {
  return row.gain ? std::optional(row.gain->value) : std::nullopt;
}

std::optional<double> gainChangeOf(const OverviewRow& row) {
  return row.gainChange ? std::optional(row.gainChange->value) : std::nullopt;
}

OverviewRow overviewRow(const Document& document, std::size_t index, const ChannelEvaluation& evaluation,
                        Date today) {
  const Channel& channel = *document.channels[index];
  OverviewRow row;
  row.channel = index;
  row.check = lastWithReading(channel, channel.checks.size());
  row.overdue = isOverdue(channel.setup, today);
  for (const Check& check : channel.checks)
    row.openRemarks += static_cast<std::size_t>(std::count_if(
        check.remarks.begin(), check.remarks.end(), [](const Remark& remark) { return !remark.settled; }));
  if (row.check) {
    const Check& check = channel.checks[*row.check];
    const CheckAssessment& assessment = evaluation.checks[*row.check].assessment;
    row.latest = check.name;
    row.day = dateFromText(check.date);
    row.verdict = assessment.verdict;
    row.open = !check.closedWith;
    row.gain = assessment.gain;
    takeWorst(assessment, row);
    takeChange(channel, evaluation, row);
  }
  row.urgency = urgencyOf(row, bool(evaluation.prediction.zero));
  row.status = statusOf(channel, row, evaluation.status);
  return row;
}

OverviewTally tallyOf(const std::vector<OverviewRow>& rows) {
  OverviewTally tally;
  tally.channels = rows.size();
  for (const OverviewRow& row : rows) {
    tally.notChecked += !row.check;
    tally.pass += row.check && row.verdict == Verdict::Pass;
    tally.fail += row.check && row.verdict == Verdict::Fail;
    tally.cannotTell += row.check && row.verdict == Verdict::CannotTell;
    tally.notJudged += row.check && row.verdict == Verdict::NotJudged;
    tally.unchanged += row.change == Change::Unchanged;
    tally.changed += row.change == Change::Changed;
    tally.harmless += row.change == Change::Harmless;
    tally.changeCannotTell += row.change == Change::CannotTell;
    tally.remarks += row.openRemarks;
    tally.overdue += row.overdue;
    tally.open += row.open;
  }
  return tally;
}

std::vector<std::size_t> filteredRows(const Document& document, const std::vector<OverviewRow>& rows,
                                      const OverviewFilter& filter) {
  const std::vector<std::string> words = wordsOf(filter.text);
  std::vector<std::size_t> positions;
  for (std::size_t k = 0; k < rows.size(); ++k)
    if (passes(*document.channels[rows[k].channel], rows[k], filter, words)) positions.push_back(k);
  return positions;
}

void sortRows(const Document& document, const std::vector<OverviewRow>& rows, OverviewOrder order,
              bool descending, std::vector<std::size_t>& positions) {
  std::sort(positions.begin(), positions.end());
  if (order == OverviewOrder::WorstFirst) {
    const auto key = [&](std::size_t k) { return std::tuple(rows[k].urgency, -rows[k].worst.value_or(-1)); };
    std::stable_sort(positions.begin(), positions.end(), [&](std::size_t a, std::size_t b) {
      return descending ? key(b) < key(a) : key(a) < key(b);
    });
    return;
  }
  if (isText(order)) {
    std::vector<std::string> keys;
    for (const OverviewRow& row : rows)
      keys.push_back(folded(textOf(*document.channels[row.channel], row, order)));
    sortBy(keys, descending, positions, foldedBefore, [](const std::string& key) { return key.empty(); });
    return;
  }
  std::vector<std::optional<double>> keys;
  for (const OverviewRow& row : rows) keys.push_back(numberOf(row, order));
  sortBy(
      keys, descending, positions, [](const auto& a, const auto& b) { return *a < *b; },
      [](const auto& key) { return !key || std::isnan(*key); });
}

bool naturallyBefore(std::string_view a, std::string_view b) { return foldedBefore(folded(a), folded(b)); }

std::vector<ChannelGroup> groupsOf(const Document& document) {
  std::map<std::string, std::vector<std::size_t>> byName;
  for (std::size_t k = 0; k < document.channels.size(); ++k) byName[document.channels[k]->group].push_back(k);
  std::vector<ChannelGroup> groups;
  for (auto& [name, channels] : byName) groups.push_back({name, std::move(channels)});
  std::stable_sort(groups.begin(), groups.end(), [](const ChannelGroup& a, const ChannelGroup& b) {
    if (a.name.empty() || b.name.empty()) return !a.name.empty() && b.name.empty();
    return naturallyBefore(a.name, b.name);
  });
  return groups;
}

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/summary_section.h"

#include <algorithm>

#include "core/report/figures.h"
#include "core/report/record_words.h"

namespace core {
namespace {

std::vector<OverviewRow> rowsOf(const ReportBasis& basis) {
  std::vector<OverviewRow> rows;
  for (const auto& [index, row] : basis.overview) rows.push_back(row);
  return rows;
}

/// "3 channels: 1 passes, 1 fails, 1 is not checked"; only states that occur.
std::string tallyText(const OverviewTally& tally) {
  const auto counted = [](std::size_t count, std::string_view pattern) {
    return count == 0 ? std::string() : say(pattern, {std::to_string(count)});
  };
  const std::string parts[] = {counted(tally.fail, sayLater("failing: {1}")),
                               counted(tally.cannotTell, sayLater("cannot tell: {1}")),
                               counted(tally.notJudged, sayLater("not judged: {1}")),
                               counted(tally.notChecked, sayLater("not checked: {1}")),
                               counted(tally.pass, sayLater("passing: {1}")),
                               counted(tally.changed, sayLater("changed since the check before: {1}")),
                               counted(tally.remarks, sayLater("open remarks: {1}"))};
  std::string text = say("Channels: {1}", {std::to_string(tally.channels)});
  for (const std::string& part : parts)
    if (!part.empty()) text += "; " + part;
  return text + ".";
}

/// "124 % at step 3" of the permitted deviation.
std::string worstText(const OverviewRow& row) {
  if (!row.worst) return say("not known");
  const std::string share = shownNumber(100 * *row.worst, 0);
  if (!row.worstStep) return share;
  return say("{1} (step {2})", {share, std::to_string(*row.worstStep + 1)});
}

Table channelTable(const ReportBasis& basis, const std::vector<std::size_t>& channels) {
  const bool groups = std::any_of(channels.begin(), channels.end(),
                                  [&](std::size_t index) { return !basis.channel(index).group.empty(); });
  Table table{say("Channels"), {{say("Channel")}}, {}};
  if (groups) table.columns.push_back({say("Group")});
  for (TableColumn column :
       {TableColumn{say("Bridge")}, TableColumn{say("Steps"), true}, TableColumn{say("Checks"), true},
        TableColumn{say("Worst deviation, % of limit"), true}, TableColumn{say("Status")}})
    table.columns.push_back(std::move(column));
  for (const std::size_t index : channels) {
    const Channel& channel = basis.channel(index);
    const OverviewRow& row = basis.overview.at(index);
    TableRow line{{channel.name}, basis.evaluations[index].verdict};
    if (groups) line.cells.push_back(channel.group);
    for (std::string cell : {std::string(templateOf(channel.setup.bridge.type).name),
                             std::to_string(channel.setup.sequence.size()),
                             std::to_string(channel.checks.size()), worstText(row), row.status})
      line.cells.push_back(std::move(cell));
    table.rows.push_back(std::move(line));
  }
  return table;
}

Table checkListTable(const ReportBasis& basis, const std::vector<std::size_t>& channels) {
  Table table{say("Checks"),
              {{say("Channel")},
               {say("Check")},
               {say("Date")},
               {say("Run by")},
               {say("Decision rule")},
               {say("Verdict")}},
              {}};
  for (const std::size_t index : channels) {
    const Channel& channel = basis.channel(index);
    for (const std::size_t number : reportedChecks(channel, basis.order.content)) {
      const Check& check = channel.checks[number];
      const Verdict verdict = basis.evaluations[index].checks[number].assessment.verdict;
      table.rows.push_back(
          {{channel.name, check.name, shownDay(check.date), givenText(check.person),
            decisionText(setupOf(channel, check).decision), std::string(verdictWord(verdict))},
           verdict});
    }
  }
  return table;
}

}  // namespace

std::vector<std::size_t> worstFirst(const ReportBasis& basis) {
  const std::vector<OverviewRow> rows = rowsOf(basis);
  std::vector<std::size_t> positions(rows.size()), channels;
  for (std::size_t k = 0; k < rows.size(); ++k) positions[k] = k;
  sortRows(basis.document, rows, OverviewOrder::WorstFirst, false, positions);
  for (const std::size_t position : positions) channels.push_back(basis.channels[position]);
  return channels;
}

Section summarySection(const ReportBasis& basis) {
  Section section{say("Summary"), 1, {}};
  if (basis.document.channels.empty()) {
    section.blocks.push_back(Paragraph{say("The document has no channels."), Verdict::NotJudged});
    return section;
  }
  if (basis.channels.empty()) {
    section.blocks.push_back(Paragraph{say("No channel is in this report."), Verdict::NotJudged});
    return section;
  }
  const std::vector<std::size_t> channels = worstFirst(basis);
  section.blocks.push_back(Paragraph{tallyText(tallyOf(rowsOf(basis))), {}});
  section.blocks.push_back(channelTable(basis, channels));
  Table checks = checkListTable(basis, channels);
  if (checks.rows.empty()) {
    section.blocks.push_back(Paragraph{say("No channel has been checked."), Verdict::NotJudged});
    return section;
  }
  section.blocks.push_back(std::move(checks));
  if (basis.has(ReportPart::Diagnosis)) section.blocks.push_back(Paragraph{diagnosedChecksStatement(), {}});
  return section;
}

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/report_basis.h"

#include <algorithm>

#include "core/report/share_out.h"

namespace core {
namespace {

constexpr double evaluated = 0.1;  ///< share of the work until all channels are evaluated
constexpr double diagnosed = 0.7;  ///< until all checks are diagnosed

Progress partOf(const Progress& progress, double from, double to) {
  if (!progress) return {};
  return [&progress, from, to](double share) { progress(from + (to - from) * share); };
}

bool isRead(const Check& check) {
  return std::any_of(check.readings.begin(), check.readings.end(), [](const auto& one) { return bool(one); });
}

/// Whether a reader who looks for what is wrong wants to see the channel.
bool callsForAttention(const ReportBasis& basis, std::size_t index) {
  if (basis.evaluations[index].verdict != Verdict::Pass) return true;
  const auto found = basis.compared.find(index);
  if (found == basis.compared.end()) return false;
  const Verdict moved = found->second.comparison.verdict;
  return moved == Verdict::Fail || moved == Verdict::CannotTell;
}

/// Those that the template may want, before anything is known of them.
std::vector<std::size_t> candidates(const Document& document, const ReportOrder& order) {
  std::vector<std::size_t> channels;
  const auto isWanted = [&](std::size_t index) {
    return order.content.channels != ReportChannels::Chosen ||
           std::find(order.channels.begin(), order.channels.end(), index) != order.channels.end();
  };
  for (std::size_t index = 0; index < document.channels.size(); ++index)
    if (isWanted(index)) channels.push_back(index);
  return channels;
}

void evaluateAll(ReportBasis& basis, const Progress& progress, const std::stop_token& stop) {
  const auto& channels = basis.document.channels;
  basis.evaluations.resize(channels.size());
  shareOut(
      channels.size(), [&](std::size_t k) { basis.evaluations[k] = evaluate(*channels[k]); }, progress, stop);
}

/// The last two checks that have a reading; without such, the last two, which says why they are not compared.
ComparedChecks comparedOf(const Channel& channel, const ChannelEvaluation& evaluation,
                          const OverviewRow& row) {
  const bool bothRead = row.check && row.comparedTo;
  const std::size_t after = bothRead ? *row.check : channel.checks.size() - 1;
  const std::size_t before = bothRead ? *row.comparedTo : after - 1;
  return {before, after, compare(channel, evaluation, before, after), {}};
}

void compareChannels(ReportBasis& basis, const std::stop_token& stop) {
  std::vector<std::size_t> pairs;
  for (const std::size_t index : basis.channels)
    if (basis.channel(index).checks.size() >= 2) pairs.push_back(index);
  std::vector<ComparedChecks> compared(pairs.size());
  shareOut(
      pairs.size(),
      [&](std::size_t k) {
        const std::size_t index = pairs[k];
        compared[k] = comparedOf(basis.channel(index), basis.evaluations[index], basis.overview.at(index));
      },
      {}, stop);
  for (std::size_t k = 0; k < pairs.size(); ++k) basis.compared.emplace(pairs[k], std::move(compared[k]));
}

void findCauses(ReportBasis& basis, const Progress& progress, const std::stop_token& stop) {
  std::vector<std::pair<std::size_t, ComparedChecks*>> pairs;
  for (auto& [index, pair] : basis.compared) pairs.emplace_back(index, &pair);
  shareOut(
      pairs.size(),
      [&](std::size_t k) {
        auto& [index, pair] = pairs[k];
        pair->cause =
            changeCauseOf(basis.channel(index), basis.evaluations[index], pair->before, pair->after, stop);
      },
      progress, stop);
}

void overlook(ReportBasis& basis, const std::stop_token& stop) {
  // What is overdue is told with each resistor; without a day of printing nothing is.
  const Date day = basis.order.printed.value_or(std::chrono::year(1900) / 1 / 1);
  std::vector<OverviewRow> rows(basis.channels.size());
  shareOut(
      rows.size(),
      [&](std::size_t k) {
        const std::size_t index = basis.channels[k];
        rows[k] = overviewRow(basis.document, index, basis.evaluations[index], day);
      },
      {}, stop);
  for (std::size_t k = 0; k < rows.size(); ++k) basis.overview.emplace(basis.channels[k], std::move(rows[k]));
}

void keepThoseThatCall(ReportBasis& basis) {
  std::erase_if(basis.channels, [&](std::size_t index) { return !callsForAttention(basis, index); });
  const auto isGone = [&](const auto& entry) {
    return !std::binary_search(basis.channels.begin(), basis.channels.end(), entry.first);
  };
  std::erase_if(basis.overview, isGone);
  std::erase_if(basis.compared, isGone);
}

std::vector<CheckPlace> checksOf(const ReportBasis& basis) {
  std::vector<CheckPlace> places;
  for (const std::size_t index : basis.channels)
    for (const std::size_t check : reportedChecks(basis.channel(index), basis.order.content))
      places.emplace_back(index, check);
  return places;
}

}  // namespace

std::vector<std::size_t> reportedChecks(const Channel& channel, const ReportTemplate& content) {
  std::vector<std::size_t> checks;
  for (std::size_t k = 0; k < channel.checks.size(); ++k) checks.push_back(k);
  if (!content.latestCheckOnly || checks.empty()) return checks;
  for (std::size_t k = checks.size(); k-- > 0;)
    if (isRead(channel.checks[k])) return {k};
  return {checks.back()};
}

ReportBasis reportBasis(const Document& document, const ReportOrder& order, const Progress& progress,
                        const std::stop_token& stop) {
  ReportBasis basis{document, order, {}, candidates(document, order), {}, {}, {}};
  evaluateAll(basis, partOf(progress, 0, evaluated), stop);
  if (stop.stop_requested()) return basis;
  overlook(basis, stop);
  compareChannels(basis, stop);
  if (stop.stop_requested()) return basis;
  if (order.content.channels == ReportChannels::NotPassing) keepThoseThatCall(basis);
  if (basis.has(ReportPart::Diagnosis))
    basis.diagnoses = diagnosesOf(document, basis.evaluations, checksOf(basis),
                                  partOf(progress, evaluated, diagnosed), stop);
  if (basis.has(ReportPart::Comparison)) findCauses(basis, partOf(progress, diagnosed, 1), stop);
  return basis;
}

std::shared_ptr<const Language> languageOf(const ReportOrder& order) {
  const auto language = order.language ? order.language : english();
  if (order.content.localNumbers) return language;
  auto canonical = std::make_shared<Language>(*language);
  canonical->decimalMark = english()->decimalMark;
  canonical->dayPattern = english()->dayPattern;
  return canonical;
}

}  // namespace core

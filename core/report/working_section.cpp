// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/working_section.h"

#include <cmath>

#include "core/working/working.h"

namespace core {
namespace {

std::optional<std::size_t> largestStep(const SetupPrediction& prediction) {
  std::optional<std::size_t> largest;
  const auto size = [&](std::size_t step) { return std::abs(prediction.steps[step]->reading.base()); };
  for (std::size_t step = 0; step < prediction.steps.size(); ++step)
    if (prediction.steps[step] && (!largest || size(step) > size(*largest))) largest = step;
  return largest;
}

Table linesTable(const WorkingPart& part) {
  Table table{part.heading,
              {{say("What"), false, 22},
               {say("Formula"), false, 26},
               {say("With numbers"), false, 32},
               {say("Result"), false, 20}},
              {},
              false,
              true};
  for (const WorkingLine& line : part.lines) {
    table.rows.push_back({{line.what, line.formula, line.numbers, line.result}, {}});
    if (!line.source.empty())
      table.note += (table.note.empty() ? "" : " ") + say("{1}: {2}.", {line.what, line.source});
  }
  return table;
}

Table contrastTable(const WorkingPart& part) {
  Table table{say("Exact and approximate"),
              {{say("What")}, {say("Approximation")}, {say("Exact")}, {say("Approximate")}, {say("Off by")}},
              {},
              false,
              true};
  for (const WorkingContrast& contrast : part.contrasts) {
    table.rows.push_back(
        {{contrast.what, contrast.formula, contrast.exact, contrast.approximate, contrast.off}, {}});
    table.note += (table.note.empty() ? "" : " ") + contrast.why;
  }
  return table;
}

}  // namespace

std::optional<Section> workingSection(const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  const ChannelEvaluation& evaluation = basis.evaluations[index];
  const std::optional<std::size_t> check = basis.overview.at(index).check;
  const auto step = largestStep(check ? evaluation.checks[*check].prediction : evaluation.prediction);
  if (!step) return {};
  const auto parts = workingOf(channel, evaluation, check, *step);
  if (!parts) return {};
  Section section{say("{1}, working of step {2}", {channel.name, std::to_string(*step + 1)}), 2, {}};
  if (check) section.blocks.push_back(Paragraph{say("Of check {1}.", {channel.checks[*check].name}), {}});
  for (const WorkingPart& part : *parts) {
    if (!part.lines.empty()) section.blocks.push_back(linesTable(part));
    if (!part.contrasts.empty()) section.blocks.push_back(contrastTable(part));
  }
  return section;
}

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/working/working.h"

#include <cassert>

#include "core/units/language.h"
#include "core/working/parts.h"

namespace core {
namespace {

std::string indented(const std::string& text) { return text.empty() ? "" : "    " + text + "\n"; }

std::string textOf(const WorkingLine& line) {
  std::string text = "  " + line.what + "\n" + indented(line.formula);
  if (!line.numbers.empty()) text += indented("= " + line.numbers);
  text += indented((line.formula.empty() ? "" : "= ") + line.result);
  return text + indented(line.source.empty() ? "" : "(" + line.source + ")");
}

std::string textOf(const WorkingContrast& contrast) {
  std::string text = "  " +
                     say("{1}: exact {2}; {3} {4} ({5})",
                         {contrast.what, contrast.exact, contrast.by, contrast.approximate, contrast.off}) +
                     "\n";
  text += indented(contrast.formula) + indented("= " + contrast.numbers) + indented(contrast.why);
  return text + indented(contrast.source.empty() ? "" : "(" + contrast.source + ")");
}

}  // namespace

Result<std::vector<WorkingPart>> workingOf(const Channel& channel, const ChannelEvaluation& evaluation,
                                           std::optional<std::size_t> check, std::size_t step) {
  assert(!check || *check < channel.checks.size());
  const Setup& setup = check ? setupOf(channel, channel.checks[*check]) : channel.setup;
  const CheckEvaluation* checked = check ? &evaluation.checks[*check] : nullptr;
  const SetupPrediction& prediction = checked ? checked->prediction : evaluation.prediction;
  if (step >= setup.sequence.size())
    return Error{say("step {1}", {std::to_string(step + 1)}),
                 say("there is no such step, the sequence has {1}", {std::to_string(setup.sequence.size())}),
                 say("Choose a step of the sequence")};
  const Result<Prediction>& predicted = prediction.steps[step];
  if (!predicted) return predicted.error();
  if (!prediction.zero) return prediction.zero.error();
  const Budget& budget = checked ? checked->budget : evaluation.budget;
  const WorkingGround ground{setup, prediction, budget, step, *predicted, *prediction.zero};
  std::vector<WorkingPart> parts{stepPart(ground), simulatedPart(ground), readingPart(ground),
                                 uncertaintyPart(ground)};
  if (checked) {
    parts.push_back(verdictPart(ground, channel.checks[*check], checked->assessment));
    parts.push_back(linePart(ground, channel.checks[*check], checked->assessment));
  }
  return parts;
}

std::string workingText(const std::vector<WorkingPart>& parts) {
  std::string text;
  for (const WorkingPart& part : parts) {
    text += (text.empty() ? "" : "\n") + part.heading + "\n";
    for (const WorkingLine& line : part.lines) text += textOf(line);
    for (const WorkingContrast& contrast : part.contrasts) text += textOf(contrast);
  }
  return text;
}

}  // namespace core

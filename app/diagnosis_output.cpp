// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/diagnosis_output.h"

#include <algorithm>

#include "app/progress_line.h"
#include "core/report/diagnosis_section.h"
#include "core/units/notation.h"

namespace app {
namespace {

using core::CauseKind;

constexpr std::size_t shownCauses = 5;

Json shuntJson(const core::Setup& setup, std::size_t index) {
  return index < setup.shunts.size() ? Json(setup.shunts[index].name) : Json(nullptr);
}

/// Which one it is, as the user knows it.
Json placeJson(const core::Setup& setup, CauseKind kind, std::size_t index) {
  switch (kind) {
    case CauseKind::LeadContact:
      return core::leadName(static_cast<core::LeadRole>(index));
    case CauseKind::ShuntOpen:
    case CauseKind::ShuntValue:
    case CauseKind::ShuntsExchanged:
      return shuntJson(setup, index);
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
    case CauseKind::Leak:
    case CauseKind::StepsExchanged:
    case CauseKind::ZeroShift:
    case CauseKind::StrayReading:
      return index + 1;
    case CauseKind::Clipping:
      return index == 0 ? "both" : index == 1 ? "above" : "below";
    default:
      return nullptr;
  }
}

bool isPair(CauseKind kind) {
  return kind == CauseKind::ShuntsExchanged || kind == CauseKind::StepsExchanged;
}

/// The unit of a cause's size; null for a cause without one.
Json sizeUnitJson(const core::Setup& setup, CauseKind kind) {
  const std::string reading = core::readingUnitText(setup.instrument);
  switch (kind) {
    case CauseKind::Scale:
    case CauseKind::BridgeFactor:
    case CauseKind::Units:
    case CauseKind::ShuntValue:
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
      return "1";
    case CauseKind::Leads:
    case CauseKind::LeadContact:
      return "ohm";
    case CauseKind::Leak:
      return "S";
    case CauseKind::ZeroShift:
    case CauseKind::Clipping:
    case CauseKind::StrayReading:
      return reading;
    case CauseKind::Drift:
      return reading + "/s";
    default:
      return nullptr;
  }
}

Json explanationJson(const core::Setup& setup, const core::Explanation& explanation) {
  const core::Fault& fault = explanation.fault;
  const Json unit = sizeUnitJson(setup, fault.kind);
  return {{"cause", core::causeKindKey(fault.kind)},
          {"index", placeJson(setup, fault.kind, fault.index)},
          {"other", isPair(fault.kind) ? placeJson(setup, fault.kind, fault.other) : Json(nullptr)},
          {"size", unit.is_null() ? Json(nullptr) : jsonNumber(fault.size)},
          {"size_unit", unit},
          {"size_std_uncertainty", jsonNumber(explanation.standard)},
          {"chi2", jsonNumber(explanation.chiSquare)},
          {"parameters", explanation.parameters},
          {"explained", jsonNumber(explanation.explained)},
          {"fit_probability", jsonNumber(explanation.fitProbability)},
          {"aic", jsonNumber(explanation.information.akaike)},
          {"bic", jsonNumber(explanation.information.bayesian)},
          {"plausibility", jsonNumber(explanation.plausibility)},
          {"weight", jsonNumber(explanation.weight)},
          {"title", explanation.title},
          {"size_text", explanation.sizeText},
          {"settings", explanation.settings},
          {"confirm", explanation.confirm},
          {"on_strain", explanation.onStrain},
          {"correction", correctionJson(explanation.correction)}};
}

std::string causeText(const core::Setup& setup, const core::Explanation& explanation) {
  const std::string formula = core::correctionFormula(setup, explanation.correction);
  const std::string advice = core::correctionAdvice(explanation.correction);
  std::string text = "If the cause is: " + explanation.title + "\n";
  for (const auto& [name, words] : {std::pair<std::string, std::string>{"Setting", explanation.settings},
                                    {"To confirm", explanation.confirm},
                                    {"Strain data", explanation.onStrain},
                                    {"Correction", formula},
                                    {explanation.correction.legitimate ? "May be used" : "Caution", advice}})
    if (!words.empty()) text += "  " + name + ": " + words + "\n";
  return text;
}

}  // namespace

std::vector<core::Diagnosis> diagnosesWithProgress(std::span<const core::DiagnosisTask> tasks) {
  ProgressLine line("diagnosis");
  return core::diagnosesOf(tasks, [&](double share) { line.show(share); });
}

Json correctionJson(const core::Correction& correction) {
  return {{"factor", jsonNumber(correction.factor)},
          {"factor_std_uncertainty", jsonNumber(correction.factorStandard)},
          {"offset", jsonNumber(correction.offset)},
          {"offset_std_uncertainty", jsonNumber(correction.offsetStandard)},
          {"legitimate", correction.legitimate},
          {"reason", correction.reason}};
}

Json diagnosisJson(const core::Setup& setup, const core::Diagnosis& diagnosis) {
  Json json{{"result", core::diagnosisResultKey(diagnosis.result)},
            {"sentence", core::diagnosisSentence(diagnosis)},
            {"chi2", jsonNumber(diagnosis.chiSquare)},
            {"dof", diagnosis.degreesOfFreedom},
            {"probability", jsonNumber(diagnosis.probability)},
            {"tied", diagnosis.tied},
            {"telling_step", nullptr},
            {"explanations", Json::array()}};
  if (const auto& step = diagnosis.tellingStep)
    json["telling_step"] = {{"text", step->text}, {"separation", jsonNumber(step->separation)}};
  for (const core::Explanation& explanation : diagnosis.explanations)
    json["explanations"].push_back(explanationJson(setup, explanation));
  return json;
}

std::string likeliestCauseText(const core::Diagnosis& diagnosis, bool allPass) {
  using core::DiagnosisResult;
  const bool named = diagnosis.result == DiagnosisResult::Found || diagnosis.result == DiagnosisResult::Tied;
  if (!named || diagnosis.explanations.empty())
    return "Diagnosis: " + core::diagnosisSentence(diagnosis) + "\n";
  const core::Explanation& first = diagnosis.explanations.front();
  std::string text = "Most likely cause: " + first.title;
  if (!first.sizeText.empty()) text += ", " + first.sizeText;
  if (diagnosis.tied > 1)
    text += "; " + std::to_string(diagnosis.tied - 1) + " more cannot be told apart from it";
  return text + (allPass ? ". " + std::string(core::withinLimitsStatement()) : ".") + "\n";
}

std::string diagnosisText(const core::Setup& setup, const core::Diagnosis& diagnosis) {
  std::string text = core::diagnosisSentence(diagnosis) + "\n";
  if (diagnosis.explanations.empty()) return text;
  text += textOf(core::causeTable(diagnosis, shownCauses));
  if (diagnosis.tellingStep)
    text += "To tell them apart, one more step: " + diagnosis.tellingStep->text + ".\n";
  const std::size_t told = std::min(diagnosis.explanations.size(), std::max<std::size_t>(1, diagnosis.tied));
  for (std::size_t k = 0; k < told; ++k) text += causeText(setup, diagnosis.explanations[k]);
  return text;
}

}  // namespace app

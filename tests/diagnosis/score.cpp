// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/diagnosis/score.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cmath>
#include <cstdarg>
#include <cstdio>
#include <ctime>
#include <map>
#include <thread>

#include "core/plan/setup.h"

namespace diagnosis {
namespace {

using core::CauseKind;
using core::DiagnosisResult;

constexpr std::array<std::string_view, core::causeKindCount> names = {"scale",
                                                                      "bridge factor",
                                                                      "units",
                                                                      "leads",
                                                                      "lead contact",
                                                                      "shunt place",
                                                                      "shunt arm",
                                                                      "shunt value",
                                                                      "shunts exchanged",
                                                                      "shunt open",
                                                                      "completion value",
                                                                      "arm value",
                                                                      "leak",
                                                                      "no response",
                                                                      "polarity reversed",
                                                                      "steps exchanged",
                                                                      "sides exchanged",
                                                                      "open sense",
                                                                      "zero shift",
                                                                      "drift",
                                                                      "clipping",
                                                                      "stray reading"};

double processor_ms() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

bool sameResistor(const core::Setup& setup, std::size_t a, std::size_t b) {
  return a < setup.shunts.size() && b < setup.shunts.size() &&
         core::resistorName(setup.shunts[a]) == core::resistorName(setup.shunts[b]);
}

/// Whether `told` is at the place of `planted`; both of one kind.
bool samePlace(const DrawnChannel& channel, const core::Fault& planted, const core::Fault& told) {
  const core::Setup& setup = channel.setup;
  switch (planted.kind) {
    case CauseKind::ShuntValue:
      return sameResistor(setup, planted.index, told.index);
    case CauseKind::ShuntsExchanged:
      return (sameResistor(setup, planted.index, told.index) &&
              sameResistor(setup, planted.other, told.other)) ||
             (sameResistor(setup, planted.index, told.other) &&
              sameResistor(setup, planted.other, told.index));
    case CauseKind::StepsExchanged:
      return std::minmax(planted.index, planted.other) == std::minmax(told.index, told.other);
    case CauseKind::ShuntArm:
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
    case CauseKind::Leak:
    case CauseKind::ZeroShift:
    case CauseKind::StrayReading:
      return planted.index == told.index;
    case CauseKind::Clipping:  // with one side alone, both sides is the same
      return planted.index == told.index || (!channel.twoSided() && (planted.index == 0 || told.index == 0));
    default:
      return true;
  }
}

/// One line of text, built as printf does.
[[gnu::format(printf, 2, 3)]] void print(std::string& text, const char* format, ...) {
  std::array<char, 256> line{};
  va_list arguments;
  va_start(arguments, format);
  std::vsnprintf(line.data(), line.size(), format, arguments);
  va_end(arguments);
  text += line.data();
}

/// Counts of hits.
struct Share {
  std::size_t hits = 0, all = 0;
  void add(bool hit) { hits += hit, ++all; }
  double value() const { return all == 0 ? 0 : static_cast<double>(hits) / static_cast<double>(all); }
  std::string text() const {
    if (all == 0) return "     -";
    std::string result;
    print(result, "%6.1f", 100 * value());
    return result;
  }
};

struct Row {
  Share strict1, strict2, fair1, fair2, placed, missed, small, middle, large, within;

  void add(const Outcome& outcome) {
    strict1.add(outcome.first1()), strict2.add(outcome.first2());
    fair1.add(outcome.fair1()), fair2.add(outcome.fair2());
    missed.add(!outcome.first.has_value());
    (outcome.effect < 5 ? small : outcome.effect < 10 ? middle : large).add(outcome.fair1());
    if (outcome.rank > 0 && outcome.fair1()) placed.add(outcome.placed);
    if (outcome.within) within.add(*outcome.within);
  }

  void print(std::string& text, std::string_view name) const {
    diagnosis::print(text, "%-18s %5zu |%s%s |%s%s |%s |%s |%s (%4zu)%s (%4zu)%s (%4zu) |%s (%4zu)\n",
                     std::string(name).c_str(), strict1.all, strict1.text().c_str(), strict2.text().c_str(),
                     fair1.text().c_str(), fair2.text().c_str(), placed.text().c_str(), missed.text().c_str(),
                     small.text().c_str(), small.all, middle.text().c_str(), middle.all, large.text().c_str(),
                     large.all, within.text().c_str(), within.all);
  }
};

void printKinds(const std::vector<Outcome>& outcomes, std::string& text) {
  text +=
      "                          |    by list   |  ties counted|       |       |        first, ties counted, "
      "by "
      "effect        | size within 2 u\n"
      "planted            checks | first  two   | first  two   | place | missed|   3-5 sigma    5-10 sigma   "
      "> 10 sigma    |   (fitted)\n";
  std::array<Row, core::causeKindCount> rows;
  Row all;
  for (const Outcome& outcome : outcomes) {
    if (!outcome.planted) continue;
    rows[static_cast<std::size_t>(outcome.planted->kind)].add(outcome);
    all.add(outcome);
  }
  for (std::size_t kind = 0; kind < rows.size(); ++kind)
    if (rows[kind].strict1.all > 0) rows[kind].print(text, names[kind]);
  all.print(text, "all");
}

/// How often one kind came first in place of another.
struct Confusion {
  std::size_t count = 0, tied = 0, alike = 0, near = 0, far = 0, farTied = 0;

  void add(const Outcome& outcome) {
    ++count;
    if (!outcome.first) return;
    tied += outcome.tiedWithFirst;
    ++(outcome.apart < 1 ? alike : outcome.apart < 3 ? near : far);
    farTied += outcome.apart >= 3 && outcome.tiedWithFirst;
  }
};

void printConfusions(const std::vector<Outcome>& outcomes, std::string& text) {
  std::map<std::pair<CauseKind, std::string_view>, Confusion> counts;
  Confusion all;
  for (const Outcome& outcome : outcomes) {
    if (!outcome.planted || outcome.first1()) continue;
    counts[{outcome.planted->kind, outcome.first ? nameOf(*outcome.first) : "nothing"}].add(outcome);
    all.add(outcome);
  }
  std::vector<std::pair<std::size_t, std::string>> lines;
  const auto line = [](std::string_view planted, std::string_view told, const Confusion& c) {
    std::string result;
    print(result, "%-18s %-18s %5zu %5zu | %5zu %5zu %5zu | %5zu\n", std::string(planted).c_str(),
          std::string(told).c_str(), c.count, c.tied, c.alike, c.near, c.far, c.farTied);
    return result;
  };
  for (const auto& [pair, count] : counts)
    lines.emplace_back(count.count, line(nameOf(pair.first), pair.second, count));
  std::stable_sort(lines.begin(), lines.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  text +=
      "\nAnother kind first; how far its readings at its best size are from those of the planted fault\n"
      "planted            first              count  tied |   < 1   1-3   > 3 sigma | tied though > 3 sigma\n";
  for (const auto& each : lines) text += each.second;
  text += line("all", "", all);
}

void printResults(const std::vector<Outcome>& outcomes, std::string& text) {
  std::array<std::array<std::size_t, 5>, 2> counts{};
  std::map<std::string_view, std::size_t> wrong;
  double tied = 0;
  std::size_t groups = 0, unnamed = 0, listedAnyway = 0;
  for (const Outcome& outcome : outcomes) {
    ++counts[outcome.planted ? 1 : 0][static_cast<std::size_t>(outcome.result)];
    if (!outcome.planted && outcome.first) ++wrong[nameOf(*outcome.first)];
    unnamed += outcome.planted && outcome.result == DiagnosisResult::NothingFits && !outcome.first;
    listedAnyway += outcome.listedAnyway;
    if (outcome.result == DiagnosisResult::Tied) tied += static_cast<double>(outcome.tied), ++groups;
  }
  text += "\n            not possible  healthy  found   tied   nothing fits\n";
  for (const bool faulty : {false, true}) {
    const auto& row = counts[faulty];
    print(text, "%-12s %10zu %8zu %7zu %6zu %11zu\n", faulty ? "faulty" : "healthy", row[0], row[1], row[2],
          row[3], row[4]);
  }
  print(
      text,
      "faulty: nothing fits and nothing is listed %zu; called healthy, the planted cause listed first %zu\n",
      unnamed, listedAnyway);
  if (groups > 0) print(text, "causes in a tied group, mean: %.1f\n", tied / static_cast<double>(groups));
  for (const auto& [name, count] : wrong)
    print(text, "healthy checks with '%s' first: %zu\n", std::string(name).c_str(), count);
}

void printTimes(const std::vector<Outcome>& outcomes, std::string& text) {
  std::vector<double> times;
  double sum = 0;
  for (const Outcome& outcome : outcomes) times.push_back(outcome.milliseconds), sum += times.back();
  if (times.empty()) return;
  std::sort(times.begin(), times.end());
  print(text, "\nprocessor time of a diagnosis, ms: mean %.2f, 95 %% below %.2f, slowest %.2f\n",
        sum / static_cast<double>(times.size()), times[times.size() * 95 / 100], times.back());
}

}  // namespace

std::string_view nameOf(CauseKind kind) { return names[static_cast<std::size_t>(kind)]; }

Outcome outcomeOf(const SimulatedCheck& simulated) {
  const core::Setup& setup = simulated.channel.setup;
  const auto prediction = core::predict(setup);
  const auto budget = core::budgetOf(setup, prediction);
  const double before = processor_ms();
  const core::Diagnosis diagnosis = core::diagnose(setup, prediction, budget, simulated.check);
  Outcome outcome;
  outcome.milliseconds = processor_ms() - before;
  outcome.planted = simulated.planted, outcome.effect = simulated.effect, outcome.result = diagnosis.result;
  const bool declared =
      diagnosis.result != DiagnosisResult::Healthy && diagnosis.result != DiagnosisResult::NotPossible;
  if (!declared) {
    outcome.listedAnyway = simulated.planted && !diagnosis.explanations.empty() &&
                           diagnosis.explanations.front().fault.kind == simulated.planted->kind;
    return outcome;
  }
  outcome.tied = diagnosis.tied;
  const auto& told = diagnosis.explanations;
  if (!told.empty()) outcome.first = told.front().fault.kind;
  if (simulated.planted && outcome.first && outcome.first != simulated.planted->kind)
    outcome.apart = separation(simulated, told.front().fault);
  for (std::size_t k = 0; simulated.planted && k < told.size(); ++k) {
    if (told[k].fault.kind != simulated.planted->kind) continue;
    outcome.rank = k + 1;
    outcome.tiedWithFirst = k < diagnosis.tied;
    outcome.placed = samePlace(simulated.channel, *simulated.planted, told[k].fault);
    if (outcome.placed && told[k].standard)
      outcome.within = std::abs(told[k].fault.size - simulated.planted->size) <= 2 * *told[k].standard;
    break;
  }
  return outcome;
}

std::vector<Outcome> outcomesOf(std::uint64_t seed, std::size_t checks, std::size_t healthy,
                                unsigned threads) {
  std::vector<Outcome> outcomes(checks + healthy);
  std::atomic<std::size_t> next = 0;
  const auto work = [&] {
    for (std::size_t k = next++; k < outcomes.size(); k = next++)
      outcomes[k] =
          outcomeOf(k < checks ? faultyCheck(seed, k, static_cast<CauseKind>(k % core::causeKindCount))
                               : healthyCheck(seed, k));
  };
  std::vector<std::thread> others;
  for (unsigned k = 1; k < threads; ++k) others.emplace_back(work);
  work();
  for (std::thread& other : others) other.join();
  return outcomes;
}

Rates ratesOf(const std::vector<Outcome>& outcomes) {
  Row faulty;
  Share healthy;
  Rates rates;
  for (const Outcome& outcome : outcomes) {
    if (outcome.planted)
      faulty.add(outcome);
    else
      healthy.add(outcome.result != DiagnosisResult::Healthy);
  }
  rates.first = faulty.fair1.value(), rates.firstTwo = faulty.fair2.value();
  rates.strictFirst = faulty.strict1.value(), rates.strictTwo = faulty.strict2.value();
  rates.healthyCalledFaulty = healthy.value();
  return rates;
}

std::string tablesOf(const std::vector<Outcome>& outcomes) {
  std::string text;
  printKinds(outcomes, text);
  printResults(outcomes, text);
  printConfusions(outcomes, text);
  printTimes(outcomes, text);
  return text;
}

}  // namespace diagnosis

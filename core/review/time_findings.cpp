// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <numbers>

#include "core/plan/settling.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

constexpr double leastHold_s = 1;    ///< common practice, no source
constexpr double leastSamples = 20;  ///< from memory; as core::leastTimes
constexpr double mostHum = 1e-3;  ///< of a mains frequency that a mean may keep; common practice, no source
constexpr double rounding = 1 - 1e-9;  ///< times are decimal numbers in binary

/// Share of a hum's amplitude that may stay in a mean over `hold`: |sin(pi f T)| / (pi f T), the mean of a
/// cosine over T centred where it is greatest.
double humLeft(double hold_s, double mains_Hz) {
  const double periods = hold_s * mains_Hz;
  // sin(pi n) of a whole number n is not zero in floating point.
  const double part = periods - std::round(periods);
  return std::abs(std::sin(std::numbers::pi * part)) / (std::numbers::pi * periods);
}

double wholePeriods(double hold_s, const std::optional<Frequency>& mains) {
  if (!mains || humLeft(hold_s, mains->base()) <= mostHum) return hold_s;
  return std::ceil(hold_s * mains->base() * rounding) / mains->base();
}

/// What an acquisition asks of a step.
struct NeededTimes {
  Acquisition of;
  Result<Duration> settling;
  Result<StepTimes> least;
};

/// The channels of a document share one acquisition or a few, and finding out when a filter has settled takes
/// longer than all the rest of a review: what was found last is kept, for each thread.
const NeededTimes& neededBy(const Acquisition& acquisition) {
  thread_local std::optional<NeededTimes> last;
  if (!last || !(last->of == acquisition))
    last = NeededTimes{acquisition, settlingTime(acquisition.filter, acquisition.settledTo),
                       leastTimes(acquisition)};
  return *last;
}

/// `channel` with the times of `steps` no shorter than they must be; longer ones stay.
Channel withLeastTimes(Channel channel, const std::vector<std::size_t>& steps) {
  const Result<StepTimes> least = neededBy(channel.setup.acquisition).least;
  if (!least) return channel;
  for (const std::size_t k : steps) {
    Step& step = channel.setup.sequence[k];
    if (step.settle < least->settle) step.settle = least->settle;
    if (step.hold < least->hold)
      step.hold = least->hold;
    else
      step.hold = Duration(wholePeriods(step.hold.base(), channel.setup.acquisition.mains));
  }
  return channel;
}

/// Steps that are too short for one reason become one finding.
class ShortTimes {
 public:
  ShortTimes(const ReviewedPlan& plan, std::vector<Finding>& findings) : m_plan(plan), m_findings(findings) {}

  /// `isShort` and `what` take a step.
  template <class IsShort, class What>
  void find(FindingKind kind, Severity severity, const IsShort& isShort, const What& what,
            const std::string& why) {
    const auto& sequence = m_plan.setup().sequence;
    std::vector<std::size_t> steps;
    for (std::size_t k = 0; k < sequence.size(); ++k)
      if (isShort(sequence[k])) steps.push_back(k);
    if (steps.empty()) return;
    std::string said = what(sequence[steps.front()]);
    if (steps.size() > 1)
      said += " " + sayCount(steps.size(), "So it is in {n} step.", "So it is in {n} steps.");
    m_findings.push_back({kind, severity, steps.front(), {}, std::move(said), why, mends(steps)});
  }

 private:
  std::vector<Mend> mends(const std::vector<std::size_t>& steps) const {
    const auto lengthen = [](std::vector<std::size_t> which) {
      return [which = std::move(which)](const Channel& channel) { return withLeastTimes(channel, which); };
    };
    const std::string first = stepText(m_plan.setup(), steps.front());
    if (steps.size() == 1) return {{say("Take the least times for {1}", {first}), lengthen(steps)}};
    std::vector<std::size_t> all(m_plan.setup().sequence.size());
    for (std::size_t k = 0; k < all.size(); ++k) all[k] = k;
    return {{say("Take the least times for all steps"), lengthen(all)},
            {say("Only for {1}", {first}), lengthen({steps.front()})}};
  }

  const ReviewedPlan& m_plan;
  std::vector<Finding>& m_findings;
};

void findShortSettling(const ReviewedPlan& plan, ShortTimes& times, Duration settling) {
  const Acquisition& acquisition = plan.setup().acquisition;
  const double interval_s = acquisition.sampleRate ? 1 / acquisition.sampleRate->base() : 0;
  const double needed_s = settling.base() + interval_s;
  const bool filtered = acquisition.filter.kind != FilterKind::None;
  const std::string needed =
      filtered ? say("the filter needs {1} to come within {2} %",
                     {secondsText(settling.base()), shown(formatNumber(100 * acquisition.settledTo, 2))})
               : say("a reading is as old as {1}", {secondsText(interval_s)});
  times.find(
      FindingKind::SettleTooShort, Severity::Warning,
      [&](const Step& step) { return step.settle.base() < needed_s * rounding; },
      [&](const Step& step) {
        return say(filtered && interval_s > 0 ? sayLater("It settles {1}, {2}, and one sample more.")
                                              : sayLater("It settles {1}, {2}."),
                   {secondsText(step.settle.base()), needed});
      },
      say("What is still on its way is averaged into the reading."));
}

}  // namespace

void findShortTimes(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Acquisition& acquisition = plan.setup().acquisition;
  if (plan.setup().sequence.empty()) return;
  ShortTimes times(plan, findings);
  const auto& [of, settling, least] = neededBy(acquisition);
  if (!settling || !least) {
    findings.push_back({FindingKind::SettleTooShort,
                        Severity::Warning,
                        {},
                        {},
                        say("It cannot be told how long a step must last: {1}", {least.error().text()}),
                        say("Nobody knows whether the levels are settled."),
                        {}});
    return;
  }
  findShortSettling(plan, times, *settling);
  times.find(
      FindingKind::HoldTooShort, Severity::Warning,
      [](const Step& step) { return step.hold.base() < leastHold_s * rounding; },
      [](const Step& step) {
        return say("It is held for {1}, less than one second.", {secondsText(step.hold.base())});
      },
      say("A shorter mean hides drift and slow noise; at least a second a level is common practice."));
  if (const auto& rate = acquisition.sampleRate)
    times.find(
        FindingKind::HoldTooShort, Severity::Warning,
        [&](const Step& step) { return step.hold.base() * rate->base() < leastSamples * rounding; },
        [&](const Step& step) {
          return say("Its hold of {1} has {2} samples, fewer than 20.",
                     {secondsText(step.hold.base()),
                      shown(formatNumber(std::floor(step.hold.base() * rate->base() / rounding), 4))});
        },
        say("The scatter of so few says little of how good their mean is."));
  if (const auto& mains = acquisition.mains)
    times.find(
        FindingKind::HoldTooShort, Severity::Note,
        [&](const Step& step) { return humLeft(step.hold.base(), mains->base()) > mostHum; },
        [&](const Step& step) {
          return say(
              "Its hold of {1} is {2} periods of the {3} Hz mains: up to {4} of a hum stays in the mean.",
              {secondsText(step.hold.base()), shown(formatNumber(step.hold.base() * mains->base(), 5)),
               shown(formatNumber(mains->base(), 4)), percentText(humLeft(step.hold.base(), mains->base()))});
        },
        say("A mean over whole periods takes hum out, one over broken periods does not."));
}

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"
#include "core/whatif/what_if.h"

// What a what-if does to the article's own strain, beside what it does to the readings of the shunts.

namespace core {
namespace {

/// Sizes this close are one. Common practice, no source.
constexpr double sameSize = 0.01;

std::string_view signText(Polarity polarity) { return polarity == Polarity::Negative ? "−" : "+"; }

/// What the readings of the steps do, as far as they can be held against the article.
struct Readings {
  std::optional<std::size_t> step;  ///< where what is simulated changes most
  bool kept = false, turned = false;
  double growth = 0;     ///< greatest of the sizes of the readings: 0.02 of one that is 2 % smaller
  double simulated = 0;  ///< the same of what `step` simulates
};

Readings readingsOf(const WhatIf& whatIf) {
  Readings readings;
  double most = -1;
  for (std::size_t k = 0; k < whatIf.steps.size(); ++k) {
    const auto &without = whatIf.steps[k].without, &with = whatIf.steps[k].zeroedAfter;
    if (!without || !with) continue;
    const int signs = static_cast<int>(without->polarity) * static_cast<int>(with->polarity);
    readings.kept = readings.kept || signs > 0;
    readings.turned = readings.turned || signs < 0;
    if (signs == 0) continue;
    readings.growth =
        std::max(readings.growth, std::abs(std::abs(with->reading.base() / without->reading.base()) - 1));
    if (!without->simulated || !with->simulated) continue;
    const double change = std::abs(*with->simulated - *without->simulated);
    if (!(change > most)) continue;
    most = change;
    readings.step = k;
    readings.simulated = std::abs(std::abs(*with->simulated / *without->simulated) - 1);
  }
  return readings;
}

/// "simulated -500.1 instead of 500.2 µm/m at step 2 “+1”".
std::string simulatedText(const WhatIf& whatIf, std::size_t step) {
  const auto text = [&](const Result<StepReading>& reading) {
    return core::shown(formatNumber(simulatedInUnit(whatIf.setup.bridge, *reading->simulated), 5));
  };
  const std::string& label = whatIf.before.sequence[step].label;
  return say("simulated {1} instead of {2} {3} at step {4}{5}",
             {text(whatIf.steps[step].zeroedAfter), text(whatIf.steps[step].without),
              simulatedUnitText(whatIf.setup.bridge), std::to_string(step + 1),
              (label.empty() ? "" : " " + inQuotes(label))});
}

/// "2.74 % smaller", "10.2 times as large"; empty for no matter of size.
std::string sizeText(double gain) {
  const double share = std::abs(gain) - 1;
  if (std::abs(share) <= sameSize) return "";
  if (share > 9) return say("{1} times as large", {core::shown(formatNumber(std::abs(gain), 3))});
  return say(share < 0 ? sayLater("{1} % smaller") : sayLater("{1} % larger"),
             {core::shown(formatNumber(100 * std::abs(share), 3))});
}

}  // namespace

std::string articleSentence(const WhatIf& whatIf, bool hidden) {
  if (!whatIf.articleGain) return "";
  const double gain = *whatIf.articleGain;
  const Readings readings = readingsOf(whatIf);
  if (!readings.step) return "";
  const std::string subject =
      isTransducer(whatIf.before.bridge) ? say("The load") : say("The article's strain");
  const std::string size = sizeText(gain), shown = simulatedText(whatIf, *readings.step);
  if (gain < 0 && readings.kept) {
    const std::string reads =
        size.empty() ? say("{1} then reads with the other sign ({2})", {subject, shown})
                     : say("{1} then reads with the other sign, {2} ({3})", {subject, size, shown});
    return say(readings.turned ? sayLater("{1}, which not all steps of a shunt check show.")
                               : sayLater("{1}, which a shunt check does not see."),
               {reads});
  }
  if (gain > 0 && readings.turned && !readings.kept)
    return say("{1}: only the shunts read the other way round.",
               {size.empty() ? say("{1} then keeps its sign ({2})", {subject, shown})
                             : say("{1} then keeps its sign, {2} ({3})", {subject, size, shown})});
  if (size.empty() || !(readings.simulated > sameSize)) return "";
  const bool unseen = readings.growth <= 0.1 * std::abs(std::abs(gain) - 1);
  if (unseen)
    return say("{1} then reads {2} ({3}), which a shunt check does not see.", {subject, size, shown});
  return hidden ? "" : say("{1} reads {2} ({3}).", {subject, size, shown});
}

std::string polarityChangeText(const WhatIfStep& step, Zeroed zeroed) {
  const auto& with = step.with(zeroed);
  if (!with) return step.without ? say("cannot be read") : say("unknown");
  if (!step.without) return say("unknown");
  const Polarity before = step.without->polarity, after = with->polarity;
  const ArticleSign sign = articleSign(step);
  if (before == after && before == Polarity::None) return say("none");
  const std::string change = before == after            ? say("as before")
                             : after == Polarity::None  ? say("none instead of {1}", {signText(before)})
                             : before == Polarity::None ? say("now {1}", {signText(after)})
                                                        : say("reversed, now {1}", {signText(after)});
  if (sign == ArticleSign::Alone) return say("{1}, reads the article reversed", {change});
  return sign == ArticleSign::Kept ? say("{1}, reads the article as before", {change}) : change;
}

}  // namespace core

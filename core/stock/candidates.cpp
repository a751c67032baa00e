// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <tuple>

#include "core/stock/stock.h"
#include "core/stock/stock_text.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Whole micro-ohms, so that 3 times 0.1 ohm on one dial is 0.3 ohm on another. Less than any switch
/// repeats to.
using Micro = std::int64_t;
Micro microOf(Resistance value) { return std::llround(value.base() * 1e6); }
Resistance resistanceOf(Micro value) { return Resistance(static_cast<double>(value) / 1e6); }

std::string ohms(Resistance value) { return shown(formatQuantity(value.base(), UnitFamily::Resistance)); }

bool isWithin(Resistance value, const CandidateRange& range) {
  return range.from <= value && value <= range.to;
}

Error tooMany(const std::string& where, const CandidateRange& range) {
  return {where,
          say("there are more than {1} values from {2} to {3}",
              {std::to_string(mostCandidates), ohms(range.from), ohms(range.to)}),
          say("Narrow the range of resistances, or leave out fine dials and series")};
}

/// What the dials of `box` add up to, rising, each sum once; without the residual. Dial by dial from the
/// greatest step down, leaving out what the smaller dials cannot bring into the range, so that nothing much
/// larger than the answer is ever built.
Result<std::vector<Micro>> settingsOf(const DecadeBox& box, const CandidateRange& range) {
  const Micro residual = microOf(box.residual);
  const double from = range.from.base() * 1e6 - static_cast<double>(residual);
  const double to = range.to.base() * 1e6 - static_cast<double>(residual);
  Micro rest = 0;  // of all dials that are not yet set
  for (const Decade& decade : box.decades) rest += microOf(decade.step) * decade.positions;
  std::vector<Micro> sums{0};
  for (const Decade& decade : box.decades) {
    const Micro step = microOf(decade.step);
    rest -= step * decade.positions;
    std::vector<Micro> next;
    for (const Micro sum : sums)
      for (unsigned position = 0; position <= decade.positions; ++position) {
        const Micro added = sum + step * position;
        if (static_cast<double>(added) <= to && static_cast<double>(added + rest) >= from)
          next.push_back(added);
      }
    std::sort(next.begin(), next.end());
    next.erase(std::unique(next.begin(), next.end()), next.end());
    if (next.size() > mostCandidates) return tooMany(box.id, range);
    sums = std::move(next);
  }
  std::erase_if(sums, [&](Micro sum) { return !isWithin(resistanceOf(sum + residual), range); });
  return sums;
}

Candidate candidateOf(const Resistor& resistor) {
  std::string name = resistor.id;
  if (!resistor.fittedIn.empty()) name = say("{1} in {2}", {resistor.id, resistor.fittedIn});
  return {.value = valueOf(resistor),
          .tolerance = toleranceOf(resistor),
          .part = resistor.id,
          .name = std::move(name),
          .due = resistor.due,
          .rating = resistor.rating,
          .once = true};
}

Candidate candidateOf(const DecadeBox& box, Micro setting) {
  return {.value = resistanceOf(setting + microOf(box.residual)),
          .tolerance = box.tolerance,
          .part = box.id,
          .name = say("box {1} at {2}", {box.id, ohms(resistanceOf(setting))}),
          .due = box.due,
          .rating = box.rating,
          .once = true};
}

Candidate candidateOf(const SeriesRange& range, Resistance value) {
  return {
      .value = value,
      .tolerance = range.tolerance,
      .name = say("{1} of {2}", {letterCode(value, eSeriesDigits(range.series)), eSeriesName(range.series)}),
      .once = false};
}

std::vector<Resistance> valuesOf(const SeriesRange& series, const CandidateRange& range) {
  return eSeriesValues(series.series, std::max(series.from, range.from), std::min(series.to, range.to));
}

/// The settings of each box that may be used, counted with all else before any candidate is made.
Result<std::vector<std::vector<Micro>>> countedSettings(const Stock& stock, const CandidateRange& range,
                                                        const auto& isUsed) {
  std::size_t count = stock.resistors.size();
  for (const SeriesRange& series : stock.series) count += valuesOf(series, range).size();
  std::vector<std::vector<Micro>> settings;
  for (const DecadeBox& box : stock.boxes) {
    auto& own = settings.emplace_back();
    if (!isUsed(box.due)) continue;
    auto found = settingsOf(box, range);
    if (!found) return found.error();
    own = *std::move(found);
    count += own.size();
    if (count > mostCandidates) return tooMany("stock", range);
  }
  if (count > mostCandidates) return tooMany("stock", range);
  return settings;
}

void sortByValue(std::vector<Candidate>& candidates) {
  const auto key = [](const Candidate& c) { return std::tie(c.value, c.tolerance, c.once, c.name); };
  std::sort(candidates.begin(), candidates.end(),
            [&](const Candidate& a, const Candidate& b) { return key(a) < key(b); });
  // Ranges of one series that overlap name the same new resistor twice.
  const auto same = [](const Candidate& a, const Candidate& b) { return !a.once && a == b; };
  candidates.erase(std::unique(candidates.begin(), candidates.end(), same), candidates.end());
}

}  // namespace

Result<std::vector<Candidate>> candidatesOf(const Stock& stock, const CandidateRange& range, Date today,
                                            bool withOverdue) {
  if (auto checked = checkStock(stock); !checked) return checked.error();
  const auto isUsed = [&](const std::optional<Date>& due) { return withOverdue || !isOverdue(due, today); };
  const auto settings = countedSettings(stock, range, isUsed);
  if (!settings) return settings.error();

  std::vector<Candidate> candidates;
  for (const Resistor& resistor : stock.resistors)
    if (isUsed(resistor.due) && isWithin(valueOf(resistor), range))
      candidates.push_back(candidateOf(resistor));
  for (std::size_t box = 0; box < stock.boxes.size(); ++box)
    for (const Micro setting : (*settings)[box]) candidates.push_back(candidateOf(stock.boxes[box], setting));
  for (const SeriesRange& series : stock.series)
    for (const Resistance value : valuesOf(series, range)) candidates.push_back(candidateOf(series, value));
  sortByValue(candidates);
  return candidates;
}

}  // namespace core

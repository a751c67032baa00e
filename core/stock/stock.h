// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/stock/e_series.h"
#include "core/stock/resistor.h"
#include "core/units/result.h"

namespace core {

/// New resistors that could be had in every value of a series, as many as are needed.
struct SeriesRange {
  ESeries series = ESeries::E96;
  Resistance from{10000};
  Resistance to{1000000};
  double tolerance = 1e-3;

  friend bool operator==(const SeriesRange&, const SeriesRange&) = default;
};

/// What there is to make shunts of.
struct Stock {
  std::vector<Resistor> resistors = {};
  std::vector<DecadeBox> boxes = {};
  std::vector<SeriesRange> series = {};

  friend bool operator==(const Stock&, const Stock&) = default;
};

/// The empty stock; always the same one.
std::shared_ptr<const Stock> noStock();

/// Least and greatest resistance that is taken for a shunt; beyond, somebody has mistaken the unit.
inline constexpr Resistance leastShunt{0.1};
inline constexpr Resistance greatestShunt{1e10};

/// Fails when the resistor, box or range cannot be: its value, tolerance, certificate (value more than a
/// tenth and the tolerance from the nominal one, no U), dials, texts with line breaks. `where` of the error
/// is its id, or the series.
Result<void> checkResistor(const Resistor& resistor);
Result<void> checkBox(const DecadeBox& box);
Result<void> checkSeriesRange(const SeriesRange& range);
/// All of them, and that ids are given and unique.
Result<void> checkStock(const Stock& stock);

/// The resistor or box `id`; null when there is none.
const Resistor* findResistor(const Stock& stock, std::string_view id);
const DecadeBox* findBox(const Stock& stock, std::string_view id);

/// A value that a shunt can have.
struct Candidate {
  Resistance value{0};
  double tolerance = 0;   ///< half width, share of the value
  std::string part = {};  ///< id in the stock; empty: a new one of a series
  std::string name = {};  ///< for people: "S-104", "S-104 in Amplifier 2", "59k0 of E96", "box B at 59 kΩ"
  std::optional<Date> due = {};
  std::optional<Power> rating = {};
  bool once = true;  ///< there is only one of it: it can be at one position only

  friend bool operator==(const Candidate&, const Candidate&) = default;
};

struct CandidateRange {
  Resistance from = leastShunt;
  Resistance to = greatestShunt;
};
inline constexpr std::size_t mostCandidates = 200'000;

/// Every value of the stock within `range`, rising; of two that are equal the one with the smaller tolerance
/// first. All settings of a box count, one that can be set in two ways once; it is one part, so that only one
/// of them can be used. Its residual is in the value, and its tolerance is of the value. Overdue parts are
/// left out unless `withOverdue`. Fails as `checkStock` does, and when there would be more than
/// `mostCandidates`; then nothing much larger has been built.
Result<std::vector<Candidate>> candidatesOf(const Stock& stock, const CandidateRange& range, Date today,
                                            bool withOverdue);

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/uff_file.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/recording/binary/uff_numbers.h"
#include "core/recording/binary/uff_sets.h"
#include "core/recording/column_heading.h"
#include "core/recording/time_units.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

/// The functions that are read together.
struct UffFunctions {
  std::vector<Uff58Set> sets;
  std::vector<std::string> names;
  std::vector<std::string> leftOut;
};

/// The first id line, with the node where several functions share that line.
std::vector<std::string> namesOf(const std::vector<Uff58Set>& sets) {
  std::map<std::string, int> times;
  for (const Uff58Set& set : sets) ++times[set.heading.title];
  std::vector<std::string> names;
  for (const Uff58Set& set : sets) {
    const Uff58Heading& heading = set.heading;
    if (heading.title.empty()) {
      names.push_back("Node " + heading.place);
    } else {
      names.push_back(times[heading.title] == 1 ? heading.title : heading.title + " " + heading.place);
    }
  }
  return names;
}

TimeForm timeFormOf(const Uff58Heading& heading) {
  return unitOfTime(heading.abscissaUnit).value_or(TimeForm::Seconds);
}

/// Why a function cannot be a column; empty when it can.
std::string unfitness(const Uff58Heading& heading) {
  constexpr int time = 17;
  if (heading.abscissaType != time && heading.abscissaType != 0) return say("is not over time");
  if (heading.ordinateType == 5 || heading.ordinateType == 6) return say("holds complex numbers");
  if (!heading.isReal()) return say("holds numbers of an unknown type");
  if (heading.form == Uff58Form::Unreadable)
    return say("holds numbers in a binary form that is not IEEE 754");
  if (heading.count == 0) return say("holds no samples");
  if (heading.even &&
      !(heading.increment > 0 && std::isfinite(heading.increment) && std::isfinite(heading.start)))
    return say("has a spacing of its samples that is not above zero");
  return {};
}

/// Like `with`, sampled at the same times as far as the headings tell.
std::string otherTimes(const Uff58Heading& heading, const Uff58Heading& with) {
  if (heading.count != with.count)
    return say("has {1} of {2} samples", {std::to_string(heading.count), std::to_string(with.count)});
  const bool same = heading.even == with.even && heading.abscissaUnit == with.abscissaUnit &&
                    (!heading.even || (heading.increment == with.increment && heading.start == with.start));
  return same ? std::string{} : say("is sampled at other times");
}

UffFunctions fitFunctions(const UffSets& all) {
  UffFunctions fit;
  const std::vector<std::string> names = namesOf(all.functions);
  const Uff58Set* longest = nullptr;
  for (const Uff58Set& set : all.functions)
    if (unfitness(set.heading).empty() && (!longest || set.heading.count > longest->heading.count))
      longest = &set;
  for (std::size_t k = 0; k < names.size(); ++k) {
    const Uff58Set& set = all.functions[k];
    std::string reason = unfitness(set.heading);
    if (reason.empty() && longest) reason = otherTimes(set.heading, longest->heading);
    if (reason.empty() && set.begin >= set.end) reason = say("has no numbers: the file ends before them");
    if (reason.empty()) {
      fit.sets.push_back(set);
      fit.names.push_back(names[k]);
    } else {
      fit.leftOut.push_back(inQuotes(names[k]) + " " + reason);
    }
  }
  return fit;
}

/// With times written out, functions must agree with the first in every one of them. One that is cut short is
/// kept when it agrees as far as it goes.
Result<UffFunctions> agreeingFunctions(const RegularFile& file, UffFunctions functions,
                                       const std::stop_token& stop) {
  if (functions.sets.size() < 2 || functions.sets.front().heading.even) return functions;
  UffFunctions agreeing;
  agreeing.leftOut = std::move(functions.leftOut);
  Samples first;
  for (std::size_t k = 0; k < functions.sets.size(); ++k) {
    auto numbers = uff58Numbers(file, functions.sets[k], functions.sets[k].heading.count, stop, {});
    if (!numbers) return numbers.error();
    Samples& times = numbers->abscissa;
    if (k == 0) first = times;
    const std::size_t common = std::min(first.size(), times.size());
    if (std::equal(times.begin(), times.begin() + static_cast<std::ptrdiff_t>(common), first.begin())) {
      agreeing.sets.push_back(functions.sets[k]);
      agreeing.names.push_back(functions.names[k]);
    } else {
      agreeing.leftOut.push_back(say("{1} is sampled at other times", {inQuotes(functions.names[k])}));
    }
  }
  return agreeing;
}

Result<ColumnValues> readFunctions(const RegularFile& file, const std::vector<Uff58Set>& sets,
                                   std::uint64_t records, const std::stop_token& stop,
                                   const Progress& progress) {
  ColumnValues values;
  for (std::size_t k = 0; k < sets.size(); ++k) {
    const Progress share = [&](double part) {
      if (progress) progress((static_cast<double>(k) + part) / static_cast<double>(sets.size()));
    };
    auto numbers = uff58Numbers(file, sets[k], records, stop, share);
    if (!numbers) return numbers.error();
    share(1);
    if (k == 0 && !sets[k].heading.even) values.push_back(std::move(numbers->abscissa));
    values.push_back(std::move(numbers->ordinate));
  }
  return values;
}

void addColumns(const UffFunctions& functions, BinaryTable& table) {
  const Uff58Heading& first = functions.sets.front().heading;
  if (first.even) {
    table.start_s = inSeconds(first.start, timeFormOf(first));
    table.spacing_s = inSeconds(first.increment, timeFormOf(first));
    table.rateSource = say("sample spacing in the file");
  } else {
    table.columns.push_back({"Time", first.abscissaUnit});
    table.timeColumn = 0;
  }
  for (std::size_t k = 0; k < functions.sets.size(); ++k)
    table.columns.push_back({functions.names[k], functions.sets[k].heading.ordinateUnit});
  nameColumns(table.columns);
}

}  // namespace

Result<BinaryTable> openUff(const SharedFile& file, const std::stop_token& stop) {
  auto all = uffSets(*file, stop);
  if (!all) return all.error();
  auto functions = agreeingFunctions(*file, fitFunctions(*all), stop);
  if (!functions) return functions.error();
  BinaryTable table;
  table.kind = FileKind::Uff58;
  table.doubts = std::move(all->broken);
  table.leftOut = std::move(functions->leftOut);
  if (all->others > 0)
    table.leftOut.push_back(sayCount(all->others, "{n} data set of another kind than 58",
                                     "{n} data sets of another kind than 58"));
  if (functions->sets.empty()) {
    return file->error(table.leftOut.empty() ? say("the universal file holds no function over time")
                                             : say("the universal file holds no function over time: {1}",
                                                   {table.leftOut.front()}),
                       say("Export time histories as data set 58"));
  }
  table.records = functions->sets.front().heading.count;
  addColumns(*functions, table);
  table.read = [file, sets = functions->sets](std::uint64_t records, const std::stop_token& halt,
                                              const Progress& progress) {
    return readFunctions(*file, sets, records, halt, progress);
  };
  return table;
}

}  // namespace core

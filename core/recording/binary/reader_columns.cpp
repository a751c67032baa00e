// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/reader_columns.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/recording/characters.h"
#include "core/recording/clean_text.h"
#include "core/recording/column_heading.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

/// A variable seen as a matrix; a vector has one outer extent.
struct Matrix {
  std::uint64_t outer = 1;
  std::uint64_t inner = 1;

  bool isVector() const { return outer == 1; }
  std::uint64_t longest() const { return std::max(outer, inner); }
};

/// Extents of 1 do not count. None for more than two others, and for more numbers than can be counted.
std::optional<Matrix> matrixOf(const ReaderVariable& variable) {
  std::vector<std::uint64_t> sizes;
  for (const std::uint64_t size : variable.sizes)
    if (size != 1) sizes.push_back(size);
  if (sizes.size() > 2) return std::nullopt;
  Matrix matrix;
  if (!sizes.empty()) matrix.inner = sizes.back();
  if (sizes.size() == 2) matrix.outer = sizes.front();
  if (matrix.inner > 0 && matrix.outer > std::numeric_limits<std::uint64_t>::max() / matrix.inner)
    return std::nullopt;
  return matrix;
}

/// Why a variable is no column, whatever the others are; empty when it may be one.
std::string unfitness(const ReaderVariable& variable, std::uint64_t fileBytes) {
  // The densest packing of the usual compression is 1032 to 1, of numbers of one byte.
  constexpr std::uint64_t densest = 1100;
  if (!variable.unfit.empty()) {
    // Of what cannot be shown nothing is left, and it is no column all the same.
    const std::string told = cleanName(variable.unfit);
    return told.empty() ? say("is no column of numbers") : told;
  }
  const auto matrix = matrixOf(variable);
  if (!matrix) return "has " + std::to_string(variable.sizes.size()) + " dimensions";
  if (matrix->outer == 0 || matrix->inner == 0) return say("is empty");
  if (variable.value || matrix->longest() == 1) return say("is a single number");
  const std::uint64_t numbers = matrix->outer * matrix->inner;
  if (numbers / densest > fileBytes || numbers > greatestBinaryCells)
    return say("announces {1} numbers, more than can be read", {std::to_string(numbers)});
  if (std::min(matrix->outer, matrix->inner) > greatestBinaryColumns)
    return say("has more than 4096 columns");
  return {};
}

/// The samples of the recording: those of the time, else of the longest variable.
std::uint64_t samplesOf(const ReaderListing& listing, const std::vector<std::string>& unfit) {
  std::uint64_t longest = 0;
  for (std::size_t k = 0; k < listing.variables.size(); ++k) {
    if (!unfit[k].empty()) continue;
    const Matrix matrix = *matrixOf(listing.variables[k]);
    if (matrix.isVector() && isNameOfTime(listing.variables[k].name)) return matrix.inner;
    longest = std::max(longest, matrix.longest());
  }
  return longest;
}

/// A rate among the single numbers; it is then no longer left out.
void takeRate(const ReaderListing& listing, std::vector<std::string>& unfit, BinaryTable& table) {
  for (std::size_t k = 0; k < listing.variables.size(); ++k) {
    const ReaderVariable& variable = listing.variables[k];
    if (!variable.unfit.empty() || !variable.value) continue;
    const auto spacing = spacingOf(variable.name, *variable.value);
    if (!spacing) continue;
    if (table.spacing_s == 0) {
      table.spacing_s = *spacing;
      table.rateSource = say("{1} in the file", {inQuotes(cleanName(variable.name))});
    }
    unfit[k].clear();
  }
}

/// Adds what `variable` gives; false when it is of another length than `samples`.
bool addColumns(const ReaderVariable& variable, std::size_t index, std::uint64_t samples,
                ReaderColumns& found) {
  const Matrix matrix = *matrixOf(variable);
  if (matrix.inner != samples && matrix.outer != samples) return false;
  // Of a square one the columns are the channels, as one writes matrices.
  const bool interleaved = matrix.inner == matrix.outer ? !variable.columnMajor : matrix.outer == samples;
  VariableColumns source{index, found.table.columns.size(), 1, interleaved && !matrix.isVector()};
  if (!matrix.isVector())
    source.columns = static_cast<std::size_t>(interleaved ? matrix.inner : matrix.outer);
  const std::string name = cleanName(variable.name);
  for (std::size_t k = 0; k < source.columns; ++k) {
    const std::string number = source.columns == 1 ? "" : "(" + std::to_string(k + 1) + ")";
    found.table.columns.push_back({name + number, cleanName(variable.unit)});
  }
  found.sources.push_back(source);
  return true;
}

std::string lengthOf(const ReaderVariable& variable, std::uint64_t samples) {
  return "has " + std::to_string(matrixOf(variable)->longest()) + " of " + std::to_string(samples) +
         " samples";
}

}  // namespace

std::optional<double> spacingOf(std::string_view name, double value) {
  constexpr std::array<std::string_view, 13> rates = {
      "fs",    "fs_hz",          "sample_rate",        "samplerate", "sampling_rate", "samplingrate",   "sr",
      "srate", "sample_rate_hz", "sampling_frequency", "rate",       "rate_hz",       "samplefrequency"};
  constexpr std::array<std::string_view, 11> spacings = {"dt",
                                                         "dt_s",
                                                         "ts",
                                                         "sample_interval",
                                                         "sampling_interval",
                                                         "sampleinterval",
                                                         "sample_time",
                                                         "sampletime",
                                                         "delta_t",
                                                         "deltat",
                                                         "tsample"};
  const auto slash = name.rfind('/');
  const std::string word = lower(slash == std::string_view::npos ? name : name.substr(slash + 1));
  if (!(value > 0) || !std::isfinite(value) || !std::isfinite(1 / value)) return std::nullopt;
  if (std::find(rates.begin(), rates.end(), word) != rates.end()) return 1 / value;
  if (std::find(spacings.begin(), spacings.end(), word) != spacings.end()) return value;
  return std::nullopt;
}

ReaderColumns columnsOf(const ReaderListing& listing, std::uint64_t fileBytes) {
  ReaderColumns found;
  std::vector<std::string> unfit;
  for (const ReaderVariable& variable : listing.variables) unfit.push_back(unfitness(variable, fileBytes));
  const std::uint64_t samples = samplesOf(listing, unfit);
  takeRate(listing, unfit, found.table);
  for (std::size_t k = 0; k < listing.variables.size(); ++k) {
    const ReaderVariable& variable = listing.variables[k];
    if (unfit[k].empty() && variable.value) continue;
    if (unfit[k].empty() && found.table.columns.size() + 2 > greatestBinaryColumns)
      unfit[k] = say("is beyond 4096 columns");
    if (unfit[k].empty() && !addColumns(variable, k, samples, found)) unfit[k] = lengthOf(variable, samples);
    if (!unfit[k].empty()) found.table.leftOut.push_back(inQuotes(cleanName(variable.name)) + " " + unfit[k]);
  }
  if (!listing.whole)
    found.table.leftOut.push_back(
        say("What comes after the first {1} variables", {std::to_string(greatestReaderVariables)}));
  // A time of its own takes the place of a rate.
  for (std::size_t k = 0; k < found.table.columns.size() && found.table.columns.size() > 1; ++k) {
    if (found.table.timeColumn || !isNameOfTime(found.table.columns[k].name)) continue;
    found.table.timeColumn = k;
  }
  nameColumns(found.table.columns);
  found.table.records = samples;
  return found;
}

}  // namespace core

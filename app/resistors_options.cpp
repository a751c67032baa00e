// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/resistors_options.h"

#include <QFile>
#include <algorithm>
#include <set>
#include <tuple>

#include "app/files.h"
#include "core/search/targets.h"
#include "core/stock/stock_file.h"
#include "core/stock/stock_text.h"
#include "core/units/notation.h"
#include "core/units/text.h"
#include "ui/safe_file.h"

namespace app {
namespace {

constexpr qint64 greatestStockFile_bytes = qint64{16} * 1024 * 1024;

/// The words of a list. Beside semicolons a comma is a decimal mark, without any it separates.
std::vector<std::string> listWords(const std::string& text) {
  const char separator = text.find(';') == std::string::npos ? ',' : ';';
  std::vector<std::string> words(1);
  for (const char c : text) {
    if (c == separator)
      words.emplace_back();
    else if (c != ' ' || !words.back().empty())
      words.back() += c;
  }
  for (std::string& word : words) word.erase(word.find_last_not_of(' ') + 1);
  return words;
}

core::Error inOption(const std::string& option, core::Error error) {
  error.where = option;
  return error;
}

core::Result<double> quantityOf(const std::string& option, const std::string& text, core::UnitFamily family,
                                const std::string& unit = {}) {
  const auto value = core::parseQuantity(text, family, unit);
  if (!value) return inOption(option, value.error());
  return value;
}

/// A share, which needs a sign: 0.2 could be 0.2 % as well as 20 %.
core::Result<double> shareOf(const std::string& option, const std::string& text) {
  if (core::parseQuantity(text, core::UnitFamily::Plain))
    return core::Error{option, core::inQuotes(text) + " can be read as a share and as a percentage",
                       "Write it with a percent sign or ppm, such as 20% or 500ppm"};
  const auto share = core::shareFromText(text);
  if (!share) return inOption(option, share.error());
  return share;
}

core::Result<double> levelOf(const std::string& option, const std::string& text, const core::Bridge& bridge) {
  const auto levels = core::levelsFromText(text, bridge);
  if (!levels) return inOption(option, levels.error());
  if (levels->size() == 1 && levels->front() > 0) return levels->front();
  return core::Error{option, core::inQuotes(text) + " is not one level above zero",
                     "Write one number, such as 1500"};
}

core::Result<std::vector<double>> wantedLevels(const ResistorOptions& options, const core::Bridge& bridge) {
  const bool positive = options.sides != "negative", negative = options.sides != "positive";
  if (!options.levels.empty()) {
    const auto levels = core::levelsFromText(options.levels, bridge);
    if (!levels) return inOption("--levels", levels.error());
    return levels;
  }
  if (!options.greatest.empty()) {
    const auto greatest = levelOf("--greatest", options.greatest, bridge);
    if (!greatest) return greatest.error();
    return core::equalLevels(*greatest, options.count, positive, negative);
  }
  if (options.range.empty())
    return core::Error{"", "no levels are wanted",
                       "Give --levels, --greatest with --count, or --range with --shares"};
  const auto range = levelOf("--range", options.range, bridge);
  if (!range) return range.error();
  std::vector<double> shares;
  for (const std::string& word : listWords(options.shares)) {
    const auto share = shareOf("--shares", word);
    if (!share) return share.error();
    if (!(*share > 0))
      return core::Error{"--shares", core::inQuotes(word) + " is not above zero",
                         "Write shares such as 20%,40%"};
    shares.push_back(*share);
  }
  return core::levelsByShare(*range, shares, positive, negative);
}

core::Result<core::CandidateRange> rangeOf(const ResistorOptions& options) {
  core::CandidateRange range;
  for (const auto& [option, text, end] :
       {std::tuple("--from", &options.from, &range.from), {"--to", &options.to, &range.to}}) {
    if (text->empty()) continue;
    const auto ohm = quantityOf(option, *text, core::UnitFamily::Resistance);
    if (!ohm) return ohm.error();
    *end = core::Resistance(*ohm);
  }
  return range;
}

core::Result<core::Stock> stockFromFile(const std::string& path) {
  if (auto usable = requireRegularFile(path); !usable) return usable.error();
  const auto bytes = ui::loadBytes(QString::fromStdString(path), greatestStockFile_bytes);
  if (!bytes) return bytes.error();
  const auto stock = core::readStockFile({bytes->constData(), static_cast<std::size_t>(bytes->size())});
  if (!stock) return inFile(path, stock.error());
  return stock;
}

/// What there is to choose from: a series, a file, or the document's own stock.
core::Result<core::Stock> stockOf(const ResistorOptions& options, const core::Document& document,
                                  const core::CandidateRange& range) {
  if (!options.stock.empty()) return stockFromFile(options.stock);
  if (options.series.empty()) return *document.stock;
  const auto series = core::eSeriesFromName(options.series);
  if (!series)
    return core::Error{"--series", core::inQuotes(options.series) + " is no series of preferred values",
                       "There are E3, E6, E12, E24, E48, E96 and E192"};
  const auto tolerance = shareOf("--tolerance", options.tolerance);
  if (!tolerance) return tolerance.error();
  core::SeriesRange values;
  values.series = *series;
  values.tolerance = *tolerance;
  if (!options.from.empty()) values.from = range.from;
  if (!options.to.empty()) values.to = range.to;
  core::Stock stock;
  stock.series = {values};
  return stock;
}

core::Candidate candidateOf(const core::Resistor& resistor) {
  core::Candidate candidate;
  candidate.value = core::valueOf(resistor);
  candidate.tolerance = core::toleranceOf(resistor);
  candidate.part = candidate.name = resistor.id;
  candidate.due = resistor.due;
  candidate.rating = resistor.rating;
  return candidate;
}

/// A resistor that is in a position already: by its id in one of the stocks, or by resistance.
core::Result<core::Candidate> fittedOne(const std::string& word,
                                        const std::vector<const core::Stock*>& stocks) {
  constexpr const char* option = "--fitted";
  for (const core::Stock* stock : stocks)
    if (const core::Resistor* resistor = core::findResistor(*stock, word)) return candidateOf(*resistor);
  for (const core::Stock* stock : stocks)
    if (core::findBox(*stock, word))
      return core::Error{option, core::inQuotes(word) + " is a decade box, which has many values",
                         "Give a box by the value that it is set to, such as 59k"};
  const auto ohm = core::parseQuantity(word, core::UnitFamily::Resistance);
  if (!ohm)
    return core::Error{option, "the stock holds no resistor " + core::inQuotes(word),
                       "Give the id of one that it holds, or a resistance such as 59k"};
  core::Candidate candidate;
  candidate.value = core::Resistance(*ohm);
  candidate.name = core::formatQuantity(*ohm, core::UnitFamily::Resistance);
  return candidate;
}

/// Whether `text` is two numbers with a comma in between, or one with a decimal comma.
bool isNumberOrTwo(const std::string& text) {
  const std::size_t comma = text.find(',');
  return text.find(';') == std::string::npos && comma != std::string::npos && comma == text.rfind(',') &&
         comma > 0 && comma + 1 < text.size() && core::isDigit(text[comma - 1]) &&
         core::isDigit(text[comma + 1]) && core::parseQuantity(text, core::UnitFamily::Resistance);
}

core::Result<std::vector<core::Candidate>> fittedOf(const ResistorOptions& options,
                                                    const std::vector<const core::Stock*>& stocks) {
  std::vector<core::Candidate> fitted;
  if (options.fitted.empty()) return fitted;
  if (isNumberOrTwo(options.fitted))
    return core::Error{"--fitted", core::inQuotes(options.fitted) + " can be read as one number and as two",
                       "Write a point in a number, and two as 59k,87k"};
  std::set<std::string> parts;
  for (const std::string& word : listWords(options.fitted)) {
    auto candidate = fittedOne(word, stocks);
    if (!candidate) return candidate.error();
    if (!candidate->part.empty() && !parts.insert(candidate->part).second)
      return core::Error{"--fitted", core::inQuotes(word) + " is there twice, and there is only one of it",
                         "Leave one out"};
    fitted.push_back(*std::move(candidate));
  }
  return fitted;
}

core::Result<const core::Channel*> oneChannel(const core::Document& document, const std::string& name) {
  const auto chosen = channelsNamed(document, name);
  if (!chosen) return chosen.error();
  if (chosen->size() == 1) return document.channels[chosen->front()].get();
  std::vector<std::string> names;
  for (const std::size_t index : *chosen) names.push_back(document.channels[index]->name);
  return core::Error{"--channel", "the document has several channels", "Name one of " + listed(names)};
}

}  // namespace

core::Result<AskedResistors> askedOf(const ResistorOptions& options, const core::Document& document) {
  AskedResistors asked;
  const auto day = dayFrom(options.today);
  if (!day) return day.error();
  asked.day = *day;
  const auto channel = oneChannel(document, options.channel);
  if (!channel) return channel.error();
  asked.channel = *channel;
  const core::Setup& setup = asked.channel->setup;
  const auto levels = wantedLevels(options, setup.bridge);
  if (!levels) return levels.error();
  const auto range = rangeOf(options);
  if (!range) return range.error();
  const auto stock = stockOf(options, document, *range);
  if (!stock) return stock.error();
  // What is fitted may be of the document's stock though new ones are chosen from elsewhere.
  auto fitted = fittedOf(options, {&*stock, document.stock.get()});
  if (!fitted) return fitted.error();
  auto candidates = core::candidatesOf(*stock, *range, *day, options.withOverdue);
  if (!candidates) return candidates.error();
  asked.candidates = *std::move(candidates);
  asked.search = {.levels = *levels,
                  .positive = core::placeInPlan(setup, core::Polarity::Positive),
                  .negative = core::placeInPlan(setup, core::Polarity::Negative),
                  .positions = options.positions,
                  .fitted = *std::move(fitted),
                  .together = options.together,
                  .missUnit = options.miss == "limit" ? core::MissUnit::OfLimit : core::MissUnit::OfLevel,
                  .atTolerance = options.atTolerance,
                  .most = options.keep,
                  .threads = options.threads};
  return asked;
}

}  // namespace app

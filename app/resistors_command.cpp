// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QFile>
#include <cmath>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "app/progress_line.h"
#include "core/report/figures.h"
#include "core/search/resistor_search.h"
#include "core/search/targets.h"
#include "core/stock/stock_file.h"
#include "core/units/notation.h"
#include "core/units/text.h"
#include "ui/safe_file.h"

namespace app {
namespace {

/// Options as they are written; quantities are read once the channel is known.
struct Options {
  std::string file, channel;
  std::string levels, greatest, range, shares, sides = "both";
  unsigned count = 3;
  std::size_t positions = 3, keep = 10;
  std::string fitted, series, stock, from, to, tolerance = "0.1 %", miss = "level";
  bool together = false, atTolerance = false, withOverdue = false, json = false;
  unsigned threads = 0;
};

constexpr qint64 greatestStockFile_bytes = 16 * 1024 * 1024;

/// The words of a list on the command line, where numbers are written with a point.
std::vector<std::string> listWords(const std::string& text) {
  std::vector<std::string> words(1);
  for (const char c : text) {
    if (c == ',' || c == ';')
      words.emplace_back();
    else
      words.back() += c;
  }
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

core::Result<double> levelOf(const std::string& option, const std::string& text, const core::Bridge& bridge) {
  const auto levels = core::levelsFromText(text, bridge);
  if (!levels) return inOption(option, levels.error());
  if (levels->size() == 1 && levels->front() > 0) return levels->front();
  return core::Error{option, core::inQuotes(text) + " is not one level above zero",
                     "Write one number, such as 1500"};
}

core::Result<std::vector<double>> wantedLevels(const Options& options, const core::Bridge& bridge) {
  const bool positive = options.sides != "negative", negative = options.sides != "positive";
  if (!options.levels.empty()) {
    const auto levels = core::levelsFromText(joined(listWords(options.levels), "; "), bridge);
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
    const auto share = quantityOf("--shares", word, core::UnitFamily::Percent);
    if (!share) return share.error();
    if (!(*share > 0))
      return core::Error{"--shares", core::inQuotes(word) + " is not above zero",
                         "Write shares such as 20%,40%"};
    shares.push_back(*share);
  }
  return core::levelsByShare(*range, shares, positive, negative);
}

core::Result<core::CandidateRange> rangeOf(const Options& options) {
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
core::Result<core::Stock> stockOf(const Options& options, const core::Document& document,
                                  const core::CandidateRange& range) {
  if (!options.stock.empty()) return stockFromFile(options.stock);
  if (options.series.empty()) return *document.stock;
  const auto series = core::eSeriesFromName(options.series);
  if (!series)
    return core::Error{"--series", core::inQuotes(options.series) + " is no series of preferred values",
                       "There are E3, E6, E12, E24, E48, E96 and E192"};
  const auto tolerance = quantityOf("--tolerance", options.tolerance, core::UnitFamily::Percent);
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

/// Resistors that are in positions already: by their id in the stock, or by resistance.
core::Result<std::vector<core::Candidate>> fittedOf(const Options& options, const core::Stock& stock) {
  std::vector<core::Candidate> fitted;
  if (options.fitted.empty()) return fitted;
  for (const std::string& word : listWords(options.fitted)) {
    core::Candidate candidate;
    if (const core::Resistor* resistor = core::findResistor(stock, word)) {
      candidate.value = core::valueOf(*resistor);
      candidate.tolerance = core::toleranceOf(*resistor);
      candidate.part = candidate.name = resistor->id;
      candidate.due = resistor->due;
      candidate.rating = resistor->rating;
    } else {
      const auto ohm = quantityOf("--fitted", word, core::UnitFamily::Resistance);
      if (!ohm) return ohm.error();
      candidate.value = core::Resistance(*ohm);
      candidate.name = core::formatQuantity(*ohm, core::UnitFamily::Resistance);
    }
    fitted.push_back(std::move(candidate));
  }
  return fitted;
}

/// A search that is ready to run.
struct Asked {
  const core::Channel* channel = nullptr;
  core::ResistorSearch search;
  std::vector<core::Candidate> candidates;
};

core::Result<const core::Channel*> oneChannel(const core::Document& document, const std::string& name) {
  const auto chosen = channelsNamed(document, name);
  if (!chosen) return chosen.error();
  if (chosen->size() == 1) return document.channels[chosen->front()].get();
  std::vector<std::string> names;
  for (const std::size_t index : *chosen) names.push_back(document.channels[index]->name);
  return core::Error{"--channel", "the document has several channels", "Name one of " + listed(names)};
}

core::Result<Asked> askedOf(const Options& options, const core::Document& document) {
  Asked asked;
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
  auto fitted = fittedOf(options, *stock);
  if (!fitted) return fitted.error();
  auto candidates = core::candidatesOf(*stock, *range, today(), options.withOverdue);
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

Json resistorJson(const core::Candidate& resistor, bool fitted) {
  Json json{{"name", resistor.name},
            {"shunt_ohm", jsonNumber(resistor.value.base())},
            {"tolerance", jsonNumber(resistor.tolerance)},
            {"part", resistor.part.empty() ? Json() : Json(resistor.part)},
            {"fitted", fitted}};
  if (resistor.due) json["due"] = core::dateText(*resistor.due);
  if (resistor.rating) json["rating_W"] = jsonNumber(resistor.rating->base());
  return json;
}

Json setJson(const core::ResistorSet& set, std::size_t fitted) {
  Json json{{"greatest_miss", jsonNumber(set.greatestMiss)},
            {"mean_miss", jsonNumber(set.meanMiss)},
            {"new_parts", set.newParts},
            {"greatest_power_W", jsonNumber(set.greatestPower.base())},
            {"resistors", Json::array()},
            {"levels", Json::array()}};
  for (std::size_t k = 0; k < set.resistors.size(); ++k)
    json["resistors"].push_back(resistorJson(set.resistors[k], k < fitted));
  for (const core::LevelMet& level : set.levels) {
    Json positions = Json::array();
    for (const std::size_t position : level.closed) positions.push_back(position + 1);
    json["levels"].push_back({{"wanted", jsonNumber(level.wanted)},
                              {"reached", jsonNumber(level.reached)},
                              {"miss", jsonNumber(level.miss)},
                              {"closed_positions", positions}});
  }
  return json;
}

Json outcomeJson(const Asked& asked, const core::SearchOutcome& outcome) {
  Json json{{"channel", asked.channel->name},
            {"unit", core::simulatedUnitText(asked.channel->setup.bridge)},
            {"miss_of", asked.search.missUnit == core::MissUnit::OfLimit ? "limit" : "level"},
            {"at_tolerance", asked.search.atTolerance},
            {"positions", asked.search.positions},
            {"together", asked.search.together},
            {"candidates", asked.candidates.size()},
            {"sets_in_all", outcome.setsInAll},
            {"proven", !outcome.cancelled},
            {"unreachable", outcome.unreachable},
            {"best", Json::array()}};
  for (const core::ResistorSet& set : outcome.best)
    json["best"].push_back(setJson(set, asked.search.fitted.size()));
  return json;
}

std::string missText(double miss) { return shown(100 * miss); }

core::Table rankingTable(const Asked& asked, const core::SearchOutcome& outcome) {
  const std::string of = asked.search.missUnit == core::MissUnit::OfLimit ? ", % of limit" : ", % of level";
  core::Table table{"",
                    {{"Rank", true},
                     {"Resistors"},
                     {"Greatest miss" + of, true},
                     {"Mean miss" + of, true},
                     {"New parts", true},
                     {"Greatest power, mW", true}},
                    {}};
  for (std::size_t k = 0; k < outcome.best.size(); ++k) {
    const core::ResistorSet& set = outcome.best[k];
    std::vector<std::string> names;
    for (const core::Candidate& resistor : set.resistors) names.push_back(resistor.name);
    table.rows.push_back(
        {{std::to_string(k + 1), joined(names, ", "), missText(set.greatestMiss), missText(set.meanMiss),
          std::to_string(set.newParts), shown(1e3 * set.greatestPower.base())},
         {}});
  }
  return table;
}

core::Table bestTable(const Asked& asked, const core::ResistorSet& best) {
  const std::string unit = ", " + core::simulatedUnitText(asked.channel->setup.bridge);
  const std::string of = asked.search.missUnit == core::MissUnit::OfLimit ? ", % of limit" : ", % of level";
  core::Table table{
      "", {{"Wanted" + unit, true}, {"Reached" + unit, true}, {"Miss" + of, true}, {"Closed"}}, {}};
  for (const core::LevelMet& level : best.levels) {
    std::vector<std::string> closed;
    for (const std::size_t position : level.closed) closed.push_back(best.resistors[position].name);
    table.rows.push_back({{shown(level.wanted), shown(level.reached), missText(level.miss),
                           closed.empty() ? "nothing comes nearer than zero" : joined(closed, " and ")},
                          {}});
  }
  return table;
}

std::string outcomeText(const Asked& asked, const core::SearchOutcome& outcome) {
  std::string text = asked.channel->name + ": " + std::to_string(outcome.setsInAll) + " sets of up to " +
                     std::to_string(asked.search.positions) + " resistors; the best are proven\n";
  text += textOf(rankingTable(asked, outcome));
  if (!outcome.best.empty()) text += "\nThe best set:\n" + textOf(bestTable(asked, outcome.best.front()));
  for (const std::string& sentence : outcome.unreachable) text += sentence + "\n";
  return text;
}

int resistors(const Options& options) {
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto asked = askedOf(options, *document);
  if (!asked) return fail(asked.error());
  const auto outcome = [&] {
    ProgressLine line(asked->channel->name + ": resistors");
    return core::searchResistors(asked->channel->setup, asked->search, asked->candidates, {},
                                 [&](double share) { line.show(share); });
  }();
  if (!outcome) return fail(outcome.error());
  return options.json ? print(outcomeJson(*asked, *outcome), AllPass)
                      : print(outcomeText(*asked, *outcome), AllPass);
}

void addLevelOptions(CLI::App& command, Options& options) {
  auto* levels = command.add_option("--levels", options.levels,
                                    "Levels wanted, with their signs, such as 500,1000,-500");
  auto* greatest = command.add_option("--greatest", options.greatest, "Equal levels up to this one");
  auto* range = command.add_option("--range", options.range, "The range of the test, for --shares");
  levels->type_name("LIST")->excludes(greatest)->excludes(range);
  greatest->type_name("LEVEL")->excludes(range);
  command.add_option("--count", options.count, "How many equal levels on a side; 3 without it")
      ->check(CLI::Range(1, 50))
      ->needs(greatest);
  auto* shares =
      command.add_option("--shares", options.shares, "Levels as shares of the range, such as 20%,40%,80%");
  shares->type_name("LIST")->needs(range);
  range->type_name("LEVEL")->needs(shares);
  command
      .add_option("--sides", options.sides,
                  "Sides that equal levels and shares are wanted on; both without it")
      ->type_name("both|positive|negative")
      ->check(CLI::IsMember({"both", "positive", "negative"}))
      ->excludes(levels);
}

void addStockOptions(CLI::App& command, Options& options) {
  auto* series =
      command.add_option("--series", options.series, "New resistors of a series of preferred values");
  series->type_name("E3|...|E192");
  command.add_option("--stock", options.stock, "Resistors of a list in place of the document's stock")
      ->type_name("FILE")
      ->excludes(series);
  command.add_option("--from", options.from, "Least resistance; of a series 10k without it")
      ->type_name("OHM");
  command.add_option("--to", options.to, "Greatest resistance; of a series 1M without it")->type_name("OHM");
  command.add_option("--tolerance", options.tolerance, "Of the series; 0.1% without it")
      ->type_name("SHARE")
      ->needs(series);
  command.add_flag("--with-overdue", options.withOverdue, "Resistors whose calibration is overdue too");
}

}  // namespace

void addResistors(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<Options>();
  CLI::App* command =
      cli.add_subcommand("resistors", "The resistors whose shunts come nearest to wanted levels");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "The channel; needed when there are several")
      ->check(faultOfName);
  addLevelOptions(*command, *options);
  command->add_option("--positions", options->positions, "Resistors that can be switched; 3 without it")
      ->check(CLI::Range(1, 8));
  command->add_flag("--together", options->together, "Positions may be closed together, in parallel");
  command
      ->add_option("--fitted", options->fitted, "Resistors in positions already: ids of the stock, or ohms")
      ->type_name("LIST");
  addStockOptions(*command, *options);
  command->add_option("--miss", options->miss, "What a miss is a share of; level without it")
      ->type_name("level|limit")
      ->check(CLI::IsMember({"level", "limit"}));
  command->add_flag("--at-tolerance", options->atTolerance,
                    "Each resistor at the end of its tolerance that misses most");
  command->add_option("--keep", options->keep, "Sets to show; 10 without it")->check(CLI::Range(1, 1000));
  command->add_option("--threads", options->threads, "At once; without it as many as the machine has")
      ->check(CLI::Range(1, 1024));
  command->add_flag("--json", options->json, "JSON instead of tables");
  command->footer(
      "Levels are in um/m, or in the load unit of a transducer. A position is switched to the place of the\n"
      "plan's first shunt of either polarity, with its wires and contact; without one over arm 2 for "
      "positive\n"
      "and arm 1 for negative levels. The whole network is reckoned with, and no other set misses less.");
  command->callback([options, &chosen] { chosen = [options] { return resistors(*options); }; });
}

}  // namespace app

// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "app/progress_line.h"
#include "app/resistors_options.h"
#include "core/search/exact_set.h"
#include "core/units/text.h"

namespace app {
namespace {

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

Json outcomeJson(const AskedResistors& asked, const core::SearchOutcome& outcome) {
  Json json{{"channel", asked.channel->name},
            {"today", core::dateText(asked.day)},
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

core::Table rankingTable(const AskedResistors& asked, const core::SearchOutcome& outcome) {
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

core::Table bestTable(const AskedResistors& asked, const core::ResistorSet& best) {
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

std::string counted(std::uint64_t count, const std::string& word) {
  return std::to_string(count) + " " + word + (count == 1 ? "" : "s");
}

/// What is found, or why nothing is.
std::string headline(const AskedResistors& asked, const core::SearchOutcome& outcome) {
  const std::string start = asked.channel->name + ": " + counted(outcome.setsInAll, "set") + " of up to " +
                            counted(asked.search.positions, "resistor");
  if (!outcome.best.empty()) return start + "; the best are proven\n";
  return start + (asked.search.fitted.empty()
                      ? ", and none comes nearer to any level than no resistor does.\n"
                      : ", and none comes nearer to any level than the fitted resistors do.\n");
}

/// `first` is the best set, or what is fitted when there is none.
std::string outcomeText(const AskedResistors& asked, const core::SearchOutcome& outcome,
                        const core::ResistorSet& first) {
  std::string text = headline(asked, outcome);
  if (!outcome.best.empty()) {
    text += textOf(rankingTable(asked, outcome)) + "\nThe best set:\n" + textOf(bestTable(asked, first));
  } else if (!asked.search.fitted.empty()) {
    text += "\nThe fitted resistors:\n" + textOf(bestTable(asked, first));
  }
  for (const std::string& sentence : outcome.unreachable) text += sentence + ".\n";
  return text;
}

/// The level that is missed by the greatest part of the channel's limit; null when all are within it.
const core::LevelMet* worstBeyondLimit(const core::ResistorSet& set) {
  const core::LevelMet* worst = nullptr;
  for (const core::LevelMet& level : set.levels) {
    if (!level.reading || !(level.reading->deviation > level.reading->limit)) continue;
    // Products in place of ratios: a limit may be zero.
    if (!worst ||
        level.reading->deviation * worst->reading->limit > worst->reading->deviation * level.reading->limit)
      worst = &level;
  }
  return worst;
}

void noteLimit(const AskedResistors& asked, const core::ResistorSet& set, bool isFound) {
  const core::LevelMet* worst = worstBeyondLimit(set);
  if (!worst || set.resistors.empty()) return;
  const core::Setup& setup = asked.channel->setup;
  const std::string unit = " " + core::readingUnitText(setup.instrument);
  note(asked.channel->name + ": with the " + (isFound ? "best set" : "fitted resistors") +
       " the reading at " + core::levelText(setup.bridge, worst->wanted) + " is off by " +
       shown(worst->reading->deviation) + unit + (asked.search.atTolerance ? " at tolerance" : "") +
       ", and the channel's limit there is " + shown(worst->reading->limit) + unit + ".");
}

void noteFittedOverdue(const AskedResistors& asked) {
  std::vector<std::string> overdue;
  for (const core::Candidate& resistor : asked.search.fitted)
    if (core::isOverdue(resistor.due, asked.day))
      overdue.push_back(resistor.name + " (due " + core::dateText(*resistor.due) + ")");
  if (!overdue.empty())
    note("Fitted, and overdue for calibration on " + core::dateText(asked.day) + ": " + listed(overdue) +
         ".");
}

int resistors(const ResistorOptions& options) {
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto asked = askedOf(options, *document);
  if (!asked) return fail(asked.error());
  const core::Setup& setup = asked->channel->setup;
  const auto outcome = [&] {
    ProgressLine line(asked->channel->name + ": resistors");
    return core::searchResistors(setup, asked->search, asked->candidates, {},
                                 [&](double share) { line.show(share); });
  }();
  if (!outcome) return fail(outcome.error());
  const bool isFound = !outcome->best.empty();
  const auto first = isFound ? core::Result<core::ResistorSet>(outcome->best.front())
                             : core::exactSet(setup, asked->search, asked->search.fitted);
  if (!first) return fail(first.error());
  noteFittedOverdue(*asked);
  noteLimit(*asked, *first, isFound);
  const Exit exit = isFound && outcome->unreachable.empty() ? AllPass : CheckFailed;
  return options.json ? print(outcomeJson(*asked, *outcome), exit)
                      : print(outcomeText(*asked, *outcome, *first), exit);
}

void addLevelOptions(CLI::App& command, ResistorOptions& options) {
  auto* levels =
      command.add_option("--levels", options.levels,
                         "Levels wanted, with their signs, such as 500,1000,-500; two without a sign\n"
                         "between them as \"500;1000\", since 500,1000 can be one number");
  auto* greatest = command.add_option("--greatest", options.greatest, "Equal levels up to this one");
  auto* range = command.add_option("--range", options.range, "The range of the test, for --shares");
  levels->type_name("LIST")->excludes(greatest)->excludes(range);
  greatest->type_name("LEVEL")->excludes(range);
  command.add_option("--count", options.count, "How many equal levels on a side; 3 without it")
      ->check(CLI::Range(1, 50))
      ->needs(greatest);
  auto* shares = command.add_option("--shares", options.shares,
                                    "Levels as shares of the range, with % or ppm, such as 20%,40%,80%");
  shares->type_name("LIST")->needs(range);
  range->type_name("LEVEL")->needs(shares);
  command
      .add_option("--sides", options.sides,
                  "Sides that equal levels and shares are wanted on; both without it")
      ->type_name("both|positive|negative")
      ->check(CLI::IsMember({"both", "positive", "negative"}))
      ->excludes(levels);
}

void addStockOptions(CLI::App& command, ResistorOptions& options) {
  auto* series =
      command.add_option("--series", options.series, "New resistors of a series of preferred values");
  series->type_name("E3|...|E192");
  command.add_option("--stock", options.stock, "Resistors of a list in place of the document's stock")
      ->type_name("FILE")
      ->excludes(series);
  command.add_option("--from", options.from, "Least resistance; of a series 10k without it")
      ->type_name("OHM");
  command.add_option("--to", options.to, "Greatest resistance; of a series 1M without it")->type_name("OHM");
  command.add_option("--tolerance", options.tolerance, "Of the series, with % or ppm; 0.1% without it")
      ->type_name("SHARE")
      ->needs(series);
  command.add_flag("--with-overdue", options.withOverdue, "Resistors whose calibration is overdue too");
  command.add_option("--today", options.today,
                     "The day that due dates are compared with, as 2026-05-11; the computer's without it");
}

}  // namespace

void addResistors(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<ResistorOptions>();
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
      ->add_option("--fitted", options->fitted,
                   "Resistors in positions already: ids of the stock, or ohms (a decade box by\n"
                   "the value that it is set to)")
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
      "and arm 1 for negative levels. The whole network is reckoned with, and no other set misses less.\n"
      "\n"
      "With --together, six positions or more and a large stock (a series such as E96, a decade box) can "
      "take\n"
      "minutes; on a terminal the progress is shown.\n"
      "\n"
      "The exit status is 0 when sets are found, 1 when nothing comes within the channel's limits of some\n"
      "level or no set is found, 2 when the file, a name or an option cannot be used. A set that misses a\n"
      "level by more than the limit, for want of positions, is noted on standard error.");
  command->callback([options, &chosen] { chosen = [options] { return resistors(*options); }; });
}

}  // namespace app

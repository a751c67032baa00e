// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <cmath>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "core/budget/budget.h"
#include "core/circuit/hookup_words.h"
#include "core/units/shown.h"
#include "core/whatif/notation.h"
#include "core/whatif/what_if.h"

namespace app {
namespace {

struct WhatIfOptions {
  std::string file;
  std::string channel;
  std::vector<std::string> tries;
  bool oldZero = false;
  bool json = false;
};

/// One after the other, so that what is left out starts from the bridge as it is by then.
core::Result<std::vector<core::Alteration>> alterationsFrom(const core::Setup& setup,
                                                            const std::vector<std::string>& tries) {
  std::vector<core::Alteration> alterations;
  core::Setup now = setup;
  for (const std::string& text : tries) {
    const auto alteration = core::alterationFrom(now, text);
    if (!alteration)
      return core::Error{"--try", alteration.error().where + ": " + alteration.error().what,
                         alteration.error().mend};
    alterations.push_back(*alteration);
    auto changed = core::altered(setup, alterations);
    if (!changed) return core::Error{"--try " + text, changed.error().what, changed.error().mend};
    now = *std::move(changed);
  }
  return alterations;
}

std::string number(const core::WhatIf& whatIf, double value) {
  const double shown = core::withoutRounding(whatIf, value);
  return core::formatFixed(shown, core::placesShowing(shown, core::readingPlaces(whatIf)));
}

std::string differenceText(const core::WhatIf& whatIf, double value) {
  const core::ShownDifference shown = core::shownDifference(whatIf, value);
  return core::formatFixed(shown.value, shown.places);
}

core::TableRow zeroRow(const core::WhatIf& whatIf) {
  const core::Instrument& instrument = whatIf.setup.instrument;
  const auto shownZero = [&](const core::Result<core::Output>& zero) {
    return zero ? number(whatIf, core::readingOf(instrument, *zero).base()) : std::string("–");
  };
  const bool known = whatIf.zeroWithout && whatIf.zeroWith;
  const double jump = known ? core::readingOf(instrument, *whatIf.zeroWith - *whatIf.zeroWithout).base() : 0;
  return {{"zero", "", "", shownZero(whatIf.zeroWithout), shownZero(whatIf.zeroWith),
           known ? differenceText(whatIf, jump) : "–", "–", known ? "" : "cannot be read"},
          {}};
}

core::TableRow stepRow(const core::WhatIf& whatIf, std::size_t step, core::Zeroed zeroed) {
  const core::WhatIfStep& one = whatIf.steps[step];
  const auto& with = one.with(zeroed);
  core::TableRow row{{std::to_string(step + 1), whatIf.before.sequence[step].label,
                      joined(closedShunts(whatIf.before, step), ", "), "–", "–", "–", "–",
                      core::polarityChangeText(one, zeroed)},
                     {}};
  if (one.without) row.cells[3] = number(whatIf, one.without->reading.base());
  if (with) row.cells[4] = number(whatIf, with->reading.base());
  if (!one.without || !with) return row;
  row.cells[5] = differenceText(whatIf, (with->reading - one.without->reading).base());
  if (const auto percent = core::shownGrowth(whatIf, one, zeroed))
    row.cells[6] = core::formatFixed(percent->value, percent->places);
  if (with->beyondRange) row.cells[7] += ", beyond the range";
  return row;
}

core::Table tableOf(const core::WhatIf& whatIf, core::Zeroed zeroed) {
  const std::string unit = ", " + core::readingUnitText(whatIf.setup.instrument);
  core::Table table;
  table.columns = {{"Step", true},
                   {"Label"},
                   {"Closed"},
                   {"Without" + unit, true},
                   {"With" + unit, true},
                   {"Difference" + unit, true},
                   {"%", true},
                   {"Polarity"}};
  table.rows.push_back(zeroRow(whatIf));
  for (std::size_t step = 0; step < whatIf.steps.size(); ++step)
    table.rows.push_back(stepRow(whatIf, step, zeroed));
  return table;
}

std::string wholeText(const core::WhatIf& whatIf, const std::vector<std::string>& texts,
                      core::Zeroed zeroed) {
  const bool before = zeroed == core::Zeroed::Before;
  return (before ? "Zeroed before it came: " : "Zeroed after it came: ") + joined(texts, "; ") + "\n" +
         connectionLine(whatIf.before.bridge) + core::whatIfSentence(whatIf, zeroed) + "\n\n" +
         textOf(tableOf(whatIf, zeroed)) + "\n" + "The zero is that of the bridge, not balanced.\n" +
         std::string(core::whatIfCaution()) + "\n";
}

Json readingJson(const core::Setup& setup, const core::Result<core::StepReading>& reading) {
  if (!reading) return {{"error", reading.error().text()}};
  return {
      {"output_mV_per_V", jsonNumber(1e3 * reading->output.base())},
      {"reading", jsonNumber(reading->reading.base())},
      {"polarity", core::polarityWord(reading->polarity)},
      {"simulated",
       reading->simulated ? jsonNumber(core::simulatedInUnit(setup.bridge, *reading->simulated)) : Json()},
      {"beyond_range", reading->beyondRange}};
}

Json zeroJson(const core::Result<core::Output>& zero) {
  if (!zero) return {{"error", zero.error().text()}};
  return {{"output_mV_per_V", jsonNumber(1e3 * zero->base())}};
}

Json jsonOf(const core::WhatIf& whatIf, core::Zeroed zeroed) {
  Json steps = Json::array();
  for (std::size_t step = 0; step < whatIf.steps.size(); ++step) {
    const core::WhatIfStep& one = whatIf.steps[step];
    const auto& with = one.with(zeroed);
    const bool both = one.without && with;
    steps.push_back({{"step", step + 1},
                     {"label", whatIf.before.sequence[step].label},
                     {"closed", closedShunts(whatIf.before, step)},
                     {"without", readingJson(whatIf.before, one.without)},
                     {"with", readingJson(whatIf.setup, with)},
                     {"difference", both ? jsonNumber(core::withoutRounding(
                                               whatIf, (with->reading - one.without->reading).base()))
                                         : Json()},
                     {"percent", jsonNumber(core::growthPercent(whatIf, one, zeroed))},
                     {"polarity_change", core::polarityChangeText(one, zeroed)}});
  }
  return {{"unit", core::readingUnitText(whatIf.setup.instrument)},
          {"simulated_unit", core::simulatedUnitText(whatIf.setup.bridge)},
          {"zero_without", zeroJson(whatIf.zeroWithout)},
          {"zero_with", zeroJson(whatIf.zeroWith)},
          {"zero_jump",
           whatIf.zeroJump ? jsonNumber(core::withoutRounding(whatIf, whatIf.zeroJump->base())) : Json()},
          {"article_gain", jsonNumber(whatIf.articleGain)},
          {"article", core::articleSentence(whatIf, false)},
          {"steps", std::move(steps)},
          {"sentence", core::whatIfSentence(whatIf, zeroed)}};
}

/// Expanded, of the expected readings of the plan as it is.
std::vector<std::optional<double>> uncertaintyOf(const core::Setup& setup) {
  const core::Budget budget = core::budgetOf(setup, core::predict(setup));
  std::vector<std::optional<double>> uncertainty;
  for (const auto& step : budget.of(core::Scope::Chain).steps)
    uncertainty.push_back(step ? std::optional(step->expanded) : std::nullopt);
  return uncertainty;
}

int tryOut(const WhatIfOptions& options) {
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto chosen = channelsNamed(*document, options.channel);
  if (!chosen) return fail(chosen.error());
  const core::Channel& channel = *document->channels[chosen->front()];
  const auto alterations = alterationsFrom(channel.setup, options.tries);
  if (!alterations) return fail(alterations.error());
  auto result = core::whatIf(channel.setup, *alterations);
  if (!result) return fail(inFile(options.file, result.error()));
  result->uncertainty = uncertaintyOf(channel.setup);
  const core::Zeroed zeroed = options.oldZero ? core::Zeroed::Before : core::Zeroed::After;
  const std::vector<std::string> texts = core::triedOut(channel.setup, *alterations).texts;
  if (!options.json) return print(channel.name + ". " + wholeText(*result, texts, zeroed), AllPass);
  Json json{{"channel", channel.name},
            {"connection", core::hookupSentences(channel.setup.bridge)},
            {"zeroed", options.oldZero ? "before" : "after"},
            {"tried", Json::array()}};
  for (std::size_t k = 0; k < texts.size(); ++k)
    json["tried"].push_back({{"kind", core::alterationKindKey((*alterations)[k].kind)},
                             {"text", texts[k]},
                             {"try", core::notationOf((*alterations)[k])}});
  json.update(jsonOf(*result, zeroed));
  return print(json, AllPass);
}

std::string footerText() {
  std::string forms;
  for (const std::string& form : core::notationForms()) forms += "  " + form + "\n";
  return "What can be tried out:\n" + forms +
         "LEAD is P+, P-, S+, S-, sense+, sense- or return, as far as the connection has it; N an arm from 1 "
         "to\n"
         "4. Values are in the trade's notation (10M, 4R7, 350 ohm); one that is left out is a usual one. "
         "Signs\n"
         "of the shell belong in quotation marks: --try \"broken S-\" --try \"leak arm 1 = 10M\". Several "
         "come in\n"
         "the order given. Nothing is written to the file.\n"
         "Per cent tell how much larger a reading is in size. A what-if says nothing about the real article.";
}

}  // namespace

void addWhatIf(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<WhatIfOptions>();
  CLI::App* command =
      cli.add_subcommand("whatif", "What a fault would do to the readings, side by side with and without it");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "Name of the channel")->required()->check(faultOfName);
  command
      ->add_option("--try", options->tries,
                   "One thing to be tried out, see below; may be given several times")
      ->required()
      ->expected(1)
      ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  command->add_flag("--old-zero", options->oldZero, "The instrument was zeroed before it came");
  command->add_flag("--json", options->json, "JSON instead of a table");
  command->footer(footerText());
  command->callback([options, &chosen] { chosen = [options] { return tryOut(*options); }; });
}

}  // namespace app

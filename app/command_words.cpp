// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_words.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>

namespace app {
namespace {

std::vector<std::string> splitAtCommas(const std::string& text) {
  std::vector<std::string> parts;
  for (std::size_t at = 0; at <= text.size();) {
    const std::size_t end = std::min(text.find(',', at), text.size());
    parts.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return parts;
}

/// The library writes value and checks as "chain|strain:{chain,strain,load}" or "UINT:INT in [1 - 50]".
void readValue(const std::string& typeName, OptionWords& words) {
  const std::size_t colon = typeName.find(':');
  words.value = typeName.substr(0, colon);
  if (colon == std::string::npos) return;
  const std::string check = typeName.substr(colon + 1);
  if (check.size() > 2 && check.front() == '{' && check.back() == '}')
    words.choices = splitAtCommas(check.substr(1, check.size() - 2));
  else if (const std::size_t in = check.find('['); in != std::string::npos)
    words.range = check.substr(in + 1, check.find(']', in) - in - 1);
}

std::vector<std::string> namesOf(const std::set<CLI::Option*>& options) {
  std::vector<std::string> names;
  for (const CLI::Option* option : options) names.push_back(option->get_name());
  std::sort(names.begin(), names.end());  // the library sorts by address, which differs between runs
  return names;
}

OptionWords optionWords(const CLI::Option& option) {
  OptionWords words;
  words.positional = option.get_positional();
  if (words.positional) words.names.push_back(option.get_name(true));
  for (const std::string& name : option.get_snames()) words.names.push_back("-" + name);
  for (const std::string& name : option.get_lnames()) words.names.push_back("--" + name);
  words.description = option.get_description();
  words.required = option.get_required();
  words.repeated = option.get_items_expected_max() > 1;
  words.again = words.repeated || option.get_multi_option_policy() == CLI::MultiOptionPolicy::TakeAll;
  words.needs = namesOf(option.get_needs());
  words.excludes = namesOf(option.get_excludes());
  // Without a value it is a flag, whose type name means nothing.
  if (option.get_items_expected_max() > 0) readValue(option.get_type_name(), words);
  return words;
}

}  // namespace

bool OptionWords::takesPath() const {
  constexpr std::array<std::string_view, 6> paths = {"FILE",   "FILES",     "FOLDER",
                                                     "REPORT", "RECORDING", "TABLE"};
  const std::string& what = positional ? names.front() : value;
  return takesDocument() || std::find(paths.begin(), paths.end(), what) != paths.end();
}

bool OptionWords::takesDocument() const {
  return positional && description.find(".bridgecal document") != std::string::npos;
}

CommandWords commandWords(const CLI::App& cli) {
  CommandWords words{cli.get_name(), cli.get_description(), cli.get_footer(), {}, {}};
  // A command without remarks of its own carries those of the program.
  if (cli.get_parent() != nullptr && words.remarks == cli.get_parent()->get_footer()) words.remarks.clear();
  for (const CLI::Option* option : cli.get_options()) words.options.push_back(optionWords(*option));
  for (const CLI::App* command : cli.get_subcommands([](const CLI::App*) { return true; }))
    words.commands.push_back(commandWords(*command));
  return words;
}

std::string firstWords(const std::string& description) {
  std::string text = description.substr(0, description.find(';'));
  std::replace(text.begin(), text.end(), '\n', ' ');
  return text;
}

}  // namespace app

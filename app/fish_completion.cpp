// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/completions.h"

namespace app {
namespace {

std::string fishQuoted(const std::string& text) {
  std::string safe;
  for (const char letter : text) {
    if (letter == '\'' || letter == '\\') safe += '\\';
    safe += letter;
  }
  return "'" + safe + "'";
}

std::string fishNames(const OptionWords& option) {
  std::string text;
  for (const std::string& name : option.names)
    text += name.starts_with("--") ? " -l " + name.substr(2) : " -s " + name.substr(1);
  return text;
}

/// `when` says in which place of the line the option counts.
std::string fishLine(const OptionWords& option, const std::string& when) {
  std::string list;
  for (const std::string& choice : option.choices) list += (list.empty() ? "" : " ") + choice;
  const std::string words = list.empty() ? "" : " -a " + fishQuoted(list);
  const std::string start = "complete -c shuntwright -n " + when;
  if (option.positional) {
    if (option.takesPath()) return start + " -F\n";
    return words.empty() ? "" : start + " -f" + words + "\n";
  }
  const char* value = !option.takesValue() ? "" : option.takesPath() ? " -r -F" : " -x";
  return start + fishNames(option) + value + words + " -d " + fishQuoted(firstWords(option.description)) +
         "\n";
}

}  // namespace

std::string fishCompletion(const CommandWords& program) {
  std::string text = "# Completion of shuntwright in fish, made by \"shuntwright describe fish\".\n";
  text += "complete -c shuntwright -f\n";
  for (const OptionWords& option : program.options) text += fishLine(option, "__fish_use_subcommand");
  for (const CommandWords& command : program.commands)
    text += "complete -c shuntwright -n __fish_use_subcommand -a " + command.name + " -d " +
            fishQuoted(firstWords(command.description)) + "\n";
  for (const CommandWords& command : program.commands)
    for (const OptionWords& option : command.options)
      text += fishLine(option, fishQuoted("__fish_seen_subcommand_from " + command.name));
  return text;
}

}  // namespace app

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/completions.h"

namespace app {
namespace {

/// `text` inside single quotes, with what _arguments takes for its own marks escaped.
std::string inZshSpec(const std::string& text) {
  std::string safe;
  for (const char letter : text) {
    if (letter == '\'') {
      safe += "'\\''";
      continue;
    }
    if (letter == '[' || letter == ']' || letter == ':' || letter == '\\') safe += '\\';
    safe += letter;
  }
  return safe;
}

std::string zshAction(const OptionWords& option) {
  if (!option.choices.empty()) {
    std::string list;
    for (const std::string& choice : option.choices) list += (list.empty() ? "" : " ") + choice;
    return "(" + list + ")";
  }
  if (option.takesDocument()) return "_files -g \"*.bridgecal\"";
  return option.takesPath() ? "_files" : " ";
}

/// One line of _arguments for each spelling of `option`.
std::string zshSpecs(const OptionWords& option, const std::string& indent) {
  const std::string description = inZshSpec(firstWords(option.description));
  if (option.positional) {
    const char* place = option.repeated ? "*" : option.required ? "" : ":";
    const std::string what = inZshSpec(option.names.front());
    return indent + "'" + place + ":" + what + ":" + zshAction(option) + "' \\\n";
  }
  std::string barred;
  for (const std::string& name : option.names) barred += (barred.empty() ? "" : " ") + name;
  for (const std::string& name : option.excludes) barred += " " + name;
  const std::string before = option.again ? "*" : "(" + barred + ")";
  const std::string value =
      option.takesValue() ? ":" + inZshSpec(option.value) + ":" + zshAction(option) : std::string();
  std::string text;
  for (const std::string& name : option.names) {
    const char* equals = option.takesValue() && name.starts_with("--") ? "=" : "";
    text += indent + "'" + before + name + equals + "[" + description + "]" + value + "' \\\n";
  }
  return text;
}

std::string zshCase(const CommandWords& command) {
  std::string text = "        " + command.name + ")\n          _arguments -s \\\n";
  for (const OptionWords& option : command.options) text += zshSpecs(option, "            ");
  return text + "            && return 0\n          ;;\n";
}

}  // namespace

std::string zshCompletion(const CommandWords& program) {
  std::string text =
      "#compdef shuntwright\n# Completion of shuntwright in zsh, made by \"shuntwright describe zsh\".\n"
      "_shuntwright() {\n  local curcontext=$curcontext state line\n  local -a commands\n  commands=(\n";
  for (const CommandWords& command : program.commands)
    text += "    '" + command.name + ":" + inZshSpec(firstWords(command.description)) + "'\n";
  text += "  )\n  _arguments -s -C \\\n";
  for (const OptionWords& option : program.options)
    if (!option.positional) text += zshSpecs(option, "    ");
  text +=
      "    '1: :->first' \\\n    '*:: :->rest'\n  case $state in\n    first)\n"
      "      _describe -t commands command commands\n      _files -g \"*.bridgecal\"\n      ;;\n"
      "    rest)\n      case $words[1] in\n";
  for (const CommandWords& command : program.commands) text += zshCase(command);
  return text +
         "      esac\n      ;;\n  esac\n}\n"
         "if [ \"$funcstack[1]\" = _shuntwright ]; then\n  _shuntwright \"$@\"\nelse\n"
         "  compdef _shuntwright shuntwright\nfi\n";
}

}  // namespace app

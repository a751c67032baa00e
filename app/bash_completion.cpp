// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/completions.h"

namespace app {
namespace {

/// Finds the command that was given, and sets `before` to the option whose value is being written, which
/// the shell splits at "=" by itself.
constexpr const char* bashHead = R"(# Completion of shuntwright in bash, made by "shuntwright describe bash".
_shuntwright() {
  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command= i
  if [[ $word == = ]]; then
    word=
  elif [[ $before == = ]]; then
    before=${COMP_WORDS[COMP_CWORD-2]}
  fi
  for ((i = 1; i < COMP_CWORD; i++)); do
    case ${COMP_WORDS[i]} in
      @COMMANDS@) command=${COMP_WORDS[i]}; break ;;
    esac
  done
  COMPREPLY=()
  case $command:$before in
)";

constexpr const char* bashFiles =
    R"(COMPREPLY=($(compgen -f -- "$word")); compopt -o filenames 2> /dev/null)";
constexpr const char* bashDocuments =
    R"(COMPREPLY=($(compgen -f -X '!*.bridgecal' -- "$word") $(compgen -d -- "$word")); )"
    R"(compopt -o filenames 2> /dev/null)";

std::string joinedWith(const std::vector<std::string>& words, const std::string& between) {
  std::string text;
  for (const std::string& word : words) text += (text.empty() ? "" : between) + word;
  return text;
}

std::string offerWords(const std::string& words) {
  return R"(COMPREPLY=($(compgen -W ")" + words + R"(" -- "$word")))";
}

/// What may follow an option with a value; nothing after "name of a channel" and the like.
std::string valueCases(const CommandWords& command, const std::string& name) {
  std::string text;
  for (const OptionWords& option : command.options) {
    if (option.positional || !option.takesValue()) continue;
    std::vector<std::string> patterns;
    for (const std::string& spelling : option.names) patterns.push_back(name + ":" + spelling);
    std::string offer;
    if (!option.choices.empty())
      offer = offerWords(joinedWith(option.choices, " ")) + "; ";
    else if (option.takesPath())
      offer = std::string(bashFiles) + "; ";
    text += "    " + joinedWith(patterns, "|") + ") " + offer + "return ;;\n";
  }
  return text;
}

std::string optionCase(const CommandWords& command, const std::string& name) {
  std::vector<std::string> names;
  for (const OptionWords& option : command.options)
    if (!option.positional) names.insert(names.end(), option.names.begin(), option.names.end());
  return "    '" + name + "') " + offerWords(joinedWith(names, " ")) + " ;;\n";
}

/// What may stand in a command's own places.
std::string placeCase(const CommandWords& command, const std::string& name) {
  bool documents = false, files = false;
  std::vector<std::string> words;
  for (const OptionWords& option : command.options) {
    if (!option.positional) continue;
    documents = documents || option.takesDocument();
    files = files || (option.takesPath() && !option.takesDocument());
    words.insert(words.end(), option.choices.begin(), option.choices.end());
  }
  for (const CommandWords& one : command.commands) words.push_back(one.name);
  std::string offer = files ? bashFiles : documents ? bashDocuments : ":";
  if (!words.empty()) {
    const std::string added = R"(COMPREPLY+=($(compgen -W ")" + joinedWith(words, " ") + R"(" -- "$word")))";
    offer += "; " + added;
  }
  return "    '" + name + "') " + offer + " ;;\n";
}

}  // namespace

std::string bashCompletion(const CommandWords& program) {
  std::vector<std::string> names;
  for (const CommandWords& command : program.commands) names.push_back(command.name);
  std::string text = bashHead;
  const std::string mark = "@COMMANDS@";
  text.replace(text.find(mark), mark.size(), joinedWith(names, "|"));
  for (const CommandWords& command : program.commands) text += valueCases(command, command.name);
  text += "  esac\n  if [[ $word == -* ]]; then\n    case $command in\n" + optionCase(program, "");
  for (const CommandWords& command : program.commands) text += optionCase(command, command.name);
  text += "    esac\n    return\n  fi\n  case $command in\n" + placeCase(program, "");
  for (const CommandWords& command : program.commands) text += placeCase(command, command.name);
  return text + "  esac\n}\ncomplete -F _shuntwright shuntwright\n";
}

}  // namespace app

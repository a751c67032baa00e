// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/man_page.h"

#include <sstream>

namespace app {
namespace {

/// `text` as roff that shows it letter by letter: a hyphen that begins an option is a minus, which can be
/// copied.
std::string inRoff(const std::string& text) {
  std::string safe;
  for (std::size_t k = 0; k < text.size(); ++k) {
    const char letter = text[k];
    const bool ofOption =
        letter == '-' && (k == 0 || text[k - 1] == ' ' || text[k - 1] == '-' || text[k - 1] == '(' ||
                          text[k - 1] == '"' || (k + 1 < text.size() && text[k + 1] == '-'));
    switch (letter) {
      case '\\':
        safe += "\\e";
        break;
      case '-':
        safe += ofOption ? "\\-" : "-";
        break;
      case '\'':
        safe += "\\(aq";
        break;
      case '"':
        safe += "\\(dq";
        break;
      case '^':
        safe += "\\(ha";
        break;
      case '~':
        safe += "\\(ti";
        break;
      default:
        safe += letter;
    }
  }
  return safe;
}

/// A line of running text, which must not be taken for a request.
std::string roffLine(const std::string& text) {
  const std::string safe = inRoff(text);
  return (safe.starts_with('.') ? "\\&" : "") + safe + "\n";
}

std::string roffJoined(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}

std::string roffOption(const OptionWords& option) {
  std::string text = ".TP\n";
  std::string names;
  for (const std::string& name : option.names)
    names += (names.empty() ? "" : ", ") +
             (option.positional ? "\\fI" + inRoff(name) + "\\fR" : "\\fB" + inRoff(name) + "\\fR");
  if (!option.positional && option.takesValue()) names += " \\fI" + inRoff(option.value) + "\\fR";
  if (option.repeated) names += " ...";
  text += names + "\n";
  std::istringstream lines(option.description);
  for (std::string line; std::getline(lines, line);) text += roffLine(line);
  // The description ends without a full stop, as in the help.
  std::string further;
  if (option.required) further += ". Required";
  if (!option.choices.empty()) further += ". One of " + roffJoined(option.choices);
  if (!option.range.empty())
    further += ". From " + option.range.substr(0, option.range.find(' ')) + " to " +
               option.range.substr(option.range.rfind(' ') + 1);
  if (!option.needs.empty()) further += ". Together with " + roffJoined(option.needs);
  if (!option.excludes.empty()) further += ". Not with " + roffJoined(option.excludes);
  text.pop_back();
  return text + inRoff(further) + ".\n";
}

/// Paragraphs; lines that begin with blanks stay as they are.
std::string roffRemarks(const std::string& remarks) {
  std::string text = ".PP\n";
  bool asTheyStand = false;
  std::istringstream lines(remarks);
  for (std::string line; std::getline(lines, line);) {
    const bool indented = line.starts_with(' ');
    if (indented != asTheyStand) text += indented ? ".RS\n.nf\n" : ".fi\n.RE\n.PP\n";
    asTheyStand = indented;
    if (line.empty())
      text += ".PP\n";
    else
      text += roffLine(line.substr(std::min(line.find_first_not_of(' '), line.size())));
  }
  if (asTheyStand) text += ".fi\n.RE\n";
  return text;
}

std::string roffCommand(const CommandWords& command) {
  std::string places;
  for (const OptionWords& option : command.options)
    if (option.positional) {
      const std::string place =
          "\\fI" + inRoff(option.names.front()) + "\\fR" + (option.repeated ? " ..." : "");
      places += option.required ? " " + place : " [" + place + "]";
    }
  std::string text = ".SS " + inRoff(command.name) + "\n";
  text += "\\fBshuntwright " + inRoff(command.name) + "\\fR [\\fIoptions\\fR]" + places + "\n.PP\n";
  text += inRoff(command.description) + ".\n";
  for (const OptionWords& option : command.options) text += roffOption(option);
  if (!command.remarks.empty()) text += roffRemarks(command.remarks);
  return text;
}

void fillIn(std::string& text, const std::string& mark, const std::string& with) {
  for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at + with.size()))
    text.replace(at, mark.size(), with);
}

}  // namespace

std::string manPage(std::string frame, const CommandWords& program, const std::string& version) {
  std::string options, commands;
  for (const OptionWords& option : program.options) options += roffOption(option);
  for (const CommandWords& command : program.commands) commands += roffCommand(command);
  fillIn(frame, "@VERSION@", version);
  fillIn(frame, "@OPTIONS@\n", options);
  fillIn(frame, "@COMMANDS@\n", commands);
  return frame;
}

}  // namespace app

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <CLI/CLI.hpp>
#include <QFileInfo>
#include <sstream>

#include "app/files.h"
#include "app/output.h"

namespace app {
namespace {

constexpr const char* footer =
    "\nExit status: 0 done and all that was judged passes; 1 done and something does not pass, because\n"
    "it fails, its uncertainty leaves it open or it could not be judged; 2 a file, name or option\n"
    "cannot be used. Numbers are written with a point.\n"
    "\n"
    "A shunt check verifies the electrical chain, never gauge factor, bond or alignment. A switched\n"
    "shunt moves the reading of a live control or safety channel.";

/// The command that the user was in, for the hint where to read on.
std::string commandName(const CLI::App& cli) {
  for (const CLI::App* command : cli.get_subcommands()) return " " + command->get_name();
  return "";
}

/// A word in the file's place that looks like a command and is no file.
std::optional<core::Error> mistypedCommand(const CLI::App& cli, const std::string& word) {
  if (word.empty() || word.find_first_of("./") != std::string::npos || QFileInfo::exists(word.c_str()))
    return std::nullopt;
  std::vector<std::string> names;
  for (const CLI::App* command : cli.get_subcommands([](const CLI::App*) { return true; }))
    names.push_back(command->get_name());
  return core::Error{word, "this is neither a command nor a file", "Commands are " + joined(names, ", ")};
}

std::string oneLine(std::string text) {
  while (!text.empty() && (text.back() == '\n' || text.back() == '.')) text.pop_back();
  return text;
}

/// Options that belong together wrongly.
std::optional<core::Error> contradiction(const Request& request) {
  if (request.command && (request.demo || !request.file.empty()))
    return core::Error{request.demo ? "--demo" : request.file,
                       "a command takes its files behind its own name",
                       "Write for example \"shuntwright predict FILE\""};
  if (request.demo && !request.file.empty())
    return core::Error{"--demo", "the built-in demo and a file cannot be opened together", "Leave one out"};
  return std::nullopt;
}

}  // namespace

CommandLine::CommandLine()
    : m_cli(std::make_unique<CLI::App>("Plans and checks shunt calibrations of strain-gauge bridges.",
                                       "shuntwright")) {
  CLI::App& cli = *m_cli;
  Run& command = m_request.command;
  cli.set_version_flag("--version", "shuntwright " SHUNTWRIGHT_VERSION);
  cli.add_option("FILE", m_request.file, "A .bridgecal document to open in the window")->type_name("");
  cli.add_flag("--demo", m_request.demo, "Open the built-in demo in the window");
  cli.require_subcommand(0, 1);
  cli.footer(footer);
  addPredict(cli, command);
  addPolarity(cli, command);
  addLevels(cli, command);
  addLine(cli, command);
  addCheck(cli, command);
  addDiagnose(cli, command);
  addCompare(cli, command);
  addBatch(cli, command);
  addChannels(cli, command);
  addReport(cli, command);
  addVerify(cli, command);
  addReview(cli, command);
  addResistors(cli, command);
  addWiring(cli, command);
  addWorking(cli, command);
  addWhatIf(cli, command);
  addPractice(cli, command);
  addSpice(cli, command);
  addDemo(cli, command);
  addDescribe(cli, command);
}

CommandLine::~CommandLine() = default;

Request CommandLine::read(int argc, const char* const* argv) {
  m_request = {};
  try {
    m_cli->parse(argc, argv);
  } catch (const CLI::Success& success) {
    // Help and version. Printed by us, so that a full disk is told.
    std::ostringstream text;
    m_request.exit = m_cli->exit(success, text);
    if (m_request.exit == AllPass) m_request.exit = print(text.str(), AllPass);
  } catch (const CLI::ParseError& error) {
    if (const auto mistyped = mistypedCommand(*m_cli, m_request.file))
      m_request.exit = fail(*mistyped);
    else
      m_request.exit =
          fail({"", oneLine(error.what()), "See \"shuntwright" + commandName(*m_cli) + " --help\""});
  }
  if (m_request.exit) return m_request;
  if (const auto wrong = contradiction(m_request))
    m_request.exit = fail(*wrong);
  else if (const auto mistyped = mistypedCommand(*m_cli, m_request.file))
    m_request.exit = fail(*mistyped);
  return m_request;
}

}  // namespace app

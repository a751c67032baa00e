// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "app/commands.h"

namespace app {

/// What the program was asked to do.
struct Request {
  Run command;              ///< a command that needs no window; empty: open the window
  std::string file;         ///< document for the window, may be empty
  bool demo = false;        ///< the window opens the built-in demo
  std::optional<int> exit;  ///< nothing is left to do: help was printed or the usage was wrong
};

/// Reads the command line.
class CommandLine {
 public:
  CommandLine();
  ~CommandLine();
  CommandLine(const CommandLine&) = delete;
  CommandLine& operator=(const CommandLine&) = delete;

  /// Says what is wrong with it on standard error. A second line may be read, but not run: options that it
  /// does not name keep what the first gave them.
  Request read(int argc, const char* const* argv);

 private:
  Request m_request;  ///< the parser writes here
  std::unique_ptr<CLI::App> m_cli;
};

}  // namespace app

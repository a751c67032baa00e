// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

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

/// Reads the command line. Says what is wrong with it on standard error.
Request requestFrom(int argc, const char* const* argv);

}  // namespace app

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "app/command_words.h"

namespace app {

/// The manual page: `frame` is roff in which the lines @OPTIONS@ and @COMMANDS@ stand for what `program`
/// understands and @VERSION@ for `version`.
std::string manPage(std::string frame, const CommandWords& program, const std::string& version);

}  // namespace app

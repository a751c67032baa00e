// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "app/command_words.h"

// What a shell needs to complete the program's commands, options, their values and file names.

namespace app {

std::string bashCompletion(const CommandWords& program);
std::string zshCompletion(const CommandWords& program);
std::string fishCompletion(const CommandWords& program);

}  // namespace app

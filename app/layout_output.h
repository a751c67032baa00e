// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "app/output.h"
#include "core/recording/layout.h"

namespace app {

/// How a file would be read: the layout in the words of --read-as, its columns, the first lines as they stand
/// in the file, and what is in doubt.
std::string layoutText(const core::Preview& preview);
Json layoutJson(const core::Preview& preview);

}  // namespace app

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/document/document.h"
#include "core/units/result.h"

// Documents that a command changed, written whole or not at all.

namespace app {

/// Writes `document` to `path` with an entry of its history: what changed since `before`, by `person` (empty:
/// who is logged in). Errors name the file.
core::Result<void> saveRevised(const std::string& path, core::Document document, const core::Document& before,
                               const std::string& person);

/// Refuses to write `out` over `source`, another kind of file that is being read; `what` is that kind.
core::Result<void> requireOther(const std::string& out, const std::string& source, const std::string& what);

}  // namespace app

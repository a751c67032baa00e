// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <filesystem>
#include <stop_token>
#include <string>

#include "core/units/result.h"

namespace core {

/// All bytes of a regular file of at most `greatest` bytes, as they are when it is opened: what is appended
/// while reading is left out. Folders, pipes and devices are refused without waiting for them. The error
/// names the cause the system gives; cancelled() soon after `stop` is requested.
Result<std::string> readRegularFile(const std::filesystem::path& path, std::size_t greatest,
                                    const std::stop_token& stop = {});

}  // namespace core

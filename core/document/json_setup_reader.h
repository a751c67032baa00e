// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/document/json_fields.h"
#include "core/plan/setup.h"

namespace core {

/// The set-up at `at`, of a channel or kept inside a closed check; what is wrong is noted there.
Setup readSetup(const JsonPlace& at);

}  // namespace core

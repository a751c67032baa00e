// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

namespace app {

/// Runs `work` with an application that draws into memory, as reports and pictures need, and gives back
/// what `work` returned. Needs no display.
int drawnOffscreen(const std::function<int()>& work);

}  // namespace app

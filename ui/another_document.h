// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace ui {

/// Where another document comes, nothing stays scrolled to where the one before it was read, and nothing that
/// was tried out on that one is tried out on this.
void showFromBeginning(const QWidget& window);

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ui {

/// For whoever works without a mouse or without eyes: a ring around what has the keyboard, and for assistive
/// tools the roles, names and values that Qt leaves out (pictures, what a combo box is for, borders between
/// views). Needs a QApplication; called again it does nothing.
void installAccess();

}  // namespace ui

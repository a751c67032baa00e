// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace ui {

/// `text` of any origin for a tip, or for another place that reads as markup what looks like it: shown as it
/// stands, line ends kept. Escaping alone will not do: what then has no tag in it shows with its escapes.
/// A text with nothing of markup in it comes back as it is, since screen readers are told tips too.
QString asTyped(const QString& text);

}  // namespace ui

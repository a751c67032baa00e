// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QString>

namespace ui {

/// `text` as far as it fits into `lines` lines of `width` pixels, wrapped between words; cut with "…".
QString elidedToLines(const QString& text, const QFont& font, int width, int lines);

}  // namespace ui

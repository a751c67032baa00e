// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "core/recording/layout.h"

namespace ui {

// How a file is read, in words. Names of columns are foreign text: to be shown as plain text.

QString wordsOf(core::FileKind kind);
QString wordsOf(core::TextEncoding encoding);
QString wordsOf(core::TimeForm form);
QString wordsOf(core::DateOrder order);
QString wordsOf(core::RowRole role);
/// "comma", "semicolon", "tab", "blanks".
QString separatorWords(char separator);
QString decimalWords(char decimal);
/// "2: Time [s]", the column counted from 1.
QString columnWords(const core::Layout& layout, std::size_t column);

/// "Text in UTF-8, semicolon between cells, decimal comma; names in line 10, units in line 11, numbers from
/// line 12; time from column 1: Time in milliseconds."
QString layoutSentence(const core::Layout& layout);

/// "first row of numbers, decimal sign": which parts of a layout were decided.
QString choicesWords(const core::LayoutChoices& choices);

}  // namespace ui

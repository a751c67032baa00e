// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <memory>
#include <string_view>

#include "core/units/language.h"

// In which language the window speaks, and reports. Files, keys and commands are never touched by this.

namespace ui {

enum class InterfaceLanguage { System, English, German };

/// As remembered for this user; the system's when nothing is, or nothing that we know.
InterfaceLanguage chosenLanguage();
/// Takes effect at the next start: every widget has its words from when it was made.
void rememberLanguage(InterfaceLanguage language);

/// Has the application speak `language`, write numbers as it does, and core with it. Once, before the first
/// widget. Where the system speaks that language, numbers are written as the system does (a Swiss one has
/// other marks than a German one); else as is usual in the language. A system that speaks neither gets
/// English words and its own numbers.
void useLanguage(InterfaceLanguage language);

/// For sentences of core, for a report: by ISO 639 code, English for what is not known. `localNumbers`:
/// decimal mark and days as the language writes them; else decimal point and ISO 8601, which programs read.
std::shared_ptr<const core::Language> languageFor(std::string_view code, bool localNumbers);

/// Codes that `languageFor` has words for, English first.
constexpr std::string_view reportLanguages[] = {"en", "de"};

}  // namespace ui

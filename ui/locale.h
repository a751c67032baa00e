// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <memory>
#include <string_view>

#include "core/units/language.h"

class QTranslator;

// In which language the window speaks, and reports. Files, keys and commands are never touched by this.
// Languages are data: resources/translations tells how one is added. A code is that of ISO 639, where needed
// with a country ("pt_BR").

namespace ui {

/// Codes of all languages that there are words for, English first, then by code: those compiled in, and those
/// that a translator has put into "shuntwright/translations" of the user's or the system's data folders
/// (~/.local/share), which go before compiled ones.
QStringList interfaceLanguages();
/// A language in its own words ("Deutsch"), so that whoever got lost finds back; the code when it has none.
QString languageName(const QString& code);

/// As remembered for this user; empty for the system's, also when nothing that we know is remembered.
QString chosenLanguage();
/// Takes effect at the next start: every widget has its words from when it was made. Empty: the system's.
void rememberLanguage(const QString& code);

/// Has the application speak `code` (empty: as the system), write numbers as it does, and core with it. Once,
/// before the first widget. Where the system speaks that language, numbers are written as the system does (a
/// Swiss one has other marks than a German one); else as is usual in the language. A system that speaks none
/// that we know gets English words and its own numbers.
void useLanguage(const QString& code);

/// For sentences of core, for a report; English for what is not known. `localNumbers`: decimal mark and days
/// as the language writes them; else decimal point and ISO 8601, which programs read.
std::shared_ptr<const core::Language> languageFor(std::string_view code, bool localNumbers);

/// Words of the window, of tr(), in another language for this thread as long as it lives, and core with it:
/// for a picture in a report. No widget learns of it.
class SpokenScope {
 public:
  /// Words that `language.code` has; those of the window when it has none.
  explicit SpokenScope(const std::shared_ptr<const core::Language>& language);
  ~SpokenScope();
  SpokenScope(const SpokenScope&) = delete;
  SpokenScope& operator=(const SpokenScope&) = delete;

 private:
  core::LanguageScope m_core;
  const QTranslator* m_before;
};

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/locale.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QLocale>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTranslator>

#include "ui/state_file.h"

namespace ui {
namespace {

/// A state of its own for one test.
class OwnState {
 public:
  OwnState() : m_before(qgetenv("XDG_STATE_HOME")) { qputenv("XDG_STATE_HOME", m_folder.path().toUtf8()); }
  ~OwnState() {
    m_before.isEmpty() ? void(qunsetenv("XDG_STATE_HOME")) : void(qputenv("XDG_STATE_HOME", m_before));
  }

 private:
  QTemporaryDir m_folder;
  QByteArray m_before;
};

TEST(Locale, TheLanguageIsRememberedAndForgotten) {
  const OwnState state;
  EXPECT_EQ(chosenLanguage(), "");
  for (const char* language : {"de", "en", ""}) {
    rememberLanguage(language);
    EXPECT_EQ(chosenLanguage(), language);
  }
}

TEST(Locale, AnUnknownLanguageInTheStateIsTheSystems) {
  const OwnState state;
  stateFile().setValue("language", "tlh");
  EXPECT_EQ(chosenLanguage(), "");
}

TEST(Locale, AReportSpeaksGermanWithNumbersAsChosen) {
  const core::LanguageScope canonical(languageFor("de", false));
  EXPECT_EQ(core::say("Not judged: no reading."), "Nicht beurteilt: kein Messwert.");
  EXPECT_EQ(core::shown("1.5"), "1.5");
  const core::LanguageScope local(languageFor("de", true));
  EXPECT_EQ(core::shown("1.5"), "1,5");
}

TEST(Locale, NoNumberIsShownAsNoFieldReadsIt) {
  for (const char* language : {"de", "en"}) {
    useLanguage(language);
    EXPECT_EQ(QLocale().toString(20011), "20011") << language;
  }
}

/// A data folder of this user's own for one test.
class OwnData {
 public:
  OwnData() : m_before(qgetenv("XDG_DATA_HOME")) {
    QStandardPaths::setTestModeEnabled(false);
    qputenv("XDG_DATA_HOME", m_folder.path().toUtf8());
  }
  ~OwnData() {
    QStandardPaths::setTestModeEnabled(true);
    m_before.isEmpty() ? void(qunsetenv("XDG_DATA_HOME")) : void(qputenv("XDG_DATA_HOME", m_before));
  }
  QString translations() const { return m_folder.path() + "/shuntwright/translations"; }

 private:
  QTemporaryDir m_folder;
  QByteArray m_before;
};

TEST(Locale, ALanguageThatATranslatorPutsIntoTheDataFolderIsFound) {
  const OwnData data;
  EXPECT_EQ(interfaceLanguages(), QStringList({"en", "de"}));
  ASSERT_TRUE(QDir().mkpath(data.translations()));
  ASSERT_TRUE(QFile::copy(":/translations/shuntwright_de.qm", data.translations() + "/shuntwright_fr.qm"));
  EXPECT_EQ(interfaceLanguages(), QStringList({"en", "de", "fr"}));
  EXPECT_EQ(languageName("fr"), "français");  // its own word for itself
  const core::LanguageScope scope(languageFor("fr", true));
  EXPECT_EQ(core::say("Not judged: no reading."), "Nicht beurteilt: kein Messwert.")
      << "the words of that file";
  EXPECT_EQ(core::shown("1.5"), "1,5");
  // Unicode CLDR, French short date: day, month, year with strokes. From memory.
  EXPECT_EQ(core::shown(core::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(6)}),
            "06/11/2026");
}

TEST(Locale, EnglishCountsHaveTheirPluralForms) {
  QTranslator english;
  ASSERT_TRUE(english.load(":/translations/shuntwright_en.qm"));
  const auto more = [&](int n) { return english.translate("ui", "%n shunt(s)", nullptr, n); };
  EXPECT_EQ(more(1), "%n shunt");
  EXPECT_EQ(more(3), "%n shunts");
}

TEST(Locale, WhatIsNotKnownIsEnglish) {
  const core::LanguageScope unknown(languageFor("tlh", true));
  EXPECT_EQ(core::language().code, "en");
  EXPECT_EQ(core::say("Not judged: no reading."), "Not judged: no reading.");
  EXPECT_EQ(core::shown("1.5"), "1.5");
}

TEST(Locale, ASentenceWithoutTranslationStaysEnglish) {
  const core::LanguageScope german(languageFor("de", true));
  const std::string pattern = "of no source file: {1}";  // no literal, or it would have to be translated
  EXPECT_EQ(core::say(pattern, {"7"}), "of no source file: 7");
}

}  // namespace
}  // namespace ui

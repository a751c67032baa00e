// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/locale.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

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
  EXPECT_EQ(chosenLanguage(), InterfaceLanguage::System);
  for (const auto language :
       {InterfaceLanguage::German, InterfaceLanguage::English, InterfaceLanguage::System}) {
    rememberLanguage(language);
    EXPECT_EQ(chosenLanguage(), language);
  }
}

TEST(Locale, AnUnknownLanguageInTheStateIsTheSystems) {
  const OwnState state;
  stateFile().setValue("language", "tlh");
  EXPECT_EQ(chosenLanguage(), InterfaceLanguage::System);
}

TEST(Locale, AReportSpeaksGermanWithNumbersAsChosen) {
  const core::LanguageScope canonical(languageFor("de", false));
  EXPECT_EQ(core::say("Not judged: no reading."), "Nicht beurteilt: kein Messwert.");
  EXPECT_EQ(core::shown("1.5"), "1.5");
  const core::LanguageScope local(languageFor("de", true));
  EXPECT_EQ(core::shown("1.5"), "1,5");
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

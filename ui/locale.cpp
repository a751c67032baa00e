// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/locale.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>
#include <map>
#include <string>

#include "ui/state_file.h"

/// They lie in a static library, from where nothing else pulls them in. Qt's rule: within no namespace.
static void openTranslations() { Q_INIT_RESOURCE(translations); }

namespace ui {
namespace {

constexpr const char* stateKey = "language";

/// Looks a text up under its class, for the few that have words of their own there, then among all of the
/// window.
class WindowTranslator : public QTranslator {
 public:
  QString translate(const char* context, const char* text, const char* comment, int n) const override {
    const QString own = QTranslator::translate(context, text, comment, n);
    return own.isNull() ? QTranslator::translate("ui", text, comment, n) : own;
  }
};

/// Lives as long as the program, so that languages may outlive the application. Null when it cannot be read.
std::shared_ptr<const QTranslator> germanWords() {
  static const auto words = []() -> std::shared_ptr<const QTranslator> {
    openTranslations();
    auto made = std::make_shared<WindowTranslator>();
    return made->load(":/shuntwright_de.qm") ? made : nullptr;
  }();
  return words;
}

std::shared_ptr<core::Language> wordsOf(std::string_view code) {
  auto language = std::make_shared<core::Language>();
  const auto words = code == "de" ? germanWords() : nullptr;
  if (!words) return language;
  language->code = "de";
  language->translate = [words](std::string_view english) {
    // A thousand channels say the same few hundred sentences over and over. Of this one language.
    thread_local std::map<std::string, std::string, std::less<>> said;
    if (const auto known = said.find(english); known != said.end()) return known->second;
    const std::string text(english);
    const QString found = words->translate("core", text.c_str(), nullptr, -1);
    return said.emplace(text, found.isEmpty() ? text : found.toStdString()).first->second;
  };
  return language;
}

/// In which the window is to speak, and with whose numbers.
QLocale localeFor(InterfaceLanguage language) {
  const QLocale system = QLocale::system();
  const auto wanted = language == InterfaceLanguage::German ? QLocale::German : QLocale::English;
  if (language == InterfaceLanguage::System || system.language() == wanted) return system;
  return wanted == QLocale::German ? QLocale(QLocale::German, QLocale::Germany) : QLocale::c();
}

}  // namespace

InterfaceLanguage chosenLanguage() {
  const QString code = stateFile().value(stateKey).toString();
  if (code == "en") return InterfaceLanguage::English;
  return code == "de" ? InterfaceLanguage::German : InterfaceLanguage::System;
}

void rememberLanguage(InterfaceLanguage language) {
  QSettings state = stateFile();
  if (language == InterfaceLanguage::System)
    state.remove(stateKey);
  else
    state.setValue(stateKey, language == InterfaceLanguage::German ? "de" : "en");
}

void useLanguage(InterfaceLanguage language) {
  const QLocale locale = localeFor(language);
  QLocale::setDefault(locale);
  auto words = wordsOf(locale.language() == QLocale::German ? "de" : "en");
  words->decimalMark = locale.decimalPoint().startsWith(',') ? ',' : '.';
  words->dayFirst = words->code == "de";
  if (words->code == "de")
    // Qt asks for a translator that it could change; it never does.
    QCoreApplication::installTranslator(const_cast<QTranslator*>(germanWords().get()));
  core::setLanguage(std::move(words));
}

std::shared_ptr<const core::Language> languageFor(std::string_view code, bool localNumbers) {
  auto words = wordsOf(code);
  if (localNumbers && words->code == "de") words->decimalMark = ',', words->dayFirst = true;
  return words;
}

}  // namespace ui

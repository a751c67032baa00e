// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/locale.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTranslator>
#include <algorithm>
#include <climits>
#include <map>
#include <mutex>
#include <string>

#include "ui/state_file.h"

/// They lie in a static library, from where nothing else pulls them in. Qt's rule: within no namespace.
static void openTranslations() { Q_INIT_RESOURCE(translations); }

namespace ui {
namespace {

constexpr const char* languageKey = "language";
constexpr const char* englishCode = "en";

/// Looks a text up under its class, for the few that have words of their own there, then among all of the
/// window.
class WindowTranslator : public QTranslator {
 public:
  QString translate(const char* context, const char* text, const char* comment, int n) const override {
    const QString own = QTranslator::translate(context, text, comment, n);
    return own.isNull() ? QTranslator::translate("ui", text, comment, n) : own;
  }
};

/// Where compiled translations lie; the first that has a language is taken.
QStringList translationFolders() {
  QStringList folders = QStandardPaths::locateAll(
      QStandardPaths::GenericDataLocation, "shuntwright/translations", QStandardPaths::LocateDirectory);
  openTranslations();
  folders << ":/translations";
  return folders;
}

QString fileNameOf(const QString& code) { return "shuntwright_" + code + ".qm"; }

/// Lives as long as the program, so that languages may outlive the application. Null when there is none that
/// can be read. English has one too: the plural forms of the window's counts.
std::shared_ptr<const QTranslator> translatorFor(const QString& code) {
  static std::mutex access;
  static std::map<QString, std::shared_ptr<const QTranslator>> known;
  const std::lock_guard lock(access);
  if (const auto found = known.find(code); found != known.end()) return found->second;
  auto& kept = known[code];
  for (const QString& folder : translationFolders()) {
    auto made = std::make_shared<WindowTranslator>();
    if (made->load(folder + "/" + fileNameOf(code))) return kept = made;
  }
  return kept;
}

/// Of this thread's innermost SpokenScope; null outside of any.
const QTranslator*& spokenHere() {
  thread_local const QTranslator* words = nullptr;
  return words;
}

/// What the application has installed: the window's words, or those of a SpokenScope. Changing them through
/// Qt would tell every widget.
class Speaker : public QTranslator {
 public:
  bool isEmpty() const override { return false; }
  void speak(std::shared_ptr<const QTranslator> words) { m_words = std::move(words); }
  QString translate(const char* context, const char* text, const char* comment, int n) const override {
    const QTranslator* words = spokenHere() ? spokenHere() : m_words.get();
    return words ? words->translate(context, text, comment, n) : QString();
  }

 private:
  std::shared_ptr<const QTranslator> m_words;
};

bool hasWords(const QString& code) { return interfaceLanguages().contains(code); }

/// Which of the languages that we know `locale` speaks: with its country, else without; empty for none.
QString knownLanguageOf(const QLocale& locale) {
  const QString withCountry = locale.name(), code = withCountry.section('_', 0, 0);
  return hasWords(withCountry) ? withCountry : hasWords(code) ? code : QString();
}

/// The three numbers of a day in the order and with the marks of `locale`, years with four digits. English
/// is spoken in lands that write days in different orders, so that ISO 8601 is what nobody mistakes.
std::string dayPatternOf(const QLocale& locale, const QString& code) {
  if (code == englishCode) return core::english()->dayPattern;
  QString pattern = locale.dateFormat(QLocale::ShortFormat);
  pattern.replace(QRegularExpression("d+"), "dd").replace(QRegularExpression("M+"), "MM");
  pattern.replace(QRegularExpression("y+"), "yyyy");
  const bool isWhole = pattern.count("dd") == 1 && pattern.count("MM") == 1 && pattern.count("yyyy") == 1;
  return isWhole ? pattern.toStdString() : core::english()->dayPattern;
}

/// With the marks of numbers and days as programs read them.
std::shared_ptr<core::Language> coreWordsOf(const QString& code) {
  auto language = std::make_shared<core::Language>();
  const auto words = code == englishCode ? nullptr : translatorFor(code);
  if (!words) return language;
  language->code = code.toStdString();
  language->translate = [words](std::string_view english) {
    // A thousand channels say the same few hundred sentences over and over.
    using Said = std::map<std::string, std::string, std::less<>>;
    thread_local std::map<const QTranslator*, Said> saidIn;
    Said& said = saidIn[words.get()];
    if (const auto known = said.find(english); known != said.end()) return known->second;
    const std::string text(english);
    const QString found = words->translate("core", text.c_str(), nullptr, -1);
    return said.emplace(text, found.isEmpty() ? text : found.toStdString()).first->second;
  };
  language->translateCount = [words](std::string_view english, std::size_t count) {
    const int n = int(std::min<std::size_t>(count, INT_MAX));
    return words->translate("core", std::string(english).c_str(), nullptr, n).toStdString();
  };
  return language;
}

void writeNumbersLike(const QLocale& locale, core::Language& words) {
  words.decimalMark = locale.decimalPoint().startsWith(',') ? ',' : '.';
  words.dayPattern = dayPatternOf(locale, QString::fromStdString(words.code));
}

/// Whose numbers the window is to write.
QLocale localeFor(const QString& code) {
  const QLocale system = QLocale::system();
  if (code.isEmpty() || system.language() == QLocale(code).language()) return system;
  return code == englishCode ? QLocale::c() : QLocale(code);
}

}  // namespace

QStringList interfaceLanguages() {
  QStringList codes;
  for (const QString& folder : translationFolders())
    for (const QString& file : QDir(folder).entryList({fileNameOf("*")}, QDir::Files))
      codes << QFileInfo(file).completeBaseName().section('_', 1);
  codes.removeAll(englishCode);
  codes.removeDuplicates();
  codes.sort();
  return QStringList{englishCode} + codes;
}

QString languageName(const QString& code) {
  if (code == englishCode) return "English";  // Qt says "American English"
  const QLocale locale(code);
  const QString name = locale.language() == QLocale::C ? QString() : locale.nativeLanguageName();
  if (name.isEmpty()) return code;
  return code.contains('_') ? QString("%1 (%2)").arg(name, locale.nativeTerritoryName()) : name;
}

QString chosenLanguage() {
  const QString code = stateFile().value(languageKey).toString();
  return hasWords(code) ? code : QString();
}

void rememberLanguage(const QString& code) {
  QSettings state = stateFile();
  if (code.isEmpty())
    state.remove(languageKey);
  else
    state.setValue(languageKey, code);
}

void useLanguage(const QString& wanted) {
  QLocale locale = localeFor(wanted);
  // No field reads a mark between thousands, so no number is shown with one.
  locale.setNumberOptions(QLocale::OmitGroupSeparator | QLocale::RejectGroupSeparator);
  QLocale::setDefault(locale);
  const QString found = wanted.isEmpty() ? knownLanguageOf(locale) : wanted;
  const QString code = found.isEmpty() ? englishCode : found;
  auto words = coreWordsOf(code);
  writeNumbersLike(locale, *words);
  static Speaker speaker;
  QCoreApplication::removeTranslator(&speaker);
  speaker.speak(translatorFor(code));
  QCoreApplication::installTranslator(&speaker);
  core::setLanguage(std::move(words));
}

SpokenScope::SpokenScope(const std::shared_ptr<const core::Language>& language)
    : m_core(language), m_before(spokenHere()) {
  // Kept for as long as the program runs.
  if (const auto words = translatorFor(QString::fromStdString(language->code))) spokenHere() = words.get();
}

SpokenScope::~SpokenScope() { spokenHere() = m_before; }

std::shared_ptr<const core::Language> languageFor(std::string_view code, bool localNumbers) {
  auto words = coreWordsOf(QString::fromUtf8(code.data(), qsizetype(code.size())));
  if (localNumbers && words->code != englishCode)
    writeNumbersLike(QLocale(QString::fromStdString(words->code)), *words);
  return words;
}

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/help/manual.h"

#include <QDir>
#include <QFile>
#include <QLocale>
#include <QRegularExpression>
#include <map>

/// The pages lie in a static library, from where nothing else pulls them in. Qt's rule: within no namespace.
static void openManualPages() { Q_INIT_RESOURCE(manual); }

namespace ui {
namespace {

constexpr auto manualFolder = ":/manual";
constexpr qsizetype excerptLength = 140;

QString manualFileText(const QString& id, const QString& language) {
  openManualPages();
  QFile file(QString("%1/%2/%3.md").arg(manualFolder, language, id));
  return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// In `language`, else in English; without the comment with the licence.
QString manualTextOf(const QString& id, const QString& language) {
  QString text = manualFileText(id, language);
  if (text.isEmpty()) text = manualFileText(id, "en");
  static const QRegularExpression comment("<!--.*?-->\\s*", QRegularExpression::DotMatchesEverythingOption);
  return text.remove(comment);
}

/// Without the marks of Markdown.
QString plainManualText(QString text) {
  static const QRegularExpression picture("!\\[([^\\]]*)\\]\\([^)]*\\)");
  static const QRegularExpression link("\\[([^\\]]*)\\]\\([^)]*\\)");
  static const QRegularExpression rule("^[|:\\-\\s]+$", QRegularExpression::MultilineOption);
  static const QRegularExpression marks("\\*\\*|\\*|`|\\|");
  static const QRegularExpression item("^\\s*(-|\\d+\\.)\\s+", QRegularExpression::MultilineOption);
  text.replace(picture, "\\1").replace(link, "\\1");
  return text.remove(rule).remove(item).remove(marks).simplified();
}

ManualSection sectionOf(const QString& headingLine, const QString& body) {
  static const QRegularExpression form("^#+\\s+(.*?)\\s*(?:\\{#([\\w-]+)\\})?\\s*$");
  const auto parts = form.match(headingLine);
  return {parts.captured(2), plainManualText(parts.captured(1)), plainManualText(body)};
}

bool holdsAll(const QString& text, const QStringList& words) {
  for (const QString& word : words)
    if (!text.contains(word, Qt::CaseInsensitive)) return false;
  return true;
}
bool holdsOne(const QString& text, const QStringList& words) {
  for (const QString& word : words)
    if (text.contains(word, Qt::CaseInsensitive)) return true;
  return false;
}

QString excerptOf(const QString& text, const QStringList& words) {
  qsizetype at = text.size();
  for (const QString& word : words)
    if (const qsizetype found = text.indexOf(word, 0, Qt::CaseInsensitive); found >= 0)
      at = std::min(at, found);
  if (at == text.size()) at = 0;
  const qsizetype before = at > excerptLength / 3 ? text.lastIndexOf(' ', at - excerptLength / 3) + 1 : 0;
  QString part = text.mid(before, excerptLength);
  if (before > 0) part.prepend("… ");
  if (before + excerptLength < text.size()) part.append(" …");
  return part;
}

}  // namespace

QStringList manualLanguages() {
  openManualPages();
  QStringList languages;  // the pictures have a folder too
  for (const QString& folder : QDir(manualFolder).entryList(QDir::Dirs, QDir::Name))
    if (folder != "pictures") languages << folder;
  return languages;
}

QString manualLanguage() {
  const QString code = QLocale().name().section('_', 0, 0);
  return manualLanguages().contains(code) ? code : QStringLiteral("en");
}

QStringList manualPageIds() {
  openManualPages();
  QStringList ids;
  for (const QString& file : QDir(QString(manualFolder) + "/en").entryList({"*.md"}, QDir::Files, QDir::Name))
    if (const QString id = file.chopped(3); id != "contents") ids << id;
  return ids;
}

ManualPage manualPage(const QString& id, const QString& language) {
  // Pages are read over and over by the search, and never change.
  static std::map<QString, ManualPage> known;
  const QString key = language + "/" + id;
  if (const auto found = known.find(key); found != known.end()) return found->second;
  ManualPage page{.id = id, .title = {}, .markdown = manualTextOf(id, language), .sections = {}};
  QString heading, body;
  bool inCode = false;
  const auto close = [&] {
    if (!heading.isEmpty()) page.sections.push_back(sectionOf(heading, body));
    body.clear();
  };
  for (const QString& line : page.markdown.split('\n')) {
    if (line.startsWith("```")) inCode = !inCode;
    if (!inCode && line.startsWith('#')) {
      close();
      heading = line;
    } else {
      body += line + "\n";
    }
  }
  close();
  static const QRegularExpression anchors("^(#+ .*?)\\s*\\{#[\\w-]+\\}\\s*$",
                                          QRegularExpression::MultilineOption);
  page.markdown.replace(anchors, "\\1");
  if (!page.sections.empty()) page.title = page.sections.front().heading;
  known.emplace(key, page);
  return page;
}

QList<ManualGroup> manualContents(const QString& language) {
  static const QRegularExpression group("^- (.+)$");
  static const QRegularExpression entry("^\\s+- \\[(.+)\\]\\((\\S+)\\.md\\)\\s*$");
  QList<ManualGroup> groups;
  for (const QString& line : manualTextOf("contents", language).split('\n')) {
    if (const auto page = entry.match(line); page.hasMatch() && !groups.empty())
      groups.back().pages.push_back({page.captured(1), page.captured(2)});
    else if (const auto title = group.match(line); title.hasMatch())
      groups.push_back({title.captured(1), {}});
  }
  return groups;
}

ManualAddress manualAddress(const QString& address) {
  static const QRegularExpression form("^([\\w-]+)\\.md(?:#([\\w-]+))?$");
  const auto parts = form.match(address);
  return {parts.captured(1), parts.captured(2)};
}

bool isInManual(const QString& address) {
  const auto [page, anchor] = manualAddress(address);
  if (page.isEmpty() || page == "contents") return false;
  const ManualPage found = manualPage(page, "en");
  if (found.sections.empty() || anchor.isEmpty()) return !found.sections.empty();
  for (const ManualSection& section : found.sections)
    if (section.anchor == anchor) return true;
  return false;
}

QStringList manualSearchWords(const QString& words) {
  return words.simplified().split(' ', Qt::SkipEmptyParts);
}

QList<ManualHit> searchManual(const QString& text, const QString& language) {
  const QStringList words = manualSearchWords(text);
  QList<ManualHit> first, others;
  if (words.empty()) return first;
  for (const ManualGroup& group : manualContents(language))
    for (const ManualGroup::Entry& entry : group.pages) {
      const ManualPage page = manualPage(entry.id, language);
      for (const ManualSection& section : page.sections) {
        if (!holdsAll(page.title + " " + section.heading + " " + section.text, words)) continue;
        // A page's title is in each of its sections; that alone makes none of them a hit.
        if (!holdsOne(section.heading + " " + section.text, words)) continue;
        const QString address = page.id + ".md" + (section.anchor.isEmpty() ? "" : "#" + section.anchor);
        const bool inHeading = holdsOne(section.heading, words);
        (inHeading ? first : others)
            .push_back({address, page.title, section.heading, excerptOf(section.text, words)});
      }
    }
  return first + others;
}

}  // namespace ui

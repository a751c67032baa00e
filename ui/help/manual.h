// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QStringList>

// The built-in manual: pages of Markdown in resources/manual/LANGUAGE, compiled in. A further language is a
// further folder; a page that it lacks is shown in English.
//
// A page has an id, the name of its file without ".md". A heading may end in {#anchor}; links within the
// manual are "page.md#anchor". Anchors are the same in every language. An address is "page.md#anchor" or
// "page.md".

namespace ui {

/// Folders of the manual, "en" among them.
QStringList manualLanguages();
/// The language of the window's words, where the manual is there in it; else "en".
QString manualLanguage();
/// Ids of all English pages, without the contents.
QStringList manualPageIds();

/// A heading, and what stands below it up to the next one.
struct ManualSection {
  QString anchor;   ///< empty: none is given
  QString heading;  ///< without marks of Markdown
  QString text;     ///< plain, for searching
};

struct ManualPage {
  QString id;
  QString title;
  QString markdown;               ///< without anchors and comments; links are addresses
  QList<ManualSection> sections;  ///< one for each heading, in order
};

/// In `language`, else in English; without sections when there is no such page in either.
ManualPage manualPage(const QString& id, const QString& language);

/// A group of the contents with its pages in order.
struct ManualGroup {
  struct Entry {
    QString title, id;
  };
  QString title;
  QList<Entry> pages;
};
/// The contents, from contents.md: a list of groups, and under each a list of links.
QList<ManualGroup> manualContents(const QString& language);

struct ManualAddress {
  QString page, anchor;
};
/// "setup.md#leads" taken apart; without a page when it leads out of the manual.
ManualAddress manualAddress(const QString& address);
/// Whether page and anchor are there, in English at least.
bool isInManual(const QString& address);

/// Where all words of a search stand.
struct ManualHit {
  QString address;
  QString title;    ///< of the page
  QString heading;  ///< of the section
  QString excerpt;  ///< plain words around the first word found
};
/// Sections that hold all of `words`, in any order and whatever their case: first those with a word in their
/// heading or in the page's title, each kind in the order of the contents. None for no words.
QList<ManualHit> searchManual(const QString& words, const QString& language);
/// `words` as they are searched for.
QStringList manualSearchWords(const QString& words);

}  // namespace ui

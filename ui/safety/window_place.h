// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QRect>
#include <QString>
#include <optional>

class QMainWindow;

// Where the user was when the window was closed, so that the next start goes on there. In the user's state
// folder, never in a document.

namespace ui {

/// What is on view of a document.
struct Place {
  QString channel, check;  ///< by name, since numbers change
  int step = -1;           ///< counted from 0; negative: none
  QString view;            ///< objectName of the view or page that fills the area; empty: all views
  int bridgePage = 0, outcomePage = 0, sequencePage = 0;

  friend bool operator==(const Place&, const Place&) = default;
};

/// Of the documents that were left last; the oldest are forgotten.
void rememberPlace(const QString& path, const Place& place);
std::optional<Place> rememberedPlace(const QString& path);

/// The document that was open last; empty: none, or a new one.
QString lastDocument();
void rememberLastDocument(const QString& path);

/// `window` where it can be seen and moved: as it is when its top lies on a screen, else moved, and made
/// smaller when need be, onto the screen nearest to it. All in the coordinates of the desktop.
QRect onScreen(QRect window, const QList<QRect>& screens);

/// Size, place and the splitters that have a name; of splitters with parts put away only what shows.
void rememberWindow(const QMainWindow& window);
void restoreWindow(QMainWindow& window);

}  // namespace ui

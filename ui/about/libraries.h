// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>

namespace ui {

/// A library that the program or its reading process is made with.
struct Library {
  QString name;
  QString version;  ///< that it was compiled with; of Qt the one that is running
  QString licence;  ///< SPDX expression of the parts in use
  QString purpose;
  QString file;  ///< how the shared library's file name begins; empty: nothing but headers, compiled in
};

/// All of them, those of Qt first.
QList<Library> libraries();

}  // namespace ui

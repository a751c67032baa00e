// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "core/document/document.h"
#include "core/units/result.h"

namespace ui {

inline constexpr const char* documentSuffix = "bridgecal";

/// Reads a document; an error names the file, and the line and field within it. `sha256` becomes that of the
/// bytes that were read, as sha256OfFile writes it.
core::Result<core::Document> openDocument(const QString& path, QString* sha256 = nullptr);

/// Writes a document so that a crash costs the edit and never the file (see ui/safe_file.h). `sha256` becomes
/// that of the bytes that were written.
core::Result<void> saveDocument(const core::Document& document, const QString& path,
                                QString* sha256 = nullptr);

/// The documents opened or saved last, newest first; kept in the user's state folder.
QStringList recentDocuments();
void rememberDocument(const QString& path);

}  // namespace ui

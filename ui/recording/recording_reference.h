// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/assess/check.h"
#include "core/document/document.h"
#include "ui/recording/recording_store.h"

namespace ui {

/// What a document at `documentPath` (empty: unsaved, then relative to the present folder) keeps of a
/// recording that was read: relative path, size, hash and layout choices. The column is left to whoever takes
/// readings.
core::RecordingReference referenceTo(const OpenRecording& recording, const QString& sha256,
                                     const QString& documentPath);

/// `document` as it must be to find its recordings from the folder `to` instead of `from`, both absolute. A
/// recording that is not where its reference says keeps it.
core::Document withReferencesFrom(core::Document document, const QString& from, const QString& to);

}  // namespace ui

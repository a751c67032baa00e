// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "core/document/document.h"
#include "core/units/result.h"

namespace ui {

/// Pictures of the real window showing `document`, as PNG files in `folder` (made if missing): each
/// theme at 1280 x 800 and 1920 x 1080, then each view alone and a comparison. Returns their paths.
/// Needs a QApplication; works without a display on the offscreen platform.
core::Result<QStringList> takePictures(const core::Document& document, const QString& folder);

}  // namespace ui

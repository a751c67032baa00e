// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "core/document/document.h"
#include "core/units/result.h"

namespace ui {

/// What takePictures can take: each theme at 1280 x 800 and 1920 x 1080, each view and page alone, a
/// comparison.
QStringList pictureNames();

/// The pictures `names` of the real window showing `document`, as NAME.png in `folder` (made if missing), as
/// they are on a fixed day. Returns their paths. Needs a QApplication; works without a display on the
/// offscreen platform.
core::Result<QStringList> takePictures(const core::Document& document, const QString& folder,
                                       const QStringList& names = pictureNames());

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "ui/change/difference_strip.h"
#include "ui/change/shown_change.h"
#include "ui/picture_file.h"

// The change between two checks outside the window: as data, and as a picture in light colours.

namespace ui {

/// Rows of cells, the header first: one a step, then gain and zero. As outcomeData writes them.
QList<QStringList> changeData(const ShownChange& shown);

/// What is asked of the whole, the strip of steps, gain and zero.
PictureDrawing changeDrawing(std::shared_ptr<const ShownChange> shown, const QString& title);

/// "TP-01-pre-test-post-test-change".
QString suggestedChangeName(const ShownChange& shown);

/// The steps as the strip draws them.
QList<StripStep> stripSteps(const ShownChange& shown);

}  // namespace ui

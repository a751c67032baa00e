// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QIcon>

#include "ui/theme.h"
#include "ui/wiring/wiring_layout.h"

class QPainter;

namespace ui {

/// Draws connectors, pins, jumpers and marks with the painter's font, which must be that of the layout.
void paintWiring(QPainter& painter, const WiringPicture& picture, const WiringLayout& layout,
                 const Colours& colours);

/// The sign of a severity: a full disc with a cross for an error, a triangle with a stroke for a warning.
void paintSeverity(QPainter& painter, const QRectF& room, core::WiringSeverity severity,
                   const Colours& colours);
/// The same as an icon for lists and tables.
QIcon severityIcon(core::WiringSeverity severity, const QPalette& palette);

}  // namespace ui

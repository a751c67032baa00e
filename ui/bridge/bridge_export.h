// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bridge/bridge_look.h"
#include "ui/picture_file.h"
#include "ui/session.h"

class QPrinter;

namespace ui {

/// The chosen channel's bridge at the chosen step with a heading that says what it is, in light colours, for
/// a file, the clipboard or paper. There must be a channel; the drawing is a copy that needs it no more.
PictureDrawing bridgeDrawing(const Session& session, const BridgeLook& look);

/// "TP-01-bridge-step-2"
QString suggestedBridgeName(const Session& session);

/// One page, as large as it takes. False when the printer does not start.
bool printPicture(QPrinter& printer, const PictureDrawing& drawing);

}  // namespace ui

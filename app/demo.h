// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "core/document/document.h"

namespace app {

/// The invented example that is built into the program (examples/demo.bridgecal).
core::Document demoDocument();

/// Built-in files of the demo, document and recordings, by resource path.
QStringList demoFiles();

}  // namespace app

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDBusConnection>

namespace ui {

/// The bus of the user's session, where the environment names one (DBUS_SESSION_BUS_ADDRESS, else the socket
/// "bus" in XDG_RUNTIME_DIR); not connected where there is none. None is ever
/// started. Another bus has another name.
QDBusConnection sessionBus();

}  // namespace ui

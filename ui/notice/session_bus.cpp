// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/notice/session_bus.h"

#include <QFileInfo>

namespace ui {
namespace {

QString sessionBusAddress() {
  const QString named = qEnvironmentVariable("DBUS_SESSION_BUS_ADDRESS");
  if (!named.isEmpty()) return named;
  const QString folder = qEnvironmentVariable("XDG_RUNTIME_DIR");
  const QString socket = folder + "/bus";
  return !folder.isEmpty() && QFileInfo::exists(socket) ? "unix:path=" + socket : QString();
}

}  // namespace

QDBusConnection sessionBus() {
  static QString connected;
  const QString address = sessionBusAddress();
  // Never "autolaunch:", which would start a bus of our own.
  const bool isOne = !address.isEmpty() && !address.startsWith("autolaunch");
  const QString name = isOne ? "shuntwright " + address : QString();
  if (name == connected) return QDBusConnection(name);
  if (!connected.isEmpty()) QDBusConnection::disconnectFromBus(connected);
  connected = name;
  return isOne ? QDBusConnection::connectToBus(address, name) : QDBusConnection(name);
}

}  // namespace ui

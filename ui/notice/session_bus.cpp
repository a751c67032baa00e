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
  static const QString name = QStringLiteral("shuntwright-session");
  static QString connectedTo;
  const QString address = sessionBusAddress();
  if (address == connectedTo && !address.isEmpty()) return QDBusConnection(name);
  QDBusConnection::disconnectFromBus(name);
  connectedTo = address;
  // Never "autolaunch:", which would start a bus of our own.
  if (address.isEmpty() || address.startsWith("autolaunch")) return QDBusConnection(QString());
  return QDBusConnection::connectToBus(address, name);
}

}  // namespace ui

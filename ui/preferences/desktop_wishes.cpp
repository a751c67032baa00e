// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/preferences/desktop_wishes.h"

#include <QCoreApplication>
#include <QDBusArgument>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusVariant>
#include <QMap>
#include <QPointer>
#include <QVariantMap>

#include "ui/notice/session_bus.h"

namespace ui {
namespace {

const QString portalService = QStringLiteral("org.freedesktop.portal.Desktop");
const QString portalPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString settingsInterface = QStringLiteral("org.freedesktop.portal.Settings");
const QString appearanceGroup = QStringLiteral("org.freedesktop.appearance");
const QString interfaceGroup = QStringLiteral("org.gnome.desktop.interface");

template <typename T>
bool changedTo(T& kept, T value) {
  const bool differs = kept != value;
  kept = value;
  return differs;
}

}  // namespace

DesktopWishes& DesktopWishes::instance() {
  static QPointer<DesktopWishes> wishes;
  if (!wishes) wishes = new DesktopWishes(qApp);
  return *wishes;
}

void DesktopWishes::ask() {
  QDBusConnection bus = sessionBus();
  if (!bus.isConnected() || bus.name() == m_bus) return;
  m_bus = bus.name();
  qRegisterMetaType<QDBusVariant>(
      "QDBusVariant");  // else the slot is not found in a program that has seen none
  bus.connect({}, portalPath, settingsInterface, "SettingChanged", this,
              SLOT(follow(QString, QString, QDBusVariant)));
  QDBusMessage call = QDBusMessage::createMethodCall(portalService, portalPath, settingsInterface, "ReadAll");
  call << QStringList{appearanceGroup, interfaceGroup};
  auto* asked = new QDBusPendingCallWatcher(bus.asyncCall(call), this);
  connect(asked, &QDBusPendingCallWatcher::finished, this, [this, asked] {
    asked->deleteLater();
    const QDBusMessage reply = asked->reply();
    if (reply.type() != QDBusMessage::ReplyMessage || reply.arguments().isEmpty()) return;
    const auto groups = qdbus_cast<QMap<QString, QVariantMap>>(reply.arguments().first());
    bool differs = false;
    for (auto group = groups.begin(); group != groups.end(); ++group)
      for (auto entry = group->begin(); entry != group->end(); ++entry)
        differs |= take(group.key(), entry.key(), entry.value());
    if (differs) emit changed();
  });
}

bool DesktopWishes::take(const QString& group, const QString& key, const QVariant& value) {
  if (group == appearanceGroup && key == "color-scheme") {
    // The portal's numbers: 0 no preference, 1 prefer dark, 2 prefer light.
    const uint wanted = value.toUInt();
    return changedTo(m_scheme, wanted == 1 ? Scheme::Dark : wanted == 2 ? Scheme::Light : Scheme::NoWish);
  }
  if (group == appearanceGroup && key == "reduced-motion")
    return changedTo(m_reducedMotion, value.toUInt() == 1);
  if (group == interfaceGroup && key == "enable-animations") return changedTo(m_animations, value.toBool());
  return false;
}

void DesktopWishes::follow(const QString& group, const QString& key, const QDBusVariant& value) {
  if (take(group, key, value.variant())) emit changed();
}

}  // namespace ui

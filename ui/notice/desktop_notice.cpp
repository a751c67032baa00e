// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/notice/desktop_notice.h"

#include <QApplication>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QPointer>
#include <QVariantMap>
#include <QWidget>

#include "ui/notice/session_bus.h"

namespace ui {
namespace {

const QString notifyService = QStringLiteral("org.freedesktop.Notifications");
const QString notifyPath = QStringLiteral("/org/freedesktop/Notifications");

QDBusMessage notifyCall(const QString& method) {
  return QDBusMessage::createMethodCall(notifyService, notifyPath, notifyService, method);
}

}  // namespace

DesktopNotice& DesktopNotice::instance() {
  static QPointer<DesktopNotice> notice;
  if (!notice) notice = new DesktopNotice(qApp);
  return *notice;
}

void DesktopNotice::show(const QString& title, const QString& sentence) {
  const QDBusConnection bus = sessionBus();
  if (!bus.isConnected()) return;
  listen();
  // Whether "<" is markup depends on who shows it.
  auto* asked = new QDBusPendingCallWatcher(bus.asyncCall(notifyCall("GetCapabilities")), this);
  connect(asked, &QDBusPendingCallWatcher::finished, this, [this, title, sentence, asked] {
    const QDBusPendingReply<QStringList> capabilities = *asked;
    asked->deleteLater();
    if (capabilities.isValid()) send(title, sentence, capabilities.value().contains("body-markup"));
  });
}

void DesktopNotice::send(const QString& title, const QString& sentence, bool understandsMarkup) {
  constexpr qint32 asTheDesktopLikes = -1;
  QVariantMap hints;
  hints["desktop-entry"] = QGuiApplication::desktopFileName();
  QDBusMessage call = notifyCall("Notify");
  call << QApplication::applicationName() << m_shown << QGuiApplication::desktopFileName() << title
       << (understandsMarkup ? sentence.toHtmlEscaped() : sentence)
       << QStringList{"default", tr("Show the window")} << hints << asTheDesktopLikes;
  auto* sent = new QDBusPendingCallWatcher(sessionBus().asyncCall(call), this);
  connect(sent, &QDBusPendingCallWatcher::finished, this, [this, sent] {
    const QDBusPendingReply<quint32> id = *sent;
    sent->deleteLater();
    if (id.isValid()) m_shown = id.value();
  });
}

void DesktopNotice::listen() {
  QDBusConnection bus = sessionBus();
  if (bus.name() == m_bus) return;
  m_bus = bus.name();
  m_shown = 0;
  bus.connect({}, notifyPath, notifyService, "ActionInvoked", this, SLOT(activate(quint32, QString)));
}

void DesktopNotice::activate(quint32 id, const QString& action) {
  if (id != m_shown || action != "default") return;
  for (QWidget* window : QApplication::topLevelWidgets())
    if (window->isVisible() && window->objectName() == "mainWindow") {
      window->raise();
      window->activateWindow();
    }
}

}  // namespace ui

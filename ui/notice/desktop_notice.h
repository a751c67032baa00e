// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

namespace ui {

/// Shows sentences through the desktop (Desktop Notifications Specification 1.2, the interface
/// org.freedesktop.Notifications on the session bus). Nothing waits for the desktop, and where there is no
/// bus or nobody who shows notices, nothing happens.
class DesktopNotice : public QObject {
  Q_OBJECT

 public:
  static DesktopNotice& instance();

  /// Plain text: what looks like markup is shown as it is, since names from files stand in it.
  void show(const QString& title, const QString& sentence);

 private:
  DesktopNotice(QObject* parent) : QObject(parent) {}
  void send(const QString& title, const QString& sentence, bool understandsMarkup);
  void listen();

  quint32 m_shown = 0;  ///< id of the latest; the next one takes its place, so that they never pile up
  QString m_bus;        ///< whose signals are heard

 private slots:
  /// A press on the notice brings the window to the front.
  void activate(quint32 id, const QString& action);
};

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDBusVariant>
#include <QObject>
#include <QString>

namespace ui {

/// What the desktop asks of every program: light or dark, and whether things may move. Read from the settings
/// portal on the session bus (interface org.freedesktop.portal.Settings: "color-scheme" and "reduced-motion"
/// of org.freedesktop.appearance, else "enable-animations" of org.gnome.desktop.interface), and followed
/// while the program runs. Without a bus or a portal nothing is asked.
class DesktopWishes : public QObject {
  Q_OBJECT

 public:
  enum class Scheme { NoWish, Dark, Light };

  static DesktopWishes& instance();

  /// Asks the portal of the bus that there is now; the answer comes later, as `changed`.
  void ask();
  Scheme scheme() const { return m_scheme; }
  bool lessMotion() const { return m_reducedMotion || !m_animations; }

 signals:
  void changed();

 private:
  explicit DesktopWishes(QObject* parent) : QObject(parent) {}
  /// True when it is another value than before.
  bool take(const QString& group, const QString& key, const QVariant& value);

  QString m_bus;  ///< whose signals are heard
  Scheme m_scheme = Scheme::NoWish;
  bool m_reducedMotion = false, m_animations = true;

 private slots:
  void follow(const QString& group, const QString& key, const QDBusVariant& value);
};

}  // namespace ui

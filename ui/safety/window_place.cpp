// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/window_place.h"

#include <QCryptographicHash>
#include <QGuiApplication>
#include <QMainWindow>
#include <QScreen>
#include <QSplitter>
#include <algorithm>

#include "ui/state_file.h"

namespace ui {
namespace {

constexpr int mostPlaces = 50;
constexpr int titleBar_px = 36;  // has to be on the screen too, and is not part of a window's geometry

QString placesName() { return QStringLiteral("places"); }

/// Paths hold characters that mean something in keys.
QString placeKey(const QString& path) {
  return QString::fromLatin1(
      QCryptographicHash::hash(path.toUtf8(), QCryptographicHash::Sha256).toHex().left(16));
}

QList<QRect> roomOfScreens() {
  QList<QRect> rooms;
  for (const QScreen* screen : QGuiApplication::screens()) rooms << screen->availableGeometry();
  return rooms;
}

qint64 distance2(const QRect& a, const QRect& b) {
  const QPoint between = a.center() - b.center();
  return qint64(between.x()) * between.x() + qint64(between.y()) * between.y();
}

QList<QSplitter*> namedSplitters(const QMainWindow& window) {
  QList<QSplitter*> splitters = window.findChildren<QSplitter*>();
  splitters.removeIf([](const QSplitter* splitter) { return splitter->objectName().isEmpty(); });
  return splitters;
}

}  // namespace

void rememberPlace(const QString& path, const Place& place) {
  QSettings file = stateFile(placesName());
  const QString key = placeKey(path);
  QStringList order = file.value("order").toStringList();
  order.removeAll(key);
  order.prepend(key);
  while (order.size() > mostPlaces) file.remove(order.takeLast());
  file.setValue("order", order);
  file.beginGroup(key);
  file.setValue("channel", place.channel);
  file.setValue("check", place.check);
  file.setValue("step", place.step);
  file.setValue("view", place.view);
  file.setValue("bridgePage", place.bridgePage);
  file.setValue("outcomePage", place.outcomePage);
  file.setValue("sequencePage", place.sequencePage);
}

std::optional<Place> rememberedPlace(const QString& path) {
  QSettings file = stateFile(placesName());
  const QString key = placeKey(path);
  if (!file.childGroups().contains(key)) return std::nullopt;
  file.beginGroup(key);
  return Place{.channel = file.value("channel").toString(),
               .check = file.value("check").toString(),
               .step = file.value("step", -1).toInt(),
               .view = file.value("view").toString(),
               .bridgePage = file.value("bridgePage").toInt(),
               .outcomePage = file.value("outcomePage").toInt(),
               .sequencePage = file.value("sequencePage").toInt()};
}

QString lastDocument() { return stateFile(placesName()).value("last").toString(); }

void rememberLastDocument(const QString& path) {
  if (path == lastDocument()) return;  // saved once more: no news, and the window waits for the disk
  QSettings file = stateFile(placesName());
  path.isEmpty() ? file.remove("last") : file.setValue("last", path);
}

QRect onScreen(QRect window, const QList<QRect>& screens) {
  if (screens.isEmpty()) return window;
  const QRect top(window.left(), window.top() - titleBar_px, window.width(), 2 * titleBar_px);
  const auto holdsTop = [&](const QRect& screen) {
    return screen.top() <= top.top() && screen.intersected(top).width() >= std::min(200, window.width()) &&
           screen.bottom() >= top.bottom();
  };
  if (std::any_of(screens.begin(), screens.end(), holdsTop)) return window;
  const QRect nearest = *std::min_element(
      screens.begin(), screens.end(),
      [&](const QRect& a, const QRect& b) { return distance2(a, window) < distance2(b, window); });
  const QRect room = nearest.adjusted(0, titleBar_px, 0, 0);
  window.setSize(window.size().boundedTo(room.size()));
  window.moveLeft(std::clamp(window.left(), room.left(), room.right() - window.width() + 1));
  window.moveTop(std::clamp(window.top(), room.top(), room.bottom() - window.height() + 1));
  return window;
}

void rememberWindow(const QMainWindow& window) {
  QSettings file = stateFile(placesName());
  file.setValue("window/rect", window.normalGeometry());
  file.setValue("window/maximized", window.isMaximized());
  for (const QSplitter* splitter : namedSplitters(window)) {
    const QString key = "splitters/" + splitter->objectName();
    const QList<int> now = splitter->sizes();
    QStringList sizes = file.value(key).toStringList();
    while (sizes.size() < now.size()) sizes << "0";
    for (int k = 0; k < now.size(); ++k)
      if (now[k] > 0) sizes[k] = QString::number(now[k]);
    file.setValue(key, sizes);
  }
}

void restoreWindow(QMainWindow& window) {
  QSettings file = stateFile(placesName());
  const QRect rect = file.value("window/rect").toRect();
  if (rect.isValid()) window.setGeometry(onScreen(rect, roomOfScreens()));
  if (file.value("window/maximized").toBool()) window.setWindowState(Qt::WindowMaximized);
  for (QSplitter* splitter : namedSplitters(window)) {
    const QStringList sizes = file.value("splitters/" + splitter->objectName()).toStringList();
    if (sizes.size() != splitter->count()) continue;
    constexpr int neverSeen_px = 130;  // of a part that has been put away as long as anybody remembers
    QList<int> wanted;
    for (const QString& size : sizes) wanted << (size.toInt() > 0 ? size.toInt() : neverSeen_px);
    splitter->setSizes(wanted);
  }
}

}  // namespace ui

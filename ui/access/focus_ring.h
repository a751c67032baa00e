// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFocusFrame>
#include <QObject>
#include <QPointer>

namespace ui {

/// A line of three pixels around whatever has the keyboard, however that paints itself: WCAG 2.2, 2.4.7 and
/// 2.4.13 (a ring at least two pixels thick, 3 to 1 against the same pixels without it; the third lies on the
/// frame).
class FocusRing : public QObject {
  Q_OBJECT

 public:
  static constexpr int thickness_px = 3;

  explicit FocusRing(QObject* parent);

 private:
  void follow(QWidget* focused);

  QPointer<QWidget> m_ring;
};

/// Takes the ring out of a picture that is made of `widget`, as long as this lives.
class WithoutRing {
 public:
  explicit WithoutRing(const QWidget& widget);
  ~WithoutRing();
  WithoutRing(const WithoutRing&) = delete;
  WithoutRing& operator=(const WithoutRing&) = delete;

 private:
  QList<QPointer<QFocusFrame>> m_rings;
};

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace ui {

/// Has the whole program look as the preferences say: colours and size of text, from when it is made and at
/// each change of them or of what the desktop asks. Make it before the first widget, so that nothing is laid
/// out twice.
class Appearance : public QObject {
  Q_OBJECT

 public:
  explicit Appearance(QObject* parent = nullptr);

 private:
  void follow();
};

/// How many times larger text is now than the desktop's; for what is measured in pixels around it.
double textScale();
/// A length that was chosen for text of the usual size, for the text as it is.
int atTextSize(int px);

/// The next larger or smaller size of text that is remembered, by +1 or -1; the usual one by 0.
void stepTextSize(int direction);

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/safety/disk_watch.h"
#include "ui/safety/safety_frame.h"

class QLabel;

namespace ui {

/// Says that the document's file was changed, or is gone, and what can be done. Shown only then.
class DiskBar : public SafetyFrame {
  Q_OBJECT

 public:
  explicit DiskBar(QWidget* parent = nullptr);

  /// `unsaved`: the window has changes of its own.
  void tell(DiskWatch::Standing standing, const QString& fileName, bool unsaved);

 signals:
  void differencesWanted();
  void loadWanted();
  void keepWanted();
  void saveWanted();

 private:
  QLabel* m_text;
  QPushButton* m_differences;
  QPushButton* m_load;
  QPushButton* m_keep;
  QPushButton* m_save;
};

}  // namespace ui

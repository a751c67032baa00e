// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QTemporaryDir>

#include "core/units/result.h"

class QPrinter;
class QWidget;

namespace ui {

/// The dialog for printing can print into a file. A printer writes such a file in place and does not tell
/// that the disk is full. Between construction and `finish` it prints into a temporary one; `finish` puts
/// that under the name that was chosen, whole or not at all. On paper nothing is changed. Painting has ended
/// by then.
class PrintedFile {
 public:
  explicit PrintedFile(QPrinter& printer);

  core::Result<void> finish();
  /// The same; over `parent` a box says why it failed.
  void finishOrSay(QWidget* parent);

 private:
  QPrinter& m_printer;
  QString m_path;  ///< empty on paper
  QTemporaryDir m_folder;
};

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QFutureWatcher>

#include "core/document/document.h"
#include "core/units/result.h"

class QPlainTextEdit;

namespace ui {

/// What a file on the disk has otherwise than the document in the window, line by line in words. Read and
/// compared on a worker.
class DifferencesDialog : public QDialog {
  Q_OBJECT

 public:
  DifferencesDialog(const core::Document& open, const QString& path, QWidget* parent = nullptr);

 private:
  using Lines = core::Result<std::vector<std::string>>;
  void fill(const Lines& lines);

  QPlainTextEdit* m_text;
  QFutureWatcher<Lines> m_comparing;
};

}  // namespace ui

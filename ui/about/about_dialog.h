// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QTabWidget;

namespace ui {

/// What to send with a fault report: versions, system, screen, language. Nothing of a document and no names.
QString faultReportWords();

/// What the program is: its version and licence, the libraries it is made of with theirs, the licence in
/// full.
class AboutDialog : public QDialog {
  Q_OBJECT

 public:
  explicit AboutDialog(QWidget* parent = nullptr);

 signals:
  void cautionsWanted();
  /// Something was done that is to be told.
  void said(const QString& sentence);

 private:
  QWidget* programPage();
  QWidget* librariesPage();
  QWidget* licencePage();
  void copyForFaultReport();
};

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/report/template_store.h"

class QAction;
class QLabel;
class QListWidget;

namespace ui {

/// The ready templates and the user's own, with what can be done to these.
class TemplateList : public QWidget {
  Q_OBJECT

 public:
  explicit TemplateList(QWidget* parent = nullptr);

  core::ReportTemplate chosen() const;
  bool isOwn() const;
  /// The first one when there is none of that name.
  void choose(const QString& name);

  /// The list says whether what is wanted now is still what the chosen one says.
  void setWanted(const core::ReportTemplate& wanted);
  /// Keeps what is wanted: in the chosen one if it is the user's own, else as a new one.
  void keep();
  void duplicate();
  void rename(const QString& name);
  void remove();
  void importFrom(const QString& path);
  void exportTo(const QString& path);

 signals:
  void chosenChanged();
  void refused(const QString& reason);

 private:
  void fill(const QString& chosen);
  void showWhatCanBeDone();
  void addOwn(core::ReportTemplate made);
  void askForName();
  void askBeforeRemoving();
  void askForImport();
  void askForExport();

  TemplateStore m_store;
  core::ReportTemplate m_wanted;
  QListWidget* m_list;
  QLabel* m_purpose;
  QAction *m_keep, *m_rename, *m_remove;
  bool m_isFilling = false;
};

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/report/report_template.h"
#include "core/units/result.h"

namespace ui {

/// The user's own report templates: a file each in the folder of what the program remembers for this user
/// (see state_file.h), so that they can be handed on. Their names are unlike each other and unlike the ready
/// ones, capital and small letters alike.
class TemplateStore {
 public:
  TemplateStore();

  const std::vector<core::ReportTemplate>& own() const { return m_own; }
  /// Files of the folder that could not be read, with the reason.
  const QStringList& troubles() const { return m_troubles; }
  bool isTaken(const QString& name) const;
  /// `name`, or that with a number, so that it is not taken.
  QString freeName(const QString& name) const;

  /// Adds it under a name that is not taken; fails when it cannot be written.
  core::Result<void> add(const core::ReportTemplate& made);
  /// Puts `made` in the place of the one called `name`, under a new name perhaps.
  core::Result<void> replace(const QString& name, const core::ReportTemplate& made);
  core::Result<void> remove(const QString& name);

 private:
  void read();
  QString fileOf(const QString& name) const;

  QString m_folder;
  std::vector<core::ReportTemplate> m_own;
  std::vector<QString> m_files;  ///< of `m_own`
  QStringList m_troubles;
};

/// A template of a file, refused with the reason and what may be done.
core::Result<core::ReportTemplate> openTemplate(const QString& path);

inline constexpr const char* templateSuffix = "bridgereport";

}  // namespace ui

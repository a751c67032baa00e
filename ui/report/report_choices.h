// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <map>

#include "core/document/document.h"
#include "core/report/report_template.h"

class QCheckBox;
class QComboBox;
class QListWidget;

namespace ui {

/// The form of a template: a check box for each part, which channels, which checks, language and numbers.
class ReportChoices : public QWidget {
  Q_OBJECT

 public:
  ReportChoices(const core::Document& document, std::size_t channel, QWidget* parent = nullptr);

  /// `chosen` with its name; changes nothing about which channels are ticked.
  void show(const core::ReportTemplate& chosen);
  /// What is shown, under the name that was given.
  const core::ReportTemplate& content() const { return m_content; }
  /// Channels that are ticked, rising; counted only where the template says so.
  std::vector<std::size_t> channels() const;

 signals:
  void changed();

 private:
  QWidget* makeParts();
  QWidget* makeChannels(const core::Document& document, std::size_t channel);
  QWidget* makeWriting();
  void take();

  core::ReportTemplate m_content;
  std::map<core::ReportPart, QCheckBox*> m_parts;
  QComboBox* m_which;
  QListWidget* m_list;
  QCheckBox* m_latest;
  QComboBox* m_language;
  QCheckBox* m_localNumbers;
  bool m_isShowing = false;
};

}  // namespace ui

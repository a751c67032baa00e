// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QGridLayout;
class QGroupBox;
class QToolButton;

namespace ui {

/// A group of fields that few channels need: one line until it is opened by its heading, by mouse or
/// keyboard. It opens by itself when the channel shown comes to hold something in it.
class FoldedGroup : public QWidget {
  Q_OBJECT

 public:
  FoldedGroup(const QString& title, const QString& objectName, QWidget* parent = nullptr);

  QGridLayout* form() const { return m_form; }
  /// What the heading says behind the title while the group is closed.
  void setSummary(const QString& summary);
  void setHolds(bool something);
  void open() { setOpen(true); }

 private:
  void setOpen(bool open);
  void follow();

  QString m_title;
  QString m_summary;
  bool m_holds = false;
  bool m_open = false;
  QToolButton* m_heading;
  QGroupBox* m_body;
  QGridLayout* m_form;
};

}  // namespace ui

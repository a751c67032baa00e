// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QPointer>

#include "ui/access/twin.h"

class QComboBox;
class QTableWidget;

namespace ui {

/// A picture on view and its name, as the dialog lists it.
struct ShownTwin {
  QString name;
  QPointer<QWidget> picture;  ///< a Twin
};

/// Every picture that is on view in `window` and shows something, as they are reached by Tab; the one with
/// the keyboard first. Pictures of one name are numbered.
QList<ShownTwin> twinsIn(const QWidget& window);

/// The pictures on view, one at a time as a table that can be walked, read and copied.
class TwinDialog : public QDialog {
  Q_OBJECT

 public:
  /// Of `window`, which must show a picture.
  explicit TwinDialog(const QWidget& window, QWidget* parent = nullptr);

 private:
  void showPicture();
  void copy() const;

  QList<ShownTwin> m_twins;
  QComboBox* m_pictures;
  QTableWidget* m_table;
};

/// `table` with tabs and lines, as spreadsheets take it.
QString spreadsheetText(const TwinTable& table);

}  // namespace ui

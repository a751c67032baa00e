// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QTimer>
#include <memory>
#include <stop_token>

#include "ui/report/report_files.h"
#include "ui/session.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QPrinter;
class QToolButton;

namespace ui {

class CountEdit;
class BookMaker;
class PagePreview;
class ReportChoices;
class TemplateList;

/// Chooses what a report says (a ready template or one of the user's own, which can be edited and saved), of
/// which channels, in which language and format; previews it page by page; prints it; writes it with progress
/// and cancel.
class ReportDialog : public QDialog {
  Q_OBJECT

 public:
  /// `suggested` is the path to offer, without ending.
  ReportDialog(Session& session, const QString& suggested, QWidget* parent = nullptr);
  ~ReportDialog() override;

  core::ReportOrder order() const;
  /// In the format of its ending, which it gets when it has none; false when it was not written.
  bool writeTo(const QString& path);
  /// The pages of the preview on `printer`, those it is asked for.
  bool printOn(QPrinter& printer);
  /// Ends what is being written.
  void cancelWriting();
  bool isWriting() const { return m_isWriting; }

  void reject() override;

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);
  void previewReady();  ///< all pages can be turned to
  void writingCancelled();

 private:
  QWidget* makeLeft();
  QWidget* makeRight();
  QLayout* makeTurning();
  QLayout* makeButtons();
  ReportFormat format() const;
  void changeOrder();
  void makeBook();
  void showPageNumber();
  void showProgress(double share);
  void begin(const QString& what);
  void end();
  bool tell(const QString& path, const core::Result<void>& written);
  bool finishBook();
  void askForFile();
  void askForPrinter();

  Session& m_session;
  const core::Document m_document;  ///< as it was when the dialog was opened, which is modal
  QString m_suggested;
  std::unique_ptr<BookMaker> m_maker;
  TemplateList* m_templates;
  ReportChoices* m_choices;
  QComboBox* m_format;
  PagePreview* m_preview;
  CountEdit* m_page;
  QLabel *m_pages, *m_state;
  QProgressBar* m_progress;
  QPushButton *m_cancel, *m_save, *m_print, *m_close;
  QWidget *m_left, *m_right;
  QTimer m_soon;  ///< until the preview follows what was chosen
  std::stop_source m_stop;
  bool m_isWriting = false;
};

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/differences_dialog.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QPlainTextEdit>
#include <QVBoxLayout>
#include <QtConcurrentRun>

#include "core/record/revisions.h"
#include "ui/document_file.h"
#include "ui/parts.h"
#include "ui/theme.h"

namespace ui {

DifferencesDialog::DifferencesDialog(const core::Document& open, const QString& path, QWidget* parent)
    : QDialog(parent), m_text(new QPlainTextEdit) {
  setObjectName("differencesDialog");
  setWindowTitle(tr("What differs"));
  resize(640, 360);
  auto* layout = new QVBoxLayout(this);
  auto* about = plainLabel("differencesAbout");
  about->setText(tr("From what is open in this window to %1 on the disk:").arg(QFileInfo(path).fileName()));
  m_text->setObjectName("differencesText");
  m_text->setAccessibleName(tr("What differs"));
  m_text->setReadOnly(true);
  m_text->setTabChangesFocus(true);
  m_text->setPlainText(tr("Being compared …"));
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  layout->addWidget(about);
  layout->addWidget(m_text, 1);
  layout->addWidget(buttons);
  connect(&m_comparing, &QFutureWatcherBase::finished, this, [this] { fill(m_comparing.result()); });
  m_comparing.setFuture(QtConcurrent::run([open, path]() -> Lines {
    const auto onDisk = openDocument(path);
    if (!onDisk) return onDisk.error();
    return core::changesBetween(open, *onDisk);
  }));
}

void DifferencesDialog::fill(const Lines& lines) {
  if (!lines) return m_text->setPlainText(tr("It cannot be compared: %1").arg(toText(lines.error())));
  QStringList text;
  for (const std::string& line : *lines) text << toQString(line);
  m_text->setPlainText(text.isEmpty()
                           ? tr("Nothing that counts: only how the file is written, or its history.")
                           : text.join('\n'));
}

}  // namespace ui

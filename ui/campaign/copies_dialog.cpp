// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/copies_dialog.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/campaign/numbering.h"
#include "ui/fields/count_edit.h"
#include "ui/parts.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int mostCopies = 1000;
constexpr int namesInFull = 8;  ///< more are shown by the first ones and the last

}  // namespace

CopiesDialog::CopiesDialog(Session& session, QWidget* parent)
    : QDialog(parent), m_session(session), m_count(new CountEdit), m_names(plainLabel("copiesNames")) {
  setObjectName("copiesDialog");
  setWindowTitle(tr("Several copies"));
  auto* column = new QVBoxLayout(this);
  auto* about = plainLabel("copiesAbout");
  about->setText(tr("Copies of %1 are put behind it: bridge, plan, limits and group, without checks. Names, "
                    "recording columns and pins are counted up.")
                     .arg(toQString(session.channel()->name)));
  column->addWidget(about);
  auto* line = new QHBoxLayout;
  auto* label = new QLabel(tr("&How many"));
  label->setBuddy(m_count);
  m_count->setObjectName("copiesCount");
  m_count->setAccessibleName(tr("How many copies"));
  m_count->setRange(1, mostCopies);
  line->addWidget(label);
  line->addWidget(m_count);
  line->addStretch(1);
  column->addLayout(line);
  m_names->setMinimumWidth(420);
  m_names->setMinimumHeight(3 * m_names->fontMetrics().lineSpacing());
  m_names->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  column->addWidget(m_names, 1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
  buttons->button(QDialogButtonBox::Ok)->setObjectName("copiesOk");
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  column->addWidget(buttons);
  connect(m_count, &CountEdit::valueChanged, this, &CopiesDialog::preview);
  m_count->selectAll();
  preview();
}

QStringList CopiesDialog::names() const {
  QStringList names;
  for (const std::string& name : core::namesAfter(m_session.document(), m_session.channel()->name,
                                                  static_cast<std::size_t>(m_count->value())))
    names << toQString(name);
  return names;
}

void CopiesDialog::preview() {
  QStringList shown = names();
  if (shown.size() > namesInFull) {
    const QString last = shown.last();
    shown = shown.mid(0, namesInFull - 2);
    shown << QStringLiteral("…") << last;
  }
  m_names->setText(tr("New channels: %1").arg(shown.join(", ")));
}

void CopiesDialog::accept() {
  if (!m_count->isReady()) return;
  const QStringList added = names();
  const std::size_t at = *m_session.selection().channel;
  m_session.edit(added.size() == 1 ? tr("Copy channel") : tr("Add %Ln copies", nullptr, int(added.size())),
                 core::withChannelCopies(m_session.document(), at, static_cast<std::size_t>(added.size())));
  m_session.selectChannel(at + 1);
  emit said(added.size() == 1 ? tr("Added %1.").arg(added.first())
                              : tr("Added %Ln channel(s), %1 to %2.", nullptr, int(added.size()))
                                    .arg(added.first(), added.last()));
  QDialog::accept();
}

}  // namespace ui

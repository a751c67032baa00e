// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/edit_many_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrent>
#include <algorithm>

#include "core/units/language.h"
#include "ui/campaign/many_fields.h"
#include "ui/parts.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int typing_ms = 150;
constexpr std::size_t mostRows = 1000;  ///< what nobody reads to its end is not listed to its end

}  // namespace

EditManyDialog::EditManyDialog(Session& session, std::vector<std::size_t> channels, QWidget* parent)
    : QDialog(parent),
      m_session(session),
      m_to(std::move(channels)),
      m_fields(new ManyFields(session.document(), m_to)),
      m_rows(new QTableWidget),
      m_summary(plainLabel("manySummary")) {
  setObjectName("editManyDialog");
  setWindowTitle(tr("Edit %Ln channel(s)", nullptr, int(m_to.size())));
  resize(760, 560);
  auto* column = new QVBoxLayout(this);
  column->addWidget(m_fields);
  m_rows->setObjectName("manyRows");
  m_rows->setAccessibleName(tr("What becomes of each channel"));
  m_rows->setColumnCount(2);
  m_rows->setHorizontalHeaderLabels({tr("Channel"), tr("What becomes of it")});
  m_rows->horizontalHeader()->setStretchLastSection(true);
  m_rows->horizontalHeader()->setHighlightSections(false);
  m_rows->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  m_rows->verticalHeader()->hide();
  m_rows->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  m_rows->verticalHeader()->setDefaultSectionSize(m_rows->fontMetrics().height() + 9);
  m_rows->setColumnWidth(0, 160);
  m_rows->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_rows->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_rows->setTabKeyNavigation(false);
  m_rows->setWordWrap(false);
  column->addWidget(m_rows, 1);
  column->addWidget(embolden(m_summary));
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
  m_ok = buttons->button(QDialogButtonBox::Ok);
  m_ok->setObjectName("manyOk");
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  column->addWidget(buttons);
  m_later.setSingleShot(true);
  m_later.setInterval(typing_ms);
  connect(&m_later, &QTimer::timeout, this, &EditManyDialog::workOut);
  connect(m_fields, &ManyFields::changed, this, [this] {
    m_outcome.reset();
    m_ok->setEnabled(static_cast<bool>(m_fields->act()));
    m_later.start();
  });
  connect(&m_watcher, &QFutureWatcherBase::finished, this, [this] {
    if (m_later.isActive()) return;  // something else is asked by now
    m_outcome = m_watcher.result();
    showOutcome();
  });
  workOut();
}

EditManyDialog::~EditManyDialog() { m_watcher.waitForFinished(); }

void EditManyDialog::workOut() {
  const core::Result<ManyFields::Act> act = m_fields->act();
  if (!act) {
    m_outcome.reset();
    m_rows->setRowCount(0);
    m_summary->setText(toText(act.error()));
    m_ok->setEnabled(false);
    return;
  }
  m_watcher.setFuture(QtConcurrent::run(
      [document = m_session.document(), to = m_to, act = *act, language = core::currentLanguage()] {
        const core::LanguageScope scope(language);
        return std::make_shared<const Outcome>(act(document, to));
      }));
}

void EditManyDialog::showOutcome() {
  if (!*m_outcome) {
    m_rows->setRowCount(0);
    m_summary->setText(toText(m_outcome->error()));
    m_ok->setEnabled(false);
    return;
  }
  const core::BatchEdit& edit = **m_outcome;
  const std::size_t changed = core::changedCount(edit), refused = core::refusals(edit).size();
  const std::size_t same = edit.outcomes.size() - changed - refused;
  QStringList words{tr("%Ln channel(s) change.", nullptr, int(changed))};
  if (same > 0) words << tr("%Ln stay as they are.", nullptr, int(same));
  if (refused > 0) words << tr("%Ln refuse.", nullptr, int(refused));
  m_summary->setText(words.join(" "));
  m_ok->setEnabled(changed > 0);
  showRows();
}

/// Those that refuse come first, as somebody has to read them.
void EditManyDialog::showRows() {
  const core::BatchEdit& edit = **m_outcome;
  const Colours colours = coloursFor(palette());
  std::vector<const core::BatchOutcome*> order;
  for (const core::BatchOutcome& outcome : edit.outcomes) order.push_back(&outcome);
  std::stable_partition(order.begin(), order.end(), [](const auto* outcome) { return outcome->refused; });
  order.resize(std::min(order.size(), mostRows));
  m_rows->setRowCount(static_cast<int>(order.size()));
  for (int row = 0; const core::BatchOutcome* outcome : order) {
    const QString name = toQString(m_session.document().channels[outcome->channel]->name);
    QString words = toQString(outcome->sentence);
    if (words.startsWith(name + ": ")) words.remove(0, name.size() + 2);
    if (outcome->refused) words = tr("refused: %1").arg(words);
    auto* item = new QTableWidgetItem(words);
    item->setToolTip("<span>" + words.toHtmlEscaped() + "</span>");
    item->setForeground(outcome->refused ? colours.fail : outcome->changed ? colours.text : colours.quiet);
    m_rows->setItem(row, 0, new QTableWidgetItem(name));
    m_rows->setItem(row++, 1, item);
  }
}

/// Return right behind the last letter means what was typed, though it was not shown yet what becomes of it.
void EditManyDialog::accept() {
  if (m_later.isActive()) {
    m_later.stop();
    workOut();
  }
  if (!m_outcome && m_fields->act()) {
    m_watcher.waitForFinished();
    m_outcome = m_watcher.result();
  }
  if (!m_outcome || !*m_outcome) return;
  const core::BatchEdit& edit = **m_outcome;
  const std::size_t changed = core::changedCount(edit), refused = core::refusals(edit).size();
  if (changed == 0) return;
  m_session.edit(changed == 1 ? m_fields->label()
                              : tr("%1 in %Ln channel(s)", nullptr, int(changed)).arg(m_fields->label()),
                 edit.document);
  const QString told = tr("Changed %Ln channel(s).", nullptr, int(changed));
  emit said(refused == 0 ? told : told + " " + tr("%Ln refused.", nullptr, int(refused)));
  QDialog::accept();
}

}  // namespace ui

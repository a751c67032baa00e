// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/access/twin_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace ui {
namespace {

constexpr QSize usualSize(720, 480);
constexpr int widestColumn_px = 320;  ///< sentences are wrapped beyond

/// A tab or a line's end inside of a cell would be taken for the next cell.
QString inOneCell(QString text) { return text.replace('\t', ' ').replace('\n', ' '); }

}  // namespace

QList<ShownTwin> twinsIn(const QWidget& window) {
  QList<ShownTwin> found;
  for (QWidget* widget : window.findChildren<QWidget*>()) {
    const auto* picture = dynamic_cast<const Twin*>(widget);
    if (!picture || !widget->isVisibleTo(&window) || picture->twin().rows.isEmpty()) continue;
    found.append({widget->accessibleName(), widget});
  }
  const auto isFocused = [](const ShownTwin& twin) { return twin.picture->hasFocus(); };
  std::stable_partition(found.begin(), found.end(), isFocused);
  for (qsizetype k = 0; k < found.size(); ++k) {
    int number = 1;
    for (qsizetype other = k + 1; other < found.size(); ++other)
      if (found[other].name == found[k].name) found[other].name += QString(" (%1)").arg(++number);
  }
  return found;
}

TwinDialog::TwinDialog(const QWidget& window, QWidget* parent) : QDialog(parent), m_twins(twinsIn(window)) {
  setObjectName("twinDialog");
  setWindowTitle(tr("Pictures as tables"));
  resize(usualSize);
  auto* layout = new QVBoxLayout(this);
  auto* label = new QLabel(tr("&Picture"));
  m_pictures = new QComboBox;
  m_pictures->setObjectName("twinPicture");
  m_pictures->setAccessibleName(tr("Picture"));
  label->setBuddy(m_pictures);
  for (const ShownTwin& twin : m_twins) m_pictures->addItem(twin.name);
  auto* line = new QHBoxLayout;
  line->addWidget(label);
  line->addWidget(m_pictures, 1);
  layout->addLayout(line);
  m_table = new QTableWidget;
  m_table->setObjectName("twinTable");
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->setTabKeyNavigation(false);
  m_table->setWordWrap(true);
  m_table->verticalHeader()->hide();
  m_table->horizontalHeader()->setStretchLastSection(true);
  layout->addWidget(m_table, 1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  auto* copyAll = buttons->addButton(tr("Copy &table"), QDialogButtonBox::ActionRole);
  copyAll->setObjectName("twinCopy");
  layout->addWidget(buttons);
  connect(copyAll, &QPushButton::clicked, this, [this] { copy(); });
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(m_pictures, &QComboBox::currentIndexChanged, this, [this] { showPicture(); });
  showPicture();
}

void TwinDialog::showPicture() {
  const int at = m_pictures->currentIndex();
  if (at < 0 || !m_twins[at].picture) return m_table->setRowCount(0);
  const TwinTable table = dynamic_cast<const Twin*>(m_twins[at].picture.data())->twin();
  m_table->setAccessibleName(m_twins[at].name);
  m_table->setRowCount(static_cast<int>(table.rows.size()));
  m_table->setColumnCount(static_cast<int>(table.columns.size()));
  m_table->setHorizontalHeaderLabels(table.columns);
  for (int row = 0; row < m_table->rowCount(); ++row)
    for (int column = 0; column < m_table->columnCount(); ++column)
      m_table->setItem(row, column, new QTableWidgetItem(table.rows[row][column]));
  m_table->resizeColumnsToContents();
  for (int column = 0; column < m_table->columnCount(); ++column)
    m_table->setColumnWidth(column, std::min(m_table->columnWidth(column), widestColumn_px));
  m_table->resizeRowsToContents();
  m_table->setCurrentCell(0, 0);
}

void TwinDialog::copy() const {
  const int at = m_pictures->currentIndex();
  if (at < 0 || !m_twins[at].picture) return;
  QApplication::clipboard()->setText(
      spreadsheetText(dynamic_cast<const Twin*>(m_twins[at].picture.data())->twin()));
}

QString spreadsheetText(const TwinTable& table) {
  QStringList lines;
  for (const QStringList& row : QList<QStringList>{table.columns} + table.rows) {
    QStringList cells;
    for (const QString& text : row) cells << inOneCell(text);
    lines << cells.join('\t');
  }
  return lines.join('\n') + '\n';
}

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/filter_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QTableView>
#include <QToolButton>

#include "ui/parts.h"
#include "ui/tables/row_order.h"
#include "ui/tables/table_tools.h"

namespace ui {

FilterBar::FilterBar(QWidget* parent)
    : QWidget(parent), m_name(new QLabel), m_words(new QLineEdit), m_count(new QLabel) {
  setObjectName("filterBar");
  setAccessibleName(tr("Filter rows"));
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(8, 3, 6, 3);
  m_name->setTextFormat(Qt::PlainText);
  m_words->setObjectName("filterWords");
  m_words->setAccessibleName(tr("Words that shown rows hold"));
  m_words->setClearButtonEnabled(true);
  m_words->setMaximumWidth(360);
  m_count->setObjectName("filterCount");
  m_count->setTextFormat(Qt::PlainText);
  auto* closer = toolButton("filterClose", tr("Show all rows"), tr("Show all rows again (Escape)"));
  connect(closer, &QToolButton::clicked, this, &FilterBar::close);
  line->addWidget(m_name);
  line->addWidget(m_words, 2);
  line->addWidget(m_count, 3);
  line->addWidget(closer);
  connect(m_words, &QLineEdit::textChanged, this, [this](const QString& words) {
    if (m_view) TableTools::of(*m_view).rows().setWords(words);
  });
  hide();
}

void FilterBar::open(QTableView& view) {
  if (m_view && m_view != &view) {
    disconnect(&TableTools::of(*m_view).rows(), nullptr, this, nullptr);
    TableTools::of(*m_view).rows().setWords({});
  }
  RowOrder& rows = TableTools::of(view).rows();
  if (m_view != &view) {
    connect(&rows, &RowOrder::changed, this, &FilterBar::tell);
    connect(&view, &QObject::destroyed, this, &QWidget::hide);
  }
  m_view = &view;
  m_name->setText(tr("Rows of \"%1\" with").arg(view.accessibleName()));
  m_words->setText(rows.words());
  show();
  m_words->setFocus(Qt::ShortcutFocusReason);
  m_words->selectAll();
  tell();
}

void FilterBar::close() {
  if (m_view) {
    TableTools::of(*m_view).rows().setWords({});
    if (m_view->isVisible()) m_view->setFocus();
  }
  m_words->clear();
  hide();
}

void FilterBar::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return close();
  const bool down = event->key() == Qt::Key_Down || event->key() == Qt::Key_Return;
  if (down && m_view) return m_view->setFocus();
  QWidget::keyPressEvent(event);
}

void FilterBar::tell() {
  if (!m_view) return;
  const QLocale locale;
  const int hidden = TableTools::of(*m_view).rows().leftOut();
  m_count->setText(hidden == 0
                       ? tr("All %Ln row(s) are shown.", nullptr, m_view->model()->rowCount())
                       : tr("%1 of %2 rows are left out.")
                             .arg(locale.toString(hidden), locale.toString(m_view->model()->rowCount())));
}

}  // namespace ui

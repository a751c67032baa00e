// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge_pane.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/access/focus_ring.h"
#include "ui/bridge/output_bar.h"
#include "ui/bridge_view.h"
#include "ui/help/next_steps.h"
#include "ui/outcome/page_button.h"
#include "ui/page_stack.h"
#include "ui/polarity/polarity_panel.h"
#include "ui/whatif/what_if_panel.h"

namespace ui {

BridgePane::BridgePane(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("bridgePane");
  m_stack = new PageStack;
  m_stack->addWidget(drawingPage());
  m_polarity = new PolarityPanel(session);
  m_whatIf = new WhatIfPanel(session);
  m_stack->addWidget(m_polarity);
  m_stack->addWidget(m_whatIf);
  auto* column = new QVBoxLayout(this);
  constexpr int ring = FocusRing::thickness_px;
  column->setContentsMargins(ring, ring, ring, ring);
  column->setSpacing(2);
  column->addWidget(pageButtons());
  column->addWidget(m_stack, 1);
  connect(m_pages, &QButtonGroup::idClicked, m_stack, &QStackedWidget::setCurrentIndex);
  connect(m_polarity, &PolarityPanel::refused, this, &BridgePane::refused);
  connect(m_polarity, &PolarityPanel::said, this, &BridgePane::said);
  connect(m_whatIf, &WhatIfPanel::refused, this, &BridgePane::refused);
  connect(m_whatIf, &WhatIfPanel::said, this, &BridgePane::said);
}

QWidget* BridgePane::drawingPage() {
  auto* page = new QWidget;
  m_view = new BridgeView(m_session);
  m_bar = new OutputBar;
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(m_view, 1);
  column->addWidget(new NextSteps(m_session, NextSteps::Need::Channel));
  column->addWidget(m_bar);
  connect(m_view, &BridgeView::stateShown, this, &BridgePane::showOutput);
  connect(m_view, &BridgeView::refused, this, &BridgePane::refused);
  connect(m_view, &BridgeView::said, this, &BridgePane::said);
  showOutput();
  return page;
}

QWidget* BridgePane::pageButtons() {
  auto* row = new QWidget;
  row->setObjectName("bridgePages");
  row->setAccessibleName(tr("Pages of the bridge"));
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(0);
  m_pages = new QButtonGroup(this);
  const auto add = [&](Page page, const char* name, const QString& text, const QString& tip) {
    auto* button = new PageButton(name, text, tip);
    m_pages->addButton(button, static_cast<int>(page));
    line->addWidget(button);
  };
  add(Page::Drawing, "bridgeAsDrawing", tr("Drawing"), tr("The bridge, its leads and shunts (Ctrl+6)"));
  add(Page::Polarity, "bridgeAsPolarity", tr("Polarity map"),
      tr("What a shunt would do at every place (Ctrl+7)"));
  add(Page::WhatIf, "bridgeAsWhatIf", tr("What if"), tr("What a fault would do to the readings (Ctrl+8)"));
  m_pages->button(static_cast<int>(Page::Drawing))->setChecked(true);
  line->addStretch(1);
  return row;
}

void BridgePane::showPage(Page page) {
  m_pages->button(static_cast<int>(page))->setChecked(true);
  m_stack->setCurrentIndex(static_cast<int>(page));
}

BridgePane::Page BridgePane::page() const { return static_cast<Page>(m_stack->currentIndex()); }

void BridgePane::showOutput() {
  const BridgeState* state = m_view->stateNow();
  if (!state) return m_bar->show({}, core::Polarity::None, core::Output(0));
  m_bar->show(state->output, state->polarity, largestOutput(m_session.shownPrediction()));
}

}  // namespace ui

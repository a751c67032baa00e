// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/help/next_steps.h"

#include <QAction>
#include <QBoxLayout>
#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <algorithm>

#include "ui/parts.h"
#include "ui/preferences/preferences.h"
#include "ui/session.h"

namespace ui {
namespace {

/// Keeps the layout within a label below the label's own text.
class BelowText : public QObject {
 public:
  explicit BelowText(QLabel* label) : QObject(label), m_label(label) {}
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() != QEvent::Resize && event->type() != QEvent::Show) return false;
    const QRect text = m_label->fontMetrics().boundingRect(QRect(0, 0, m_label->width(), 10000),
                                                           Qt::TextWordWrap, m_label->text());
    if (QLayout* inside = m_label->layout())
      inside->setContentsMargins(0, text.height() + m_label->fontMetrics().height(), 0, 0);
    return false;
  }

 private:
  QLabel* m_label;
};

/// The box that `widget` stands in, with its place there.
std::pair<QBoxLayout*, int> boxOf(QLayout* layout, QWidget* widget) {
  for (int at = 0; layout && at < layout->count(); ++at) {
    QLayoutItem* item = layout->itemAt(at);
    if (item->widget() == widget) return {qobject_cast<QBoxLayout*>(layout), at};
    if (item->layout())
      if (const auto found = boxOf(item->layout(), widget); found.first) return found;
  }
  return {nullptr, 0};
}

}  // namespace

NextSteps::NextSteps(Session& session, Need need, const QString& sentence, QWidget* parent)
    : QWidget(parent), m_session(session), m_need(need) {
  setObjectName("nextSteps");
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 4);
  m_sentence = plainLabel("nextStepsSentence");
  m_sentence->setText(sentence);
  m_sentence->setVisible(!sentence.isEmpty());
  column->addWidget(m_sentence);
  m_buttons = new QBoxLayout(QBoxLayout::LeftToRight);
  m_buttons->setSpacing(6);
  column->addLayout(m_buttons);
  connect(&session, &Session::changed, this, &NextSteps::refresh);
  connect(&PreferencesSignal::instance(), &PreferencesSignal::preferencesChanged, this, &NextSteps::refresh);
  refresh();
}

QStringList NextSteps::commands() const {
  const core::Channel* channel = m_session.channel();
  if (m_need == Need::SecondCheck) {
    if (channel && channel->checks.size() == 1) return {"checkAdd", "checkRecording"};
    return {};
  }
  if (!channel) return {"channelAdd", "channelImport", "openDemo"};
  if (m_need >= Need::Shunts && channel->setup.shunts.empty())
    return {"sequenceAddShunt", "prepareResistors"};
  if (m_need >= Need::Steps && channel->setup.sequence.empty())
    return {"sequenceTwoSided", "sequenceLayOut", "sequenceAddStep"};
  if (m_need >= Need::Check && channel->checks.empty()) return {"checkAdd", "checkRecording", "prepareRun"};
  if (m_need == Need::Recording && m_session.check() && !m_session.check()->recording)
    return {"checkRecording"};
  return {};
}

void NextSteps::refresh() {
  // Without a parent it would be a window.
  setVisible(parentWidget() && !commands().empty() && preferences().hints);
  if (isVisible()) fill();
}

bool NextSteps::event(QEvent* event) {
  if (event->type() == QEvent::ParentChange) refresh();
  return QWidget::event(event);
}

void NextSteps::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

void NextSteps::arrange() {
  int row = 0;
  for (const auto* button : findChildren<QPushButton*>())
    row += button->sizeHint().width() + m_buttons->spacing();
  m_buttons->setDirection(row > width() ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

QSize NextSteps::minimumSizeHint() const {
  int widest = 0;
  for (const auto* button : findChildren<QPushButton*>())
    widest = std::max(widest, button->sizeHint().width());
  return {widest, QWidget::minimumSizeHint().height()};
}

/// Only in the window are its commands known.
void NextSteps::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  fill();
}

void NextSteps::fill() {
  const QStringList wanted = commands();
  if (wanted == m_filled && !findChildren<QPushButton*>().empty()) return;
  m_filled = wanted;
  while (QLayoutItem* item = m_buttons->takeAt(0)) delete item;
  for (auto* old : findChildren<QPushButton*>()) {
    old->hide();
    old->setParent(nullptr);
    old->deleteLater();
  }
  for (const QString& name : wanted) {
    auto* command = window()->findChild<QAction*>(name);
    if (!command || !command->isVisible()) continue;
    auto* button = new QPushButton(QString(command->text()).remove('&'));
    button->setObjectName("next_" + name);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, command, &QAction::trigger, Qt::QueuedConnection);
    button->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    m_buttons->addWidget(button, 0, Qt::AlignLeft);
  }
  m_buttons->addStretch(1);
  arrange();
}

NextSteps* offerUnder(QLabel* message, Session& session, NextSteps::Need need) {
  auto* steps = new NextSteps(session, need);
  if (qobject_cast<QStackedWidget*>(message->parentWidget())) {
    auto* inside = new QVBoxLayout(message);
    inside->addWidget(steps);
    inside->addStretch();
    message->installEventFilter(new BelowText(message));
    return steps;
  }
  if (const auto [box, at] = boxOf(message->parentWidget()->layout(), message); box)
    box->insertWidget(at + 1, steps);
  else
    steps->setParent(message->parentWidget());
  return steps;
}

}  // namespace ui

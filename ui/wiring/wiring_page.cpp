// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/wiring_page.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>
#include <algorithm>

#include "ui/as_typed.h"
#include "ui/help/next_steps.h"
#include "ui/parts.h"
#include "ui/tables/column_room.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"
#include "ui/wiring/roomy_delegate.h"
#include "ui/wiring/wiring_delegates.h"
#include "ui/wiring/wiring_drawing.h"
#include "ui/wiring/wiring_painter.h"
#include "ui/wiring/wiring_words.h"

namespace ui {
namespace {

constexpr std::size_t mostShownFaults = 200;  ///< what is mended first; more would not be read

enum Page { ContentsPage, MessagePage };

QLabel* title(const QString& text, const char* name = "") {
  auto* label = new QLabel(text);
  label->setObjectName(name);
  label->setTextFormat(Qt::PlainText);
  return embolden(label);
}

QWidget* column(std::initializer_list<QLayout*> lines, QWidget* body) {
  auto* part = new QWidget;
  auto* layout = new QVBoxLayout(part);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  for (QLayout* line : lines) layout->addLayout(line);
  layout->addWidget(body, 1);
  return part;
}

QString severityWord(core::WiringSeverity severity) {
  return severity == core::WiringSeverity::Error ? WiringPage::tr("Error") : WiringPage::tr("Warning");
}

}  // namespace

WiringPage::WiringPage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_pinModel(session), m_jumperModel(session) {
  setObjectName("wiringPage");
  setAccessibleName(tr("Wiring"));
  auto* left = new QSplitter(Qt::Vertical);
  left->addWidget(pinPart());
  left->addWidget(jumperPart());
  left->setSizes({2000, 1000});
  auto* top = new QSplitter(Qt::Horizontal);
  top->addWidget(left);
  top->addWidget(drawingPart());
  top->setSizes({1000, 1250});
  auto* all = new QSplitter(Qt::Vertical);
  all->addWidget(top);
  all->addWidget(faultPart());
  all->setSizes({3000, 1000});
  for (QSplitter* splitter : {left, top, all}) splitter->setChildrenCollapsible(false);
  m_message = plainLabel("wiringMessage");
  m_message->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  m_stack = new QStackedWidget;
  m_stack->addWidget(all);
  m_stack->addWidget(m_message);
  offerUnder(m_message, session, NextSteps::Need::Channel);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(4, 4, 4, 4);
  layout->addWidget(m_stack);
  for (const SheetModel* model : std::initializer_list<SheetModel*>{&m_pinModel, &m_jumperModel})
    connect(model, &SheetModel::refused, this, &WiringPage::refused);
  connect(&session, &Session::changed, this, &WiringPage::follow);
  showMessages();
}

// ---- parts -----------------------------------------------------------------------------------

QToolButton* WiringPage::tool(const char* name, const QString& text, const QString& tip,
                              void (WiringPage::*act)()) {
  auto* button = toolButton(name, text, tip);
  connect(button, &QToolButton::clicked, this, act);
  return button;
}

SheetView* WiringPage::sheet(const char* name, const QString& title, SheetModel& model) {
  auto* view = new SheetView;
  view->setObjectName(name);
  view->setAccessibleName(title);
  sortByHeader(*view);
  view->setModel(&model);
  view->setMinimumHeight(4 * view->verticalHeader()->defaultSectionSize());
  connect(view, &SheetView::refused, this, &WiringPage::refused);
  return view;
}

QWidget* WiringPage::pinPart() {
  m_table = sheet("pinTable", tr("Pins"), m_pinModel);
  m_table->setItemDelegateForColumn(PinModel::LeadsTo, new PinUseDelegate(m_session, this));
  const int letter = fontMetrics().horizontalAdvance('0');
  m_table->setColumnWidth(PinModel::Connector, 11 * letter);
  m_table->setColumnWidth(PinModel::PinColumn, 8 * letter);
  m_table->setColumnWidth(PinModel::JoinedTo, 14 * letter);
  new ColumnRoom(*m_table, {PinModel::LeadsTo});
  connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &WiringPage::showDrawing);
  auto* tools = new QHBoxLayout;
  tools->addWidget(title(tr("Pins")));
  tools->addStretch();
  tools->addWidget(tool("addPin", tr("Add pin"), tr("Add a pin below the chosen one"), &WiringPage::addPin));
  tools->addWidget(tool("removePin", tr("Remove"), tr("Remove the chosen pin and the jumpers to it"),
                        &WiringPage::removePin));
  tools->addWidget(tool("pinUp", tr("Up"), tr("Move the pin up"), &WiringPage::pinUp));
  tools->addWidget(tool("pinDown", tr("Down"), tr("Move the pin down"), &WiringPage::pinDown));
  tools->addWidget(
      tool("usualPins", tr("Usual pins"),
           tr("Put pins for everything that the channel needs in place of the list, to be renamed"),
           &WiringPage::usualPins));
  return column({tools}, m_table);
}

QWidget* WiringPage::jumperPart() {
  m_jumperTable = sheet("jumperTable", tr("Jumpers"), m_jumperModel);
  auto* pins = new PinNameDelegate(m_session, this);
  m_jumperTable->setItemDelegateForColumn(JumperModel::From, pins);
  m_jumperTable->setItemDelegateForColumn(JumperModel::To, pins);
  m_jumperTable->verticalHeader()->setVisible(true);
  const int letter = fontMetrics().horizontalAdvance('0');
  for (const int column : {JumperModel::From, JumperModel::To})
    m_jumperTable->setColumnWidth(column, 13 * letter);
  new ColumnRoom(*m_jumperTable, {JumperModel::Joins});
  m_shunts = new QComboBox;
  m_shunts->setObjectName("wiringShunt");
  m_shunts->setAccessibleName(tr("Shunt whose jumpers are shown"));
  m_shunts->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  m_shunts->setMinimumContentsLength(20);
  m_shunts->setPlaceholderText(tr("no shunts yet: add them under Shunts"));
  connect(m_shunts, &QComboBox::activated, this, &WiringPage::chooseShunt);
  m_jumperMessage = plainLabel("jumperMessage");
  auto* names = new QHBoxLayout;
  names->addWidget(title(tr("Jumpers of")));
  names->addWidget(m_shunts, 1);
  auto* tools = new QHBoxLayout;
  tools->addWidget(m_jumperMessage, 1);
  tools->addWidget(
      tool("addJumper", tr("Add jumper"), tr("Add a jumper for this shunt"), &WiringPage::addJumper));
  tools->addWidget(
      tool("removeJumper", tr("Remove"), tr("Remove the chosen jumper"), &WiringPage::removeJumper));
  tools->addWidget(tool("workOutJumpers", tr("Work out"),
                        tr("Work out the jumpers that lay this shunt where the plan says"),
                        &WiringPage::workOut));
  tools->addWidget(tool("workOutAllJumpers", tr("Work out all"),
                        tr("Work out the jumpers of every shunt of the channel"), &WiringPage::workOutAll));
  return column({names, tools}, m_jumperTable);
}

QWidget* WiringPage::drawingPart() {
  m_drawing = new WiringDrawing;
  connect(m_drawing, &WiringDrawing::pinChosen, this, &WiringPage::choosePin);
  m_scroll = new QScrollArea;
  m_scroll->setObjectName("wiringScroll");
  m_scroll->setWidgetResizable(true);
  m_scroll->setFocusPolicy(Qt::NoFocus);
  m_scroll->setWidget(m_drawing);
  m_drawingMessage = plainLabel("drawingMessage");
  m_drawingMessage->setAlignment(Qt::AlignCenter);
  m_picture = new QStackedWidget;
  m_picture->addWidget(m_scroll);
  m_picture->addWidget(m_drawingMessage);
  auto* tools = new QHBoxLayout;
  m_drawingTitle = title({}, "drawingTitle");
  m_drawingTitle->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  tools->addWidget(m_drawingTitle, 1);
  tools->addWidget(tool("printWiring", tr("Print sheet…"),
                        tr("Write pins, jumpers with boxes to tick, drawings and cautions as PDF"),
                        &WiringPage::print));
  return column({tools}, m_picture);
}

QWidget* WiringPage::faultPart() {
  m_faultTitle = title({}, "wiringFaultTitle");
  m_faultList = new QListWidget;
  m_faultList->setObjectName("wiringFaults");
  m_faultList->setAccessibleName(tr("What is wrong with the wiring"));
  m_faultList->setWordWrap(true);
  m_faultList->setItemDelegate(new RoomyDelegate(m_faultList));
  m_faultList->setResizeMode(QListView::Adjust);
  m_faultList->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  m_faultList->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  connect(m_faultList, &QListWidget::currentRowChanged, this, &WiringPage::chooseFault);
  auto* line = new QHBoxLayout;
  line->addWidget(m_faultTitle, 1);
  m_faultMessage = plainLabel("wiringFaultMessage");
  m_faultMessage->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  m_faultStack = new QStackedWidget;
  m_faultStack->addWidget(m_faultList);
  m_faultStack->addWidget(m_faultMessage);
  return column({line}, m_faultStack);
}

// ---- following the session -------------------------------------------------------------------

void WiringPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  follow();
}

void WiringPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) showFaults();
}

void WiringPage::follow() {
  if (!isVisible()) return;
  const auto chosen = m_session.selection().channel;
  const auto channel = chosen ? m_session.document().channels[*chosen] : nullptr;
  if (channel != m_channel) takeChannel(channel);
  followStep();
}

/// Another step shows the first shunt that it closes, unless the present one is among them.
void WiringPage::followStep() {
  const auto step = m_session.selection().step;
  if (step == m_step) return;
  m_step = step;
  if (!step || !m_channel) return;
  const auto& closed = m_channel->setup.sequence[*step].closed;
  const bool isShown = m_shunt && std::find(closed.begin(), closed.end(), *m_shunt) != closed.end();
  if (!closed.empty() && !isShown) showShunt(closed.front());
}

void WiringPage::takeChannel(std::shared_ptr<const core::Channel> channel) {
  const bool another = !channel || !m_channel || channel->name != m_channel->name;
  const bool sameWiring = !another && channel->setup == m_channel->setup;
  m_channel = std::move(channel);
  if (another) {
    m_shunt.reset();
    m_step.reset();
  }
  if (sameWiring) return showShunt(m_shunt);  // another note, or a reading
  m_faults = m_channel ? core::wiringFaults(m_channel->setup) : std::vector<core::WiringFault>();
  const QSignalBlocker quiet(m_shunts);
  m_shunts->clear();
  if (m_channel) m_shunts->addItems(shuntTitles(m_channel->setup));
  const std::size_t shunts = m_channel ? m_channel->setup.shunts.size() : 0;
  if (!m_shunt && shunts > 0) m_shunt = 0;
  if (m_shunt >= shunts) m_shunt = shunts > 0 ? std::optional(shunts - 1) : std::nullopt;
  showFaults();
  showShunt(m_shunt);
}

void WiringPage::showShunt(std::optional<std::size_t> shunt) {
  m_shunt = shunt;
  m_shunts->setCurrentIndex(shunt ? static_cast<int>(*shunt) : -1);
  m_shunts->setToolTip(asTyped(m_shunts->currentText()));
  m_pinModel.show(m_channel, m_shunt, m_faults);
  m_jumperModel.show(m_channel, m_shunt);
  showMessages();
  showDrawing();
}

void WiringPage::showFaults() {
  const QSignalBlocker quiet(m_faultList);
  m_fault.reset();
  m_faultList->clear();
  const auto errors = std::count_if(m_faults.begin(), m_faults.end(), [](const core::WiringFault& fault) {
    return fault.severity == core::WiringSeverity::Error;
  });
  const auto warnings = std::ssize(m_faults) - errors;
  QStringList counts;
  if (errors > 0) counts << tr("%n error(s)", nullptr, int(errors));
  if (warnings > 0) counts << tr("%n warning(s)", nullptr, int(warnings));
  m_faultTitle->setText(counts.isEmpty() ? tr("Check of the wiring")
                                         : tr("Check of the wiring: %1").arg(counts.join(", ")));
  const QIcon icons[] = {severityIcon(core::WiringSeverity::Warning, palette()),
                         severityIcon(core::WiringSeverity::Error, palette())};
  for (std::size_t k = 0; k < std::min(m_faults.size(), mostShownFaults); ++k) {
    const core::WiringFault& fault = m_faults[k];
    const QString text =
        tr("%1: %2.\n%3.").arg(severityWord(fault.severity), toQString(fault.what), toQString(fault.mend));
    m_faultList->addItem(new QListWidgetItem(icons[static_cast<std::size_t>(fault.severity)], text));
  }
  if (m_faults.size() > mostShownFaults) {
    auto* more = new QListWidgetItem(tr("and %1 more").arg(m_faults.size() - mostShownFaults));
    more->setFlags(Qt::ItemIsEnabled);
    m_faultList->addItem(more);
  }
}

void WiringPage::showDrawing() {
  WiringPicture picture;
  if (m_channel) {
    picture.wiring = m_channel->setup.wiring;
    if (m_shunt) picture.jumpers = m_channel->setup.shunts[*m_shunt].jumpers;
    picture.marks = marksOf(m_faults, m_shunt);
    if (pinRow() >= 0) picture.chosenPin = static_cast<std::size_t>(pinRow());
  }
  if (m_fault) {
    picture.faultPins = m_faults[*m_fault].pins;
    picture.faultBridges = m_faults[*m_fault].kind == core::WiringFaultKind::NeighbourHazard;
  }
  const auto chosen = picture.chosenPin;
  m_drawing->setPicture(std::move(picture));
  if (!chosen) return;
  const QRect place = m_drawing->placeOf(*chosen);
  m_scroll->ensureVisible(place.center().x(), place.center().y(), place.width() / 2, place.height());
}

void WiringPage::showMessages() {
  m_stack->setCurrentIndex(m_channel ? ContentsPage : MessagePage);
  m_message->setText(tr("No channel yet. Add a channel to plan its wiring here."));
  const bool pins = m_channel && !m_channel->setup.wiring.pins.empty();
  m_picture->setCurrentIndex(pins ? ContentsPage : MessagePage);
  m_drawingMessage->setText(
      tr("No pins yet.\nAdd the pins of your connectors and say what each of them leads to,\n"
         "or take the usual pins as a start and rename them."));
  m_jumperMessage->setText(jumperMessage());
  m_shunts->setEnabled(m_shunt.has_value());
  m_drawingTitle->setText(
      m_shunt
          ? tr("Drawing: jumpers of %1").arg(toQString(m_channel->setup.shunts[*m_shunt].name).simplified())
          : tr("Drawing"));
  m_faultStack->setCurrentIndex(m_faults.empty() ? MessagePage : ContentsPage);
  m_faultMessage->setText(pins ? tr("Nothing is wrong: every shunt lies where the plan says once its jumpers "
                                    "are laid.")
                               : tr("Nothing to check yet: there are no pins."));
}

QString WiringPage::jumperMessage() const {
  if (!m_shunt) return {};
  const core::Shunt& shunt = m_channel->setup.shunts[*m_shunt];
  if (core::isSwitchedInside(m_channel->setup, shunt)) return tr("Switched inside.");
  return shunt.jumpers.empty() ? tr("No jumpers yet.") : QString();
}

// ---- choosing --------------------------------------------------------------------------------

/// The step that closes the shunt first is chosen with it, so that the other views show it too.
void WiringPage::chooseShunt(int row) {
  const auto shunt = static_cast<std::size_t>(row);
  showShunt(shunt);
  const auto& steps = m_channel->setup.sequence;
  const auto closes = [&](const core::Step& step) {
    return std::find(step.closed.begin(), step.closed.end(), shunt) != step.closed.end();
  };
  if (m_session.selection().step && closes(steps[*m_session.selection().step])) return;
  const auto found = std::find_if(steps.begin(), steps.end(), closes);
  if (found == steps.end()) return;
  m_step = static_cast<std::size_t>(found - steps.begin());
  m_session.selectStep(m_step);
}

void WiringPage::choosePin(std::size_t pin) {
  const int column = m_table->currentIndex().isValid() ? m_table->currentIndex().column() : PinModel::LeadsTo;
  m_table->setCurrentIndex(m_pinModel.index(static_cast<int>(pin), column));
}

void WiringPage::chooseFault(int row) {
  const auto fault = static_cast<std::size_t>(row);
  m_fault.reset();
  if (row >= 0 && fault < std::min(m_faults.size(), mostShownFaults)) m_fault = fault;
  if (!m_fault) return showDrawing();
  const core::WiringFault& chosen = m_faults[fault];
  if (chosen.shunt && chosen.shunt != m_shunt) showShunt(*chosen.shunt);
  const auto& pins = m_channel->setup.wiring.pins;
  for (const core::PinName& name : chosen.pins) {
    const auto found =
        std::find_if(pins.begin(), pins.end(), [&](const core::Pin& pin) { return pin.name == name; });
    if (found == pins.end()) continue;
    choosePin(static_cast<std::size_t>(found - pins.begin()));
    break;
  }
  showDrawing();
}

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/ohmmeter_page.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QSignalBlocker>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>
#include <algorithm>
#include <set>

#include "core/document/ohm_edits.h"
#include "core/report/wiring_sheet.h"
#include "ui/choice_delegates.h"
#include "ui/help/next_steps.h"
#include "ui/parts.h"
#include "ui/quantity_edit.h"
#include "ui/tables/column_room.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"
#include "ui/wiring/roomy_delegate.h"

namespace ui {
namespace {

/// Their pairs are the rows: 60 points make 1770 of them, and nobody measures more.
constexpr std::size_t mostPoints = 60;

enum Page { ContentsPage, MessagePage };

QWidget* column(QLayout* line, QWidget* body) {
  auto* part = new QWidget;
  auto* layout = new QVBoxLayout(part);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addLayout(line);
  layout->addWidget(body, 1);
  return part;
}

bool isTerminal(const core::OhmPoint& point) {
  const auto* node = std::get_if<core::Node>(&point);
  return node && *node <= core::Node::SenseMinus;
}

/// Both ways round they are one pair.
bool isPair(const core::OhmExpectation& row, const core::OhmPair& pair) {
  return (row.from == pair.from && row.to == pair.to) || (row.from == pair.to && row.to == pair.from);
}

/// The rows that the printed sheet has too, in its order.
std::vector<core::OhmExpectation> onSheet(const std::vector<core::OhmExpectation>& rows,
                                          const std::vector<core::OhmPair>& pairs) {
  std::vector<core::OhmExpectation> kept;
  for (const core::OhmPair& pair : pairs)
    for (const core::OhmExpectation& row : rows)
      if (isPair(row, pair)) kept.push_back(row);
  return kept;
}

std::vector<core::OhmPoint> pointsOf(const std::vector<core::OhmPair>& pairs) {
  std::set<core::OhmPoint> points;
  for (const core::OhmPair& pair : pairs) points.insert({pair.from, pair.to});
  return {points.begin(), points.end()};
}

}  // namespace

OhmmeterPage::OhmmeterPage(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_model(session),
      m_expecting([this](const Expectations& expectations) { takeExpectations(expectations); }),
      m_diagnosing([this](const Faults& faults) { takeFaults(faults); }) {
  setObjectName("ohmmeterPage");
  setAccessibleName(tr("Ohmmeter"));
  auto* top = new QSplitter(Qt::Horizontal);
  top->addWidget(statePart());
  top->addWidget(readingPart());
  top->setSizes({1000, 2600});
  auto* both = new QSplitter(Qt::Vertical);
  both->addWidget(top);
  both->addWidget(faultPart());
  both->setSizes({2300, 1000});
  for (QSplitter* splitter : {top, both}) splitter->setChildrenCollapsible(false);
  m_caution = plainLabel("ohmCaution");
  m_caution->setText(tr(
      "Switch the excitation off before an ohmmeter touches the circuit, and take the channel out of service "
      "where something acts on its reading."));
  auto* contents = new QWidget;
  auto* layout = new QVBoxLayout(contents);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addLayout(conditionLine());
  layout->addWidget(m_caution);
  layout->addWidget(both, 1);
  m_message = plainLabel("ohmMessage");
  m_message->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  m_message->setText(tr("No channel yet. Add a channel to see what an ohmmeter must read at its wiring."));
  m_stack = new QStackedWidget;
  m_stack->addWidget(contents);
  m_stack->addWidget(m_message);
  offerUnder(m_message, session, NextSteps::Need::Channel);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(4, 4, 4, 4);
  all->addWidget(m_stack);
  m_stack->setCurrentIndex(MessagePage);
  connect(&m_model, &SheetModel::refused, this, &OhmmeterPage::refused);
  connect(&session, &Session::changed, this, &OhmmeterPage::follow);
  colour();
}

// ---- parts -----------------------------------------------------------------------------------

QuantityEdit* OhmmeterPage::field(const char* name, core::UnitFamily family, double value,
                                  const QString& title) {
  auto* edit = new QuantityEdit(family);
  edit->setObjectName(name);
  edit->setAccessibleName(title);
  edit->setToolTip(title);
  edit->setLeast(0, true);
  edit->setValue(value);
  edit->setMaximumWidth(edit->fontMetrics().horizontalAdvance("0000.00 MΩ") + 16);
  connect(edit, &QuantityEdit::refused, this, &OhmmeterPage::refused);
  return edit;
}

QLayout* OhmmeterPage::conditionLine() {
  m_instrument = new QComboBox;
  m_instrument->setObjectName("ohmInstrument");
  m_instrument->addItems({tr("plugged in, excitation off"), tr("unplugged")});
  connect(m_instrument, &QComboBox::activated, this, [this](int row) {
    core::OhmmeterConditions next = m_conditions;
    next.instrumentConnected = row == 0;
    changeConditions(next);
  });
  auto* name = new QLabel(tr("Instrument"));
  name->setBuddy(m_instrument);
  auto* sheet = new QToolButton;
  sheet->setObjectName("printOhmmeter");
  sheet->setText(tr("Print sheet…"));
  sheet->setToolTip(tr("Write what must be read in each state, with room for what is read, as PDF"));
  connect(sheet, &QToolButton::clicked, this, &OhmmeterPage::print);
  auto* line = new QHBoxLayout;
  line->addWidget(name);
  line->addWidget(m_instrument);
  line->addSpacing(12);
  line->addLayout(meterFields());
  line->addStretch();
  line->addWidget(sheet);
  return line;
}

QLayout* OhmmeterPage::meterFields() {
  auto* relative = field("ohmRelativeError", core::UnitFamily::Percent, m_conditions.relativeError,
                         tr("Error of the ohmmeter as a share of the reading"));
  auto* absolute = field("ohmAbsoluteError", core::UnitFamily::Resistance, m_conditions.absoluteError.base(),
                         tr("Error of the ohmmeter and its leads whatever the reading"));
  auto* range = field("ohmRange", core::UnitFamily::Resistance, m_conditions.openBeyond.base(),
                      tr("Above this the ohmmeter shows no reading"));
  range->setLeast(0, false);
  connect(relative, &QuantityEdit::valueEdited, this, [this](double value) {
    core::OhmmeterConditions next = m_conditions;
    next.relativeError = value;
    changeConditions(next);
  });
  connect(absolute, &QuantityEdit::valueEdited, this, [this](double value) {
    core::OhmmeterConditions next = m_conditions;
    next.absoluteError = core::Resistance(value);
    changeConditions(next);
  });
  connect(range, &QuantityEdit::valueEdited, this, [this](double value) {
    core::OhmmeterConditions next = m_conditions;
    next.openBeyond = core::Resistance(value);
    changeConditions(next);
  });
  auto* line = new QHBoxLayout;
  line->addWidget(new QLabel(tr("Ohmmeter ±")));
  line->addWidget(relative);
  line->addWidget(new QLabel(tr("±")));
  line->addWidget(absolute);
  line->addWidget(new QLabel(tr("up to")));
  line->addWidget(range);
  return line;
}

QWidget* OhmmeterPage::statePart() {
  m_stateList = new QListWidget;
  m_stateList->setObjectName("ohmStates");
  m_stateList->setAccessibleName(tr("State of the wiring"));
  m_stateList->setWordWrap(true);
  m_stateList->setItemDelegate(new RoomyDelegate(m_stateList));
  m_stateList->setResizeMode(QListView::Adjust);
  m_stateList->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_stateList->setAlternatingRowColors(true);
  connect(m_stateList, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row < 0) return;
    m_state = m_states[static_cast<std::size_t>(row)];
    expect();
  });
  auto* name = plainLabel("ohmStateListTitle");
  name->setText(tr("State of the wiring"));
  name->setMinimumHeight(QComboBox().sizeHint().height());  // its list begins where the table does
  embolden(name);
  auto* line = new QHBoxLayout;
  line->addWidget(name);
  return column(line, m_stateList);
}

QWidget* OhmmeterPage::readingPart() {
  m_table = new SheetView;
  m_table->setObjectName("ohmTable");
  m_table->setTextElideMode(Qt::ElideMiddle);  // the end is what tells two ends of one resistor apart
  m_table->setAccessibleName(tr("Readings of the ohmmeter"));
  sortByHeader(*m_table);
  m_table->setModel(&m_model);
  m_table->setItemDelegate(new TypedDelegate(this));
  const int letter = fontMetrics().horizontalAdvance('0');
  int at = 0;
  for (const int characters : {12, 12, 12, 11, 12, 12, 12})
    m_table->setColumnWidth(at++, characters * letter);
  new ColumnRoom(*m_table, {OhmModel::Fits});
  connect(m_table, &SheetView::refused, this, &OhmmeterPage::refused);
  m_rowMessage = plainLabel("ohmRowMessage");
  m_rowMessage->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  m_rows = new QStackedWidget;
  m_rows->addWidget(m_table);
  m_rows->addWidget(m_rowMessage);
  m_stateTitle = plainLabel("ohmStateTitle");
  embolden(m_stateTitle);
  m_filter = new QComboBox;
  m_filter->setObjectName("ohmFilter");
  m_filter->setAccessibleName(tr("Points"));
  m_filter->addItems({tr("as on the sheet"), tr("only terminals"), tr("all points")});
  m_filter->setToolTip(tr(
      "As on the sheet: what is worth measuring in this state; only terminals: each two of them; all points: "
      "also ends of arms and of resistors"));
  connect(m_filter, &QComboBox::activated, this, &OhmmeterPage::expect);
  auto* clear = new QToolButton;
  clear->setObjectName("clearOhmReadings");
  clear->setText(tr("Clear readings"));
  clear->setToolTip(tr("Empty the readings of all states"));
  connect(clear, &QToolButton::clicked, this, &OhmmeterPage::clearReadings);
  auto* line = new QHBoxLayout;
  line->addWidget(m_stateTitle, 1);
  line->addWidget(m_filter);
  line->addWidget(clear);
  return column(line, m_rows);
}

QWidget* OhmmeterPage::faultPart() {
  m_faultTable = new SheetView;
  m_faultTable->setObjectName("ohmFaults");
  m_faultTable->setAccessibleName(tr("Faults in the order in which they fit"));
  sortByHeader(*m_faultTable);
  m_faultTable->setModel(&m_faultModel);
  const int letter = fontMetrics().horizontalAdvance('0');
  m_faultTable->setColumnWidth(OhmFaultModel::Rank, 7 * letter);
  m_faultTable->setColumnWidth(OhmFaultModel::Explains, 24 * letter);
  m_faultTable->setColumnWidth(OhmFaultModel::Misfit, 12 * letter);
  new ColumnRoom(*m_faultTable, {OhmFaultModel::Fault});
  connect(m_faultTable, &SheetView::refused, this, &OhmmeterPage::refused);
  m_diagnosis = plainLabel("ohmDiagnosis");
  embolden(m_diagnosis);
  auto* line = new QHBoxLayout;
  line->addWidget(m_diagnosis, 1);
  return column(line, m_faultTable);
}

// ---- following the session -------------------------------------------------------------------

void OhmmeterPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  follow();
}

void OhmmeterPage::follow() {
  if (!isVisible()) return;
  const auto chosen = m_session.selection().channel;
  const auto channel = chosen ? m_session.document().channels[*chosen] : nullptr;
  if (channel != m_channel) {
    if (!channel || !m_channel || channel->name != m_channel->name) m_step.reset();
    m_channel = channel;
    m_stack->setCurrentIndex(channel ? ContentsPage : MessagePage);
    fillStates();
    m_model.showReadings(m_channel);
    expect();
    diagnose();
  }
  followStep();
}

void OhmmeterPage::followStep() {
  const auto step = m_session.selection().step;
  if (step == m_step) return;
  m_step = step;
  if (!step || !m_channel) return;
  const auto& closed = m_channel->setup.sequence[*step].closed;
  const std::string name = closed.empty() ? std::string() : m_channel->setup.shunts[closed.front()].name;
  for (std::size_t row = m_states.size(); row-- > 0;)  // the last state of a shunt: all of it is laid
    if (m_states[row].shunt == name) return m_stateList->setCurrentRow(static_cast<int>(row));
}

/// Each state with the number of readings in it; the chosen one stays chosen where it is still there.
void OhmmeterPage::fillStates() {
  const QSignalBlocker quiet(m_stateList);
  m_states = m_channel ? core::wiringStates(m_channel->setup) : std::vector<core::WiringState>();
  QStringList texts;
  for (const core::WiringState& state : m_states) {
    const QString text = toQString(core::wiringStateText(m_channel->setup, state));
    const auto readings =
        std::count_if(m_channel->ohmReadings.begin(), m_channel->ohmReadings.end(),
                      [&](const core::OhmReading& reading) { return reading.state == state; });
    texts << (readings == 0   ? text
              : readings == 1 ? tr("%1 (1 reading)").arg(text)
                              : tr("%1 (%2 readings)").arg(text).arg(readings));
  }
  if (m_stateList->count() != texts.size()) {
    m_stateList->clear();
    m_stateList->addItems(texts);
  }
  for (int row = 0; row < texts.size(); ++row) m_stateList->item(row)->setText(texts[row]);
  const auto found = std::find(m_states.begin(), m_states.end(), m_state);
  const auto row = found == m_states.end() ? 0 : found - m_states.begin();
  m_stateList->setCurrentRow(m_states.empty() ? -1 : static_cast<int>(row));
  m_state = m_states.empty() ? core::WiringState{} : m_states[static_cast<std::size_t>(row)];
}

void OhmmeterPage::changeConditions(const core::OhmmeterConditions& conditions) {
  if (conditions == m_conditions) return;
  m_conditions = conditions;
  expect();
  m_diagnosed.clear();
  diagnose();
}

// ---- what must be read -----------------------------------------------------------------------

void OhmmeterPage::expect() {
  if (!m_channel) {
    m_subject.reset();
    m_expecting.drop();
    return m_model.show(nullptr, {}, {}, m_conditions);
  }
  Subject subject{m_channel->setup, m_state, static_cast<Points>(m_filter->currentIndex()), m_conditions};
  if (subject == m_subject) return;
  std::vector<core::OhmPair> pairs;
  if (subject.points == Points::OnSheet) pairs = core::ohmPairs(subject.setup, subject.state);
  auto points = subject.points == Points::OnSheet ? pointsOf(pairs) : core::ohmPoints(subject.setup);
  if (subject.points == Points::Terminals)
    std::erase_if(points, [](const core::OhmPoint& point) { return !isTerminal(point); });
  m_points = points.size();
  if (points.size() > mostPoints) points.resize(mostPoints);
  m_shownPoints = points.size();
  m_subject = subject;
  m_model.show(m_channel, m_state, {}, m_conditions);
  showRows(tr("Working out what must be read…"));
  m_expecting.start(
      [subject = std::move(subject), points = std::move(points), pairs = std::move(pairs)]() -> Expectations {
        auto rows = core::ohmExpectations(subject.setup, subject.state, points, subject.conditions);
        if (!rows || subject.points != Points::OnSheet) return rows;
        return onSheet(*rows, pairs);
      });
}

void OhmmeterPage::takeExpectations(const Expectations& expectations) {
  if (!expectations) return showRows(toText(expectations.error()));
  m_model.show(m_channel, m_state, *expectations, m_conditions);
  showRows({});
}

void OhmmeterPage::showRows(const QString& insteadOfThem) {
  m_rows->setCurrentIndex(insteadOfThem.isEmpty() ? ContentsPage : MessagePage);
  m_rowMessage->setText(insteadOfThem);
  QString title = toQString(core::wiringStateText(m_channel->setup, m_state));
  if (m_points > m_shownPoints)
    title = tr("%1; the first %2 of %3 points").arg(title).arg(m_shownPoints).arg(m_points);
  m_stateTitle->setText(title);
}

// ---- what is wrong ---------------------------------------------------------------------------

void OhmmeterPage::diagnose() {
  const bool some = m_channel && !m_channel->ohmReadings.empty();
  if (!some) {
    m_diagnosed.clear();
    m_diagnosing.drop();
    m_faultModel.show({});
    return m_diagnosis->setText(tr(
        "No readings yet. Type what the ohmmeter shows into Measured; the faults that fit are ranked here."));
  }
  m_diagnosed = m_channel->ohmReadings;
  m_diagnosing.start([setup = m_channel->setup, readings = m_diagnosed, conditions = m_conditions] {
    return core::ohmFaults(setup, readings, conditions);
  });
}

void OhmmeterPage::takeFaults(const Faults& faults) {
  m_faultModel.show(faults ? *faults : std::vector<core::OhmFault>());
  m_diagnosis->setText(faults ? diagnosisText(*faults, m_diagnosed.size()) : toText(faults.error()));
}

void OhmmeterPage::clearReadings() {
  if (m_channel) m_session.editChannel(tr("Clear ohmmeter readings"), core::withoutOhmReadings(*m_channel));
}

void OhmmeterPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

void OhmmeterPage::colour() {
  QPalette warning = palette();
  warning.setColor(QPalette::WindowText, coloursFor(palette()).fail);
  m_caution->setPalette(warning);
}

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/polarity/polarity_panel.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "core/document/edits.h"
#include "core/polarity/place_words.h"
#include "core/units/notation.h"
#include "ui/bridge/bridge_state.h"
#include "ui/help/next_steps.h"
#include "ui/outcome/page_button.h"
#include "ui/parts.h"
#include "ui/polarity/polarity_model.h"
#include "ui/polarity/polarity_picture.h"
#include "ui/preferences/appearance.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int pictureWidth = 390;   ///< at least, beside the table
constexpr int pictureLetters = 22;  ///< and as many lines of text wide, where letters are large

PolarityPair pairOf(const QModelIndex& index) {
  return {static_cast<std::size_t>(index.row()), static_cast<std::size_t>(index.column())};
}

/// The only shunt that a step closes.
std::optional<std::size_t> onlyShunt(const core::Setup& setup, std::optional<std::size_t> step) {
  if (!step || setup.sequence[*step].closed.size() != 1) return std::nullopt;
  return setup.sequence[*step].closed.front();
}

}  // namespace

PolarityPanel::PolarityPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("polarityPanel");
  setAccessibleName(tr("Polarity map"));
  m_picture = new PolarityPicture(m_shown);
  buildTable();
  m_sentence = plainLabel("polaritySentence");
  embolden(m_sentence);
  m_sentence->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  m_sentence->setAccessibleName(tr("What the chosen place would do"));
  auto* both = new QHBoxLayout;
  both->setSpacing(4);
  both->addWidget(m_table, 1);
  both->addWidget(m_picture, 1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 2, 4, 2);
  column->setSpacing(3);
  m_choices = choices();
  m_turns = reversals();
  column->addWidget(m_choices);
  column->addWidget(m_turns);
  column->addLayout(both, 1);
  column->addWidget(m_sentence);
  column->addWidget(new NextSteps(session, NextSteps::Need::Channel));
  connect(m_picture, &PolarityPicture::pointedAt, this,
          [this](auto pair) { showSentence(pair ? pair : m_current); });
  connect(m_picture, &PolarityPicture::currentChanged, this, &PolarityPanel::setCurrent);
  connect(m_picture, &PolarityPicture::activated, this, &PolarityPanel::place);
  connect(&m_session, &Session::changed, this, [this] {
    if (isVisible()) follow();
  });
  arrange();
  follow();
}

/// Table and picture look at the map until they are gone.
PolarityPanel::~PolarityPanel() {
  delete m_table;
  delete m_picture;
}

void PolarityPanel::setOnlyShown() {
  m_onlyShown = true;
  for (QWidget* part : std::initializer_list<QWidget*>{m_choices, m_turns, m_sentence}) part->hide();
  arrange();
}

QWidget* PolarityPanel::choices() {
  m_shunt = new QComboBox;
  m_shunt->setObjectName("polarityShunt");
  m_shunt->setAccessibleName(tr("Shunt of the map"));
  m_shunt->setToolTip(tr("Whose resistance is put to every place, one after the other"));
  m_shunt->setMinimumContentsLength(8);
  m_shunt->setMaximumWidth(atTextSize(420));
  m_shunt->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  m_shunt->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  m_ohm = new QuantityEdit(core::UnitFamily::Resistance);
  m_ohm->setObjectName("polarityOhm");
  m_ohm->setAccessibleName(tr("Resistance of the map"));
  m_ohm->setToolTip(tr("With its wires and switch. Type another one to map it; placed, it is a new shunt"));
  m_ohm->setLeast(0, false);
  m_ohm->setShownDigits(7);
  m_ohm->setMaximumWidth(m_ohm->fontMetrics().horizontalAdvance("174.6502 kΩ") + 20);
  m_quantity = new QComboBox;
  m_quantity->setObjectName("polarityQuantity");
  m_quantity->setAccessibleName(tr("What the map shows"));
  m_quantity->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  m_quantity->setMinimumContentsLength(12);
  m_quantity->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  auto* box = new QWidget;
  box->setObjectName("polarityChoices");
  auto* line = new QHBoxLayout(box);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(3);
  line->addWidget(m_shunt, 1000);
  line->addWidget(m_ohm);
  line->addWidget(m_quantity, 1000);
  line->addStretch(1);
  line->addWidget(pages());
  connect(m_shunt, &QComboBox::activated, this, [this](int index) {
    const QVariant shunt = m_shunt->itemData(index);
    const core::Resistance before = resistance();
    m_choice.shunt = shunt.isValid() ? std::optional(shunt.toULongLong()) : std::nullopt;
    if (!m_choice.shunt) m_choice.typed = before;
    showMap();
  });
  connect(m_ohm, &QuantityEdit::valueEdited, this, [this](double ohm) {
    m_choice = {std::nullopt, core::Resistance(ohm)};
    showMap();
  });
  connect(m_ohm, &QuantityEdit::refused, this, &PolarityPanel::refused);
  connect(m_quantity, &QComboBox::activated, this, [this](int index) {
    m_shown.quantity = static_cast<PolarityQuantity>(index);
    showMap();
  });
  return box;
}

QWidget* PolarityPanel::reversals() {
  auto* box = new QWidget;
  box->setObjectName("polarityReversals");
  auto* line = new QHBoxLayout(box);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(3);
  line->addWidget(reversal("polaritySignal", tr("Signal wires swapped"),
                           tr("The instrument measures S− against S+"), tr("Swap signal wires"),
                           &core::Hookup::signalReversed));
  line->addWidget(reversal("polarityExcitation", tr("Excitation swapped"),
                           tr("The source's plus side is on P−"), tr("Swap excitation"),
                           &core::Hookup::excitationReversed));
  line->addWidget(reversal("polarityGauges", tr("Gauge signs reversed"),
                           tr("All gauges feel the opposite of what the template says"),
                           tr("Reverse gauge signs"), &core::Hookup::gaugesReversed));
  line->addStretch(1);
  return box;
}

QWidget* PolarityPanel::pages() {
  m_pages = new QWidget;
  auto* line = new QHBoxLayout(m_pages);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(0);
  m_asTable = new PageButton("polarityAsTable", tr("Table"), tr("All pairs of points as a matrix"));
  m_asPicture = new PageButton("polarityAsPicture", tr("Picture"), tr("All pairs of points on the bridge"));
  auto* group = new QButtonGroup(this);
  for (PageButton* button : {m_asTable, m_asPicture}) {
    group->addButton(button);
    line->addWidget(button);
  }
  m_asTable->setChecked(true);
  connect(group, &QButtonGroup::buttonClicked, this, &PolarityPanel::arrange);
  return m_pages;
}

PageButton* PolarityPanel::reversal(const char* name, const QString& text, const QString& tip,
                                    const QString& undo, bool core::Hookup::*flag) {
  auto* button = new PageButton(name, text, tip);
  connect(button, &QToolButton::clicked, this, [this, undo, flag](bool on) {
    if (!m_session.channel()) return;
    core::Channel channel = *m_session.channel();
    channel.setup.bridge.hookup.*flag = on;
    m_session.editChannel(undo, std::move(channel));
    showReversals();
  });
  m_reversals.push_back({button, flag});
  return button;
}

void PolarityPanel::buildTable() {
  m_model = new PolarityModel(m_shown, this);
  m_table = new QTableView;
  m_table->setObjectName("polarityTable");
  m_table->setAccessibleName(tr("Polarity map, a row and a column for each point"));
  m_table->setModel(m_model);
  m_table->setItemDelegate(new PolarityDelegate(m_table));
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->setTabKeyNavigation(false);
  m_table->setMouseTracking(true);
  m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  m_table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  m_table->installEventFilter(this);
  m_table->viewport()->installEventFilter(this);
  for (QHeaderView* header : {m_table->horizontalHeader(), m_table->verticalHeader()}) {
    header->setHighlightSections(true);
    header->setSectionsClickable(false);
    header->setMinimumSectionSize(18);
  }
  m_corner = new QLabel(m_table);
  m_corner->setObjectName("polarityCorner");
  m_corner->setTextFormat(Qt::PlainText);
  m_corner->setAlignment(Qt::AlignCenter);
  m_corner->setAttribute(Qt::WA_TransparentForMouseEvents);
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  m_table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  connect(m_table, &QTableView::clicked, this, [this](const QModelIndex& index) {
    if (index.isValid() && index.row() != index.column()) place(pairOf(index));
  });
  connect(m_table, &QTableView::entered, this, [this](const QModelIndex& index) {
    showSentence(index.row() == index.column() ? m_current : pairOf(index));
  });
  connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& now) {
            if (!m_following && now.isValid() && now.row() != now.column()) setCurrent(pairOf(now));
          });
}

// ---- following the session -------------------------------------------------------------------

void PolarityPanel::follow() {
  const auto chosen = m_session.selection().channel;
  const auto channel = chosen ? m_session.document().channels[*chosen] : nullptr;
  const auto step = m_session.selection().step;
  if (channel == m_channel && step == m_step) return;
  const bool other = !channel || !m_channel || channel->name != m_channel->name;
  const bool otherStep = other || step != m_step;
  m_channel = channel;
  m_step = step;
  followChoice(other);
  if (channel && otherStep)
    if (const auto shunt = onlyShunt(channel->setup, step)) m_choice.shunt = shunt;
  showMap();
}

/// A shunt that is gone leaves its resistance.
void PolarityPanel::followChoice(bool otherChannel) {
  if (!m_channel) return;
  const auto& shunts = m_channel->setup.shunts;
  if (otherChannel && !shunts.empty()) m_choice.shunt = 0;
  if (m_choice.shunt && *m_choice.shunt >= shunts.size()) {
    m_choice.typed = m_shown.map.shunt.base() > 0 ? m_shown.map.shunt : m_choice.typed;
    m_choice.shunt.reset();
  }
}

core::Resistance PolarityPanel::resistance() const {
  if (!m_choice.shunt) return m_choice.typed;
  return core::resistanceOf(m_channel->setup.shunts[*m_choice.shunt]);
}

void PolarityPanel::showMap() {
  PolarityShown next;
  next.quantity = m_shown.quantity;
  next.channel = m_channel;
  if (m_channel) {
    const core::Setup& setup = m_channel->setup;
    auto map = core::polarityMap(setup, resistance());
    if (map)
      next.map = *std::move(map);
    else
      next.error = map.error();
    next.shunt = m_choice.shunt ? shuntText(setup.shunts[*m_choice.shunt]) : ohmText(m_choice.typed, 6);
    if (m_choice.shunt) {
      const core::Shunt& shunt = setup.shunts[*m_choice.shunt];
      const core::Node a = core::pointOf(setup.bridge, shunt.a), b = core::pointOf(setup.bridge, shunt.b);
      for (std::size_t k = 0; k < next.map.cells.size(); ++k) {
        const core::PolarityCell& cell = next.map.cells[k];
        if ((cell.a == a && cell.b == b) || (cell.a == b && cell.b == a)) next.present = k;
      }
    }
  }
  const bool samePoints = next.map.points == m_shown.map.points;
  m_following = true;
  if (!samePoints) m_model->beginOther();
  m_shown = std::move(next);
  if (!samePoints) m_model->endOther();
  if (samePoints) m_model->follow();
  m_following = false;
  if (!samePoints) m_current.reset();
  m_picture->follow();
  m_picture->setCurrent(m_current);
  sizeColumns();
  arrange();
  showChoices();
  showReversals();
  showSentence(m_current);
}

void PolarityPanel::showChoices() {
  setEnabled(m_channel != nullptr);
  m_shunt->clear();
  m_quantity->clear();
  if (!m_channel) return m_ohm->setValue(std::nullopt);
  const auto& shunts = m_channel->setup.shunts;
  for (std::size_t k = 0; k < shunts.size(); ++k)
    m_shunt->addItem(shuntText(shunts[k]), QVariant::fromValue(static_cast<qulonglong>(k)));
  m_shunt->addItem(tr("Typed resistance, a new shunt"));
  m_shunt->setCurrentIndex(m_choice.shunt ? static_cast<int>(*m_choice.shunt) : m_shunt->count() - 1);
  m_ohm->setValue(resistance().base());
  for (int k = 0; k < polarityQuantityCount; ++k)
    m_quantity->addItem(quantityWithUnit(m_shown, static_cast<PolarityQuantity>(k)));
  m_quantity->setCurrentIndex(static_cast<int>(m_shown.quantity));
}

void PolarityPanel::showReversals() {
  for (const auto& [button, flag] : m_reversals)
    button->setChecked(m_channel && m_channel->setup.bridge.hookup.*flag);
}

// ---- what is where ---------------------------------------------------------------------------

/// Takes the widest cell and the widest line of a heading.
int PolarityPanel::leastColumn() const {
  constexpr int pad = 4;
  const QFontMetrics plain(m_table->font());
  QFont strong = m_table->font();
  strong.setBold(true);
  const QFontMetrics bold(strong);
  int width = 30;
  for (const core::PolarityCell& cell : m_shown.map.cells) {
    const bool overArm = isOverArm(m_shown.bridge(), cell);
    width = std::max(width, (overArm ? bold : plain).horizontalAdvance(cellText(m_shown, cell)) + pad);
  }
  for (const core::Node point : m_shown.map.points)
    for (const QString& line : shortPointText(m_shown.bridge(), point).split(' '))
      width = std::max(width, plain.horizontalAdvance(line) + pad);
  return width;
}

/// What the cells show, and its unit, where rows and columns have their headings.
void PolarityPanel::showCorner() {
  const int count = m_model->rowCount();
  m_corner->setVisible(count > 0);
  if (count == 0) return;
  const QString name = quantityName(m_shown.bridge(), m_shown.quantity);
  m_corner->setText(name.section(' ', 0, 0) + '\n' + unitText(m_shown, m_shown.quantity));
  m_table->setAccessibleDescription(quantityWithUnit(m_shown, m_shown.quantity));
  QHeaderView &rows = *m_table->verticalHeader(), &columns = *m_table->horizontalHeader();
  rows.setMinimumWidth(std::max(rows.sizeHint().width(), m_corner->sizeHint().width() + 6));
  columns.setMinimumHeight(m_corner->sizeHint().height());
  const int frame = m_table->frameWidth();
  m_corner->setGeometry(frame, frame, rows.minimumWidth(),
                        std::max(columns.sizeHint().height(), columns.minimumHeight()));
}

/// Room that is left goes to the cells.
void PolarityPanel::sizeColumns() {
  showCorner();
  const int count = m_model->rowCount();
  if (count == 0) return;
  const int width = leastColumn(), line = m_table->fontMetrics().height();
  const QSize room = m_table->viewport()->size();
  m_table->horizontalHeader()->setDefaultSectionSize(std::clamp(room.width() / count, width, 3 * width));
  m_table->verticalHeader()->setDefaultSectionSize(std::clamp(room.height() / count, line + 4, 5 * line));
}

/// Side by side where the whole table leaves the picture its room.
void PolarityPanel::arrange() {
  const int frame = 2 * m_table->frameWidth() + 2;
  const int rows =
      std::max(m_table->verticalHeader()->sizeHint().width(), m_table->verticalHeader()->minimumWidth());
  const int table = rows + m_model->columnCount() * leastColumn() + frame;
  m_sideBySide = width() >= table + std::max(pictureWidth, pictureLetters * fontMetrics().height());
  m_table->setMinimumWidth(m_sideBySide ? table : 0);
  m_pages->setVisible(!m_sideBySide);
  m_table->setVisible(m_sideBySide || (m_asTable->isChecked() && !m_onlyShown));
  m_picture->setVisible(m_sideBySide || m_asPicture->isChecked() || m_onlyShown);
  // Room for the whole sentence, so that the table keeps its place while it changes.
  const int lines = width() < 640 ? 3 : width() < 1400 ? 2 : 1;
  m_sentence->setMinimumHeight(lines * m_sentence->fontMetrics().lineSpacing());
}

void PolarityPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  follow();
}

void PolarityPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

void PolarityPanel::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange && m_sentence) showSentence(m_current);
  QWidget::changeEvent(event);
}

bool PolarityPanel::eventFilter(QObject* watched, QEvent* event) {
  // The type first: others come while the table is being destroyed, and then it cannot be asked.
  if (event->type() == QEvent::Leave && watched == m_table->viewport()) showSentence(m_current);
  if (event->type() == QEvent::Resize && watched == m_table->viewport()) sizeColumns();
  if (watched == m_table && event->type() == QEvent::FontChange)
    QTimer::singleShot(0, this, [this] {
      // Qt does not always tell a heading when the font around it changes (6.4, before the table is shown).
      for (QHeaderView* header : {m_table->horizontalHeader(), m_table->verticalHeader()})
        header->setFont(m_table->font());
      arrange();
      sizeColumns();
    });
  if (watched != m_table || event->type() != QEvent::KeyPress) return false;
  const int key = static_cast<QKeyEvent*>(event)->key();
  if (key != Qt::Key_Return && key != Qt::Key_Enter) return false;
  if (m_current) place(*m_current);
  return true;
}

// ---- choosing and placing --------------------------------------------------------------------

void PolarityPanel::setCurrent(std::optional<PolarityPair> pair) {
  m_current = pair;
  m_following = true;
  if (pair) m_table->setCurrentIndex(m_model->index(static_cast<int>(pair->i), static_cast<int>(pair->j)));
  m_following = false;
  m_picture->setCurrent(pair);
  showSentence(pair);
}

void PolarityPanel::showSentence(std::optional<PolarityPair> pair) {
  QColor colour = coloursFor(palette()).text;
  QString text =
      tr("Point at a place to see what the shunt would do there; click it or press Enter to put it "
         "there.");
  if (!m_shown.channel)
    text = tr("No channel yet.");
  else if (m_shown.error)
    text = toText(*m_shown.error);
  else if (pair) {
    const core::PolarityCell& cell = m_shown.map.at(pair->i, pair->j);
    text = cellSentence(m_shown, cell);
    // The sentence begins with the output; where the map shows what has another sign it takes neither colour.
    const core::Polarity polarity = polarityOf(m_shown, cell);
    if (polarity != core::Polarity::None && polarity == cell.prediction->polarity)
      colour = colourOf(coloursFor(palette()), polarity);
  }
  if (m_shown.error) colour = coloursFor(palette()).fail;
  m_sentence->setText(text);
  m_sentence->setAccessibleDescription(text);
  setTextColour(m_sentence, colour);
}

void PolarityPanel::place(PolarityPair pair) {
  if (!m_channel || m_shown.error) return;
  setCurrent(pair);
  const core::PolarityCell cell = m_shown.map.at(pair.i, pair.j);
  if (!cell.prediction) return emit refused(toText(cell.prediction.error()));
  if (!m_choice.shunt) return placeTyped(cell);
  const QString told = cellSentence(m_shown, cell);
  const std::size_t shunt = *m_choice.shunt;
  if (m_shown.present == m_shown.map.cellOf(pair.i, pair.j))
    return emit said(tr("Lies there already: %1").arg(told));
  const auto [a, b] = core::endsAt(m_shown.bridge(), cell.a, cell.b);
  m_session.editChannel(tr("Move shunt"), core::withShuntAt(*m_channel, shunt, a, b));
  emit said(tr("Moved: %1").arg(told));
}

void PolarityPanel::placeTyped(const core::PolarityCell& cell) {
  const auto [a, b] = core::endsAt(m_shown.bridge(), cell.a, cell.b);
  const QString told = cellSentence(m_shown, cell);
  core::Shunt shunt{core::formatQuantity(m_choice.typed.base(), core::UnitFamily::Resistance), m_choice.typed,
                    a, b};
  // Chosen from now on, so that a second click moves it instead of adding another.
  m_choice.shunt = m_channel->setup.shunts.size();
  m_session.editChannel(tr("Add shunt"), core::withShuntAdded(*m_channel, std::move(shunt)));
  emit said(tr("New shunt: %1").arg(told));
}

}  // namespace ui

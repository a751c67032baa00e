// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/many_fields.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QStackedWidget>

#include "core/circuit/bridge_template.h"
#include "core/units/day_words.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"
#include "ui/fields/cell_number.h"
#include "ui/fields/count_edit.h"
#include "ui/parts.h"
#include "ui/theme.h"

namespace ui {
namespace {

using core::ChannelValues;
using core::UnitFamily;

enum class Kind { Text, Quantity, Day, Template, Unit, Rule, Check, Pattern, Nothing };

}  // namespace

/// One thing to edit. `put` takes what the field says: a text, or the number of a quantity in its base unit,
/// or the position of a choice.
struct ManyFields::Row {
  const char* name;  ///< in the choice and in the undo step
  Kind kind = Kind::Text;
  UnitFamily family = UnitFamily::Plain;
  std::function<void(ChannelValues&, const std::string& text, double number)> put = {};
  const char* about = "";
  const char* example = "";
};

namespace {

QString tr(const char* text) { return text && *text ? ManyFields::tr(text) : QString(); }

core::Error needed(const QString& what) { return {"", what.toStdString(), ""}; }

core::Result<core::BatchEdit> apart(core::BatchEdit edit) { return edit; }

}  // namespace

const std::vector<ManyFields::Row>& ManyFields::rows() {
  using V = ChannelValues;
  using S = const std::string&;
  static const std::vector<Row> all{
      {QT_TR_NOOP("Group"),
       Kind::Text,
       {},
       [](V& v, S text, double) { v.group = text; },
       QT_TR_NOOP("What the channels belong with; empty takes them out of their groups."),
       QT_TR_NOOP("left spar")},
      {QT_TR_NOOP("Note"), Kind::Text, {}, [](V& v, S text, double) { v.note = text; }},
      {QT_TR_NOOP("Names by a pattern"),
       Kind::Pattern,
       {},
       {},
       QT_TR_NOOP("{nn} counts with two digits, {name} is the present name, {group} the group, {column} the "
                  "recording column."),
       QT_TR_NOOP("TP-{nn}")},
      {QT_TR_NOOP("Bridge"),
       Kind::Template,
       {},
       [](V& v, S, double number) { v.type = static_cast<core::BridgeType>(number); },
       QT_TR_NOOP("Refused where a shunt or a pin would lose its place.")},
      {QT_TR_NOOP("Gauge resistance"), Kind::Quantity, UnitFamily::Resistance,
       [](V& v, S, double number) { v.gaugeResistance = core::Resistance(number); },
       QT_TR_NOOP("Arms at the old nominal value follow, others stay."), "350 Ω"},
      {QT_TR_NOOP("Gauge factor"), Kind::Quantity, UnitFamily::Plain,
       [](V& v, S, double number) { v.gaugeFactor = number; },
       QT_TR_NOOP("That which the instrument is set to follows where it was the same."), "2.08"},
      {QT_TR_NOOP("Gauge factor of the instrument"), Kind::Quantity, UnitFamily::Plain,
       [](V& v, S, double number) { v.instrumentGaugeFactor = number; }, "", "2.00"},
      {QT_TR_NOOP("Resistance of each lead"), Kind::Quantity, UnitFamily::Resistance,
       [](V& v, S, double number) { v.lead = core::Resistance(number); },
       QT_TR_NOOP("Of each wire in use, sense leads among them."), "0.5 Ω"},
      {QT_TR_NOOP("Unit of the readings"),
       Kind::Unit,
       {},
       [](V& v, S, double number) {
         v.unit = core::UnitSetting{.unit = static_cast<core::ReadingUnit>(number)};
       },
       QT_TR_NOOP(
           "Refused where an open check has readings, or a least limit is set: their numbers would mean "
           "something else.")},
      {QT_TR_NOOP("Excitation"), Kind::Quantity, UnitFamily::Voltage,
       [](V& v, S, double number) { v.excitation = core::Voltage(number); }, "", "5 V"},
      {QT_TR_NOOP("Name of the instrument"),
       Kind::Text,
       {},
       [](V& v, S text, double) { v.instrumentName = text; }},
      {QT_TR_NOOP("Serial number of the instrument"),
       Kind::Text,
       {},
       [](V& v, S text, double) { v.instrumentSerial = text; }},
      {QT_TR_NOOP("Certificate of the instrument"),
       Kind::Text,
       {},
       [](V& v, S text, double) { v.instrumentCertificate = text; }},
      {QT_TR_NOOP("Due date of the instrument"),
       Kind::Day,
       {},
       {},
       QT_TR_NOOP("As year-month-day; empty takes it away."),
       "2027-05-31"},
      {QT_TR_NOOP("Limit, of expected reading"), Kind::Quantity, UnitFamily::Percent,
       [](V& v, S, double number) { v.relativeLimit = number; }, "", "1 %"},
      {QT_TR_NOOP("Limit of zero return"), Kind::Quantity, UnitFamily::Percent,
       [](V& v, S, double number) { v.zeroReturnLimit = number; }, "", "0.5 %"},
      {QT_TR_NOOP("Margin of change"), Kind::Quantity, UnitFamily::Percent,
       [](V& v, S, double number) { v.changeLimit = number; },
       QT_TR_NOOP("Between two checks; to be fixed before the test."), "1 %"},
      {QT_TR_NOOP("Margin of the zero"), Kind::Quantity, UnitFamily::Percent,
       [](V& v, S, double number) { v.zeroChangeLimit = number; },
       QT_TR_NOOP("Between two checks; to be fixed before the test."), "0.5 %"},
      {QT_TR_NOOP("Decision rule"),
       Kind::Rule,
       {},
       [](V& v, S, double number) {
         v.decision = core::Decision{.rule = static_cast<core::DecisionRule>(number)};
       },
       QT_TR_NOOP("With its usual numbers.")},
      {QT_TR_NOOP("Close a check"),
       Kind::Check,
       {},
       {},
       QT_TR_NOOP("It keeps the present set-up from now on. Refused where it has no reading.")},
      {QT_TR_NOOP("Remove the channels"),
       Kind::Nothing,
       {},
       {},
       QT_TR_NOOP("With their plans and checks; undo brings them back.")},
  };
  return all;
}

ManyFields::ManyFields(const core::Document& document, const std::vector<std::size_t>& to, QWidget* parent)
    : QWidget(parent),
      m_what(new QComboBox),
      m_stack(new QStackedWidget),
      m_text(new QLineEdit),
      m_choice(new QComboBox),
      m_first(new CountEdit),
      m_firstLabel(new QLabel(tr("counted &from"))),
      m_about(plainLabel("manyAbout")) {
  for (const std::size_t k : to)
    for (const core::Check& check : document.channels[k]->checks)
      if (!check.closedWith && !m_checks.contains(toQString(check.name))) m_checks << toQString(check.name);
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  m_what->setObjectName("manyWhat");
  m_what->setAccessibleName(tr("What to edit"));
  m_what->setMaxVisibleItems(24);
  for (const Row& row : rows()) m_what->addItem(ui::tr(row.name));
  m_text->setObjectName("manyText");
  m_choice->setObjectName("manyChoice");
  attachNumber(m_text, [this]() -> std::optional<CellNumber> {
    if (row().kind != Kind::Quantity) return std::nullopt;
    return CellNumber{row().family, {}};
  });
  m_first->setObjectName("manyFirst");
  m_first->setAccessibleName(tr("First number"));
  m_first->setRange(0, 999999);
  m_first->setValue(1);
  m_firstLabel->setBuddy(m_first);
  m_stack->addWidget(m_text);
  m_stack->addWidget(m_choice);
  m_stack->addWidget(new QWidget);
  m_stack->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  grid->addWidget(m_what, 0, 0);
  grid->addWidget(m_stack, 0, 1);
  grid->addWidget(m_firstLabel, 0, 2);
  grid->addWidget(m_first, 0, 3);
  grid->addWidget(m_about, 1, 0, 1, 4);
  grid->setColumnStretch(1, 1);
  connect(m_what, &QComboBox::currentIndexChanged, this, &ManyFields::show);
  connect(m_text, &QLineEdit::textChanged, this, &ManyFields::changed);
  connect(m_choice, &QComboBox::currentIndexChanged, this, &ManyFields::changed);
  connect(m_first, &CountEdit::valueChanged, this, &ManyFields::changed);
  show();
}

const ManyFields::Row& ManyFields::row() const {
  return rows()[static_cast<std::size_t>(m_what->currentIndex())];
}

void ManyFields::fillChoices(const Row& row) {
  const QSignalBlocker quiet(m_choice);
  m_choice->clear();
  if (row.kind == Kind::Template)
    for (std::size_t k = 0; k < core::bridgeTypeCount; ++k)
      m_choice->addItem(toQString(core::say(core::templateOf(static_cast<core::BridgeType>(k)).name)));
  if (row.kind == Kind::Unit) m_choice->addItems({tr("strain, µm/m"), tr("output, mV/V"), tr("voltage, mV")});
  if (row.kind == Kind::Rule)
    for (std::size_t k = 0; k < core::decisionRuleCount; ++k)
      m_choice->addItem(toQString(core::say(core::decisionRuleName(static_cast<core::DecisionRule>(k)))));
  if (row.kind == Kind::Check) m_choice->addItems(QStringList(tr("all open checks")) + m_checks);
}

void ManyFields::show() {
  const Row& now = row();
  const bool choice = now.kind == Kind::Template || now.kind == Kind::Unit || now.kind == Kind::Rule ||
                      now.kind == Kind::Check;
  {
    const QSignalBlocker quiet(m_text);
    m_text->clear();
  }
  fillChoices(now);
  m_text->setPlaceholderText(*now.example ? tr("such as %1").arg(ui::tr(now.example)) : QString());
  m_text->setAccessibleName(ui::tr(now.name));
  m_choice->setAccessibleName(ui::tr(now.name));
  m_stack->setCurrentIndex(choice ? 1 : now.kind == Kind::Nothing ? 2 : 0);
  m_firstLabel->setVisible(now.kind == Kind::Pattern);
  m_first->setVisible(now.kind == Kind::Pattern);
  m_about->setText(ui::tr(now.about));
  emit changed();
}

QString ManyFields::label() const {
  switch (row().kind) {
    case Kind::Check:
      return tr("Close checks");
    case Kind::Nothing:
      return tr("Remove channels");
    case Kind::Pattern:
      return tr("Rename channels");
    default:
      return tr("Change %1").arg(m_what->currentText());
  }
}

core::Result<ManyFields::Act> ManyFields::act() const {
  const Row& now = row();
  const std::string text = m_text->text().trimmed().toStdString();
  ChannelValues values;
  double number = m_choice->currentIndex();
  switch (now.kind) {
    case Kind::Nothing:
      return Act(
          [](const auto& document, auto to) { return apart(core::withChannelsRemoved(document, to)); });
    case Kind::Check:
      if (m_choice->currentIndex() == 0)
        return Act(
            [](const auto& document, auto to) { return apart(core::withOpenChecksClosed(document, to)); });
      return Act([name = m_choice->currentText().toStdString()](const auto& document, auto to) {
        return apart(core::withChecksClosed(document, to, name));
      });
    case Kind::Pattern:
      if (text.empty()) return needed(tr("A pattern of the names is needed"));
      if (!m_first->isTaken()) return needed(tr("The first number is a whole number"));
      return Act([text, first = static_cast<std::size_t>(m_first->value())](const auto& document, auto to) {
        return core::withNamesByPattern(document, to, text, first);
      });
    case Kind::Day: {
      const auto day = core::dayFromWords(text);
      if (!day) return day.error();
      values.instrumentDue.emplace(*day);
      break;
    }
    case Kind::Quantity: {
      if (text.empty()) return needed(tr("A value is needed"));
      const core::Result<double> value = core::parseQuantity(text, now.family);
      if (!value) return value.error();
      number = *value;
      [[fallthrough]];
    }
    default:
      now.put(values, text, number);
  }
  return Act(
      [values](const auto& document, auto to) { return apart(core::withValuesIn(document, to, values)); });
}

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup_form.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <QWheelEvent>

#include "core/document/edits.h"
#include "ui/theme.h"
#include "ui/wire_dialog.h"

namespace ui {
namespace {

using core::UnitFamily;

bool hasGauge(const core::Channel& channel) { return !core::isTransducer(channel.setup.bridge); }
bool hasRating(const core::Channel& channel) { return core::isTransducer(channel.setup.bridge); }

bool usesPoisson(const core::Channel& channel) {
  if (!hasGauge(channel)) return false;
  for (const core::StrainShare& share : core::templateOf(channel.setup.bridge.type).shares)
    if (share.poisson != 0) return true;
  return false;
}

bool usesLead(const core::Channel& channel, core::LeadRole role) {
  for (const core::Wire& wire : core::wiresOf(channel.setup.bridge))
    if (wire.role == role) return true;
  return false;
}

bool showsUnit(const core::Channel& channel, core::ReadingUnit unit) {
  return channel.setup.instrument.unit == unit;
}

/// Arms that are still at the old nominal value follow the new one; measured ones stay.
void setNominal(core::Channel& channel, double ohm) {
  core::Bridge& bridge = channel.setup.bridge;
  for (core::Resistance& arm : bridge.arms)
    if (arm == bridge.gauge.nominal) arm = core::Resistance(ohm);
  bridge.gauge.nominal = core::Resistance(ohm);
}

/// Combo boxes change only when meant to: the wheel over an unfocused one scrolls the form instead.
class CalmComboBox : public QComboBox {
 public:
  explicit CalmComboBox(const QString& name, const QString& accessible) {
    setObjectName(name);
    setAccessibleName(accessible);
    setFocusPolicy(Qt::StrongFocus);
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(6);
  }

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

}  // namespace

SetupForm::SetupForm(Session& session, QWidget* parent) : QScrollArea(parent), m_session(session) {
  setObjectName("setupForm");
  setAccessibleName(tr("Channel set-up"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_body = new QWidget;
  m_layout = new QVBoxLayout(m_body);
  m_layout->setContentsMargins(6, 6, 6, 6);
  addChannelGroup();
  addBridgeGroup();
  addArmsGroup();
  addLeadsGroup();
  addInstrumentGroup();
  addLimitsGroup();
  m_layout->addStretch();
  setWidget(m_body);
  // No row may be cut off: the form scrolls up and down only.
  setMinimumWidth(m_body->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width() + 2);
  connect(&session, &Session::changed, this, &SetupForm::refresh);
  refresh();
}

QGridLayout* SetupForm::addGroup(const QString& title, const QString& objectName) {
  auto* group = new QGroupBox(title, m_body);
  group->setObjectName(objectName);
  // Not a QFormLayout: in Qt 6.4 that one writes out of bounds when rows are hidden beside wrapped text.
  auto* form = new QGridLayout(group);
  form->setContentsMargins(8, 4, 8, 6);
  form->setVerticalSpacing(4);
  form->setColumnStretch(1, 1);
  m_layout->addWidget(group);
  return form;
}

QuantityEdit* SetupForm::addField(QGridLayout* form, const FieldText& text, UnitFamily family, Getter get,
                                  Setter set, Shown shown) {
  auto* edit = new QuantityEdit(family, m_body);
  edit->setObjectName(text.name);
  edit->setAccessibleName(text.label);
  addRow(form, text.label, edit);
  connect(edit, &QuantityEdit::refused, this, &SetupForm::refused);
  connect(edit, &QuantityEdit::valueEdited, this, [this, set, label = text.editLabel](double base) {
    change(label, [&](Channel& channel) { set(channel, base); });
  });
  m_fields.push_back({edit, edit, std::move(get), std::move(shown)});
  return edit;
}

void SetupForm::addRow(QGridLayout* form, const QString& label, QWidget* widget) {
  const int row = form->rowCount();
  if (label.isEmpty()) return form->addWidget(widget, row, 0, 1, 2);
  auto* text = new QLabel(label);
  text->setTextFormat(Qt::PlainText);
  form->addWidget(text, row, 0);
  form->addWidget(widget, row, 1);
  m_labels[widget] = text;
}

void SetupForm::showRow(QWidget* widget, bool shown) {
  widget->setVisible(shown);
  if (const auto label = m_labels.find(widget); label != m_labels.end()) label->second->setVisible(shown);
}

void SetupForm::addText(QGridLayout* form, const QString& name, const QString& label,
                        std::string Channel::*member) {
  auto* edit = new QLineEdit(m_body);
  edit->setObjectName(name);
  edit->setAccessibleName(label);
  edit->installEventFilter(new FieldUndoFilter(edit));
  addRow(form, label, edit);
  connect(edit, &QLineEdit::editingFinished, this, [this, edit, member, label] {
    if (!edit->isModified()) return;
    edit->setModified(false);
    const std::string text = edit->text().trimmed().toStdString();
    change(tr("Change %1").arg(label.toLower()), [&](Channel& channel) {
      channel.*member = text;
      if (member == &Channel::name)
        channel.name = core::uniqueChannelName(m_session.document(), text, *m_session.selection().channel);
    });
    refresh();
  });
  m_refreshers.push_back([edit, member](const Channel& channel) {
    const QString text = toQString(channel.*member);
    if (edit->text() != text && !edit->isModified()) edit->setText(text);
  });
}

void SetupForm::addChannelGroup() {
  QGridLayout* form = addGroup(tr("Channel"), "channelGroup");
  addText(form, "channelName", tr("Name"), &Channel::name);
  addText(form, "channelNote", tr("Note"), &Channel::note);
}

void SetupForm::addBridgeGroup() {
  QGridLayout* form = addGroup(tr("Bridge"), "bridgeGroup");
  m_template = new CalmComboBox("bridgeTemplate", tr("Bridge template"));
  for (const core::BridgeTemplate& shape : core::allTemplates())
    m_template->addItem(toQString(shape.name), static_cast<int>(shape.type));
  m_template->view()->setMinimumWidth(m_template->view()->sizeHintForColumn(0) + 24);
  addRow(form, {}, m_template);
  connect(m_template, &QComboBox::activated, this, [this](int row) {
    const auto type = static_cast<core::BridgeType>(m_template->itemData(row).toInt());
    if (m_session.channel())
      m_session.editChannel(tr("Change bridge template"), core::withBridgeType(*m_session.channel(), type));
  });
  m_about = new QLabel;
  m_about->setTextFormat(Qt::PlainText);
  m_about->setWordWrap(true);
  addRow(form, {}, m_about);
  m_sixWire = new QCheckBox(tr("Six-wire: sense leads"));
  m_sixWire->setObjectName("sixWire");
  addRow(form, {}, m_sixWire);
  connect(m_sixWire, &QCheckBox::clicked, this, [this](bool on) {
    change(tr("Change connection"), [on](Channel& channel) { channel.setup.bridge.sixWire = on; });
  });

  addGaugeFields(form);
  addRatingFields(form);
}

void SetupForm::addGaugeFields(QGridLayout* form) {
  addField(
      form, {"gaugeResistance", tr("Gauge, nominal"), tr("Change gauge resistance")}, UnitFamily::Resistance,
      [](const Channel& c) { return c.setup.bridge.gauge.nominal.base(); }, setNominal, hasGauge)
      ->setLeast(0, false);
  addField(
      form, {"gaugeFactor", tr("Gauge factor"), tr("Change gauge factor")}, UnitFamily::Plain,
      [](const Channel& c) { return c.setup.bridge.gauge.factor; },
      [](Channel& c, double v) { c.setup.bridge.gauge.factor = v; }, hasGauge)
      ->setLeast(0, false);
  auto* poisson = addField(
      form, {"poissonRatio", tr("Poisson's ratio"), tr("Change Poisson's ratio")}, UnitFamily::Plain,
      [](const Channel& c) { return c.setup.bridge.gauge.poissonRatio; },
      [](Channel& c, double v) { c.setup.bridge.gauge.poissonRatio = v; }, usesPoisson);
  poisson->setLeast(0, true);
  poisson->setGreatest(0.5);
}

void SetupForm::addRatingFields(QGridLayout* form) {
  addField(
      form, {"ratedOutput", tr("Rated output"), tr("Change rated output")}, UnitFamily::Output,
      [](const Channel& c) { return c.setup.bridge.rating.ratedOutput.base(); },
      [](Channel& c, double v) { c.setup.bridge.rating.ratedOutput = core::Output(v); }, hasRating)
      ->setLeast(0, false);
  auto* capacity = addField(
      form, {"capacity", tr("Capacity"), tr("Change capacity")}, UnitFamily::Named,
      [](const Channel& c) { return c.setup.bridge.rating.capacity; },
      [](Channel& c, double v) { c.setup.bridge.rating.capacity = v; }, hasRating);
  capacity->setLeast(0, false);
  m_refreshers.push_back(
      [capacity](const Channel& c) { capacity->setUnit(toQString(c.setup.bridge.rating.loadUnit)); });
}

void SetupForm::addArmsGroup() {
  QGridLayout* form = addGroup(tr("Arms as installed, without load"), "armsGroup");
  for (const std::size_t arm : {0, 1, 2, 3})
    addField(
        form, {QString("arm%1").arg(arm + 1), tr("Arm %1").arg(arm + 1), tr("Change arm")},
        UnitFamily::Resistance, [arm](const Channel& c) { return c.setup.bridge.arms[arm].base(); },
        [arm](Channel& c, double v) { c.setup.bridge.arms[arm] = core::Resistance(v); })
        ->setLeast(0, false);
}

void SetupForm::addLeadsGroup() {
  QGridLayout* form = addGroup(tr("Leads, each one way"), "leadsGroup");
  for (std::size_t k = 0; k < core::leadRoleCount; ++k) {
    const auto role = static_cast<core::LeadRole>(k);
    const QString name = toQString(core::leadName(role));
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    auto* edit = new QuantityEdit(UnitFamily::Resistance);
    edit->setObjectName("lead" + QString::number(k));
    edit->setAccessibleName(tr("Lead %1").arg(name));
    edit->setLeast(0, true);
    auto* wire = new QToolButton;
    wire->setObjectName("wire" + QString::number(k));
    wire->setText(tr("Wire…"));
    wire->setAccessibleName(tr("Lead %1 from length and size").arg(name));
    wire->setToolTip(tr("Work the resistance out from length and size of a copper wire"));
    line->addWidget(edit);
    line->addWidget(wire);
    addRow(form, name, row);
    connect(edit, &QuantityEdit::refused, this, &SetupForm::refused);
    connect(edit, &QuantityEdit::valueEdited, this, [this, k](double v) {
      change(tr("Change lead"), [&](Channel& c) { c.setup.bridge.leads[k] = core::Resistance(v); });
    });
    connect(wire, &QToolButton::clicked, this, [this, role] { editWire(role); });
    m_refreshers.push_back([edit, k](const Channel& c) {
      const bool fromWire = std::holds_alternative<core::CopperWire>(c.setup.bridge.leads[k]);
      edit->setShownDigits(fromWire ? 5 : 12);
    });
    m_fields.push_back({edit, row,
                        [k](const Channel& c) { return core::resistanceOf(c.setup.bridge.leads[k]).base(); },
                        [role](const Channel& c) { return usesLead(c, role); }});
  }
}

void SetupForm::addInstrumentGroup() {
  QGridLayout* form = addGroup(tr("Instrument"), "instrumentGroup");
  addField(
      form, {"excitation", tr("Excitation"), tr("Change excitation")}, UnitFamily::Voltage,
      [](const Channel& c) { return c.setup.instrument.excitation.base(); },
      [](Channel& c, double v) { c.setup.instrument.excitation = core::Voltage(v); })
      ->setLeast(0, false);
  auto* input = addField(
      form, {"inputResistance", tr("Input resistance"), tr("Change input resistance")},
      UnitFamily::Resistance,
      [](const Channel& c) -> std::optional<double> {
        const auto& ohm = c.setup.instrument.inputResistance;
        return ohm ? std::optional(ohm->base()) : std::nullopt;
      },
      [](Channel& c, double v) { c.setup.instrument.inputResistance = core::Resistance(v); });
  input->setLeast(0, false);
  input->setOptional(tr("takes no current"));
  connect(input, &QuantityEdit::cleared, this, [this] {
    change(tr("Change input resistance"), [](Channel& c) { c.setup.instrument.inputResistance.reset(); });
  });
  m_unit = new CalmComboBox("readingUnit", tr("Reads in"));
  for (const QString& text : {tr("strain, µm/m"), tr("output, mV/V"), tr("voltage, mV"), tr("scaled unit")})
    m_unit->addItem(text);
  addRow(form, tr("Reads in"), m_unit);
  connect(m_unit, &QComboBox::activated, this, [this](int row) {
    change(tr("Change reading unit"),
           [row](Channel& c) { c.setup.instrument.unit = static_cast<core::ReadingUnit>(row); });
  });
  addUnitFields(form);
}

void SetupForm::addUnitFields(QGridLayout* form) {
  const auto strain = [](const Channel& c) { return showsUnit(c, core::ReadingUnit::MicrometrePerMetre); };
  const auto scaled = [](const Channel& c) { return showsUnit(c, core::ReadingUnit::Scaled); };
  addField(
      form, {"gaugeFactorSet", tr("Gauge factor set"), tr("Change gauge factor set")}, UnitFamily::Plain,
      [](const Channel& c) { return c.setup.instrument.gaugeFactor; },
      [](Channel& c, double v) { c.setup.instrument.gaugeFactor = v; }, strain)
      ->setLeast(0, false);
  addField(
      form, {"bridgeFactorSet", tr("Bridge factor set"), tr("Change bridge factor set")}, UnitFamily::Plain,
      [](const Channel& c) { return c.setup.instrument.bridgeFactor; },
      [](Channel& c, double v) { c.setup.instrument.bridgeFactor = v; }, strain)
      ->setLeast(0, false);
  addField(
      form, {"scale", tr("Units per mV/V"), tr("Change scale")}, UnitFamily::Plain,
      [](const Channel& c) { return c.setup.instrument.unitsPerMillivoltPerVolt; },
      [](Channel& c, double v) { c.setup.instrument.unitsPerMillivoltPerVolt = v; }, scaled);
  auto* unit = new QLineEdit(m_body);
  unit->setObjectName("scaledUnit");
  unit->setAccessibleName(tr("Scaled unit"));
  unit->installEventFilter(new FieldUndoFilter(unit));
  addRow(form, tr("Scaled unit"), unit);
  connect(unit, &QLineEdit::editingFinished, this, [this, unit] {
    if (!unit->isModified()) return;
    const std::string text = unit->text().trimmed().toStdString();
    change(tr("Change scaled unit"), [&](Channel& c) {
      c.setup.instrument.scaledUnit = text;
      c.setup.bridge.rating.loadUnit = text;
    });
    unit->setModified(false);
  });
  m_refreshers.push_back([this, unit, scaled](const Channel& c) {
    showRow(unit, scaled(c) || core::isTransducer(c.setup.bridge));
    if (!unit->isModified()) unit->setText(toQString(c.setup.instrument.scaledUnit));
  });
}

void SetupForm::addLimitsGroup() {
  QGridLayout* form = addGroup(tr("Limits (electrical chain)"), "limitsGroup");
  addField(
      form, {"limitRelative", tr("Of expected reading"), tr("Change limit")}, UnitFamily::Percent,
      [](const Channel& c) { return c.setup.limits.relative; },
      [](Channel& c, double v) { c.setup.limits.relative = v; })
      ->setLeast(0, true);
  auto* least = addField(
      form, {"limitLeast", tr("Never narrower than"), tr("Change limit")}, UnitFamily::Named,
      [](const Channel& c) { return c.setup.limits.least.base(); },
      [](Channel& c, double v) { c.setup.limits.least = core::Reading(v); });
  least->setLeast(0, true);
  m_refreshers.push_back(
      [least](const Channel& c) { least->setUnit(toQString(core::readingUnitText(c.setup.instrument))); });
  addField(
      form, {"limitZeroReturn", tr("Zero return, of span"), tr("Change limit")}, UnitFamily::Percent,
      [](const Channel& c) { return c.setup.limits.zeroReturn; },
      [](Channel& c, double v) { c.setup.limits.zeroReturn = v; })
      ->setLeast(0, true);
}

void SetupForm::editWire(core::LeadRole role) {
  if (!m_session.channel()) return;
  WireDialog dialog(m_session.channel()->setup.bridge.leads[static_cast<std::size_t>(role)], this);
  if (dialog.exec() != QDialog::Accepted) return;
  change(tr("Change lead"), [&](Channel& channel) {
    for (const core::Wire& wire : core::wiresOf(channel.setup.bridge))
      if (wire.role == role || dialog.forAllLeads())
        channel.setup.bridge.leads[static_cast<std::size_t>(wire.role)] = dialog.wire();
  });
}

void SetupForm::focusField(const QString& objectName) {
  if (auto* field = m_body->findChild<QLineEdit*>(objectName)) {
    ensureWidgetVisible(field);
    field->setFocus(Qt::OtherFocusReason);
    field->selectAll();
  }
}

void SetupForm::change(const QString& label, const std::function<void(Channel&)>& edit) {
  if (!m_session.channel()) return;
  Channel channel = *m_session.channel();
  edit(channel);
  m_session.editChannel(label, std::move(channel));
}

void SetupForm::refresh() {
  const auto& selected = m_session.selection().channel;
  const auto channel = selected ? m_session.document().channels[*selected] : nullptr;
  m_body->setVisible(channel != nullptr);
  if (!channel || channel == m_shown) return;
  m_shown = channel;
  for (const auto& refresher : m_refreshers) refresher(*channel);
  for (const Field& field : m_fields) {
    const bool shown = !field.shown || field.shown(*channel);
    showRow(field.row, shown);
    if (shown) field.edit->setValue(field.get(*channel));
  }
  refreshChoices(*channel);
}

void SetupForm::refreshChoices(const Channel& channel) {
  const core::BridgeTemplate& shape = core::templateOf(channel.setup.bridge.type);
  m_template->setCurrentIndex(m_template->findData(static_cast<int>(shape.type)));
  m_about->setText(toQString(shape.about));
  m_sixWire->setVisible(shape.senseLeads);
  m_sixWire->setChecked(channel.setup.bridge.sixWire);
  m_unit->setCurrentIndex(static_cast<int>(channel.setup.instrument.unit));
}

}  // namespace ui

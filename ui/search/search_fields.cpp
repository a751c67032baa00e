// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/search/search_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QRegularExpression>
#include <algorithm>

#include "core/circuit/node_words.h"
#include "core/units/text.h"
#include "ui/fields/cell_number.h"
#include "ui/fields/count_edit.h"
#include "ui/quantity_edit.h"
#include "ui/search/use_set.h"
#include "ui/theme.h"

#include "core/units/language.h"

namespace ui {
namespace {

/// Parts of a list: between semicolons, blanks, and commas that a blank follows, so that a decimal comma
/// stays.
QStringList partsOf(const QString& text) {
  static const QRegularExpression between("\\s*;\\s*|,\\s+|\\s*\\n\\s*");
  QStringList parts;
  for (const QString& part : text.split(between))
    if (!part.trimmed().isEmpty()) parts << part.trimmed();
  return parts;
}

QComboBox* nodeBox(const core::Bridge& bridge, core::Node chosen) {
  auto* box = new QComboBox;
  for (const core::Node node : core::allNodes())
    if (core::hasNode(bridge, node)) box->addItem(toQString(core::nodeWords(node)), static_cast<int>(node));
  box->setCurrentIndex(box->findData(static_cast<int>(chosen)));
  return box;
}

}  // namespace

SearchGroup::SearchGroup(const QString& title, QWidget* parent) : QGroupBox(title, parent) {
  m_form = new QFormLayout(this);
  m_form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
  m_form->setVerticalSpacing(4);
}

void SearchGroup::addRow(const QString& label, const char* name, QWidget* widget) {
  widget->setObjectName(name);
  if (!label.isEmpty()) widget->setAccessibleName(label);
  m_form->addRow(label, widget);
}

void SearchGroup::showRow(QWidget* field, bool shown) {
  field->setVisible(shown);
  if (QWidget* label = m_form->labelForField(field)) label->setVisible(shown);
}

QuantityEdit* SearchGroup::quantity(const char* name, const QString& label, core::UnitFamily family,
                                    double& target) {
  auto* edit = new QuantityEdit(family);
  edit->setObjectName(name);
  edit->setAccessibleName(label);
  edit->setLeast(0, true);
  edit->setValue(target);
  connect(edit, &QuantityEdit::valueEdited, this, [&target](double value) { target = value; });
  return edit;
}

core::Result<void> SearchGroup::commit() {
  for (NumberEdit* edit : findChildren<NumberEdit*>()) {
    if (edit->isHidden()) continue;
    edit->commit();
    if (!edit->isRefused()) continue;
    edit->setFocus();
    return core::Error{
        edit->accessibleName().toStdString(),
        core::say("{1} is no value for this field", {core::inQuotes(edit->text().toStdString())}),
        core::say("Correct it, or press Escape in the field to have the last value back")};
  }
  return {};
}

LevelsGroup::LevelsGroup(const core::Bridge& bridge, QWidget* parent)
    : SearchGroup(tr("Levels wanted"), parent), m_bridge(bridge) {
  m_greatest = m_range = core::isTransducer(bridge) ? bridge.rating.capacity : 3000;
  const QString unit = toQString(core::simulatedUnitText(bridge));
  m_kind = add(tr("Given as"), "levelsKind", new QComboBox);
  m_kind->addItems({tr("equal spacing"), tr("a list"), tr("shares of a test range")});
  const auto level = [&](const char* name, const QString& label, double& target) {
    auto* edit = quantity(name, label, core::UnitFamily::Named, target);
    edit->setUnit(unit);
    edit->setLeast(0, false);
    edit->setValue({});  // shown anew, now with its unit
    edit->setValue(target);
    return add(label, name, edit);
  };
  m_greatestField = level("greatestLevel", tr("Greatest level"), m_greatest);
  m_count = add(tr("Levels a side"), "levelCount", new CountEdit);
  m_count->setRange(1, 20);
  m_count->setValue(3);
  m_list =
      add(tr("Levels, %1").arg(unit), "levelList", new QLineEdit("1000; 2000; 3000; -1000; -2000; -3000"));
  m_rangeField = level("testRange", tr("Test range"), m_range);
  m_shares = add(tr("Shares, %"), "levelShares", new QLineEdit("20; 40; 60; 80; 100"));
  for (QLineEdit* list : {m_list, m_shares})
    attachNumberList(list, [this, list] {
      if (list == m_shares) return CellNumber{core::UnitFamily::Percent, {}};
      return core::isTransducer(m_bridge)
                 ? CellNumber{core::UnitFamily::Named, toQString(m_bridge.rating.loadUnit)}
                 : CellNumber{core::UnitFamily::Strain, {}};
    });
  m_sides = add(tr("Sides"), "levelSides", new QComboBox);
  m_sides->addItems({tr("both"), tr("positive"), tr("negative")});
  connect(m_kind, &QComboBox::currentIndexChanged, this, &LevelsGroup::showKind);
  showKind();
}

void LevelsGroup::showKind() {
  const int kind = m_kind->currentIndex();
  showRow(m_greatestField, kind == Equal);
  showRow(m_count, kind == Equal);
  showRow(m_list, kind == List);
  showRow(m_rangeField, kind == Shares);
  showRow(m_shares, kind == Shares);
  showRow(m_sides, kind != List);
}

core::Result<std::vector<double>> LevelsGroup::shares() const {
  std::vector<double> shares;
  for (const QString& part : partsOf(m_shares->text())) {
    const auto share = core::parseQuantity(part.toStdString(), core::UnitFamily::Percent);
    if (!share) {
      core::Error error = share.error();
      error.where = "shares";
      return error;
    }
    if (!(*share > 0))
      return core::Error{"shares", core::say("{1} is not above zero", {core::inQuotes(part.toStdString())}),
                         core::say("Leave it out")};
    shares.push_back(*share);
  }
  if (shares.empty())
    return core::Error{"shares", core::say("none is given"),
                       core::say("Enter shares such as 20; 40; 60; 80; 100")};
  return shares;
}

core::Result<std::vector<double>> LevelsGroup::levels() const {
  const bool positive = m_sides->currentIndex() != 2, negative = m_sides->currentIndex() != 1;
  switch (m_kind->currentIndex()) {
    case Equal:
      return core::equalLevels(m_greatest, static_cast<unsigned>(m_count->value()), positive, negative);
    case List:
      return core::levelsFromText(m_list->text().toStdString(), m_bridge);
    default: {
      const auto wanted = shares();
      if (!wanted) return wanted.error();
      return core::levelsByShare(m_range, *wanted, positive, negative);
    }
  }
}

PlacesGroup::PlacesGroup(const core::Bridge& bridge, QWidget* parent) : SearchGroup(tr("Places"), parent) {
  addPlace(true, bridge);
  addPlace(false, bridge);
}

void PlacesGroup::addPlace(bool positive, const core::Bridge& bridge) {
  Row& row = m_rows[positive ? 1 : 0];
  const core::ShuntPlace usual =
      core::usualPlace(bridge, positive ? core::Polarity::Positive : core::Polarity::Negative);
  const QString side = positive ? "positive" : "negative";
  row.from = nodeBox(bridge, usual.a);
  row.to = nodeBox(bridge, usual.b);
  row.from->setObjectName(side + "From");
  row.to->setObjectName(side + "To");
  const QString name = positive ? tr("+ positive") : tr("− negative");
  row.from->setAccessibleName(tr("%1 from node").arg(name));
  row.to->setAccessibleName(tr("%1 to node").arg(name));
  auto* nodes = new QHBoxLayout;
  nodes->setSpacing(6);
  nodes->addWidget(row.from, 1);
  nodes->addWidget(new QLabel(tr("to")));
  nodes->addWidget(row.to, 1);
  form()->addRow(name, nodes);
  auto* wires = quantity(qPrintable(side + "Wires"), tr("%1, wires").arg(name), core::UnitFamily::Resistance,
                         row.wires_ohm);
  auto* contact = quantity(qPrintable(side + "Contact"), tr("%1, closed switch").arg(name),
                           core::UnitFamily::Resistance, row.contact_ohm);
  auto* ohms = new QHBoxLayout;
  ohms->setSpacing(6);
  ohms->addWidget(new QLabel(tr("wires")));
  ohms->addWidget(wires, 1);
  ohms->addWidget(new QLabel(tr("switch")));
  ohms->addWidget(contact, 1);
  form()->addRow(QString(), ohms);
}

core::ShuntPlace PlacesGroup::place(bool positive) const {
  const Row& row = m_rows[positive ? 1 : 0];
  return {static_cast<core::Node>(row.from->currentData().toInt()),
          static_cast<core::Node>(row.to->currentData().toInt()), core::Resistance(row.wires_ohm),
          core::Resistance(row.contact_ohm)};
}

ResistorsGroup::ResistorsGroup(const core::Setup& setup, const core::Stock& stock, QWidget* parent)
    : SearchGroup(tr("Resistors"), parent),
      m_setup(setup),
      m_stock(stock),
      m_from_ohm(m_series.from.base()),
      m_to_ohm(m_series.to.base()),
      m_tolerance(m_series.tolerance) {
  m_positions = add(tr("Positions"), "positions", new CountEdit);
  m_positions->setRange(1, 8);
  m_positions->setValue(3);
  m_positions->setToolTip(tr("How many resistors can be switched, the fitted ones included"));
  m_together = add({}, "together", new QCheckBox(tr("may be closed together, in parallel")));
  addFitted();
  addSources();
}

void ResistorsGroup::addFitted() {
  m_present = new QListWidget;
  std::vector<core::Candidate> seen;
  for (std::size_t k = 0; k < m_setup.shunts.size(); ++k) {
    const core::Candidate candidate = candidateOfShunt(m_setup, k);
    const bool known = std::any_of(seen.begin(), seen.end(), [&](const core::Candidate& other) {
      return other.name == candidate.name && other.value == candidate.value;
    });
    if (known) continue;  // the same resistor at another place
    seen.push_back(candidate);
    auto* item = new QListWidgetItem(
        QString("%1, %2").arg(toQString(candidate.name),
                              quantityText(candidate.value.base(), core::UnitFamily::Resistance, {}, 6)),
        m_present);
    item->setData(Qt::UserRole, static_cast<qulonglong>(k));
    item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
    item->setCheckState(Qt::Unchecked);
  }
  m_present->setMaximumHeight(3 * fontMetrics().height() + 14);
  add(tr("Fitted already"), "fittedShunts", m_present);
  if (m_present->count() == 0) showRow(m_present, false);
  m_typed = add(tr("Fitted, by value"), "fittedTyped", new QLineEdit);
  m_typed->setPlaceholderText(tr("none; such as 59k9; 174.65k"));
  attachNumberList(m_typed, [] { return CellNumber{core::UnitFamily::Resistance, {}}; });
}

void ResistorsGroup::addSources() {
  const auto count = m_stock.resistors.size() + m_stock.boxes.size() + m_stock.series.size();
  m_useStock = add(tr("Chosen from"), "fromStock",
                   new QCheckBox(count == 0 ? tr("the stock, which is empty")
                                            : tr("the stock, %n entries", nullptr, int(count))));
  m_useStock->setEnabled(count > 0);
  m_useStock->setChecked(count > 0);
  m_overdue = add({}, "withOverdue", new QCheckBox(tr("with parts overdue for calibration")));
  m_overdue->setEnabled(count > 0);
  m_seriesBox = add(tr("Preferred values"), "seriesBox", new QComboBox);
  m_seriesBox->addItem(tr("none"));
  for (std::size_t k = 0; k < core::eSeriesCount; ++k)
    m_seriesBox->addItem(toQString(core::eSeriesName(static_cast<core::ESeries>(k))));
  if (count == 0) m_seriesBox->setCurrentText("E96");
  auto* range = new QWidget;
  auto* line = new QHBoxLayout(range);
  line->setContentsMargins(0, 0, 0, 0);
  line->addWidget(quantity("seriesFrom", tr("From"), core::UnitFamily::Resistance, m_from_ohm), 1);
  line->addWidget(new QLabel(tr("to")));
  line->addWidget(quantity("seriesTo", tr("To"), core::UnitFamily::Resistance, m_to_ohm), 1);
  add(tr("From"), "seriesRange", range);
  add(tr("Tolerance ±"), "seriesTolerance",
      quantity("seriesTolerance", tr("Tolerance"), core::UnitFamily::Percent, m_tolerance));
  const auto show = [this, range] {
    for (QWidget* field : {range, findChild<QWidget*>("seriesTolerance")})
      showRow(field, m_seriesBox->currentIndex() > 0);
  };
  connect(m_seriesBox, &QComboBox::currentIndexChanged, this, show);
  show();
}

std::size_t ResistorsGroup::positions() const { return static_cast<std::size_t>(m_positions->value()); }
bool ResistorsGroup::together() const { return m_together->isChecked(); }
bool ResistorsGroup::withOverdue() const { return m_overdue->isChecked(); }

core::Result<std::vector<core::Candidate>> ResistorsGroup::fitted() const {
  std::vector<core::Candidate> fitted;
  for (int row = 0; row < m_present->count(); ++row)
    if (m_present->item(row)->checkState() == Qt::Checked)
      fitted.push_back(candidateOfShunt(
          m_setup, static_cast<std::size_t>(m_present->item(row)->data(Qt::UserRole).toULongLong())));
  for (const QString& part : partsOf(m_typed->text())) {
    const auto value = core::parseQuantity(part.toStdString(), core::UnitFamily::Resistance);
    if (!value) {
      core::Error error = value.error();
      error.where = core::say("fitted, by value");
      return error;
    }
    if (!(*value > 0))
      return core::Error{core::say("fitted, by value"), core::say("a resistor must have more than 0 Ω"),
                         core::say("Enter such as 59k9")};
    fitted.push_back(
        {.value = core::Resistance(*value), .tolerance = m_tolerance, .name = part.toStdString()});
  }
  return fitted;
}

core::Result<core::Stock> ResistorsGroup::from() const {
  core::Stock stock;
  if (m_useStock->isChecked()) stock = m_stock;
  if (const int series = m_seriesBox->currentIndex(); series > 0)
    stock.series.push_back({static_cast<core::ESeries>(series - 1), core::Resistance(m_from_ohm),
                            core::Resistance(m_to_ohm), m_tolerance});
  if (stock == core::Stock{})
    return core::Error{core::say("chosen from"), core::say("there is nothing to choose from"),
                       core::say("Tick the stock, or choose a series")};
  return stock;
}

}  // namespace ui

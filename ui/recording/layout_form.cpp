// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/layout_form.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QToolButton>
#include <algorithm>
#include <array>

#include "ui/fields/count_edit.h"
#include "ui/parts.h"
#include "ui/quantity_edit.h"
#include "ui/recording/layout_words.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr std::array separators = {',', ';', '\t', '|', ' '};
constexpr std::array decimals = {'.', ','};
constexpr int mostLines = 1'000'000;
constexpr int encodings = 4, timeForms = 7, dateOrders = 3;

template <class Enum>
QStringList wordsOfAll(int count) {
  QStringList list;
  for (int k = 0; k < count; ++k) list << wordsOf(static_cast<Enum>(k));
  return list;
}

template <class Marks>
int placeOf(const Marks& marks, char mark) {
  const auto at = std::find(marks.begin(), marks.end(), mark);
  return at == marks.end() ? -1 : static_cast<int>(at - marks.begin());
}

}  // namespace

LayoutForm::LayoutForm(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this)) {
  setObjectName("layoutForm");
  m_grid->setContentsMargins(0, 0, 6, 0);
  m_grid->setVerticalSpacing(3);
  m_grid->setColumnStretch(1, 1);
  addTextRows();
  addTimeRows();
  m_unitsChanged = new QLabel;
  m_unitsChanged->setObjectName("unitsChanged");
  addRow(
      tr("Units of columns"), m_unitsChanged, [](const auto& choices) { return !choices.units.empty(); },
      [](auto& choices) { choices.units.clear(); }, false);
  m_grid->setRowStretch(static_cast<int>(m_rows.size()), 1);
  showRows();
}

QComboBox* LayoutForm::combo(const char* name, const QString& label, const QStringList& words,
                             const std::function<void(int)>& take) {
  auto* box = new QComboBox;
  box->setObjectName(name);
  box->setAccessibleName(label);
  box->addItems(words);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(16);
  box->setMaxVisibleItems(16);
  connect(box, &QComboBox::activated, this, [this, take](int row) {
    take(row);
    tell();
  });
  return box;
}

/// A line of the file; what stands there is taken when the field is left, so that typing 12 is not read as 1.
CountEdit* LayoutForm::lineBox(const char* name, const QString& label, int least, const QString& none,
                               std::optional<std::size_t> core::LayoutChoices::*part) {
  auto* box = new CountEdit;
  box->setObjectName(name);
  box->setAccessibleName(label);
  box->setRange(static_cast<quint64>(least), mostLines);
  if (!none.isEmpty()) box->setLeastWord(none);
  box->setWaitsForEnter(true);
  connect(box, &CountEdit::valueChanged, this, [this, part](int line) {
    m_choices.*part = static_cast<std::size_t>(line);
    tell();
  });
  return box;
}

template <class T>
void LayoutForm::addRow(const QString& label, QWidget* field, std::optional<T> core::LayoutChoices::*part,
                        bool isOfText) {
  addRow(
      label, field, [part](const core::LayoutChoices& choices) { return (choices.*part).has_value(); },
      [part](core::LayoutChoices& choices) { (choices.*part).reset(); }, isOfText);
}

void LayoutForm::addRow(const QString& label, QWidget* field, IsChosen isChosen, const TakeBack& takeBack,
                        bool isOfText) {
  auto* name = new QLabel(label);
  if (!qobject_cast<QLabel*>(field)) name->setBuddy(field);
  auto* back = toolButton(field->objectName() + "AsGuessed", tr("as guessed"),
                          tr("Changed by you; back to what is guessed from the file"));
  back->setAccessibleName(tr("%1 as guessed").arg(label));
  connect(back, &QToolButton::clicked, this, [this, takeBack] {
    takeBack(m_choices);
    m_wantsRate = false;
    tell();
  });
  const int row = static_cast<int>(m_rows.size());
  m_grid->addWidget(name, row, 0);
  m_grid->addWidget(field, row, 1);
  m_grid->addWidget(back, row, 2);
  m_rows.push_back({name, field, back, std::move(isChosen), isOfText});
}

void LayoutForm::addTextRows() {
  using C = core::LayoutChoices;
  QStringList between, signs;
  for (const char mark : separators) between << separatorWords(mark);
  for (const char mark : decimals) signs << decimalWords(mark);
  m_encoding = combo("layoutEncoding", tr("Encoding"), wordsOfAll<core::TextEncoding>(encodings),
                     [this](int row) { m_choices.encoding = static_cast<core::TextEncoding>(row); });
  m_separator = combo("layoutSeparator", tr("Between cells"), between, [this](int row) {
    m_choices.separator = separators[static_cast<std::size_t>(row)];
    // One sign cannot be both.
    if (m_choices.separator == m_choices.decimal) m_choices.decimal.reset();
  });
  m_decimal = combo("layoutDecimal", tr("Decimal sign"), signs,
                    [this](int row) { m_choices.decimal = decimals[static_cast<std::size_t>(row)]; });
  addRow(tr("Encoding"), m_encoding, &C::encoding);
  addRow(tr("Between cells"), m_separator, &C::separator);
  addRow(tr("Decimal sign"), m_decimal, &C::decimal);
  m_names = lineBox("layoutNames", tr("Names in line"), 0, tr("none"), &C::nameLine);
  m_units = lineBox("layoutUnits", tr("Units in line"), 0, tr("none, or with the names"), &C::unitLine);
  m_firstRow = lineBox("layoutFirstRow", tr("Numbers from line"), 1, {}, &C::firstRow);
  addRow(tr("Names in line"), m_names, &C::nameLine);
  addRow(tr("Units in line"), m_units, &C::unitLine);
  addRow(tr("Numbers from line"), m_firstRow, &C::firstRow);
}

void LayoutForm::addTimeRows() {
  using C = core::LayoutChoices;
  m_timeFrom = combo("layoutTimeFrom", tr("Time from"), {}, [this](int row) { takeTimeSource(row); });
  addRow(
      tr("Time from"), m_timeFrom, [](const C& c) { return c.timeColumn || c.rate_Hz; },
      [](C& c) {
        c.timeColumn.reset();
        c.rate_Hz.reset();
      },
      false);
  m_rate = new QuantityEdit(core::UnitFamily::Frequency);
  m_rate->setObjectName("layoutRate");
  m_rate->setAccessibleName(tr("Sample rate"));
  m_rate->setPlaceholderText(tr("type the rate, such as 50 Hz"));
  m_rate->setLeast(0, false);
  connect(m_rate, &QuantityEdit::valueEdited, this, &LayoutForm::takeRate);
  addRow(tr("Sample rate"), m_rate, &C::rate_Hz, false);
  m_form = combo("layoutTimeForm", tr("Times written as"), wordsOfAll<core::TimeForm>(timeForms),
                 [this](int row) { m_choices.timeForm = static_cast<core::TimeForm>(row); });
  addRow(tr("Times written as"), m_form, &C::timeForm, false);
  m_order = combo("layoutDateOrder", tr("Order of the date"), wordsOfAll<core::DateOrder>(dateOrders),
                  [this](int row) { m_choices.dateOrder = static_cast<core::DateOrder>(row); });
  addRow(tr("Order of the date"), m_order, &C::dateOrder);
}

/// The columns, and after them the sample rate, which is to be typed before anything changes.
void LayoutForm::takeTimeSource(int row) {
  m_wantsRate = row == m_timeFrom->count() - 1;
  if (m_wantsRate) {
    if (m_layout.time.rate_Hz > 0) return takeRate(m_layout.time.rate_Hz);
    return;
  }
  m_choices.timeColumn = static_cast<std::size_t>(row);
  m_choices.rate_Hz.reset();
}

void LayoutForm::takeRate(double rate_Hz) {
  m_wantsRate = false;
  m_choices.rate_Hz = rate_Hz;
  m_choices.timeColumn.reset();
  m_choices.timeForm.reset();
  tell();
}

void LayoutForm::setUnit(std::size_t column, const std::string& unit) {
  m_choices.units[column] = unit;
  tell();
}

void LayoutForm::show(const core::Layout& layout, const core::LayoutChoices& choices) {
  m_layout = layout;
  m_choices = choices;
  m_wantsRate = false;
  showValues();
  showRows();
}

void LayoutForm::showValues() {
  const QSignalBlocker quiet[] = {QSignalBlocker(m_names), QSignalBlocker(m_units),
                                  QSignalBlocker(m_firstRow)};
  m_encoding->setCurrentIndex(static_cast<int>(m_layout.encoding));
  m_separator->setCurrentIndex(placeOf(separators, m_layout.separator));
  m_decimal->setCurrentIndex(placeOf(decimals, m_layout.decimal));
  m_decimal->setEnabled(m_layout.separator != ',');
  m_names->setValue(static_cast<int>(m_layout.nameLine));
  m_units->setValue(static_cast<int>(m_layout.unitLine));
  m_firstRow->setValue(static_cast<int>(m_layout.firstRow));
  m_form->setCurrentIndex(static_cast<int>(m_layout.time.form));
  m_order->setCurrentIndex(static_cast<int>(m_layout.time.order));
  m_rate->setValue(m_layout.time.rate_Hz > 0 ? std::optional(m_layout.time.rate_Hz) : std::nullopt);
  m_timeFrom->clear();
  QStringList sources;
  for (std::size_t k = 0; k < m_layout.columns.size(); ++k)
    sources << tr("column %1").arg(columnWords(m_layout, k));
  m_timeFrom->addItems(sources << tr("the sample rate"));
  const auto column = m_layout.time.column;
  m_timeFrom->setCurrentIndex(column ? static_cast<int>(*column) : m_timeFrom->count() - 1);
  m_unitsChanged->setText(m_choices.units.size() == 1
                              ? tr("one typed in the table")
                              : tr("%1 typed in the table").arg(m_choices.units.size()));
}

/// What has no part in this layout is not shown.
void LayoutForm::showRows() {
  const core::TimeLayout& time = m_layout.time;
  const bool hasDate = time.dateColumn || time.form == core::TimeForm::DateAndTime;
  for (const Row& row : m_rows) {
    const bool isChosen = row.isChosen(m_choices);
    bool isShown = !row.isOfText || m_layout.kind == core::FileKind::Text;
    if (row.field == m_rate) isShown = m_wantsRate || !time.column;
    if (row.field == m_form) isShown = !m_wantsRate && time.column;
    if (row.field == m_order) isShown = isShown && !m_wantsRate && time.column && hasDate;
    if (row.field == m_unitsChanged) isShown = isChosen;
    for (QWidget* widget : {static_cast<QWidget*>(row.label), row.field}) widget->setVisible(isShown);
    QSizePolicy policy = row.asGuessed->sizePolicy();
    policy.setRetainSizeWhenHidden(isShown);
    row.asGuessed->setSizePolicy(policy);
    row.asGuessed->setVisible(isShown && isChosen);
    QFont font = row.label->font();
    font.setBold(isChosen);
    row.label->setFont(font);
  }
}

void LayoutForm::tell() {
  showRows();
  if (m_wantsRate) return m_rate->setFocus();
  emit chosen(m_choices);
}

}  // namespace ui

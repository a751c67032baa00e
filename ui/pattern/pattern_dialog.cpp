// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pattern/pattern_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "core/document/edits.h"
#include "ui/fields/count_edit.h"
#include "ui/parts.h"
#include "ui/pattern/own_patterns.h"
#include "ui/pattern/pattern_words.h"
#include "ui/preferences/appearance.h"
#include "ui/quantity_edit.h"
#include "ui/setup/setup_groups.h"
#include "ui/sheet_view.h"
#include "ui/text_form_dialog.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// Each step is evaluated with its budget after every edit, so a sequence of more would be slow to work on.
constexpr std::size_t mostSteps = 1000;

QLabel* sentence(const QString& objectName) {
  auto* label = new QLabel;
  label->setObjectName(objectName);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

template <class Widget>
Widget* addField(QGridLayout* form, const QString& label, const QString& objectName, Widget* widget) {
  const int row = form->rowCount();
  widget->setObjectName(objectName);
  widget->setAccessibleName(label);
  auto* text = new QLabel(label);
  text->setBuddy(widget);
  form->addWidget(text, row, 0);
  form->addWidget(widget, row, 1);
  return widget;
}

QComboBox* choiceOf(const QStringList& items) {
  auto* box = new QComboBox;
  box->addItems(items);
  return box;
}

CountEdit* counter(quint64 least, quint64 greatest) {
  auto* box = new CountEdit;
  box->setRange(least, greatest);
  return box;
}

/// Without what an instrument does to a level nothing can be asked of the times.
bool isStated(const core::Acquisition& acquisition) {
  return acquisition.sampleRate || acquisition.filter.kind != core::FilterKind::None;
}

enum LevelChoice { EachShunt, PresentSequence };

}  // namespace

PatternDialog::PatternDialog(Session& session, QWidget* parent) : QDialog(parent), m_session(session) {
  setObjectName("patternDialog");
  setWindowTitle(tr("Lay out sequence"));
  auto* layout = new QVBoxLayout(this);
  if (const QString reason = whyEmpty(); !reason.isEmpty()) {
    layout->addWidget(emptyPage(reason));
    return;
  }
  resize(900, 560);
  m_asked = core::leastTimes(channel().setup.acquisition);
  m_given = core::timesOf(channel().setup);
  auto* columns = new QHBoxLayout;
  columns->addWidget(settings());
  columns->addWidget(preview(), 1);
  layout->addLayout(columns, 1);
  layout->addWidget(buttons());
  m_layOut->setDefault(true);  // only now, since a button has no dialog before
  m_choice->setFocus();
  connect(&session, &Session::changed, this, [this] {
    if (m_session.channel()) follow();
  });
  listPatterns(core::usualPatterns().front().name);
  choosePattern(0);
}

QString PatternDialog::whyEmpty() const {
  if (!m_session.channel()) return tr("There is no channel yet: add a channel first.");
  if (channel().setup.shunts.empty())
    return tr(
        "There is no shunt to close yet. Add resistors and their places on the page Shunts, then lay out the "
        "sequence that closes them.");
  return {};
}

QWidget* PatternDialog::emptyPage(const QString& reason) {
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  QLabel* text = sentence("patternEmpty");
  text->setText(reason);
  text->setMinimumWidth(360);
  layout->addWidget(text);
  auto* box = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(box, &QDialogButtonBox::rejected, this, &QDialog::reject);
  layout->addWidget(box);
  return page;
}

QWidget* PatternDialog::settings() {
  auto* column = new QWidget;
  column->setFixedWidth(atTextSize(330));
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(patternGroup());
  layout->addWidget(levelsGroup());
  layout->addWidget(timesGroup());
  layout->addStretch();
  return column;
}

QWidget* PatternDialog::patternGroup() {
  auto* group = new QGroupBox(tr("Pattern"));
  auto* form = new QGridLayout(group);
  form->setColumnStretch(1, 1);
  m_choice = addField(form, tr("Start from"), "patternChoice", new QComboBox);
  connect(m_choice, &QComboBox::activated, this, &PatternDialog::choosePattern);
  addFields(form);
  m_changed = sentence("patternChanged");
  setTextColour(m_changed, coloursFor(palette()).quiet);
  form->addWidget(m_changed, form->rowCount(), 0, 1, 2);
  form->addWidget(ownButtons(), form->rowCount(), 0, 1, 2);
  return group;
}

void PatternDialog::addFields(QGridLayout* form) {
  m_course = addField(form, tr("Course"), "patternCourse", choiceOf(courseNames()));
  m_sides = addField(form, tr("Sides"), "patternSides", choiceOf(sidesNames()));
  m_repeats = addField(form, tr("Repeats"), "patternRepeats", counter(1, core::greatestRepeats));
  m_seed = addField(form, tr("Order no."), "patternSeed", counter(0, static_cast<int>(greatestSeed)));
  m_seed->setToolTip(tr("Seed of the random order: the same number gives the same order on every machine."));
  m_zeroBetween = new QCheckBox(tr("Zero after every level"));
  m_zeroBetween->setObjectName("patternZeroBetween");
  form->addWidget(m_zeroBetween, form->rowCount(), 0, 1, 2);
  for (QComboBox* box : {m_course, m_sides})
    connect(box, &QComboBox::currentIndexChanged, this, &PatternDialog::takePattern);
  for (CountEdit* box : {m_repeats, m_seed}) {
    connect(box, &CountEdit::valueChanged, this, &PatternDialog::takePattern);
    connect(box, &CountEdit::refused, this, &PatternDialog::say);
  }
  connect(m_zeroBetween, &QCheckBox::toggled, this, &PatternDialog::takePattern);
}

QWidget* PatternDialog::ownButtons() {
  auto* row = new QWidget;
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  const auto add = [&](const QString& name, const QString& text, void (PatternDialog::*act)()) {
    auto* button = new QPushButton(text);
    button->setObjectName(name);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, act);
    layout->addWidget(button);
    return button;
  };
  add("savePattern", tr("Save as my own…"), &PatternDialog::saveOwn);
  m_remove = add("removePattern", tr("Remove my own"), &PatternDialog::removeOwn);
  return row;
}

QWidget* PatternDialog::levelsGroup() {
  auto* group = new QGroupBox(tr("Levels"));
  auto* layout = new QVBoxLayout(group);
  m_levels = choiceOf({tr("Each shunt alone"), tr("The levels of the present sequence")});
  m_levels->setObjectName("patternLevels");
  m_levels->setAccessibleName(tr("Levels"));
  m_levels->setItemData(PresentSequence,
                        tr("Steps that close several shunts stay together, with their labels"),
                        Qt::ToolTipRole);
  layout->addWidget(m_levels);
  connect(m_levels, &QComboBox::currentIndexChanged, this, &PatternDialog::follow);
  return group;
}

QWidget* PatternDialog::timesGroup() {
  auto* group = new QGroupBox(tr("Times of every step"));
  auto* form = new QGridLayout(group);
  form->setColumnStretch(1, 1);
  const core::Acquisition& acquisition = channel().setup.acquisition;
  m_useAsked = new QRadioButton(tr("As the filter and sample rate ask"));
  m_useAsked->setObjectName("timesAsked");
  m_useAsked->setEnabled(static_cast<bool>(m_asked));
  form->addWidget(m_useAsked, 0, 0, 1, 2);
  QLabel* asked = sentence("timesAskedNote");
  setTextColour(asked, coloursFor(palette()).quiet);
  asked->setText(isStated(acquisition)
                     ? usualTimesText(acquisition)
                     : tr("Neither filter nor sample rate is stated: see Acquisition in the set-up."));
  asked->setIndent(22);
  form->addWidget(asked, 1, 0, 1, 2);
  m_useGiven = new QRadioButton(tr("As given here"));
  m_useGiven->setObjectName("timesGiven");
  form->addWidget(m_useGiven, 2, 0, 1, 2);
  addGivenTimes(form);
  (m_asked && isStated(acquisition) ? m_useAsked : m_useGiven)->setChecked(true);
  connect(m_useAsked, &QRadioButton::toggled, this, &PatternDialog::followTimes);
  return group;
}

void PatternDialog::addGivenTimes(QGridLayout* form) {
  m_settle = addField(form, tr("Settle"), "patternSettle", new QuantityEdit(core::UnitFamily::Duration));
  m_settle->setLeast(0, true);
  m_hold = addField(form, tr("Hold"), "patternHold", new QuantityEdit(core::UnitFamily::Duration));
  m_hold->setLeast(0, false);
  m_settle->setValue(m_given.settle.base());
  m_hold->setValue(m_given.hold.base());
  const auto take = [this](QuantityEdit* field, core::Duration& time) {
    connect(field, &QuantityEdit::valueEdited, this, [this, &time](double seconds) {
      time = core::Duration(seconds);
      say({});
      follow();
    });
    connect(field, &QuantityEdit::refused, this, &PatternDialog::say);
    connect(field, &QuantityEdit::refused, this, &PatternDialog::refused);
  };
  take(m_settle, m_given.settle);
  take(m_hold, m_given.hold);
}

QWidget* PatternDialog::preview() {
  auto* column = new QWidget;
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* table = new SheetView;
  table->setObjectName("patternPreview");
  table->setAccessibleName(tr("Steps as they will be"));
  table->setModel(&m_preview);
  const int digit = table->fontMetrics().horizontalAdvance('0');
  const int characters[] = {5, 12, 12, 12, 8, 8, 12};
  for (int k = 0; k < StepPreview::ColumnCount; ++k) table->setColumnWidth(k, characters[k] * digit);
  table->horizontalHeader()->setSectionResizeMode(StepPreview::Closed, QHeaderView::Stretch);
  m_summary = sentence("patternSummary");
  m_caution = sentence("patternCaution");
  setTextColour(m_caution, coloursFor(palette()).cannotTell);
  m_message = sentence("patternMessage");
  layout->addWidget(table, 1);
  for (QLabel* label : {m_summary, m_caution, m_message}) layout->addWidget(label);
  return column;
}

QWidget* PatternDialog::buttons() {
  auto* box = new QDialogButtonBox(QDialogButtonBox::Cancel);
  m_layOut = box->addButton(tr("Lay out"), QDialogButtonBox::AcceptRole);
  m_layOut->setObjectName("layOut");
  connect(box, &QDialogButtonBox::accepted, this, &PatternDialog::accept);
  connect(box, &QDialogButtonBox::rejected, this, &QDialog::reject);
  return box;
}

/// Fills the list with the usual patterns and the user's own below a line.
void PatternDialog::listPatterns(const std::string& chosen) {
  const QSignalBlocker quiet(m_choice);
  m_choice->clear();
  m_patterns.clear();
  for (const auto& list : {core::usualPatterns(), ownPatterns()}) {
    if (!m_patterns.empty() && !list.empty()) m_choice->insertSeparator(m_choice->count());
    for (const core::Pattern& pattern : list) {
      m_choice->addItem(toQString(pattern.name), static_cast<qulonglong>(m_patterns.size()));
      if (pattern.name == chosen) m_choice->setCurrentIndex(m_choice->count() - 1);
      m_patterns.push_back(pattern);
    }
  }
}

void PatternDialog::choosePattern(int row) {
  m_pattern = m_patterns[static_cast<std::size_t>(m_choice->itemData(row).toULongLong())];
  say({});
  showPattern();
}

void PatternDialog::showPattern() {
  {
    const QSignalBlocker quiet[] = {QSignalBlocker(m_course), QSignalBlocker(m_sides),
                                    QSignalBlocker(m_zeroBetween), QSignalBlocker(m_repeats),
                                    QSignalBlocker(m_seed)};
    m_course->setCurrentIndex(static_cast<int>(m_pattern.course));
    m_sides->setCurrentIndex(static_cast<int>(m_pattern.sides));
    m_zeroBetween->setChecked(m_pattern.zeroBetweenSteps);
    m_repeats->setValue(static_cast<int>(m_pattern.repeats));
    m_seed->setValue(static_cast<int>(m_pattern.seed));
  }
  followTimes();
}

void PatternDialog::takePattern() {
  m_pattern.course = static_cast<core::Course>(m_course->currentIndex());
  m_pattern.sides = static_cast<core::Sides>(m_sides->currentIndex());
  m_pattern.zeroBetweenSteps = m_zeroBetween->isChecked();
  m_pattern.repeats = static_cast<unsigned>(m_repeats->value());
  m_pattern.seed = static_cast<std::uint32_t>(m_seed->value());
  follow();
}

void PatternDialog::saveOwn() {
  const auto& usual = core::usualPatterns();
  const bool own = m_choice->currentData().toULongLong() >= usual.size();
  TextFormDialog form(tr("Save pattern as my own"),
                      {{tr("Name"), own ? toQString(m_pattern.name) : QString(), tr("our hall's usual")}},
                      this);
  if (form.exec() != QDialog::Accepted) return;
  core::Pattern pattern = m_pattern;
  pattern.name = form.text(0);
  if (const auto saved = saveOwnPattern(pattern); !saved) {
    say(toText(saved.error()));
    emit refused(toText(saved.error()));
    return;
  }
  m_pattern = pattern;
  listPatterns(pattern.name);
  say(tr("“%1” is saved for all documents.").arg(toQString(pattern.name)));
  follow();
}

/// What it was stays in the fields, so that a pattern removed by mistake can be saved again.
void PatternDialog::removeOwn() {
  const QString name = m_choice->currentText();
  removeOwnPattern(name.toStdString());
  m_pattern.name = core::usualPatterns().front().name;
  listPatterns(m_pattern.name);
  say(tr("“%1” is no longer among your own patterns.").arg(name));
  follow();
}

core::PlannedLevels PatternDialog::levels() const {
  return m_levels->currentIndex() == PresentSequence ? core::levelsOfSequence(channel().setup)
                                                     : core::levelsOfShunts(channel().setup);
}

core::StepTimes PatternDialog::times() const {
  return m_useAsked->isChecked() && m_asked ? *m_asked : m_given;
}

/// Shunts that would be closed alone but have no polarity.
QString PatternDialog::leftOut(const core::PlannedLevels& found) const {
  if (m_levels->currentIndex() == PresentSequence) return {};
  QStringList names;
  for (std::size_t k = 0; k < channel().setup.shunts.size(); ++k) {
    const auto closesIt = [k](const core::PlannedLevel& level) { return level.closed.front() == k; };
    if (std::none_of(found.positive.begin(), found.positive.end(), closesIt) &&
        std::none_of(found.negative.begin(), found.negative.end(), closesIt))
      names << toQString(channel().setup.shunts[k].name);
  }
  if (names.isEmpty()) return {};
  return tr("Left out, since the output does not move or cannot be predicted: %1.").arg(names.join(", "));
}

QString PatternDialog::caution(const core::PlannedLevels& found) const {
  QStringList sentences;
  const std::size_t steps = m_preview.steps().size();
  if (steps <= 1)
    sentences << tr(
        "There is no level to lay out: choose other levels, sides, or shunts that move the "
        "output.");
  if (steps > mostSteps)
    sentences << tr("More than %1 steps are not laid out: choose fewer repeats.").arg(mostSteps);
  if (core::dropsReadings(channel(), m_preview.steps()))
    sentences << tr(
        "This closes other shunts than the present sequence, or in another order: readings of open checks "
        "will be dropped. Close those checks first to keep them.");
  if (const QString shunts = leftOut(found); !shunts.isEmpty()) sentences << shunts;
  return sentences.join(' ');
}

void PatternDialog::followTimes() {
  for (QuantityEdit* field : {m_settle, m_hold}) field->setEnabled(m_useGiven->isChecked());
  follow();
}

void PatternDialog::follow() {
  const core::PlannedLevels found = levels();
  const core::StepTimes step = times();
  m_preview.show(channel().setup, core::layOut(m_pattern, found, step.settle, step.hold));
  const std::size_t steps = m_preview.steps().size();
  const QString total = durationText(totalOf(m_preview.steps()));
  m_summary->setText(tr("%n step(s), %1 in all", nullptr, int(steps)).arg(total));
  m_caution->setText(caution(found));
  m_caution->setVisible(!m_caution->text().isEmpty());
  m_layOut->setEnabled(steps > 1 && steps <= mostSteps);
  m_seed->setEnabled(m_pattern.course == core::Course::Random);
  const auto row = static_cast<std::size_t>(m_choice->currentData().toULongLong());
  m_remove->setEnabled(row >= core::usualPatterns().size());
  const bool same = m_pattern == m_patterns[row];
  m_changed->setText(same ? tr("unchanged") : tr("changed: save it as your own to keep it"));
}

void PatternDialog::say(const QString& text) {
  m_message->setText(text);
  m_message->setVisible(!text.isEmpty());
}

void PatternDialog::accept() {
  if (!m_layOut) return;
  if (m_useGiven->isChecked())
    for (QuantityEdit* field : {m_settle, m_hold}) {
      field->commit();
      if (field->isRefused()) return;
    }
  if (!numbersReady(*this)) return;
  if (!m_layOut->isEnabled()) return;
  m_session.editChannel(tr("Lay out sequence"), core::withSequence(channel(), m_preview.steps()));
  QDialog::accept();
}

}  // namespace ui

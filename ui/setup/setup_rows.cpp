// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/setup_rows.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QGroupBox>
#include <QKeyEvent>
#include <QLabel>
#include <QStylePainter>
#include <QVBoxLayout>
#include <QWheelEvent>

#include "ui/as_typed.h"
#include "ui/setup/folded_group.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr const char* refusedText = "refusedText";  ///< property of a field whose text was

/// Combo boxes change only when meant to: the wheel over an unfocused one scrolls the form instead. What
/// does not fit in ends in an ellipsis.
class CalmComboBox : public QComboBox {
 public:
  CalmComboBox() {
    setFocusPolicy(Qt::StrongFocus);
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(6);
  }

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }
  void paintEvent(QPaintEvent*) override {
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    const QRect room =
        style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this);
    option.currentText = fontMetrics().elidedText(option.currentText, Qt::ElideRight, room.width() - 4);
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
  }
};

QLabel* plainLabel(const QString& text = {}) {
  auto* label = new QLabel(text);
  label->setTextFormat(Qt::PlainText);
  return label;
}

/// Around a field whose own tool tip is for what it refuses: without one the tip of what is around shows.
QWidget* hinting(QWidget* field, const QString& hint) {
  auto* around = new QWidget;
  around->setToolTip(hint);
  auto* layout = new QVBoxLayout(around);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(field);
  return around;
}

const QString& spokenName(const FieldName& name) { return name.spoken.isEmpty() ? name.label : name.spoken; }

}  // namespace

QGridLayout* formIn(QWidget* group) {
  auto* form = new QGridLayout(group);
  form->setContentsMargins(8, 4, 8, 6);
  form->setVerticalSpacing(4);
  form->setColumnStretch(1, 1);
  return form;
}

SetupRows::SetupRows(Session& session, QVBoxLayout* groups, QObject* parent)
    : QObject(parent), m_session(session), m_groups(groups) {}

QGridLayout* SetupRows::addGroup(const QString& title, const QString& objectName) {
  auto* group = new QGroupBox(title);
  group->setObjectName(objectName);
  m_groups->addWidget(group);
  return formIn(group);
}

FoldedGroup* SetupRows::addFoldedGroup(const QString& title, const QString& objectName) {
  auto* group = new FoldedGroup(title, objectName);
  m_groups->addWidget(group);
  return group;
}

void SetupRows::addRow(QGridLayout* form, const QString& label, QWidget* widget) {
  const int row = form->rowCount();
  if (label.isEmpty()) return form->addWidget(widget, row, 0, 1, 2);
  auto* text = plainLabel(label);
  form->addWidget(text, row, 0);
  form->addWidget(widget, row, 1);
  m_labels[widget] = text;
}

void SetupRows::showRow(QWidget* widget, bool shown) {
  widget->setVisible(shown);
  if (const auto label = m_labels.find(widget); label != m_labels.end()) label->second->setVisible(shown);
}

void SetupRows::onRefresh(std::function<void(const Channel&)> refresher) {
  m_refreshers.push_back(std::move(refresher));
}

QuantityEdit* SetupRows::addQuantity(QGridLayout* form, const FieldName& name, core::UnitFamily family,
                                     ChannelValue value, Shown shown) {
  QuantityEdit* edit = makeQuantity(name, family, std::move(value), std::move(shown));
  QWidget* row = name.hint.isEmpty() ? edit : hinting(edit, name.hint);
  m_fields.back().row = row;
  addRow(form, name.label, row);
  if (const auto label = m_labels.find(row); label != m_labels.end()) label->second->setToolTip(name.hint);
  return edit;
}

QuantityEdit* SetupRows::makeQuantity(const FieldName& name, core::UnitFamily family, ChannelValue value,
                                      Shown shown, QWidget* row) {
  auto* edit = new QuantityEdit(family);
  edit->setObjectName(name.object);
  edit->setAccessibleName(spokenName(name));
  connect(edit, &QuantityEdit::refused, this, &SetupRows::refused);
  // A field that goes out of view while it is edited may have nothing to set any more.
  const auto isThere = [this, shown] {
    return !shown || (m_session.channel() && shown(*m_session.channel()));
  };
  connect(edit, &QuantityEdit::valueEdited, this,
          [this, isThere, set = value.set, label = name.edit](double base) {
            if (isThere()) change(label, [&](Channel& channel) { set(channel, base); });
          });
  if (value.clear)
    connect(edit, &QuantityEdit::cleared, this,
            [this, clear = value.clear, label = name.edit] { change(label, clear); });
  addTyped(edit);
  m_fields.push_back({edit, row ? row : edit, std::move(value.get), std::move(shown)});
  return edit;
}

QLineEdit* SetupRows::addText(QGridLayout* form, const FieldName& name,
                              const std::function<std::string(const Channel&)>& get,
                              const std::function<void(Channel&, const std::string&)>& set,
                              const Shown& shown, const WhyNot& whyNot) {
  auto* edit = new QLineEdit;
  edit->setObjectName(name.object);
  edit->setAccessibleName(spokenName(name));
  edit->installEventFilter(new FieldUndoFilter(edit));
  addTyped(edit);
  addRow(form, name.label, edit);
  connect(edit, &QLineEdit::editingFinished, this, [this, edit, get, set, whyNot, label = name.edit] {
    if (!edit->isModified()) return;
    // What is refused stays in the field as it was typed and changes nothing.
    if (const QString reason = whyNot ? whyNot(edit->text().trimmed()) : QString(); !reason.isEmpty()) {
      edit->setProperty(refusedText, true);
      return emit refused(reason);
    }
    edit->setModified(false);
    const std::string text = edit->text().trimmed().toStdString();
    change(label, [&](Channel& channel) { set(channel, text); });
    // Trimming alone changes no channel, so that nothing else would show the text as it is kept.
    if (m_session.channel()) edit->setText(toQString(get(*m_session.channel())));
  });
  connect(edit, &QLineEdit::textEdited, this, [this, edit, whyNot](const QString& text) {
    if (!edit->property(refusedText).toBool() || !whyNot(text.trimmed()).isEmpty()) return;
    edit->setProperty(refusedText, false);
    emit refused({});
  });
  onRefresh([this, edit, get, shown](const Channel& channel) {
    showRow(edit, !shown || shown(channel));
    const QString text = toQString(get(channel));
    if (edit->text() == text || edit->isModified()) return;
    edit->setText(text);
    if (!edit->hasFocus()) edit->setCursorPosition(0);
  });
  return edit;
}

QComboBox* SetupRows::addChoice(QGridLayout* form, const FieldName& name, const QStringList& items,
                                const ChannelChoice& choice, const Shown& shown) {
  auto* box = new CalmComboBox;
  box->setObjectName(name.object);
  box->setAccessibleName(spokenName(name));
  box->addItems(items);
  addEditing(box);
  // The list may be wider than the form, and so shows what the box has to cut off.
  box->view()->setMinimumWidth(box->view()->sizeHintForColumn(0) + 24);
  addRow(form, name.label, box);
  if (const auto label = m_labels.find(box); label != m_labels.end()) label->second->setToolTip(name.hint);
  connect(box, &QComboBox::activated, this, [this, set = choice.set, label = name.edit](int row) {
    change(label, [&](Channel& channel) { set(channel, row); });
  });
  onRefresh([this, box, get = choice.get, shown](const Channel& channel) {
    showRow(box, !shown || shown(channel));
    box->setCurrentIndex(get(channel));
    box->setToolTip(asTyped(box->currentText()));
  });
  return box;
}

QCheckBox* SetupRows::addSwitch(QGridLayout* form, const FieldName& name, const ChannelChoice& onOff,
                                const Shown& shown) {
  auto* box = new QCheckBox(name.label);
  box->setObjectName(name.object);
  addEditing(box);
  addRow(form, {}, box);
  connect(box, &QCheckBox::clicked, this, [this, set = onOff.set, label = name.edit](bool on) {
    change(label, [&](Channel& channel) { set(channel, on); });
  });
  onRefresh([box, get = onOff.get, shown](const Channel& channel) {
    box->setVisible(!shown || shown(channel));
    box->setChecked(get(channel) != 0);
  });
  return box;
}

QLabel* SetupRows::addNote(QGridLayout* form, const QString& objectName, Words words) {
  auto* note = plainLabel();
  note->setObjectName(objectName);
  note->setWordWrap(true);
  addRow(form, {}, note);
  onRefresh([note, words = std::move(words)](const Channel& channel) {
    note->setText(words(channel));
    note->setVisible(!note->text().isEmpty());
  });
  return note;
}

void SetupRows::addTyped(QLineEdit* edit) {
  edit->installEventFilter(this);
  m_typed.push_back(edit);
}

void SetupRows::keepOpen(QLineEdit* edit) { std::erase(m_typed, edit); }

/// Fields stay to be read, walked and copied, on the colour of the form.
void SetupRows::lock(const QString& why) {
  if (m_why == why) return;
  m_why = why;
  QPalette flat;
  if (!why.isEmpty()) flat.setBrush(QPalette::Base, Qt::transparent);
  for (QLineEdit* edit : m_typed) {
    edit->setReadOnly(!why.isEmpty());
    edit->setPalette(flat);
    edit->setModified(false);
  }
  for (QWidget* widget : m_editing) widget->setEnabled(why.isEmpty());
}

/// What is typed into a locked field is answered, since the words above the form may be out of view.
bool SetupRows::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress && static_cast<QLineEdit*>(watched)->isReadOnly()) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool deletes = key->key() == Qt::Key_Backspace || key->key() == Qt::Key_Delete;
    const bool types = !key->text().isEmpty() && key->text().front().isPrint() &&
                       !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    if (deletes || types || key->matches(QKeySequence::Paste)) emit refused(m_why);
  }
  return QObject::eventFilter(watched, event);
}

void SetupRows::change(const QString& label, const std::function<void(Channel&)>& edit) {
  if (!m_session.channel()) return;
  Channel channel = *m_session.channel();
  edit(channel);
  m_session.editChannel(label, std::move(channel));
}

void SetupRows::refresh(const Channel& channel) {
  for (const auto& refresher : m_refreshers) refresher(channel);
  for (const Field& field : m_fields) {
    const bool shown = !field.shown || field.shown(channel);
    showRow(field.row, shown);
    if (shown) field.edit->setValue(field.get(channel));
  }
}

}  // namespace ui

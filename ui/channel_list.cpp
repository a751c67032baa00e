// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/channel_list.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QScopedValueRollback>
#include <QStyledItemDelegate>
#include <QVBoxLayout>
#include <algorithm>

#include "core/document/edits.h"
#include "ui/as_typed.h"
#include "ui/campaign/channel_rows.h"
#include "ui/help/next_steps.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr std::size_t manyChannels = 12;  ///< more than fit into the list of a small window

/// For a tip, which breaks lines between words only: long ones may be broken too.
QString withBreaks(QString text) {
  constexpr int longestWord = 60;
  static const QChar mayBreak(0x200B);
  int word = 0;
  for (qsizetype at = 0; at < text.size(); ++at) {
    word = text[at].isSpace() ? 0 : word + 1;
    if (word % longestWord == longestWord - 1 && !text[at].isHighSurrogate()) text.insert(++at, mayBreak);
  }
  return text;
}

/// Two lines a channel: the name, and below it the status with a mark in the verdict's colour.
class ChannelDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const override {
    return {120, 2 * option.fontMetrics.height() + 12};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    QStyleOptionViewItem blank = option;
    initStyleOption(&blank, index);
    blank.text.clear();
    blank.widget->style()->drawControl(QStyle::CE_ItemViewItem, &blank, painter, blank.widget);

    const Colours colours = coloursFor(option.palette);
    const bool chosen = option.state & QStyle::State_Selected;
    const QColor text = option.palette.color(chosen ? QPalette::HighlightedText : QPalette::Text);
    const auto verdict = static_cast<core::Verdict>(index.data(ChannelListModel::VerdictRole).toInt());
    const QRect area = option.rect.adjusted(14, 4, -6, -4);
    const QRect mark(option.rect.left() + 5, option.rect.top() + 6, 4, option.rect.height() - 12);
    painter->save();
    painter->fillRect(mark, colourOf(colours, verdict));
    painter->setPen(text);
    QFont bold = option.font;
    bold.setBold(true);
    painter->setFont(bold);
    drawLine(painter, area, Qt::AlignTop, index.data(Qt::DisplayRole).toString());
    painter->setFont(option.font);
    painter->setPen(chosen ? text : colourOf(colours, verdict));
    drawLine(painter, area, Qt::AlignBottom, index.data(ChannelListModel::StatusRole).toString());
    painter->restore();
  }

 private:
  static void drawLine(QPainter* painter, const QRect& area, Qt::Alignment where, const QString& text) {
    painter->drawText(area, static_cast<int>(Qt::AlignLeft | where),
                      painter->fontMetrics().elidedText(text, Qt::ElideRight, area.width()));
  }
};

}  // namespace

ChannelListModel::ChannelListModel(Session& session, QObject* parent)
    : QAbstractListModel(parent), m_session(session) {
  connect(&session, &Session::changed, this, &ChannelListModel::refresh);
  refresh();
}

std::vector<std::size_t> ChannelListModel::wanted() const {
  std::vector<std::size_t> channels;
  for (std::size_t k = 0; k < m_channels.size(); ++k)
    if (m_filter.isEmpty() || toQString(m_channels[k]->name).contains(m_filter, Qt::CaseInsensitive) ||
        toQString(m_channels[k]->group).contains(m_filter, Qt::CaseInsensitive))
      channels.push_back(k);
  return channels;
}

void ChannelListModel::refresh() {
  const auto& now = m_session.document().channels;
  if (m_channels == now) return;
  const auto before = std::exchange(m_channels, now);
  std::vector<std::size_t> shown = wanted();
  if (shown != m_shown) {
    beginResetModel();
    m_shown = std::move(shown);
    endResetModel();
    return;
  }
  for (int row = 0; row < rowCount(); ++row)
    if (channelAt(row) >= before.size() || before[channelAt(row)] != now[channelAt(row)])
      emit dataChanged(index(row), index(row));
}

void ChannelListModel::setFilter(const QString& text) {
  beginResetModel();
  m_filter = text.trimmed();
  m_shown = wanted();
  endResetModel();
}

QModelIndex ChannelListModel::indexOf(std::size_t channel) const {
  const auto found = std::lower_bound(m_shown.begin(), m_shown.end(), channel);
  if (found == m_shown.end() || *found != channel) return {};
  return index(static_cast<int>(found - m_shown.begin()));
}

int ChannelListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

QString ChannelListModel::status(std::size_t channel) const {
  ChannelRows& rows = m_session.rows();
  rows.want(channel);
  // What is worked out of the chosen one already is not shown as it was before.
  if (channel == m_session.selection().channel && !rows.isCurrent(channel))
    return toQString(m_session.evaluation()->status);
  if (const core::OverviewRow* row = rows.row(channel)) return toQString(row->status);
  return rows.takesLong() ? tr("working…") : QString();
}

core::Verdict ChannelListModel::verdict(std::size_t channel) const {
  if (channel == m_session.selection().channel) return m_session.evaluation()->verdict;
  const core::OverviewRow* row = m_session.rows().row(channel);
  return row ? row->verdict : core::Verdict::NotJudged;
}

QVariant ChannelListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const std::size_t channel = channelAt(index.row());
  if (channel >= m_session.document().channels.size()) return {};
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return toQString(m_session.document().channels[channel]->name);
    case StatusRole:
      return status(channel);
    case Qt::ToolTipRole:  // the lines may be cut off; as markup, since only that is wrapped
      return asTyped(
          withBreaks(toQString(m_session.document().channels[channel]->name) + '\n' + status(channel)));
    case VerdictRole:
      return static_cast<int>(verdict(channel));
    case Qt::AccessibleTextRole:
      return toQString(m_session.document().channels[channel]->name) + ", " + status(channel);
    default:
      return {};
  }
}

Qt::ItemFlags ChannelListModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags flags = QAbstractListModel::flags(index);
  return index.isValid() ? flags | Qt::ItemIsEditable : flags;
}

bool ChannelListModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  const std::string name = value.toString().trimmed().toStdString();
  if (role != Qt::EditRole || !index.isValid() || name.empty()) return false;
  const std::size_t row = channelAt(index.row());
  core::Channel channel = *m_session.document().channels[row];
  channel.name = core::uniqueChannelName(m_session.document(), name, row);
  m_session.edit(tr("Rename channel"), core::withChannel(m_session.document(), row, std::move(channel)));
  return true;
}

ChannelList::ChannelList(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_model(session), m_filter(new QLineEdit), m_list(new QListView) {
  setObjectName("channelColumn");
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  m_filter->setObjectName("channelFilter");
  m_filter->setAccessibleName(tr("Show channels whose name or group holds"));
  m_filter->setPlaceholderText(tr("Name or group holds…"));
  m_filter->setClearButtonEnabled(true);
  m_filter->installEventFilter(this);
  m_list->setObjectName("channelList");
  m_list->setAccessibleName(tr("Channels"));
  m_list->setModel(&m_model);
  m_list->setItemDelegate(new ChannelDelegate(m_list));
  m_list->setUniformItemSizes(true);
  m_list->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::SelectedClicked);
  column->addWidget(m_filter);
  column->addWidget(new NextSteps(session, NextSteps::Need::Channel,
                                  tr("No channel yet. A channel is one bridge on one amplifier input.")));
  column->addWidget(m_list, 1);
  setFocusProxy(m_list);
  connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& current) {
            if (current.isValid()) m_session.selectChannel(m_model.channelAt(current.row()));
          });
  connect(m_filter, &QLineEdit::textChanged, this, [this](const QString& text) {
    m_model.setFilter(text);
    followSession();
  });
  connect(&session, &Session::changed, this, &ChannelList::followSession);
  connect(&session.rows(), &ChannelRows::arrived, m_list->viewport(), qOverload<>(&QWidget::update));
  followSession();
}

/// From the field the arrow and Return go on to the list.
bool ChannelList::eventFilter(QObject* watched, QEvent* event) {
  if (watched != m_filter || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  if (key == Qt::Key_Escape && !m_filter->text().isEmpty()) {
    m_filter->clear();
    return true;
  }
  if (key != Qt::Key_Down && key != Qt::Key_Return && key != Qt::Key_Enter) return false;
  m_list->setFocus();
  if (!m_list->currentIndex().isValid() && m_model.rowCount() > 0) m_list->setCurrentIndex(m_model.index(0));
  return true;
}

void ChannelList::followSession() {
  const bool many = m_session.document().channels.size() > manyChannels;
  if (!many && !m_filter->text().isEmpty()) m_filter->clear();  // what is not seen leaves nothing out
  m_filter->setVisible(many);
  const auto channel = m_session.selection().channel;
  const QModelIndex wanted = channel ? m_model.indexOf(*channel) : QModelIndex();
  if (m_list->currentIndex() != wanted) m_list->setCurrentIndex(wanted);
}

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/channel_list.h"

#include <QPainter>
#include <QStyledItemDelegate>

#include "core/document/edits.h"
#include "ui/theme.h"

namespace ui {
namespace {

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

void ChannelListModel::refresh() {
  const int rows = static_cast<int>(m_session.document().channels.size());
  if (rows != m_rows) {
    beginResetModel();
    m_rows = rows;
    endResetModel();
  } else if (rows > 0) {
    emit dataChanged(index(0), index(rows - 1));
  }
}

int ChannelListModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_rows; }

QVariant ChannelListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= m_rows) return {};
  const auto row = static_cast<std::size_t>(index.row());
  const QString name = toQString(m_session.document().channels[row]->name);
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return name;
    case StatusRole:
      return toQString(m_session.evaluation(row).status);
    case VerdictRole:
      return static_cast<int>(m_session.evaluation(row).verdict);
    case Qt::AccessibleTextRole:
      return name + ", " + toQString(m_session.evaluation(row).status);
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
  const auto row = static_cast<std::size_t>(index.row());
  core::Channel channel = *m_session.document().channels[row];
  channel.name = core::uniqueChannelName(m_session.document(), name, row);
  m_session.edit(tr("Rename channel"), core::withChannel(m_session.document(), row, std::move(channel)));
  return true;
}

ChannelList::ChannelList(Session& session, QWidget* parent)
    : QListView(parent), m_session(session), m_model(session) {
  setObjectName("channelList");
  setAccessibleName(tr("Channels"));
  setModel(&m_model);
  setItemDelegate(new ChannelDelegate(this));
  setUniformItemSizes(true);
  setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::SelectedClicked);
  connect(selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& current) {
    if (current.isValid()) m_session.selectChannel(static_cast<std::size_t>(current.row()));
  });
  connect(&session, &Session::changed, this, &ChannelList::followSession);
  followSession();
}

void ChannelList::followSession() {
  const auto channel = m_session.selection().channel;
  const QModelIndex wanted = channel ? m_model.index(static_cast<int>(*channel)) : QModelIndex();
  if (currentIndex() != wanted) setCurrentIndex(wanted);
}

}  // namespace ui

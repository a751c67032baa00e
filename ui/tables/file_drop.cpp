// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/file_drop.h"

#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QMimeData>
#include <QTimer>
#include <QUrl>
#include <algorithm>

#include "core/campaign/channel_list.h"
#include "core/recording/binary/binary_files.h"
#include "core/stock/delimited_rows.h"
#include "ui/document_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr qint64 firstBytes = qint64{64} * 1024;

const QStringList recordingSuffixes = {"csv", "tsv", "txt",  "asc", "dat", "log", "lvm", "prn", "wav",
                                       "npy", "mat", "hdf5", "h5",  "unv", "uff", "uf",  "58",  "rf64"};
const QStringList listSuffixes = {"csv", "tsv", "txt"};

/// Whole lines only, so that the last one is not taken for a short row.
QByteArray beginningOf(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return {};
  QByteArray bytes = file.read(firstBytes);
  if (bytes.size() == firstBytes) bytes.truncate(bytes.lastIndexOf('\n') + 1);
  return bytes;
}

std::string_view viewOf(const QByteArray& bytes) {
  return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

/// Its headings are those of a list of resistors (core/stock/stock_file.h).
bool isResistorList(const QByteArray& text) {
  const auto rows = core::delimitedRows(viewOf(text), viewOf(text).size() + 1);
  if (!rows || rows->empty()) return false;
  const auto& names = rows->front().cells;
  const auto has = [&](const char* name) {
    return std::find(names.begin(), names.end(), name) != names.end();
  };
  return has("id") && (has("resistance") || has("decades"));
}

/// Its headings name channels and something else of them; a recording's first column is none of that.
bool isChannelList(const QByteArray& text) {
  const auto table = core::readListTable(viewOf(text));
  if (!table || !table->hasHeader) return false;
  const auto fields = core::guessedFields(*table);
  const auto known = std::count_if(fields.begin(), fields.end(),
                                   [](core::ListField field) { return field != core::ListField::Ignored; });
  return known > 1 && std::find(fields.begin(), fields.end(), core::ListField::Name) != fields.end();
}

bool isText(const QByteArray& bytes) { return !bytes.isEmpty() && !bytes.contains('\0'); }

QString namesOf(const QStringList& paths) {
  constexpr int most = 4;
  QStringList names;
  for (const QString& path : paths.mid(0, most)) names << QFileInfo(path).fileName();
  if (paths.size() > most)
    names << FileDrop::tr("and %n more", nullptr, static_cast<int>(paths.size()) - most);
  return names.join(", ");
}

}  // namespace

DroppedKind kindOfDropped(const QString& path) {
  const QFileInfo file(path);
  if (!file.isFile() || !file.isReadable()) return DroppedKind::Unknown;
  const QString suffix = file.suffix().toLower();
  if (suffix == documentSuffix) return DroppedKind::Document;
  if (listSuffixes.contains(suffix)) {
    const QByteArray text = beginningOf(path);
    if (isResistorList(text)) return DroppedKind::Resistors;
    if (isChannelList(text)) return DroppedKind::Channels;
  }
  if (recordingSuffixes.contains(suffix)) return DroppedKind::Recording;
  // A recorder may write under any name of its own.
  const QByteArray bytes = beginningOf(path);
  if (core::binaryKindOf(viewOf(bytes).substr(0, core::binaryKindBytes))) return DroppedKind::Recording;
  const bool isLines = isText(bytes) && bytes.count('\n') > 2 && !bytes.startsWith('<') &&
                       !bytes.startsWith('{') && !bytes.startsWith("%PDF") && !bytes.startsWith("#!");
  return isLines ? DroppedKind::Recording : DroppedKind::Unknown;
}

bool FileDrop::Sorted::isEmpty() const {
  return documents.isEmpty() && recordings.isEmpty() && resistors.isEmpty() && channels.isEmpty() &&
         unknown.isEmpty();
}

/// A filter of the application: fields for text would take the names of the files as text.
FileDrop::FileDrop(QWidget& window) : QObject(&window), m_window(window), m_hint(new QLabel(&window)) {
  window.setAcceptDrops(true);
  m_hint->setObjectName("dropHint");
  m_hint->setTextFormat(Qt::PlainText);
  m_hint->setAlignment(Qt::AlignCenter);
  m_hint->setWordWrap(true);
  m_hint->setAttribute(Qt::WA_TransparentForMouseEvents);
  m_hint->hide();
  qApp->installEventFilter(this);
}

FileDrop::Sorted FileDrop::sortedFiles(const QMimeData& data) const {
  Sorted files;
  for (const QUrl& url : data.urls()) {
    const QString path = url.toLocalFile();
    switch (path.isEmpty() ? DroppedKind::Unknown : kindOfDropped(path)) {
      case DroppedKind::Document:
        files.documents << path;
        break;
      case DroppedKind::Recording:
        files.recordings << path;
        break;
      case DroppedKind::Resistors:
        files.resistors << path;
        break;
      case DroppedKind::Channels:
        files.channels << path;
        break;
      case DroppedKind::Unknown:
        files.unknown << (path.isEmpty() ? url.toDisplayString() : path);
    }
  }
  return files;
}

/// What will become of what is dragged, or why nothing.
QString FileDrop::sentence() const {
  const Sorted& files = *m_files;
  if (!files.unknown.isEmpty())
    return tr("Not taken: %1. Documents (.%2), recordings, lists of resistors and lists of channels can be "
              "dropped here.")
        .arg(namesOf(files.unknown), documentSuffix);
  if (files.documents.size() > 1) return tr("Not taken: one document can be open at a time.");
  QStringList lines;
  if (!files.documents.isEmpty()) lines << tr("Open the document %1").arg(namesOf(files.documents));
  if (!files.resistors.isEmpty())
    lines << tr("Take resistors into the stock from %1").arg(namesOf(files.resistors));
  if (!files.channels.isEmpty()) lines << tr("Add channels from the list %1").arg(namesOf(files.channels));
  if (!files.recordings.isEmpty()) lines << tr("Read the recording %1").arg(namesOf(files.recordings));
  return lines.join("\n");
}

void FileDrop::begin(const QMimeData& data) {
  m_files = sortedFiles(data);
  const Colours colours = coloursFor(m_window.palette());
  const QColor edge = m_files->isTaken() ? colours.selected : colours.fail;
  m_hint->setStyleSheet(QString("#dropHint { background: %1; color: %2; border: 3px %3 %4; padding: 12px; }")
                            .arg(colours.background.name(), colours.text.name(),
                                 m_files->isTaken() ? "solid" : "dashed", edge.name()));
  m_hint->setText(sentence());
  const int width = std::min(m_window.width() - 40, 560);
  const int height = std::max(90, m_hint->heightForWidth(width));
  m_hint->setGeometry((m_window.width() - width) / 2, (m_window.height() - height) / 2, width, height);
  m_hint->raise();
  m_hint->show();
}

void FileDrop::end() {
  m_hint->hide();
  m_files.reset();
}

bool FileDrop::eventFilter(QObject* watched, QEvent* event) {
  const QEvent::Type type = event->type();
  if (type != QEvent::DragEnter && type != QEvent::DragMove && type != QEvent::DragLeave &&
      type != QEvent::Drop)
    return false;
  auto* widget = qobject_cast<QWidget*>(watched);
  if (!widget || widget->window() != &m_window) return false;
  if (type == QEvent::DragLeave) {
    end();
    return false;
  }
  auto* drop = static_cast<QDropEvent*>(event);
  if (!drop->mimeData()->hasUrls()) return false;
  // What is refused is accepted while it is dragged, or nothing would tell why.
  if (!m_files) begin(*drop->mimeData());
  if (type == QEvent::Drop) {
    const Sorted files = *m_files;
    const QString refusal = files.isTaken() ? QString() : sentence();
    end();
    if (!refusal.isEmpty()) emit refused(refusal);
    if (refusal.isEmpty()) QTimer::singleShot(0, this, [this, files] { act(files); });
  }
  drop->setDropAction(Qt::CopyAction);
  drop->accept();
  return true;
}

/// The document first, since the others go into it.
void FileDrop::act(const Sorted& files) {
  for (const QString& path : files.documents) emit documentDropped(path);
  for (const QString& path : files.resistors) emit resistorsDropped(path);
  for (const QString& path : files.channels) emit channelsDropped(path);
  for (const QString& path : files.recordings) emit recordingDropped(path);
}

}  // namespace ui

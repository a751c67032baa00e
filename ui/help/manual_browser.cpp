// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/help/manual_browser.h"

#include <QAbstractTextDocumentLayout>
#include <QFontDatabase>
#include <QImage>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextTable>
#include <QWheelEvent>
#include <algorithm>

#include "ui/help/manual.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int widestPicture = 640;
constexpr int zoomStep = 10, leastZoom = 50, greatestZoom = 300;

/// Read on a light and on a dark ground (WCAG 2.2, 1.4.3).
QColor linkColourOn(bool dark) { return dark ? QColor(0x8a, 0xb8, 0xff) : QColor(0x0b, 0x57, 0xa4); }
QColor codeGroundOn(bool dark) { return dark ? QColor(255, 255, 255, 24) : QColor(0, 0, 0, 14); }
QColor markGroundOn(bool dark) { return dark ? QColor(0x6b, 0x55, 0x00) : QColor(0xff, 0xe0, 0x7a); }

}  // namespace

ManualBrowser::ManualBrowser(QWidget* parent) : QTextBrowser(parent) {
  setObjectName("manualPage");
  setAccessibleName(tr("Page of the manual"));
  setOpenLinks(false);
  setOpenExternalLinks(false);
  document()->setDocumentMargin(14);
  setFrameShape(QFrame::NoFrame);
  connect(this, &QTextBrowser::anchorClicked, this,
          [this](const QUrl& url) { emit addressWanted(url.toString()); });
}

QString ManualBrowser::title() const { return manualPage(manualAddress(m_address).page, m_language).title; }

bool ManualBrowser::showAddress(const QString& address, const QString& language) {
  if (!isInManual(address)) return false;
  const bool same = manualAddress(address).page == manualAddress(m_address).page && language == m_language;
  m_address = address;
  m_language = language;
  m_words.clear();
  same ? markWords({}) : render();
  goToAnchor();
  return true;
}

void ManualBrowser::setZoom(int percent) {
  m_zoom = std::clamp(percent, leastZoom, greatestZoom);
  const int at = verticalScrollBar()->value();
  const int before = std::max(1, verticalScrollBar()->maximum());
  render();
  verticalScrollBar()->setValue(at * verticalScrollBar()->maximum() / before);
  emit zoomed();
}

void ManualBrowser::render() {
  if (m_address.isEmpty()) return;
  QFont letters = font();
  letters.setPointSizeF(letters.pointSizeF() * m_zoom / 100.0);
  document()->setDefaultFont(letters);
  setMarkdown(manualPage(manualAddress(m_address).page, m_language).markdown);
  dressTables();
  dressText();
  fitPictures();
  QTextCursor start(document());
  setTextCursor(start);
  if (!m_words.empty()) markWords(m_words);
}

/// Lines between the cells, and room around their text.
void ManualBrowser::dressTables() {
  const Colours colours = coloursFor(palette());
  for (QTextFrame* frame : document()->rootFrame()->childFrames()) {
    auto* table = qobject_cast<QTextTable*>(frame);
    if (!table) continue;
    QTextTableFormat format = table->format();
    format.setBorderCollapse(true);
    format.setBorder(1);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorderBrush(colours.grid);
    format.setCellPadding(4);
    format.setTopMargin(6);
    format.setBottomMargin(10);
    table->setFormat(format);
  }
}

/// Links and code in colours that read on this ground; the importer takes those of the desktop.
void ManualBrowser::dressText() {
  const bool dark = isDark(palette());
  const QFont fixed = QFontDatabase::systemFont(QFontDatabase::FixedFont);
  for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
    QTextCursor cursor(block);
    const bool heading = block.blockFormat().headingLevel() > 0;
    const bool code =
        block.blockFormat().hasProperty(QTextFormat::BlockCodeFence) || block.charFormat().fontFixedPitch();
    QTextBlockFormat spacing;
    if (heading) spacing.setTopMargin(block.blockFormat().headingLevel() == 1 ? 0 : 14);
    if (heading) spacing.setBottomMargin(4);
    if (code) spacing.setBackground(codeGroundOn(dark));
    cursor.mergeBlockFormat(spacing);
    for (auto part = block.begin(); !part.atEnd(); ++part) {
      const QTextFragment fragment = part.fragment();
      const QTextCharFormat was = fragment.charFormat();
      QTextCharFormat more;
      if (was.isAnchor()) more.setForeground(linkColourOn(dark));
      if (was.fontFixedPitch()) {
        more.setFontFamilies(fixed.families());
        if (!code) more.setBackground(codeGroundOn(dark));
      }
      if (more.isEmpty()) continue;
      QTextCursor words(document());
      words.setPosition(fragment.position());
      words.setPosition(fragment.position() + fragment.length(), QTextCursor::KeepAnchor);
      words.mergeCharFormat(more);
    }
  }
}

/// No wider than the page, so that only tables ever have to be scrolled sideways.
void ManualBrowser::fitPictures() {
  const double room = std::max(120.0, viewport()->width() - 2 * document()->documentMargin() - 4);
  for (QTextBlock block = document()->begin(); block.isValid(); block = block.next())
    for (auto part = block.begin(); !part.atEnd(); ++part) {
      QTextImageFormat picture = part.fragment().charFormat().toImageFormat();
      if (!picture.isValid()) continue;
      const QImage loaded = loadResource(QTextDocument::ImageResource, QUrl(picture.name())).value<QImage>();
      const double width = std::min<double>(loaded.width(), room);
      if (loaded.isNull() || picture.width() == width) continue;
      picture.setWidth(width);
      picture.setHeight(width * loaded.height() / loaded.width());
      QTextCursor place(document());
      place.setPosition(part.fragment().position());
      place.setPosition(part.fragment().position() + 1, QTextCursor::KeepAnchor);
      place.setCharFormat(picture);
      break;  // the parts of this block are new now; a picture has a block of its own
    }
}

void ManualBrowser::resizeEvent(QResizeEvent* event) {
  QTextBrowser::resizeEvent(event);
  fitPictures();
}

/// Headings come in the order of the page's sections.
void ManualBrowser::goToAnchor() {
  const ManualAddress wanted = manualAddress(m_address);
  verticalScrollBar()->setValue(0);
  if (wanted.anchor.isEmpty()) return;
  const QList<ManualSection> sections = manualPage(wanted.page, m_language).sections;
  const auto found = std::find_if(sections.begin(), sections.end(), [&](const ManualSection& section) {
    return section.anchor == wanted.anchor;
  });
  auto left = found - sections.begin();
  for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
    if (block.blockFormat().headingLevel() == 0) continue;
    if (left-- > 0) continue;
    setTextCursor(QTextCursor(block));
    const qreal top = document()->documentLayout()->blockBoundingRect(block).top();
    verticalScrollBar()->setValue(static_cast<int>(top) - 8);
    return;
  }
}

void ManualBrowser::markWords(const QStringList& words) {
  m_words = words;
  QList<QTextEdit::ExtraSelection> marks;
  for (const QString& word : words)
    for (QTextCursor found = document()->find(word); !found.isNull(); found = document()->find(word, found)) {
      QTextEdit::ExtraSelection mark;
      mark.cursor = found;
      mark.format.setBackground(markGroundOn(isDark(palette())));
      mark.format.setProperty(QTextFormat::TextUnderlineStyle, QTextCharFormat::SingleUnderline);
      marks.push_back(mark);
    }
  std::sort(marks.begin(), marks.end(), [](const auto& a, const auto& b) { return a.cursor < b.cursor; });
  setExtraSelections(marks);
}

bool ManualBrowser::goToMark(int direction) {
  const QList<QTextEdit::ExtraSelection> marks = extraSelections();
  if (marks.empty()) return false;
  const QTextCursor here = textCursor();
  auto next = marks.end();
  if (direction > 0)
    next = std::find_if(marks.begin(), marks.end(), [&](const auto& mark) {
      return mark.cursor.selectionStart() >= here.selectionEnd() + (here.hasSelection() ? 0 : 1) ||
             (!here.hasSelection() && mark.cursor.selectionStart() >= here.position());
    });
  else
    for (auto mark = marks.begin(); mark != marks.end(); ++mark)
      if (mark->cursor.selectionEnd() <= here.selectionStart()) next = mark;
  if (next == marks.end()) next = direction > 0 ? marks.begin() : std::prev(marks.end());
  setTextCursor(next->cursor);
  ensureCursorVisible();
  return true;
}

/// Pictures of the manual alone, and none wider than a page wants: nothing is read from disk or network.
QVariant ManualBrowser::loadResource(int type, const QUrl& name) {
  if (type != QTextDocument::ImageResource) return {};
  QImage picture(":/manual/pictures/" + name.fileName());
  if (picture.isNull()) return {};
  const int widest = widestPicture * m_zoom / 100;
  if (picture.width() > widest) picture = picture.scaledToWidth(widest, Qt::SmoothTransformation);
  return picture;
}

void ManualBrowser::changeEvent(QEvent* event) {
  QTextBrowser::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    const int at = verticalScrollBar()->value();
    render();
    verticalScrollBar()->setValue(at);
  }
}

/// Only now is the width known that decides where a heading stands.
void ManualBrowser::showEvent(QShowEvent* event) {
  QTextBrowser::showEvent(event);
  QMetaObject::invokeMethod(this, &ManualBrowser::goToAnchor, Qt::QueuedConnection);
}

void ManualBrowser::wheelEvent(QWheelEvent* event) {
  if (!(event->modifiers() & Qt::ControlModifier)) return QTextBrowser::wheelEvent(event);
  if (const int turned = event->angleDelta().y(); turned != 0)
    setZoom(m_zoom + (turned > 0 ? zoomStep : -zoomStep));
  event->accept();
}

}  // namespace ui

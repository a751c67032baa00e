// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/working/working_text.h"

#include <QEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTextDocumentFragment>
#include <QTextTable>

#include "ui/outcome/figure_grid.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int columns_px = 720;  ///< from here on there is room for columns
constexpr QChar noBreak(0x00a0), wordJoiner(0x2060);

/// A number stays with its unit, and a unit in one piece.
QString kept(const std::string& text) {
  static const QRegularExpression unit("(?<=[0-9]) (?=[^\\s0-9×+/=−(])");
  QString line = toQString(text);
  return withWholeUnits(line.replace(unit, QString(noBreak)));
}

QString joined(const QString& above, const QString& below) {
  return above.isEmpty() ? below : below.isEmpty() ? above : above + QChar::LineSeparator + below;
}

QString equals(const std::string& text) { return text.empty() ? QString() : "= " + kept(text); }

QString sourceText(const std::string& source) {
  return source.empty() ? QString() : WorkingText::tr("Source: %1").arg(toQString(source));
}

}  // namespace

QString lettersOf(const core::WorkingPart& part) {
  bool product = false, correlated = false;
  for (const core::WorkingLine& line : part.lines) {
    const QString formula = toQString(line.formula);
    product = product || formula == "|c| u" || formula.contains("(c u)") || formula.contains("cᵢuᵢ");
    correlated = correlated || formula.contains("r cᵢuᵢ");
  }
  if (!product) return {};
  const QString letters = WorkingText::tr(
      "c: sensitivity, by how much the result changes for one unit of the input. u: standard uncertainty. "
      "k: coverage factor. U: expanded uncertainty.");
  return correlated ? letters + " " + WorkingText::tr("r: correlation of two inputs.") : letters;
}

WorkingText::WorkingText(QWidget* parent) : QTextEdit(parent) {
  setObjectName("workingText");
  setAccessibleName(tr("Working of the chosen step"));
  setReadOnly(true);
  setUndoRedoEnabled(false);
  setFrameShape(QFrame::NoFrame);
  setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  document()->setDocumentMargin(6);
}

void WorkingText::show(std::vector<core::WorkingPart> parts) {
  m_parts = std::move(parts);
  write();
}

void WorkingText::write() {
  const int place = verticalScrollBar()->value();
  setUpdatesEnabled(false);
  clear();
  QTextCursor whole(document());
  whole.beginEditBlock();  // laid out once, at the end
  for (const core::WorkingPart& part : m_parts) {
    QTextCursor end(document());
    end.movePosition(QTextCursor::End);
    QTextBlockFormat block;
    block.setHeadingLevel(2);
    block.setTopMargin(&part == &m_parts.front() ? 0 : 8);
    if (end.atStart())
      end.setBlockFormat(block);
    else
      end.insertBlock(block);
    end.insertText(toQString(part.heading), formatOf(Look::Heading));
    if (const QString letters = lettersOf(part); !letters.isEmpty()) {
      end.insertBlock(QTextBlockFormat());
      end.insertText(letters, formatOf(Look::Quiet));
    }
    if (!part.lines.empty()) writeLines(part);
    if (!part.contrasts.empty()) writeContrasts(part);
  }
  whole.endEditBlock();
  // Writing took the text's own cursor along to the end, which every new size would bring into view.
  moveCursor(QTextCursor::Start);
  verticalScrollBar()->setValue(place);
  setUpdatesEnabled(true);
}

QTextCharFormat WorkingText::formatOf(Look look) const {
  const Colours colours = coloursFor(palette());
  QTextCharFormat format;
  format.setForeground(look == Look::Quiet ? colours.quiet : colours.text);
  if (look == Look::Strong || look == Look::Heading) format.setFontWeight(QFont::Bold);
  if (look == Look::Heading) format.setFontPointSize(1.15 * font().pointSizeF());
  return format;
}

QTextTable* WorkingText::table(int rows, const std::vector<int>& shares_percent) {
  QTextTableFormat format;
  format.setBorder(0);
  format.setCellPadding(3);
  format.setCellSpacing(0);
  format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
  QVector<QTextLength> widths;
  for (const int share : shares_percent) widths.push_back(QTextLength(QTextLength::PercentageLength, share));
  format.setColumnWidthConstraints(widths);
  QTextCursor end(document());
  end.movePosition(QTextCursor::End);
  return end.insertTable(rows, static_cast<int>(shares_percent.size()), format);
}

void WorkingText::put(QTextTable* table, int row, int column, const QString& text, Look look, bool shaded) {
  QTextTableCell cell = table->cellAt(row, column);
  if (shaded) {
    QTextTableCellFormat format;
    format.setBackground(palette().alternateBase());
    cell.setFormat(format);
  }
  cell.firstCursorPosition().insertText(text, formatOf(look));
}

/// What, formula, numbers, result: side by side, or formula, numbers and result below what they are of.
void WorkingText::writeLines(const core::WorkingPart& part) {
  const int rows = static_cast<int>(part.lines.size());
  if (!m_columns) {
    QTextTable* stacked = table(2 * rows, {100});
    for (int row = 0; row < rows; ++row) {
      const core::WorkingLine& line = part.lines[static_cast<std::size_t>(row)];
      put(stacked, 2 * row, 0, kept(line.what), Look::Quiet, true);
      const QString above = joined(kept(line.formula), equals(line.numbers));
      QTextCursor cell = stacked->cellAt(2 * row + 1, 0).firstCursorPosition();
      if (!above.isEmpty()) cell.insertText(above + QChar::LineSeparator, formatOf(Look::Plain));
      cell.insertText(above.isEmpty() ? kept(line.result) : equals(line.result),
                      formatOf(above.isEmpty() ? Look::Plain : Look::Strong));
      if (!line.source.empty())
        cell.insertText(QChar::LineSeparator + sourceText(line.source), formatOf(Look::Quiet));
    }
    return;
  }
  QTextTable* grid = table(rows, {28, 25, 27, 20});
  for (int row = 0; row < rows; ++row) {
    const core::WorkingLine& line = part.lines[static_cast<std::size_t>(row)];
    const bool sentence = line.formula.empty() && line.numbers.empty(), shaded = row % 2 == 0;
    if (sentence) grid->mergeCells(row, 1, 1, 3);
    put(grid, row, 0, joined(kept(line.what), sourceText(line.source)), Look::Quiet, shaded);
    if (!sentence) {
      put(grid, row, 1, kept(line.formula), Look::Plain, shaded);
      put(grid, row, 2, equals(line.numbers), Look::Plain, shaded);
    }
    put(grid, row, sentence ? 1 : 3, sentence ? kept(line.result) : equals(line.result), Look::Strong,
        shaded);
  }
}

/// Exact, approximation, difference; beside or above them what the approximation is, below them why they
/// differ.
void WorkingText::writeContrasts(const core::WorkingPart& part) {
  QTextCursor end(document());
  end.movePosition(QTextCursor::End);
  end.insertText(tr("The exact value beside the textbook's formulas"), formatOf(Look::Strong));
  const int count = static_cast<int>(part.contrasts.size());
  QTextTable* grid = m_columns ? table(1 + 2 * count, {28, 34, 13, 13, 12}) : table(4 * count, {36, 36, 28});
  const QStringList names{tr("What, and by which formula"), tr("Formula"), tr("Exact"), tr("Formula gives"),
                          tr("Off by")};
  for (int column = 0; m_columns && column < 5; ++column)
    put(grid, 0, column, names[column], Look::Quiet, false);
  for (int k = 0; k < count; ++k) {
    const core::WorkingContrast& one = part.contrasts[static_cast<std::size_t>(k)];
    if (m_columns)
      writeInColumns(grid, 1 + 2 * k, one, k % 2 == 0);
    else
      writeStacked(grid, 4 * k, one, names);
  }
}

void WorkingText::writeInColumns(QTextTable* grid, int row, const core::WorkingContrast& one, bool shaded) {
  put(grid, row, 0, kept(one.what + ": " + one.by), Look::Plain, shaded);
  put(grid, row, 1, joined(kept(one.formula), equals(one.numbers)), Look::Plain, shaded);
  put(grid, row, 2, kept(one.exact), Look::Strong, shaded);
  put(grid, row, 3, kept(one.approximate), Look::Strong, shaded);
  put(grid, row, 4, kept(one.off), Look::Strong, shaded);
  grid->mergeCells(row + 1, 0, 1, 5);
  put(grid, row + 1, 0, kept(one.why + " ") + sourceText(one.source), Look::Quiet, shaded);
}

void WorkingText::writeStacked(QTextTable* grid, int row, const core::WorkingContrast& one,
                               const QStringList& names) {
  for (const int whole : {0, 1, 3}) grid->mergeCells(row + whole, 0, 1, 3);
  put(grid, row, 0, kept(one.what + ": " + one.by), Look::Quiet, true);
  put(grid, row + 1, 0, joined(kept(one.formula), equals(one.numbers)), Look::Plain, false);
  const std::string* values[] = {&one.exact, &one.approximate, &one.off};
  for (int column = 0; column < 3; ++column)
    put(grid, row + 2, column, joined(names[2 + column], kept(*values[column])), Look::Strong, false);
  put(grid, row + 3, 0, kept(one.why + " ") + sourceText(one.source), Look::Quiet, false);
}

void WorkingText::resizeEvent(QResizeEvent* event) {
  QTextEdit::resizeEvent(event);
  const bool columns = viewport()->width() >= columns_px;
  if (columns == m_columns) return;
  m_columns = columns;
  write();
}

void WorkingText::changeEvent(QEvent* event) {
  QTextEdit::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) write();
}

void WorkingText::keyPressEvent(QKeyEvent* event) {
  const bool bare = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
  if (bare && event->key() == Qt::Key_Left) return emit stepWalked(-1);
  if (bare && event->key() == Qt::Key_Right) return emit stepWalked(1);
  QTextEdit::keyPressEvent(event);
}

QMimeData* WorkingText::createMimeDataFromSelection() const {
  auto* data = new QMimeData;
  data->setText(textCursor().selection().toPlainText().remove(wordJoiner).replace(noBreak, ' '));
  return data;
}

}  // namespace ui

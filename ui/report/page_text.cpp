// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/page_text.h"

#include <QFontMetricsF>
#include <QHash>
#include <QTextBoundaryFinder>
#include <algorithm>
#include <array>
#include <cmath>
#include <memory>

namespace ui {
namespace {

struct LookOf {
  double size_pt;
  bool bold;
};

constexpr std::array<LookOf, lookCount> looks{{{18, true},
                                               {13, true},
                                               {10.5, true},
                                               {9, false},
                                               {9, true},
                                               {8, false},
                                               {8, true},
                                               {7, false},
                                               {7, true},
                                               {8, false}}};

QFont madeFont(LookOf look) {
  QFont font("DejaVu Sans");
  font.setPixelSize(static_cast<int>(std::lround(look.size_pt * dotsPerPoint)));
  font.setBold(look.bold);
  font.setKerning(false);
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setStyleStrategy(QFont::StyleStrategy(QFont::PreferNoShaping | QFont::PreferOutline));
  return font;
}

/// A font and what it has measured. A thread has its own, so that none waits for another.
class Measured {
 public:
  explicit Measured(Look look) : m_font(madeFont(looks[static_cast<std::size_t>(look)])), m_metrics(m_font) {
    for (std::size_t letter = 0; letter < m_latin.size(); ++letter)
      m_latin[letter] = m_metrics.horizontalAdvance(QChar(static_cast<char16_t>(letter)));
  }

  const QFont& font() const { return m_font; }
  double height() const { return m_metrics.height(); }
  double ascent() const { return m_metrics.ascent(); }

  double width(QStringView text) {
    double sum = 0;
    for (const QChar letter : text) {
      const auto code = letter.unicode();
      if (code < m_latin.size())
        sum += m_latin[code];
      else if (standsAlone(letter))
        sum += other(letter);
      else
        return m_metrics.horizontalAdvance(text.toString());
    }
    return sum;
  }

 private:
  /// Letters whose look depends on their neighbours are measured together with them.
  static bool standsAlone(QChar letter) {
    if (letter.isSurrogate() || letter.isMark()) return false;
    const QChar::Script script = letter.script();
    return script == QChar::Script_Common || script == QChar::Script_Latin || script == QChar::Script_Greek ||
           script == QChar::Script_Cyrillic;
  }

  double other(QChar letter) {
    const auto known = m_others.constFind(letter);
    if (known != m_others.cend()) return *known;
    return *m_others.insert(letter, m_metrics.horizontalAdvance(letter));
  }

  QFont m_font;
  QFontMetricsF m_metrics;
  std::array<double, 0x180> m_latin{};
  QHash<QChar, double> m_others;
};

Measured& measured(Look look) {
  thread_local std::array<std::unique_ptr<Measured>, lookCount> all;
  auto& one = all[static_cast<std::size_t>(look)];
  if (!one) one = std::make_unique<Measured>(look);
  return *one;
}

QStringView trimmedEnd(QStringView text) {
  while (!text.isEmpty() && text.back().isSpace() && text.back() != QChar::Nbsp) text.chop(1);
  return text;
}

/// Breaks a paragraph; ends with a line, be it an empty one.
class Breaker {
 public:
  Breaker(QStringView paragraph, Look look, double width, std::vector<TextLine>& lines)
      : m_text(paragraph), m_look(look), m_width(width), m_lines(lines) {}

  void run() {
    QTextBoundaryFinder finder(QTextBoundaryFinder::Line, m_text.data(), m_text.size());
    for (qsizetype from = 0; from < m_text.size();) {
      const qsizetype next = finder.toNextBoundary();
      const qsizetype to = next < 0 ? m_text.size() : next;
      take(from, to);
      from = to;
    }
    add(m_begin, m_text.size());
  }

 private:
  double width(qsizetype from, qsizetype to) const {
    return widthOf(trimmedEnd(m_text.sliced(from, to - from)), m_look);
  }

  void take(qsizetype from, qsizetype to) {
    if (width(m_begin, to) <= m_width) return;
    if (from > m_begin) add(m_begin, from);
    while (width(m_begin, to) > m_width) {
      const qsizetype end = endOfPart(to);
      if (end >= to) return;
      add(m_begin, end);
    }
  }

  /// At least one letter, though it be wider than the line.
  qsizetype endOfPart(qsizetype to) const {
    QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, m_text.data() + m_begin, to - m_begin);
    qsizetype end = finder.toNextBoundary();
    for (qsizetype next = finder.toNextBoundary(); next > 0 && width(m_begin, m_begin + next) <= m_width;
         next = finder.toNextBoundary())
      end = next;
    return m_begin + end;
  }

  void add(qsizetype from, qsizetype to) {
    const QStringView line = trimmedEnd(m_text.sliced(from, to - from));
    m_lines.push_back({line.toString(), widthOf(line, m_look)});
    m_begin = to;
  }

  QStringView m_text;
  Look m_look;
  double m_width;
  std::vector<TextLine>& m_lines;
  qsizetype m_begin = 0;
};

}  // namespace

const QFont& fontOf(Look look) { return measured(look).font(); }
double lineHeight(Look look) { return std::ceil(measured(look).height()); }
double ascent(Look look) { return std::ceil(measured(look).ascent()); }
double widthOf(QStringView text, Look look) { return measured(look).width(text); }

double longestWord(const QString& text, Look look) {
  double longest = 0;
  QTextBoundaryFinder finder(QTextBoundaryFinder::Line, text);
  qsizetype from = 0;
  for (qsizetype to = finder.toNextBoundary(); to > 0; to = finder.toNextBoundary()) {
    longest = std::max(longest, widthOf(trimmedEnd(QStringView(text).sliced(from, to - from)), look));
    from = to;
  }
  return longest;
}

std::vector<TextLine> linesOf(const QString& text, Look look, double width) {
  width += 0.5;  // what was measured for this width fits, whichever way sums are rounded
  std::vector<TextLine> lines;
  for (const QStringView paragraph : QStringView(text).split(u'\n')) {
    const double whole = widthOf(paragraph, look);
    if (whole <= width)
      lines.push_back({paragraph.toString(), whole});
    else
      Breaker(paragraph, look, width, lines).run();
  }
  return lines;
}

}  // namespace ui

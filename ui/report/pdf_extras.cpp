// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/pdf_extras.h"

#include <QMap>
#include <QRegularExpression>

namespace ui {
namespace {

/// A text string (ISO 32000-1, 7.9.2.2): ASCII as it is, for programs that look for it, all else in UTF-16.
QByteArray textString(const QString& text) {
  QByteArray plain;
  for (const QChar letter : text) {
    if (letter.unicode() < 32 || letter.unicode() > 126) {
      QByteArray bytes = "FEFF";
      for (const QChar each : text) bytes += QByteArray::number(each.unicode(), 16).rightJustified(4, '0');
      return "<" + bytes.toUpper() + ">";
    }
    if (QByteArray("()\\").contains(char(letter.unicode()))) plain += '\\';
    plain += char(letter.unicode());
  }
  return "(" + plain + ")";
}

QByteArray reference(int object) { return QByteArray::number(object) + " 0 R"; }

QByteArray points(double dots) { return QByteArray::number(dots / dotsPerPoint, 'f', 2); }

/// What must be known of a file to add to it.
class WrittenPdf {
 public:
  explicit WrittenPdf(const QByteArray& bytes) : m_bytes(bytes) { m_isKnown = readTable() && readPages(); }

  bool isKnown() const { return m_isKnown; }
  qsizetype table() const { return m_table; }
  int size() const { return int(m_offsets.size()); }
  int root() const { return m_root; }
  int info() const { return m_info; }
  const QList<int>& pages() const { return m_pages; }
  /// The text between "<<" and the last ">>" of an object.
  QByteArray dictionary(int object) const {
    const qsizetype begin = m_offsets.value(object, -1);
    if (begin < 0) return {};
    const qsizetype end = m_bytes.indexOf("endobj", begin), open = m_bytes.indexOf("<<", begin);
    const qsizetype close = end < 0 ? -1 : m_bytes.lastIndexOf(">>", end);
    return open < 0 || close < open ? QByteArray() : m_bytes.mid(open + 2, close - open - 2);
  }
  /// The object that `key` of `dictionary` refers to; 0 for none.
  static int referred(const QByteArray& dictionary, const char* key) {
    const QRegularExpression pattern(QString("/%1\\s+(\\d+)\\s+0\\s+R").arg(key));
    return pattern.match(QString::fromLatin1(dictionary)).captured(1).toInt();
  }

 private:
  bool readTable() {
    const qsizetype mark = m_bytes.lastIndexOf("startxref");
    if (mark < 0) return false;
    m_table = m_bytes.mid(mark + 9, 32).simplified().split(' ').value(0).toLongLong();
    if (m_table <= 0 || m_bytes.mid(m_table, 4) != "xref") return false;
    qsizetype at = m_bytes.indexOf('\n', m_bytes.indexOf('\n', m_table) + 1);
    const QList<QByteArray> range = m_bytes.mid(m_table + 4, at - m_table - 4).simplified().split(' ');
    const int count = range.value(1).toInt();
    constexpr qsizetype entry = 20;  // ISO 32000-1, 7.5.4
    if (range.value(0) != "0" || count <= 0 || m_bytes.size() < at + 1 + count * entry) return false;
    for (int k = 0; k < count; ++k) {
      const QByteArray line = m_bytes.mid(at + 1 + k * entry, entry);
      m_offsets.append(line[17] == 'n' ? line.left(10).toLongLong() : -1);
    }
    const QByteArray trailer = m_bytes.mid(at + 1 + count * entry, mark - at - 1 - count * entry);
    m_root = referred(trailer, "Root"), m_info = referred(trailer, "Info");
    return m_root > 0 && m_info > 0;
  }

  bool readPages() {
    const QByteArray tree = dictionary(referred(dictionary(m_root), "Pages"));
    const qsizetype open = tree.indexOf('['), close = tree.indexOf(']');
    if (open < 0 || close < open) return false;
    for (const QByteArray& kid : tree.mid(open + 1, close - open - 1).split('R'))
      if (const int page = kid.simplified().split(' ').value(0).toInt()) m_pages.append(page);
    return !m_pages.isEmpty();
  }

  const QByteArray& m_bytes;
  bool m_isKnown = false;
  qsizetype m_table = 0;
  QList<qsizetype> m_offsets;
  int m_root = 0, m_info = 0;
  QList<int> m_pages;
};

/// Objects that are new or stand in place of older ones.
class Update {
 public:
  Update(const WrittenPdf& pdf) : m_pdf(pdf), m_next(pdf.size()) {}

  int next() { return m_next++; }
  void put(int object, const QByteArray& content) { m_objects[object] = content; }

  QByteArray destination(const PagePlace& place) const {
    return "[" + reference(m_pdf.pages().value(qsizetype(place.page))) + " /XYZ 0 " +
           points(ReportBook::paper().height() - place.down + 4 * dotsPerPoint) + " null]";
  }

  QByteArray appendedTo(QByteArray pdf) const {
    QByteArray table = "xref\n";
    for (auto object = m_objects.begin(); object != m_objects.end(); ++object) {
      table += QByteArray::number(object.key()) + " 1\n" +
               QByteArray::number(pdf.size()).rightJustified(10, '0') + " 00000 n \n";
      pdf += QByteArray::number(object.key()) + " 0 obj\n" + object.value() + "\nendobj\n";
    }
    const qsizetype at = pdf.size();
    return pdf + table + "trailer\n<< /Size " + QByteArray::number(m_next) + " /Root " +
           reference(m_pdf.root()) + " /Info " + reference(m_pdf.info()) + " /Prev " +
           QByteArray::number(m_pdf.table()) + " >>\nstartxref\n" + QByteArray::number(at) + "\n%%EOF\n";
  }

 private:
  const WrittenPdf& m_pdf;
  int m_next;
  QMap<int, QByteArray> m_objects;
};

/// Two levels: chapters, closed, and what is below them. Returns the outline's object.
class Outline {
 public:
  Outline(Update& update, const std::vector<PageMark>& marks) : m_update(update), m_marks(marks) {}

  int put() {
    const int root = m_update.next();
    for (std::size_t k = 0; k < m_marks.size(); ++k) m_objects.push_back(m_update.next());
    std::vector<std::size_t> chapters;
    for (std::size_t k = 0; k < m_marks.size();) {
      const std::size_t end = endOf(k);
      chapters.push_back(k);
      std::vector<std::size_t> below;
      for (std::size_t each = k + 1; each < end; ++each) below.push_back(each);
      m_below.push_back(below);
      putRow(below, m_objects[k]);
      k = end;
    }
    putRow(chapters, root, &m_below);
    m_update.put(root, "<< /Type /Outlines" + ends(chapters) + " /Count " +
                           QByteArray::number(chapters.size()) + " >>");
    return root;
  }

 private:
  std::size_t endOf(std::size_t chapter) const {
    std::size_t end = chapter + 1;
    while (end < m_marks.size() && m_marks[end].level > 1) ++end;
    return end;
  }

  QByteArray ends(const std::vector<std::size_t>& row) const {
    return " /First " + reference(m_objects[row.front()]) + " /Last " + reference(m_objects[row.back()]);
  }

  void putRow(const std::vector<std::size_t>& row, int parent,
              const std::vector<std::vector<std::size_t>>* below = nullptr) {
    for (std::size_t k = 0; k < row.size(); ++k) {
      QByteArray item = "<< /Title " + textString(m_marks[row[k]].title) + " /Parent " + reference(parent);
      if (k > 0) item += " /Prev " + reference(m_objects[row[k - 1]]);
      if (k + 1 < row.size()) item += " /Next " + reference(m_objects[row[k + 1]]);
      if (below && !(*below)[k].empty())
        item += ends((*below)[k]) + " /Count -" + QByteArray::number((*below)[k].size());
      m_update.put(m_objects[row[k]], item + " /Dest " + m_update.destination(m_marks[row[k]].place) + " >>");
    }
  }

  Update& m_update;
  const std::vector<PageMark>& m_marks;
  std::vector<int> m_objects;
  std::vector<std::vector<std::size_t>> m_below;  ///< one a chapter
};

/// False when a page has no place for them.
bool putLinks(Update& update, const WrittenPdf& pdf, const std::vector<PageLink>& links) {
  QMap<int, QByteArray> annotations;
  for (const PageLink& link : links) {
    const int list = WrittenPdf::referred(pdf.dictionary(pdf.pages().value(qsizetype(link.page))), "Annots");
    if (list == 0) return false;
    const double paper = ReportBook::paper().height();
    annotations[list] += "<< /Type /Annot /Subtype /Link /Border [0 0 0] /Rect [" + points(link.box.left()) +
                         " " + points(paper - link.box.bottom()) + " " + points(link.box.right()) + " " +
                         points(paper - link.box.top()) + "] /Dest " + update.destination(link.target) +
                         " >>\n";
  }
  for (auto list = annotations.begin(); list != annotations.end(); ++list)
    update.put(list.key(), "[\n" + list.value() + "]");
  return true;
}

QByteArray element(const char* name, const QString& text) {
  return "<" + QByteArray(name) + ">" + text.toHtmlEscaped().toUtf8() + "</" + name + ">\n";
}

QString keywordsOf(const PdfFacts& facts) {
  const QString words = "shunt calibration, strain gauge";
  return facts.fingerprint.isEmpty() ? words : words + ", shuntwright-fingerprint:" + facts.fingerprint;
}

}  // namespace

QByteArray xmpOf(const PdfFacts& facts) {
  const auto list = [](const char* kind, const QByteArray& items) {
    return "<rdf:" + QByteArray(kind) + ">" + items + "</rdf:" + kind + ">";
  };
  const auto alternative = [&](const QString& text) {
    return list("Alt", "<rdf:li xml:lang=\"x-default\">" + text.toHtmlEscaped().toUtf8() + "</rdf:li>");
  };
  QByteArray xmp =
      "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
      "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
      "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
      "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" "
      "xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" "
      "xmlns:shuntwright=\"urn:shuntwright:report:1\">\n";
  xmp += "<dc:title>" + alternative(facts.title) + "</dc:title>\n";
  if (!facts.author.isEmpty())
    xmp += "<dc:creator>" + list("Seq", element("rdf:li", facts.author)) + "</dc:creator>\n";
  xmp += "<dc:description>" + alternative(facts.subject) + "</dc:description>\n";
  xmp += "<dc:language>" + list("Bag", element("rdf:li", facts.language)) + "</dc:language>\n";
  xmp += element("pdf:Keywords", keywordsOf(facts)) + element("xmp:CreatorTool", "Shuntwright");
  if (!facts.fingerprint.isEmpty()) xmp += element("shuntwright:fingerprint", facts.fingerprint);
  return xmp + "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"w\"?>\n";
}

std::optional<QByteArray> withExtras(const QByteArray& bytes, const PdfFacts& facts,
                                     const std::vector<PageLink>& links, const std::vector<PageMark>& marks) {
  const WrittenPdf pdf(bytes);
  if (!pdf.isKnown()) return std::nullopt;
  Update update(pdf);
  if (!putLinks(update, pdf, links)) return std::nullopt;
  QByteArray catalog = pdf.dictionary(pdf.root()) + "/Lang " + textString(facts.language) +
                       "\n/ViewerPreferences << /DisplayDocTitle true >>\n";
  if (!marks.empty())
    catalog += "/Outlines " + reference(Outline(update, marks).put()) + "\n/PageMode /UseOutlines\n";
  update.put(pdf.root(), "<<" + catalog + ">>");
  QByteArray info = pdf.dictionary(pdf.info());
  if (!facts.author.isEmpty()) info += "/Author " + textString(facts.author) + "\n";
  info += "/Subject " + textString(facts.subject) + "\n/Keywords " + textString(keywordsOf(facts)) + "\n";
  update.put(pdf.info(), "<<" + info + ">>");
  return update.appendedTo(bytes);
}

}  // namespace ui

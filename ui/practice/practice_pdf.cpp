// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/practice_pdf.h"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QPainter>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <memory>

#include "ui/aside.h"
#include "ui/bridge/paper_bridge.h"
#include "ui/page_pictures.h"
#include "ui/practice/practice_words.h"
#include "ui/practice/question_picture.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Practice", text); }

constexpr std::size_t most = 1000;  ///< questions; a longer text is more than QTextDocument can measure
constexpr double drawnUp = 0.5;     ///< share of the work until the questions are there

// Two questions go on a page, also below the name on the first one.
constexpr QSizeF bridgeRoom_pt(500, 165);
constexpr QSizeF headRoom_pt(500, 20), writingRoom_pt(500, 40);

constexpr const char* style = R"(<style>
h1 { font-size: 16pt; margin-top: 0px; margin-bottom: 8px; }
h2 { font-size: 11pt; margin-top: 14px; margin-bottom: 4px; }
p { margin-top: 3px; margin-bottom: 3px; }
p.choice { margin-left: 14px; margin-top: 2px; margin-bottom: 2px; }
p.given { color: #4c5560; font-size: 8.5pt; }
p.right { font-weight: bold; color: #00704f; }
p.formula { font-family: "DejaVu Sans Mono"; font-size: 8pt; margin-left: 14px; }
td, th { font-size: 8.5pt; border: 1px solid #d3d8dd; padding: 2px 6px; }
th { background-color: #e9edf1; }
table { border-collapse: collapse; }
</style>)";

QString html(const QString& text) { return unbroken(text).toHtmlEscaped(); }
QString html(std::string_view text) { return unbroken(toQString(core::htmlText(text))); }

QString paragraph(const QString& inside, const char* kind = "plain") {
  return QString("<p class=\"%1\">").arg(kind) + inside + "</p>\n";
}

void drawLines(QPainter& painter, const QRectF& room, int lines) {
  painter.save();
  painter.setPen(QPen(QColor("#8d97a3"), room.height() / 200));
  for (int line = 1; line <= lines; ++line) {
    const double y = room.top() + room.height() * line / lines * 0.98;
    painter.drawLine(QPointF(room.left(), y), QPointF(room.right(), y));
  }
  painter.restore();
}

/// The text of a sheet, and the pictures that stand in it.
class Sheet {
 public:
  Sheet(const std::vector<core::Question>& questions, bool answers, QTextDocument& text)
      : m_questions(questions), m_answers(answers), m_pictures(text) {}

  QString text(const QString& title, const std::function<bool(std::size_t done)>& mayGoOn) {
    QString all = QString(style) + "<h1>" + html(title) + "</h1>\n" + (m_answers ? key() : nameLine());
    for (std::size_t k = 0; k < m_questions.size() && mayGoOn(k); ++k)
      all += m_answers ? answer(m_questions[k], k) : question(m_questions[k], k);
    return all;
  }

 private:
  QString picture(QSizeF size_pt, PagePictures::Draw draw) {
    const core::PictureSource source = m_pictures.add(size_pt, std::move(draw));
    return QString("<p><img src=\"%1\" width=\"%2\"></p>\n")
        .arg(toQString(source.address))
        .arg(source.width_px);
  }

  QString bridge(const core::Question& question) {
    const auto draw = [&question, answers = m_answers](QPainter& painter, const QRectF& room) {
      drawOnPaper(painter, room, pictureOf(question, answers));
    };
    return picture(paperSize_pt(pictureOf(question, m_answers), bridgeRoom_pt), draw);
  }

  QString nameLine() {
    return paragraph(html(tr("Name, date"))) +
           picture(headRoom_pt, [](QPainter& painter, const QRectF& room) { drawLines(painter, room, 1); });
  }

  /// What is right in one table, for whoever marks a pile of sheets.
  QString key() const {
    QString rows = "<table cellspacing=\"0\"><tr><th>" + html(tr("Question")) + "</th><th align=\"left\">" +
                   html(tr("Asked")) + "</th><th align=\"left\">" + html(tr("Right")) + "</th></tr>\n";
    for (std::size_t k = 0; k < m_questions.size(); ++k)
      rows += QString("<tr><td align=\"right\">%1</td><td>%2</td><td>%3</td></tr>\n")
                  .arg(QString::number(k + 1), html(kindName(m_questions[k].kind)),
                       html(numbered(m_questions[k])));
    return rows + "</table>\n";
  }

  /// "2: it falls": the choice with its number.
  static QString numbered(const core::Question& question) {
    if (question.choices.empty()) return rightAnswer(question);
    return QString::number(question.right + 1) + ": " + rightAnswer(question);
  }

  static QString heading(const core::Question& question, std::size_t index) {
    return "<h2>" + html(tr("Question %1 · %2").arg(QString::number(index + 1), kindName(question.kind))) +
           "</h2>\n";
  }

  static QString facts(const core::Question& question) {
    return question.given.empty() ? QString() : paragraph(html(givenText(question)), "given");
  }

  static QString readings(const core::Table& table) {
    if (table.rows.empty()) return {};
    QString all = "<table cellspacing=\"0\"><tr>";
    for (const core::TableColumn& column : table.columns) all += "<th>" + html(column.name) + "</th>";
    all += "</tr>\n";
    for (const core::TableRow& row : table.rows) {
      all += "<tr>";
      for (std::size_t k = 0; k < row.cells.size(); ++k)
        all += QString("<td align=\"%1\">").arg(table.columns[k].numeric ? "right" : "left") +
               html(row.cells[k]) + "</td>";
      all += "</tr>\n";
    }
    return all + "</table>\n" + (table.note.empty() ? QString() : paragraph(html(table.note), "given"));
  }

  QString question(const core::Question& question, std::size_t index) {
    QString all = heading(question, index) + facts(question) + paragraph(html(question.text)) +
                  bridge(question) + readings(question.readings);
    for (std::size_t k = 0; k < question.choices.size(); ++k)
      all += paragraph(QString("☐ %1 · ").arg(k + 1) + html(question.choices[k]), "choice");
    const QString asked = question.choices.empty()
                              ? tr("Reading in %1, and how you found it:").arg(toQString(question.unit))
                              : tr("Because:");
    return all + paragraph(html(asked)) + picture(writingRoom_pt, [](QPainter& painter, const QRectF& room) {
             drawLines(painter, room, 2);
           });
  }

  QString answer(const core::Question& question, std::size_t index) {
    QString all = heading(question, index) + facts(question) + paragraph(html(question.text)) +
                  readings(question.readings) +
                  paragraph(html(tr("Right: %1").arg(numbered(question))), "right") + bridge(question);
    for (const std::string& sentence : question.explanation) all += paragraph(html(sentence));
    for (const std::string& line : question.formula) all += paragraph(html(line), "formula");
    return all;
  }

  const std::vector<core::Question>& m_questions;
  bool m_answers;
  PagePictures m_pictures;
};

/// Starts a page before each question that would not go onto the one before: everything is measured once, as
/// one long strip.
void breakBetweenQuestions(QTextDocument& text) {
  const QSizeF page = text.pageSize();
  text.setTextWidth(page.width());
  std::vector<QTextBlock> begins;
  std::vector<double> tops;
  for (QTextBlock block = text.begin(); block.isValid(); block = block.next()) {
    if (block.blockFormat().headingLevel() != 2) continue;
    begins.push_back(block);
    tops.push_back(text.documentLayout()->blockBoundingRect(block).top());
  }
  tops.push_back(text.documentLayout()->documentSize().height());
  QTextCursor edit(&text);
  edit.beginEditBlock();
  double pageTop = 0;
  for (std::size_t k = 0; k < begins.size(); ++k) {
    // A key of many rows ends somewhere on a later page.
    while (k == 0 && tops[0] - pageTop > page.height()) pageTop += page.height();
    if (tops[k + 1] - pageTop <= page.height()) continue;
    QTextBlockFormat format = begins[k].blockFormat();
    format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
    QTextCursor(begins[k]).setBlockFormat(format);
    pageTop = tops[k];
  }
  edit.endEditBlock();
  text.setPageSize(page);
}

core::Error stopped() { return {"sheets", core::say("were stopped before they were finished"), ""}; }

}  // namespace

core::Result<QByteArray> questionPages(const QString& title, const std::vector<core::Question>& questions,
                                       bool answers, const std::function<void(double)>& progress,
                                       std::stop_token stop, const ReportStamp& stamp) {
  constexpr double written = 0.3;
  const auto tell = [&](double share) {
    if (progress) progress(share);
  };
  std::unique_ptr<Sheet> sheet;
  const auto fill = [&](QTextDocument& text) {
    sheet = std::make_unique<Sheet>(questions, answers, text);
    text.setHtml(sheet->text(title, [&](std::size_t done) {
      tell(written * double(done) / double(questions.size()));
      return !stop.stop_requested();
    }));
  };
  return pdfPages(
      title, stamp, fill, [&](double share) { tell(written + (1 - written) * share); }, stop,
      breakBetweenQuestions);
}

core::Result<QByteArray> practicePdf(std::uint64_t seed, std::size_t count, core::Difficulty difficulty,
                                     const std::vector<core::QuestionKind>& kinds, bool answers,
                                     const std::function<void(double)>& progress, std::stop_token stop,
                                     const ReportStamp& stamp) {
  if (count == 0 || count > most)
    return core::Error{core::say("number of questions"),
                       core::say("must be from 1 to {1}", {std::to_string(most)}), ""};
  const auto tell = [&](double share) {
    if (progress) progress(share);
  };
  const auto questions = doneAside(
      [&](const core::Progress& drawingUp) {
        std::vector<core::Question> all;
        for (std::size_t k = 0; k < count && !stop.stop_requested(); ++k) {
          all.push_back(core::questionOf(seed, k, difficulty, kinds));
          drawingUp(double(k + 1) / double(count));
        }
        return all;
      },
      [&](double share) { tell(drawnUp * share); });
  if (stop.stop_requested()) return stopped();
  const QString title =
      (answers ? tr("Practice, answers · %1 · seed %2") : tr("Practice, questions · %1 · seed %2"))
          .arg(difficultyName(difficulty), QString::number(seed));
  return questionPages(
      title, questions, answers, [&](double share) { tell(drawnUp + (1 - drawnUp) * share); }, stop, stamp);
}

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/outcome_export.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPainter>
#include <QRegularExpression>

#include "core/report/report.h"
#include "core/report/step_row.h"
#include "ui/outcome/outcome_charts.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr double margin_px = 16;

QString tr(const char* text) { return QCoreApplication::translate("ui::OutcomeExport", text); }

double drawHeading(QPainter& painter, const OutcomeHeading& heading, double width) {
  const Colours colours = coloursFor(lightPalette());
  const double room = width - 2 * margin_px;
  QPointF at(margin_px, margin_px);
  at = drawPictureText(painter, heading.title, {16, true}, colours.text, room, at);
  at = drawPictureText(painter, heading.subject, {13, false}, colours.text, room, at);
  at = drawPictureText(painter, heading.verdict, {13, true}, colourOf(colours, heading.is), room, at);
  return drawPictureText(painter, heading.scope, {11, false}, colours.quiet, room, at).y() + 6;
}

void paintPicture(QPainter& painter, const Session& session, const ChartOptions& options) {
  const ShownOutcome outcome = shownOutcome(session);
  const QSizeF size = outcomePictureSize(outcome);
  painter.fillRect(QRectF(QPointF(0, 0), size), Qt::white);
  const double top = drawHeading(painter, headingOf(session, outcome), size.width());
  const QRectF room(margin_px, top, size.width() - 2 * margin_px, size.height() - top - margin_px);

  OutcomeCharts charts;
  charts.setAttribute(Qt::WA_DontShowOnScreen);
  charts.setFont(QFont("DejaVu Sans", 9));
  charts.setPalette(lightPalette());
  charts.hideReadout();
  charts.resize(room.size().toSize());
  ShownOutcome plain = outcome;
  plain.step.reset();  // what is chosen in the window is nobody's business on paper
  charts.showOutcome(plain, options, {});
  charts.show();  // on no screen: without it the charts do not lay themselves out
  // Again: how many labels have room is known only once the legends have their places.
  charts.showOutcome(plain, options, {});
  charts.paintInto(painter, room);
}

/// What a spreadsheet would work out. A number with a sign, as levels are often called, is the same worked
/// out.
bool looksLikeFormula(const QString& text) {
  const QString trimmed = text.trimmed();
  static const QRegularExpression signedNumber("^[+-][0-9]+([.,][0-9]+)?$");
  return !trimmed.isEmpty() && QString("=+-@").contains(trimmed[0]) &&
         !signedNumber.match(trimmed).hasMatch();
}

QStringList cellsOf(const core::StepRow& row, const QString& check) {
  const std::optional<double> expanded = row.decided ? row.decided->expanded : std::nullopt;
  QStringList cells{check, QString::number(row.step + 1), textCell(row.label), textCell(row.closed)};
  for (const auto& value : {row.simulated, row.expected, row.reading, row.change, row.deviation, expanded,
                            row.limit, row.residual})
    cells << numberCell(value);
  return cells << toQString(core::verdictWord(row.verdict));
}

QStringList headerOf(const core::Setup& setup) {
  const QString unit = ", " + toQString(core::readingUnitText(setup.instrument));
  return {tr("Check"),
          tr("Step"),
          tr("Label"),
          tr("Shunts closed"),
          tr("Simulated") + ", " + toQString(core::simulatedUnitText(setup.bridge)),
          tr("Expected") + unit,
          tr("Reading") + unit,
          tr("Change") + unit,
          tr("Deviation") + unit,
          tr("U of deviation") + unit,
          tr("Limit") + unit,
          tr("Residual") + unit,
          tr("Verdict")};
}

}  // namespace

QString textCell(std::string_view text) {
  const QString cell = toQString(text);
  return looksLikeFormula(cell) ? "'" + cell : cell;
}

/// Grouped digits would be read as text, or as another number.
QString numberCell(const std::optional<double>& value) {
  QLocale plain;
  plain.setNumberOptions(plain.numberOptions() | QLocale::OmitGroupSeparator);
  return value ? plain.toString(*value, 'g', 15) : QString();
}

OutcomeHeading headingOf(const Session& session, const ShownOutcome& outcome) {
  OutcomeHeading heading;
  heading.title = toQString(session.document().title);
  if (heading.title.isEmpty()) heading.title = tr("Outcome of a shunt check");
  QStringList checks;
  for (const std::size_t check : outcome.checks()) {
    const core::Check& one = outcome.channel->checks[check];
    checks << toQString(one.name) + (one.date.empty() ? QString() : " (" + toQString(one.date) + ")");
  }
  heading.subject = tr("Channel") + " " + toQString(outcome.channel->name) + ", " +
                    (checks.isEmpty()    ? tr("plan without a check")
                     : checks.size() < 2 ? checks.join(QString())
                                         : tr("%1 and %2").arg(checks[0], checks[1]));
  heading.verdict = whatIsMissing(session);
  if (!heading.verdict.isEmpty()) return heading;
  heading.scope = toQString(core::chainScopeStatement());
  const auto& of = outcome.evaluation->checks;
  heading.is = outcome.pair ? outcome.pair->comparison.verdict : of[*outcome.check].assessment.verdict;
  heading.verdict =
      toQString(outcome.pair ? outcome.pair->comparison.reason : of[*outcome.check].assessment.reason);
  return heading;
}

QSize outcomePictureSize(const ShownOutcome& outcome) { return {outcome.pair ? 1200 : 960, 760}; }

PictureDrawing outcomeDrawing(const Session& session, const ChartOptions& options) {
  const ShownOutcome outcome = shownOutcome(session);
  const OutcomeHeading heading = headingOf(session, outcome);
  return {outcomePictureSize(outcome), heading.title + ". " + heading.subject, heading.verdict,
          [&session, options](QPainter& painter) { paintPicture(painter, session, options); }};
}

QString suggestedName(const ShownOutcome& outcome) {
  QString name = toQString(outcome.channel->name);
  for (const std::size_t check : outcome.checks())
    name += "-" + toQString(outcome.channel->checks[check].name);
  return asFileName(name);
}

QList<QStringList> outcomeData(const ShownOutcome& outcome) {
  const core::Channel& channel = *outcome.channel;
  const core::ChannelEvaluation& evaluation = *outcome.evaluation;
  const std::vector<std::size_t> checks = outcome.checks();
  const core::Setup& setup =
      checks.empty() ? channel.setup : core::setupOf(channel, channel.checks[checks.front()]);
  QList<QStringList> rows{headerOf(setup)};
  if (checks.empty())
    for (const core::StepRow& row : core::plannedRows(setup, evaluation.prediction, evaluation.budget))
      rows << cellsOf(row, tr("plan"));
  for (const std::size_t check : checks)
    for (const core::StepRow& row : core::stepRows(channel, evaluation, check))
      rows << cellsOf(row, textCell(channel.checks[check].name));
  return rows;
}

QString asTabbedText(const QList<QStringList>& rows) {
  QStringList lines;
  for (QStringList cells : rows) {
    for (QString& cell : cells) cell.replace('\t', ' ').replace('\n', ' ').replace('\r', ' ');
    lines << cells.join('\t');
  }
  return lines.join('\n') + '\n';
}

QString asHtmlTable(const QList<QStringList>& rows) {
  QString html = "<table>";
  for (qsizetype k = 0; k < rows.size(); ++k) {
    const QString tag = k == 0 ? "th" : "td";
    html += "<tr>";
    for (const QString& cell : rows[k]) html += "<" + tag + ">" + cell.toHtmlEscaped() + "</" + tag + ">";
    html += "</tr>";
  }
  return html + "</table>";
}

}  // namespace ui

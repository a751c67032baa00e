// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/question_picture.h"

#include "ui/theme.h"

namespace ui {
namespace {

void hideAnswer(BridgePicture& picture) {
  const std::vector<bool> closed = picture.state.closed;
  const QString title = picture.state.title;
  picture.state = BridgeState{};
  picture.state.closed = closed;
  picture.state.title = title;
  showVoltages(picture, {}, 0);
}

std::optional<std::size_t> stepOf(const core::Setup& setup, std::size_t step) {
  return step < setup.sequence.size() ? std::optional(step) : std::nullopt;
}

}  // namespace

BridgePicture pictureOf(const core::Question& question, bool answered) {
  core::Channel channel;
  channel.setup = answered ? question.explained : question.setup;
  const std::size_t step = answered ? question.explainedStep : question.step;
  BridgePicture picture = pictureOf(channel, core::predict(channel.setup), stepOf(channel.setup, step));
  if (!answered) hideAnswer(picture);
  return picture;
}

QString givenText(const core::Question& question) {
  QString text;
  for (const core::Entry& entry : question.given)
    text += toQString(entry.name) + ": " + toQString(entry.value) + ". ";
  return text.trimmed();
}

QuestionCanvas::QuestionCanvas(QWidget* parent) : BridgeCanvas(parent) {
  setAccessibleName(tr("Bridge of the question"));
}

void QuestionCanvas::showQuestion(const core::Question& question, bool answered) {
  m_answered = answered;
  m_given = givenText(question);
  const core::Setup& setup = answered ? question.explained : question.setup;
  showSetup(setup, stepOf(setup, answered ? question.explainedStep : question.step));
  if (!answered && drawn()) hideAnswer(*drawn());
  fit();
}

QString QuestionCanvas::description() const { return m_answered ? BridgeCanvas::description() : m_given; }

TwinTable QuestionCanvas::twin() const {
  if (m_answered) return BridgeCanvas::twin();
  TwinTable table{{tr("What is given")}, {}};
  for (const QString& sentence : m_given.split(". ", Qt::SkipEmptyParts)) table.rows << QStringList{sentence};
  return table;
}

}  // namespace ui

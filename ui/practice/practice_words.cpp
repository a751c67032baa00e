// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/practice_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Practice", text); }

constexpr int answerDigits = 4;  ///< more would look as if they were asked for

}  // namespace

QString kindName(core::QuestionKind kind) {
  switch (kind) {
    case core::QuestionKind::Sign:
      return tr("Which way");
    case core::QuestionKind::Arm:
      return tr("Which arm");
    case core::QuestionKind::LargerShunt:
      return tr("Which is larger");
    case core::QuestionKind::Reading:
      return tr("What reading");
    case core::QuestionKind::PlantedFault:
      return tr("Which fault");
  }
  return {};
}

QString kindSentence(core::QuestionKind kind) {
  switch (kind) {
    case core::QuestionKind::Sign:
      return tr("which way the output goes");
    case core::QuestionKind::Arm:
      return tr("which arm the shunt must lie over");
    case core::QuestionKind::LargerShunt:
      return tr("which of two shunts gives the larger reading");
    case core::QuestionKind::Reading:
      return tr("what the reading will be, within 5 %");
    case core::QuestionKind::PlantedFault:
      return tr("which fault explains the readings");
  }
  return {};
}

QString difficultyName(core::Difficulty difficulty) {
  switch (difficulty) {
    case core::Difficulty::First:
      return tr("First steps");
    case core::Difficulty::Further:
      return tr("Further");
    case core::Difficulty::Thorough:
      return tr("Thorough");
  }
  return {};
}

QString difficultySentence(core::Difficulty difficulty) {
  switch (difficulty) {
    case core::Difficulty::First:
      return tr("full and quarter bridges, ideal leads, shunts right across an arm or over the whole bridge");
    case core::Difficulty::Further:
      return tr("all bridges, leads with resistance, shunts at terminals");
    case core::Difficulty::Thorough:
      return tr("unequal arms, reversed wires, leaks, several shunts at once");
  }
  return {};
}

const std::vector<core::Difficulty>& allDifficulties() {
  using core::Difficulty;
  static const std::vector<Difficulty> all = {Difficulty::First, Difficulty::Further, Difficulty::Thorough};
  static_assert(core::difficultyCount == 3);
  return all;
}

QString readingAnswer(core::Reading reading, const QString& unit) {
  const QString number = numberText(reading.base(), answerDigits).replace('-', QChar(0x2212));
  return (reading.base() > 0 ? "+" : "") + number + " " + unit;
}

QString unbroken(QString text) {
  static const QRegularExpression valueAndUnit(
      "(?<=[0-9]) (?=(?:[mkMGµ]?Ω|[mµ]?V(?:/V)?|µm/m|[kM]?N|mA|%|s)(?![A-Za-z]))");
  return text.replace(valueAndUnit, QString(QChar::Nbsp));
}

QString rightAnswer(const core::Question& question) {
  if (question.number)
    return tr("%1, within %2 %")
        .arg(readingAnswer(*question.number, toQString(question.unit)),
             QString::number(100 * core::readingTolerance));
  return question.right < question.choices.size() ? toQString(question.choices[question.right]) : QString();
}

}  // namespace ui

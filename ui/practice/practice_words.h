// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "core/practice/question.h"

namespace ui {

/// "Which way", "Which arm", ...: as short as a heading.
QString kindName(core::QuestionKind kind);
/// "Which way does the output go?"
QString kindSentence(core::QuestionKind kind);
/// "First steps", "Further", "Thorough".
QString difficultyName(core::Difficulty difficulty);
/// What bridges a difficulty has, in a sentence.
QString difficultySentence(core::Difficulty difficulty);

const std::vector<core::Difficulty>& allDifficulties();

/// `text` with spaces that no line breaks at between numbers and their units: "59 kΩ", "10 V", "5 %".
QString unbroken(QString text);

/// The right answer: the choice, or the number with its unit, and within what it is taken.
QString rightAnswer(const core::Question& question);
/// A reading as it stands in an answer: four significant digits, with its sign.
QString readingAnswer(core::Reading reading, const QString& unit);

}  // namespace ui

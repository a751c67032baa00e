// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/practice/question.h"
#include "ui/bridge/bridge_canvas.h"

namespace ui {

/// The drawing that belongs to `question`, with its shunts closed: before it is answered without voltages,
/// currents, output and polarity, which would tell the answer.
BridgePicture pictureOf(const core::Question& question, bool answered);

/// What is known about the bridge of `question`, in one sentence each.
QString givenText(const core::Question& question);

/// That drawing in the window. What it says to those who cannot see it tells no answer either.
class QuestionCanvas : public BridgeCanvas {
  Q_OBJECT

 public:
  explicit QuestionCanvas(QWidget* parent = nullptr);

  void showQuestion(const core::Question& question, bool answered);
  QString description() const override;
  /// What is given until it is answered; then the drawing's.
  TwinTable twin() const override;

 private:
  QString m_given;  ///< said in place of what is drawn until it is answered
  bool m_answered = false;
};

}  // namespace ui

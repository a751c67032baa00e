// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRadioButton>

namespace ui {

/// One choice of a question: a radio button whose words, of any origin, break their lines. Once the question
/// is answered it says by a sign and a word whether it was right.
class ChoiceButton : public QRadioButton {
  Q_OBJECT

 public:
  enum class Mark { None, Right, Wrong };

  /// `number`, from 1, is the key that chooses it.
  ChoiceButton(int number, const QString& words, QWidget* parent = nullptr);

  void setMark(Mark mark);
  Mark mark() const { return m_mark; }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return {80, sizeHint().height()}; }
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool hitButton(const QPoint& position) const override { return rect().contains(position); }

 private:
  QString shown() const;
  QRect wordsRect(int width) const;

  int m_number;
  QString m_words;
  Mark m_mark = Mark::None;
};

}  // namespace ui

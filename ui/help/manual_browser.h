// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTextBrowser>

namespace ui {

/// Shows one page of the manual in the colours of the palette. Opens nothing by itself: a click on a link is
/// a signal, and what leads out of the manual is text.
class ManualBrowser : public QTextBrowser {
  Q_OBJECT

 public:
  explicit ManualBrowser(QWidget* parent = nullptr);

  /// Shows `address` in `language`; without an anchor from its beginning. What is no page is refused.
  bool showAddress(const QString& address, const QString& language);
  /// What is shown, with the anchor that it was opened at.
  const QString& address() const { return m_address; }
  QString title() const;
  /// Marks every place of each word, and goes to the first one from the top of the part in sight on.
  void markWords(const QStringList& words);
  /// To the next marked place, or the one before; round at the ends. False without any.
  bool goToMark(int direction);
  /// Size of the letters against the program's, 50 to 300 %.
  void setZoom(int percent);
  int zoom() const { return m_zoom; }

  QVariant loadResource(int type, const QUrl& name) override;

 signals:
  void addressWanted(const QString& address);
  void zoomed();

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  void render();
  void dressTables();
  void dressText();
  void fitPictures();
  void goToAnchor();

  QString m_address, m_language;
  QStringList m_words;
  int m_zoom = 100;
};

}  // namespace ui

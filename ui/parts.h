// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QColor>
#include <QString>

class QLabel;
class QToolButton;
class QWidget;

// Labels and buttons that look alike on every page.

namespace ui {

/// A label for text of any origin: shown as it is, wrapped, to be selected with the mouse. It never asks for
/// the width of its longest word, which may be a name of any length.
QLabel* plainLabel(const char* name);
/// `label` in bold; returns it.
QLabel* embolden(QLabel* label);
void setTextColour(QWidget* label, const QColor& colour);

QToolButton* toolButton(const QString& name, const QString& text, const QString& tip);

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

class QWidget;

namespace ui {

/// Name of the dynamic property that a widget may carry: the address in the manual (ui/help/manual.h) that
/// tells of it and of everything in it.
inline constexpr auto helpPageProperty = "helpPage";

/// The address for `widget`: of the innermost of it and what it stands in (a dialog stands in the window that
/// opened it) that has the property, or whose object name or class is in the table. Of tabs what is on view.
/// "start.md#window" when nothing is known, or without a widget.
QString helpPlaceOf(const QWidget* widget);

/// A row of the table, for tests.
struct HelpPlace {
  const char* name;  ///< of an object, or "ui::Class"
  const char* address;
};
const std::vector<HelpPlace>& helpPlaces();

}  // namespace ui

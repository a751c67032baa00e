// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>

namespace ui {

/// Where the words of the tables' functions are translated.
struct TableWords {
  Q_DECLARE_TR_FUNCTIONS(ui::TableWords)
};

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/record/revisions.h"

namespace ui {

/// The effective user, who owns what is written, as the system knows him; $USER where it does not. So is the
/// holder of a lock told.
QString loginName();
/// Who works at this computer, for history, remarks and sign-off: as entered last, else the login name.
QString personName();
void rememberPerson(const QString& name);

/// The present moment as ISO 8601, UTC.
std::string timeNow();
/// Who saves now, with this program.
core::Saving savingNow();

/// That the file was altered outside of the program, as a sentence; empty when it was not, or when that
/// cannot be told.
QString alteredOutside(const QString& path);

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/plan/setup.h"

// Words of a record that several of its sections share, in the present language.

namespace core {

/// `text`, or that it is not given.
std::string givenText(const std::string& text);
/// A day of a document ("2031-05-04", or whatever was written there) as the language writes it.
std::string shownDay(const std::string& date);
/// A moment of a document ("2031-05-04T10:15:00Z") as "2031-05-04 10:15 UTC".
std::string shownTime(const std::string& time);
/// "bridge amplifier, serial 17-3, certificate AF-2201, due 2031-09-01"; that it is not given.
std::string identityText(const Identity& identity);
/// "Zero return": the name of a figure at the begin of a line.
std::string meritHeading(MeritKind kind);
/// "TP-01, TP-02 and 80 more": the first twelve.
std::string listedNames(const std::vector<std::string>& names);

}  // namespace core

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/campaign/channel_list.h"
#include "core/units/notation.h"

// What the headings of a channel list say.

namespace core {

/// "Leads, ohm", "Leads [ohm]", "Leads (ohm)", "Leads / ohm", "Leads in ohm" taken apart. Behind a comma and
/// in brackets any word is a unit but a few that surely are none ("each", "nominal"); behind a slash and "in"
/// only what is a unit of some field.
struct ListHeading {
  std::string name;
  std::string unit;  ///< as parseQuantity knows it where it does; empty: none
};
ListHeading listHeadingOf(std::string_view text);

/// What a column of this heading surely is; Ignored when it says nothing.
ListField fieldOfHeading(const ListHeading& heading);

/// Which notation the cells of a field are in; none where they are text.
std::optional<UnitFamily> familyOf(ListField field);

}  // namespace core

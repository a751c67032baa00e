// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <hdf5.h>

#include <optional>
#include <string>
#include <vector>

namespace reader {

/// The attribute `name` of an object as text; empty when there is none.
std::string textAttribute(hid_t object, const char* name);

/// Unit of a data set by the attribute "unit" or "units".
std::string unitOf(hid_t dataset);

struct NumberAttribute {
  std::string name;
  double value = 0;
};

/// The attributes of an object that are single numbers and tell a sample rate by their name.
std::vector<NumberAttribute> rateAttributes(hid_t object);

}  // namespace reader

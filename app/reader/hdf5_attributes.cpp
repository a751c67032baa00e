// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/reader/hdf5_attributes.h"

#include <cstring>
#include <string_view>

#include "app/reader/hdf5_handle.h"
#include "core/recording/binary/reader_columns.h"

namespace reader {
namespace {

bool isSingle(hid_t attribute) {
  const Hdf5Handle space(H5Aget_space(attribute), H5Sclose);
  return space && H5Sget_simple_extent_npoints(*space) == 1;
}

std::string textOfVariableLength(hid_t attribute, hid_t type) {
  constexpr std::size_t longest = 256;
  char* text = nullptr;
  if (H5Aread(attribute, type, &text) < 0 || !text) return {};
  std::string result(text, ::strnlen(text, longest));
  H5free_memory(text);
  return result;
}

std::string textOfFixedLength(hid_t attribute, hid_t type) {
  constexpr std::size_t longest = 4096;
  const std::size_t size = H5Tget_size(type);
  if (size == 0 || size > longest) return {};
  std::string text(size, '\0');
  if (H5Aread(attribute, type, text.data()) < 0) return {};
  text.resize(::strnlen(text.data(), size));
  return text;
}

/// Called for each attribute of an object.
herr_t addRate(hid_t object, const char* name, const H5A_info_t*, void* into) {
  constexpr std::size_t most = 16;
  auto& found = *static_cast<std::vector<NumberAttribute>*>(into);
  if (found.size() == most || !core::spacingOf(name, 1)) return 0;
  const Hdf5Handle attribute(H5Aopen(object, name, H5P_DEFAULT), H5Aclose);
  if (!attribute || !isSingle(*attribute)) return 0;
  const Hdf5Handle type(H5Aget_type(*attribute), H5Tclose);
  const H5T_class_t kind = H5Tget_class(*type);
  double value = 0;
  if (kind != H5T_INTEGER && kind != H5T_FLOAT) return 0;
  if (H5Aread(*attribute, H5T_NATIVE_DOUBLE, &value) >= 0 && core::spacingOf(name, value))
    found.push_back({name, value});
  return 0;
}

}  // namespace

std::string textAttribute(hid_t object, const char* name) {
  if (H5Aexists(object, name) <= 0) return {};
  const Hdf5Handle attribute(H5Aopen(object, name, H5P_DEFAULT), H5Aclose);
  if (!attribute || !isSingle(*attribute)) return {};
  const Hdf5Handle type(H5Aget_type(*attribute), H5Tclose);
  if (!type || H5Tget_class(*type) != H5T_STRING) return {};
  return H5Tis_variable_str(*type) > 0 ? textOfVariableLength(*attribute, *type)
                                       : textOfFixedLength(*attribute, *type);
}

std::string unitOf(hid_t dataset) {
  for (const char* name : {"unit", "units", "Unit", "Units", "UNIT", "UNITS"}) {
    std::string unit = textAttribute(dataset, name);
    if (!unit.empty()) return unit;
  }
  return {};
}

std::vector<NumberAttribute> rateAttributes(hid_t object) {
  std::vector<NumberAttribute> found;
  H5Aiterate2(object, H5_INDEX_NAME, H5_ITER_NATIVE, nullptr, addRate, &found);
  return found;
}

}  // namespace reader

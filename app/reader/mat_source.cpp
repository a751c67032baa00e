// SPDX-License-Identifier: GPL-3.0-or-later
#include <matio.h>

#include <cstring>
#include <limits>
#include <vector>

#include "app/reader/limits.h"
#include "app/reader/mat_elements.h"
#include "app/reader/variable_source.h"

namespace reader {
namespace {

struct CloseMat {
  void operator()(mat_t* file) const { Mat_Close(file); }
};
struct FreeVariable {
  void operator()(matvar_t* variable) const { Mat_VarFree(variable); }
};
using Variable = std::unique_ptr<matvar_t, FreeVariable>;

bool isNumeric(matio_classes type) { return type >= MAT_C_DOUBLE && type <= MAT_C_UINT64; }

std::string wordFor(matio_classes type) {
  switch (type) {
    case MAT_C_CELL:
      return "is a cell array";
    case MAT_C_STRUCT:
      return "is a structure";
    case MAT_C_OBJECT:
    case MAT_C_OPAQUE:
      return "is an object";
    case MAT_C_FUNCTION:
      return "is a function";
    case MAT_C_CHAR:
      return "is text";
    case MAT_C_SPARSE:
      return "is a sparse matrix";
    default:
      return "is of an unknown class";
  }
}

std::string unfitness(const matvar_t& variable, const MatElement* element) {
  if (!element) return "stands behind damage in the file";
  if (!element->fault.empty()) return element->fault;
  if (!variable.name || element->name != variable.name) return "has a damaged heading";
  if (!isNumeric(variable.class_type)) return wordFor(variable.class_type);
  if (variable.isComplex) return "holds complex numbers";
  if (variable.isLogical) return "holds logical values";
  if (variable.rank < 1 || !variable.dims) return "has no size";
  return {};
}

template <class Number>
bool convert(const std::vector<char>& bytes, std::size_t count, double* to) {
  for (std::size_t k = 0; k < count; ++k) {
    Number number;
    std::memcpy(&number, bytes.data() + k * sizeof number, sizeof number);
    to[k] = static_cast<double>(number);
  }
  return true;
}

/// False for a class without numbers.
bool toDoubles(matio_classes type, const std::vector<char>& bytes, std::size_t count, double* to) {
  switch (type) {
    case MAT_C_DOUBLE:
      return convert<double>(bytes, count, to);
    case MAT_C_SINGLE:
      return convert<float>(bytes, count, to);
    case MAT_C_INT8:
      return convert<std::int8_t>(bytes, count, to);
    case MAT_C_UINT8:
      return convert<std::uint8_t>(bytes, count, to);
    case MAT_C_INT16:
      return convert<std::int16_t>(bytes, count, to);
    case MAT_C_UINT16:
      return convert<std::uint16_t>(bytes, count, to);
    case MAT_C_INT32:
      return convert<std::int32_t>(bytes, count, to);
    case MAT_C_UINT32:
      return convert<std::uint32_t>(bytes, count, to);
    case MAT_C_INT64:
      return convert<std::int64_t>(bytes, count, to);
    case MAT_C_UINT64:
      return convert<std::uint64_t>(bytes, count, to);
    default:
      return false;
  }
}

class MatSource final : public VariableSource {
 public:
  MatSource(mat_t* file, const std::vector<MatElement>& elements) : m_file(file) {
    for (std::size_t k = 0; k < core::greatestReaderVariables; ++k) {
      Variable variable(Mat_VarReadNextInfo(m_file.get()));
      if (!variable) break;
      add(std::move(variable), k < elements.size() ? &elements[k] : nullptr);
    }
    // Later, as reading a value moves the file to another place.
    for (std::size_t k = 0; k < m_variables.size(); ++k) readSingle(k);
    // What the library did not reach is named all the same.
    for (std::size_t k = m_listing.variables.size(); k < elements.size(); ++k) {
      const std::string& fault = elements[k].fault;
      m_listing.variables.push_back(
          {elements[k].name, "", fault.empty() ? "cannot be read" : fault, {}, {}, true});
    }
    if (m_listing.variables.size() > core::greatestReaderVariables) {
      m_listing.variables.resize(core::greatestReaderVariables);
      m_listing.whole = false;
    }
  }

  const core::ReaderListing& listing() const override { return m_listing; }

  /// Going to a place in packed data means to unpack all before it, so their pieces are long.
  std::size_t pieceAt(std::size_t variable, std::uint64_t) const override {
    return m_variables[variable]->compression == MAT_COMPRESSION_NONE ? 1UL << 18U : 1UL << 24U;
  }

  bool read(std::size_t variable, std::uint64_t begin, std::size_t count, double* to) override {
    matvar_t* const info = m_variables[variable].get();
    if (begin + count > static_cast<std::uint64_t>(std::numeric_limits<int>::max())) return false;
    std::vector<char> bytes(count * Mat_SizeOfClass(info->class_type));
    if (Mat_VarReadDataLinear(m_file.get(), info, bytes.data(), static_cast<int>(begin), 1,
                              static_cast<int>(count)) != 0)
      return false;
    return toDoubles(info->class_type, bytes, count, to);
  }

 private:
  void add(Variable variable, const MatElement* element) {
    core::ReaderVariable listed{
        variable->name ? variable->name : "", "", unfitness(*variable, element), {}, {}, true};
    if (variable->dims)
      for (int k = variable->rank - 1; k >= 0; --k) listed.sizes.push_back(variable->dims[k]);
    m_variables.push_back(std::move(variable));
    m_listing.variables.push_back(std::move(listed));
  }

  void readSingle(std::size_t k) {
    core::ReaderVariable& listed = m_listing.variables[k];
    bool single = listed.unfit.empty();
    for (const std::uint64_t size : listed.sizes) single = single && size == 1;
    double value = 0;
    if (single && read(k, 0, 1, &value)) listed.value = value;
  }

  std::unique_ptr<mat_t, CloseMat> m_file;
  std::vector<Variable> m_variables;
  core::ReaderListing m_listing;
};

}  // namespace

std::unique_ptr<VariableSource> openMat(const char* path, int fd) {
  const auto elements = matElements(fd);
  mat_t* const file = Mat_Open(path, MAT_ACC_RDONLY);
  if (!file || !openNoMore()) return nullptr;
  if (Mat_GetVersion(file) == MAT_FT_MAT73) return nullptr;
  return std::make_unique<MatSource>(file, elements);
}

}  // namespace reader

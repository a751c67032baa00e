// SPDX-License-Identifier: GPL-3.0-or-later
#include <hdf5.h>

#include <algorithm>
#include <limits>
#include <string_view>
#include <vector>

#include "app/reader/hdf5_attributes.h"
#include "app/reader/hdf5_handle.h"
#include "app/reader/limits.h"
#include "app/reader/variable_source.h"

namespace reader {
namespace {

constexpr std::size_t pieceNumbers = 1UL << 20U;

/// Where the numbers of a variable are.
struct Place {
  std::string dataset;  ///< empty for an attribute, whose value is known
  std::string field;    ///< of a table; empty for the data set itself
};

bool isNumber(H5T_class_t kind) { return kind == H5T_INTEGER || kind == H5T_FLOAT; }

std::string wordFor(H5T_class_t kind) {
  switch (kind) {
    case H5T_STRING:
      return "is text";
    case H5T_ENUM:
      return "holds logical values or names";
    case H5T_REFERENCE:
      return "holds references to other data";
    case H5T_COMPOUND:
      return "is a table within a table";
    case H5T_VLEN:
    case H5T_ARRAY:
      return "holds lists";
    default:
      return "holds no numbers";
  }
}

/// How many chunks all samples take.
std::uint64_t chunksNeeded(hid_t dataset, hid_t made) {
  constexpr int greatestRank = 32;
  hsize_t sizes[greatestRank] = {};
  hsize_t chunk[greatestRank] = {};
  const Hdf5Handle space(H5Dget_space(dataset), H5Sclose);
  const int rank = H5Sget_simple_extent_ndims(*space);
  if (rank < 1 || rank > greatestRank || H5Pget_chunk(made, greatestRank, chunk) != rank) return 0;
  H5Sget_simple_extent_dims(*space, sizes, nullptr);
  std::uint64_t chunks = 1;
  for (int k = 0; k < rank; ++k) {
    if (chunk[k] == 0) return 0;
    const std::uint64_t along = sizes[k] / chunk[k] + (sizes[k] % chunk[k] > 0 ? 1 : 0);
    if (__builtin_mul_overflow(chunks, along, &chunks)) return std::numeric_limits<std::uint64_t>::max();
  }
  return chunks;
}

bool isWritten(hid_t dataset, hid_t made) {
  const Hdf5Handle space(H5Dget_space(dataset), H5Sclose);
  if (H5Sget_simple_extent_npoints(*space) == 0) return true;
  if (H5Pget_layout(made) != H5D_CHUNKED) return H5Dget_storage_size(dataset) > 0;
  hsize_t chunks = 0;
  return H5Dget_num_chunks(dataset, *space, &chunks) >= 0 && chunks == chunksNeeded(dataset, made);
}

/// Why numbers of the data set could be none of this file's, or none at all; empty when they are there.
std::string storageFault(hid_t dataset) {
  const Hdf5Handle made(H5Dget_create_plist(dataset), H5Pclose);
  if (!made) return "has a damaged heading";
  if (H5Pget_external_count(*made) != 0 || H5Pget_layout(*made) == H5D_VIRTUAL)
    return "has its numbers in another file";
  for (unsigned k = 0, filters = static_cast<unsigned>(std::max(0, H5Pget_nfilters(*made))); k < filters;
       ++k) {
    unsigned flags = 0;
    std::size_t parameters = 0;
    const H5Z_filter_t filter = H5Pget_filter2(*made, k, &flags, &parameters, nullptr, 0, nullptr, nullptr);
    if (H5Zfilter_avail(filter) <= 0) return "is compressed in a way that is not known here";
  }
  // What was never written reads as zeros.
  return isWritten(dataset, *made) ? std::string{} : "has samples that were never written";
}

/// What MATLAB 7.3 says of a variable.
std::string matlabFault(hid_t dataset, std::string_view name) {
  const std::string kind = textAttribute(dataset, "MATLAB_class");
  if (kind.empty()) return {};
  if (H5Aexists(dataset, "MATLAB_empty") > 0) return "is empty";
  if (H5Aexists(dataset, "MATLAB_sparse") > 0) return "is a sparse matrix";
  if (name.find('/') != std::string_view::npos) return "is part of a structure";
  constexpr std::string_view numeric[] = {"double", "single", "int8",   "uint8", "int16",
                                          "uint16", "int32",  "uint32", "int64", "uint64"};
  if (std::find(std::begin(numeric), std::end(numeric), kind) != std::end(numeric)) return {};
  if (kind == "char") return "is text";
  if (kind == "logical") return "holds logical values";
  return "is of the class " + kind;
}

std::vector<std::string> fieldsOf(hid_t type) {
  std::vector<std::string> fields;
  for (int k = 0; k < H5Tget_nmembers(type) && k < static_cast<int>(core::greatestReaderVariables); ++k) {
    char* const name = H5Tget_member_name(type, static_cast<unsigned>(k));
    if (!name) continue;
    fields.emplace_back(name);
    H5free_memory(name);
  }
  return fields;
}

bool isComplex(const std::vector<std::string>& fields) {
  return fields == std::vector<std::string>{"r", "i"} || fields == std::vector<std::string>{"real", "imag"};
}

/// One double that a table's field, or the data set itself, is read as.
Hdf5Handle typeInMemory(const std::string& field) {
  if (field.empty()) return {H5Tcopy(H5T_NATIVE_DOUBLE), H5Tclose};
  Hdf5Handle type(H5Tcreate(H5T_COMPOUND, sizeof(double)), H5Tclose);
  H5Tinsert(*type, field.c_str(), 0, H5T_NATIVE_DOUBLE);
  return type;
}

class Hdf5Source final : public VariableSource {
 public:
  explicit Hdf5Source(Hdf5Handle file) : m_file(std::move(file)) {
    addRates(*m_file, "");
    H5Ovisit2(*m_file, H5_INDEX_NAME, H5_ITER_NATIVE, addObject, this, H5O_INFO_BASIC);
  }

  const core::ReaderListing& listing() const override { return m_listing; }

  /// The rest of a row, or whole rows.
  std::size_t pieceAt(std::size_t variable, std::uint64_t begin) const override {
    const std::uint64_t row = rowLength(variable);
    const std::uint64_t rest = row - begin % row;
    if (rest < row || row >= pieceNumbers)
      return static_cast<std::size_t>(std::min<std::uint64_t>(rest, pieceNumbers));
    return static_cast<std::size_t>(pieceNumbers / row * row);
  }

  bool read(std::size_t variable, std::uint64_t begin, std::size_t count, double* to) override {
    const Place& place = m_places[variable];
    if (place.dataset.empty() || !open(place.dataset)) return false;
    const Hdf5Handle space(H5Dget_space(*m_dataset), H5Sclose);
    const Hdf5Handle type = typeInMemory(place.field);
    const hsize_t length = count;
    const Hdf5Handle memory(H5Screate_simple(1, &length, nullptr), H5Sclose);
    if (!space || !type || !memory || !choose(*space, variable, begin, count)) return false;
    return H5Dread(*m_dataset, *type, *memory, *space, H5P_DEFAULT, to) >= 0;
  }

 private:
  /// The extent that changes fastest, of those that are not 1.
  std::uint64_t rowLength(std::size_t variable) const {
    const auto& sizes = m_listing.variables[variable].sizes;
    for (std::size_t k = sizes.size(); k > 0; --k)
      if (sizes[k - 1] != 1) return std::max<std::uint64_t>(1, sizes[k - 1]);
    return 1;
  }

  /// Chooses a part of one row, or whole rows.
  bool choose(hid_t space, std::size_t variable, std::uint64_t begin, std::uint64_t count) const {
    const auto& sizes = m_listing.variables[variable].sizes;
    if (sizes.empty()) return H5Sselect_all(space) >= 0;
    const std::uint64_t row = rowLength(variable);
    const bool part = begin % row != 0 || count < row;
    std::vector<hsize_t> start(sizes.size(), 0);
    std::vector<hsize_t> extent(sizes.size(), 1);
    bool isRow = true;
    bool isOuter = true;
    for (std::size_t k = sizes.size(); k > 0; --k) {
      if (sizes[k - 1] == 1) continue;
      if (isRow) {
        start[k - 1] = begin % row;
        extent[k - 1] = part ? count : row;
        isRow = false;
      } else if (isOuter) {
        start[k - 1] = begin / row;
        extent[k - 1] = part ? 1 : count / row;
        isOuter = false;
      } else {
        return false;
      }
    }
    return H5Sselect_hyperslab(space, H5S_SELECT_SET, start.data(), nullptr, extent.data(), nullptr) >= 0;
  }

  /// The last one stays open, and with it the pieces that are unpacked already.
  bool open(const std::string& path) {
    constexpr std::size_t slots = 521;
    constexpr std::size_t cacheBytes = 64UL << 20U;
    if (m_dataset && path == m_path) return true;
    const Hdf5Handle access(H5Pcreate(H5P_DATASET_ACCESS), H5Pclose);
    H5Pset_chunk_cache(*access, slots, cacheBytes, 1.0);
    m_dataset = Hdf5Handle(H5Dopen2(*m_file, path.c_str(), *access), H5Dclose);
    m_path = path;
    return static_cast<bool>(m_dataset);
  }

  static herr_t addObject(hid_t root, const char* name, const H5O_info_t* info, void* into) {
    auto& source = *static_cast<Hdf5Source*>(into);
    const std::string_view path = name;
    if (path == "." || path.starts_with("#refs#") || path.starts_with("#subsystem#")) return 0;
    if (source.m_listing.variables.size() >= core::greatestReaderVariables) {
      source.m_listing.whole = false;
      return 1;
    }
    if (info->type == H5O_TYPE_DATASET) {
      source.addDataset(name);
    } else if (info->type == H5O_TYPE_GROUP) {
      const Hdf5Handle group(H5Gopen2(root, name, H5P_DEFAULT), H5Gclose);
      if (group) source.addRates(*group, std::string(path) + "/");
    }
    return 0;
  }

  void add(core::ReaderVariable variable, Place place) {
    if (m_listing.variables.size() >= core::greatestReaderVariables) {
      m_listing.whole = false;
      return;
    }
    m_listing.variables.push_back(std::move(variable));
    m_places.push_back(std::move(place));
    const core::ReaderVariable& last = m_listing.variables.back();
    const bool single =
        std::all_of(last.sizes.begin(), last.sizes.end(), [](auto size) { return size == 1; });
    double value = 0;
    const std::size_t index = m_listing.variables.size() - 1;
    if (single && last.unfit.empty() && !last.value && read(index, 0, 1, &value))
      m_listing.variables.back().value = value;
  }

  void addRates(hid_t object, const std::string& prefix) {
    for (const NumberAttribute& rate : rateAttributes(object))
      add({prefix + rate.name, "", "", {}, rate.value}, {});
  }

  void addDataset(const std::string& name) {
    const Hdf5Handle dataset(H5Dopen2(*m_file, name.c_str(), H5P_DEFAULT), H5Dclose);
    if (!dataset) return add({name, "", "has a damaged heading", {}, {}}, {});
    addRates(*dataset, name + "/");
    const Hdf5Handle type(H5Dget_type(*dataset), H5Tclose);
    core::ReaderVariable variable{name, unitOf(*dataset), matlabFault(*dataset, name), sizesOf(*dataset), {}};
    variable.columnMajor = !textAttribute(*dataset, "MATLAB_class").empty();
    if (variable.unfit.empty()) variable.unfit = storageFault(*dataset);
    const H5T_class_t kind = H5Tget_class(*type);
    if (kind != H5T_COMPOUND) {
      if (variable.unfit.empty() && !isNumber(kind)) variable.unfit = wordFor(kind);
      return add(std::move(variable), {name, ""});
    }
    const auto fields = fieldsOf(*type);
    if (isComplex(fields)) {
      variable.unfit = "holds complex numbers";
      return add(std::move(variable), {name, ""});
    }
    addFields(variable, *type, fields);
  }

  void addFields(const core::ReaderVariable& table, hid_t type, const std::vector<std::string>& fields) {
    for (std::size_t k = 0; k < fields.size(); ++k) {
      core::ReaderVariable field = table;
      field.name += "/" + fields[k];
      const H5T_class_t kind = H5Tget_member_class(type, static_cast<unsigned>(k));
      if (field.unfit.empty() && !isNumber(kind)) field.unfit = wordFor(kind);
      add(std::move(field), {table.name, fields[k]});
    }
  }

  static std::vector<std::uint64_t> sizesOf(hid_t dataset) {
    const Hdf5Handle space(H5Dget_space(dataset), H5Sclose);
    const int rank = space ? H5Sget_simple_extent_ndims(*space) : -1;
    if (space && H5Sget_simple_extent_type(*space) == H5S_NULL) return {0};
    if (rank <= 0) return {};
    std::vector<hsize_t> sizes(static_cast<std::size_t>(rank));
    H5Sget_simple_extent_dims(*space, sizes.data(), nullptr);
    return {sizes.begin(), sizes.end()};
  }

  Hdf5Handle m_file;
  Hdf5Handle m_dataset;
  std::string m_path;
  core::ReaderListing m_listing;
  std::vector<Place> m_places;
};

}  // namespace

std::unique_ptr<VariableSource> openHdf5(const char* path) {
  H5Eset_auto2(H5E_DEFAULT, nullptr, nullptr);
  // A file may ask for a filter from a library of its own choice.
  H5PLset_loading_state(0);
  const Hdf5Handle access(H5Pcreate(H5P_FILE_ACCESS), H5Pclose);
  H5Pset_file_locking(*access, false, true);
  Hdf5Handle file(H5Fopen(path, H5F_ACC_RDONLY, *access), H5Fclose);
  if (!file || !openNoMore()) return nullptr;
  return std::make_unique<Hdf5Source>(std::move(file));
}

}  // namespace reader

// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of the command `line`: points, and a covariance matrix. The first byte chooses, the rest is the
// file.

#include <algorithm>
#include <cmath>

#include "app/covariance_file.h"
#include "app/point_table.h"
#include "tests/fuzz/target.h"

namespace {

using fuzz::must;

bool isFinite(const std::vector<double>& values) {
  return std::all_of(values.begin(), values.end(), [](double value) { return std::isfinite(value); });
}

void readPoints(const std::string& path) {
  const auto points = app::readPointTable(path);
  if (!points) return fuzz::mustBeTold(points.error());
  must(points->x.size() == points->y.size() && points->x.size() == points->lines.size(), "points are whole");
  must(isFinite(points->x) && isFinite(points->y) && isFinite(points->uy), "points are finite");
}

void readMatrix(const std::string& path, std::size_t size) {
  const auto matrix = app::readCovariance(path, size);
  if (!matrix) return fuzz::mustBeTold(matrix.error());
  must(matrix->size() == size * size && isFinite(*matrix), "a matrix is square and finite");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static fuzz::MemoryFile file;
  if (size == 0) return 0;
  file.hold(fuzz::textOf(data + 1, size - 1));
  const unsigned points = data[0] % 8;
  if (points == 0)
    readPoints(file.path().string());
  else
    readMatrix(file.path().string(), points);
  return 0;
}

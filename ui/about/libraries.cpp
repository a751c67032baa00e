// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/about/libraries.h"

#include <H5public.h>
#include <matio_pubconf.h>
#include <xlsxwriter.h>
#include <zlib.h>
#include <CLI/Version.hpp>
#include <Eigen/Core>
#include <QCoreApplication>
#include <boost/version.hpp>
#include <nlohmann/json_fwd.hpp>

namespace ui {
namespace {

/// What libraries are for, in the language of the window.
struct Purpose {
  Q_DECLARE_TR_FUNCTIONS(Libraries)
};

QString numbered(int major, int minor, int patch) {
  return QString("%1.%2.%3").arg(major).arg(minor).arg(patch);
}

constexpr const char* lgplQt = "LGPL-3.0-only OR GPL-2.0-only OR GPL-3.0-only";

QList<Library> librariesOfQt() {
  const QString version = qVersion();
  return {
      {"Qt Core", version, lgplQt, Purpose::tr("Text, files, languages"), "libQt6Core"},
      {"Qt Gui", version, lgplQt, Purpose::tr("The window"), "libQt6Gui"},
      {"Qt Widgets", version, lgplQt, Purpose::tr("Its fields and tables"), "libQt6Widgets"},
      {"Qt Charts", version, "GPL-3.0-only", Purpose::tr("Charts"), "libQt6Charts"},
      {"Qt SVG", version, lgplQt, Purpose::tr("Pictures made of lines"), "libQt6Svg"},
      {"Qt Print Support", version, lgplQt, Purpose::tr("Printing"), "libQt6PrintSupport"},
      {"Qt D-Bus", version, lgplQt, Purpose::tr("Notices on the desktop"), "libQt6DBus"},
      {"Qt Concurrent", version, lgplQt, Purpose::tr("Work aside from the window"), "libQt6Concurrent"},
  };
}

QList<Library> otherLibraries() {
  return {
      {"Eigen", numbered(EIGEN_WORLD_VERSION, EIGEN_MAJOR_VERSION, EIGEN_MINOR_VERSION), "MPL-2.0",
       Purpose::tr("Matrices"), ""},
      {"Boost", numbered(BOOST_VERSION / 100000, BOOST_VERSION / 100 % 1000, BOOST_VERSION % 100), "BSL-1.0",
       Purpose::tr("Distributions"), ""},
      {"JSON for Modern C++",
       numbered(NLOHMANN_JSON_VERSION_MAJOR, NLOHMANN_JSON_VERSION_MINOR, NLOHMANN_JSON_VERSION_PATCH), "MIT",
       Purpose::tr("Documents"), ""},
      {"CLI11", CLI11_VERSION, "BSD-3-Clause", Purpose::tr("The command line"), ""},
      {"libxlsxwriter", LXW_VERSION, "BSD-2-Clause", Purpose::tr("Workbooks"), "libxlsxwriter"},
      {"Minizip", ZLIB_VERSION, "Zlib", Purpose::tr("Reading workbooks"), "libminizip"},
      {"MAT File I/O Library", MATIO_VERSION_STR, "BSD-2-Clause", Purpose::tr("Recordings as MATLAB files"),
       "libmatio"},
      {"HDF5", numbered(H5_VERS_MAJOR, H5_VERS_MINOR, H5_VERS_RELEASE), "BSD-3-Clause",
       Purpose::tr("Recordings as HDF5 files"), "libhdf5_serial"},
      {"zlib", ZLIB_VERSION, "Zlib", Purpose::tr("Packed recordings"), "libz"},
      {"GNU C++ Library", QString::number(__GNUC__), "GPL-3.0-or-later WITH GCC-exception-3.1",
       Purpose::tr("The language itself"), "libstdc++"},
      {"GNU C Library", QString("%1.%2").arg(__GLIBC__).arg(__GLIBC_MINOR__), "LGPL-2.1-or-later",
       Purpose::tr("The system"), "libc"},
  };
}

}  // namespace

QList<Library> libraries() { return librariesOfQt() + otherLibraries(); }

}  // namespace ui

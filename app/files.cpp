// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/files.h"

#include <QDate>
#include <QDateTime>
#include <QFileInfo>

#include "app/output.h"
#include "core/document/json_reader.h"
#include "core/record/file_standing.h"
#include "core/units/text.h"
#include "ui/safe_file.h"
#include "ui/theme.h"

namespace app {
namespace {

void noteAlteration(const std::string& path, std::string_view text) {
  const auto standing = core::fileStanding(text);
  if (standing && standing->kind == core::FileStanding::Kind::Altered)
    note(path + ": " + core::sentenceOf(*standing) + " Look at what \"shuntwright verify\" says of it.");
}

}  // namespace

core::Result<core::Document> openDocument(const std::string& path) {
  if (auto usable = requireRegularFile(path); !usable) return usable.error();
  const auto bytes = ui::loadBytes(QString::fromStdString(path), greatestDocument_bytes);
  if (!bytes) return bytes.error();
  const std::string_view text(bytes->constData(), static_cast<std::size_t>(bytes->size()));
  auto document = core::readDocument(text);
  if (!document) return inFile(path, document.error());
  noteAlteration(path, text);
  return document;
}

core::Result<void> requireRegularFile(const std::string& path) {
  const QFileInfo info(QString::fromStdString(path));
  if (!info.exists())
    return core::Error{path, "there is no such file", "Look at the name and the folder it is in"};
  if (info.isDir()) return core::Error{path, "this is a folder, not a file", "Name a file in it"};
  if (!info.isFile())
    return core::Error{path, "this is a pipe or a device, not a file", "Save the data to a file first"};
  return {};
}

core::Error inFile(const std::string& path, core::Error error) {
  error.where = error.where.empty() ? path : path + ", " + error.where;
  return error;
}

core::Result<std::vector<std::size_t>> channelsNamed(const core::Document& document,
                                                     const std::string& name) {
  std::vector<std::size_t> chosen;
  std::vector<std::string> names;
  for (std::size_t k = 0; k < document.channels.size(); ++k) {
    names.push_back(document.channels[k]->name);
    if (name.empty() || names.back() == name) chosen.push_back(k);
  }
  if (names.empty()) return core::Error{"", "the document has no channels", "Add one in the window"};
  if (chosen.empty())
    return core::Error{"--channel", "there is no channel \"" + name + "\"", "There are " + listed(names)};
  return chosen;
}

std::string faultOfName(const std::string& name) {
  return name.empty() ? "the name is empty; leave the option out or name one" : "";
}

std::string fullCheckName(const std::string& name) {
  if (name == "pre") return "pre-test";
  if (name == "post") return "post-test";
  return name;
}

std::vector<std::string> closedShunts(const core::Setup& setup, std::size_t step) {
  std::vector<std::string> names;
  for (const std::size_t shunt : setup.sequence[step].closed) names.push_back(setup.shunts[shunt].name);
  return names;
}

core::Time now() {
  bool isSet = false;
  const qint64 set = qEnvironmentVariable("SOURCE_DATE_EPOCH").toLongLong(&isSet);
  return core::Time(std::chrono::seconds(isSet ? set : QDateTime::currentSecsSinceEpoch()));
}

core::Date today() { return ui::toDate(QDate::currentDate()); }

core::Result<core::Date> dayFrom(const std::string& text) {
  if (text.empty()) return today();
  if (const auto day = core::dateFromText(text)) return *day;
  return core::Error{"--today", core::inQuotes(text) + " is no date", "Write it as 2026-05-11"};
}

std::string joined(const std::vector<std::string>& words, const std::string& between) {
  std::string text;
  for (const std::string& word : words) text += (text.empty() ? "" : between) + word;
  return text;
}

std::string listed(const std::vector<std::string>& words) {
  constexpr std::size_t most = 12;
  if (words.size() <= most) return joined(words, ", ");
  return joined({words.begin(), words.begin() + most}, ", ") + " and " + std::to_string(words.size() - most) +
         " more";
}

}  // namespace app

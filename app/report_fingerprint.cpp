// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_fingerprint.h"

#include <unzip.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>
#include <vector>

#include "core/document/sha256.h"

namespace app {
namespace {

constexpr std::size_t digits = 64;

/// The fingerprint that stands right behind `mark`, after blanks and `between`; empty when there is none.
std::string behind(std::string_view text, std::string_view mark, std::string_view between = " \t\r\n") {
  for (std::size_t at = text.find(mark); at != text.npos; at = text.find(mark, at + 1)) {
    const std::size_t begin = text.find_first_not_of(between, at + mark.size());
    if (begin == text.npos) return {};
    if (const auto found = text.substr(begin, digits); core::isSha256Hex(found)) return std::string(found);
  }
  return {};
}

std::string inPdf(std::string_view text) {
  for (const std::string_view mark :
       {"<shuntwright:fingerprint>", "shuntwright:fingerprint=\"", "shuntwright-fingerprint:"})
    if (std::string found = behind(text, mark); !found.empty()) return found;
  return {};
}

std::string inPage(std::string_view text) {
  const std::size_t name = text.find("\"shuntwright-fingerprint\"");
  return name == text.npos ? std::string() : behind(text.substr(name, 500), "content=\"");
}

/// Keeps two members of the outermost object and counts the depth; everything else passes by, so that a file
/// of brackets alone costs no memory.
class OutermostMembers : public nlohmann::json_sax<nlohmann::json> {
 public:
  std::string format, fingerprint;

  bool null() override { return true; }
  bool boolean(bool) override { return true; }
  bool number_integer(number_integer_t) override { return true; }
  bool number_unsigned(number_unsigned_t) override { return true; }
  bool number_float(number_float_t, const string_t&) override { return true; }
  bool binary(binary_t&) override { return false; }
  bool string(string_t& value) override {
    if (m_depth == 1 && m_key == "format") format = value;
    if (m_depth == 1 && m_key == "fingerprint") fingerprint = value;
    return true;
  }
  bool start_object(std::size_t) override { return ++m_depth <= deepest; }
  bool key(string_t& name) override {
    if (m_depth == 1) m_key = name;
    return true;
  }
  bool end_object() override { return --m_depth >= 0; }
  bool start_array(std::size_t) override { return ++m_depth <= deepest; }
  bool end_array() override { return --m_depth >= 0; }
  bool parse_error(std::size_t, const std::string&, const nlohmann::json::exception&) override {
    return false;
  }

 private:
  static constexpr int deepest = 64;  // as of documents

  int m_depth = 0;
  std::string m_key;
};

core::Result<std::string> inJson(const std::string& path, std::string_view text) {
  OutermostMembers found;
  // The parser takes a zero byte for the end, and what stands behind it would go unseen.
  if (text.find('\0') != text.npos || !nlohmann::json::sax_parse(text, &found))
    return core::Error{path, "it is no JSON that can be read", "Choose a report that this program wrote"};
  if (found.format == "shuntwright")
    return core::Error{path, "it is a document and no report", "Name a report made from the document"};
  return core::isSha256Hex(found.fingerprint) ? found.fingerprint : std::string();
}

/// The last cells of all rows below a heading that ends in "fingerprint".
core::Result<std::string> inTable(const std::string& path, std::string_view text) {
  std::set<std::string_view> found;
  const std::size_t heading = text.find_first_of("\r\n");
  if (heading == text.npos || !text.substr(0, heading).ends_with("fingerprint")) return std::string();
  for (std::size_t at = heading; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    std::string_view line = text.substr(at, end - at);
    while (line.ends_with('\r') || line.ends_with('"')) line.remove_suffix(1);
    // A line that does not end in one is the begin of a cell with a line break in it.
    if (line.size() > digits && core::isSha256Hex(line.substr(line.size() - digits)))
      found.insert(line.substr(line.size() - digits));
    at = end + 1;
  }
  if (found.size() > 1)
    return core::Error{path, "its rows state different fingerprints, so that it is put together of several",
                       "Write the report again"};
  return found.empty() ? std::string() : std::string(*found.begin());
}

/// The part of a workbook that holds its custom properties; empty when it has none.
core::Result<std::string> customProperties(const std::string& path) {
  constexpr std::size_t longest = 1 << 20;
  const unzFile zip = unzOpen(path.c_str());
  if (!zip) return core::Error{path, "the workbook is damaged", "Write the report again"};
  std::string text;
  bool sound = true;
  if (unzLocateFile(zip, "docProps/custom.xml", 0) == UNZ_OK) {
    text.resize(longest);
    sound = unzOpenCurrentFile(zip) == UNZ_OK;
    const int read = sound ? unzReadCurrentFile(zip, text.data(), static_cast<unsigned>(text.size())) : -1;
    sound = read >= 0 && unzCloseCurrentFile(zip) == UNZ_OK;
    text.resize(sound ? static_cast<std::size_t>(read) : 0);
  }
  unzClose(zip);
  if (!sound) return core::Error{path, "the workbook is damaged", "Write the report again"};
  return text;
}

core::Result<std::string> inWorkbook(const std::string& path) {
  const auto text = customProperties(path);
  if (!text) return text;
  const std::size_t name = text->find("\"shuntwright-fingerprint\"");
  return name == text->npos ? std::string() : behind(std::string_view(*text).substr(name), "<vt:lpwstr>");
}

core::Result<ReportFingerprint> of(std::string kind, core::Result<std::string> found) {
  if (!found) return found.error();
  return ReportFingerprint{std::move(kind), *std::move(found)};
}

}  // namespace

core::Result<ReportFingerprint> reportFingerprint(const std::string& path, const QByteArray& bytes) {
  std::string_view text(bytes.constData(), static_cast<std::size_t>(bytes.size()));
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  if (text.starts_with("%PDF-")) return of("PDF", inPdf(text));
  if (text.starts_with("PK\x03\x04")) return of("workbook", inWorkbook(path));
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  if (first != text.npos && text[first] == '{') return of("JSON", inJson(path, text));
  if (first != text.npos && text[first] == '<') return of("HTML page", inPage(text));
  if (text.starts_with("channel,")) return of("CSV table", inTable(path, text));
  return core::Error{path, "it is no report of a kind that this program writes",
                     "Choose a PDF, HTML, XLSX, CSV or JSON report"};
}

}  // namespace app

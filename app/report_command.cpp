// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QFileInfo>
#include <algorithm>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/offscreen.h"
#include "app/output.h"
#include "app/progress_line.h"
#include "core/report/csv.h"
#include "core/report/json.h"
#include "core/report/workbook.h"
#include "ui/locale.h"
#include "ui/report/report_files.h"
#include "ui/safe_file.h"

namespace app {
namespace {

constexpr qint64 largestTemplate = 1 << 20;  ///< bytes

struct ReportOptions {
  std::string file;
  std::string out;
  std::string content;
  std::vector<std::string> channels;
  std::string language;
  bool localNumbers = false;
  bool list = false;
  std::string write;
};

std::vector<std::string> languageCodes() {
  std::vector<std::string> codes;
  for (const QString& code : ui::interfaceLanguages()) codes.push_back(code.toStdString());
  return codes;
}

int listTemplates() {
  std::string text;
  for (const core::ReportTemplate& one : core::readyTemplates())
    text += core::templateName(one) + ": " + core::templatePurpose(one) + "\n";
  return print(text, AllPass);
}

int saved(const std::string& path, const QByteArray& bytes, const std::string& what) {
  const auto done = ui::saveBytes(QString::fromStdString(path), bytes);
  if (!done) return fail(done.error());
  return print(what + ": " + path + "\n", AllPass);
}

core::Error unknownTemplate(const std::string& name) {
  std::vector<std::string> names;
  for (const core::ReportTemplate& one : core::readyTemplates()) names.push_back("\"" + one.name + "\"");
  return {"--template", "there is no template \"" + name + "\"",
          "Name " + joined(names, ", ") + " or a template file"};
}

/// A ready one by its name, or one from a file.
core::Result<core::ReportTemplate> templateFrom(const std::string& name) {
  if (const auto ready = core::readyTemplate(name)) return *ready;
  if (!QFileInfo::exists(QString::fromStdString(name))) return unknownTemplate(name);
  const auto bytes = ui::loadBytes(QString::fromStdString(name), largestTemplate);
  if (!bytes) return bytes.error();
  const auto read = core::readTemplate(bytes->toStdString());
  return read ? read : inFile(name, read.error());
}

int writeReady(const ReportOptions& options) {
  const auto ready = core::readyTemplate(options.write);
  if (!ready) return fail(unknownTemplate(options.write));
  const std::string text = core::writeTemplate(*ready);
  if (options.out.empty()) return print(text, AllPass);
  return saved(options.out, QByteArray::fromStdString(text), "Template");
}

core::Result<core::ReportOrder> orderFrom(const ReportOptions& options, const core::Document& document) {
  core::ReportOrder order;
  if (!options.content.empty()) {
    const auto content = templateFrom(options.content);
    if (!content) return content.error();
    order.content = *content;
  }
  if (!options.language.empty()) order.content.language = options.language;
  if (options.localNumbers) order.content.localNumbers = true;
  if (!options.channels.empty()) order.content.channels = core::ReportChannels::Chosen;
  for (const std::string& name : options.channels) {
    const auto found = channelsNamed(document, name);
    if (!found) return found.error();
    order.channels.push_back(found->front());
  }
  if (order.content.channels == core::ReportChannels::Chosen && order.channels.empty())
    return core::Error{"--channel", "the template leaves the channels to be chosen",
                       "Name them with --channel"};
  order.printed = today();
  order.program = SHUNTWRIGHT_VERSION;
  order.language = ui::languageFor(order.content.language, order.content.localNumbers);
  if (order.language->code != order.content.language)
    return core::Error{"--template",
                       "there are no words here for the language \"" + order.content.language + "\"",
                       "Choose one with --language: " + joined(languageCodes(), ", ")};
  return order;
}

/// Those without pictures need no drawing, and so no fonts and no display.
core::Result<QByteArray> undrawn(ui::ReportFormat format, const core::Document& document,
                                 const core::ReportOrder& order, const core::Progress& progress) {
  using Text = core::Result<std::string>;
  const Text text = format == ui::ReportFormat::Workbook ? core::reportWorkbook(document, order, progress)
                    : format == ui::ReportFormat::Json   ? core::reportJson(document, order, progress)
                                                         : Text(core::reportCsv(document, order, progress));
  if (!text) return text.error();
  return QByteArray::fromStdString(*text);
}

int report(const ReportOptions& options) {
  if (options.list) return listTemplates();
  if (!options.write.empty()) return writeReady(options);
  if (options.file.empty()) return fail({"FILE", "no document is named", "Name a .bridgecal document"});
  if (options.out.empty())
    return fail({"--out", "it is not said where the report is to go", "Name a file, as in --out report.pdf"});
  const auto format = ui::reportFormatOf(QString::fromStdString(options.out));
  if (!format)
    return fail({options.out, "a report cannot be written in this format",
                 "Let the name end in .pdf, .xlsx, .html, .csv or .json"});
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto order = orderFrom(options, *document);
  if (!order) return fail(order.error());
  const auto written = [&](const core::Result<QByteArray>& bytes) {
    return bytes ? saved(options.out, *bytes, "Report") : fail(bytes.error());
  };
  ProgressLine line("report");
  const auto tell = [&](double share) { line.show(share); };
  if (*format == ui::ReportFormat::Pdf || *format == ui::ReportFormat::Html)
    return drawnOffscreen([&] { return written(ui::reportBytes(*document, *order, *format, tell)); });
  return written(undrawn(*format, *document, *order, tell));
}

}  // namespace

void addReport(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<ReportOptions>();
  CLI::App* command = cli.add_subcommand("report", "The document with its checks as a report");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("");
  command
      ->add_option("-o,--out", options->out,
                   "Where to write it; the name ends in .pdf, .xlsx, .html, .csv or .json")
      ->type_name("FILE");
  command
      ->add_option("--template", options->content,
                   "What it says: the name of a ready template, or a template file (default: Full record)")
      ->check(faultOfName);
  command->add_option("--channel", options->channels, "Of this channel alone; may be given several times")
      ->check(faultOfName);
  command
      ->add_option("--language", options->language,
                   "Of its sentences, instead of the template's: " + joined(languageCodes(), ", "))
      ->check(CLI::IsMember(languageCodes()));
  command->add_flag("--local-numbers", options->localNumbers,
                    "Numbers and days as that language writes them; never in CSV and JSON");
  command->add_flag("--list-templates", options->list, "The ready templates, and what each is for");
  command
      ->add_option("--write-template", options->write,
                   "A ready template as a file to be edited: to --out, or to standard output")
      ->check(faultOfName);
  command->footer("The exit status is 0 when the report was written, whatever it says.");
  command->callback([options, &chosen] { chosen = [options] { return report(*options); }; });
}

}  // namespace app

// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QFileInfo>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/offscreen.h"
#include "app/output.h"
#include "core/report/csv.h"
#include "ui/report_pdf.h"
#include "ui/safe_file.h"

namespace app {
namespace {

struct Options {
  std::string file;
  std::string out;
};

int saved(const std::string& path, const QByteArray& bytes) {
  const auto done = ui::saveBytes(QString::fromStdString(path), bytes);
  if (!done) return fail(done.error());
  return print("Report: " + path + "\n", AllPass);
}

int report(const Options& options) {
  const QString ending = QFileInfo(QString::fromStdString(options.out)).suffix().toLower();
  if (ending != "pdf" && ending != "csv")
    return fail(
        {options.out, "a report cannot be written in this format", "Let the name end in .pdf or .csv"});
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  if (ending == "csv") return saved(options.out, QByteArray::fromStdString(core::reportCsv(*document)));
  return drawnOffscreen([&] {
    const auto pdf = ui::reportPdf(*document);
    return pdf ? saved(options.out, *pdf) : fail(pdf.error());
  });
}

}  // namespace

void addReport(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<Options>();
  CLI::App* command = cli.add_subcommand("report", "The document with its checks as a report");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("-o,--out", options->out, "Where to write it; the name ends in .pdf or .csv")
      ->required();
  command->footer("The exit status is 0 when the report was written, whatever it says.");
  command->callback([options, &chosen] { chosen = [options] { return report(*options); }; });
}

}  // namespace app

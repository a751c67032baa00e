// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <memory>

#include "app/commands.h"
#include "app/demo.h"
#include "app/offscreen.h"
#include "app/output.h"
#include "core/evaluate/evaluation.h"
#include "core/report/csv.h"
#include "ui/pictures.h"
#include "ui/report_pdf.h"
#include "ui/safe_file.h"

namespace app {
namespace {

struct DemoOptions {
  std::string out;
  std::vector<std::string> pictures;  ///< only these, and nothing else; empty: everything
};

using Written = core::Result<QStringList>;

core::Result<void> makeFolder(const QString& path) {
  if (QDir().mkpath(path) && QFileInfo(path).isDir()) return {};
  return core::Error{path.toStdString(), "the folder cannot be made", "Choose another with --out"};
}

/// The document and its recordings, for a user to open and to run the other commands on.
Written writeExample(const QDir& folder) {
  QStringList paths;
  for (const QString& source : demoFiles()) {
    QFile file(source);
    if (!file.open(QIODevice::ReadOnly))
      return core::Error{source.toStdString(), "the built-in file cannot be read", "Build the program again"};
    paths << folder.filePath(QFileInfo(source).fileName());
    if (const auto done = ui::saveBytes(paths.back(), file.readAll()); !done) return done.error();
  }
  return paths;
}

Written writeReports(const core::Document& document, const QDir& folder) {
  const QStringList paths{folder.filePath("report.pdf"), folder.filePath("report.csv")};
  const auto pdf = ui::reportPdf(document);
  if (!pdf) return pdf.error();
  if (const auto done = ui::saveBytes(paths[0], *pdf); !done) return done.error();
  const auto csv = QByteArray::fromStdString(core::reportCsv(document));
  if (const auto done = ui::saveBytes(paths[1], csv); !done) return done.error();
  return paths;
}

Written writePictures(const core::Document& document, const QDir& folder) {
  const QString pictures = folder.filePath("pictures");
  if (const auto made = makeFolder(pictures); !made) return made.error();
  return ui::takePictures(document, pictures);
}

std::string verdicts(const core::Document& document) {
  std::string text;
  for (const auto& channel : document.channels) {
    const core::ChannelEvaluation evaluation = core::evaluate(*channel);
    for (std::size_t k = 0; k < channel->checks.size(); ++k)
      text += "  " + channel->name + ", " + channel->checks[k].name + ": " +
              evaluation.checks[k].assessment.reason + "\n";
  }
  return text;
}

std::string pathList(const std::string& title, const QStringList& paths) {
  std::string text = title + "\n";
  for (const QString& path : paths) text += "  " + path.toStdString() + "\n";
  return text;
}

/// Some pictures alone, for whoever needs them again: the manual, the README.
int somePictures(const DemoOptions& options) {
  QStringList names;
  for (const std::string& name : options.pictures) names << QString::fromStdString(name);
  return drawnOffscreen([&] {
    const auto paths = ui::takePictures(demoDocument(), QString::fromStdString(options.out), names);
    if (!paths) return fail(paths.error());
    return print(pathList("Pictures of the window:", *paths), AllPass);
  });
}

int demo(const DemoOptions& options) {
  const QDir folder(QString::fromStdString(options.out));
  if (const auto made = makeFolder(folder.path()); !made) return fail(made.error());
  if (!options.pictures.empty()) return somePictures(options);
  return drawnOffscreen([&] {
    const core::Document document = demoDocument();
    std::string text =
        "The demo is invented. Its verdicts, with the faults that were planted:\n" + verdicts(document);
    const auto example = writeExample(folder);
    if (!example) return fail(example.error());
    const auto reports = writeReports(document, folder);
    if (!reports) return fail(reports.error());
    const auto pictures = writePictures(document, folder);
    if (!pictures) return fail(pictures.error());
    text += pathList("Document and recordings:", *example) + pathList("Report:", *reports) +
            pathList("Pictures of the window:", *pictures);
    return print(text, AllPass);
  });
}

}  // namespace

void addDemo(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<DemoOptions>();
  CLI::App* command = cli.add_subcommand("demo", "Works the built-in demo through without a window");
  command->add_option("--out", options->out, "Folder for document, recordings, report and pictures")
      ->type_name("FOLDER")
      ->required();
  std::vector<std::string> names;
  for (const QString& name : ui::pictureNames()) names.push_back(name.toStdString());
  command
      ->add_option("--picture", options->pictures,
                   "Only this picture, straight into the folder; may be given several times")
      ->type_name("NAME")
      ->check(CLI::IsMember(names));
  command->footer(
      "The exit status is 0 when everything was written. The demo holds channels that fail on purpose.\n"
      "To see it in the window: shuntwright --demo");
  command->callback([options, &chosen] { chosen = [options] { return demo(*options); }; });
}

}  // namespace app

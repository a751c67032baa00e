// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/about/about_dialog.h"

#include <QApplication>
#include <QBoxLayout>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QFile>
#include <QFontDatabase>
#include <QHeaderView>
#include <QIcon>
#include <QLabel>
#include <QLocale>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScreen>
#include <QSysInfo>
#include <QTabWidget>
#include <QTableWidget>

#include "ui/about/libraries.h"
#include "ui/theme.h"

namespace ui {
namespace {

QLabel* aboutLine(const QString& text) {
  auto* label = new QLabel(text);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  return label;
}

QString licenceText() {
  QFile file(":/LICENSE");
  [[maybe_unused]] const bool open = file.open(QIODevice::ReadOnly);
  Q_ASSERT(open);
  return QString::fromUtf8(file.readAll());
}

QString screenWords() {
  const QScreen* screen = QGuiApplication::primaryScreen();
  if (screen == nullptr) return "none";
  return QString("%1 x %2, scale %3")
      .arg(screen->size().width())
      .arg(screen->size().height())
      .arg(screen->devicePixelRatio());
}

}  // namespace

QString faultReportWords() {
#ifdef NDEBUG
  const char* asserts = "off";
#else
  const char* asserts = "on";
#endif
  const QStringList lines = {
      "Shuntwright " + QApplication::applicationVersion(),
      QString("Qt %1, compiled with %2").arg(qVersion(), QT_VERSION_STR),
      "System: " + QSysInfo::prettyProductName() + ", " + QSysInfo::kernelType() + " " +
          QSysInfo::kernelVersion() + ", " + QSysInfo::currentCpuArchitecture(),
      "Window system: " + QGuiApplication::platformName() + ", screen " + screenWords() +
          (isDark(QApplication::palette()) ? ", dark" : ", light"),
      "Language: " + QLocale().name() + ", of the system " + QLocale::system().name(),
      QString("Checks of the program's own assumptions: ") + asserts,
  };
  QString text = lines.join('\n') + '\n';
  for (const Library& library : libraries()) text += library.name + ' ' + library.version + '\n';
  return text;
}

AboutDialog::AboutDialog(QWidget* parent) : QDialog(parent) {
  setObjectName("aboutDialog");
  setWindowTitle(tr("About Shuntwright"));
  auto* tabs = new QTabWidget;
  tabs->setObjectName("aboutTabs");
  tabs->setAccessibleName(tr("What to read about the program"));
  tabs->addTab(programPage(), tr("&Program"));
  tabs->addTab(librariesPage(), tr("&Libraries"));
  tabs->addTab(licencePage(), tr("L&icence"));
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  auto* copy = buttons->addButton(tr("Copy for a &fault report"), QDialogButtonBox::ActionRole);
  copy->setObjectName("aboutCopy");
  copy->setToolTip(tr("Versions, system, screen and language; nothing of your documents"));
  connect(copy, &QPushButton::clicked, this, &AboutDialog::copyForFaultReport);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(tabs);
  layout->addWidget(buttons);
  resize(fontMetrics().averageCharWidth() * 96, fontMetrics().height() * 28);
}

QWidget* AboutDialog::programPage() {
  auto* picture = new QLabel;
  picture->setPixmap(QIcon(":/shuntwright.svg").pixmap(64, 64));
  picture->setAccessibleName(tr("The program's sign: a bridge with a shunt over one arm"));
  picture->setAccessibleDescription(tr("Four arms in a square, one of them with a resistor in parallel."));
  auto* title = aboutLine(tr("Shuntwright %1").arg(QApplication::applicationVersion()));
  title->setObjectName("aboutVersion");
  QFont large = title->font();
  large.setPointSizeF(large.pointSizeF() * 1.6);
  large.setBold(true);
  title->setFont(large);
  auto* head = new QHBoxLayout;
  head->addWidget(picture);
  head->addWidget(title, 1);
  auto* cautions = new QPushButton(tr("Read the &cautions"));
  cautions->setObjectName("aboutCautions");
  connect(cautions, &QPushButton::clicked, this, &AboutDialog::cautionsWanted);
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->addLayout(head);
  layout->addWidget(aboutLine(tr("Plans and checks shunt calibrations of strain-gauge bridges.")));
  layout->addWidget(
      aboutLine(tr("Free software: you may use, change and pass it on under the GNU General Public License, "
                   "version 3 or any "
                   "later one. It comes without any warranty, to the extent permitted by law.")));
  layout->addWidget(
      aboutLine(tr("A shunt check verifies the electrical chain, never gauge factor, bond or alignment. "
                   "Decisions stay with the "
                   "responsible licensed or authorised person.")));
  layout->addWidget(cautions, 0, Qt::AlignLeft);
  layout->addStretch(1);
  return page;
}

QWidget* AboutDialog::librariesPage() {
  const QList<Library> all = libraries();
  auto* table = new QTableWidget(static_cast<int>(all.size()), 4);
  table->setObjectName("aboutLibraries");
  table->setAccessibleName(tr("Libraries the program is made with"));
  table->setHorizontalHeaderLabels({tr("Library"), tr("Version"), tr("Licence"), tr("What for")});
  table->verticalHeader()->hide();
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setTabKeyNavigation(false);
  for (int row = 0; row < table->rowCount(); ++row) {
    const Library& library = all[row];
    const QStringList cells = {library.name, library.version, library.licence, library.purpose};
    for (int column = 0; column < cells.size(); ++column)
      table->setItem(row, column, new QTableWidgetItem(cells[column]));
  }
  table->resizeColumnsToContents();
  table->horizontalHeader()->setStretchLastSection(true);
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->addWidget(
      aboutLine(tr("Licences are named as the SPDX list names them. Qt Charts makes the program as a whole "
                   "one under version 3 of the General Public License.")));
  layout->addWidget(table);
  return page;
}

QWidget* AboutDialog::licencePage() {
  auto* text = new QPlainTextEdit(licenceText());
  text->setObjectName("aboutLicence");
  text->setAccessibleName(tr("GNU General Public License, version 3"));
  text->setReadOnly(true);
  text->setTabChangesFocus(true);
  text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  text->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
  text->setLineWrapMode(QPlainTextEdit::NoWrap);
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->addWidget(text);
  return page;
}

void AboutDialog::copyForFaultReport() {
  QGuiApplication::clipboard()->setText(faultReportWords());
  emit said(tr("Copied: versions, system, screen and language"));
}

}  // namespace ui

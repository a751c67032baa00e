// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/template_list.h"

#include <QAction>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/as_typed.h"
#include "ui/picture_file.h"
#include "ui/preferences/appearance.h"
#include "ui/safe_file.h"
#include "ui/theme.h"

namespace ui {

TemplateList::TemplateList(QWidget* parent)
    : QWidget(parent),
      m_list(new QListWidget),
      m_purpose(new QLabel),
      m_keep(new QAction(tr("&Keep changes"), this)) {
  m_list->setObjectName("reportTemplates");
  m_list->setAccessibleName(tr("Templates"));
  m_list->setMaximumHeight(atTextSize(132));
  m_purpose->setObjectName("reportTemplatePurpose");
  m_purpose->setTextFormat(Qt::PlainText);
  m_purpose->setWordWrap(true);
  m_keep->setObjectName("keepTemplate");
  auto* keep = new QToolButton;
  keep->setDefaultAction(m_keep);
  auto* more = new QPushButton(tr("Te&mplate"));
  more->setObjectName("templateMenu");
  auto* menu = new QMenu(more);
  const auto add = [&](const char* name, const QString& text, const QKeySequence& keys, auto done) {
    QAction* action = menu->addAction(text, keys, this, done);
    action->setObjectName(name);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    this->addAction(action);
    return action;
  };
  add("duplicateTemplate", tr("&Duplicate"), {}, &TemplateList::duplicate);
  m_rename = add("renameTemplate", tr("&Rename…"), QKeySequence(Qt::Key_F2), &TemplateList::askForName);
  m_remove = add("removeTemplate", tr("De&lete…"), QKeySequence::Delete, &TemplateList::askBeforeRemoving);
  menu->addSeparator();
  add("importTemplate", tr("&Import from file…"), {}, &TemplateList::askForImport);
  add("exportTemplate", tr("&Export to file…"), {}, &TemplateList::askForExport);
  more->setMenu(menu);

  auto* row = new QHBoxLayout;
  row->addWidget(keep);
  row->addStretch();
  row->addWidget(more);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(m_list);
  column->addWidget(m_purpose);
  column->addLayout(row);

  connect(m_keep, &QAction::triggered, this, &TemplateList::keep);
  connect(m_list, &QListWidget::currentRowChanged, this, [this] {
    if (m_isFilling) return;
    emit chosenChanged();
    showWhatCanBeDone();
  });
  fill({});
}

void TemplateList::fill(const QString& chosen) {
  m_isFilling = true;
  m_list->clear();
  for (const core::ReportTemplate& each : core::readyTemplates())
    m_list->addItem(tr("%1 (built in)").arg(toQString(core::templateName(each))));
  for (const core::ReportTemplate& each : m_store.own()) m_list->addItem(toQString(each.name));
  m_isFilling = false;
  choose(chosen);
  if (!m_store.troubles().isEmpty())
    m_list->setToolTip(asTyped(tr("Not read: %1").arg(m_store.troubles().join("\n"))));
}

core::ReportTemplate TemplateList::chosen() const {
  const auto row = std::size_t(std::max(0, m_list->currentRow()));
  const auto& ready = core::readyTemplates();
  if (row >= ready.size()) return m_store.own()[row - ready.size()];
  core::ReportTemplate own = ready[row];
  own.language = core::language().code;
  own.localNumbers = own.language != core::english()->code;
  return own;
}

bool TemplateList::isOwn() const {
  return std::size_t(std::max(0, m_list->currentRow())) >= core::readyTemplates().size();
}

void TemplateList::choose(const QString& name) {
  const auto& ready = core::readyTemplates();
  int row = 0;
  for (std::size_t k = 0; k < ready.size() + m_store.own().size(); ++k) {
    const core::ReportTemplate& each = k < ready.size() ? ready[k] : m_store.own()[k - ready.size()];
    if (toQString(each.name) == name) row = int(k);
  }
  if (row != m_list->currentRow()) return m_list->setCurrentRow(row);
  emit chosenChanged();
  showWhatCanBeDone();
}

void TemplateList::setWanted(const core::ReportTemplate& wanted) {
  m_wanted = wanted;
  showWhatCanBeDone();
}

void TemplateList::showWhatCanBeDone() {
  const bool own = isOwn(), differs = !(m_wanted == chosen());
  m_keep->setEnabled(differs);
  m_keep->setText(own ? tr("&Keep changes") : tr("&Keep as own template"));
  m_rename->setEnabled(own);
  m_remove->setEnabled(own);
  QString purpose = toQString(core::templatePurpose(chosen()));
  if (purpose.isEmpty()) purpose = tr("Your own template.");
  m_purpose->setText(differs ? purpose + " " + tr("Changed below.") : purpose);
}

void TemplateList::addOwn(core::ReportTemplate made) {
  made.name = m_store.freeName(toQString(made.name)).toStdString();
  if (const auto added = m_store.add(made); !added)
    emit refused(tr("No template: %1").arg(toText(added.error())));
  fill(toQString(made.name));
}

void TemplateList::keep() {
  core::ReportTemplate made = m_wanted;
  if (!isOwn()) {
    made.name = tr("%1, changed").arg(toQString(core::templateName(chosen()))).toStdString();
    return addOwn(std::move(made));
  }
  made.name = chosen().name;
  if (const auto kept = m_store.replace(toQString(made.name), made); !kept)
    emit refused(tr("Not kept: %1").arg(toText(kept.error())));
  fill(toQString(made.name));
}

void TemplateList::duplicate() {
  core::ReportTemplate made = m_wanted;
  made.name = core::templateName(chosen());
  addOwn(std::move(made));
}

void TemplateList::rename(const QString& typed) {
  const QString name = typed.simplified(), before = toQString(chosen().name);
  if (!isOwn() || name == before) return;
  if (name.isEmpty()) return emit refused(tr("A template needs a name."));
  if (m_store.isTaken(name) && name.compare(before, Qt::CaseInsensitive) != 0)
    return emit refused(tr("There is a template “%1” already.").arg(name));
  core::ReportTemplate made = chosen();
  made.name = name.toStdString();
  if (const auto done = m_store.replace(before, made); !done)
    emit refused(tr("Not renamed: %1").arg(toText(done.error())));
  fill(name);
}

void TemplateList::remove() {
  if (!isOwn()) return;
  if (const auto done = m_store.remove(toQString(chosen().name)); !done)
    emit refused(tr("Not deleted: %1").arg(toText(done.error())));
  fill({});
}

void TemplateList::importFrom(const QString& path) {
  auto made = openTemplate(path);
  if (!made) return emit refused(tr("No template: %1").arg(toText(made.error())));
  addOwn(*std::move(made));
}

void TemplateList::exportTo(const QString& path) {
  core::ReportTemplate made = m_wanted;
  made.name = chosen().name;
  if (const auto saved = saveBytes(path, QByteArray::fromStdString(core::writeTemplate(made))); !saved)
    emit refused(tr("Not exported: %1").arg(toText(saved.error())));
}

void TemplateList::askForName() {
  QInputDialog dialog(this);
  dialog.setWindowTitle(tr("Rename template"));
  dialog.setLabelText(tr("Name"));
  dialog.setTextValue(toQString(chosen().name));
  if (dialog.exec() == QDialog::Accepted) rename(dialog.textValue());
}

void TemplateList::askBeforeRemoving() {
  QMessageBox box(QMessageBox::Question, tr("Delete template"),
                  tr("Delete the template “%1”? This cannot be undone.").arg(toQString(chosen().name)),
                  QMessageBox::Yes | QMessageBox::Cancel, this);
  box.setTextFormat(Qt::PlainText);
  box.setDefaultButton(QMessageBox::Cancel);
  if (box.exec() == QMessageBox::Yes) remove();
}

void TemplateList::askForImport() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Import template"), QDir::homePath(),
                                                    tr("Report templates (*.%1)").arg(templateSuffix));
  if (!path.isEmpty()) importFrom(path);
}

void TemplateList::askForExport() {
  const QString name = asFileName(toQString(chosen().name)) + "." + templateSuffix;
  QString path = QFileDialog::getSaveFileName(this, tr("Export template"), QDir::homePath() + "/" + name,
                                              tr("Report templates (*.%1)").arg(templateSuffix));
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix().isEmpty()) path += QString(".") + templateSuffix;
  exportTo(path);
}

}  // namespace ui

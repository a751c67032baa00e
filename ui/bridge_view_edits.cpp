// SPDX-License-Identifier: GPL-3.0-or-later
// The edits; each is one step of the history.
#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <algorithm>

#include "core/document/bridge_edits.h"
#include "ui/bridge/bridge_export.h"
#include "ui/bridge/part_editor.h"
#include "ui/bridge/part_edits.h"
#include "ui/bridge_view.h"
#include "ui/printed_file.h"
#include "ui/shown_channel.h"
#include "ui/wire_dialog.h"

namespace ui {

using Kind = BridgePart::Kind;

bool BridgeView::hasChannel() {
  if (picture()) return true;
  emit refused(tr("There is no channel yet: add a channel first."));
  return false;
}

bool BridgeView::mayEdit(const QString& what) {
  if (!hasChannel()) return false;
  const QString reason = whyNotEdited(m_session);
  if (!reason.isEmpty()) refuse(what, reason);
  return reason.isEmpty();
}

// ---- moving ----------------------------------------------------------------------------------

void BridgeView::moveTo(const BridgeSpot& grip, std::optional<MoveTarget> target) {
  // The network is solved only when another place comes near, not for every pixel.
  if (!m_move || m_move->target != target) {
    m_move = moveOf(setup(), m_step, grip, target);
    m_movePicture.reset();
    if (m_move->legal) {
      m_movePicture = std::make_unique<BridgePicture>(
          pictureOf(withMove(*m_channel, *m_move).setup, m_move->state, symbols()));
      // As large as it was, where there is room: the pointer is on its way in the drawing as it is.
      m_movePicture->lanes.scene |= picture()->lanes.scene;
    }
    showTexts();
  }
  update();
}

void BridgeView::endMove(bool keep) {
  const BridgeMove done = *std::move(m_move);
  m_move.reset();
  m_movePicture.reset();
  m_pressed.reset();
  m_pressedAt.reset();
  if (keep && done.legal) m_session.editChannel(undoLabel(done), withMove(*m_channel, done));
  showTexts();
  // A refusal stays readable after the drop.
  if (keep && done.target && !done.legal) showTexts(tr("Nothing was moved"), done.outcome, colours().fail);
  update();
}

// ---- values in place -------------------------------------------------------------------------

void BridgeView::editSelected() {
  if (!mayEdit(tr("Nothing to edit"))) return;
  if (m_move) endMove(false);
  const std::vector<BridgePart> parts = selected();
  if (parts.empty()) return refuse(tr("Nothing to edit"), tr("Select a part first."));
  openEditor(parts);
}

void BridgeView::openEditor(const std::vector<BridgePart>& parts) {
  closeEditor();
  const std::vector<PartField> fields = fieldsOf(*m_channel, parts);
  if (fields.empty())
    return refuse(tr("Nothing to edit"),
                  tr("Parts of one kind are edited together; select such ones alone."));
  QString heading = nameOf(*picture(), parts.front());
  if (parts.size() > 1) heading = tr("%1 and %2 more").arg(heading).arg(parts.size() - 1);
  auto* editor = new PartEditor(*m_channel, fields, heading, this);
  QFont text = font();
  text.setPixelSize(editedSize());
  editor->setFont(text);
  m_editor = editor;
  if (parts.front().kind == Kind::Lead) editor->offerWire();
  connect(editor, &PartEditor::kept, this,
          [this, fields](const auto& values) { keepValues(fields, values); });
  connect(editor, &PartEditor::dropped, this, &BridgeView::closeEditor);
  connect(editor, &PartEditor::wireWanted, this, [this, parts] {
    closeEditor();
    editWire(parts);
  });
  const BridgePart shown = m_focus && std::find(parts.begin(), parts.end(), m_focus->part) != parts.end()
                               ? m_focus->part
                               : parts.front();
  QRectF box = labelBoxOf(*picture(), shown);
  if (shown.kind != Kind::Instrument) box |= ringOf(*picture(), {shown, {}}).boundingRect();
  editor->showBeside(QRectF(toWidget(box.topLeft()), toWidget(box.bottomRight())).toRect());
}

/// As large as the drawing's texts, within reason.
int BridgeView::editedSize() const {
  const int usual = QFontInfo(font()).pixelSize();
  const double drawn = labelFont(LabelRole::Value).pixelSize() * (toWidget({1, 0}) - toWidget({0, 0})).x();
  return std::clamp(qRound(drawn), usual, usual * 8 / 5);
}

void BridgeView::keepValues(const std::vector<PartField>& fields,
                            const std::map<std::size_t, std::optional<double>>& values) {
  closeEditor();
  core::Channel next = *m_channel;
  for (const auto& [index, value] : values) next = withValue(std::move(next), fields[index], value);
  m_session.editChannel(fields.front().undo, std::move(next));
}

/// It may be one of its own signals that closes it.
void BridgeView::closeEditor() {
  if (!m_editor) return;
  m_editor->disconnect(this);
  // Before it hides: the keyboard would go on to the first part.
  if (m_editor->isAncestorOf(QApplication::focusWidget())) setFocus(Qt::OtherFocusReason);
  m_editor->hide();
  m_editor->deleteLater();
  m_editor.clear();
}

void BridgeView::editWire(const std::vector<BridgePart>& leads) {
  WireDialog dialog(setup().bridge.leads[leads.front().index], this);
  if (dialog.exec() != QDialog::Accepted) return;
  core::Channel next = *m_channel;
  for (const BridgePart& lead : leads) next.setup.bridge.leads[lead.index] = dialog.wire();
  if (dialog.forAllLeads())
    for (const core::Wire& wire : core::wiresOf(next.setup.bridge))
      next.setup.bridge.leads[static_cast<std::size_t>(wire.role)] = dialog.wire();
  m_session.editChannel(tr("Change lead"), std::move(next));
}

void BridgeView::showInSetup() {
  if (!hasChannel()) return;
  if (m_focus) emit partActivated(m_focus->part);
}

// ---- adding, removing, laying straight -------------------------------------------------------

void BridgeView::add(const QString& name) {
  if (!mayEdit(tr("Nothing was added"))) return;
  for (PartAddition& addition : additionsAt(*m_channel, *picture(), selected())) {
    if (addition.name != name) continue;
    if (!addition.refusal.isEmpty()) return refuse(tr("Nothing was added"), addition.refusal);
    m_session.editChannel(addition.undo, std::move(addition.after));
    const auto parts = partsOf(*picture());
    if (!addition.added || std::find(parts.begin(), parts.end(), *addition.added) == parts.end()) return;
    m_selected.clear();
    const bool shunt = addition.added->kind == Kind::Shunt;
    setFocusSpot(BridgeSpot{*addition.added, shunt ? std::optional(ShuntEnd::A) : std::nullopt});
    return openEditor({*addition.added});
  }
}

void BridgeView::removeSelected() {
  if (!mayEdit(tr("Nothing was removed"))) return;
  if (m_move) endMove(false);
  const std::vector<BridgePart> parts = selected();
  if (parts.empty()) return refuse(tr("Nothing was removed"), tr("Select a part first."));
  PartRemoval removal = removalOf(*m_channel, parts);
  if (!removal.undo.isEmpty()) {
    m_selected.clear();
    m_session.editChannel(removal.undo, std::move(removal.after));
  }
  if (removal.undo.isEmpty()) return refuse(tr("Nothing was removed"), removal.refusal);
  const QString all = (removal.said + ' ' + removal.refusal).simplified();
  if (!removal.refusal.isEmpty()) showTexts(tr("Not everything was removed"), all, colours().quiet);
  emit said(all);
}

void BridgeView::duplicateSelected() {
  if (!mayEdit(tr("Nothing was duplicated"))) return;
  std::vector<std::size_t> shunts;
  for (const BridgePart& part : selected())
    if (part.kind == Kind::Shunt) shunts.push_back(part.index);
  if (shunts.empty()) return refuse(tr("Nothing was duplicated"), tr("Select a shunt to duplicate."));
  std::sort(shunts.begin(), shunts.end());
  const std::size_t first = setup().shunts.size();
  m_session.editChannel(shunts.size() == 1 ? tr("Duplicate shunt") : tr("Duplicate shunts"),
                        core::withShuntsDuplicated(*m_channel, shunts));
  m_selected.clear();
  for (std::size_t k = 0; shunts.size() > 1 && k < shunts.size(); ++k)
    m_selected.push_back({Kind::Shunt, first + k});
  setFocusSpot(BridgeSpot{{Kind::Shunt, first}, ShuntEnd::A});
  sayWhere(first);
}

/// Copies go to another arm where there is one without such a resistor.
void BridgeView::sayWhere(std::size_t first) {
  QStringList places;
  for (std::size_t k = first; k < setup().shunts.size(); ++k) {
    const core::Shunt& shunt = setup().shunts[k];
    const auto arm = core::armUnder(setup().bridge, shunt);
    const QString place =
        arm ? tr("over arm %1").arg(*arm + 1)
            : tr("from %1 to %2").arg(pointText(setup().bridge, shunt.a), pointText(setup().bridge, shunt.b));
    places << toQString(shunt.name).simplified() + ' ' + place;
  }
  emit said(tr("Added %1, in no step yet.").arg(places.join(", ")));
}

void BridgeView::alignSelected() {
  if (!mayEdit(tr("Nothing was aligned"))) return;
  if (m_move) endMove(false);
  core::Straighten what;
  for (const BridgePart& part : m_selected.empty() && !m_focus ? std::vector<BridgePart>() : selected()) {
    if (part.kind == Kind::Arm) what.arms.push_back(part.index);
    if (part.kind == Kind::Shunt) what.shunts.push_back(part.index);
    if (part.kind == Kind::Lead) what.leads.push_back(static_cast<core::LeadRole>(part.index));
    if (part.kind == Kind::Instrument) what.hookup = true;
  }
  if (!m_focus && m_selected.empty()) what = core::allOf(setup());
  core::Channel next = core::withStraightened(*m_channel, what);
  if (next == *m_channel)
    return refuse(tr("Nothing was aligned"), tr("It is as the template has it already."));
  m_session.editChannel(tr("Align to template"), std::move(next));
}

void BridgeView::selectAll() {
  if (!hasChannel()) return;
  m_selected = partsOf(*picture());
  update();
}

// ---- out of the window -----------------------------------------------------------------------

void BridgeView::copyPicture() {
  if (!hasChannel()) return;
  QApplication::clipboard()->setImage(pictureImage(bridgeDrawing(m_session, m_look)));
  emit said(tr("Copied the bridge as a picture."));
}

void BridgeView::exportPicture() {
  if (!hasChannel()) return;
  const QString path = askForPicture(this, tr("Export the bridge"), "bridge", suggestedBridgeName(m_session));
  if (!path.isEmpty() && exportTo(path)) rememberPictureFolder("bridge", path);
}

bool BridgeView::exportTo(const QString& path) {
  if (!hasChannel()) return false;
  const core::Result<void> written = writePicture(path, bridgeDrawing(m_session, m_look));
  if (!written) {
    emit refused(tr("Not exported: %1").arg(toText(written.error())));
    return false;
  }
  emit said(tr("Wrote %1.").arg(path));
  return true;
}

void BridgeView::print() {
  if (!hasChannel()) return;
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageOrientation(QPageLayout::Landscape);
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  PrintedFile file(printer);
  if (!printPicture(printer, bridgeDrawing(m_session, m_look)))
    return emit refused(tr("Not printed: the printer did not start."));
  if (const auto written = file.finish(); !written)
    return emit refused(tr("Not printed: %1").arg(toText(written.error())));
  emit said(tr("Printed the bridge."));
}

}  // namespace ui

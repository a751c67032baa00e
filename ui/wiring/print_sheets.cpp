// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets that the pages for wiring and ohmmeter print.
#include "ui/theme.h"
#include "ui/wiring/ohmmeter_page.h"
#include "ui/wiring/sheet_pdf.h"
#include "ui/wiring/wiring_page.h"

namespace ui {
namespace {

/// Tells through the page's signals what came of it.
template <class Page>
bool write(Page& page, const Session& session, const QString& path,
           const core::OhmmeterConditions& conditions) {
  if (!session.channel()) {
    emit page.refused(Page::tr("There is no channel yet: add a channel first."));
    return false;
  }
  const auto written =
      writeWiringSheet(&page, path, session.document(), *session.selection().channel, conditions);
  if (written)
    emit page.said(Page::tr("Wrote %1.").arg(path));
  else
    emit page.refused(Page::tr("No sheet: %1").arg(toText(written.error())));
  return static_cast<bool>(written);
}

}  // namespace

bool WiringPage::writeSheet(const QString& path) { return write(*this, m_session, path, {}); }

void WiringPage::print() {
  if (!hasChannel()) return;
  if (const QString path = askForSheet(this, *m_channel); !path.isEmpty()) writeSheet(path);
}

bool OhmmeterPage::writeSheet(const QString& path) { return write(*this, m_session, path, m_conditions); }

void OhmmeterPage::print() {
  if (!m_channel) return emit refused(tr("There is no channel yet: add a channel first."));
  if (const QString path = askForSheet(this, *m_channel); !path.isEmpty()) writeSheet(path);
}

}  // namespace ui

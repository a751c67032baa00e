// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/report_dialog.h"

namespace ui {

ReportDialog::ReportDialog(Session& session, const QString&, QWidget* parent)
    : QDialog(parent), m_session(session) {
  setObjectName("reportDialog");
}

}  // namespace ui

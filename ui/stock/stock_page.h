// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "ui/session.h"
#include "ui/sheet_view.h"
#include "ui/stock/box_model.h"
#include "ui/stock/part_uses.h"
#include "ui/stock/resistor_model.h"
#include "ui/stock/series_model.h"

class QLabel;
class QToolButton;

namespace ui {

/// The document's stock: resistors, decade boxes, ranges of preferred values.
class StockPage : public QWidget {
  Q_OBJECT

 public:
  explicit StockPage(Session& session, QWidget* parent = nullptr);

  /// The one of the three tables that has the keyboard, else that of the resistors.
  SheetView& table();

  /// Takes the resistors and boxes of a file, instead of those that are there or beside them, as the user
  /// says when there are any.
  void importFrom(const QString& path);
  void exportTo(const QString& path);

 public slots:
  void chooseImport();
  void chooseExport();
  void addResistor();
  void removeResistors();
  void addBox();
  void removeBoxes();
  void addSeries();
  void removeSeries();
  /// Shunts that are made of a part of the stock take its value, certificate and due date.
  void updateShunts();

 signals:
  void refused(const QString& reason);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  enum class Import { Cancel, Replace, Append };

  QWidget* head();
  QWidget* resistorPart();
  QWidget* boxPart();
  QWidget* seriesPart();
  QToolButton* tool(const char* name, const QString& text, const QString& tip, void (StockPage::*act)());
  SheetView* sheet(const char* name, const QString& title, StockSheet& model);
  QWidget* part(const QString& title, SheetView* view, std::initializer_list<QToolButton*> tools);
  const core::Stock& stock() const { return *m_session.document().stock; }
  Import askHow(const core::Stock& read);
  void editStock(const QString& label, core::Stock next);
  void removeRows(SheetView* view, const QString& label, void (*remove)(core::Stock&, std::size_t));
  void follow();
  void showSummary();

  Session& m_session;
  PartUses m_uses;
  ResistorModel m_resistorModel;
  BoxModel m_boxModel;
  SeriesModel m_seriesModel;
  std::shared_ptr<const core::Stock> m_shown;  ///< that the tables show
  core::Date m_shownDay{};
  SheetView* m_resistors = nullptr;
  SheetView* m_boxes = nullptr;
  SheetView* m_series = nullptr;
  QLabel* m_summary = nullptr;
  QLabel* m_overdue = nullptr;
};

}  // namespace ui

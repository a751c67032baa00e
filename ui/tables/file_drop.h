// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QStringList>
#include <optional>

class QDragMoveEvent;
class QDropEvent;
class QLabel;
class QMimeData;
class QWidget;

namespace ui {

/// What a file that is dropped on the window is taken for, by its name and its first bytes.
enum class DroppedKind { Document, Recording, Resistors, Channels, Unknown };
DroppedKind kindOfDropped(const QString& path);

/// Takes files that are dropped anywhere on a window, whatever widget is there, and tells over the window
/// what will become of them while they are dragged. What is dropped is acted on after the drag has ended,
/// since the program it comes from waits for that.
class FileDrop : public QObject {
  Q_OBJECT

 public:
  explicit FileDrop(QWidget& window);

 signals:
  void documentDropped(const QString& path);
  void recordingDropped(const QString& path);
  void resistorsDropped(const QString& path);
  void channelsDropped(const QString& path);
  void refused(const QString& reason);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Sorted {
    QStringList documents, recordings, resistors, channels, unknown;
    bool isTaken() const { return unknown.isEmpty() && documents.size() <= 1 && !isEmpty(); }
    bool isEmpty() const;
  };

  Sorted sortedFiles(const QMimeData& data) const;
  QString sentence() const;
  void begin(const QMimeData& data);
  void end();
  void act(const Sorted& files);

  QWidget& m_window;
  QLabel* m_hint;
  std::optional<Sorted> m_files;  ///< that are dragged
};

}  // namespace ui

// SPDX-License-Identifier: GPL-3.0-or-later
// editing_ui_driver FOLDER DOCUMENT EDITS [SEED [EVERY]]
//
// Random edits of a document, as the window and as core make them, with steps back and forth in between; then
// all undone and all done again. The file that every EVERY-th state of the document would be saved as is read
// back, and held against the one that it would be when undo or redo comes to that state again. FOLDER is all
// that can be written to. Prints one line of JSON; 0 when nothing differed.
#include <malloc.h>

#include <QElapsedTimer>
#include <nlohmann/json.hpp>

#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "tests/reliability/table_edits.h"
#include "tests/reliability/window_program.h"
#include "ui/document_file.h"

namespace {

using namespace reliability;

std::string savedText(const ui::Session& session) {
  const auto text = core::writeDocument(session.document());
  return text ? *text : "not to be saved: " + text.error().where + " " + text.error().what;
}

/// What a session's history must keep to.
class Held {
 public:
  Held(ui::Session& session, std::size_t every) : m_session(session), m_every(every) {
    m_states.push_back(hashOf(savedText(session)));
    QObject::connect(&session.history(), &QUndoStack::indexChanged, &m_context,
                     [this](int at) { moved(std::size_t(at)); });
  }

  /// Steps back and forth; what comes is known.
  void travel(int steps) {
    m_travels = true;
    QUndoStack& history = m_session.history();
    for (; steps < 0 && history.canUndo(); ++steps) history.undo();
    for (; steps > 0 && history.canRedo(); --steps) history.redo();
    m_travels = false;
  }

  std::size_t edits = 0, read = 0, compared = 0;
  std::vector<std::string> faults;

 private:
  using State = std::optional<std::size_t>;  // a hash: 100,000 texts are too many to keep

  static std::size_t hashOf(const std::string& text) { return std::hash<std::string>{}(text); }

  void fault(const std::string& what) {
    if (faults.size() < 20) faults.push_back("after " + std::to_string(edits) + " edits: " + what);
  }
  void moved(std::size_t at) {
    if (!m_travels) return isNew(at);
    if (!m_states[at]) return;
    ++compared;
    if (*m_states[at] != hashOf(savedText(m_session)))
      fault("state " + std::to_string(at) + " comes back otherwise");
  }
  void isNew(std::size_t at) {
    ++edits;
    m_states.resize(at);
    m_states.emplace_back();
    if (edits % m_every != 0) return;
    const std::string text = savedText(m_session);
    m_states.back() = hashOf(text);
    ++read;
    const auto document = core::readDocument(text);
    if (!document) return fault(text + " is not read back: " + document.error().what);
    const auto again = core::writeDocument(*document);
    if (!again || *again != text) fault("reads back otherwise");
  }

  ui::Session& m_session;
  std::size_t m_every;
  bool m_travels = false;
  std::vector<State> m_states;
  QObject m_context;
};

double heap_MB() { return static_cast<double>(mallinfo2().uordblks) / 1e6; }

}  // namespace

int main(int argc, char** argv) {
  Q_INIT_RESOURCE(resources);
  if (argc < 4) return std::fprintf(stderr, "see the head of the source\n"), 2;
  const QString folder = QDir(argv[1]).absolutePath();
  const auto opened = ui::openDocument(QDir(argv[2]).absolutePath());
  const std::size_t wanted = std::strtoul(argv[3], nullptr, 10);
  const std::uint64_t seed = argc > 4 ? std::strtoull(argv[4], nullptr, 10) : 1;
  if (!opened) return std::fprintf(stderr, "%s\n", opened.error().what.c_str()), 2;
  const auto application = windowProgram(argc, argv, folder);

  ui::Session session(*opened);
  RandomEdits edits(session, seed);
  auto tables = std::make_unique<TableEdits>(session, edits);
  Held held(session, argc > 5 ? std::strtoul(argv[5], nullptr, 10) : 100);
  const std::string first = savedText(session);
  const double heapBefore = heap_MB();
  std::map<std::string, std::size_t> tried, done;
  std::size_t stepsBack = 0;
  QElapsedTimer clock;
  clock.start();
  while (held.edits < wanted) {
    if (edits.oneIn(12)) {
      const int back = int(1 + edits.below(6));
      stepsBack += std::size_t(back);
      held.travel(-back);
      held.travel(int(edits.below(std::size_t(back) + 2)));
    }
    const std::size_t before = held.edits;
    const std::string kind = edits.oneIn(2) ? tables->one() : edits.one();
    ++tried[kind];
    if (held.edits > before) ++done[kind];
  }
  const double seconds = static_cast<double>(clock.restart()) / 1e3;
  tables.reset();  // nobody looks on while all is undone
  const std::string last = savedText(session);
  const int kept = session.history().index();
  const double heap = heap_MB() - heapBefore;
  held.travel(-kept);
  const bool backToFirst = savedText(session) == first;
  held.travel(kept);
  const bool forthToLast = savedText(session) == last;

  nlohmann::ordered_json told{{"seed", seed},
                              {"edits", held.edits},
                              {"kinds", done.size()},
                              {"undo_steps", kept},
                              {"undo_limit", session.history().undoLimit()},
                              {"steps_back_between", stepsBack},
                              {"undone_all_is_first", backToFirst},
                              {"redone_all_is_last", forthToLast},
                              {"read_back", held.read},
                              {"states_compared", held.compared},
                              {"edits_s", seconds},
                              {"undo_redo_all_s", static_cast<double>(clock.elapsed()) / 1e3},
                              {"heap_MB", heap},
                              {"faults", held.faults},
                              {"done", done}};
  for (const auto& [kind, count] : tried)
    if (!done.contains(kind)) told["never"].push_back(kind);
  std::printf("%s\n", told.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace).c_str());
  return backToFirst && forthToLast && held.faults.empty() ? 0 : 1;
}

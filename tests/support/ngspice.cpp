// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/ngspice.h"

#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace test {
namespace {

namespace fs = std::filesystem;

/// A folder that goes when we do.
class Folder {
 public:
  Folder() : m_path((fs::temp_directory_path() / "shuntwright-ngspice-XXXXXX").string()) {
    if (!mkdtemp(m_path.data())) m_path.clear();
  }
  ~Folder() {
    std::error_code ignored;
    if (!m_path.empty()) fs::remove_all(m_path, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;

  std::string write(const std::string& name, const std::string& content) const {
    std::ofstream(m_path + "/" + name, std::ios::binary) << content;
    return name;
  }
  const std::string& path() const { return m_path; }

 private:
  std::string m_path;
};

/// Standard output of `ngspice -n -b FILE`, then its error output, apart so that neither cuts a line of the
/// other in two; -n keeps a user's start-up file out.
core::Result<std::string> run(const Folder& folder, const std::string& file) {
  if (std::system("command -v ngspice >/dev/null 2>&1") != 0)
    return core::Error{"ngspice", "the program is not installed", "Install it: apt-get install ngspice"};
  const std::string command = "cd '" + folder.path() + "' && ngspice -n -b " + file + " 2>errors; cat errors";
  FILE* pipe = popen(command.c_str(), "r");
  if (!pipe) return core::Error{"ngspice", "could not be started", ""};
  std::string output;
  std::array<char, 65536> block;
  while (const std::size_t count = std::fread(block.data(), 1, block.size(), pipe))
    output.append(block.data(), count);
  pclose(pipe);
  return output;
}

constexpr const char* marker = "DECK ";

std::string script(const Folder& folder, const std::vector<Deck>& decks) {
  std::ostringstream text;
  text << "*ng_script\n.control\nset numdgt=17\n";
  for (std::size_t k = 0; k < decks.size(); ++k) {
    const std::string name = folder.write("deck" + std::to_string(k) + ".cir", decks[k].netlist);
    text << "source " << name << "\nop\necho " << marker << k << "\n";
    for (const std::string& node : decks[k].nodes) text << "print v(" << node << ")\n";
    text << "destroy all\nremcirc\n";
  }
  text << "quit\n.endc\n";
  return text.str();
}

/// The number after "v(node) = ", if that is what the line says.
bool readVoltage(const std::string& line, const std::string& node, double& value) {
  const std::string start = "v(" + node + ") = ";
  if (line.rfind(start, 0) != 0) return false;
  std::istringstream stream(line.substr(start.size()));
  stream.imbue(std::locale::classic());
  return static_cast<bool>(stream >> value);
}

/// The netlist's name of a place, from its own list "* node NAME: PLACE, PLACE"; empty when it has none.
std::string nameIn(const std::string& netlist, const std::string& place) {
  std::istringstream lines(netlist);
  for (std::string line; std::getline(lines, line);) {
    const std::size_t colon = line.find(": ");
    if (line.rfind("* node ", 0) != 0 || colon == std::string::npos) continue;
    if ((line.substr(colon + 1) + ",").find(" " + place + ",") != std::string::npos)
      return line.substr(7, colon - 7);
  }
  return {};
}

/// Adds what "(S+ - S-)" says to the weights; false when a place has no node.
bool addDifference(const std::string& text, const std::string& netlist, std::vector<double>& weights,
                   ExportedDeck& deck) {
  const std::size_t between = text.find(" - ");
  if (text.size() < 5 || text.front() != '(' || text.back() != ')' || between == std::string::npos)
    return false;
  const std::string places[] = {text.substr(1, between - 1),
                                text.substr(between + 3, text.size() - between - 4)};
  for (const double sign : {1.0, -1.0}) {
    const std::string name = nameIn(netlist, places[sign > 0 ? 0 : 1]);
    if (name.empty()) return false;
    if (name == "0") continue;
    deck.deck.nodes.push_back(name);
    deck.signal.push_back(0);
    deck.divisor.push_back(0);
    weights.back() = sign;
  }
  return true;
}

}  // namespace

double ExportedDeck::outputOf(const std::vector<double>& voltages) const {
  double above = 0, below = fixedDivisor;
  for (std::size_t k = 0; k < voltages.size(); ++k) {
    above += signal[k] * voltages[k];
    below += divisor[k] * voltages[k];
  }
  return above / below;
}

core::Result<ExportedDeck> exportedDeck(const std::string& netlist) {
  const core::Error unclear{"netlist", "it does not say where the output is:\n" + netlist, ""};
  const std::string start = "\n* output = ", current = "(I x nominal resistance), ";
  const std::size_t at = netlist.find(start);
  if (at == std::string::npos) return unclear;
  const std::size_t begin = at + start.size();
  const std::string line = netlist.substr(begin, netlist.find('\n', begin) - begin);
  const std::size_t over = line.find(" / ");
  if (over == std::string::npos) return unclear;
  ExportedDeck exported;
  exported.deck.netlist = netlist;
  if (!addDifference(line.substr(0, over), netlist, exported.signal, exported)) return unclear;
  const std::string divisor = line.substr(over + 3);
  if (divisor.rfind(current, 0) == 0) {
    std::istringstream stream(divisor.substr(current.size()));
    stream.imbue(std::locale::classic());
    if (!(stream >> exported.fixedDivisor)) return unclear;
  } else if (!addDifference(divisor, netlist, exported.divisor, exported)) {
    return unclear;
  }
  return exported;
}

core::Result<Voltages> operatingPoints(const std::vector<Deck>& decks) {
  const Folder folder;
  const auto output = run(folder, folder.write("all.cir", script(folder, decks)));
  if (!output) return output.error();

  Voltages voltages(decks.size());
  std::istringstream lines(*output);
  std::size_t deck = decks.size();
  std::string line;
  while (std::getline(lines, line)) {
    if (line.rfind(marker, 0) == 0) deck = std::stoul(line.substr(std::string(marker).size()));
    if (deck >= decks.size() || voltages[deck].size() == decks[deck].nodes.size()) continue;
    double value = 0;
    if (readVoltage(line, decks[deck].nodes[voltages[deck].size()], value)) voltages[deck].push_back(value);
  }
  for (std::size_t k = 0; k < decks.size(); ++k)
    if (voltages[k].size() != decks[k].nodes.size())
      return core::Error{"ngspice, deck " + std::to_string(k),
                         "not all voltages were given; netlist:\n" + decks[k].netlist + "output:\n" +
                             output->substr(0, 20000),
                         ""};
  return voltages;
}

core::Result<std::string> batchOutput(const std::string& netlist) {
  const Folder folder;
  return run(folder, folder.write("deck.cir", netlist));
}

}  // namespace test

// Solvers that are programs of their own: the problem goes to a file, the optimum comes back as text.
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <memory>
#include <regex>
#include <sstream>

#include "benchmarks/sample.hpp"
#include "benchmarks/search/child.hpp"
#include "benchmarks/search/peers.hpp"

namespace prover {

namespace {

// A file with a name of its own, gone when its time is over.
class TemporaryFile {
 public:
  explicit TemporaryFile(const std::string& ending) {
    static int count = 0;
    path_ = std::filesystem::temp_directory_path() /
            ("anglewright-" + std::to_string(getpid()) + "-" + std::to_string(++count) + ending);
  }
  ~TemporaryFile() {
    std::error_code ignored;
    std::filesystem::remove(path_, ignored);
  }
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  std::string path() const { return path_.string(); }

 private:
  std::filesystem::path path_;
};

// In the widespread LP text form. Multiplier l of a column, binary u of a candidate: −m u ≤ l ≤ m u.
void write_linear_program(const PeerTask& task, std::ostream& out) {
  const Columns& columns = task.columns;
  const std::int64_t m = std::max<std::int64_t>(8, 2 * task.multipliers.largest);
  const auto broken = [&](std::size_t& on_line) { out << (++on_line % 8 == 0 ? "\n" : ""); };
  out << "Minimize\n obj:";
  std::size_t on_line = 0;
  for (std::size_t i = 0; i < columns.weights.size(); ++i) {
    out << " + " << columns.weights[i] << " u" << i;
    broken(on_line);
  }
  out << "\nSubject To\n";
  for (std::size_t u = 0; u < columns.rows.size(); ++u) {
    if (columns.rows[u].empty()) continue;
    out << " r" << u << ":";
    on_line = 0;
    for (const auto& [column, c] : columns.rows[u]) {
      out << (c < 0 ? " - " : " + ") << std::abs(c) << " l" << column;
      broken(on_line);
    }
    out << " = " << columns.goal[u] << "\n";
  }
  for (std::size_t c = 0; c < columns.columns(); ++c) {
    const std::size_t i = columns.candidate_of[c];
    out << " a" << c << ": l" << c << " - " << m << " u" << i << " <= 0\n";
    out << " b" << c << ": l" << c << " + " << m << " u" << i << " >= 0\n";
  }
  out << "Bounds\n";
  for (std::size_t c = 0; c < columns.columns(); ++c) out << " -" << m << " <= l" << c << " <= " << m << "\n";
  out << "Binary\n";
  for (std::size_t i = 0; i < columns.weights.size(); ++i) out << " u" << i << "\n";
  out << "End\n";
}

void write_answer_set_program(const PeerTask& task, std::ostream& out) {
  const Columns& columns = task.columns;
  for (std::size_t c = 0; c < columns.columns(); ++c) {
    out << "{m(" << c << ",-2);m(" << c << ",-1);m(" << c << ",1);m(" << c << ",2)}1.\n";
    out << "u(" << columns.candidate_of[c] << "):-m(" << c << ",_).\n";
  }
  for (std::size_t u = 0; u < columns.rows.size(); ++u) {
    if (columns.rows[u].empty()) continue;
    out << ":-not #sum{";
    const char* between = "";
    for (const auto& [column, c] : columns.rows[u])
      for (const int k : {-2, -1, 1, 2}) {
        out << between << c * k << "," << column << "," << k << ":m(" << column << "," << k << ")";
        between = ";";
      }
    out << "}=" << columns.goal[u] << ".\n";
  }
  for (std::size_t i = 0; i < columns.weights.size(); ++i)
    out << ":~u(" << i << ").[" << columns.weights[i] << "," << i << "]\n";
  out << "#show u/1.\n";
}

std::string text_of(const std::string& path) {
  std::ifstream stream(path);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

// What a solver program needs and says.
struct Program {
  std::string name;
  std::string ending;       // of its problem files
  std::string empty;        // a problem with nothing to do
  std::function<std::vector<std::string>(const std::string& problem, const std::string& solution, int seconds)> words;
  std::regex optimum;       // its first group is the proved optimum, in the output or the solution file
};

PeerRun run(const Program& program, const std::string& problem, double limit_seconds) {
  PeerRun result;
  const TemporaryFile solution(".solution");
  // Their own limit is whole seconds and looser than ours, so that ours counts.
  const ChildRun child = run_program(
      program.words(problem, solution.path(), static_cast<int>(std::ceil(limit_seconds)) + 5), limit_seconds);
  result.seconds = child.seconds;
  if (child.time_up) result.state = PeerState::time_up;
  if (!child.output) return result;
  const std::string said = *child.output + "\n" + text_of(solution.path());
  std::smatch found;
  if (!std::regex_search(said, found, program.optimum)) return result;
  result.state = PeerState::solved;
  result.answer = std::llround(std::stod(found[1].str()));
  return result;
}

// What the program takes for an empty problem: asked again each time, since the machine may be busier than before; the
// median of all answers so far.
double start_up(const Program& program) {
  static std::map<std::string, std::vector<double>> known;
  static std::map<std::string, std::unique_ptr<TemporaryFile>> problems;
  auto& problem = problems[program.name];
  if (!problem) {
    problem = std::make_unique<TemporaryFile>(program.ending);
    std::ofstream(problem->path()) << program.empty;
  }
  auto& times = known[program.name];
  do times.push_back(run(program, problem->path(), 10).seconds);
  while (times.size() < 5);
  return quantile(times, 0.5);
}

PeerRun solve(const Program& program, const PeerTask& task, void (*write)(const PeerTask&, std::ostream&)) {
  PeerRun result;
  if (!is_installed(program.name)) {
    result.state = PeerState::not_installed;
    return result;
  }
  const TemporaryFile problem(program.ending);
  {
    std::ofstream stream(problem.path());
    write(task, stream);
  }
  const double start = start_up(program);
  result = run(program, problem.path(), task.limit_seconds);
  // A difference of nearly equal times says little: never less than a tenth of the whole.
  result.seconds = std::max(result.seconds / 10, result.seconds - start);
  return result;
}

const std::string kEmptyLinearProgram = "Minimize\n obj: x\nSubject To\n c: x >= 1\nBounds\n x <= 2\nEnd\n";

}  // namespace

PeerRun cbc_optimum(const PeerTask& task) {
  static const Program program{
      "cbc", ".lp", kEmptyLinearProgram,
      [](const std::string& problem, const std::string&, int seconds) -> std::vector<std::string> {
        return {"cbc", problem, "sec", std::to_string(seconds), "solve", "quit"};
      },
      std::regex("Optimal solution found[^O]*Objective value:\\s+([0-9.eE+-]+)")};
  return solve(program, task, write_linear_program);
}

PeerRun glpk_optimum(const PeerTask& task) {
  static const Program program{
      "glpsol", ".lp", kEmptyLinearProgram,
      [](const std::string& problem, const std::string& solution, int seconds) -> std::vector<std::string> {
        return {"glpsol", "--lp", problem, "--tmlim", std::to_string(seconds), "-o", solution};
      },
      std::regex("INTEGER OPTIMAL[^=]*= ([0-9.eE+-]+)")};
  return solve(program, task, write_linear_program);
}

PeerRun clingo_optimum(const PeerTask& task) {
  static const Program program{
      "clingo", ".lp", "a.\n",
      [](const std::string& problem, const std::string&, int seconds) -> std::vector<std::string> {
        return {"clingo", problem, "--quiet=1", "--time-limit=" + std::to_string(seconds)};
      },
      std::regex("OPTIMUM FOUND[\\s\\S]*\\nOptimization\\s*: ([0-9]+)")};
  if (!task.multipliers.only_ones_and_twos) {
    PeerRun result;
    result.state = PeerState::not_suited;
    return result;
  }
  return solve(program, task, write_answer_set_program);
}

}  // namespace prover

#include "benchmarks/search/read_instance.hpp"

#include <sstream>
#include <stdexcept>
#include <unordered_map>

namespace prover {

namespace {

class Reader {
 public:
  void read(const std::string& line) {
    ++line_;
    std::istringstream words(line);
    std::string kind;
    if (!(words >> kind) || kind[0] == '#') return;
    if (kind == "var") {
      std::string name;
      if (!(words >> name)) fail("a variable has a name");
      if (!unknowns_.emplace(name, UnknownId(static_cast<std::int64_t>(unknowns_.size()))).second)
        fail("this variable is there already");
    } else if (kind == "eq") {
      std::int64_t weight = 0;
      if (!(words >> weight) || weight < 0) fail("an equation begins with its weight, which is not negative");
      instance_.problem.candidates.push_back({{}, {equation(words)}, weight});
    } else if (kind == "goal") {
      instance_.problem.goal.push_back(equation(words));
    } else {
      fail("a line begins with var, eq or goal");
    }
  }

  SearchInstance finish(std::string name) {
    if (instance_.problem.goal.empty()) fail("there is no goal");
    instance_.name = std::move(name);
    instance_.unknowns = unknowns_.size();
    return std::move(instance_);
  }

 private:
  [[noreturn]] void fail(const std::string& why) const {
    throw std::runtime_error("line " + std::to_string(line_) + ": " + why);
  }

  std::int64_t whole(const std::string& word) const {
    const auto value = Rational::parse(word);
    const auto number = value ? value->to_int64() : std::nullopt;
    if (!number) fail("\"" + word + "\" is no whole number");
    return *number;
  }

  Form equation(std::istringstream& words) const {
    Form form;
    for (std::string word; words >> word;) {
      std::string name;
      if (!(words >> name)) fail("a coefficient without a variable");
      if (word == "=") {
        form.constant = -whole(name);
        if (words >> word) fail("nothing comes after the constant");
        return form;
      }
      const auto unknown = unknowns_.find(name);
      if (unknown == unknowns_.end()) fail("there is no variable \"" + name + "\"");
      form.add(Form::of(unknown->second, whole(word)));
    }
    fail("an equation ends with = and a constant");
  }

  int line_ = 0;
  std::unordered_map<std::string, UnknownId> unknowns_;
  SearchInstance instance_;
};

}  // namespace

SearchInstance read_instance(std::istream& stream, std::string name) {
  Reader reader;
  for (std::string line; std::getline(stream, line);) reader.read(line);
  return reader.finish(std::move(name));
}

}  // namespace prover

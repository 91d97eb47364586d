#include "app/options.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <set>
#include <stdexcept>
#include <string_view>

namespace elbowroom {

namespace {

struct UsageError : std::runtime_error {
  using std::runtime_error::runtime_error;
};

struct VerbInfo {
  Verb verb;
  std::string_view word;
  bool takes_file;
  std::vector<std::string_view> options;
};

const std::vector<VerbInfo>& verbs() {
  static const std::vector<VerbInfo> all{
      {Verb::check, "check", true, {"--option", "--book", "--with-book", "--json"}},
      {Verb::measure, "measure", true, {"--option", "--json"}},
      {Verb::draw, "draw", true, {"--to", "--option", "--book", "--with-book", "--paper"}},
      {Verb::compare, "compare", true, {"--book", "--with-book", "--json"}},
      {Verb::books, "books", false, {"--book", "--with-book", "--json"}},
  };
  return all;
}

// Options of Qt that take a value of their own.
constexpr std::array<std::string_view, 7> kQtValues{
    "platform", "style", "stylesheet", "geometry", "qwindowicon", "qwindowgeometry", "display"};

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}

bool endsWith(const std::string& path, std::string_view ending) {
  if (path.size() <= ending.size()) return false;
  return std::equal(ending.rbegin(), ending.rend(), path.rbegin(),
                    [](char a, char b) { return a == (b >= 'A' && b <= 'Z' ? b - 'A' + 'a' : b); });
}

Paper paperOf(const std::string& key) {
  if (const std::optional<Paper> paper = paperFromKey(key)) return *paper;
  std::vector<std::string> known;
  for (const Paper paper : {Paper::letter, Paper::tabloid, Paper::a4, Paper::a3})
    known.emplace_back(keyOf(paper));
  throw UsageError(fmt::format("There is no paper \"{}\"; the papers are {}.", key, listed(known)));
}

class Parser {
 public:
  Parser(int argc, char** argv) : words_(argv + std::min(argc, 1), argv + argc) {}

  Options parse() {
    takeVerb();
    while (!words_.empty()) {
      const std::string word = takeWord();
      if (word == "--" && !only_files_) {
        only_files_ = true;
      } else if (only_files_ || word.size() < 2 || word[0] != '-') {
        takeFile(word);
      } else {
        takeOption(word);
        if (options_.verb == Verb::help || options_.verb == Verb::version) return options_;
      }
    }
    if (info_ != nullptr) finishVerb();
    return options_;
  }

 private:
  std::string takeWord() {
    std::string word = words_.front();
    words_.erase(words_.begin());
    return word;
  }

  void takeVerb() {
    if (words_.empty()) return;
    for (const VerbInfo& info : verbs())
      if (words_.front() == info.word) info_ = &info;
    if (info_ == nullptr) return;
    options_.verb = info_->verb;
    words_.erase(words_.begin());
  }

  void takeFile(const std::string& word) {
    if (word.empty()) throw UsageError("The name of the plan file is empty.");
    if (info_ != nullptr && !info_->takes_file)
      throw UsageError(fmt::format("{} reads no file, but \"{}\" was given.", info_->word, word));
    if (info_ == nullptr && !only_files_ && word.find_first_of("./") == std::string::npos &&
        !std::filesystem::exists(word))
      throw UsageError(fmt::format("\"{}\" is neither a plan file nor one of check, measure, draw, compare, books.", word));
    if (!options_.file.empty())
      throw UsageError(fmt::format("One plan at a time: \"{}\" and \"{}\" were given.", options_.file, word));
    options_.file = word;
  }

  void takeOption(const std::string& word) {
    if (word == "--help" || word == "-h") {
      options_.verb = Verb::help;
    } else if (word == "--version") {
      options_.verb = Verb::version;
    } else if (info_ == nullptr) {
      leaveToQt(word);
    } else {
      takeOptionOfVerb(word);
    }
  }

  void takeOptionOfVerb(const std::string& word) {
    const std::size_t equals = word.find('=');
    const std::string name = word.substr(0, equals);
    if (std::find(info_->options.begin(), info_->options.end(), name) == info_->options.end()) {
      const std::vector<std::string> known(info_->options.begin(), info_->options.end());
      throw UsageError(fmt::format("{} knows no option {}; it takes {}.", info_->word, name, listed(known)));
    }
    if (name != "--book" && name != "--with-book" && !seen_.insert(name).second)
      throw UsageError(fmt::format("{} is given twice.", name));
    if (name == "--json") {
      if (equals != std::string::npos) throw UsageError("--json takes no value.");
      options_.json = true;
      return;
    }
    if (equals == std::string::npos && words_.empty())
      throw UsageError(fmt::format("{} needs a value.", name));
    const std::string value = equals == std::string::npos ? takeWord() : word.substr(equals + 1);
    if (name == "--option") options_.option = value;
    if (name == "--book") options_.books.push_back(value);
    if (name == "--with-book") options_.with_books.push_back(value);
    if (name == "--to") options_.to = value;
    if (name == "--paper") options_.paper = paperOf(value);
  }

  void leaveToQt(const std::string& word) {
    const std::string name = word.substr(word.find_first_not_of('-') == 2 ? 2 : 1);
    if (std::find(kQtValues.begin(), kQtValues.end(), name) != kQtValues.end()) {
      if (!words_.empty()) takeWord();
      return;
    }
    const std::string before = name.substr(0, name.find('='));
    if (before != name && std::find(kQtValues.begin(), kQtValues.end(), before) != kQtValues.end()) return;
    if (name == "reverse") return;
    throw UsageError(fmt::format("Opening the window knows no option {}.", word));
  }

  void finishVerb() const {
    if (info_->takes_file && options_.file.empty())
      throw UsageError(fmt::format("{} needs the name of a plan file.", info_->word));
    if (options_.verb != Verb::draw) return;
    if (options_.to.empty()) throw UsageError("draw needs --to with the name of the file to write.");
    if (!endsWith(options_.to, ".pdf") && !endsWith(options_.to, ".svg"))
      throw UsageError(fmt::format("\"{}\" must end with .pdf or .svg.", options_.to));
  }

  std::vector<std::string> words_;
  const VerbInfo* info_ = nullptr;
  bool only_files_ = false;
  std::set<std::string> seen_;
  Options options_;
};

}  // namespace

Options parseOptions(int argc, char** argv) {
  try {
    return Parser(argc, argv).parse();
  } catch (const UsageError& wrong) {
    Options options;
    options.verb = Verb::usage;
    options.usage_error = wrong.what();
    return options;
  }
}

std::string helpText() {
  return R"(Elbowroom: draw a bathroom, see what fits and what clashes, print it for the contractor.

elbowroom [FILE]
    Opens the window.
elbowroom check FILE [--option NAME] [--book ID]... [--with-book FILE.json]... [--json]
    Every rule that applies, with the measured and the needed figure and the source.
elbowroom measure FILE [--option NAME] [--json]
    Free floor, turning circle, doors, routes.
elbowroom draw FILE --to OUT.pdf|OUT.svg [--option NAME] [--book ID]...
               [--with-book FILE.json]... [--paper letter|tabloid|a4|a3]
    Dimensioned sheets.
elbowroom compare FILE [--book ID]... [--with-book FILE.json]... [--json]
    All options of the plan side by side.
elbowroom books [--book ID]... [--with-book FILE.json]... [--json]
    Every rule with its limit, source, grade and reason; with --json also the measures for books of your own.
elbowroom --help | --version

NAME is an option of the plan; without it the first one is taken. --book takes the place of the plan's own
choice of books and may be given several times. --with-book adds a book of your own (resources/book.schema.json)
that the plan or --book may name. Lengths in JSON are inches. A plan file that is called like a verb is named
./check.

Exit status: 0 nothing short (measure, draw, books: done); 1 something is short at the level "required"
(check; compare: in any option); 2 wrong usage, or a file cannot be read or written; 3 an error of Elbowroom
itself.
)";
}

}  // namespace elbowroom

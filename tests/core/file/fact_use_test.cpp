// Every fact of the catalogue is read: where a plan states it, taking it away or stating another value changes what
// is found, counted, ordered or drawn. A form alone is no use of a fact.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <functional>
#include <set>
#include <string>
#include <utility>

#include "core/drawing/sheet.h"
#include "core/file/plan_file.h"
#include "core/file/report_json.h"
#include "core/works/order.h"

namespace elbowroom {
namespace {

using namespace literals;

using Named = std::pair<FactOn, std::string>;

// All facts of an option with what they are stated about.
void eachFacts(Option& option, const std::function<void(FactOn, Facts&)>& visit) {
  visit(FactOn::room, option.room.facts);
  for (Wall& w : option.room.walls) visit(FactOn::wall, w.facts);
  for (Opening& o : option.openings) visit(FactOn::opening, o.facts);
  for (Fixture& f : option.fixtures) visit(FactOn::fixture, f.facts);
  for (WallItem& i : option.on_walls) visit(FactOn::wallItem, i.facts);
  for (CeilingItem& i : option.on_ceiling) visit(FactOn::ceilingItem, i.facts);
}

BookChoice everyBook(const Plan& plan) {
  BookChoice choice = choiceOf(plan);
  for (const Book& book : allBooks())
    if (std::find(choice.books.begin(), choice.books.end(), book.id) == choice.books.end())
      choice.books.emplace_back(book.id);
  return choice;
}

// What rules and reports say of it; every book, so that it does not matter which a plan chooses.
std::string findingsOf(const Plan& plan, std::size_t option) {
  const Layout layout = deriveLayout(plan, option);
  return checkJson(layout, check(layout, everyBook(plan)), "plan");
}

// What follows for the works, and what is drawn.
std::string worksOf(const Plan& plan, std::size_t option) {
  const Layout layout = deriveLayout(plan, option);
  std::string all;
  for (const WorkStep& step : orderOfWorks(layout)) all += std::string(step.id) + " ";
  SheetInfo info{.date = "2026-01-01"};
  info.layers = {.studs = true, .people = true, .backing = true, .electrical = true, .dimensions = true};
  return all + toSvg(makeSheets(layout, Report{}, info));
}

// Other values the fact might have had.
std::vector<FactValue> others(const FactInfo& info, const FactValue& stated) {
  switch (info.type) {
    case FactType::yesNo: return {!std::get<bool>(stated)};
    case FactType::length: return {Length{}, std::get<Length>(stated) + 40_in};
    case FactType::amount: return {Amount{}, Amount{std::get<Amount>(stated).thousandths + 5'000'000}};
    case FactType::word: {
      std::vector<FactValue> values;
      std::string_view words = info.words;
      while (!words.empty()) {
        const std::size_t end = std::min(words.find(' '), words.size());
        values.emplace_back(std::string(words.substr(0, end)));
        words.remove_prefix(std::min(end + 1, words.size()));
      }
      return values;
    }
  }
  return {};
}

class Reading {
 public:
  std::set<Named> stated, read;

  void look(const std::string& path, bool at_works) {
    const Result<Plan> loaded = loadPlan(path);
    ASSERT_TRUE(loaded.ok()) << path;
    Plan plan = loaded.value();
    for (std::size_t o = 0; o < plan.options.size(); ++o) {
      const auto says = [&plan, o, at_works] { return at_works ? worksOf(plan, o) : findingsOf(plan, o); };
      std::string before;
      eachFacts(plan.options[o], [&](FactOn on, Facts& facts) {
        const Facts kept = facts;
        for (const auto& [key, value] : kept) {
          stated.insert({on, key});
          if (read.count({on, key})) continue;
          if (before.empty()) before = says();
          facts.erase(key);
          bool differs = says() != before;
          const std::vector<FactValue> values = others(*findFact(on, key), value);
          for (std::size_t i = 0; i < values.size() && !differs; ++i) {
            facts = kept;
            facts[key] = values[i];
            differs = says() != before;
          }
          facts = kept;
          if (differs) read.insert({on, key});
        }
      });
    }
  }
};

std::vector<std::string> plansIn(const char* folder) {
  std::vector<std::string> paths;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(std::string(SOURCE_DIR "/") + folder))
    if (entry.path().extension() == ".elbowroom") paths.push_back(entry.path().string());
  std::sort(paths.begin(), paths.end());
  return paths;
}

TEST(FactUse, EveryFactChangesWhatIsFoundOrDrawn) {
  std::vector<std::string> paths = plansIn("tests/rules");
  for (const char* folder : {"samples", "tests/facts"})
    for (const std::string& path : plansIn(folder)) paths.push_back(path);
  ASSERT_GT(paths.size(), 500u);
  Reading reading;
  for (const std::string& path : paths) reading.look(path, false);
  for (const char* folder : {"samples", "tests/facts"})
    for (const std::string& path : plansIn(folder)) reading.look(path, true);
  for (const FactInfo& fact : allFacts()) {
    const Named named{fact.on, std::string(fact.key)};
    EXPECT_TRUE(reading.stated.count(named)) << fact.key << " (" << fact.label << ") stands in no plan of the tests";
    EXPECT_TRUE(reading.read.count(named)) << fact.key << " (" << fact.label << ") changes nothing";
  }
}

}  // namespace
}  // namespace elbowroom

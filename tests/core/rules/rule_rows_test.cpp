// docs/rule_rows.md says what became of each figure that was read. It names no rule that is not there, leaves out
// no rule of the books that its sections are about, and no line without a rule is without a reason.
#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/rules/rule.h"

namespace elbowroom {
namespace {

struct Row {
  std::string section;
  std::vector<std::string> cells;
  int line = 0;
};

std::string trimmed(const std::string& text) {
  const auto from = text.find_first_not_of(' '), to = text.find_last_not_of(' ');
  return from == std::string::npos ? std::string() : text.substr(from, to - from + 1);
}

// The rows of the tables without their heads, by the headings "## ..." above them.
std::vector<Row> rowsOf(const std::string& path) {
  std::ifstream in(path);
  EXPECT_TRUE(in.good()) << path;
  std::vector<Row> rows;
  std::string section;
  int number = 0;
  for (std::string line; std::getline(in, line);) {
    ++number;
    if (line.rfind("## ", 0) == 0) section = line.substr(3);
    if (line.rfind("|", 0) != 0 || line.rfind("| Text |", 0) == 0 || line.rfind("| ---", 0) == 0) continue;
    Row row{section, {}, number};
    for (std::size_t at = 1; at < line.size();) {
      const std::size_t end = std::min(line.find('|', at), line.size());
      row.cells.push_back(trimmed(line.substr(at, end - at)));
      at = end + 1;
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

// What stands between backquotes in the cell of the rules.
std::vector<std::string> idsIn(const std::string& cell) {
  std::vector<std::string> ids;
  for (std::size_t at = cell.find('`'); at != std::string::npos;) {
    const std::size_t end = cell.find('`', at + 1);
    if (end == std::string::npos) break;
    ids.push_back(cell.substr(at + 1, end - at - 1));
    at = cell.find('`', end + 1);
  }
  return ids;
}

const std::vector<Row>& rows() {
  static const std::vector<Row> all = rowsOf(SOURCE_DIR "/docs/rule_rows.md");
  return all;
}

const std::map<std::string, std::set<std::string>> kSections{
    {"Codes", {"us-residential", "us-uniform", "us-electrical", "ca-electrical"}},
    {"Accessibility",
     {"us-access", "us-adaptable", "us-access-2017", "ca-access", "uk-access", "de-access", "au-access"}},
    {"Comfort and trade", {"comfort", "craft"}},
};

TEST(RuleRows, EachLineHasItsRulesOrAReason) {
  EXPECT_GT(rows().size(), 270u);
  for (const Row& row : rows()) {
    SCOPED_TRACE("line " + std::to_string(row.line));
    ASSERT_EQ(row.cells.size(), 4u);
    EXPECT_FALSE(row.cells[0].empty()) << "no text";
    EXPECT_FALSE(row.cells[1].empty()) << "no figure";
    EXPECT_FALSE(idsIn(row.cells[2]).empty() && row.cells[3].empty()) << "neither a rule nor a reason";
  }
}

TEST(RuleRows, NamesOnlyRulesThatAreThere) {
  for (const Row& row : rows()) {
    for (const std::string& id : idsIn(row.cells.at(2))) {
      const std::size_t slash = id.find('/');
      ASSERT_NE(slash, std::string::npos) << "line " << row.line << ": " << id << " is no book/rule";
      EXPECT_NE(findRule(id.substr(0, slash), id.substr(slash + 1)), nullptr) << "line " << row.line << ": " << id;
    }
  }
}

TEST(RuleRows, LeavesOutNoRuleOfItsBooks) {
  std::map<std::string, std::set<std::string>> named;
  for (const Row& row : rows())
    for (const std::string& id : idsIn(row.cells.at(2))) named[row.section].insert(id);
  for (const auto& [section, books] : kSections) {
    ASSERT_TRUE(named.count(section)) << "no section " << section;
    for (const Rule& rule : allRules()) {
      if (!books.count(std::string(rule.book))) continue;
      const std::string id = std::string(rule.book) + "/" + std::string(rule.id);
      EXPECT_TRUE(named[section].count(id)) << id << " is in no line of " << section;
    }
  }
}

}  // namespace
}  // namespace elbowroom

// Reads the source tree: folder order shows the direction of dependence, and these are the only allowed arrows.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

struct File {
  std::string path;  // relative to the root, forward slashes
  std::vector<std::string> lines;
};

std::vector<File> sourceFiles(const std::vector<std::string>& folders) {
  std::vector<File> files;
  const fs::path root(SOURCE_DIR);
  for (const std::string& folder : folders) {
    if (!fs::exists(root / folder)) continue;
    for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
      const std::string ext = entry.path().extension().string();
      if (ext != ".h" && ext != ".cpp") continue;
      File file{fs::relative(entry.path(), root).generic_string(), {}};
      std::ifstream in(entry.path());
      for (std::string line; std::getline(in, line);) file.lines.push_back(line);
      files.push_back(std::move(file));
    }
  }
  std::sort(files.begin(), files.end(), [](const File& a, const File& b) { return a.path < b.path; });
  return files;
}

std::vector<std::string> includesOf(const File& file) {
  static const std::regex include(R"rx(^\s*#\s*include\s*[<"]([^>"]+)[>"])rx");
  std::vector<std::string> found;
  for (const std::string& line : file.lines) {
    std::smatch match;
    if (std::regex_search(line, match, include)) found.push_back(match[1]);
  }
  return found;
}

bool startsWith(const std::string& text, const std::string& start) { return text.rfind(start, 0) == 0; }

// "core/geometry/measure.h" -> "core/geometry"; "ui/canvas/tool.h" -> "ui".
std::string partOf(const std::string& path) {
  if (startsWith(path, "core/")) return path.substr(0, path.find('/', 5));
  if (startsWith(path, "ui/render/")) return "ui/render";
  return path.substr(0, path.find('/'));
}

// Which parts each part may include (itself always).
const std::map<std::string, std::set<std::string>>& arrows() {
  static const std::map<std::string, std::set<std::string>> table = {
      {"core/base", {}},
      {"core/geometry", {"core/base"}},
      {"core/plan", {"core/base", "core/geometry"}},
      {"core/people", {"core/base", "core/geometry", "core/plan"}},
      {"core/rules", {"core/base", "core/geometry", "core/plan", "core/people"}},
      {"core/works", {"core/base", "core/geometry", "core/plan", "core/people", "core/rules"}},
      {"core/drawing", {"core/base", "core/geometry", "core/plan", "core/people", "core/rules", "core/works"}},
      {"core/file",
       {"core/base", "core/geometry", "core/plan", "core/people", "core/rules", "core/works", "core/drawing"}},
      {"ui/render",
       {"core/base", "core/geometry", "core/plan", "core/people", "core/rules", "core/works", "core/drawing"}},
      {"ui",
       {"core/base", "core/geometry", "core/plan", "core/people", "core/rules", "core/works", "core/drawing",
        "core/file", "ui/render"}},
      {"app",
       {"core/base", "core/geometry", "core/plan", "core/people", "core/rules", "core/works", "core/drawing",
        "core/file", "ui/render", "ui"}},
  };
  return table;
}

bool isQt(const std::string& include) {
  return std::regex_search(include, std::regex("^Q[A-Z]|^Qt|^q[a-z]+\\.h$"));
}

TEST(Architecture, EveryIncludeFollowsTheArrows) {
  const auto files = sourceFiles({"core", "ui", "app"});
  ASSERT_GT(files.size(), 40u);
  for (const File& file : files) {
    const std::string part = partOf(file.path);
    const auto allowed = arrows().find(part);
    ASSERT_NE(allowed, arrows().end()) << file.path << " is in a folder the table does not know";
    for (const std::string& include : includesOf(file)) {
      if (!startsWith(include, "core/") && !startsWith(include, "ui/") && !startsWith(include, "app/")) continue;
      const std::string target = partOf(include);
      EXPECT_TRUE(target == part || allowed->second.count(target)) << file.path << " includes " << include;
      EXPECT_TRUE(fs::exists(fs::path(SOURCE_DIR) / include)) << file.path << " includes " << include;
    }
  }
}

TEST(Architecture, TheCoreKnowsNoQt) {
  for (const File& file : sourceFiles({"core"}))
    for (const std::string& include : includesOf(file)) EXPECT_FALSE(isQt(include)) << file.path << ": " << include;
}

TEST(Architecture, HeavyLibrariesStayInTheirSources) {
  for (const File& file : sourceFiles({"core", "ui", "app"})) {
    const bool header = file.path.ends_with(".h");
    for (const std::string& include : includesOf(file)) {
      EXPECT_FALSE(startsWith(include, "boost/")) << file.path << ": " << include;
      if (include.find("clipper") != std::string::npos) {
        EXPECT_TRUE(!header && partOf(file.path) == "core/geometry") << file.path << ": " << include;
      }
      if (startsWith(include, "nlohmann/")) {
        EXPECT_TRUE(partOf(file.path) == "core/file") << file.path << ": " << include;
      }
      EXPECT_FALSE(startsWith(include, "CGAL/") || startsWith(include, "geos")) << file.path << ": " << include;
    }
  }
}

TEST(Architecture, OneDirectiveAndOneJobPerHeader) {
  for (const File& file : sourceFiles({"core", "ui", "app"})) {
    if (!file.path.ends_with(".h")) continue;
    ASSERT_FALSE(file.lines.empty()) << file.path;
    EXPECT_TRUE(startsWith(file.lines.front(), "//")) << file.path << " does not begin by saying what it is for";
    EXPECT_TRUE(std::find(file.lines.begin(), file.lines.end(), "#pragma once") != file.lines.end()) << file.path;
  }
}

TEST(Architecture, FilesStaySmall) {
  for (const File& file : sourceFiles({"core", "ui", "app", "tests"}))
    EXPECT_LE(file.lines.size(), 700u) << file.path;
}

TEST(Architecture, PublicCoreHeadersCarryNoBareInches) {
  // A double named after a unit in a header is a length that lost its type. JSON keys live in sources.
  const std::regex bare(R"(\bdouble\s+\w*(inch|inches|_in|_mm|feet|millimet)\w*\b(?!\s*\())");
  for (const File& file : sourceFiles({"core"})) {
    if (!file.path.ends_with(".h") || file.path == "core/base/length.h") continue;
    for (const std::string& line : file.lines) {
      if (file.path == "core/drawing/sheet.h") continue;  // Ink: pen widths of paper, not of the plan
      EXPECT_FALSE(std::regex_search(line, bare)) << file.path << ": " << line;
    }
  }
}

TEST(Architecture, NothingSaysComplies) {
  // The program says what it measured against which text; it never certifies.
  const std::regex claim("\"[^\"]*\\b([Cc]ompl(y|ies|iant)|[Cc]ode[- ]approved)\\b[^\"]*\"");
  for (const File& file : sourceFiles({"core", "ui", "app"}))
    for (const std::string& line : file.lines) EXPECT_FALSE(std::regex_search(line, claim)) << file.path << ": " << line;
}

}  // namespace

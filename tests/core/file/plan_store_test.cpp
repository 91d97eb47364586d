#include <gtest/gtest.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "core/file/plan_file.h"
#include "tests/core/file/example_plan.h"

namespace elbowroom {
namespace {

namespace fs = std::filesystem;

class PlanStore : public ::testing::Test {
 protected:
  void SetUp() override {
    folder_ = fs::temp_directory_path() / ("elbowroom-store-" + std::to_string(::getpid()));
    fs::create_directories(folder_);
    plan_ = *readPlan(testing::kExamplePlan);
  }
  void TearDown() override {
    fs::permissions(folder_, fs::perms::owner_all);
    fs::remove_all(folder_);
  }
  std::string path(const char* name) const { return (folder_ / name).string(); }
  static std::string bytesOf(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
  }
  std::size_t filesInFolder() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
  }

  fs::path folder_;
  Plan plan_;
};

TEST_F(PlanStore, SavesAndLoadsAnEqualPlan) {
  ASSERT_TRUE(savePlan(plan_, path("a.elbowroom")).ok());
  const Result<Plan> loaded = loadPlan(path("a.elbowroom"));
  ASSERT_TRUE(loaded.ok());
  EXPECT_EQ(*loaded, plan_);
  EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(PlanStore, ReplacesAnOlderFileAndKeepsItsMode) {
  const std::string file = path("a.elbowroom");
  ASSERT_TRUE(savePlan(plan_, file).ok());
  ASSERT_EQ(::chmod(file.c_str(), 0640), 0);
  plan_.title = "Changed";
  ASSERT_TRUE(savePlan(plan_, file).ok());
  EXPECT_EQ(loadPlan(file)->title, "Changed");
  struct stat info;
  ASSERT_EQ(::stat(file.c_str(), &info), 0);
  EXPECT_EQ(info.st_mode & 0777, 0640u);
}

TEST_F(PlanStore, SavesThroughALink) {
  ASSERT_TRUE(savePlan(plan_, path("real.elbowroom")).ok());
  fs::create_symlink(path("real.elbowroom"), path("link.elbowroom"));
  plan_.title = "Changed";
  ASSERT_TRUE(savePlan(plan_, path("link.elbowroom")).ok());
  EXPECT_TRUE(fs::is_symlink(path("link.elbowroom")));
  EXPECT_EQ(loadPlan(path("real.elbowroom"))->title, "Changed");
}

TEST_F(PlanStore, AFolderThatCannotBeWrittenLeavesTheOldFileWhole) {
  const std::string file = path("a.elbowroom");
  ASSERT_TRUE(savePlan(plan_, file).ok());
  const std::string before = bytesOf(file);
  fs::permissions(folder_, fs::perms::owner_read | fs::perms::owner_exec | fs::perms::others_read |
                               fs::perms::others_exec);
  // Root writes anywhere, so as root the test saves as nobody.
  constexpr uid_t kNobody = 65534;
  const bool root = ::geteuid() == 0;
  if (root) {
    ASSERT_EQ(::seteuid(kNobody), 0);
  }
  plan_.title = "Changed";
  const Result<bool> saved = savePlan(plan_, file);
  if (root) {
    ASSERT_EQ(::seteuid(0), 0);
  }
  ASSERT_FALSE(saved.ok());
  EXPECT_EQ(saved.error().message, file + ": the plan cannot be saved: Permission denied.");
  EXPECT_EQ(bytesOf(file), before);
  EXPECT_EQ(filesInFolder(), 1u);
}

// A full disk, played by a limit on the size of files.
TEST_F(PlanStore, AWriteThatFailsHalfWayLeavesTheOldFileWhole) {
  const std::string file = path("a.elbowroom");
  ASSERT_TRUE(savePlan(plan_, file).ok());
  const std::string before = bytesOf(file);
  ::signal(SIGXFSZ, SIG_IGN);
  rlimit old;
  ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &old), 0);
  const rlimit small{512, old.rlim_max};
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
  plan_.title = "Changed";
  const Result<bool> saved = savePlan(plan_, file);
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &old), 0);
  ASSERT_FALSE(saved.ok());
  EXPECT_EQ(saved.error().code, "file");
  EXPECT_EQ(bytesOf(file), before);
  EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(PlanStore, AFolderThatIsNotThereIsAnError) {
  const Result<bool> saved = savePlan(plan_, path("none/a.elbowroom"));
  ASSERT_FALSE(saved.ok());
  EXPECT_EQ(saved.error().message, path("none/a.elbowroom") + ": the plan cannot be saved: No such file or directory.");
}

TEST_F(PlanStore, ErrorsOfLoadingBeginWithTheFile) {
  EXPECT_EQ(loadPlan(path("none.elbowroom")).error().message,
            path("none.elbowroom") + ": the file cannot be opened: No such file or directory.");
  EXPECT_EQ(loadPlan(folder_.string()).error().message, folder_.string() + ": this is a folder, not a plan file.");
  std::ofstream(path("b.elbowroom")) << testing::exampleWith(R"("width": 20)", R"("width": "x")");
  EXPECT_EQ(loadPlan(path("b.elbowroom")).error().message,
            path("b.elbowroom") + ": at /options/0/fixtures/1/width: this must be a number, not a text.");
}

}  // namespace
}  // namespace elbowroom

// Exit status 3, our own error. No plan may bring it about, so the verbs are called with a rule that is broken.
#include <gtest/gtest.h>

#include <memory>
#include <stdexcept>

#include "app/headless.h"
#include "core/rules/added_book.h"
#include "program.h"

namespace elbowroom {
namespace {

using testing::Folder;

// A room with a toilet; its only book is the broken one.
std::string planIn(const Folder& folder) {
  return folder.write("p.elbowroom", R"plan({"format": "elbowroom-plan", "version": 1, "unit": "in", "title": "Broken (invented example)",
 "books": ["broken-book"], "options": [{"name": "As found", "room": {"walls": [
  {"id": "n", "from": [0,96], "thickness": 4.5}, {"id": "e", "from": [96,96], "thickness": 4.5},
  {"id": "s", "from": [96,0], "thickness": 4.5}, {"id": "w", "from": [0,0], "thickness": 4.5}]},
  "fixtures": [{"id": "wc", "kind": "toilet", "wall": "s", "along": 60, "width": 20, "depth": 28}]}]})plan");
}

std::vector<Measurement> ofAnotherKind(const CheckInput&) { return {{.subjects = {{"wc"}}, .measured = Count{3}}}; }
std::vector<Measurement> throwing(const CheckInput&) { throw std::runtime_error("the measure broke"); }

struct OwnError : ::testing::Test {
  Folder folder;
  Options options;

  void brokenBy(Measure measure) {
    auto added = std::make_shared<AddedBook>();
    added->book = {.id = "broken-book", .title = "Broken", .authority = "nobody", .note = "for this test"};
    added->rules.push_back({.id = "broken-rule",
                            .book = "broken-book",
                            .title = "what cannot be worked out",
                            .level = Level::advised,
                            .compare = Compare::isTrue,
                            .limit = true,
                            .measure = std::move(measure),
                            .source = {},
                            .grade = Grade::commonPractice,
                            .why = "It is broken on purpose."});
    ASSERT_TRUE(addBook(added).ok());
    options.file = planIn(folder);
  }
  void TearDown() override { removeBook("broken-book"); }

  // Status and what was said to stderr.
  std::pair<int, std::string> run(Verb verb) {
    options.verb = verb;
    options.to = folder.file("out.svg");
    ::testing::internal::CaptureStderr();
    ::testing::internal::CaptureStdout();
    const int status = runHeadless(options);
    ::testing::internal::GetCapturedStdout();
    return {status, ::testing::internal::GetCapturedStderr()};
  }
  void expectThree(const char* says) {
    for (const Verb verb : {Verb::check, Verb::compare, Verb::draw}) {
      const auto [status, said] = run(verb);
      EXPECT_EQ(status, 3) << static_cast<int>(verb);
      EXPECT_NE(said.find(says), std::string::npos) << said;
      EXPECT_NE(said.find("please report it"), std::string::npos) << said;
    }
    EXPECT_FALSE(testing::fs::exists(folder.file("out.svg"))) << "no drawing of a plan that could not be checked";
  }
};

TEST_F(OwnError, ARuleThatCannotBeWorkedOutIsStatusThreeAndNamed) {
  brokenBy(ofAnotherKind);
  expectThree("broken-rule");
}

TEST_F(OwnError, SoIsARuleThatBreaks) {
  brokenBy(throwing);
  expectThree("the measure broke");
}

TEST_F(OwnError, WithoutTheBrokenRuleTheSamePlanIsFine) {
  brokenBy(ofAnotherKind);
  options.books = {"us-electrical"};
  EXPECT_EQ(run(Verb::check).first, 0);
}

}  // namespace
}  // namespace elbowroom

// Answers that several rules of one check ask for, each worked out once per check: a search of the floor, the
// things that stand around a fixture. Belongs to one layout
// and its figures; single-threaded.
#pragma once

#include <any>
#include <compare>
#include <cstdint>
#include <map>
#include <string_view>
#include <vector>

namespace elbowroom {

class Memo {
 public:
  // What `compute` gives for this question; the same question (name and key) must always mean the same answer
  // type. The reference holds as long as the memo.
  template <typename Compute>
  const auto& once(std::string_view question, std::vector<std::int64_t> key, Compute compute) {
    using Answer = decltype(compute());
    std::any& answer = answers_[{question, std::move(key)}];
    if (!answer.has_value()) answer = compute();
    return *std::any_cast<Answer>(&answer);
  }

 private:
  struct Asked {
    std::string_view question;
    std::vector<std::int64_t> key;
    auto operator<=>(const Asked&) const = default;
  };
  std::map<Asked, std::any> answers_;
};

}  // namespace elbowroom

#include "tests/bench/budgets.h"

#include <cmath>
#include <cstdio>
#include <utility>

namespace elbowroom::bench {

void Remembered::ReportRuns(const std::vector<Run>& runs) {
  ConsoleReporter::ReportRuns(runs);
  for (const Run& run : runs) {
    // "ours/0/iterations:1" is "ours/0".
    std::string name = run.run_name.function_name;
    if (!run.run_name.args.empty()) name += "/" + run.run_name.args;
    const bool median = run.run_type == Run::RT_Aggregate && run.aggregate_name == "median";
    if (median || (run.run_type == Run::RT_Iteration && !medians_.count(name)))
      times_[name] = run.GetAdjustedCPUTime() * 1e6 / benchmark::GetTimeUnitMultiplier(run.time_unit);
    if (median) medians_[name] = true;
  }
}

double Remembered::of(const std::string& name) const {
  const auto found = times_.find(name);
  return found == times_.end() ? 0 : found->second;
}

namespace {

// 17 to 19 measured, 13.9 once with ten jobs on two cores; a step with one moved: 22 and more.
constexpr double kRatio = 15, kRatioFails = 12, kMovedRatioFails = 15;
constexpr double kFlat = 0.2;  // growth: exponent of a step from 10 to 10,000 things; measured: 0
constexpr double kTimeFails = 2;  // how many times the target other machines may take

class Judge {
 public:
  explicit Judge(const Remembered& times) : times_(times) {}

  void ratio(const char* what, const std::string& ours, const std::string& peer, double target,
             double fails) {
    const double a = times_.of(ours), b = times_.of(peer);
    if (a <= 0 || b <= 0) return;
    say(b / a >= fails, "%-34s %9.1f us against %9.1f us: %.1f times as fast (target %.0f)", what, a, b,
        b / a, target);
  }
  void time(const char* what, const std::string& name, double target) {
    const double a = times_.of(name);
    if (a > 0) say(a <= target * kTimeFails, "%-34s %9.1f us (target %.0f)", what, a, target);
  }
  void growth(const char* what, const std::string& name, bool flat) {
    const double few = times_.of(name + "/10"), many = times_.of(name + "/10000");
    if (few <= 0 || many <= 0) return;
    const double exponent = std::log10(many / few) / 3;
    say(!flat || exponent <= kFlat, "%-34s %9.1f, %.1f, %.1f, %.1f us at 10 to 10,000: exponent %.2f%s",
        what, few, times_.of(name + "/100"), times_.of(name + "/1000"), many, exponent,
        flat ? " (target 0.2)" : "");
  }
  bool kept() const { return kept_; }

 private:
  template <typename... Args>
  void say(bool kept, const char* format, Args... args) {
    std::printf(kept ? "  " : "! ");
    std::printf(format, args...);
    std::printf("\n");
    kept_ = kept_ && kept;
  }
  const Remembered& times_;
  bool kept_ = true;
};

}  // namespace

bool keepsBudgets(const Remembered& times) {
  Judge judge(times);
  std::printf("\nOne mouse move's geometry, all of it, against GEOS and polyclipping:\n");
  const char* rooms[] = {"rectangle", "L", "angled"};
  for (int i = 0; i < 3; ++i) {
    const std::string room = "/" + std::to_string(i);
    judge.ratio(rooms[i], "ours" + room, "peers" + room, kRatio, kRatioFails);
    judge.ratio((std::string(rooms[i]) + ", one thing moved").c_str(), "oursMoved" + room, "peers" + room,
                kRatio, kMovedRatioFails);
  }
  std::printf("Targets (12 fixtures):\n");
  for (int i = 0; i < 3; ++i) {
    const std::string room = "/" + std::to_string(i);
    judge.time((std::string("step with one moved, ") + rooms[i]).c_str(), "oursMoved" + room, 60);
    judge.time((std::string("recheck of geometry, ") + rooms[i]).c_str(), "ours" + room, 250);
    judge.time((std::string("T at any angle, ") + rooms[i]).c_str(), "turningT" + room, 300);
  }
  judge.time("all books", "wholeCheck/1", 1000);
  judge.time("all books, after a move", "afterMove/1", 1000);
  judge.time("default books", "wholeCheck/0", 250);
  judge.time("default books, after a move", "afterMove/0", 250);
  judge.ratio("after a move, default books", "afterMove/0", "wholeCheck/0", 1, 0.8);
  std::printf("Growth with the number of things:\n");
  judge.growth("a step with one moved", "step", true);
  judge.growth("what stands near, grid", "nearGrid", true);
  judge.growth("what stands near, Boost R-tree", "nearBoostTree", false);
  judge.growth("largest circle of all, from scratch", "largest", false);
  judge.growth("the same, GEOS MIC alone", "largestGeos", false);
  judge.growth("the same, Boost.Polygon Voronoi", "largestVoronoi", false);
  for (const char* count : {"10", "100", "1000", "10000"}) {
    const std::string n = std::string("/") + count;
    judge.ratio((std::string("step, GEOS MIC, ") + count).c_str(), "step" + n, "largestGeos" + n, 1, 1);
    judge.ratio((std::string("largest, GEOS MIC, ") + count).c_str(), "largest" + n, "largestGeos" + n, 1,
                0.1);
    judge.ratio((std::string("largest, Voronoi, ") + count).c_str(), "largest" + n, "largestVoronoi" + n, 1,
                1);
  }
  if (!judge.kept()) std::printf("A budget is missed (the lines with a \"!\").\n");
  return judge.kept();
}

}  // namespace elbowroom::bench

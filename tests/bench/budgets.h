// What the figures of one run must keep to. Ratios and growth come from the same run; they do not hang on how
// fast the machine is. Times do, so they are printed beside their target and fail only far beyond it.
#pragma once

#include <benchmark/benchmark.h>

#include <map>
#include <string>

namespace elbowroom::bench {

// Prints as usual and remembers processor time in microseconds: the median where there is one.
class Remembered : public benchmark::ConsoleReporter {
 public:
  void ReportRuns(const std::vector<Run>& runs) override;
  double of(const std::string& name) const;  // 0: did not run

 private:
  std::map<std::string, double> times_;
  std::map<std::string, bool> medians_;
};

// Prints the comparisons; false when a budget is missed. What did not run is not judged.
bool keepsBudgets(const Remembered& times);

}  // namespace elbowroom::bench

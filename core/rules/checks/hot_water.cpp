#include "core/rules/checks/hot_water.h"

#include <array>
#include <cmath>

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

namespace {

constexpr double kOuncesInGallon = 128;
constexpr Amount kUsualFlow{2500};  // the most allowed in the US, from memory

struct Row {
  std::string_view pipe;
  double ounces;
};
constexpr std::array kTable{Row{"copper-l-1/2", 1.55}, Row{"copper-m-1/2", 1.69}, Row{"copper-k-1/2", 1.45},
                            Row{"pex-1/2", 1.18},      Row{"cpvc-1/2", 1.25},     Row{"copper-l-3/4", 3.22},
                            Row{"copper-m-3/4", 3.43}, Row{"pex-3/4", 2.35}};

}  // namespace

std::optional<double> ouncesPerFoot(std::string_view pipe) {
  for (const Row& row : kTable)
    if (row.pipe == pipe) return row.ounces;
  return std::nullopt;
}

double ouncesIn(const std::vector<PipeRun>& runs) {
  double ounces = 0;
  for (const PipeRun& run : runs) ounces += ouncesPerFoot(run.pipe).value_or(0) * run.length.inches() / 12;
  return ounces;
}

Amount waitFor(double ounces, Amount gallons_a_minute) {
  return {std::llround(ounces / kOuncesInGallon / gallons_a_minute.value() * 60 * 1000)};
}

std::vector<Measurement> hotWaterWaits(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const auto pipe = wordOf(f.fixture.facts, "hot_pipe");
    const auto length = lengthOf(f.fixture.facts, "hot_pipe_length");
    const auto flow = amountOf(f.fixture.facts, "head_flow");
    if (!counts(f) || !isShower(f) || !(pipe || length) || flow == Amount{}) continue;
    Measurement m{.subjects = {f.fixture.id}, .measured = std::nullopt, .places = {pointAt(f.center)}};
    if (pipe && length)
      m.measured = waitFor(2 * ouncesIn({{*pipe, *length}}), flow.value_or(kUsualFlow));
    else
      m.fact = pipe ? "hot_pipe_length" : "hot_pipe";
    if (!flow) m.detail = "head-flow-usual";
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks

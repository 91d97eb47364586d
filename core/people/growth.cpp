#include "core/people/growth.h"

namespace elbowroom {
namespace {

using namespace literals;

struct Line {
  int years;
  Length stature;
};
const Line kLines[] = {{2, 33.7_in}, {3, 37.3_in}, {4, 40.1_in}, {5, 42.7_in},
                       {6, 45.4_in}, {8, 50.4_in}, {10, 54.5_in}, {12, 59.2_in}};

}  // namespace

bool listedAge(int years) {
  for (const Line& line : kLines)
    if (line.years == years) return true;
  return false;
}

std::optional<Length> statureAtAge(int years) {
  const Line* before = nullptr;
  for (const Line& line : kLines) {
    if (line.years == years) return line.stature;
    if (line.years > years) {
      if (before == nullptr) return std::nullopt;
      const double part = static_cast<double>(years - before->years) / (line.years - before->years);
      return before->stature + (line.stature - before->stature).scaled(part);
    }
    before = &line;
  }
  return std::nullopt;
}

}  // namespace elbowroom

#include "core/rules/checks/toilet_space.h"

namespace elbowroom::us_access {

using namespace literals;

Rule toiletCompartmentDepth() {
  return {
      .id = "toilet-compartment-depth",
      .book = "us-access",
      .title = "compartment, depth",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 59_in,
      .measure = checks::compartmentDepths,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.8.1.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The compartment holds a wheelchair beside the seat.",
      .limit_words = "59 in, 56 in where the toilet hangs on the wall",
      .sizes = {56_in},
  };
}

}  // namespace elbowroom::us_access

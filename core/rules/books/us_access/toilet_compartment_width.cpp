#include "core/rules/checks/toilet_space.h"

namespace elbowroom::us_access {

using namespace literals;

Rule toiletCompartmentWidth() {
  return {
      .id = "toilet-compartment-width",
      .book = "us-access",
      .title = "compartment, width",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::compartmentWidths,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.8.1.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The compartment holds a wheelchair beside the seat.",
  };
}

}  // namespace elbowroom::us_access

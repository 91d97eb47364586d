#include "core/rules/checks/access_showers.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerAlternateLength() {
  return {
      .id = "shower-alternate-length",
      .book = "us-access",
      .title = "length, alternate kind",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::alternateLengths,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.2.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A wheelchair rolls in at one end and stands clear of the entry.",
  };
}

}  // namespace elbowroom::us_access

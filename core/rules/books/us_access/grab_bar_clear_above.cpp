#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule grabBarClearAbove() {
  return {
      .id = "grab-bar-clear-above",
      .book = "us-access",
      .title = "clear above it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 12_in,
      .measure = checks::grabBarsBelowThings,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "609.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A fist on the bar and the arm over it meet nothing.",
      .limit_words = "12 in; 1 1/2 in below the fittings of a shower and other bars",
      .sizes = {1.5_in},
  };
}

}  // namespace elbowroom::us_access

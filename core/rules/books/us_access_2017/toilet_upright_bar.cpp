#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule toiletUprightBar() {
  return {
      .id = "toilet-upright-bar",
      .book = "us-access-2017",
      .title = "upright bar beside it",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::toiletUprightBars,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "604.5.1",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "Pulling oneself up takes an upright bar ahead of the seat.",
      .sizes = {24_in},
      .met = "has an upright bar beside it, or backing for one",
      .missed = "no upright bar beside it, and no backing for one",
  };
}

}  // namespace elbowroom::us_access_2017

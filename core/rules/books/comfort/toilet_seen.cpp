#include "core/rules/checks/sightline.h"

namespace elbowroom::comfort {

using namespace literals;

Rule toiletSeen() {
  return {
      .id = "toilet-seen",
      .book = "comfort",
      .title = "share that shows from outside through the open door",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = Amount::of(0),
      .measure = checks::toiletsSeen,
      .source = {.document = "Remodeling guides on privacy",
                 .edition = "",
                 .section = "",
                 .read_at = "greetingsfrombeacons.com on bathroom design; designingwomen.com.au; eye 3 to 8 "
                            "ft outside on the centreline of the doorway"},
      .grade = Grade::verifiedSecondHand,
      .why = "The toilet should not be the first thing one sees from the hall: counted is how much of it "
             "shows to an eye 3 to 8 ft (0.9 to 2.4 m) outside, on the doorway's centreline, with the door open.",
      .sizes = {36_in, 96_in},
      .unit = "%",
      .mends = {Mend::slide, Mend::otherHand, Mend::otherSwing, Mend::swap},
  };
}

}  // namespace elbowroom::comfort

#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

Rule toiletSeatReceptacle() {
  return {
      .id = "toilet-seat-receptacle",
      .book = "us-electrical",
      .title = "receptacle of an electric seat",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::toiletSeatReceptacles,
      .source = {.document = "NEC",
                 .edition = "2020 (as amended) and 2023",
                 .section = "406.9(C) exception 4",
                 .read_at = "ecmweb.com article 21169880, proposed text of the amendment; the final wording "
                            "of 2023 not seen"},
      .grade = Grade::partial,
      .why = "So near the water only the plug of the seat itself is allowed, where it stays in place.",
      .sizes = {36_in},
      .variants = {{.setting = "edition", .value = "2017", .off = true},
                   {.setting = "edition", .value = "2011", .off = true},
                   {.setting = "edition", .value = "2008", .off = true}},
      .met = "stands where a seat may be plugged in near water",
      .missed = "stands where not even a seat may be plugged in near water",
  };
}

}  // namespace elbowroom::us_electrical

#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule toiletWallsBacked() {
  return {
      .id = "toilet-walls-backed",
      .book = "us-adaptable",
      .title = "backing for bars",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::toiletWallsBacked,
      .source = {.document = "Fair Housing Act Design Manual",
                 .edition = "1998",
                 .section = "chapter 6",
                 .read_at = "summary of chapter 6 at safetyinplace.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "Bars can be put up later without opening the walls.",
      .sizes = {24_in},
      .variants = {{.setting = "text", .value = "type-b", .off = true}},
      .mends = {Mend::state},
      .met = "the walls behind and beside it are backed",
      .missed = "the walls behind and beside it are not both backed",
  };
}

}  // namespace elbowroom::us_adaptable

#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule bathWallBacked() {
  return {
      .id = "bath-wall-backed",
      .book = "us-adaptable",
      .title = "backing for bars",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::bathWallsBacked,
      .source = {.document = "Fair Housing Act Design Manual",
                 .edition = "1998",
                 .section = "chapter 6",
                 .read_at = "summary of chapter 6 at safetyinplace.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "Bars can be put up later without opening the wall.",
      .variants = {{.setting = "text", .value = "type-b", .off = true}},
      .mends = {Mend::state},
      .met = "the wall behind it is backed",
      .missed = "the wall behind it is not backed",
  };
}

}  // namespace elbowroom::us_adaptable

#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule toiletWallsBacked() {
  return {
      .id = "toilet-walls-backed",
      .book = "us-residential",
      .title = "backing for bars",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::toiletWallsBacked,
      .source = {.document = "CRC (California)",
                 .edition = "from 2024-07-01",
                 .section = "R327.1.1 and R327.1.3",
                 .read_at =
                     "ene-smarthome.com, a builder's page; bill SB 280 at app.legiplex.com for its intent"},
      .grade = Grade::verifiedSecondHand,
      .why = "Bars can be put up later without opening the walls.",
      .sizes = {24_in},
      .variants = {{.setting = "state", .value = "none", .off = true},
                   {.setting = "state", .value = "massachusetts", .off = true},
                   {.setting = "state", .value = "minnesota", .off = true},
                   {.setting = "state", .value = "chicago", .off = true}},
      .mends = {Mend::state},
      .met = "the walls behind and beside it are backed",
      .missed = "the walls behind and beside it are not both backed",
  };
}

}  // namespace elbowroom::us_residential

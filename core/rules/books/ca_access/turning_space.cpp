#include "core/rules/checks/room.h"

namespace elbowroom::ca_access {

using namespace literals;

Rule turningSpace() {
  return {
      .id = "turning-space",
      .book = "ca-access",
      .title = "turning circle",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1700_mm,
      .measure = checks::bareCircle,
      .source = {.document = "Ontario Building Code",
                 .edition = "2012 as amended to 2017",
                 .section = "3.8.3.12(1)(h)",
                 .read_at = "company page that quotes 3.8.3.12"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair can turn round instead of backing out.",
      .variants = {{.setting = "text", .value = "national", .limit = 1500_mm, .source = Source{.document = "National Building Code of Canada",
                            .edition = "2019 Alberta edition",
                            .section = "3.8.5.3",
                            .read_at = "article that quotes it"}},
                   {.setting = "text", .value = "csa", .limit = 1700_mm, .source = Source{.document = "CSA B651",
                            .edition = "",
                            .section = "",
                            .read_at = ""}, .grade = Grade::memory}},
  };
}

}  // namespace elbowroom::ca_access

#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

Rule showerValveLimit() {
  return {
      .id = "shower-valve-limit",
      .book = "us-residential",
      .title = "hot water limit of the valve",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = Amount::of(120),
      .measure = checks::showerValves,
      .source = {.document = "IRC",
                 .edition = "2015 and later",
                 .section = "P2708.4",
                 .read_at = "howtolookatahouse.com 2019/12, text of a state code based on it"},
      .grade = Grade::verifiedSecondHand,
      .why = "Water of 120 degrees scalds in minutes and hotter water in seconds.",
      .unit = "\u00b0F",
      .variants = {{.setting = "edition",
                    .value = "2009",
                    .source = Source{.document = "IRC",
                                     .edition = "before 2015",
                                     .section = "P2708.3",
                                     .read_at = "howtolookatahouse.com 2019/12"}},
                   {.setting = "edition",
                    .value = "2006",
                    .source = Source{.document = "IRC",
                                     .edition = "before 2015",
                                     .section = "P2708.3",
                                     .read_at = "howtolookatahouse.com 2019/12"}}},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential

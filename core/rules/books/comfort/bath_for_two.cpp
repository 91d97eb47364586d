#include "core/rules/checks/baths.h"

namespace elbowroom::comfort {

using namespace literals;

Rule bathForTwo() {
  return {
      .id = "bath-for-two",
      .book = "comfort",
      .title = "width for two",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::bathsForTwo,
      .source = {.document = "Trade article on baths for two",
                 .edition = "",
                 .section = "",
                 .read_at = "forresidentialpros.com article 10418588: 36 in wide to face each other, 42 "
                            "in side by side"},
      .grade = Grade::verifiedSecondHand,
      .why = "Two sit in a bath for one only with their knees in each other's way.",
      .variants = {{.setting = "figures", .value = "ample", .limit = 42_in}},
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::comfort

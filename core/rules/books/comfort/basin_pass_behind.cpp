#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

using namespace literals;

Rule basinPassBehind() {
  return {
      .id = "basin-pass-behind",
      .book = "comfort",
      .title = "floor to stand and to pass behind",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 48_in,
      .measure = checks::passingAtBasins,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 4",
                 .read_at = "bathroom planning textbook on the grooming centre; supplyht.com article 92491 "
                            "(18 in for the user and 30 in to pass)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Two people share a bathroom only when one can pass behind the other.",
      .mends = {Mend::slide, Mend::turn},
  };
}

}  // namespace elbowroom::comfort
